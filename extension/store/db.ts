/** The database on the user's disk. Never lower a version number; add a new one with its upgrade. */
import Dexie, { type Table } from 'dexie';
import type { Food } from '../../engine/model.ts';
import type { SavedRecipe, SavedVersion } from './records.ts';

export const DATABASE_NAME = 'crumbshift';

export class Store extends Dexie {
  declare recipes: Table<SavedRecipe, string>;
  declare versions: Table<SavedVersion, string>;
  /** The user's own foods, from package labels. */
  declare foods: Table<Food, string>;

  constructor(name: string = DATABASE_NAME) {
    super(name);
    this.version(1).stores({
      recipes: 'id, updatedAt, url',
      versions: 'id, recipeId',
      foods: 'id',
    });
  }
}

/**
 * Opens the store. When another tab brings a newer schema this one lets go, so that the other can
 * go on; `onStale` then tells the user to reload.
 */
export function openStore(onStale: () => void = () => {}, name?: string): Store {
  const store = new Store(name);
  store.on('versionchange', () => {
    store.close();
    onStale();
  });
  store.on('blocked', onStale);
  return store;
}
