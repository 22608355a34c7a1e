/** Erasing takes everything or says why not. */
import 'fake-indexeddb/auto';
import Dexie from 'dexie';
import { expect, it, vi } from 'vitest';
import { openStore } from '../../extension/store/db.ts';
import { eraseAll } from '../../extension/store/erase.ts';
import { amountsOf } from '../../extension/store/kept/amounts.ts';
import { saveRecipe } from '../../extension/store/kept/saved.ts';
import { sampleWork } from './sample.ts';

const nothing = { get: async () => ({}), set: async () => {}, remove: async () => {} };

it('leaves no database and clears every area', async () => {
  const store = openStore(() => {}, 'erase');
  await saveRecipe(store, sampleWork(), null, 1);
  expect(await amountsOf(store, nothing)).toEqual({ recipes: 1, bakes: 0, packages: 0, work: 0 });
  const areas = [{ clear: vi.fn(async () => {}) }, { clear: vi.fn(async () => {}) }];
  await eraseAll(store, areas);
  expect(await Dexie.exists('erase')).toBe(false);
  for (const { clear } of areas) expect(clear).toHaveBeenCalledOnce();
});

it('takes nothing else when the database cannot be deleted', async () => {
  const store = openStore(() => {}, 'erase-failing');
  vi.spyOn(store, 'delete').mockRejectedValueOnce(new Error('busy'));
  const area = { clear: vi.fn(async () => {}) };
  await expect(eraseAll(store, [area])).rejects.toThrow('busy');
  expect(area.clear).not.toHaveBeenCalled();
});
