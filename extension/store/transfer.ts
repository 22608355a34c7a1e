/** One JSON file out, one JSON file in. An import adds and never takes away. */
import { Food } from '../../engine/model.ts';
import type { Store } from './db.ts';
import { BACKUP_FORMAT, BACKUP_VERSION, BackupFile, SavedRecipe, SavedVersion } from './records.ts';
import { keepVersion, sameWork, versionOf } from './saved.ts';

/** Everything saved, the bin excepted, as the text of one JSON file. */
export async function exportBackup(store: Store, now: number): Promise<string> {
  const [rows, versions, foods] = await Promise.all([
    store.recipes.toArray(),
    store.versions.toArray(),
    store.foods.toArray(),
  ]);
  const recipes = rows.filter((row) => row.deletedAt === null);
  const ids = new Set(recipes.map((row) => row.id));
  const file: BackupFile = {
    format: BACKUP_FORMAT,
    version: BACKUP_VERSION,
    exportedAt: new Date(now).toISOString(),
    recipes,
    versions: versions.filter((version) => ids.has(version.recipeId)),
    foods,
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

/** The later state stays on top, the other becomes a version; a recipe in the bin comes back. */
async function mergeOne(store: Store, mine: SavedRecipe, theirs: SavedRecipe): Promise<boolean> {
  const differs = !sameWork(mine, theirs);
  const theirsLater = theirs.updatedAt > mine.updatedAt;
  const top = differs && theirsLater ? theirs : mine;
  const below = top === mine ? theirs : mine;
  if (differs) await keepVersion(store, versionOf(below));
  await store.recipes.put({
    ...top,
    savedAt: Math.min(mine.savedAt, theirs.savedAt),
    deletedAt: null,
  });
  return differs;
}

/**
 * Reads an exported file into the store in one transaction. Nothing that is here is lost: where
 * both sides hold a recipe, both states are kept; an own food that is here stays as it is.
 * @throws the storage layer's error; nothing is changed then.
 */
export async function importBackup(store: Store, text: string): Promise<ImportResult> {
  const file = readFile(text);
  if (typeof file === 'string') return fail(file);
  const recipes = valid(file.recipes, SavedRecipe);
  const versions = valid(file.versions, SavedVersion);
  const foods = valid(file.foods, Food);
  const damaged = recipes.bad + versions.bad + foods.bad;
  if (damaged > 0 && recipes.good.length + versions.good.length + foods.good.length === 0) {
    return fail('Every entry of this backup is damaged.');
  }
  const count: ImportCount = { added: 0, merged: 0, same: 0, versions: 0, foods: 0, damaged };
  await store.transaction('rw', store.recipes, store.versions, store.foods, async () => {
    for (const theirs of recipes.good) {
      const mine = await store.recipes.get(theirs.id);
      if (!mine) {
        await store.recipes.add({ ...theirs, deletedAt: null });
        count.added += 1;
      } else if (await mergeOne(store, mine, theirs)) count.merged += 1;
      else count.same += 1;
    }
    for (const version of versions.good) {
      if (await keepVersion(store, version)) count.versions += 1;
    }
    for (const food of foods.good) {
      if (await store.foods.get(food.id)) continue;
      await store.foods.add(food);
      count.foods += 1;
    }
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
  if (count.foods > 0) parts.push(`${several(count.foods, 'package', 'packages')} added`);
  const damaged =
    count.damaged > 0
      ? ` ${several(count.damaged, 'entry is', 'entries are')} damaged and could not be read.`
      : '';
  return `${parts.join(', ')}.${damaged}`;
}
