/** The food table: what each food is made of, what its household measures weigh, what it does. */
import type { Food } from '../model.ts';
import { BUILT_IN_FOODS } from './built-in.ts';

/** Foods to look up by id; the user's own foods come first and may shadow built-in ones. */
export interface FoodTable {
  readonly foods: readonly Food[];
  byId(id: string): Food | null;
}

const indexed = (foods: readonly Food[]): FoodTable => {
  const ids = new Map<string, Food>();
  for (const food of foods) if (!ids.has(food.id)) ids.set(food.id, food);
  return { foods, byId: (id) => ids.get(id) ?? null };
};

const builtIn = indexed(BUILT_IN_FOODS);

/** The built-in table, with the user's own foods in front when there are any. */
export function foodTable(ownFoods: readonly Food[] = []): FoodTable {
  return ownFoods.length === 0 ? builtIn : indexed([...ownFoods, ...BUILT_IN_FOODS]);
}
