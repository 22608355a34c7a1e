/** One JSON file out, one JSON file in. An import adds and never takes away. */
import type { Table } from 'dexie';
import { type MessageKey, sayCount } from '../../ui/words/say.ts';
import type { Store } from '../db.ts';
import { photoOfBake, photoOfRecipe } from '../kept/photos.ts';
import { keepVersion, sameWork, versionOf } from '../kept/saved.ts';
import { shelve } from '../kept/shelf.ts';
import type { Preferences } from '../prefs.ts';
import { BACKUP_FORMAT, BACKUP_VERSION, type BackupFile, SavedRecipe } from '../records.ts';
import { type Entries, readBackup, refusedCount } from './backup-file.ts';

/**
 * Everything saved, the bin excepted, as the text of one JSON file; with `only`, these recipes and what belongs
 * to them. Rows go out as they are stored. `settings` lie elsewhere and are handed in.
 */
export async function exportBackup(
  store: Store,
  now: number,
  only: ReadonlySet<string> | null = null,
  settings: Preferences | null = null,
): Promise<string> {
  const [rows, versions, foods, bakes, aliases, pantry, photos] = await store.transaction(
    'r',
    store.tables,
    () =>
      Promise.all([
        store.recipes.toArray(),
        store.versions.toArray(),
        store.foods.toArray(),
        store.bakes.toArray(),
        store.aliases.toArray(),
        store.pantry.toArray(),
        store.photos.toArray(),
      ]),
  );
  // A damaged row may lack the mark of the bin; it goes out all the same.
  const recipes = rows.filter(
    ({ deletedAt, id }) => typeof deletedAt !== 'number' && (only === null || only.has(id)),
  );
  const ids = new Set(recipes.map((row) => row.id));
  const told = bakes.filter(({ recipeId }) => ids.has(recipeId));
  const owners = new Set([
    ...[...ids].map(photoOfRecipe),
    ...told.map(({ id }) => photoOfBake(id)),
  ]);
  const file: BackupFile = {
    format: BACKUP_FORMAT,
    version: BACKUP_VERSION,
    exportedAt: new Date(now).toISOString(),
    recipes,
    versions: versions.filter(({ recipeId }) => ids.has(recipeId)),
    foods,
    bakes: told,
    aliases,
    pantry: only === null ? pantry : [],
    photos: photos.filter(({ id }) => owners.has(id)),
    ...(settings === null ? {} : { settings }),
  };
  return `${JSON.stringify(file, null, 1)}\n`;
}

export interface ImportCount {
  added: number;
  /** Recipes both here and in the file, in different states: both states are kept. */
  merged: number;
  same: number;
  versions: number;
  foods: number;
  bakes: number;
  aliases: number;
  pantry: number;
  photos: number;
  /** Entries that could not be read. */
  damaged: number;
}

export type ImportResult = { ok: true; count: ImportCount } | { ok: false; why: string };

/**
 * The later state stays on top, the other becomes a version; a recipe in the bin comes back, and
 * one that cannot be read here gives way to the one in the file.
 */
async function mergeOne(store: Store, mine: SavedRecipe, theirs: SavedRecipe): Promise<boolean> {
  const differs = !sameWork(mine, theirs);
  const lost = !SavedRecipe.safeParse(mine).success;
  const theirsOnTop = lost || (differs && theirs.updatedAt > mine.updatedAt);
  const top = theirsOnTop ? theirs : mine;
  if (differs) await keepVersion(store, versionOf(top === mine ? theirs : mine));
  await store.recipes.put({
    ...top,
    savedAt: lost ? theirs.savedAt : Math.min(mine.savedAt, theirs.savedAt),
    deletedAt: null,
  });
  return differs;
}

async function addRecipes(store: Store, recipes: readonly SavedRecipe[], count: ImportCount) {
  for (const theirs of recipes) {
    const mine = await store.recipes.get(theirs.id);
    if (!mine) {
      await store.recipes.add({ ...theirs, deletedAt: null });
      count.added += 1;
    } else if (await mergeOne(store, mine, theirs)) count.merged += 1;
    else count.same += 1;
    await shelve(store, theirs.id);
  }
}

/** Adds the entries whose key is not here yet; what is here stays as it is. Returns how many. */
async function addMissing<T>(
  table: Table<T, string>,
  entries: readonly T[],
  key: (entry: T) => string,
): Promise<number> {
  let added = 0;
  for (const entry of entries) {
    if ((await table.get(key(entry))) !== undefined) continue;
    await table.add(entry);
    added += 1;
  }
  return added;
}

async function addAll(store: Store, entries: Entries, count: ImportCount): Promise<void> {
  await addRecipes(store, entries.recipes, count);
  for (const version of entries.versions) {
    if (await keepVersion(store, version)) count.versions += 1;
  }
  count.foods = await addMissing(store.foods, entries.foods, ({ id }) => id);
  count.bakes = await addMissing(store.bakes, entries.bakes, ({ id }) => id);
  count.aliases = await addMissing(store.aliases, entries.aliases, ({ name }) => name);
  count.pantry = await addMissing(store.pantry, entries.pantry, ({ foodId }) => foodId);
  count.photos = await addMissing(store.photos, entries.photos, ({ id }) => id);
}

/**
 * Reads an exported file into the store in one transaction. Nothing that is here is lost: where
 * both sides hold a recipe, both states are kept; an own food, a bake, a name or a pantry food that
 * is here stays as it is.
 * @throws the storage layer's error; nothing is changed then.
 */
export async function importBackup(store: Store, text: string): Promise<ImportResult> {
  const answer = await readBackup(text, new Set(await store.foods.toCollection().primaryKeys()));
  if (!answer.ok) return answer;
  const count: ImportCount = {
    added: 0,
    merged: 0,
    same: 0,
    versions: 0,
    foods: 0,
    bakes: 0,
    aliases: 0,
    pantry: 0,
    photos: 0,
    damaged: refusedCount(answer.read),
  };
  // An async callback: only for one of those does Dexie hold the transaction open over each await.
  await store.transaction('rw', store.tables, async () => {
    await addAll(store, answer.read.entries, count);
  });
  return { ok: true, count };
}

const MORE = [
  ['foods', 'importFoods'],
  ['bakes', 'importBakes'],
  ['aliases', 'importNames'],
  ['pantry', 'importPantry'],
  ['photos', 'importPhotos'],
] as const satisfies readonly (readonly [keyof ImportCount, MessageKey])[];

/** The outcome of an import as one or two sentences. */
export function importMessage(count: ImportCount): string {
  const parts = [
    sayCount('importRecipes', count.added),
    ...(count.merged > 0 ? [sayCount('importMerged', count.merged)] : []),
    ...(count.same > 0 ? [sayCount('importSame', count.same)] : []),
    ...MORE.flatMap(([kind, word]) => (count[kind] > 0 ? [sayCount(word, count[kind])] : [])),
  ];
  const damaged = count.damaged > 0 ? ` ${sayCount('importDamaged', count.damaged)}` : '';
  return `${parts.join(', ')}.${damaged}`;
}
