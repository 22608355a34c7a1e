/** Masses as a cook writes them: grams first, the spoon, cup or count beside. */
import { hasTag } from '../../foods/tags.ts';
import type { Food, Role } from '../../model.ts';
import { type Region, US_CUP_ML } from '../../units.ts';
import type { MethodWords } from '../languages/method-words.ts';

const FRACTIONS: readonly (readonly [number, string])[] = [
  [0, ''],
  [1 / 4, '¼'],
  [1 / 3, '⅓'],
  [1 / 2, '½'],
  [2 / 3, '⅔'],
  [3 / 4, '¾'],
  [1, ''],
];

interface Spoon {
  unit: 'cup' | 'tbsp' | 'tsp';
  /** Smallest step that is measured. */
  steps: readonly number[];
  from: number;
  to: number;
}

const QUARTERS = [0, 1 / 4, 1 / 2, 3 / 4, 1];
const CUP_STEPS = [0, 1 / 4, 1 / 3, 1 / 2, 2 / 3, 3 / 4, 1];
const SPOONS: readonly Spoon[] = [
  { unit: 'cup', steps: CUP_STEPS, from: 1 / 4, to: 12 },
  { unit: 'tbsp', steps: [0, 1 / 2, 1], from: 1, to: 8 },
  // From 6 on they stand beside tablespoons: '2 tbsp + ¾ tsp'.
  { unit: 'tsp', steps: QUARTERS, from: 1 / 4, to: 12 },
];

/** Cups and tablespoons of the table are US ones (236.6 and 14.8 ml), so only like ones are shown. */
const UNITS: Record<Region, readonly string[]> = {
  us: ['cup', 'tbsp', 'tsp'],
  uk: ['tbsp', 'tsp'],
  eu: ['tbsp', 'tsp'],
  au: ['tsp'],
};

/** Nobody measures these by the cup. */
const WEIGHED_ONLY = /^(meat|fish)/;

/** A measure further than this from the grams is not shown. */
const CLOSE_ENOUGH = 0.06;

/** Edible grams of a large egg and its parts: SR 171287, 172183, 172184. */
const PIECES: Record<
  string,
  { grams: number; one: string; many: string; part: 'egg' | 'white' | 'yolk' }
> = {
  egg: { grams: 50, one: 'large egg', many: 'large eggs', part: 'egg' },
  'egg-white': { grams: 33, one: 'large egg white', many: 'large egg whites', part: 'white' },
  'egg-yolk': { grams: 17, one: 'large egg yolk', many: 'large egg yolks', part: 'yolk' },
};

/** A number as cooks write it, '1½'; thirds and quarters only. */
export function fractionText(value: number): string {
  const whole = Math.floor(value + 1e-9);
  const part = value - whole;
  const nearest = FRACTIONS.reduce((a, b) =>
    Math.abs(b[0] - part) < Math.abs(a[0] - part) ? b : a,
  );
  if (nearest[0] === 1) return String(whole + 1);
  if (nearest[0] === 0) return String(whole);
  return whole === 0 ? nearest[1] : `${whole}${nearest[1]}`;
}

/** Grams as written: whole from 20 g, tenths from 1 g, hundredths below. */
export function asScalesRead(grams: number): number {
  if (grams >= 20) return Math.round(grams);
  return grams >= 1 ? Math.round(grams * 10) / 10 : Math.round(grams * 100) / 100;
}

function gramsPer(food: Food, unit: string): number | null {
  return food.measures.find((measure) => measure.unit === unit)?.grams ?? null;
}

/** The nearest of some parts of one, above the whole ones. */
export const snapTo = (value: number, steps: readonly number[]): number => {
  const whole = Math.floor(value);
  const part = value - whole;
  return whole + steps.reduce((a, b) => (Math.abs(b - part) < Math.abs(a - part) ? b : a));
};

/** The smallest spoon of a set, share of a teaspoon, and how far from it is still one. Own choice. */
const SMALLEST = { spoon: 1 / 8, near: 0.15 } as const;

/** '⅛ tsp' for what hardly shows on a scale, else null. */
function smallestSpoon(food: Food, grams: number): string | null {
  const each = (gramsPer(food, 'tsp') ?? 0) * SMALLEST.spoon;
  return Math.abs(grams - each) <= SMALLEST.near * each ? '⅛ tsp' : null;
}

/** Teaspoons in a tablespoon. */
const TSP_IN_TBSP = 3;

/** '2½ tsp', '1 tbsp + 2½ tsp', '1½ tbsp': nobody levels five teaspoons. */
function spoonsText(teaspoons: number): string {
  const large = Math.floor(teaspoons / TSP_IN_TBSP);
  const rest = teaspoons - large * TSP_IN_TBSP;
  if (large === 0) return `${fractionText(teaspoons)} tsp`;
  if (rest === 0 || rest === TSP_IN_TBSP / 2)
    return `${fractionText(large + rest / TSP_IN_TBSP)} tbsp`;
  return `${large} tbsp + ${fractionText(rest)} tsp`;
}

/** More teaspoons than this are not levelled one by one. */
const ALONE_TSP = 6;

/** '2 tbsp', 'about ½ cup', or null when no household measure is near. */
export function besideText(food: Food, grams: number, region: Region): string | null {
  for (const { unit, steps, from, to } of SPOONS) {
    const each = gramsPer(food, unit);
    if (each === null || !UNITS[region].includes(unit)) continue;
    if (unit === 'cup' && WEIGHED_ONLY.test(food.group)) continue;
    const exactCount = grams / each;
    const count = snapTo(exactCount, steps);
    if (count < from - 1e-9 || count > to) continue;
    if (unit === 'tsp' && count > ALONE_TSP && !UNITS[region].includes('tbsp')) continue;
    const error = Math.abs(count - exactCount) / exactCount;
    if (error > CLOSE_ENOUGH) continue;
    const words =
      unit === 'tsp' && UNITS[region].includes('tbsp')
        ? spoonsText(count)
        : `${fractionText(count)} ${unit}${unit === 'cup' && count > 1 ? 's' : ''}`;
    return error > 0.02 ? `about ${words}` : words;
  }
  return cupAndSpoons(food, grams, region) ?? smallestSpoon(food, grams);
}

/** Parts of a cup that have a measure, and the most tablespoons beside one. */
const CUP_PARTS = [1 / 4, 1 / 3, 1 / 2, 2 / 3, 3 / 4, 1];
const MOST_BESIDE = 3;
/** Nearer than this a cup with spoons says the grams. Own choice. */
const EXACT = 0.02;

/** '⅔ cup + 2 tbsp', where no one measure is near; null where that is none either. */
function cupAndSpoons(food: Food, grams: number, region: Region): string | null {
  const cup = gramsPer(food, 'cup');
  const spoon = gramsPer(food, 'tbsp');
  if (cup === null || spoon === null || !UNITS[region].includes('cup')) return null;
  if (WEIGHED_ONLY.test(food.group)) return null;
  const wholes = Math.floor(grams / cup);
  const pairs = [wholes, ...CUP_PARTS.map((part) => wholes + part)].flatMap((cups) => {
    const spoons = Math.round((grams - cups * cup) / spoon);
    const error = Math.abs(cups * cup + spoons * spoon - grams) / grams;
    return cups > 0 && spoons >= 1 && spoons <= MOST_BESIDE && error <= EXACT
      ? [{ cups, spoons, error }]
      : [];
  });
  const [best] = pairs.sort((a, b) => a.error - b.error || a.spoons - b.spoons);
  if (best === undefined) return null;
  return `${fractionText(best.cups)} cup${best.cups > 1 ? 's' : ''} + ${best.spoons} tbsp`;
}

/** '250 ml', for what is poured and fills three tablespoons or more; null for the rest. */
export function liquidText(food: Food, grams: number, role: Role): string | null {
  const cup = gramsPer(food, 'cup');
  const poured = role === 'liquid' || hasTag(food, 'pourable');
  if (cup === null || !poured || hasTag(food, 'spooned')) return null;
  const ml = (grams / cup) * US_CUP_ML;
  if (ml < 45) return null;
  return `${Math.round(ml / 5) * 5} ml`;
}

/**
 * The grams a reworked line states: binders to a quarter teaspoon where the food has one, the rest
 * rounded as scales read. A binder too small for a quarter teaspoon stays in hundredths of a gram.
 */
export function kitchenGrams(food: Food, grams: number, role: Role): number {
  const teaspoon = gramsPer(food, 'tsp');
  if (
    teaspoon !== null &&
    (role === 'binder' || hasTag(food, 'binder') || hasTag(food, 'gelling')) &&
    grams < 8 * teaspoon
  ) {
    const quarters = Math.round((grams / teaspoon) * 4);
    if (quarters > 0) return Math.round(quarters * teaspoon * 25) / 100;
  }
  const piece = PIECES[food.id];
  const count = piece === undefined ? 0 : Math.round(grams / piece.grams);
  if (piece !== undefined && isWhole(grams, piece.grams, count)) return count * piece.grams;
  return asScalesRead(grams);
}

/** A twentieth more or less than a whole egg is within what eggs of one size differ by. */
const isWhole = (grams: number, each: number, count: number): boolean =>
  count > 0 && Math.abs(grams - count * each) <= 0.05 * grams;

/** '2 large eggs (100 g shelled)' for whole eggs, else null. `grams` must come from {@link kitchenGrams}. */
export function pieceText(
  food: Food,
  grams: number,
  local: MethodWords | null = null,
): string | null {
  const piece = PIECES[food.id];
  if (piece === undefined) return null;
  const count = Math.round(grams / piece.grams);
  if (count === 0 || Math.abs(grams - count * piece.grams) > 0.01) return null;
  const [one, many] = local?.lines[piece.part] ?? [piece.one, piece.many];
  const shelled = food.id === 'egg' ? ` ${local?.lines.shelled ?? 'shelled'}` : '';
  return `${count} ${count === 1 ? one : many} (${grams} g${shelled})`;
}

/** Below this a kitchen scale shows little, so the spoon is named first, g. */
const SPOONED_BELOW_G = 5;

/** '350 g (2⅓ cups)', '¼ tsp (1.1 g)' or '350 g'. */
export function amountText(food: Food, grams: number, region: Region): string {
  const beside = besideText(food, grams, region);
  if (beside === null) return `${grams} g`;
  return grams < SPOONED_BELOW_G
    ? `${beside.replace('about ', '')} (${grams} g)`
    : `${grams} g (${beside})`;
}
