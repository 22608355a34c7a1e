/** '800 potatoes': numbers without a unit that can only be grams. */
import type { Amount, Ingredient, Line } from '../model.ts';
import { gramsOf, millilitresOf } from '../units.ts';

/** A bare number from here on may be grams. Own choice. */
const GRAMS_FROM = 40;
/** On a page that gives no unit at all, from here on. Own choice. */
const GRAMS_FROM_WITHOUT_UNITS = 15;
/** So many pieces weigh more than any kitchen takes of one food, g. Own choice. */
const HEAVY_G = 1000;

/** What is counted by a word that may as well stand in the food's name. */
const PIECE_WORDS: ReadonlySet<string | null> = new Set([null, 'piece', 'strip', 'slice', 'stick']);

const hasMeasure = ({ unit }: Amount): boolean =>
  gramsOf(unit) !== null || millilitresOf(unit, 'us') !== null;

const measuresNothing = (lines: readonly Line[]): boolean =>
  !lines.some(({ items }) => items.some(({ amounts }) => amounts.some(hasMeasure)));

function isGrams({ item, weight }: Ingredient, withoutUnits: boolean): boolean {
  const [first, ...rest] = item.amounts;
  if (!first || rest.length > 0 || !PIECE_WORDS.has(first.unit) || weight === null) return false;
  if (withoutUnits && first.unit === null) return first.quantity >= GRAMS_FROM_WITHOUT_UNITS;
  return first.quantity >= GRAMS_FROM && weight.grams.best > HEAVY_G;
}

const inGrams = (line: Line): Line => ({
  ...line,
  items: line.items.map((item) => ({
    ...item,
    amounts: item.amounts.map((amount) => ({ ...amount, unit: 'g' })),
  })),
});

/**
 * The lines with every unlikely count read as grams: from 40 on where so many pieces would weigh
 * more than a kilogram, from 15 on where the page gives no unit of mass or volume. Null when there is none.
 */
export function countsAsGrams(
  lines: readonly Line[],
  ingredients: readonly Ingredient[],
): Line[] | null {
  const withoutUnits = measuresNothing(lines);
  const counted = new Set(
    ingredients.filter((one) => isGrams(one, withoutUnits)).map(({ line }) => line),
  );
  return counted.size === 0
    ? null
    : lines.map((line) => (counted.has(line) ? inGrams(line) : line));
}
