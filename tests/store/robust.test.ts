/** What must not be lost when the disk is full, a row is damaged or another build was here. */
import 'fake-indexeddb/auto';
import Dexie, { type Table } from 'dexie';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { foodFromLabel } from '../../engine/index.ts';
import { DEFAULT_GOALS } from '../../engine/model.ts';
import { exportBackup, importBackup } from '../../extension/store/backup/transfer.ts';
import { openStore, type Store } from '../../extension/store/db.ts';
import { isStorageFull, storageMessage } from '../../extension/store/failure.ts';
import { saveAlias } from '../../extension/store/kept/aliases.ts';
import { deleteBake, saveBake } from '../../extension/store/kept/kept-bakes.ts';
import { saveOwnFood } from '../../extension/store/kept/kept-packages.ts';
import { addToPantry } from '../../extension/store/kept/pantry.ts';
import { listRecipes, saveRecipe, sayOfRecipe } from '../../extension/store/kept/saved.ts';
import { listShelf } from '../../extension/store/kept/shelf.ts';
import { blendEu } from '../foods/label/labels.ts';
import { sampleBake, sampleRecipe, sampleWork } from './sample.ts';

let store: Store;
let other: Store;
let count = 0;

beforeEach(() => {
  count += 1;
  store = openStore(() => {}, `robust-${count}`);
  other = openStore(() => {}, `robust-other-${count}`);
});

afterEach(async () => {
  vi.restoreAllMocks();
  await store.delete();
  await other.delete();
});

const full = () => Object.assign(new Error('full'), { name: 'QuotaExceededError' });

function ownFood() {
  const label = blendEu();
  const made = foodFromLabel(label);
  if (!made.ok) throw new Error(made.why);
  return { ...made.food, label };
}

const alias = { name: 'house mix', foodId: 'bread-flour', foodName: 'bread flour', addedAt: 1 };
const pantryFood = { foodId: 'xanthan-gum', foodName: 'xanthan gum' };

/** One of everything. */
async function fill(into: Store): Promise<string> {
  const { id } = await saveRecipe(into, sampleWork(), null, 1000);
  await saveBake(into, sampleBake({ recipeId: id }));
  await saveAlias(into, alias);
  await addToPantry(into, pantryFood);
  await saveOwnFood(into, ownFood());
  return id;
}

describe('a full disk', () => {
  const goals = { ...DEFAULT_GOALS, budgetG: 9 };
  const writes: [string, (s: Store) => Table, (s: Store, id: string) => Promise<unknown>][] = [
    ['a recipe', (s) => s.recipes, (s, id) => saveRecipe(s, sampleWork({ goals }), id, 2000)],
    ['a bake', (s) => s.bakes, (s, id) => saveBake(s, sampleBake({ id: 'new', recipeId: id }))],
    ['a name', (s) => s.aliases, (s) => saveAlias(s, { ...alias, name: 'soft mix' })],
    ['a food at home', (s) => s.pantry, (s) => addToPantry(s, { foodId: 'x', foodName: 'x' })],
    ['a package', (s) => s.foods, (s) => saveOwnFood(s, { ...ownFood(), id: 'own-other' })],
  ];

  it.each(writes)('refuses %s and leaves everything as it was', async (_, table, write) => {
    const id = await fill(store);
    const before = await exportBackup(store, 0);
    vi.spyOn(table(store), 'put').mockRejectedValueOnce(full());
    const failure = await write(store, id).then(
      () => null,
      (error: unknown) => error,
    );
    expect(isStorageFull(failure)).toBe(true);
    expect(storageMessage(failure)).toContain('no room left');
    expect(await exportBackup(store, 0)).toBe(before);
  });

  it('in the middle of an import leaves everything as it was', async () => {
    await fill(other);
    await saveRecipe(store, sampleWork({ recipe: sampleRecipe({ title: 'Mine' }) }), null, 5);
    const before = await exportBackup(store, 0);
    vi.spyOn(store.pantry, 'add').mockRejectedValueOnce(full());
    await expect(importBackup(store, await exportBackup(other, 0))).rejects.toThrow('full');
    expect(await exportBackup(store, 0)).toBe(before);
  });
});

describe('a store of a newer build', () => {
  /** A build to come, with tables of its own and one of ours given up. */
  async function raised(stores: Record<string, string | null>): Promise<string> {
    const id = await fill(store);
    store.close();
    const newer = new Dexie(store.name);
    newer.version(99).stores({ ...stores, later: 'id' });
    await newer.open();
    await newer.table('later').add({ id: 'from the future' });
    newer.close();
    store = openStore(() => {}, store.name);
    return id;
  }

  async function installed(): Promise<{ version: number; tables: string[]; later: number }> {
    const db = new Dexie(store.name);
    await db.open();
    const tables = db.tables.map(({ name }) => name);
    const state = {
      version: db.backendDB().version,
      tables,
      later: await db.table('later').count(),
    };
    db.close();
    return state;
  }

  const ALL = {
    recipes: 'id, updatedAt, url',
    versions: 'id, recipeId',
    foods: 'id',
    bakes: 'id, recipeId',
    aliases: 'name',
    pantry: 'foodId',
    shelf: 'id',
    taught: 'id',
    photos: 'id',
  };

  it('is read, listed and exported', async () => {
    await raised(ALL);
    const { recipes } = await listRecipes(store);
    expect(recipes.map(({ recipe }) => recipe.title)).toEqual(['Sample loaf']);
    expect((await listShelf(store)).rows).toHaveLength(1);
    expect(JSON.parse(await exportBackup(store, 0)).pantry).toHaveLength(1);
    expect(store.newer).toBe(true);
  });

  it('takes no change, says why, and stays as the newer build left it', async () => {
    const id = await raised(ALL);
    const before = await installed();
    const writes: (() => Promise<unknown>)[] = [
      () => saveRecipe(store, sampleWork({ goals: { ...DEFAULT_GOALS, budgetG: 9 } }), id, 2000),
      () => saveAlias(store, alias),
      () => addToPantry(store, pantryFood),
      () => saveBake(store, sampleBake({ id: 'new', recipeId: id })),
      () => saveOwnFood(store, ownFood()),
      async () => importBackup(store, await exportBackup(store, 0)),
    ];
    for (const write of writes) {
      const failure = await write().then(
        () => null,
        (error: unknown) => error,
      );
      expect(storageMessage(failure)).toContain('newer Crumbshift');
    }
    expect(await installed()).toEqual(before);
  });

  it('that lacks a table of ours is not given it', async () => {
    await raised({ recipes: 'id, updatedAt, url', pantry: null });
    const before = await installed();
    await listRecipes(store).catch(() => null);
    await addToPantry(store, pantryFood).catch(() => null);
    store.close();
    expect(await installed()).toEqual(before);
  });

  it('of this build is written as ever', async () => {
    await fill(store);
    expect(store.newer).toBe(false);
  });
});

describe('another tab', () => {
  it('that brings a newer schema makes this one let go and say so', async () => {
    const stale = vi.fn();
    const here = openStore(stale, `robust-tabs-${count}`);
    await here.open();
    const newer = new Dexie(here.name);
    newer.version(99).stores({ recipes: 'id' });
    await newer.open();
    expect(stale).toHaveBeenCalled();
    expect(here.isOpen()).toBe(false);
    newer.close();
    await here.delete();
  });
});

describe('words for what failed', () => {
  it('about a state that is gone change nothing', async () => {
    await sayOfRecipe(store, 'not here', { name: 'ghost' });
    await deleteBake(store, 'not here');
    expect(await store.recipes.count()).toBe(0);
  });

  it('name the cause when it is known', () => {
    const named = (name: string) => Object.assign(new Error('x'), { name });
    expect(storageMessage(named('VersionError'))).toContain('newer version');
    const opening = Object.assign(new Error('x'), {
      name: 'OpenFailedError',
      inner: named('UnknownError'),
    });
    for (const vague of [named('AbortError'), named('UnknownError'), opening])
      expect(storageMessage(vague)).toContain('often there is no room left');
    expect(storageMessage(new Error('disk gone'))).toContain('(disk gone)');
    expect(storageMessage('odd')).toContain('could not store');
  });
});
