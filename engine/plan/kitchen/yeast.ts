/** Yeast for a dough with less to feed on (common practice, no source). */

import type { Section } from '../dish/dish.ts';
import { starch } from '../dish/food-figures.ts';
import { type Amount, total } from './planned-masses.ts';

/** Digestible starch, percent of the flour base, below which yeast works slower, and how much more makes up for it. */
const SLOWER = [
  { below: 25, times: 1.5 },
  { below: 40, times: 1.25 },
] as const;

/** Dry yeast, percent of the flour base, from which a dough is meant to rise within hours; below it, it gets more time. */
const QUICK_PCT = 0.6;
/** More dry yeast than this is tasted, percent of the flour base. */
const MOST_PCT = 3;
/** Dry yeast in a gram of fresh: 0.33-0.40 (professional baking text). */
const DRY_IN_FRESH = 0.4;

const asDry = (a: Amount): number =>
  a.role === 'yeast' ? (a.food.id === 'fresh-yeast' ? DRY_IN_FRESH : 1) : 0;

/** Half grams, from ten on whole ones. */
const near = (grams: number): number =>
  grams >= 10 ? Math.round(grams) : Math.round(grams * 2) / 2;

/** How many times the yeast a dough needs for the time it had; 1 when it has starch enough or time. */
function yeastTimes(before: readonly Amount[], after: readonly Amount[]): number {
  const base = total(after, (a) => (a.base ? 1 : 0));
  const was = total(before, (a) => (a.base ? 1 : 0));
  if (base <= 0 || was <= 0) return 1;
  const starchOf = (amounts: readonly Amount[], mass: number): number =>
    (100 * total(amounts, (a) => (a.base ? starch(a.food) : 0))) / mass;
  const factor = (pct: number): number => SLOWER.find(({ below }) => pct < below)?.times ?? 1;
  const dose = (100 * total(before, asDry)) / was;
  if (dose < QUICK_PCT) return 1;
  const times = factor(starchOf(after, base)) / factor(starchOf(before, was));
  return Math.max(1, Math.min(times, Math.max(1, MOST_PCT / dose)));
}

/** More yeast where a quick dough lost starch; in half grams. */
export function withYeast(
  amounts: Amount[],
  before: readonly Amount[],
  section: Section,
  pinned: readonly string[],
): Amount[] {
  if (!section.limits.yeast) return amounts;
  const times = yeastTimes(before, amounts);
  if (times <= 1) return amounts;
  return amounts.map((a) =>
    a.role === 'yeast' && !pinned.includes(a.key ?? '')
      ? { ...a, grams: Math.max(a.grams, near(a.grams * times)), because: MORE_YEAST }
      : a,
  );
}

const MORE_YEAST = 'With less starch to feed on, it takes more yeast for the same time.';

/** Food for yeast below this percent of the flour base does nothing; from it on, at least `least`. */
const SENSIBLE_FOOD = { from: 0.5, least: 1 } as const;

/** Whether so much sugar does anything for the yeast of a section. */
export const feedsYeast = (grams: number, { flourBase }: Section): boolean =>
  100 * grams >= SENSIBLE_FOOD.from * flourBase;

/** Yeast food as a sensible spoon or none. */
export function sensibleFood(amounts: Amount[], section: Section): Amount[] {
  return amounts.flatMap((a) => {
    if (a.role !== 'yeast-food' || a.origin !== 'add') return [a];
    if (!feedsYeast(a.grams, section)) return [];
    const least = (SENSIBLE_FOOD.least * section.flourBase) / 100;
    return [{ ...a, grams: Math.max(a.grams, near(least)) }];
  });
}
