/** Invented recipes as a cook would paste them, taken the whole way. */
import { adaptRecipe, DEFAULT_GOALS, readText } from '../../engine/index.ts';
import type { Adaptation, Family, Goals } from '../../engine/model.ts';
import rows from './recipes.json' with { type: 'json' };

export interface Pasted {
  title: string;
  serves: string;
  lines: string[];
  steps: string[];
  /** The family expected first, then others that also fit. */
  family: Family[];
}

/** Makes recipes of these families, for four. */
export const dishesOf =
  (...family: Family[]) =>
  (title: string, lines: string[], steps: string[]): Pasted => ({
    title,
    serves: 'Serves 4',
    lines,
    steps,
    family,
  });

/** A line such as 'For the frosting:' heads a group. */
export const isHeading = (line: string): boolean => /^For the /.test(line);

export const PASTED = rows.recipes as Pasted[];

export function textOf({ title, serves, lines, steps }: Pasted): string {
  return [
    title,
    '',
    serves,
    '',
    'Ingredients',
    ...lines.map((line) => (isHeading(line) ? line : `- ${line}`)),
    '',
    'Method',
    ...steps.map((step, at) => `${at + 1}. ${step}`),
  ].join('\n');
}

export function adapted(recipe: Pasted, goals: Partial<Goals> = {}): Adaptation {
  const read = readText(textOf(recipe));
  const [first] = read.ok ? read.recipes : [];
  if (first === undefined) throw new Error(`not read: ${recipe.title}`);
  return adaptRecipe(first, { ...DEFAULT_GOALS, ...goals });
}

export function pastedNamed(title: string): Pasted {
  const found = PASTED.find((recipe) => recipe.title === title);
  if (!found) throw new Error(title);
  return found;
}

/** A recipe of so many plates. */
export const plate = (
  title: string,
  serves: string,
  lines: string[],
  steps: string[],
  family: Pasted['family'] = ['other'],
): Pasted => ({ title, serves, lines, steps, family });

/** The swap of the line whose words fit. */
export const swapOf = ({ plan, ingredients }: Adaptation, line: RegExp) => {
  const key = ingredients.find(({ line: { text } }) => line.test(text))?.key;
  return plan.swaps.find((swap) => swap.key === key);
};

/** Ids of what stands in for that line. */
export const broughtBy = (result: Adaptation, line: RegExp): string[] =>
  (swapOf(result, line)?.to ?? []).map(({ foodId }) => foodId);
