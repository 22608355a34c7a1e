/** Several kept recipes at once: all of a change is written, or nothing of it. */
import type { Adaptation } from '../../../engine/model.ts';
import type { Store } from '../db.ts';
import { SavedRecipe, type Work } from '../records.ts';
import { sameWork, saveState } from './saved.ts';

/** In the order asked for; what cannot be read is left out. @throws the storage layer's error. */
export async function getRecipes(store: Store, ids: readonly string[]): Promise<SavedRecipe[]> {
  const rows: unknown[] = await store.recipes.bulkGet([...ids]);
  return rows.flatMap((row) => {
    const read = SavedRecipe.safeParse(row);
    return read.success ? [read.data] : [];
  });
}

/** A new state of a kept recipe. */
export interface NextState {
  id: string;
  work: Work & { adaptation: Adaptation };
}

/**
 * Writes new states; the ones before become versions. Gives what takes it back.
 * @throws the storage layer's error; nothing is changed then.
 */
export async function saveSeveral(
  store: Store,
  next: readonly NextState[],
  now: number,
): Promise<SavedRecipe[]> {
  const { recipes, versions, shelf } = store;
  return store.transaction('rw', recipes, versions, shelf, async () => {
    const before = await getRecipes(
      store,
      next.map(({ id }) => id),
    );
    for (const { id, work } of next) await saveState(store, work, id, now);
    return before;
  });
}

/**
 * Puts recipes back as they were, name and mark with them; one that was changed again since stays as it is.
 * Returns how many went back. @throws the storage layer's error; nothing is changed then.
 */
export async function putBack(
  store: Store,
  before: readonly SavedRecipe[],
  changed: readonly NextState[],
  now: number,
): Promise<number> {
  const { recipes, versions, shelf } = store;
  return store.transaction('rw', recipes, versions, shelf, async () => {
    let count = 0;
    for (const old of before) {
      const [here] = await getRecipes(store, [old.id]);
      const ours = changed.find(({ id }) => id === old.id);
      if (!here || !ours || old.adaptation === null || !sameWork(here, ours.work)) continue;
      await saveState(store, { ...old, adaptation: old.adaptation }, old.id, now);
      await recipes.update(old.id, { name: old.name, worked: old.worked });
      count += 1;
    }
    return count;
  });
}
