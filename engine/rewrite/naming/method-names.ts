/** What foods are called in the method. */
import { hasTag } from '../../foods/tags.ts';
import type { Ingredient, Plan, PlannedItem } from '../../model.ts';
import made from '../data/made.json' with { type: 'json' };

/** Words for several foods that are spoken of as one. */
export const COLLECTIVES: ReadonlySet<string> = new Set(['flours', 'sweeteners']);
/** Two sweeteners are named, more go by one word: own choice. */
const NAMED_SWEETENERS = 2;

/** A food's name without what follows the first comma: 'hearts of palm, canned' -> 'hearts of palm'. */
export const shortName = (name: string): string => name.split(',')[0]?.trim() ?? name;

export const singular = (name: string): string =>
  /(?:sh|ch|x|ss|o)es$/i.test(name) ? name.slice(0, -2) : name.replace(/([^s])s$/i, '$1');

/** With a capital first letter. */
export const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** 'a', 'a and b', 'a, b and c'. */
export function listOf(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}

const isFlour = (foodId: string): boolean => hasTag(foodId, 'flour-like');
export const isSweetener = (foodId: string): boolean => hasTag(foodId, 'sweetener');

/** What one item of an ingredient is called: its own food keeps the recipe's word. */
export const itemName = (item: PlannedItem, ingredient: Ingredient): string =>
  item.foodId === ingredient.match?.foodId ? ingredient.item.name : shortName(item.foodName);

/** The new name of an ingredient; null when it is gone or still the same food. */
export function newNameOf(ingredient: Ingredient, items: readonly PlannedItem[]): string | null {
  const foods = items.map(({ foodId }) => foodId);
  const [only] = items;
  if (only === undefined) return null;
  if (items.length === 1) {
    return only.foodId === ingredient.match?.foodId ? null : shortName(only.foodName);
  }
  const own = ingredient.match?.foodId ?? '';
  if (foods.every(isFlour) && hasTag(own, 'flour')) return 'flours';
  if (foods.every(isSweetener) && items.length > NAMED_SWEETENERS) return 'sweeteners';
  return listOf([...new Set(items.map((item) => itemName(item, ingredient)))]);
}

/** Whether a name stands for a thing made first, such as a crust. */
export const isMade = (name: string): boolean => Object.values(made).includes(name);

/** Name of what several foods make together in place of a bought one, when nothing of that stays. */
export function madeName(
  ingredient: Ingredient,
  items: readonly PlannedItem[],
  plan: Plan,
): string | null {
  const swaps = plan.swaps.filter(({ key }) => key === ingredient.key);
  const [only] = swaps;
  if (only === undefined || swaps.length !== 1 || only.keptGrams > 0 || items.length < 2)
    return null;
  return (made as Record<string, string>)[only.id] ?? null;
}
