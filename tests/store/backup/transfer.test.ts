import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { DEFAULT_GOALS } from '../../../engine/model.ts';
import {
  exportBackup,
  importBackup,
  importMessage,
} from '../../../extension/store/backup/transfer.ts';
import { openStore, type Store } from '../../../extension/store/db.ts';
import {
  deleteRecipe,
  getRecipe,
  listRecipes,
  saveRecipe,
  versionsOf,
} from '../../../extension/store/kept/saved.ts';
import { sampleRecipe, sampleWork } from '../sample.ts';

const budget = (budgetG: number) => sampleWork({ goals: { ...DEFAULT_GOALS, budgetG } });

let here: Store;
let there: Store;
let count = 0;

beforeEach(() => {
  count += 1;
  here = openStore(() => {}, `here-${count}`);
  there = openStore(() => {}, `there-${count}`);
});

afterEach(async () => {
  await here.delete();
  await there.delete();
});

async function imported(store: Store, text: string) {
  const result = await importBackup(store, text);
  if (!result.ok) throw new Error(result.why);
  return result.count;
}

describe('export and import', () => {
  it('carry recipes and versions to another browser unchanged', async () => {
    const { id } = await saveRecipe(there, budget(15), null, 1000);
    await saveRecipe(there, budget(12), id, 2000);
    const count = await imported(here, await exportBackup(there, 5000));
    expect(count).toMatchObject({ added: 1, versions: 1, damaged: 0 });
    expect(await getRecipe(here, id)).toEqual(await getRecipe(there, id));
    expect(await versionsOf(here, id)).toEqual(await versionsOf(there, id));
  });

  it('leave the bin out', async () => {
    const { id } = await saveRecipe(there, budget(15), null, 1000);
    await deleteRecipe(there, id, 2000);
    expect(JSON.parse(await exportBackup(there, 3000)).recipes).toEqual([]);
  });

  it('add to what is here', async () => {
    await saveRecipe(there, budget(15), null, 1000);
    await saveRecipe(here, sampleWork({ recipe: sampleRecipe({ title: 'Mine' }) }), null, 1000);
    await imported(here, await exportBackup(there, 2000));
    expect((await listRecipes(here)).recipes).toHaveLength(2);
  });

  it.each([
    ['the file is later', 3000, 12, 10],
    ['this browser is later', 1500, 10, 12],
  ])('keep both states when %s', async (_, fileTime, topBudget, versionBudget) => {
    const { id } = await saveRecipe(here, budget(15), null, 1000);
    await imported(there, await exportBackup(here, 1000));
    await saveRecipe(there, budget(12), id, fileTime);
    await saveRecipe(here, budget(10), id, 2000);
    const file = await exportBackup(there, 4000);
    expect(await imported(here, file)).toMatchObject({ added: 0, merged: 1 });
    expect((await getRecipe(here, id))?.goals.budgetG).toBe(topBudget);
    const budgets = (await versionsOf(here, id)).map((version) => version.goals.budgetG);
    expect(budgets.sort()).toEqual([versionBudget, 15].sort());
    const again = await imported(here, file);
    const after = (await versionsOf(here, id)).map((version) => version.goals.budgetG);
    expect(new Set(after)).toEqual(new Set(budgets));
    expect(after).toHaveLength(budgets.length);
    expect(again.added + again.versions).toBe(0);
  });

  it('put a whole recipe in the place of one that cannot be read here', async () => {
    const { id } = await saveRecipe(here, budget(15), null, 1000);
    const file = await exportBackup(here, 1500);
    await here.table('recipes').update(id, { goals: 'damaged', updatedAt: 9000 });
    expect((await listRecipes(here)).damaged).toBe(1);
    await imported(here, file);
    expect(await listRecipes(here)).toMatchObject({ damaged: 0, recipes: [{ id }] });
    expect(await here.versions.count()).toBe(1);
  });

  it('bring back a recipe that is in the bin here', async () => {
    const { id } = await saveRecipe(here, budget(15), null, 1000);
    const file = await exportBackup(here, 1500);
    await deleteRecipe(here, id, 2000);
    await imported(here, file);
    expect((await listRecipes(here)).recipes.map((saved) => saved.id)).toEqual([id]);
  });
});

describe('a file that is not whole', () => {
  it.each([
    ['text that is no JSON', 'title,net carbs', 'not complete JSON'],
    ['a file cut off', '{"format":"crumbshift-backup","version":1,"recip', 'not complete JSON'],
    ['other JSON', '{"recipes":[]}', 'not a file that Crumbshift exported'],
    ['null', 'null', 'not a file that Crumbshift exported'],
    [
      'a newer format',
      '{"format":"crumbshift-backup","version":99,"exportedAt":"","recipes":[]}',
      'newer Crumbshift',
    ],
    [
      'a missing list',
      '{"format":"crumbshift-backup","version":1,"exportedAt":""}',
      'list of recipes is missing',
    ],
    [
      'nothing but damage',
      '{"format":"crumbshift-backup","version":1,"exportedAt":"","recipes":[{"id":"x"}]}',
      'Every entry',
    ],
  ])('is refused with words: %s', async (_, text, words) => {
    await saveRecipe(here, budget(15), null, 1000);
    const before = await exportBackup(here, 0);
    const result = await importBackup(here, text);
    expect(result).toMatchObject({ ok: false, why: expect.stringContaining(words) });
    expect(result).toMatchObject({ why: expect.stringContaining('Nothing was changed') });
    expect(await exportBackup(here, 0)).toBe(before);
  });

  it('gives what can be read and counts the rest', async () => {
    await saveRecipe(there, budget(15), null, 1000);
    const file = JSON.parse(await exportBackup(there, 2000));
    file.recipes.push({ ...file.recipes[0], id: 'second', goals: 'damaged' });
    const count = await imported(here, JSON.stringify(file));
    expect(count).toMatchObject({ added: 1, damaged: 1 });
    expect(importMessage(count)).toBe('1 recipe added. 1 entry is damaged and could not be read.');
  });
});

describe('names of foods in a file', () => {
  it('are taken for foods that are known, and no others', async () => {
    const addedAt = 1;
    const file = {
      format: 'crumbshift-backup',
      version: 2,
      exportedAt: '2026-01-01T00:00:00.000Z',
      recipes: [],
      aliases: [
        { name: 'house flour', foodId: 'bread-flour', foodName: 'bread flour', addedAt },
        { name: 'sugar', foodId: 'no-such-food', foodName: 'nothing', addedAt },
        { name: 'flour', foodId: '__proto__', foodName: 'x', addedAt },
      ],
      pantry: [
        { foodId: 'xanthan-gum', foodName: 'xanthan gum' },
        { foodId: 'constructor', foodName: 'x' },
      ],
    };
    const count = await imported(here, JSON.stringify(file));
    expect(count).toMatchObject({ aliases: 1, pantry: 1, damaged: 3 });
    expect((await here.aliases.toArray()).map(({ name }) => name)).toEqual(['house flour']);
    expect(importMessage(count)).toContain('3 entries');
  });
});
