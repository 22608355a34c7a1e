/** Two states of a recipe side by side, briefly: the figures and the lines in which they differ. */
import type { Adaptation, Interval } from '../../../engine/model.ts';
import { amount, rangeText, short } from '../figures/format.ts';

export interface ComparedRow {
  label: string;
  here: string;
  there: string;
}

const net = (value: Interval | null): string => {
  if (!value) return 'not known';
  const range = rangeText(value);
  return `${amount(value.best)} g${range === '' ? '' : ` (${range})`}`;
};

const percent = (share: number): string => `${Math.round(share * 100)} %`;

function figures({ goals, after, plan }: Adaptation): [string, string][] {
  return [
    ['Net carbs a serving', net(after.perServing.netCarbsG)],
    ['Budget', `${short(goals.budgetG)} g`],
    ['Servings', short(after.servings)],
    ['Close to the original', percent(plan.closeness)],
    ['Changes after bakes', goals.adjustments.map(({ text }) => text).join(' ') || 'none'],
  ];
}

/** Lines by key; several foods of one key are one text. */
function lineTexts({ lines }: Adaptation): Map<string, string> {
  const texts = new Map<string, string[]>();
  for (const { key, after } of lines) {
    if (after !== null) texts.set(key, [...(texts.get(key) ?? []), after]);
  }
  return new Map([...texts].map(([key, list]) => [key, list.join(', ')]));
}

/** Figures always, then each ingredient line that is not the same in both. */
export function compareStates(here: Adaptation, there: Adaptation): ComparedRow[] {
  const theirs = new Map(figures(there));
  const head = figures(here).map(([label, text]) => ({
    label,
    here: text,
    there: theirs.get(label) ?? '',
  }));
  const [a, b] = [lineTexts(here), lineTexts(there)];
  const differing = [...new Set([...a.keys(), ...b.keys()])].filter(
    (key) => a.get(key) !== b.get(key),
  );
  return [
    ...head,
    ...differing.map((key) => ({
      label: 'Ingredient',
      here: a.get(key) ?? 'none',
      there: b.get(key) ?? 'none',
    })),
  ];
}
