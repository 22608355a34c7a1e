/** Things that are counted on a line: 'six buns' stay six, whatever they are made of now. */
import type { Food, Ingredient, PlannedItem } from '../../model.ts';
import countedFoods from '../data/counted-foods.json' with { type: 'json' };
import { type MethodWords, withOf } from '../languages/method-words.ts';
import { agreeing, plural as manyOf } from '../wording/agreement.ts';
import { fractionText } from './written-amounts.ts';

/** '2 large onions': what was counted. */
export interface PieceCount {
  quantity: number;
  unit: string | null;
  size: string | null;
  /** How the page calls the unit, in another language than English. */
  word?: string | null;
  /** What follows the name: ', 2 large leaves each'. */
  note?: string;
}

interface CountedFood {
  /** What one of them weighs, where it need not be the size of what it stands for; g. */
  leafG?: number;
}
const COUNTED: Readonly<Record<string, CountedFood>> = countedFoods.foods;

/** Counts are shown in halves when the scaled count is this near to one: own choice. */
const NEAR_COUNT = 0.04;

/** Units of things that lie on a plate one by one. */
const PIECE_UNITS: ReadonlySet<string | null> = new Set([null, 'slice', 'piece', 'ear', 'sheet']);

/** Units that say how large one is: '12 (6-inch) tortillas'. */
const ACROSS: ReadonlySet<string | null> = new Set(['inch', 'cm', 'mm']);

/** Abbreviations stay as they are in the plural. */
export const pluralUnit = (unit: string, quantity: number): string =>
  quantity <= 1 || /s$|^(m?[gl]|k?g|[cd]l|oz|lb|fl oz|tbsp|tsp)$/.test(unit)
    ? unit
    : unit
        .replace(/(ch|sh|x)$/, '$1e')
        .replace(/(lea|loa)f$/, '$1ve')
        .concat('s');

/** The nearest half to a count, or null when it is near none. */
export function halvesOf(quantity: number): number | null {
  const halves = Math.round(quantity * 2) / 2;
  return halves === 0 || Math.abs(halves - quantity) > NEAR_COUNT * quantity ? null : halves;
}

/** The count a line states of its food, with 'two to three' in the middle; null when it weighs or measures. */
function countOn({ item, line }: Ingredient): PieceCount | null {
  const amount = item.amounts.find(({ unit, quantity }) => PIECE_UNITS.has(unit) && quantity >= 1);
  const [first] = item.amounts;
  if (amount === undefined || (first !== amount && first?.unit !== 'g')) return null;
  const quantity = Math.round((amount.quantity + (amount.max ?? amount.quantity)) / 2);
  const word = amount.unit === null ? null : /^\s*[\d½¼¾/–-]+\s+(\p{L}+)/u.exec(line.text)?.[1];
  return { quantity, unit: amount.unit, size: item.size, word: word ?? null };
}

/** How a stand-in is counted that comes in pieces like what it stands for; null when it does not. */
export function countOfStandIn(item: PlannedItem, ingredient: Ingredient): PieceCount | null {
  const counted = COUNTED[item.foodId];
  const count = counted === undefined ? null : countOn(ingredient);
  if (counted === undefined || count === null) return null;
  return counted.leafG === undefined
    ? sizedAs(count, item.grams, ingredient.weight?.grams.best ?? 0)
    : leavesFor(count, item, counted.leafG);
}

const LARGE = /large|jumbo|big|giant/i;
/** Share of a large piece from which one is as large. Own choice. */
const AS_LARGE = 0.9;

/** Smaller pieces than the page's are not called large. */
const sizedAs = (count: PieceCount, grams: number, before: number): PieceCount =>
  grams < AS_LARGE * before && LARGE.test(count.size ?? '') ? { ...count, size: null } : count;

/** Leaves in place of wrappers: as many to each as it takes. */
function leavesFor(count: PieceCount, item: PlannedItem, leafG: number): PieceCount {
  const leaves = Math.max(1, Math.round(item.grams / leafG / count.quantity));
  const bare = { size: null, word: null };
  if (!/wraps$/.test(item.foodId))
    return { ...bare, quantity: leaves * count.quantity, unit: 'large leaf' };
  const note = leaves === 1 ? ', 1 large leaf each' : `, ${leaves} large leaves each`;
  return { ...bare, quantity: count.quantity, unit: null, note };
}

/** '12 high-fibre buns (580 g)'; null when the count comes to no half or whole. */
export function standInText(
  count: PieceCount,
  name: string,
  grams: number,
  local: MethodWords | null,
): string | null {
  const halves = halvesOf(count.quantity);
  if (halves === null) return null;
  const number = fractionText(halves);
  if (local !== null && (count.note !== undefined || count.unit === 'large leaf')) return null;
  if (local !== null) {
    const lead = count.word
      ? `${number} ${count.word} ${withOf(name, local)}`
      : `${number} × ${name}`;
    return `${lead} (${grams} g)`;
  }
  const unit = count.unit === null ? null : pluralUnit(count.unit, halves);
  const many = unit === null && halves > 1 && !/s$/i.test(name) ? manyOf(name) : name;
  const called = unit === null && halves <= 1 ? agreeing(name, 'one', 'a ') : many;
  const words = [number, count.size, unit, called].filter((word) => word !== null);
  return `${words.join(' ')} (${grams} g)${count.note ?? ''}`;
}

/** What the page counted of a food that stays, in its new amount; null when grams rest on something else. */
export function countOfRest(
  item: PlannedItem,
  ingredient: Ingredient,
  food: Food,
): PieceCount | null {
  const grams = ingredient.weight?.grams.best ?? 0;
  const [amount] = ingredient.item.amounts;
  if (ingredient.weight?.basis !== 'count' || grams <= 0 || amount?.max !== null) return null;
  const [, ...others] = ingredient.item.amounts;
  if (others.some(({ unit }) => !ACROSS.has(unit)) || !PIECE_UNITS.has(amount.unit)) return null;
  if (food.state === 'raw' && amount.unit === null && !/tortilla|bread|bun/.test(food.id))
    return null;
  const quantity = (amount.quantity * item.grams) / grams;
  return { quantity, unit: amount.unit, size: ingredient.item.size };
}
