/** A backup as text: which parts of it can be read. */
import type * as z from 'zod';
import type { FoodTable } from '../../../engine/index.ts';
import type { Recipe } from '../../../engine/model.ts';
import { type MessageKey, say } from '../../ui/words/say.ts';
import { PantryFood } from '../pantry-food.ts';
import {
  Alias,
  BACKUP_FORMAT,
  BACKUP_VERSION,
  BackupFile,
  Bake,
  OwnFood,
  Photo,
  SavedRecipe,
  SavedVersion,
} from '../records.ts';
import { isRecipeSize } from './recipe-size.ts';
import { type ReadSettings, readSettings } from './settings-read.ts';

export interface Entries {
  recipes: SavedRecipe[];
  versions: SavedVersion[];
  foods: OwnFood[];
  bakes: Bake[];
  aliases: Alias[];
  pantry: PantryFood[];
  photos: Photo[];
}

export type Kind = keyof Entries;

/** What of a file can be read, and how many entries of each kind cannot. */
export interface ReadEntries {
  entries: Entries;
  refused: Record<Kind, number>;
  /** Null when the file has none. */
  settings: ReadSettings | null;
}

export const refusedCount = ({ refused }: Pick<ReadEntries, 'refused'>): number =>
  Object.values(refused).reduce((sum, count) => sum + count, 0);

export type FileAnswer = { ok: true; read: ReadEntries } | { ok: false; why: string };

const fail = (key: MessageKey): FileAnswer => ({
  ok: false,
  why: `${say(key)} ${say('nothingChanged')}`,
});

function fileOf(text: string): BackupFile | MessageKey {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return 'backupNotJson';
  }
  const format = (json as { format?: unknown } | null)?.format;
  if (format !== BACKUP_FORMAT) return 'backupNotOurs';
  const file = BackupFile.safeParse(json);
  if (!file.success) return 'backupNoList';
  return file.data.version > BACKUP_VERSION ? 'backupNewer' : file.data;
}

interface Valid<T> {
  good: T[];
  bad: number;
}

function valid<T>(entries: readonly unknown[], schema: z.ZodType<T>): Valid<T> {
  const good: T[] = [];
  for (const entry of entries) {
    const read = schema.safeParse(entry);
    if (read.success) good.push(read.data);
  }
  return { good, bad: entries.length - good.length };
}

/** Entries whose recipe is larger than any page's go bad: working one out must never stop the browser. */
function ofRecipeSize<Entry>(
  { good, bad }: Valid<Entry>,
  recipeOf: (entry: Entry) => Recipe,
): Valid<Entry> {
  const sized = good.filter((entry) => isRecipeSize(recipeOf(entry)));
  return { good: sized, bad: bad + good.length - sized.length };
}

/** Entries that name a food which is neither built in nor a package of the file's or of the user's own go bad. */
function ofKnownFoods<Named extends { foodId: string }>(
  { good, bad }: Valid<Named>,
  isKnown: (foodId: string) => boolean,
): Valid<Named> {
  const known = good.filter(({ foodId }) => isKnown(foodId));
  return { good: known, bad: bad + good.length - known.length };
}

function entriesOf(file: BackupFile, here: ReadonlySet<string>, table: FoodTable): ReadEntries {
  const foods = valid(file.foods, OwnFood);
  const brought = new Set(foods.good.map(({ id }) => id));
  const isKnown = (id: string): boolean =>
    here.has(id) || brought.has(id) || table.byId(id) !== null;
  const parts = {
    recipes: ofRecipeSize(valid(file.recipes, SavedRecipe), ({ recipe }) => recipe),
    versions: ofRecipeSize(valid(file.versions, SavedVersion), ({ recipe }) => recipe),
    foods,
    bakes: ofRecipeSize(valid(file.bakes, Bake), ({ baked }) => baked.recipe),
    aliases: ofKnownFoods(valid(file.aliases, Alias), isKnown),
    pantry: ofKnownFoods(valid(file.pantry, PantryFood), isKnown),
    photos: valid(file.photos, Photo),
  };
  return {
    entries: {
      recipes: parts.recipes.good,
      versions: parts.versions.good,
      foods: parts.foods.good,
      bakes: parts.bakes.good,
      aliases: parts.aliases.good,
      pantry: parts.pantry.good,
      photos: parts.photos.good,
    },
    refused: {
      recipes: parts.recipes.bad,
      versions: parts.versions.bad,
      foods: parts.foods.bad,
      bakes: parts.bakes.bad,
      aliases: parts.aliases.bad,
      pantry: parts.pantry.bad,
      photos: parts.photos.bad,
    },
    settings: readSettings(file.settings, isKnown),
  };
}

/** Reads a file of this or an older version; `here` are ids of the user's packages. Never rejects. */
export async function readBackup(text: string, here: ReadonlySet<string>): Promise<FileAnswer> {
  const file = fileOf(text);
  if (typeof file === 'string') return fail(file);
  const { foodTable } = await import('../../../engine/foods/index.ts');
  const read = entriesOf(file, here, foodTable());
  const good =
    Object.values(read.entries).some((list) => list.length > 0) ||
    Object.keys(read.settings?.change ?? {}).length > 0;
  return refusedCount(read) > 0 && !good ? fail('backupAllDamaged') : { ok: true, read };
}
