/** How far a dish may be cut into more servings before one is too small to be served. */
import type { Family, Tally } from '../model.ts';
import sizes from './data/serving-sizes.json' with { type: 'json' };
import { mentionsAny } from './dish/word-search.ts';

/**
 * How many servings a dish is reckoned with, how many it may be cut into at most, in how many a stomach meets
 * it then, and whether those are pieces shaped or cut from a tin.
 */
export interface Portions {
  servings: number;
  most: number;
  doses: number;
  pieces: boolean;
  /** Numbers of pieces that are easily cut or shaped, ascending. */
  counts: readonly number[];
  /** A round whole, which is cut into no other numbers than those. */
  onlyCounts: boolean;
  /** A plate or bowl of food, neither shaped nor cut. */
  plate: boolean;
  /** Energy that a serving of a meal keeps at least, kcal; 0 for what is none. */
  leastKcal: number;
  /** Pieces that the plates share evenly, such as fillets; null when nothing is served so. */
  shared: number | null;
}

/** What of a dish decides how small a serving of it may be. */
export interface Served {
  family: Family;
  title: string;
  method: string;
  servings: number;
  /** Flour in a gram of the dish. */
  flourShare: number;
  /** Savoury, or of grain: a plate of it is a meal or part of one; left out when it is. */
  savoury?: boolean;
}

/** Loaves are cut into any number of slices. */
const SLICED: ReadonlySet<Family> = new Set(['quick-bread', 'lean-yeast-bread']);

interface Piece {
  leastGrams: number;
  times: number;
}

/** Of pieces lighter than this two are eaten at once, g (common practice, no source). */
const TWO_AT_ONCE_G = 40;

const PIECES: Partial<Record<Family, Piece>> = sizes.pieces;
const USUAL_GRAMS: Partial<Record<Family, number>> = sizes.several.usualGrams;
const SEVERAL_TIMES: Partial<Record<Family, number>> = sizes.several.timesByPiece;

/** Whether servings of a family are plates or bowls, not pieces. */
export const isServedOnPlates = (family: Family): boolean => PIECES[family] === undefined;

/** The piece of a kind that the title names. */
const titledPiece = ({ family, title }: Served): Piece | null =>
  sizes.titles.find(
    ({ words, families }) => families.includes(family) && mentionsAny(words, title),
  ) ?? null;

/** What is large and of a plain dough or batter is several pieces or slices: then one of them is a serving. */
function oneOfSeveral({ family, flourShare }: Served): Piece | null {
  const leastGrams = USUAL_GRAMS[family];
  const plain =
    flourShare >= sizes.several.plainFlourShare || sizes.several.always.includes(family);
  if (leastGrams === undefined || !plain) return null;
  return { leastGrams, times: SEVERAL_TIMES[family] ?? sizes.several.times };
}

const SWEET_TIMES: Partial<Record<Family, number>> = sizes.sweetPlate.timesBySort;

/** A large piece or plate of something sweet. */
function largeSweet(family: Family): Piece | null {
  const { families, leastGrams, times } = sizes.sweetPlate;
  return families.includes(family) ? { leastGrams, times: SWEET_TIMES[family] ?? times } : null;
}

function pieceOf(dish: Served, large: boolean): Piece | null {
  const titled = titledPiece(dish);
  if (titled) return titled;
  if (!large) return PIECES[dish.family] ?? null;
  return oneOfSeveral(dish) ?? largeSweet(dish.family);
}

interface Shape {
  times: number;
  /** Down to this weight, g, larger pieces than usual are cut more often. */
  largeGrams?: number;
  most?: number;
  /** The most of each of several tins. */
  ofSeveral?: readonly string[];
  counts?: readonly number[];
}

/** The form a cake, pie or loaf is baked in, which says how it is cut; null when the page names none, or when each is large. */
function shapeOf({ family, title, method }: Served, large: boolean): Shape | null {
  const text = `${title}\n${method}`;
  const found = sizes.shapes.find(
    ({ words, titledOnly, unless, families }) =>
      families.includes(family) &&
      !mentionsAny(unless, text) &&
      (mentionsAny(words, text) || mentionsAny(titledOnly, title)),
  );
  return found === undefined || (large && found.each === true) ? null : found;
}

/** Whether the page bakes several of a shape. */
const areSeveral = ({ ofSeveral }: Shape, { title, method }: Served): boolean =>
  ofSeveral !== undefined && mentionsAny(ofSeveral, `${title}\n${method}`);

/** The most pieces that a shape is cut into; of several, twice as many. */
function mostOf(shape: Shape, dish: Served): number {
  if (shape.most === undefined) return Number.POSITIVE_INFINITY;
  return Math.max(dish.servings, areSeveral(shape, dish) ? 2 * shape.most : shape.most);
}

/** Numbers of pieces a shape is cut into; each of two in one of them. */
const countsOf = (shape: Shape, dish: Served): readonly number[] | undefined =>
  areSeveral(shape, dish) ? shape.counts?.map((count) => 2 * count) : shape.counts;

/** How many times more pieces a shape allows, of a page's piece of so many g. */
const timesOf = ({ times, largeGrams }: Shape, grams: number): number =>
  largeGrams === undefined ? times : Math.max(times, grams / largeGrams);

/** Weight, g, from which one of several pieces is a serving. */
const leastPiece = (family: Family): number =>
  PIECES[family]?.leastGrams ?? Number.POSITIVE_INFINITY;

/** A plate that is a meal stays one; what is less was a side or a sauce to begin with. */
const leastPlate = (grams: number): number =>
  grams >= sizes.plate.leastGrams ? sizes.plate.leastGrams : 0;

/** Energy a plate keeps at least, of what the page's has, kcal. */
const leastKcalOf = (kcal: number): number =>
  Math.min(sizes.plate.leastKcal, sizes.plate.leastShareOfKcal * kcal);

/**
 * The servings of a dish. A piece of a bake or sweet keeps the least weight of its kind and a share of
 * its size; so does a plate of food, which is what weighs more than a piece does. Of a serving of several pieces,
 * `made` in all, one by itself is a serving too, and none is broken.
 */
export function portionsOf(
  dish: Served,
  { cookedGrams, rawGrams, perServing }: Pick<Tally, 'cookedGrams' | 'rawGrams' | 'perServing'>,
  shared: number | null = null,
  made: number | null = null,
): Portions {
  const { family, servings, savoury = true } = dish;
  const mass = (cookedGrams ?? rawGrams).best;
  const large = mass / servings > sizes.plate.grams;
  const piece = pieceOf(dish, large);
  const shape = piece === null ? null : shapeOf(dish, large);
  const least = piece?.leastGrams ?? leastPlate(mass / servings);
  const byMass = least > 0 && mass > 0 ? mass / least : Number.POSITIVE_INFINITY;
  // One large glass is two small ones; half a bowl is no meal.
  const isGlass =
    servings === 1 && isServedOnPlates(family) && mentionsAny(sizes.glass.words, dish.title);
  const halves = isGlass && mass >= 2 * sizes.plate.grams ? 2 : 1;
  const plate = savoury ? sizes.plate : sizes.bowl;
  const times = Math.min(
    Math.max(halves, (piece ?? plate).times),
    shape === null ? Number.POSITIVE_INFINITY : timesOf(shape, mass / servings),
  );
  const byShape = shape === null ? Number.POSITIVE_INFINITY : mostOf(shape, dish);
  const bySize = Math.min(servings * times, byMass, byShape);
  const whole = piece === null || made === null || made <= servings ? null : made;
  const single = whole === null ? servings : Math.min(whole, mass / leastPiece(family));
  const cut = Math.max(servings, Math.floor(Math.max(bySize, single) + 1e-9));
  const together = shared ?? whole;
  const most = together === null ? cut : mostPlates(together, servings, cut);
  const isMeal = piece === null && isServedOnPlates(family) && halves === 1 && savoury;
  return {
    servings,
    most,
    doses: mass / most < TWO_AT_ONCE_G ? Math.max(servings, most / 2) : most,
    pieces: piece !== null && !SLICED.has(family),
    counts: (shape === null ? null : countsOf(shape, dish)) ?? sizes.easyCounts,
    onlyCounts: shape?.counts !== undefined,
    plate: piece === null && dish.flourShare === 0 && halves === 1,
    leastKcal: isMeal ? leastKcalOf(perServing.energyKcal?.best ?? 0) : 0,
    shared: together,
  };
}

/** The portions of a dish of which a serving of the page's size has so much energy, kcal: a meal stays one. */
export function fedPortions(portions: Portions, kcal: number): Portions {
  const { servings, most, leastKcal, shared } = portions;
  if (leastKcal <= 0) return portions;
  const fed = Math.max(servings, Math.floor((servings * kcal) / leastKcal + 1e-9));
  if (fed >= most) return portions;
  const fewer = shared === null ? fed : mostPlates(shared, servings, fed);
  return { ...portions, most: fewer, doses: Math.min(portions.doses, fewer) };
}

/** Whether the pieces of a dish can be shared out to so many plates. */
const sharesOut = (shared: number | null, count: number): boolean =>
  shared === null || shared % count === 0;

/** The most plates that get whole pieces; as many as there are when no other number does. */
function mostPlates(shared: number, servings: number, most: number): number {
  for (let count = most; count > servings; count--) if (sharesOut(shared, count)) return count;
  return servings;
}

/** The fewest plates from `needed` on that get whole pieces. */
function fewestPlates(shared: number, needed: number, most: number): number {
  for (let count = needed; count < most; count++) if (sharesOut(shared, count)) return count;
  return most;
}

/**
 * Whole number of servings at which one has at most `budgetG`, from `net` a serving at the present
 * number; that number when it fits already, null when a serving would be too small.
 */
export function servingsThatFit(
  net: number,
  budgetG: number,
  { servings, most, pieces, counts, onlyCounts, shared }: Portions,
): number | null {
  if (net <= budgetG + 1e-9) return servings;
  if (budgetG <= 0) return null;
  const needed = Math.ceil((net * servings) / budgetG - 1e-9);
  if (needed > most) return null;
  if (shared !== null) return fewestPlates(shared, needed, most);
  const easy = pieces || needed > MANY ? counts.find((count) => count >= needed) : needed;
  const upTo = onlyCounts ? mostWedges(servings, most) : STRETCH * most;
  if (easy !== undefined && easy <= upTo) return easy;
  return onlyCounts ? null : needed;
}

/** More plates than these are not shared out by the eye. Own choice. */
const MANY = 10;

/** Share of the most pieces that an easier number must come to, and may go beyond. Own choice. */
const NEAR_MOST = 0.88;
const STRETCH = 1.05;
/** Between 12 and 16 no number of wedges is easily cut. Own choice. */
const WEDGES_STRETCH = 1.15;

/** A little beyond the most where no number of wedges lies below it, never above twice the page's. */
const mostWedges = (servings: number, most: number): number =>
  Math.max(most, Math.min(WEDGES_STRETCH * most, 2 * servings));

/** The most servings a dish may be cut into, as a number of pieces that is easily cut. */
export function mostServings(portions: Portions): number {
  const { servings, most, pieces, counts, onlyCounts, shared } = portions;
  if (shared !== null) return most;
  if (onlyCounts)
    return (
      counts.findLast((count) => count <= mostWedges(servings, most) && count > servings) ??
      servings
    );
  const easy = pieces
    ? counts.findLast((count) => count <= most && count >= NEAR_MOST * most)
    : undefined;
  return easy ?? most;
}

/** A rest above the budget, share of it, that is better borne than another product or two. Own choice. */
export const NEARLY = 1.07;

/** A rest above the budget, share of it, up to which a smaller bowl of what is no meal is worth it. Own choice. */
const MOST_OVER = 1.5;

/**
 * Whether as many servings as are sensible come near enough to the budget to be worth cutting. A plate stays one
 * above; one that is a meal is not made smaller to be too much all the same.
 */
export const isWorthCutting = (net: number, budgetG: number, portions: Portions): boolean => {
  const most = portions.leastKcal > 0 ? NEARLY : MOST_OVER;
  return !portions.plate || (net * portions.servings) / mostServings(portions) <= most * budgetG;
};

/** The servings a dish is recommended in: as many as fit, else as many as are sensible, else those of the page. */
export function servingsFor(net: number, budgetG: number, portions: Portions): number {
  const fitting = servingsThatFit(net, budgetG, portions);
  if (fitting !== null) return fitting;
  return isWorthCutting(net, budgetG, portions) ? mostServings(portions) : portions.servings;
}
