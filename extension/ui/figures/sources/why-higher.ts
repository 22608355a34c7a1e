/** Why a figure that fits by its best estimate may be above the budget: what its upper end comes from. */
import { hasTag, type TracedLine } from '../../../../engine/index.ts';
import type { Interval } from '../../../../engine/model.ts';
import { foodWord } from '../../words/food-words.ts';
import { say } from '../../words/say.ts';
import { amount } from '../format.ts';

/** Reasons told, the weightiest first. Own choice. */
const MOST_REASONS = 3;
/** What brings less than this to a serving is not told, g. Own choice. */
const LEAST_G = 0.3;
/** A wider spread of grams than this, against the best figure, is what makes the line wide. Own choice. */
const WIDE_SPREAD = 0.25;

/** Whether only the upper end of a serving's net carbs is above the budget. */
export const mayBeAbove = ({ best, high }: Interval, budgetG: number): boolean =>
  best <= budgetG && high > budgetG;

interface Reason {
  moreG: number;
  text: string;
}

function reasonOf(line: TracedLine, servings: number): Reason | null {
  const net = line.perServing.netCarbsG;
  if (!net) return null;
  const { food, grams } = line;
  const name = foodWord(food.id, food.name);
  const told = (
    key: 'higherByFibre' | 'higherByMaker' | 'higherByAmount' | 'higherByFood',
    g: number,
  ) => (g < LEAST_G ? null : { moreG: g, text: say(key, name, amount(g)) });
  // A label counts resistant starch as fibre; what of it the body takes up differs from one to the next.
  if (hasTag(food, 'label-fibre')) {
    const fibreG = ((food.per100g.fiberG ?? 0) * grams.best) / 100 / servings;
    return told('higherByFibre', fibreG);
  }
  const more = net.high - net.best;
  if (line.key.includes('>') || line.key.startsWith('new.')) return told('higherByMaker', more);
  const wide = grams.best > 0 && (grams.high - grams.low) / grams.best > WIDE_SPREAD;
  return told(wide ? 'higherByAmount' : 'higherByFood', more);
}

/** Sentences for the lines that could add most, the weightiest first. */
export const whyHigher = (lines: readonly TracedLine[], servings: number): string[] =>
  lines
    .flatMap((line) => reasonOf(line, servings) ?? [])
    .sort((a, b) => b.moreG - a.moreG)
    .slice(0, MOST_REASONS)
    .map(({ text }) => text);
