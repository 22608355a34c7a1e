/** Saved recipes: every change is one transaction, so a cut-off leaves the old state. */
import type { Adaptation } from '../../../engine/model.ts';
import type { Store } from '../db.ts';
import { type Said, SavedRecipe, SavedVersion, Work } from '../records.ts';
import { photoOfBake, photoOfRecipe } from './photos.ts';
import { shelve } from './shelf.ts';
import { shelfRowOf } from './shelf-row.ts';

/** A row that no longer fits its schema: kept and counted, never dropped silently. */
export interface Listing {
  recipes: SavedRecipe[];
  damaged: number;
}

const DAY_MS = 86_400_000;
/** Days a deleted recipe can still be brought back. */
export const BIN_DAYS = 30;

const workOf = ({ recipe, goals, corrections }: Work): Work => ({ recipe, goals, corrections });

/** States are never changed in place, so the text of one is written once. */
const texts = new WeakMap<Work, string>();

/** One text for one state: keys in order, what an older row lacks filled in. */
function settled(work: Work): string {
  const known = texts.get(work);
  if (known !== undefined) return known;
  const text = stateText(work);
  texts.set(work, text);
  return text;
}

function stateText(work: Work): string {
  const read = Work.safeParse(workOf(work));
  return JSON.stringify(read.success ? read.data : workOf(work), (_, value: unknown) =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );
}

/** True when both states ask the same of the same recipe. */
export const sameWork = (a: Work, b: Work): boolean => settled(a) === settled(b);

/** The present state of a saved recipe as a version row; the same state always gets the same id. */
export function versionOf(saved: SavedRecipe): SavedVersion {
  return {
    ...workOf(saved),
    id: `${saved.id}.${saved.updatedAt}`,
    recipeId: saved.id,
    savedAt: saved.updatedAt,
    name: saved.name ?? '',
    worked: saved.worked ?? false,
    note: saved.note ?? '',
    adaptation: saved.adaptation,
  };
}

/**
 * Adds a version inside a running transaction. One that is here already is not added again; another
 * state under the same id gets an id of its own. Returns whether it was added.
 */
export async function keepVersion(store: Store, version: SavedVersion): Promise<boolean> {
  const here = await store.versions.get(version.id);
  if (here && sameWork(here, version)) return false;
  await store.versions.add(here ? { ...version, id: crypto.randomUUID() } : version);
  return true;
}

/**
 * Saves a recipe, or a new state of one when `id` is given; the state it had becomes a version.
 * Resolves only after the transaction has ended on disk.
 * @throws the storage layer's error; nothing is changed then.
 */
export async function saveRecipe(
  store: Store,
  work: Work & { adaptation: Adaptation },
  id: string | null,
  now: number,
): Promise<SavedRecipe> {
  return store.transaction('rw', store.recipes, store.versions, store.shelf, async () => {
    const old = id === null ? undefined : await store.recipes.get(id);
    const same = old !== undefined && sameWork(old, work);
    const saved: SavedRecipe = {
      ...workOf(work),
      name: same ? (old.name ?? '') : '',
      worked: same ? (old.worked ?? false) : false,
      id: old?.id ?? id ?? crypto.randomUUID(),
      savedAt: old?.savedAt ?? now,
      updatedAt: now,
      deletedAt: null,
      url: work.recipe.url ?? '',
      tags: old?.tags ?? [],
      note: old?.note ?? '',
      // The other ways are worked out again when they are looked at.
      adaptation: { ...work.adaptation, ways: [] },
    };
    if (old && !same) await keepVersion(store, versionOf(old));
    await store.recipes.put(saved);
    await store.shelf.put(shelfRowOf(saved));
    return saved;
  });
}

/** All saved recipes, latest change first; `deleted` lists the bin instead. */
export async function listRecipes(store: Store, { deleted = false } = {}): Promise<Listing> {
  const rows: unknown[] = await store.recipes.orderBy('updatedAt').reverse().toArray();
  const read = rows.map((row) => SavedRecipe.safeParse(row));
  const recipes = read.flatMap((row) => (row.success ? [row.data] : []));
  return {
    recipes: recipes.filter((row) => (row.deletedAt !== null) === deleted),
    damaged: read.filter((row) => !row.success).length,
  };
}

/** One saved recipe, or null when there is none or its row cannot be read. */
export async function getRecipe(store: Store, id: string): Promise<SavedRecipe | null> {
  const read = SavedRecipe.safeParse(await store.recipes.get(id));
  return read.success ? read.data : null;
}

/** The saved recipe that was read from this page under this title, when there is one. */
export async function findByPage(
  store: Store,
  recipe: { url: string | null; title: string },
): Promise<SavedRecipe | null> {
  if (recipe.url === null) return null;
  const rows: unknown[] = await store.recipes.where('url').equals(recipe.url).toArray();
  for (const row of rows) {
    const read = SavedRecipe.safeParse(row);
    if (!read.success || read.data.deletedAt !== null) continue;
    if (read.data.recipe.title === recipe.title) return read.data;
  }
  return null;
}

/** Earlier states of a saved recipe, latest first. */
export async function versionsOf(store: Store, recipeId: string): Promise<SavedVersion[]> {
  const rows: unknown[] = await store.versions.where('recipeId').equals(recipeId).toArray();
  return rows
    .flatMap((row) => {
      const read = SavedVersion.safeParse(row);
      return read.success ? [read.data] : [];
    })
    .sort((a, b) => b.savedAt - a.savedAt);
}

/**
 * Names the present state of a recipe, or marks it as one that worked. The state itself stays.
 * @throws the storage layer's error; nothing is changed then.
 */
export async function sayOfRecipe(
  store: Store,
  id: string,
  said: Partial<Said & Pick<SavedRecipe, 'tags'>>,
): Promise<void> {
  await updateRecipe(store, id, said);
}

/** Changes fields of a kept recipe, and its row on the shelf with them. */
async function updateRecipe(store: Store, id: string, change: Partial<SavedRecipe>): Promise<void> {
  await store.transaction('rw', store.recipes, store.shelf, async () => {
    await store.recipes.update(id, change);
    await shelve(store, id);
  });
}

/** The same for an earlier state. */
export async function sayOfVersion(store: Store, id: string, said: Partial<Said>): Promise<void> {
  await store.transaction('rw', store.versions, () => store.versions.update(id, said));
}

/** Puts a recipe in the bin; {@link restoreRecipe} brings it back. */
export async function deleteRecipe(store: Store, id: string, now: number): Promise<void> {
  await updateRecipe(store, id, { deletedAt: now });
}

/** Takes a recipe out of the bin. */
export async function restoreRecipe(store: Store, id: string): Promise<void> {
  await updateRecipe(store, id, { deletedAt: null });
}

/** Removes for good what has been in the bin for {@link BIN_DAYS} days. Returns how many. */
export async function emptyOldBin(store: Store, now: number): Promise<number> {
  const { recipes, versions, bakes, shelf, taught, photos } = store;
  return store.transaction('rw', [recipes, versions, bakes, shelf, taught, photos], async () => {
    const old = await store.recipes
      .filter((row) => row.deletedAt !== null && now - row.deletedAt > BIN_DAYS * DAY_MS)
      .primaryKeys();
    await store.versions.where('recipeId').anyOf(old).delete();
    const baked = await store.bakes.where('recipeId').anyOf(old).primaryKeys();
    await store.bakes.bulkDelete(baked);
    await store.taught.bulkDelete(baked);
    await store.photos.bulkDelete([...old.map(photoOfRecipe), ...baked.map(photoOfBake)]);
    await store.recipes.bulkDelete(old);
    await store.shelf.bulkDelete(old);
    return old.length;
  });
}

/** A second copy of a kept recipe, to be tried another way. Null when there is no such recipe. */
export async function duplicateRecipe(
  store: Store,
  id: string,
  now: number,
): Promise<SavedRecipe | null> {
  return store.transaction('rw', store.recipes, store.shelf, async () => {
    const read = SavedRecipe.safeParse(await store.recipes.get(id));
    if (!read.success) return null;
    const copy: SavedRecipe = {
      ...read.data,
      id: crypto.randomUUID(),
      savedAt: now,
      updatedAt: now,
      deletedAt: null,
      name: '',
      worked: false,
    };
    await store.recipes.add(copy);
    await store.shelf.put(shelfRowOf(copy));
    return copy;
  });
}
