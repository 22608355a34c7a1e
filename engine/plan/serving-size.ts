/** How far a dish may be cut into more servings before one is too small to be served. */
import type { Family, Tally } from '../model.ts';
import sizes from './data/serving-sizes.json' with { type: 'json' };

/** How many servings a dish is reckoned with, how many it may be cut into at most, and whether those are pieces shaped or cut from a tin. */
export interface Portions {
  servings: number;
  most: number;
  pieces: boolean;
  /** Pieces that the plates share evenly, such as fillets; null when nothing is served so. */
  shared: number | null;
}

/** Loaves are cut into any number of slices. */
const SLICED: ReadonlySet<Family> = new Set([
  'quick-bread',
  'lean-yeast-bread',
  'enriched-yeast-bread',
]);

/** Numbers of pieces that a tin, a tray or a loaf is easily cut or shaped into. */
const EASY: readonly number[] = sizes.easyCounts;

const PIECES: Partial<Record<Family, { leastGrams: number; times: number }>> = sizes.pieces;

/** A plate that is a meal stays one; what is less was a side or a sauce to begin with. */
const leastPlate = (grams: number): number =>
  grams >= sizes.plate.leastGrams ? sizes.plate.leastGrams : 0;

/**
 * The servings of a dish. A piece of a bake or sweet keeps the least weight of its kind and a share of
 * its size; so does a plate of food, which is what weighs more than a piece does.
 */
export function portionsOf(
  family: Family,
  servings: number,
  { cookedGrams, rawGrams }: Pick<Tally, 'cookedGrams' | 'rawGrams'>,
  shared: number | null = null,
): Portions {
  const mass = (cookedGrams ?? rawGrams).best;
  const kind = PIECES[family];
  const large = mass / servings > sizes.plate.grams;
  const sweet = sizes.sweetPlate.families.includes(family) ? sizes.sweetPlate : null;
  const piece = large ? sweet : (kind ?? null);
  const least = piece?.leastGrams ?? leastPlate(mass / servings);
  const byMass = least > 0 && mass > 0 ? mass / least : Number.POSITIVE_INFINITY;
  // One large glass or bowl is two small ones.
  const halves = servings === 1 && kind === undefined && mass >= 2 * sizes.plate.grams ? 2 : 1;
  const times = Math.max(halves, (piece ?? sizes.plate).times);
  const most = Math.floor(Math.min(servings * times, byMass) + 1e-9);
  return {
    servings,
    most: shared === null ? Math.max(servings, most) : mostPlates(shared, servings, most),
    pieces: piece !== null && !SLICED.has(family),
    shared,
  };
}

/** Whether the pieces of a dish can be shared out to so many plates. */
const sharesOut = (shared: number | null, count: number): boolean =>
  shared === null || shared % count === 0;

/** The most plates that get whole pieces; as many as there are when no other number does. */
function mostPlates(shared: number, servings: number, most: number): number {
  for (let count = most; count > servings; count--) if (sharesOut(shared, count)) return count;
  return servings;
}

/**
 * Whole number of servings at which one has at most `budgetG`, from `net` a serving at the present
 * number; that number when it fits already, null when a serving would be too small.
 */
export function servingsThatFit(
  net: number,
  budgetG: number,
  { servings, most, pieces, shared }: Portions,
): number | null {
  if (net <= budgetG + 1e-9) return servings;
  if (budgetG <= 0) return null;
  const needed = Math.ceil((net * servings) / budgetG - 1e-9);
  if (needed > most) return null;
  if (shared !== null) return sharesOut(shared, needed) ? needed : most;
  const easy = pieces ? EASY.find((count) => count >= needed) : needed;
  return easy !== undefined && easy <= most ? easy : needed;
}

/** Share of the most pieces that an easier number must come to. Own choice. */
const NEAR_MOST = 0.95;

/** The most servings a dish may be cut into, as a number of pieces that is easily cut. */
export function mostServings({ most, pieces }: Portions): number {
  const easy = pieces
    ? EASY.findLast((count) => count <= most && count >= NEAR_MOST * most)
    : undefined;
  return easy ?? most;
}
