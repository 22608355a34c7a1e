/** What the user has at home, for plans that may use nothing else. */
import type { Store } from '../db.ts';
import { PantryFood } from '../pantry-food.ts';

/** By name. @throws the storage layer's error. */
export async function listPantry(store: Store): Promise<PantryFood[]> {
  const rows: unknown[] = await store.pantry.toArray();
  return rows
    .flatMap((row) => {
      const read = PantryFood.safeParse(row);
      return read.success ? [read.data] : [];
    })
    .sort((a, b) => a.foodName.localeCompare(b.foodName, 'en'));
}

/** @throws the storage layer's error; nothing is changed then. */
export async function addToPantry(store: Store, food: PantryFood): Promise<void> {
  await store.transaction('rw', store.pantry, () => store.pantry.put(food));
}

/** @throws the storage layer's error; nothing is changed then. */
export async function takeFromPantry(store: Store, foodId: string): Promise<void> {
  await store.transaction('rw', store.pantry, () => store.pantry.delete(foodId));
}
