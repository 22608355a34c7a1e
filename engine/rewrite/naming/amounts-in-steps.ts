/** Amounts that a method's words give of an ingredient, and how the new ones are written. */
import type { FoodTable } from '../../foods/index.ts';
import type { PlannedItem } from '../../model.ts';
import type { Region } from '../../units.ts';
import { amountText, kitchenGrams, pieceText } from '../lines/written-amounts.ts';
import type { UsedSoFar } from '../steps/used-so-far.ts';
import { type Mention, massOf } from './mention.ts';
import { itemName, listOf } from './method-names.ts';

export interface RenameContext {
  foods: FoodTable;
  region: Region;
  used: UsedSoFar;
}

type StatedAmount = Mention['ingredient']['item']['amounts'][number];

/** Matches "50 g of the ", "1/2 cup " in front of a name. */
export const AMOUNT = String.raw`(?:(?<quantity>\d+\s?[¼-¾⅐-⅞]|\d+(?:\s+|-)\d\/\d|\d+\/\d|\d+(?:[.,]\d+)?|[¼-¾⅐-⅞])\s*(?<unit>g|grams?|grammes?|kg|ml|cups?|tbsps?|tablespoons?|tsps?|teaspoons?|oz|ounces?|lbs?|pounds?)?\.?\s+(?:of\s+)?(?:the\s+)?)`;

/** Share of the whole line that an amount in a step names, or null when it cannot be told. */
export function shareNamed(mention: Mention, quantity: number, unit: string | null): number | null {
  const { item, weight } = mention.ingredient;
  if (isSum(mention)) return spoonShare(mention, quantity, unit);
  const like = item.amounts.find((amount) => amount.unit === unit && amount.quantity > 0);
  const spoons = like === undefined ? spoonShare(mention, quantity, unit) : null;
  const grams = weight?.grams.best ?? 0;
  const inGrams = unit === 'kg' ? quantity * 1000 : unit === 'g' ? quantity : null;
  const share = like
    ? quantity / wholeOf(like, quantity)
    : inGrams !== null && grams > 0
      ? inGrams / grams
      : spoons;
  return share !== null && share > 0 && share <= 1.02 ? Math.min(1, share) : null;
}

/** What a part is a part of: of '5-6 cups', taken in several goes, all six may be needed. */
const wholeOf = ({ quantity, max }: StatedAmount, part: number): number =>
  part < quantity ? (max ?? quantity) : quantity;

/** Teaspoons in each measure: 3 to the tablespoon, 16 tablespoons to the cup. */
const TEASPOONS: Readonly<Record<string, number>> = { tsp: 1, tbsp: 3, cup: 48 };

/** Whether a line adds up: '1 tbsp plus 2 tsp'. */
const isSum = ({ ingredient }: Mention): boolean =>
  ingredient.item.amounts.some(({ kind }) => kind === 'plus');

/** '2 tbsp of the sugar' of a line in cups, '2 tsp' of one of 1 tbsp plus 2 tsp; at most all of it. */
function spoonShare({ ingredient }: Mention, quantity: number, unit: string | null): number | null {
  const each = TEASPOONS[unit ?? ''];
  const summed = ingredient.item.amounts.filter(({ kind }, at) => at === 0 || kind === 'plus');
  const whole = summed.reduce(
    (sum, stated) => sum + stated.quantity * (TEASPOONS[stated.unit ?? ''] ?? Number.NaN),
    0,
  );
  if (each === undefined || !(whole > 0)) return null;
  const share = (quantity * each) / whole;
  return share > 0 && share <= 1.02 ? Math.min(1, share) : null;
}

export function itemAmount(
  item: PlannedItem,
  share: number,
  { foods, region }: RenameContext,
): string {
  const food = foods.byId(item.foodId);
  if (food === null) return `${Math.round(item.grams * share)} g`;
  const grams = kitchenGrams(food, item.grams * share, item.role);
  return amountText(food, grams, region);
}

/** Grams alone, for lists: '70 g erythritol', '2 large eggs (100 g shelled)'. */
export function withGrams(
  item: PlannedItem,
  name: string,
  share: number,
  { foods }: RenameContext,
): string {
  const food = foods.byId(item.foodId);
  const grams =
    food === null ? item.grams * share : kitchenGrams(food, item.grams * share, item.role);
  const pieces = food === null ? null : pieceText(food, grams);
  const shown = share < 1 ? weighed(grams) : Math.round(grams * 100) / 100;
  return pieces ?? `${shown} g ${name}`;
}

/** As kitchen scales show it: whole grams, halves of what is little, hundredths of a pinch. */
function weighed(grams: number): number {
  if (grams >= 10) return Math.round(grams);
  return grams >= 3 ? Math.round(2 * grams) / 2 : Math.round(grams * 100) / 100;
}

/** Parts of a mix in fives from 50 g: what nobody weighs to the gram. */
const inFives = (grams: number): number =>
  grams < 50 ? Math.round(grams) : Math.round(grams / 5) * 5;

/** '75 g', or '75 g allulose and 35 g erythritol' where one word stands for several foods but flours. */
export function shareAmount(mention: Mention, share: number, context: RenameContext): string {
  const { items, newName, ingredient } = mention;
  if (newName === 'flours') return `${inFives(massOf(mention) * share)} g`;
  return listOf(items.map((item) => withGrams(item, itemName(item, ingredient), share, context)));
}
