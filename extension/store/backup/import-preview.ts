/** What reading a file in would do, before anything is done. */
import type { Table } from 'dexie';
import type { Store } from '../db.ts';
import { sameWork } from '../kept/saved.ts';
import { SavedRecipe } from '../records.ts';
import { type Entries, type Kind, readBackup } from './backup-file.ts';
import type { ReadSettings } from './settings-read.ts';

/** How a recipe of the file stands to the one here. */
export type Standing = 'new' | 'fileNewer' | 'hereNewer' | 'same';

export interface PreviewRow {
  id: string;
  title: string;
  standing: Standing;
}

export interface Preview {
  recipes: PreviewRow[];
  /** Entries of each other kind that are not here yet. */
  added: Record<Exclude<Kind, 'recipes' | 'versions'>, number>;
  /** Packages that are here with other figures and stay as they are here. */
  foodsKeptHere: string[];
  /** Entries that cannot be read. */
  refused: Record<Kind, number>;
  /** Settings that may be taken along; null when the file has none. */
  settings: ReadSettings | null;
}

export type PreviewAnswer = { ok: true; preview: Preview } | { ok: false; why: string };

async function standingOf(store: Store, theirs: SavedRecipe): Promise<Standing> {
  const row: unknown = await store.recipes.get(theirs.id);
  if (row === undefined) return 'new';
  const mine = SavedRecipe.safeParse(row);
  if (!mine.success) return 'fileNewer';
  if (sameWork(mine.data, theirs)) return 'same';
  return theirs.updatedAt > mine.data.updatedAt ? 'fileNewer' : 'hereNewer';
}

/** How many of these keys are not in a table yet; one that comes twice counts once. */
async function missing<T>(table: Table<T, string>, keys: readonly string[]): Promise<number> {
  const wanted = [...new Set(keys)];
  const here = await table.bulkGet(wanted);
  return here.filter((row) => row === undefined).length;
}

async function differingFoods(store: Store, foods: Entries['foods']): Promise<string[]> {
  const here = await store.foods.bulkGet(foods.map(({ id }) => id));
  return foods.flatMap((food, at) => {
    const mine = here[at];
    const figures = JSON.stringify(food.per100g);
    return mine !== undefined && JSON.stringify(mine.per100g) !== figures ? [food.name] : [];
  });
}

/**
 * What {@link importBackup} would do with this text. Reads only.
 * @throws the storage layer's error.
 */
export async function previewBackup(store: Store, text: string): Promise<PreviewAnswer> {
  const answer = await readBackup(text, new Set(await store.foods.toCollection().primaryKeys()));
  if (!answer.ok) return answer;
  const { entries, refused, settings } = answer.read;
  const recipes: PreviewRow[] = [];
  for (const one of new Map(entries.recipes.map((recipe) => [recipe.id, recipe])).values())
    recipes.push({
      id: one.id,
      title: one.recipe.title,
      standing: await standingOf(store, one),
    });
  const added = {
    foods: await missing(
      store.foods,
      entries.foods.map(({ id }) => id),
    ),
    bakes: await missing(
      store.bakes,
      entries.bakes.map(({ id }) => id),
    ),
    aliases: await missing(
      store.aliases,
      entries.aliases.map(({ name }) => name),
    ),
    pantry: await missing(
      store.pantry,
      entries.pantry.map(({ foodId }) => foodId),
    ),
    photos: await missing(
      store.photos,
      entries.photos.map(({ id }) => id),
    ),
  };
  const foodsKeptHere = await differingFoods(store, entries.foods);
  return { ok: true, preview: { recipes, added, foodsKeptHere, refused, settings } };
}
