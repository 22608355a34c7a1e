/** The rows of the ingredient list: what to weigh now, and what it was. */
import { lineOfKey, splitKey } from '../../../../engine/index.ts';
import type { Adaptation, Ingredient, RewrittenLine, Swap } from '../../../../engine/model.ts';
import { isHeading } from './group-headings.ts';
import { type LineText, lineText } from './line-text.ts';
import { reasonOf } from './row-reasons.ts';

export interface IngredientRow {
  line: RewrittenLine;
  /** A line of the page that only heads others. */
  heading: boolean;
  /** What to weigh; null when the line is left out. */
  now: LineText | null;
  /** What it was, struck out; null when nothing changed or nothing was there. */
  was: string | null;
  /** Came in for the row above. */
  joined: boolean;
  /** The ingredient of the page, for a row of its own line. */
  ingredient: Ingredient | null;
  /** The swap that brought the food in. */
  swap: Swap | null;
  /** The food that came in, or that the page has. */
  foodId: string | null;
  why: string | null;
}

const shortName = (name: string): string => name.split(',')[0]?.trim() ?? name;

/** 'new.egg' is an added egg, 'new.egg.1' one of the second part of the dish. */
const addedFoodOf = (key: string): string | undefined =>
  key.startsWith('new.') ? key.split('.')[1] : undefined;

function foodIdOf({ key }: RewrittenLine, { ingredients }: Adaptation): string | null {
  const { foodId } = splitKey(key);
  return (
    foodId ?? addedFoodOf(key) ?? ingredients.find((one) => one.key === key)?.match?.foodId ?? null
  );
}

function swapOf(
  { key, change }: RewrittenLine,
  foodId: string | null,
  { plan }: Adaptation,
): Swap | null {
  if (change === 'kept' || change === 'amount') return null;
  const base = lineOfKey(key);
  const brought = ({ to }: Swap) =>
    change === 'replaced' || to.some((one) => one.foodId === foodId);
  return (
    plan.swaps.find(
      (swap) =>
        (swap.key === null ? key.startsWith('new.') : lineOfKey(swap.key) === base) &&
        brought(swap),
    ) ?? null
  );
}

function namesOf(line: RewrittenLine, adaptation: Adaptation, foodId: string | null): string[] {
  const base = lineOfKey(line.key);
  const { items } = adaptation.plan;
  // The row's own food first: a row that came in must not be named after the food it replaces.
  const planned = [
    ...items.filter((item) => item.foodId === foodId),
    ...items.filter((item) => lineOfKey(item.key) === base && base !== 'new'),
  ];
  const own = adaptation.ingredients.filter(({ key }) => lineOfKey(key) === base);
  const names = [
    ...planned.map(({ foodName }) => foodName),
    ...own.map(({ item }) => item.name),
    ...own.flatMap(({ match }) => (match ? [match.foodName] : [])),
  ];
  return [...new Set([...names, ...names.map(shortName)])];
}

function wasOf(line: RewrittenLine, names: readonly string[]): string | null {
  if (line.before === null || line.change === 'kept') return null;
  if (line.change !== 'amount') return line.before;
  const old = lineText(line.before, names);
  return old.amount === '' ? line.before : old.amount;
}

/** Rows in the order of the recipe; `textOf` gives a line as the user wants to read it. */
export function ingredientRows(
  adaptation: Adaptation,
  textOf: (line: RewrittenLine) => string | null,
): IngredientRow[] {
  const { lines, ingredients } = adaptation;
  return lines.map((line, at) => {
    const foodId = foodIdOf(line, adaptation);
    const names = namesOf(line, adaptation, foodId);
    const text = textOf(line);
    const above = lines[at - 1];
    return {
      line,
      heading: isHeading(line, adaptation),
      now: text === null ? null : lineText(text, names),
      was: wasOf(line, names),
      joined:
        line.key.includes('>') &&
        above !== undefined &&
        lineOfKey(above.key) === lineOfKey(line.key),
      ingredient: ingredients.find(({ key }) => key === line.key) ?? null,
      swap: swapOf(line, foodId, adaptation),
      foodId,
      why: reasonOf(line, lines),
    };
  });
}
