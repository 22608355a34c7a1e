import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { DEFAULT_GOALS } from '../../../engine/model.ts';
import { openStore, type Store } from '../../../extension/store/db.ts';
import {
  BIN_DAYS,
  deleteRecipe,
  emptyOldBin,
  findByPage,
  getRecipe,
  listRecipes,
  restoreRecipe,
  saveRecipe,
  sayOfRecipe,
  sayOfVersion,
  versionsOf,
} from '../../../extension/store/kept/saved.ts';
import { answerSave } from '../../../extension/store/working/keeper.ts';
import { sampleRecipe, sampleWork } from '../sample.ts';

const DAY = 86_400_000;
let store: Store;
let count = 0;

beforeEach(() => {
  count += 1;
  store = openStore(() => {}, `saved-${count}`);
});

afterEach(async () => {
  vi.restoreAllMocks();
  await store.delete();
});

describe('saving', () => {
  it('keeps recipe, goals, corrections and result over a reopened database', async () => {
    const work = sampleWork({ corrections: { '0': { grams: 480 } } });
    const { id } = await saveRecipe(store, work, null, 1000);
    store.close();
    store = openStore(() => {}, `saved-${count}`);
    expect(await getRecipe(store, id)).toMatchObject({ ...work, savedAt: 1000, updatedAt: 1000 });
  });

  it('makes the state before into a version, and only when something changed', async () => {
    const { id } = await saveRecipe(store, sampleWork(), null, 1000);
    await saveRecipe(store, sampleWork(), id, 2000);
    expect(await versionsOf(store, id)).toEqual([]);
    const goals = { ...DEFAULT_GOALS, budgetG: 10 };
    const saved = await saveRecipe(store, sampleWork({ goals }), id, 3000);
    expect(saved).toMatchObject({ id, savedAt: 1000, updatedAt: 3000, goals: { budgetG: 10 } });
    const versions = await versionsOf(store, id);
    expect(versions).toHaveLength(1);
    expect(versions[0]).toMatchObject({ recipeId: id, savedAt: 2000, goals: { budgetG: 15 } });
  });

  it('keeps what the user says of a state with that state', async () => {
    const { id } = await saveRecipe(store, sampleWork(), null, 1000);
    await sayOfRecipe(store, id, { name: 'First try', worked: true });
    await saveRecipe(store, sampleWork(), id, 2000);
    expect(await getRecipe(store, id)).toMatchObject({ name: 'First try', worked: true });
    await saveRecipe(store, sampleWork({ goals: { ...DEFAULT_GOALS, budgetG: 10 } }), id, 3000);
    expect(await getRecipe(store, id)).toMatchObject({ name: '', worked: false });
    const [version] = await versionsOf(store, id);
    expect(version).toMatchObject({ name: 'First try', worked: true });
    await sayOfVersion(store, version?.id ?? '', { name: 'The dry one', worked: false });
    expect(await versionsOf(store, id)).toMatchObject([{ name: 'The dry one', worked: false }]);
  });

  it('opens a recipe whose stored result has another shape, without the result', async () => {
    const { id } = await saveRecipe(store, sampleWork(), null, 1000);
    await store.table('recipes').update(id, { adaptation: { plan: 'of another build' } });
    const { recipes, damaged } = await listRecipes(store);
    expect(damaged).toBe(0);
    expect(recipes[0]).toMatchObject({ id, goals: { budgetG: 15 }, adaptation: null });
  });

  it('leaves the old state when the write fails half way', async () => {
    const { id } = await saveRecipe(store, sampleWork(), null, 1000);
    vi.spyOn(store.recipes, 'put').mockRejectedValueOnce(new Error('cut off'));
    const goals = { ...DEFAULT_GOALS, budgetG: 10 };
    await expect(saveRecipe(store, sampleWork({ goals }), id, 2000)).rejects.toThrow('cut off');
    expect(await getRecipe(store, id)).toMatchObject({ updatedAt: 1000, goals: { budgetG: 15 } });
    expect(await versionsOf(store, id)).toEqual([]);
  });

  it('lists the latest first and counts rows that cannot be read', async () => {
    await saveRecipe(store, sampleWork({ recipe: sampleRecipe({ title: 'First' }) }), null, 1000);
    await saveRecipe(store, sampleWork({ recipe: sampleRecipe({ title: 'Second' }) }), null, 2000);
    await store.table('recipes').put({ id: 'broken', updatedAt: 3000, url: '' });
    const { recipes, damaged } = await listRecipes(store);
    expect(recipes.map((saved) => saved.recipe.title)).toEqual(['Second', 'First']);
    expect(damaged).toBe(1);
    expect(await getRecipe(store, 'broken')).toBeNull();
  });

  it('finds a recipe by its page and title, but not in the bin', async () => {
    const { id } = await saveRecipe(store, sampleWork(), null, 1000);
    expect((await findByPage(store, sampleRecipe()))?.id).toBe(id);
    expect(await findByPage(store, sampleRecipe({ title: 'Other' }))).toBeNull();
    expect(await findByPage(store, sampleRecipe({ url: null }))).toBeNull();
    await deleteRecipe(store, id, 2000);
    expect(await findByPage(store, sampleRecipe())).toBeNull();
  });
});

describe('deleting', () => {
  it('is undone without loss', async () => {
    const { id } = await saveRecipe(store, sampleWork(), null, 1000);
    const before = await getRecipe(store, id);
    await deleteRecipe(store, id, 2000);
    expect((await listRecipes(store)).recipes).toEqual([]);
    expect((await listRecipes(store, { deleted: true })).recipes).toHaveLength(1);
    await restoreRecipe(store, id);
    expect(await getRecipe(store, id)).toEqual(before);
  });

  it('becomes final only after the days in the bin, versions included', async () => {
    const { id } = await saveRecipe(store, sampleWork(), null, 0);
    await saveRecipe(store, sampleWork({ goals: { ...DEFAULT_GOALS, budgetG: 9 } }), id, 1);
    const kept = await saveRecipe(store, sampleWork(), null, 2);
    await deleteRecipe(store, id, DAY);
    expect(await emptyOldBin(store, DAY + BIN_DAYS * DAY)).toBe(0);
    expect(await emptyOldBin(store, DAY + BIN_DAYS * DAY + 1)).toBe(1);
    expect(await getRecipe(store, id)).toBeNull();
    expect(await versionsOf(store, id)).toEqual([]);
    expect(await getRecipe(store, kept.id)).not.toBeNull();
  });
});

describe('the answer to a save request', () => {
  it('comes after the recipe is stored', async () => {
    const answer = await answerSave(store, { type: 'save', id: null, work: sampleWork() }, 1000);
    expect(answer.ok).toBe(true);
    expect(await getRecipe(store, answer.ok ? answer.id : '')).not.toBeNull();
  });

  it('makes one recipe of a save that is tried again after its answer was lost', async () => {
    const request = { type: 'save', id: 'chosen-by-the-popup', work: sampleWork() };
    await answerSave(store, request, 1000);
    const answer = await answerSave(store, request, 2000);
    expect(answer).toEqual({ ok: true, id: 'chosen-by-the-popup' });
    expect((await listRecipes(store)).recipes).toHaveLength(1);
    expect(await versionsOf(store, 'chosen-by-the-popup')).toEqual([]);
  });

  it('says what went wrong with a damaged request', async () => {
    const answer = await answerSave(store, { type: 'save', id: null, work: {} }, 1000);
    expect(answer).toMatchObject({ ok: false });
    expect((await listRecipes(store)).recipes).toEqual([]);
  });

  it.each([
    ['Firefox', Object.assign(new Error('full'), { name: 'QuotaExceededError' })],
    [
      'Chromium',
      Object.assign(new Error('aborted'), {
        name: 'AbortError',
        inner: Object.assign(new Error('full'), { name: 'QuotaExceededError' }),
      }),
    ],
  ])('tells of a full disk as %s reports it', async (_, error) => {
    vi.spyOn(store, 'transaction').mockRejectedValueOnce(error);
    const answer = await answerSave(store, { type: 'save', id: null, work: sampleWork() }, 1000);
    expect(answer).toMatchObject({ ok: false, why: expect.stringContaining('no room left') });
  });
});
