/** Net carbs of planned masses: the best estimate, and its upper end as the tally will show it. */
import type { Interval } from '../model.ts';
import { foodNumbers } from '../tally/composition.ts';
import { matchWidth } from '../tally/counted.ts';
import { type Part as Doubt, withUncertainty } from '../tally/propagate.ts';
import type { Dish } from './dish/dish.ts';
import { netPerGram } from './dish/food-figures.ts';
import { type Amount, total } from './kitchen/planned-masses.ts';

/** A weighed amount's doubt, share: a kitchen scale's (common practice, no source). */
const SCALE_ERROR = 0.02;
/** Doubt of a food that the plan itself names, share: as for a sure match. */
const NAMED = matchWidth(1);

const WHOLE: Interval = { low: 1, best: 1, high: 1 };

/** Net carbs of a serving, g, best estimate. */
function netOf(amounts: readonly Amount[], dish: Dish): number {
  const { rule } = dish.goals;
  return total(amounts, (a) => (netPerGram(a.food, rule) ?? 0) * a.eaten) / dish.servings;
}

/** Net carbs of one amount in the whole dish, g, with what makes them unsure. */
function doubtsOf(a: Amount, dish: Dish): { best: number; doubts: Doubt[] } {
  const { figures } = foodNumbers(a.food, dish.goals.rule, {
    polyolsPerServingG: dish.goals.rule.polyols === 'half_over_5g' ? 0 : Number.POSITIVE_INFINITY,
    alcoholRetained: 1,
  });
  const net = figures.netCarbsG;
  if (net === null || a.grams <= 0) return { best: 0, doubts: [] };
  const line = dish.parts.find((p) => p.key === a.key);
  const own = a.origin === 'kept' ? line : undefined;
  const asWritten = own !== undefined && Math.abs(own.grams - a.grams) < 1e-9;
  const share = a.eaten === 0 ? { low: 0, best: 0, high: 0 } : (line?.eatenRange ?? WHOLE);
  const amount = asWritten
    ? own.gramsRange
    : { low: a.grams * (1 - SCALE_ERROR), best: a.grams, high: a.grams * (1 + SCALE_ERROR) };
  const width = own ? matchWidth(own.sure) : NAMED;
  const eaten = a.grams * share.best;
  const perGram = net.best / 100;
  const byMatch = perGram * width * eaten;
  const { id } = a.food;
  return {
    best: perGram * eaten,
    doubts: [
      {
        cause: `amount ${id}`,
        minus: (amount.best - amount.low) * share.best * perGram,
        plus: (amount.high - amount.best) * share.best * perGram,
      },
      {
        cause: `share ${id}`,
        minus: (share.best - share.low) * amount.best * perGram,
        plus: (share.high - share.best) * amount.best * perGram,
      },
      {
        cause: `composition ${id}`,
        minus: Math.max(byMatch, ((net.best - net.low) * eaten) / 100),
        plus: Math.max(byMatch, ((net.high - net.best) * eaten) / 100),
      },
    ],
  };
}

/** Net carbs of a serving, g, with bounds after JCGM 100:2008, as the tally reckons them. */
export function netRange(amounts: readonly Amount[], dish: Dish): Interval {
  const rows = amounts.map((a) => doubtsOf(a, dish));
  const whole = withUncertainty(
    rows.reduce((sum, row) => sum + row.best, 0),
    rows.flatMap((row) => row.doubts),
  );
  const each = (value: number): number => value / dish.servings;
  return { low: each(whole.low), best: each(whole.best), high: each(whole.high) };
}

/** What the budget is held against: the best estimate, or its upper end when the user is cautious. */
export const judged = (amounts: readonly Amount[], dish: Dish): number =>
  dish.goals.cautious ? netRange(amounts, dish).high : netOf(amounts, dish);

/** Food whose doubt widens the upper end most, or null when nothing does. */
export function widest(amounts: readonly Amount[], dish: Dish): Amount | null {
  const plusOf = (a: Amount): number =>
    doubtsOf(a, dish).doubts.reduce((sum, d) => sum + d.plus ** 2, 0);
  const [first] = [...amounts].sort((a, b) => plusOf(b) - plusOf(a));
  return first && plusOf(first) > 0 ? first : null;
}
