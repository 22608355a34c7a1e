/** The database on the user's disk. Never lower a version number; add a new one with its upgrade. */
import Dexie, { type Table } from 'dexie';
import type { BakeFacts } from '../../engine/plan/bakes/bake-facts.ts';
import type { ShelfRow } from './kept/shelf-row.ts';
import { isNewer, readOnlyWhen, unmended } from './newer-data.ts';
import type { PantryFood } from './pantry-food.ts';
import type { Alias, Bake, OwnFood, Photo, Said, SavedRecipe, SavedVersion } from './records.ts';

const DATABASE_NAME = 'crumbshift';

export class Store extends Dexie {
  declare recipes: Table<SavedRecipe, string>;
  declare versions: Table<SavedVersion, string>;
  /** The user's own foods, from package labels. */
  declare foods: Table<OwnFood, string>;
  declare bakes: Table<Bake, string>;
  declare aliases: Table<Alias, string>;
  declare pantry: Table<PantryFood, string>;
  /** Light rows of the kept recipes; made anew from them whenever one is missing. */
  declare shelf: Table<ShelfRow, string>;
  /** What each bake measured, a light row; made anew from the bakes whenever one is missing. */
  declare taught: Table<BakeFacts, string>;
  declare photos: Table<Photo, string>;

  /** A newer build has written here: everything can be read and exported, nothing changed. */
  newer = false;

  constructor(name: string = DATABASE_NAME) {
    super(name, 'indexedDB' in globalThis ? { indexedDB: unmended(globalThis.indexedDB) } : {});
    this.version(1).stores({
      recipes: 'id, updatedAt, url',
      versions: 'id, recipeId',
      foods: 'id',
    });
    this.version(2)
      .stores({ bakes: 'id, recipeId', aliases: 'name', pantry: 'foodId' })
      .upgrade(async (change) => {
        // Only what is new is written: the rest of a row stays as it is, damaged or not.
        const unsaid = (row: Partial<Said>) => {
          row.name ??= '';
          row.worked ??= false;
        };
        await change.table('recipes').toCollection().modify(unsaid);
        await change.table('versions').toCollection().modify(unsaid);
      });
    this.version(3).stores({ shelf: 'id' });
    this.version(4).stores({ taught: 'id', photos: 'id' });
    const declared = this.verno;
    this.on('ready', () => {
      this.newer = isNewer(this, declared);
    });
    this.use(readOnlyWhen(() => this.newer));
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
