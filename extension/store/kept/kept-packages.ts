/** The user's own foods, from package labels. One food an id: a new package in the same place replaces the old. */
import type { Store } from '../db.ts';
import { OwnFood } from '../records.ts';

/** Own foods that fit their schema, by name, and how many rows do not; those stay on disk. */
export interface OwnFoods {
  foods: readonly OwnFood[];
  damaged: number;
}

/** @throws the storage layer's error. */
export async function listOwnFoods(store: Store): Promise<OwnFoods> {
  const rows: unknown[] = await store.foods.toArray();
  const read = rows.map((row) => OwnFood.safeParse(row));
  const foods = read.flatMap((row) => (row.success ? [row.data] : []));
  return {
    foods: foods.sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0)),
    damaged: read.length - foods.length,
  };
}

/**
 * Keeps a food and returns the one it replaces, or null. `instead` is the id the food had before it
 * was changed: that row goes. Resolves after the transaction has ended.
 * @throws the storage layer's error; nothing is changed then.
 */
export async function saveOwnFood(
  store: Store,
  food: OwnFood,
  instead: string | null = null,
): Promise<OwnFood | null> {
  return store.transaction('rw', store.foods, async () => {
    const old = OwnFood.safeParse(await store.foods.get(food.id));
    if (instead !== null && instead !== food.id) await store.foods.delete(instead);
    await store.foods.put(food);
    return old.success ? old.data : null;
  });
}

/** @throws the storage layer's error; nothing is changed then. */
export async function deleteOwnFood(store: Store, id: string): Promise<void> {
  await store.transaction('rw', store.foods, () => store.foods.delete(id));
}
