import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { DEFAULT_GOALS } from '../../../engine/model.ts';
import { exportBackup } from '../../../extension/store/backup/transfer.ts';
import { openStore, type Store } from '../../../extension/store/db.ts';
import { saveBake } from '../../../extension/store/kept/kept-bakes.ts';
import {
  deletePhoto,
  getPhoto,
  photoOfRecipe,
  savePhoto,
  smallPhotos,
} from '../../../extension/store/kept/photos.ts';
import {
  deleteRecipe,
  emptyOldBin,
  getRecipe,
  saveRecipe,
  sayOfRecipe,
  versionsOf,
} from '../../../extension/store/kept/saved.ts';
import { getRecipes, putBack, saveSeveral } from '../../../extension/store/kept/several.ts';
import { sampleBake, sampleWork } from '../sample.ts';

const budget = (budgetG: number) => sampleWork({ goals: { ...DEFAULT_GOALS, budgetG } });

let store: Store;
let ids: string[];
let count = 0;

beforeEach(async () => {
  count += 1;
  store = openStore(() => {}, `several-${count}`);
  ids = [];
  for (const grams of [15, 12]) ids.push((await saveRecipe(store, budget(grams), null, 1000)).id);
});

afterEach(() => store.delete());

const budgets = async () => (await getRecipes(store, ids)).map(({ goals }) => goals.budgetG);

describe('several recipes', () => {
  it('change together and go back together, with what was said of them', async () => {
    const [first = ''] = ids;
    await sayOfRecipe(store, first, { name: 'Sunday', worked: true });
    const next = ids.map((id) => ({ id, work: budget(9) }));
    const before = await saveSeveral(store, next, 2000);
    expect(await budgets()).toEqual([9, 9]);
    expect((await versionsOf(store, first)).map(({ name }) => name)).toEqual(['Sunday']);
    expect(await putBack(store, before, next, 3000)).toBe(2);
    expect(await budgets()).toEqual([15, 12]);
    expect(await getRecipe(store, first)).toMatchObject({ name: 'Sunday', worked: true });
  });

  it('that were changed again since stay as they are', async () => {
    const [first = ''] = ids;
    const next = ids.map((id) => ({ id, work: budget(9) }));
    const before = await saveSeveral(store, next, 2000);
    await saveRecipe(store, budget(7), first, 2500);
    expect(await putBack(store, before, next, 3000)).toBe(1);
    expect(await budgets()).toEqual([7, 12]);
  });

  it('all change or none does', async () => {
    const broken = { id: ids[1] ?? '', work: { ...budget(9), adaptation: null as never } };
    await expect(
      saveSeveral(store, [{ id: ids[0] ?? '', work: budget(9) }, broken], 2000),
    ).rejects.toThrow();
    expect(await budgets()).toEqual([15, 12]);
  });

  it('go to a file of their own with what belongs to them, and nothing else', async () => {
    const [first = '', second = ''] = ids;
    await saveBake(store, sampleBake({ id: 'a', recipeId: first }));
    await saveBake(store, sampleBake({ id: 'b', recipeId: second }));
    const data = 'data:image/png;base64,AAAA';
    await savePhoto(store, { id: photoOfRecipe(first), data, small: data, addedAt: 1 });
    await savePhoto(store, { id: photoOfRecipe(second), data, small: data, addedAt: 1 });
    const file = JSON.parse(await exportBackup(store, 0, new Set([second])));
    expect(file.recipes.map(({ id }: { id: string }) => id)).toEqual([second]);
    expect(file.bakes.map(({ id }: { id: string }) => id)).toEqual(['b']);
    expect(file.photos.map(({ id }: { id: string }) => id)).toEqual([photoOfRecipe(second)]);
  });
});

describe('photos', () => {
  const data = 'data:image/jpeg;base64,AAAA';
  const small = 'data:image/jpeg;base64,BBBB';

  it('are kept, listed in small, taken away, and go with their recipe', async () => {
    const [first = '', second = ''] = ids;
    for (const id of ids)
      await savePhoto(store, { id: photoOfRecipe(id), data, small, addedAt: 1 });
    expect(await smallPhotos(store, [...ids, 'another'])).toEqual({
      [first]: small,
      [second]: small,
    });
    await deletePhoto(store, photoOfRecipe(first));
    expect(await getPhoto(store, photoOfRecipe(first))).toBeNull();
    await deleteRecipe(store, second, 2000);
    expect(await emptyOldBin(store, 2000 + 31 * 86_400_000)).toBe(1);
    expect(await store.photos.count()).toBe(0);
  });

  it('are never an address of elsewhere, nor endless', async () => {
    for (const bad of [
      'https://kitchen.example/a.png',
      'data:text/html;base64,AAAA',
      `${data}${'A'.repeat(2_000_001)}`,
    ])
      await expect(
        savePhoto(store, { id: 'recipe:x', data: bad, small, addedAt: 1 }),
      ).rejects.toThrow();
    await store.table('photos').put({ id: 'recipe:x', data: 'https://kitchen.example/a.png' });
    expect(await getPhoto(store, 'recipe:x')).toBeNull();
  });
});
