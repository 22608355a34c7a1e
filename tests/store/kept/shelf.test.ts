import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { exportBackup, importBackup } from '../../../extension/store/backup/transfer.ts';
import { openStore, type Store } from '../../../extension/store/db.ts';
import {
  deleteRecipe,
  duplicateRecipe,
  getRecipe,
  restoreRecipe,
  retag,
  saveRecipe,
  sayOfRecipe,
} from '../../../extension/store/kept/saved.ts';
import { latestOnShelf, listShelf } from '../../../extension/store/kept/shelf.ts';
import { sampleRecipe, sampleWork } from '../sample.ts';

let store: Store;
let count = 0;

beforeEach(() => {
  count += 1;
  store = openStore(() => {}, `shelf-${count}`);
});

afterEach(async () => {
  await store.delete();
});

const kept = (title: string, now: number) =>
  saveRecipe(store, sampleWork({ recipe: sampleRecipe({ title, url: null }) }), null, now);

const titles = async () => (await listShelf(store)).rows.map(({ title }) => title);

describe('the shelf', () => {
  it('lists what is kept, latest first, with its figures', async () => {
    const { id, adaptation } = await kept('First loaf', 1);
    await kept('Second loaf', 2);
    const { rows, bin, damaged } = await listShelf(store);
    expect(rows.map(({ title }) => title)).toEqual(['Second loaf', 'First loaf']);
    expect([bin.length, damaged]).toEqual([0, 0]);
    const first = rows.find((row) => row.id === id);
    expect(first?.figures).toEqual({
      beforeG: adaptation?.before.perServing.netCarbsG?.best,
      afterG: adaptation?.after.perServing.netCarbsG?.best,
      highG: adaptation?.after.perServing.netCarbsG?.high,
      budgetG: adaptation?.goals.budgetG,
    });
    expect(first?.words).toContain('bread flour');
  });

  it('follows every change: put away, brought back, tags, copies', async () => {
    const { id } = await kept('Loaf', 1);
    await deleteRecipe(store, id, 5);
    expect((await listShelf(store)).bin.map((row) => row.id)).toEqual([id]);
    await restoreRecipe(store, id);
    await retag(store, id, [], ['for guests']);
    await sayOfRecipe(store, id, { worked: true });
    const [row] = (await listShelf(store)).rows;
    expect(row?.tags).toEqual(['for guests']);
    expect(row?.worked).toBe(true);
    expect(row?.words).toContain('for guests');
    const copy = await duplicateRecipe(store, id, 9);
    expect(await titles()).toEqual(['Loaf', 'Loaf']);
    expect(copy?.worked).toBe(false);
    expect((await getRecipe(store, id))?.worked).toBe(true);
  });

  it('keeps tags when the recipe is kept again', async () => {
    const { id } = await kept('Loaf', 1);
    await retag(store, id, [], ['bread']);
    await saveRecipe(store, sampleWork({ corrections: { '0': { grams: 480 } } }), id, 2);
    expect((await getRecipe(store, id))?.tags).toEqual(['bread']);
  });

  it('is made anew where rows are missing, old or damaged, and drops rows without a recipe', async () => {
    const { id } = await kept('Loaf', 1);
    await kept('Cake', 2);
    await store.shelf.clear();
    expect(await titles()).toEqual(['Cake', 'Loaf']);
    await store.shelf.update(id, { title: 'Wrong', updatedAt: 0 });
    await store.table('shelf').put({ id: 'nobody', title: 7 });
    await store.table('shelf').put({ ...(await store.shelf.get(id)), id: 'gone' });
    expect(await titles()).toEqual(['Cake', 'Loaf']);
    expect(await store.shelf.get('gone')).toBeUndefined();
  });

  it('counts recipes that cannot be read, and removes none', async () => {
    await kept('Loaf', 1);
    await store.table('recipes').put({ id: 'broken', updatedAt: 3, recipe: 'no recipe' });
    const { rows, damaged } = await listShelf(store);
    expect([rows.length, damaged]).toEqual([1, 1]);
    expect(await store.recipes.count()).toBe(2);
  });

  it('shows what a file brings in', async () => {
    await kept('Loaf', 1);
    const file = await exportBackup(store, 10);
    const other = openStore(() => {}, `shelf-other-${count}`);
    expect((await importBackup(other, file)).ok).toBe(true);
    expect((await listShelf(other)).rows.map(({ title }) => title)).toEqual(['Loaf']);
    await other.delete();
  });

  it('reads thousands without reading their recipes', async () => {
    const { id } = await kept('Loaf', 1);
    const row = await store.shelf.get(id);
    const recipe = await store.recipes.get(id);
    const many = Array.from({ length: 2000 }, (_, n) => `r${n}`);
    if (!row || !recipe) throw new Error('nothing was kept');
    await store.recipes.bulkPut(many.map((one) => ({ ...recipe, id: one })));
    await store.shelf.bulkPut(many.map((one) => ({ ...row, id: one })));
    let read = 0;
    store.recipes.hook('reading', (one) => {
      read += 1;
      return one;
    });
    expect((await listShelf(store)).rows).toHaveLength(2001);
    expect(read).toBe(0);
  });
});

describe('the top of a long shelf', () => {
  const latest = async () => (await latestOnShelf(store, 2)).map(({ title }) => title);

  it('is the latest dishes, without those put away', async () => {
    for (const [at, title] of ['First', 'Second', 'Third', 'Fourth'].entries())
      await kept(title, at + 1);
    expect(await latest()).toEqual(['Fourth', 'Third']);
    const [fourth] = await latestOnShelf(store, 2);
    await deleteRecipe(store, fourth?.id ?? '', 9);
    expect(await latest()).toEqual(expect.not.arrayContaining(['Fourth']));
    expect((await latest()).every((title) => ['Third', 'Second'].includes(title))).toBe(true);
  });

  it('is found without the recipes being counted, for which all of them are read', async () => {
    for (const [at, title] of ['First', 'Second', 'Third'].entries()) await kept(title, at + 1);
    const counts = vi.spyOn(IDBObjectStore.prototype, 'count');
    const reads = vi.spyOn(IDBObjectStore.prototype, 'getAll');
    expect(await latest()).toEqual(['Third', 'Second']);
    expect([counts.mock.calls.length, reads.mock.calls.length]).toEqual([0, 0]);
    vi.restoreAllMocks();
  });

  it('is not shown where the shelf is short', async () => {
    await kept('First', 1);
    await kept('Second', 2);
    expect(await latest()).toEqual([]);
  });

  it('is not shown while a row is missing, old or damaged, or a recipe has none', async () => {
    const rows = [await kept('First', 1), await kept('Second', 2), await kept('Third', 3)];
    const { id } = rows[2] as (typeof rows)[number];
    const row = await store.shelf.get(id);
    if (!row) throw new Error('no row');
    for (const damage of [{ ...row, updatedAt: 0 }, { ...row, tags: 7 }, { id }]) {
      await store.table('shelf').put(damage);
      expect(await latest()).toEqual([]);
    }
    await store.shelf.delete(id);
    expect(await latest()).toEqual([]);
    await store.shelf.put(row);
    expect(await latest()).toEqual(['Third', 'Second']);
    await store.table('recipes').put({ id: 'broken', updatedAt: 8, recipe: 'no recipe' });
    expect(await latest()).toEqual([]);
  });
});
