/** The food table: what each food is made of, what its household measures weigh, what it does. */
import type { Food } from '../model.ts';
import { BUILT_IN_FOODS } from './built-in.ts';

/** Foods to look up by id, each id once; the user's own foods come first and shadow built-in ones. */
export interface FoodTable {
  readonly foods: readonly Food[];
  byId(id: string): Food | null;
}

const indexed = (foods: readonly Food[]): FoodTable => {
  const ids = new Map<string, Food>();
  for (const food of foods) if (!ids.has(food.id)) ids.set(food.id, food);
  return { foods: [...ids.values()], byId: (id) => ids.get(id) ?? null };
};

const builtIn = indexed(BUILT_IN_FOODS);

/** One table for one list of own foods, so that what is indexed by table is indexed once. */
const withOwn = new WeakMap<readonly Food[], FoodTable>();

/**
 * The built-in table, with the user's own foods in front when there are any. A built-in food whose
 * id an own food has is left out. `ownFoods` must not be changed afterwards.
 */
export function foodTable(ownFoods: readonly Food[] = []): FoodTable {
  if (ownFoods.length === 0) return builtIn;
  let table = withOwn.get(ownFoods);
  if (!table) {
    table = indexed([...ownFoods, ...BUILT_IN_FOODS]);
    withOwn.set(ownFoods, table);
  }
  return table;
}
