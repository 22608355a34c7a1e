/** Other readings of the lines, for figures that cannot be believed: '800 potatoes', '14 cup sugar', '17.3 pastry'. */
import type { Amount, Ingredient, Line, Note } from '../model.ts';
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

/** '17.3 puff pastry': no count of pieces, but the ounces of a packet. */
function isOunces({ item, weight }: Ingredient): boolean {
  const [first, ...rest] = item.amounts;
  if (!first || rest.length > 0 || first.unit !== null || weight === null) return false;
  const tenths = first.quantity * 10;
  const isTenths = Math.abs(tenths - Math.round(tenths)) < 1e-9 && tenths % 5 !== 0;
  return isTenths && first.quantity > 5 && weight.grams.best > HEAVY_G;
}

/** Fractions whose stroke was lost on the way: '14 cup' of '1/4 cup'. */
const WITHOUT_STROKE = new Map([
  [12, 1 / 2],
  [13, 1 / 3],
  [14, 1 / 4],
  [18, 1 / 8],
  [23, 2 / 3],
  [34, 3 / 4],
]);
const SPOONED: ReadonlySet<string | null> = new Set(['cup', 'tbsp', 'tsp']);

const isFraction = ({ item }: Ingredient): boolean =>
  item.amounts.length === 1 &&
  item.amounts.every(
    ({ unit, quantity, max }) => SPOONED.has(unit) && max === null && WITHOUT_STROKE.has(quantity),
  );

const withAmounts = (line: Line, change: (amount: Amount) => Amount): Line => ({
  ...line,
  items: line.items.map((item) => ({ ...item, amounts: item.amounts.map(change) })),
});

function changed(
  lines: readonly Line[],
  ingredients: readonly Ingredient[],
  applies: (ingredient: Ingredient) => boolean,
  change: (amount: Amount) => Amount,
): Line[] | null {
  const these = new Set(ingredients.filter(applies).map(({ line }) => line));
  if (these.size === 0) return null;
  return lines.map((line) => (these.has(line) ? withAmounts(line, change) : line));
}

/** Two amounts are the same one within this share. Own choice. */
const SAME_SHARE = 0.03;

/** Lines whose two amounts differ, without the one that was taken. */
function otherAmounts(lines: readonly Line[], ingredients: readonly Ingredient[]): Line[] | null {
  const taken = new Map(
    ingredients.flatMap(({ line, weight }) =>
      weight?.disagreement ? [[line, weight.disagreement.stated] as const] : [],
    ),
  );
  const wasTaken = ({ unit, quantity }: Amount, grams: number): boolean =>
    Math.abs((gramsOf(unit) ?? 0) * quantity - grams) < grams * SAME_SHARE;
  let found = false;
  const read = lines.map((line) => {
    const grams = taken.get(line);
    if (grams === undefined) return line;
    const items = line.items.map((item) => {
      const amounts = item.amounts.filter((amount) => !wasTaken(amount, grams));
      if (amounts.length === 0 || amounts.length === item.amounts.length) return item;
      found = true;
      return { ...item, amounts };
    });
    return { ...line, items };
  });
  return found ? read : null;
}

export interface OtherReading {
  lines: Line[];
  note: Note;
}

const note = (code: string, text: string): Note => ({ code, text, key: null });

/**
 * What the lines may mean instead, to be tried when the figures cannot be believed as they stand:
 * counts as grams (from 40 on where so many pieces would weigh more than a kilogram, from 15 on
 * where the page gives no unit of mass or volume), odd decimals as ounces, the other of two amounts that
 * differ, fractions whose stroke was lost. Empty when nothing of the kind is on the page.
 */
export function otherReadings(
  lines: readonly Line[],
  ingredients: readonly Ingredient[],
): OtherReading[] {
  const withoutUnits = measuresNothing(lines);
  const grams = changed(
    lines,
    ingredients,
    (one) => isGrams(one, withoutUnits),
    (amount) => ({ ...amount, unit: 'g' }),
  );
  const ounces = changed(lines, ingredients, isOunces, (amount) => ({ ...amount, unit: 'oz' }));
  const fractions = changed(lines, ingredients, isFraction, (amount) => ({
    ...amount,
    quantity: WITHOUT_STROKE.get(amount.quantity) ?? amount.quantity,
  }));
  return [
    [grams, note('COUNTS_AS_GRAMS', 'Large numbers without a unit were taken as grams.')] as const,
    [ounces, note('COUNTS_AS_OUNCES', 'A number without a unit was taken as ounces.')] as const,
    [
      otherAmounts(lines, ingredients),
      note('OTHER_AMOUNT', 'Of two amounts on a line that differ, the other one was taken.'),
    ] as const,
    [fractions, note('LOST_STROKE', "Numbers such as '14 cup' were read as ¼ cup.")] as const,
  ].flatMap(([read, why]) => (read === null ? [] : [{ lines: read, note: why }]));
}
