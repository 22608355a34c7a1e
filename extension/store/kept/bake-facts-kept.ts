/** What the bakes measured, as light rows: thousands are read before the page is seen. */
import { BakeFacts } from '../../../engine/plan/bakes/bake-facts.ts';
import type { Store } from '../db.ts';
import { Bake } from '../records.ts';

/** A figure of all that was made, for the recipe made once. */
const once = (value: number | null, factor: number): number | null =>
  value === null ? null : value / factor;

/** The light row of a bake. */
export function factsOf(bake: Bake): BakeFacts {
  const { id, recipeId, day, addedAt, plan, rawGrams, factor, ovenSetC, ovenReadC } = bake;
  return {
    id,
    recipeId,
    title: bake.baked.recipe.title,
    day,
    addedAt,
    plan,
    rawGrams,
    dishGrams: once(bake.dishGrams, factor),
    extraWaterG: once(bake.extraWaterG, factor),
    ovenSetC,
    ovenReadC,
  };
}

async function makeRow(store: Store, id: string): Promise<BakeFacts[]> {
  const read = Bake.safeParse(await store.bakes.get(id));
  if (!read.success) return [];
  const row = factsOf(read.data);
  if (!store.newer) await store.taught.put(row);
  return [row];
}

/**
 * What all bakes measured. Rows that are missing are made from their bake, those without one are left out
 * and taken away. @throws the storage layer's error.
 */
export async function listFacts(store: Store): Promise<BakeFacts[]> {
  return store.transaction('rw', store.bakes, store.taught, async () => {
    const [ids, rows] = await Promise.all([
      store.bakes.toCollection().primaryKeys(),
      store.taught.toArray() as Promise<unknown[]>,
    ]);
    const here = new Set(ids);
    const read = rows.flatMap((row) => {
      const one = BakeFacts.safeParse(row);
      return one.success ? [one.data] : [];
    });
    const known = read.filter(({ id }) => here.has(id));
    const fresh = new Set(known.map(({ id }) => id));
    const made: BakeFacts[] = [];
    for (const id of ids) if (!fresh.has(id)) made.push(...(await makeRow(store, id)));
    const gone = read.filter(({ id }) => !here.has(id)).map(({ id }) => id);
    if (gone.length > 0 && !store.newer) await store.taught.bulkDelete(gone);
    return [...known, ...made];
  });
}
