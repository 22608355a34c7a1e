/** The amounts of an item as readings: one quantity each, in one or several measures. */
import type { Amount, Item } from '../model.ts';
import { gramsOf, millilitresOf, OUNCES_PER_POUND } from '../units.ts';

/** `count` units of a package or piece, each of the size in `size`, when the line says so. */
export interface Part {
  amount: Amount;
  /** Size of one unit ('14 oz' of '2 (14 oz) cans'), else null. */
  size: Amount | null;
}

/** One reading of the quantity: parts to be added up. */
export type Reading = Part[];

/** '4 small or 2 large', '1 medium or ½ large'. */
export const COUNT_OR_COUNT =
  /[\d½¼¾⅓⅔]\s*(?:[a-z-]+\s+){0,2}or\s+(?:[\d½¼¾⅓⅔]|one\b|two\b|half\b)/;

const SAME_SIZE_RATIO = 1.25;

/** Rough grams of one measure; a millilitre counts as a gram. Null for counts and lengths. */
const roughly = ({ quantity, unit }: Amount): number | null => {
  const one = gramsOf(unit) ?? millilitresOf(unit, 'us');
  return one === null ? null : one * quantity;
};

/** '150g/5oz' of '10 x 150g/5oz': the size repeated, not the whole. */
function saysSizeAgain(amount: Amount, size: Amount): boolean {
  const a = roughly(amount);
  const b = roughly(size);
  return a !== null && b !== null && a > 0 && b > 0 && Math.max(a / b, b / a) < SAME_SIZE_RATIO;
}

/** '4 cups, or 3 (15-ounce) cans': the size stands between the count and its unit. */
const SIZE_INSIDE = /\d\s*\([^)]*\d[^)]*\)\s*(?:cans?|tins?|jars?|packages?|boxes)\b/;
/** '3 cups (one 28-ounce can)': the same with the count in words. */
const COUNTED_SIZE =
  /\b(?:one|two|three|four|five|six|\d+)\s+\d[\d./]*[\s-]*(?:ounces?|oz|g|grams?|lbs?|pounds?|ml)[\s-]+(?:cans?|tins?|jars?|packages?|packets?|boxe?s?|bags?|bottles?|cartons?)\b/;
const CONTAINER: ReadonlySet<string | null> = new Set(['can', 'tin', 'jar', 'package', 'box']);

/** A bare count before a mass takes the mass as the size of one. */
function sizesOfCounts(amounts: readonly Amount[], text: string): Amount[] {
  if (!COUNTED_SIZE.test(text)) return [...amounts];
  return amounts.map((amount, at) => {
    const count = amounts[at - 1];
    const isSize = at > 1 && count?.unit === null && count.kind === 'same';
    return isSize && amount.kind === 'same' && gramsOf(amount.unit) !== null
      ? { ...amount, kind: 'each' }
      : amount;
  });
}

/** Amounts whose size came before its count are put the other way round. */
function countsFirst(amounts: readonly Amount[], text: string): Amount[] {
  const ordered = sizesOfCounts(amounts, text);
  if (!SIZE_INSIDE.test(text)) return ordered;
  for (let at = 1; at + 1 < ordered.length; at += 1) {
    const size = ordered[at];
    const count = ordered[at + 1];
    if (size?.kind !== 'same' || count?.kind !== 'same') continue;
    if (gramsOf(size.unit) === null || !CONTAINER.has(count.unit)) continue;
    ordered.splice(at, 2, count, { ...size, kind: 'each' });
  }
  return ordered;
}

const POUNDS_AND_OUNCES = /\d\s*lbs?\.?\s*\d[\d/]*\s*[½¼¾⅓⅔]?\s*oz/;

/** '2lb 4oz' is one amount; `text` tells it from '1 lb (12 oz)'. */
function joinedPounds(amounts: readonly Amount[], text: string): Amount[] {
  if (!POUNDS_AND_OUNCES.test(text)) return [...amounts];
  const joined: Amount[] = [];
  for (const amount of amounts) {
    const before = joined[joined.length - 1];
    const isRest = amount.unit === 'oz' && amount.quantity < OUNCES_PER_POUND;
    const alike = amount.kind !== 'each' || before?.kind === 'each';
    if (before?.unit === 'lb' && isRest && alike) {
      const quantity = before.quantity * OUNCES_PER_POUND + amount.quantity;
      joined[joined.length - 1] = { ...before, unit: 'oz', quantity, max: null };
    } else joined.push(amount);
  }
  return joined;
}

/** '2 x 400/14oz tins': the unit of the first size is left out, and the ounces show which. */
const GRAMS_BEFORE_OUNCES = /\b(\d{2,4})\/\d[\d.]*\s?oz\b/;

/** A size without a unit is in grams where the line says it again in ounces. */
function sizesInGrams(amounts: readonly Amount[], text: string): Amount[] {
  const grams = Number(GRAMS_BEFORE_OUNCES.exec(text)?.[1]);
  return amounts.map((amount) =>
    amount.kind === 'each' && amount.unit === null && amount.quantity === grams
      ? { ...amount, unit: 'g' }
      : amount,
  );
}

/** '6 chops, 12 ounces each': a mass after a bare count, on a line that says 'each'. */
const isSizeOfCount = (amount: Amount, first: Amount, text: string): boolean =>
  first.unit === null && gramsOf(amount.unit) !== null && /\beach\b/.test(text);

/** '4 large or 6 medium stalks': both counts are of the unit that is named once. */
function withSharedUnit(amounts: readonly Amount[], text: string): Amount[] {
  const [first, second, ...rest] = amounts;
  const shared = first?.unit === null && second?.kind === 'same' && COUNT_OR_COUNT.test(text);
  if (!first || !second || !shared || isMeasure(second)) return [...amounts];
  return [{ ...first, unit: second.unit }, second, ...rest];
}

/** '1 - 4 pound whole chicken': one of four pounds; nobody's bird has one to four. */
const ONE_OF_SIZE =
  /(?:^|\s)1\s[-–]\s(?:[3-9]|[1-9]\d)[\d./½¼¾]*[- ]?(?:pound|lb|ounce|oz|kg)\b(?!s)/;

function sizeAsStated(amounts: readonly Amount[], text: string): Amount[] {
  const [first, ...rest] = amounts;
  if (first?.quantity !== 1 || first.max === null || !ONE_OF_SIZE.test(text)) return [...amounts];
  return [{ ...first, quantity: first.max, max: null }, ...rest];
}

const isMeasure = ({ unit }: Amount): boolean =>
  gramsOf(unit) !== null || millilitresOf(unit, 'us') !== null;

/**
 * Readings in the order of the line. 'plus' adds to the reading before it, 'each' sizes the last
 * part, 'same' opens a new reading of the same quantity. `text` is the line in lower case.
 */
export function readingsOf(item: Item, text = ''): Reading[] {
  const readings: Reading[] = [];
  const amounts = withSharedUnit(
    joinedPounds(countsFirst(sizesInGrams(sizeAsStated(item.amounts, text), text), text), text),
    text,
  );
  for (const amount of amounts) {
    const current = readings[readings.length - 1];
    const last = current?.[current.length - 1];
    if (!current || !last) {
      readings.push([{ amount, size: null }]);
    } else if (amount.kind === 'plus') {
      current.push({ amount, size: null });
    } else if (last.size === null) {
      addTo(readings, last, amount, text);
    } else if (saysSizeAgain(amount, last.size)) {
      readings.push([{ amount: last.amount, size: amount }]);
    } else {
      readings.push([{ amount, size: null }]);
    }
  }
  return readings;
}

function addTo(readings: Reading[], last: Part, amount: Amount, text: string): void {
  if (amount.kind === 'each' || isSizeOfCount(amount, last.amount, text)) last.size = amount;
  else readings.push([{ amount, size: null }]);
}

/** The middle and the ends of a stated amount. */
export function spanOf(amount: Amount): { low: number; best: number; high: number } {
  const low = Number.isFinite(amount.quantity) ? amount.quantity : 0;
  const high = amount.max !== null && Number.isFinite(amount.max) ? amount.max : low;
  return { low: Math.min(low, high), best: (low + high) / 2, high: Math.max(low, high) };
}
