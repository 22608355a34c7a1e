/**
 * The list of kept recipes from light rows, so that thousands open at once. Rows are written with
 * their recipe; those that are missing or older are made anew when the list is read.
 */
import type { Store } from '../db.ts';
import { SavedRecipe } from '../records.ts';
import { ShelfRow, shelfRowOf } from './shelf-row.ts';

/** Writes the row of a recipe that was just written; null for one that cannot be read. */
export async function shelve(store: Store, id: string): Promise<ShelfRow | null> {
  const read = SavedRecipe.safeParse(await store.recipes.get(id));
  if (!read.success) return null;
  const row = shelfRowOf(read.data);
  // A row that cannot be written is made again the next time.
  if (!store.newer) await store.shelf.put(row);
  return row;
}

export interface Shelf {
  /** Latest change first. */
  rows: ShelfRow[];
  /** Put away, latest first. */
  bin: ShelfRow[];
  /** Recipes on disk that cannot be read. */
  damaged: number;
}

const byChange = (a: ShelfRow, b: ShelfRow): number => b.updatedAt - a.updatedAt;

/** Id and time of change of every recipe, without reading the recipes. */
async function changesOf(store: Store): Promise<Map<string, number>> {
  const inOrder = store.recipes.orderBy('updatedAt');
  const [times, ids] = await Promise.all([inOrder.keys(), inOrder.primaryKeys()]);
  return new Map(ids.map((id, at) => [id, Number(times[at])]));
}

async function readRows(store: Store): Promise<Map<string, ShelfRow>> {
  const kept: unknown[] = await store.shelf.toArray();
  return new Map(
    kept.flatMap((row) => {
      const read = ShelfRow.safeParse(row);
      return read.success ? [[read.data.id, read.data] as const] : [];
    }),
  );
}

/** As many rows as recipes, and none newer than the newest row: every writer writes both, so all are fresh. */
async function areFresh(store: Store, rows: ReadonlyMap<string, ShelfRow>): Promise<boolean> {
  const [count, newest] = await Promise.all([
    store.recipes.count(),
    store.recipes.orderBy('updatedAt').reverse().limit(1).keys(),
  ]);
  const latest = Math.max(0, ...[...rows.values()].map(({ updatedAt }) => updatedAt));
  return count === rows.size && Number(newest[0] ?? 0) === latest;
}

/** Looks at each recipe's time of change; makes rows anew and takes away those without a recipe. */
async function mended(
  store: Store,
  rows: ReadonlyMap<string, ShelfRow>,
): Promise<{ listed: ShelfRow[]; damaged: number }> {
  const [changes, all] = await Promise.all([
    changesOf(store),
    store.recipes.toCollection().primaryKeys(),
  ]);
  const known = all.flatMap((id) => {
    const row = rows.get(id);
    return row && row.updatedAt === changes.get(id) ? [row] : [];
  });
  const fresh = new Set(known.map(({ id }) => id));
  const made: ShelfRow[] = [];
  for (const id of all) {
    const row = fresh.has(id) ? null : await shelve(store, id);
    if (row) made.push(row);
  }
  const here = new Set(all);
  if (!store.newer) await store.shelf.bulkDelete([...rows.keys()].filter((id) => !here.has(id)));
  const listed = [...known, ...made];
  return { listed, damaged: all.length - listed.length };
}

/**
 * The list of kept recipes. Rows whose recipe is gone are left out and taken off the shelf.
 * @throws the storage layer's error.
 */
export async function listShelf(store: Store): Promise<Shelf> {
  return store.transaction('rw', store.recipes, store.shelf, async () => {
    const rows = await readRows(store);
    const { listed, damaged } = (await areFresh(store, rows))
      ? { listed: [...rows.values()], damaged: 0 }
      : await mended(store, rows);
    const sorted = listed.sort(byChange);
    return {
      rows: sorted.filter(({ deletedAt }) => deletedAt === null),
      bin: sorted.filter(({ deletedAt }) => deletedAt !== null),
      damaged,
    };
  });
}

/** Rows drawn before the list is read: what a screen shows at once. Own choice. */
export const FIRST_ROWS = 10;

/**
 * Rows of the latest recipes alone, so that a long shelf shows its top at once. None where the shelf is no
 * longer than that, or where a row is missing, old or damaged: the whole list is worth waiting for then.
 * @throws the storage layer's error.
 */
export async function latestOnShelf(store: Store, most: number): Promise<ShelfRow[]> {
  return store.transaction('r', store.recipes, store.shelf, async () => {
    // One more tells whether there are more; to count thousands of recipes takes as long as to read them.
    const found: { id: string; time: unknown }[] = [];
    await store.recipes
      .orderBy('updatedAt')
      .reverse()
      .limit(most + 1)
      .eachKey((time, { primaryKey }) => void found.push({ id: primaryKey, time }));
    if (found.length <= most) return [];
    const latest = found.slice(0, most);
    const kept: unknown[] = await store.shelf.bulkGet(latest.map(({ id }) => id));
    const rows = kept.flatMap((row, at) => {
      const read = ShelfRow.safeParse(row);
      return read.success && read.data.updatedAt === latest[at]?.time ? [read.data] : [];
    });
    return rows.length < latest.length ? [] : rows.filter(({ deletedAt }) => deletedAt === null);
  });
}
