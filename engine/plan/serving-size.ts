/** How far a dish may be cut into more servings before one is too small to be served. */
import type { Family, Tally } from '../model.ts';
import sizes from './data/serving-sizes.json' with { type: 'json' };

/** How many servings a dish is reckoned with, and how many it may be cut into at most. */
export interface Portions {
  servings: number;
  most: number;
}

const PIECES: Partial<Record<Family, { leastGrams: number; times: number }>> = sizes.pieces;

/**
 * The servings of a dish. A piece of a bake or sweet keeps the least weight of its kind and a share of
 * its size; so does a plate of food, which is what weighs more than a piece does.
 */
export function portionsOf(
  family: Family,
  servings: number,
  { cookedGrams, rawGrams }: Pick<Tally, 'cookedGrams' | 'rawGrams'>,
): Portions {
  const mass = (cookedGrams ?? rawGrams).best;
  const kind = PIECES[family];
  const piece = kind && mass / servings <= sizes.plate.grams ? kind : null;
  const byMass = piece && mass > 0 ? mass / piece.leastGrams : Number.POSITIVE_INFINITY;
  const most = Math.floor(Math.min(servings * (piece ?? sizes.plate).times, byMass) + 1e-9);
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
