/** The bake log: what was baked when, what the scale said, how it came out. */
import type { Store } from '../db.ts';
import { Bake, type Work } from '../records.ts';
import { factsOf } from './bake-facts-kept.ts';
import { sameWork } from './saved.ts';

/** Bakes of a recipe that can be read, latest day first, and how many rows cannot. */
export interface BakeLog {
  bakes: readonly Bake[];
  damaged: number;
}

export const NO_BAKES: BakeLog = { bakes: [], damaged: 0 };

const later = (a: Bake, b: Bake): number =>
  a.day === b.day ? b.addedAt - a.addedAt : a.day < b.day ? 1 : -1;

/** @throws the storage layer's error. */
export async function bakesOf(store: Store, recipeId: string): Promise<BakeLog> {
  const rows: unknown[] = await store.bakes.where('recipeId').equals(recipeId).toArray();
  const read = rows.map((row) => Bake.safeParse(row));
  const bakes = read.flatMap((row) => (row.success ? [row.data] : []));
  return { bakes: bakes.sort(later), damaged: read.length - bakes.length };
}

/**
 * Keeps a bake, a new one or one that is put right. Resolves after the transaction has ended.
 * @throws the storage layer's error; nothing is changed then.
 */
export async function saveBake(store: Store, bake: Bake): Promise<void> {
  await store.transaction('rw', store.bakes, store.taught, async () => {
    await store.bakes.put(bake);
    await store.taught.put(factsOf(bake));
  });
}

/** @throws the storage layer's error; nothing is changed then. */
export async function deleteBake(store: Store, id: string): Promise<void> {
  await store.transaction('rw', store.bakes, store.taught, async () => {
    await store.bakes.delete(id);
    await store.taught.delete(id);
  });
}

/** Grams of the whole recipe, made once, on the scale the last time exactly this was baked; or null. */
export function weighedDish(bakes: readonly Bake[], work: Work): number | null {
  for (const { baked, dishGrams, factor } of bakes) {
    if (dishGrams !== null && sameWork(baked, work)) return dishGrams / factor;
  }
  return null;
}
