/** The user's own foods, from package labels. One food an id: a new package in the same place replaces the old. */
import { Food } from '../../engine/model.ts';
import type { Store } from './db.ts';

/** Own foods that fit their schema, by name, and how many rows do not; those stay on disk. */
export interface OwnFoods {
  foods: readonly Food[];
  damaged: number;
}

/** @throws the storage layer's error. */
export async function listOwnFoods(store: Store): Promise<OwnFoods> {
  const rows: unknown[] = await store.foods.toArray();
  const read = rows.map((row) => Food.safeParse(row));
  const foods = read.flatMap((row) => (row.success ? [row.data] : []));
  return {
    foods: foods.sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0)),
    damaged: read.length - foods.length,
  };
}

/**
 * Keeps a food and returns the one it replaces, or null. Resolves after the transaction has ended.
 * @throws the storage layer's error; nothing is changed then.
 */
export async function saveOwnFood(store: Store, food: Food): Promise<Food | null> {
  return store.transaction('rw', store.foods, async () => {
    const old = Food.safeParse(await store.foods.get(food.id));
    await store.foods.put(food);
    return old.success ? old.data : null;
  });
}

/** @throws the storage layer's error; nothing is changed then. */
export async function deleteOwnFood(store: Store, id: string): Promise<void> {
  await store.transaction('rw', store.foods, () => store.foods.delete(id));
}
