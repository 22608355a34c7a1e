/** A range of pieces, of which everybody at the table has one: '4-6 chops' of a recipe for six. */
import { hasTag } from '../foods/tags.ts';
import type { Food, Interval, Item } from '../model.ts';

const IN_PIECES: ReadonlySet<string | null> = new Set([null, 'piece', 'fillet', 'portion']);

/** Small pieces, of which one eats several. */
const SEVERAL =
  /thigh|drumstick|wing|sausage|ball|bacon|shrimp|scallop|clam|mussel|oyster|anchov|sardine/;

const isOneEach = (food: Food): boolean =>
  (/^(?:meat|fish)/.test(food.group) && !SEVERAL.test(food.name)) ||
  hasTag(food, 'wrap') ||
  /\bbun$/.test(food.name);

/**
 * The grams with their best value at as many pieces as the page has servings, where that is within the
 * range of the line; else as they are. `servings` is null where the page states none, or a range.
 */
export function oneEach(
  grams: Interval,
  item: Item,
  food: Food | null,
  servings: number | null,
): Interval {
  const [amount] = item.amounts;
  const max = amount?.max ?? null;
  if (!amount || max === null || food === null || servings === null) return grams;
  if (!IN_PIECES.has(amount.unit) || servings < amount.quantity || servings > max) return grams;
  if (!isOneEach(food)) return grams;
  const middle = (amount.quantity + max) / 2;
  return { ...grams, best: (grams.best * servings) / middle };
}
