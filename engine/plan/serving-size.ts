/** How far a dish may be cut into more servings before one is too small to be served. */
import type { Family, Tally } from '../model.ts';
import sizes from './data/serving-sizes.json' with { type: 'json' };

/** How many servings a dish is reckoned with, and how many it may be cut into at most. */
export interface Portions {
  servings: number;
  most: number;
}

const LEAST_GRAMS: Partial<Record<Family, number>> = sizes.leastGrams;

/**
 * The servings of a dish. A piece of a bake keeps the least weight of its kind; nothing is cut to less
 * than half, and a plate of food not to less than two thirds.
 */
export function portionsOf(
  family: Family,
  servings: number,
  { cookedGrams, rawGrams }: Pick<Tally, 'cookedGrams' | 'rawGrams'>,
): Portions {
  const least = LEAST_GRAMS[family];
  const times = least === undefined ? sizes.mostTimes.plate : sizes.mostTimes.piece;
  const mass = (cookedGrams ?? rawGrams).best;
  const byMass = least === undefined || mass <= 0 ? Number.POSITIVE_INFINITY : mass / least;
  const most = Math.floor(Math.min(servings * times, byMass) + 1e-9);
  return { servings, most: Math.max(servings, most) };
}

/**
 * Whole number of servings at which one has at most `budgetG`, from `net` a serving at the present
 * number; that number when it fits already, null when a serving would be too small.
 */
export function servingsThatFit(
  net: number,
  budgetG: number,
  { servings, most }: Portions,
): number | null {
  if (net <= budgetG + 1e-9) return servings;
  if (budgetG <= 0) return null;
  const needed = Math.ceil((net * servings) / budgetG - 1e-9);
  return needed <= most ? needed : null;
}
