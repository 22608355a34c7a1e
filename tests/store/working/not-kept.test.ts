/** What was worked on is told apart from what is kept just so. */
import 'fake-indexeddb/auto';
import { afterEach, expect, it } from 'vitest';
import { DEFAULT_GOALS } from '../../../engine/model.ts';
import { openStore, type Store } from '../../../extension/store/db.ts';
import { saveRecipe } from '../../../extension/store/kept/saved.ts';
import { listNotKept } from '../../../extension/store/working/not-kept.ts';
import { storeWork, type WorkArea } from '../../../extension/store/working/unsaved.ts';
import { sampleRecipe, sampleWork } from '../sample.ts';

let store: Store | undefined;
afterEach(async () => {
  await store?.delete();
});

function area(): WorkArea {
  const values: Record<string, unknown> = {};
  return {
    get: async (key) => (key === null ? { ...values } : { [key]: values[key] }),
    set: async (entries) => void Object.assign(values, entries),
    remove: async (keys) => {
      for (const key of keys) delete values[key];
    },
  };
}

it('lists what is not kept, what was changed since, and what is gone from Kept', async () => {
  store = openStore(() => {}, 'not-kept');
  const place = area();
  const { adaptation: _, ...kept } = sampleWork();
  await saveRecipe(store, sampleWork(), 'loaf', 1);
  await storeWork(place, { ...kept, savedId: 'loaf' }, null);
  expect(await listNotKept(store, place)).toEqual([]);
  const goals = { ...DEFAULT_GOALS, budgetG: 9 };
  await storeWork(place, { ...kept, goals, savedId: 'loaf' }, null);
  await storeWork(place, { ...kept, savedId: 'gone' }, null);
  await storeWork(place, { ...kept, recipe: sampleRecipe({ title: 'New' }), savedId: null }, null);
  const found = await listNotKept(store, place);
  expect(found.map(({ current }) => [current.savedId, current.goals.budgetG])).toEqual([
    [null, DEFAULT_GOALS.budgetG],
    ['gone', DEFAULT_GOALS.budgetG],
    ['loaf', 9],
  ]);
});
