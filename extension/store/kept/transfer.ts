/** One JSON file out, one JSON file in. An import adds and never takes away. */
import type { Table } from 'dexie';
import { foodTable } from '../../../engine/index.ts';
import type { Store } from '../db.ts';
import {
  Alias,
  BACKUP_FORMAT,
  BACKUP_VERSION,
  BackupFile,
  Bake,
  OwnFood,
  PantryFood,
  SavedRecipe,
  SavedVersion,
} from '../records.ts';
import { keepVersion, sameWork, versionOf } from './saved.ts';
import { shelve } from './shelf.ts';

/** Everything saved, the bin excepted, as the text of one JSON file. Rows go out as they are stored. */
export async function exportBackup(store: Store, now: number): Promise<string> {
  const [rows, versions, foods, bakes, aliases, pantry] = await store.transaction(
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
      ]),
  );
  // A damaged row may lack the mark of the bin; it goes out all the same.
  const recipes = rows.filter(({ deletedAt }) => typeof deletedAt !== 'number');
  const ids = new Set(recipes.map((row) => row.id));
  const file: BackupFile = {
    format: BACKUP_FORMAT,
    version: BACKUP_VERSION,
    exportedAt: new Date(now).toISOString(),
    recipes,
    versions: versions.filter(({ recipeId }) => ids.has(recipeId)),
    foods,
    bakes: bakes.filter(({ recipeId }) => ids.has(recipeId)),
    aliases,
    pantry,
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
  /** Entries that could not be read. */
  damaged: number;
}

export type ImportResult = { ok: true; count: ImportCount } | { ok: false; why: string };

const fail = (why: string): ImportResult => ({ ok: false, why: `${why} Nothing was changed.` });

function readFile(text: string): BackupFile | string {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return 'This file is not complete JSON: it may be cut off or not a backup at all.';
  }
  const format = (json as { format?: unknown } | null)?.format;
  if (format !== BACKUP_FORMAT) return 'This is JSON, but not a file that Crumbshift exported.';
  const file = BackupFile.safeParse(json);
  if (!file.success) return 'This backup is damaged: its list of recipes is missing.';
  if (file.data.version > BACKUP_VERSION) {
    return 'This backup was made by a newer Crumbshift. Update first, then import it again.';
  }
  return file.data;
}

function valid<T>(
  entries: readonly unknown[],
  schema: { safeParse(value: unknown): { success: true; data: T } | { success: false } },
): { good: T[]; bad: number } {
  const good: T[] = [];
  for (const entry of entries) {
    const read = schema.safeParse(entry);
    if (read.success) good.push(read.data);
  }
  return { good, bad: entries.length - good.length };
}

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

interface Entries {
  recipes: SavedRecipe[];
  versions: SavedVersion[];
  foods: OwnFood[];
  bakes: Bake[];
  aliases: Alias[];
  pantry: PantryFood[];
}

/** Entries that name a food which is neither built in nor a package of the file's or of the user's own go bad. */
function ofKnownFoods<Named extends { foodId: string }>(
  { good, bad }: { good: Named[]; bad: number },
  isKnown: (foodId: string) => boolean,
): { good: Named[]; bad: number } {
  const known = good.filter(({ foodId }) => isKnown(foodId));
  return { good: known, bad: bad + good.length - known.length };
}

/** What of a file can be read, and how many entries cannot; `here` are ids of the user's packages. */
function entriesOf(
  file: BackupFile,
  here: ReadonlySet<string>,
): { entries: Entries; good: number; bad: number } {
  const foods = valid(file.foods, OwnFood);
  const brought = new Set(foods.good.map(({ id }) => id));
  const isKnown = (id: string): boolean =>
    here.has(id) || brought.has(id) || foodTable().byId(id) !== null;
  const parts = {
    recipes: valid(file.recipes, SavedRecipe),
    versions: valid(file.versions, SavedVersion),
    foods,
    bakes: valid(file.bakes, Bake),
    aliases: ofKnownFoods(valid(file.aliases, Alias), isKnown),
    pantry: ofKnownFoods(valid(file.pantry, PantryFood), isKnown),
  };
  const all = Object.values(parts);
  return {
    entries: {
      recipes: parts.recipes.good,
      versions: parts.versions.good,
      foods: parts.foods.good,
      bakes: parts.bakes.good,
      aliases: parts.aliases.good,
      pantry: parts.pantry.good,
    },
    good: all.reduce((sum, part) => sum + part.good.length, 0),
    bad: all.reduce((sum, part) => sum + part.bad, 0),
  };
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
}

/**
 * Reads an exported file into the store in one transaction. Nothing that is here is lost: where
 * both sides hold a recipe, both states are kept; an own food, a bake, a name or a pantry food that
 * is here stays as it is.
 * @throws the storage layer's error; nothing is changed then.
 */
export async function importBackup(store: Store, text: string): Promise<ImportResult> {
  const file = readFile(text);
  if (typeof file === 'string') return fail(file);
  const here = new Set(await store.foods.toCollection().primaryKeys());
  const { entries, good, bad } = entriesOf(file, here);
  if (bad > 0 && good === 0) return fail('Every entry of this backup is damaged.');
  const count: ImportCount = {
    added: 0,
    merged: 0,
    same: 0,
    versions: 0,
    foods: 0,
    bakes: 0,
    aliases: 0,
    pantry: 0,
    damaged: bad,
  };
  // An async callback: only for one of those does Dexie hold the transaction open over each await.
  await store.transaction('rw', store.tables, async () => {
    await addAll(store, entries, count);
  });
  return { ok: true, count };
}

const several = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/** The outcome of an import as one or two sentences. */
export function importMessage(count: ImportCount): string {
  const parts = [`${several(count.added, 'recipe', 'recipes')} added`];
  if (count.merged > 0) {
    parts.push(`${several(count.merged, 'recipe', 'recipes')} merged with both states kept`);
  }
  if (count.same > 0)
    parts.push(`${several(count.same, 'recipe was', 'recipes were')} here already`);
  const more: [number, string, string][] = [
    [count.foods, 'package', 'packages'],
    [count.bakes, 'bake', 'bakes'],
    [count.aliases, 'name of a food', 'names of foods'],
    [count.pantry, 'food at home', 'foods at home'],
  ];
  for (const [n, one, many] of more) if (n > 0) parts.push(`${several(n, one, many)} added`);
  const damaged =
    count.damaged > 0
      ? ` ${several(count.damaged, 'entry is', 'entries are')} damaged and could not be read.`
      : '';
  return `${parts.join(', ')}.${damaged}`;
}
