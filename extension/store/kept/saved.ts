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
/** As the record has it. */
const MOST_NOTE = 5000;
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

export interface SaveHow {
  /** When the page that saves last saw the recipe change; null when it does not know. */
  known?: number | null;
  /** Written by itself, while the user goes on. */
  auto?: boolean;
}

export interface SaveOutcome {
  saved: SavedRecipe;
  /** Another page had kept another state meanwhile; it is among the versions now. */
  elsewhere: boolean;
}

/** A state that was written by itself and that no one has marked since gives way without a trace. */
const isDraft = ({ auto, name, worked }: SavedRecipe): boolean =>
  auto === true && name === '' && !worked;

/**
 * Saves a recipe, or a new state of one when `id` is given; the state it had becomes a version.
 * Resolves only after the transaction has ended on disk.
 * @throws the storage layer's error; nothing is changed then.
 */
export const saveRecipe = async (
  store: Store,
  work: Work & { adaptation: Adaptation },
  id: string | null,
  now: number,
): Promise<SavedRecipe> => (await saveState(store, work, id, now)).saved;

/** As {@link saveRecipe}, and tells whether another page was there meanwhile: its state is never lost. */
export async function saveState(
  store: Store,
  work: Work & { adaptation: Adaptation },
  id: string | null,
  now: number,
  { known = null, auto = false }: SaveHow = {},
): Promise<SaveOutcome> {
  return store.transaction('rw', store.recipes, store.versions, store.shelf, async () => {
    const old = id === null ? undefined : await store.recipes.get(id);
    const same = old !== undefined && sameWork(old, work);
    const elsewhere = old !== undefined && !same && known !== null && old.updatedAt !== known;
    const saved: SavedRecipe = {
      ...workOf(work),
      name: same ? (old.name ?? '') : '',
      worked: same ? (old.worked ?? false) : false,
      id: old?.id ?? id ?? crypto.randomUUID(),
      savedAt: old?.savedAt ?? now,
      // Never the moment of another state, by which pages tell that they are behind.
      updatedAt: old && !same ? Math.max(now, old.updatedAt + 1) : now,
      auto: auto && !(same && !old.auto),
      deletedAt: null,
      url: work.recipe.url ?? '',
      tags: old?.tags ?? [],
      note: old?.note ?? '',
      // The other ways are worked out again when they are looked at.
      adaptation: { ...work.adaptation, ways: [] },
    };
    if (old && !same && (elsewhere || !isDraft(old))) await keepVersion(store, versionOf(old));
    await store.recipes.put(saved);
    await store.shelf.put(shelfRowOf(saved));
    return { saved, elsewhere };
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
 * Names the present state of a recipe, marks it as one that worked, or notes something to it. The state
 * itself stays. `seen` is what the page showed before: a note that another page wrote meanwhile is kept.
 * @throws the storage layer's error; nothing is changed then.
 */
export async function sayOfRecipe(
  store: Store,
  id: string,
  said: Partial<Said>,
  seen: Partial<Said> = {},
): Promise<void> {
  await updateRecipe(store, id, ({ note }) =>
    said.note === undefined || seen.note === undefined
      ? said
      : { ...said, note: joinedNote(note, seen.note, said.note) },
  );
}

/** A note as two pages wrote it: the later one alone, unless the other changed it meanwhile. */
function joinedNote(stored: string, seen: string, next: string): string {
  if (stored === seen || stored === next || stored === '') return next;
  return next === '' ? stored : `${stored}\n${next}`.slice(0, MOST_NOTE);
}

/**
 * Changes tags from what a page saw to what the user made of them; what another page added or took away
 * meanwhile stays so. @throws the storage layer's error; nothing is changed then.
 */
export async function retag(
  store: Store,
  id: string,
  seen: readonly string[],
  next: readonly string[],
): Promise<void> {
  await updateRecipe(store, id, ({ tags }) => ({
    tags: [
      ...tags.filter((tag) => next.includes(tag) || !seen.includes(tag)),
      ...next.filter((tag) => !seen.includes(tag) && !tags.includes(tag)),
    ],
  }));
}

/** Changes fields of a kept recipe, and its row on the shelf with them. */
async function updateRecipe(
  store: Store,
  id: string,
  change: (now: SavedRecipe) => Partial<SavedRecipe>,
): Promise<void> {
  await store.transaction('rw', store.recipes, store.shelf, async () => {
    const now = SavedRecipe.safeParse(await store.recipes.get(id));
    if (!now.success) return;
    await store.recipes.update(id, change(now.data));
    await shelve(store, id);
  });
}

/** The same for an earlier state. */
export async function sayOfVersion(store: Store, id: string, said: Partial<Said>): Promise<void> {
  await store.transaction('rw', store.versions, () => store.versions.update(id, said));
}

/** Puts a recipe in the bin; {@link restoreRecipe} brings it back. */
export async function deleteRecipe(store: Store, id: string, now: number): Promise<void> {
  await updateRecipe(store, id, () => ({ deletedAt: now }));
}

/** Takes a recipe out of the bin. */
export async function restoreRecipe(store: Store, id: string): Promise<void> {
  await updateRecipe(store, id, () => ({ deletedAt: null }));
}

/** Removes for good what has been in the bin for {@link BIN_DAYS} days. Returns how many. */
export async function emptyOldBin(store: Store, now: number): Promise<number> {
  const { recipes, versions, bakes, shelf, taught, photos } = store;
  return store.transaction('rw', [recipes, versions, bakes, shelf, taught, photos], async () => {
    // Light rows tell what lies in the bin; the recipe itself has the last word.
    const away = await store.shelf
      .filter((row) => row.deletedAt !== null && now - row.deletedAt > BIN_DAYS * DAY_MS)
      .primaryKeys();
    const rows = await store.recipes.bulkGet(away);
    const old = rows.flatMap((row) =>
      row && row.deletedAt !== null && now - row.deletedAt > BIN_DAYS * DAY_MS ? [row.id] : [],
    );
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
