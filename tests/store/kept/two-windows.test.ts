/** Two windows on one recipe: what either wrote stays, and the later one is told. */
import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { DEFAULT_GOALS } from '../../../engine/model.ts';
import { openStore, type Store } from '../../../extension/store/db.ts';
import {
  getRecipe,
  retag,
  saveRecipe,
  saveState,
  sayOfRecipe,
  versionsOf,
} from '../../../extension/store/kept/saved.ts';
import { sampleWork } from '../sample.ts';

const budget = (budgetG: number) => sampleWork({ goals: { ...DEFAULT_GOALS, budgetG } });

let store: Store;
let count = 0;

beforeEach(() => {
  count += 1;
  store = openStore(() => {}, `windows-${count}`);
});

afterEach(() => store.delete());

const budgetsOf = async (id: string): Promise<number[]> =>
  (await versionsOf(store, id)).map(({ goals }) => goals.budgetG);

describe('two windows', () => {
  it('both keep their state, and the later one is told', async () => {
    const { id, updatedAt: known } = await saveRecipe(store, budget(15), null, 1000);
    expect((await saveState(store, budget(12), id, 2000, { known })).elsewhere).toBe(false);
    const later = await saveState(store, budget(9), id, 3000, { known });
    expect(later.elsewhere).toBe(true);
    expect(later.saved.goals.budgetG).toBe(9);
    expect((await budgetsOf(id)).sort()).toEqual([12, 15]);
    const next = await saveState(store, budget(8), id, 4000, { known: later.saved.updatedAt });
    expect(next.elsewhere).toBe(false);
  });

  it('are told apart within one moment of the clock', async () => {
    const { id, updatedAt: known } = await saveRecipe(store, budget(15), null, 1000);
    await saveState(store, budget(12), id, 1000, { known });
    expect((await saveState(store, budget(9), id, 1000, { known })).elsewhere).toBe(true);
    expect((await budgetsOf(id)).sort()).toEqual([12, 15]);
  });

  it('are not told when both came to the same', async () => {
    const { id, updatedAt: known } = await saveRecipe(store, budget(15), null, 1000);
    await saveState(store, budget(12), id, 2000, { known });
    expect((await saveState(store, budget(12), id, 3000, { known })).elsewhere).toBe(false);
  });

  it('lose no tag and no note of each other', async () => {
    const { id } = await saveRecipe(store, budget(15), null, 1000);
    await retag(store, id, [], ['bread', 'sunday']);
    // Both saw bread and sunday: one adds a tag, the other takes one away and adds another.
    await retag(store, id, ['bread', 'sunday'], ['bread', 'sunday', 'guests']);
    await retag(store, id, ['bread', 'sunday'], ['bread', 'rye']);
    expect((await getRecipe(store, id))?.tags).toEqual(['bread', 'guests', 'rye']);
    await sayOfRecipe(store, id, { note: 'Longer rest.' }, { note: '' });
    await sayOfRecipe(store, id, { note: 'Less salt.' }, { note: '' });
    expect((await getRecipe(store, id))?.note).toBe('Longer rest.\nLess salt.');
    await sayOfRecipe(store, id, { note: 'Less salt.' }, { note: 'Longer rest.\nLess salt.' });
    expect((await getRecipe(store, id))?.note).toBe('Less salt.');
  });

  it('never lose a state that was on the screen of either when it was kept', async () => {
    const act = fc.record({
      window: fc.constantFrom(0, 1),
      budgetG: fc.integer({ min: 1, max: 30 }),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(act, { maxLength: 8 }), async (acts) => {
        const { id, updatedAt } = await saveRecipe(store, budget(40), null, 1000);
        const known = [updatedAt, updatedAt];
        for (const { window, budgetG } of acts) {
          const how = { known: known[window] ?? null };
          const { saved } = await saveState(store, budget(budgetG), id, 1000, how);
          known[window] = saved.updatedAt;
        }
        const here = new Set([
          (await getRecipe(store, id))?.goals.budgetG,
          ...(await budgetsOf(id)),
        ]);
        expect(here).toEqual(new Set([40, ...acts.map(({ budgetG }) => budgetG)]));
      }),
      { numRuns: 25, seed: 21 },
    );
  });
});

describe('what is written by itself', () => {
  const auto = true;

  it('keeps the state that was kept by hand, and no trace of those between', async () => {
    const { id } = await saveRecipe(store, budget(15), null, 1000);
    await saveState(store, budget(14), id, 2000, { auto });
    await saveState(store, budget(13), id, 3000, { auto });
    const { saved } = await saveState(store, budget(12), id, 4000, { auto });
    expect(saved.auto).toBe(true);
    expect(await budgetsOf(id)).toEqual([15]);
    await saveState(store, budget(12), id, 5000);
    expect((await getRecipe(store, id))?.auto).toBe(false);
    await saveState(store, budget(11), id, 6000, { auto });
    expect((await budgetsOf(id)).sort()).toEqual([12, 15]);
  });

  it('becomes a version when it was named, worked, or another window came between', async () => {
    const { id } = await saveRecipe(store, budget(15), null, 1000);
    await saveState(store, budget(14), id, 2000, { auto });
    await sayOfRecipe(store, id, { worked: true });
    const named = await saveState(store, budget(13), id, 3000, { auto });
    expect((await budgetsOf(id)).sort()).toEqual([14, 15]);
    const known = named.saved.updatedAt;
    await saveState(store, budget(12), id, 4000, { auto, known });
    const told = await saveState(store, budget(11), id, 5000, { auto, known });
    expect(told.elsewhere).toBe(true);
    expect((await budgetsOf(id)).sort()).toEqual([12, 14, 15]);
  });
});
