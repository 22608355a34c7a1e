/** How one food of a line is written: amount, name and what follows it. */
import type { FoodTable } from '../../foods/index.ts';
import type { Food, Ingredient, Plan, PlannedItem } from '../../model.ts';
import type { Region } from '../../units.ts';
import {
  decimals,
  localFoodName,
  localUnits,
  type MethodWords,
} from '../languages/method-words.ts';
import { amountText, kitchenGrams, pieceText } from './written-amounts.ts';

export interface LineContext {
  plan: Plan;
  foods: FoodTable;
  region: Region;
  /** Words of the recipe's language, where it is another than English. */
  local?: MethodWords | null;
}

/** What follows the name on the original line and still holds: preparation, purpose, note. */
export function tailOf(ingredient: Ingredient): string {
  const { item, line } = ingredient;
  const note = line.note !== null && !/\d/.test(line.note) ? line.note : null;
  const words = [item.preparation, line.purpose, note].filter((word) => word !== null);
  const tail = words.length > 0 ? `, ${words.join(', ')}` : '';
  return line.optional && !/optional/i.test(tail) ? `${tail} (optional)` : tail;
}

const CONTAINERS: ReadonlySet<string> = new Set(['can', 'tin', 'jar', 'carton', 'bottle']);
/** A spoon of 'tomato puree' is paste, two 'peppers' are no spice: in grams the name alone must tell. */
const NAMED_BY_AMOUNT = /^(tomato pur[ée]e|peppers?|jelly|coriander)$/i;

/** An ingredient's name on a line in grams: its own words, or the food's where the amount told what it is. */
export function ownName({ item }: Ingredient, food: Food | null): string {
  const contained = item.amounts.some(({ unit }) => unit !== null && CONTAINERS.has(unit));
  const unclear = contained || NAMED_BY_AMOUNT.test(item.name.trim());
  return unclear && food !== null ? food.name : item.name;
}

/** A food's name in the recipe's language; the English one where it has none there. */
export const foodName = (item: PlannedItem, local: MethodWords | null): string =>
  (local === null ? null : localFoodName(item.foodId, local)) ?? item.foodName;

/** A planned item as a line of its own: '350 g (2⅓ cups) high-fibre wheat flour blend, sifted'. */
export function itemText(
  item: PlannedItem,
  context: LineContext,
  words?: { name: string; tail: string },
): string {
  const food = context.foods.byId(item.foodId);
  const local = context.local ?? null;
  const name = words?.name ?? foodName(item, local);
  const tail = words?.tail ?? '';
  if (food === null) return `${Math.round(item.grams * 10) / 10} g ${name}${tail}`;
  const grams = kitchenGrams(food, item.grams, item.role);
  const pieces = pieceText(food, grams, local);
  if (pieces !== null) return `${pieces}${tail}`;
  const amount = amountText(food, grams, context.region);
  const localAmount = local === null ? amount : localUnits(decimals(amount), local);
  return `${localAmount} ${name}${tail}${edibleTail(food, name + tail, local)}`;
}

const SAID_EDIBLE = /\b(boneless|shelled|florets?|fillets?|pitted)\b/i;

/** Planned grams are edible ones; a food bought with peel or bone says so, or it would be weighed whole. */
export function edibleTail(food: Food, said: string, local: MethodWords | null = null): string {
  const whole = food.state === 'raw' && (food.refuseShare ?? 0) > 0;
  if (!whole || SAID_EDIBLE.test(said)) return '';
  const { shelled = 'shelled', trimmed = 'trimmed weight' } = local?.lines ?? {};
  return food.group === 'eggs' ? `, ${shelled}` : `, ${trimmed}`;
}

const CRUMBS = /crumb|panko|cornflake|cracker/i;

/** What a coating that is not all eaten says, so that the line is read like the plan again. */
function coatingTail(item: PlannedItem, ingredient: Ingredient, local: MethodWords | null): string {
  if (local !== null) return '';
  if (item.role !== 'coating' || item.eaten.best >= 1) return '';
  const crumbs = CRUMBS.test(`${ingredient.item.name} ${ingredient.match?.foodName ?? ''}`);
  const own = item.foodId === ingredient.match?.foodId;
  return crumbs && !own ? ', for coating in place of breadcrumbs' : ', for coating';
}

/** A stand-in keeps what the original was for ('for dusting'), not how the original was cut. */
export function tailOnly(
  item: PlannedItem,
  ingredient: Ingredient,
  local: MethodWords | null,
): { name: string; tail: string } {
  const { purpose } = ingredient.line;
  const tail = purpose === null ? coatingTail(item, ingredient, local) : `, ${purpose}`;
  return { name: foodName(item, local), tail };
}

/** The line's own food in a new amount. */
export function ownWords(
  item: PlannedItem,
  ingredient: Ingredient,
  food: Food | null,
  local: MethodWords | null,
): { name: string; tail: string } {
  const said = tailOf(ingredient);
  const coats = ingredient.line.purpose === null ? coatingTail(item, ingredient, local) : '';
  return { name: ownName(ingredient, food), tail: `${said}${coats}` };
}
