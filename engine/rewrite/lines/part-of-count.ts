/** How much of what the page counted is left, beside its grams: '215 g (about 1¼) pears', '155 g (about ⅔ of the can) beans'. */
import type { Food, Ingredient, PlannedItem } from '../../model.ts';
import { pluralUnit } from './piece-counts.ts';
import { fractionText, snapTo } from './written-amounts.ts';

const CONTAINERS: ReadonlySet<string> = new Set(['can', 'tin', 'jar']);

/** Parts of one that the eye finds. */
const PARTS = [0, 1 / 4, 1 / 3, 1 / 2, 2 / 3, 3 / 4, 1];

/** From so many on they are counted in halves, and in whole ones. Own choice. */
const HALVES_FROM = 3;
const WHOLE_FROM = 5;

/** A count further than this from the grams is not shown, and one further than the other is 'about'. Own choice. */
const NEAR = { shown: 0.13, exact: 0.02 } as const;

function steps(quantity: number): readonly number[] {
  if (quantity >= WHOLE_FROM) return [0, 1];
  return quantity >= HALVES_FROM ? [0, 1 / 2, 1] : PARTS;
}

/** The page's own word for a container, in another language: '1 Dose Kidneybohnen'. */
const ownContainer = ({ line }: Ingredient): string | undefined =>
  /^\s*1\s+(\p{L}+)\s/u.exec(line.text)?.[1];

function containerText(number: string, whole: number, left: number, unit: string): string {
  return whole === 1 && left < 1
    ? `${number} of the ${unit}`
    : `${number} ${pluralUnit(unit, left)}`;
}

/** What is left of a count, as it stands in the brackets behind the grams; null when the page counts nothing there. */
export function partOfCount(
  item: PlannedItem,
  ingredient: Ingredient,
  food: Food,
  foreign: boolean,
): string | null {
  const grams = ingredient.weight?.grams.best ?? 0;
  const [amount] = ingredient.item.amounts;
  if (amount === undefined || amount.max !== null || grams <= 0) return null;
  const { quantity: whole, unit } = amount;
  const contained = unit !== null && CONTAINERS.has(unit);
  if (!contained && (unit !== null || food.state !== 'raw' || food.group === 'eggs')) return null;
  const exact = (whole * item.grams) / grams;
  const left = snapTo(exact, steps(exact));
  const error = Math.abs(left - exact) / exact;
  if (left < 1 / 4 || left >= whole || error > NEAR.shown) return null;
  const number = `${error > NEAR.exact ? 'about ' : ''}${fractionText(left)}`;
  if (!contained) return left < 1 && !foreign ? `${number} of one` : number;
  if (!foreign) return containerText(number, whole, left, unit);
  const word = whole === 1 ? ownContainer(ingredient) : undefined;
  return word === undefined ? null : `${number} ${word}`;
}
