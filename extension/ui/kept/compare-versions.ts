/** Two states of a recipe side by side, briefly: the figures and the lines in which they differ. */
import type { Adaptation, Interval } from '../../../engine/model.ts';
import { apartWord } from '../figures/closeness-mark.tsx';
import { amount, rangeText, short } from '../figures/format.ts';
import { say } from '../words/say.ts';

export interface ComparedRow {
  label: string;
  here: string;
  there: string;
}

const net = (value: Interval | null): string => {
  if (!value) return say('notKnown');
  const range = rangeText(value);
  return `${amount(value.best)} g${range === '' ? '' : ` (${range})`}`;
};

function figures({ goals, after, plan }: Adaptation): [string, string][] {
  return [
    [say('netCarbsServing'), net(after.perServing.netCarbsG)],
    [say('budgetBrief'), `${short(goals.budgetG)} g`],
    [say('servingsLabel'), short(after.servings)],
    [say('fromOriginal'), apartWord(plan.closeness)],
    [say('changesAfterBakes'), goals.adjustments.map(({ text }) => text).join(' ') || say('none')],
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
      label: say('ingredient'),
      here: a.get(key) ?? say('none'),
      there: b.get(key) ?? say('none'),
    })),
  ];
}
