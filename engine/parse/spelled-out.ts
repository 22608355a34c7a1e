/** A blend whose line says what it is made of: '2 cups flour blend (1 cup almond flour, 1 cup rice flour)'. */
import type { Amount, Item, Line } from '../model.ts';
import { gramsOf, millilitresOf } from '../units.ts';
import { type ParseOptions, parseLine } from './index.ts';

const BLEND = /\b(?:blend|mix|mixture)$/i;
const LISTED = /(?:\(|:)([^():]*\d[^():]*|[^():]*[¼-¾⅐-⅞][^():]*)\)?[^()]*$/;
const BETWEEN = /,(?: and| plus)?|;|\+| and | plus /;
const AMOUNT_FIRST = /^\s*[\d¼-¾⅐-⅞]/;
/** The parts may be a batch of which the line takes some; more than they make is another recipe. */
const MOST_OF_PARTS = 1.15;
const LEAST_OF_PARTS = 0.2;

/** Grams, or millilitres below zero so that the two never add up; null for a count. */
function measure({ quantity, unit }: Amount): number | null {
  const grams = gramsOf(unit);
  if (grams !== null) return grams * quantity;
  const ml = millilitresOf(unit, 'us');
  return ml === null ? null : -ml * quantity;
}

/** The only measured amount of the only item. */
function single(items: readonly Item[]): number | null {
  const [item, ...others] = items;
  const [amount] = item?.amounts ?? [];
  return amount && others.length === 0 ? measure(amount) : null;
}

const times = (item: Item, factor: number): Item => ({
  ...item,
  amounts: item.amounts.slice(0, 1).map((amount) => ({
    ...amount,
    quantity: amount.quantity * factor,
    max: amount.max === null ? null : amount.max * factor,
  })),
});

/** The parts as items of their own, in the amounts that the line takes of them; null for any other line. */
function partsOf({ text, name, items }: Line, options: ParseOptions): Item[] | null {
  const listed = LISTED.exec(text)?.[1];
  const whole = single(items);
  if (listed === undefined || whole === null || !BLEND.test(name)) return null;
  const written = listed.split(BETWEEN).filter((part) => part.trim() !== '');
  if (written.length < 2 || !written.every((part) => AMOUNT_FIRST.test(part))) return null;
  const parts = written.map((part) => parseLine(part.trim(), options).items);
  const sizes = parts.map(single);
  if (sizes.some((size) => size === null || size * whole <= 0)) return null;
  const factor = whole / sizes.reduce<number>((sum, size) => sum + (size ?? 0), 0);
  if (factor > MOST_OF_PARTS || factor < LEAST_OF_PARTS) return null;
  return parts.flat().map((item) => times(item, factor));
}

/** The line, a blend of listed parts as those parts in its items. */
export function withBlendSpelledOut(line: Line, options: ParseOptions = {}): Line {
  const items = partsOf(line, options);
  return items ? { ...line, items } : line;
}
