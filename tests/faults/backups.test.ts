/** Files to read in that are damaged, hostile or huge: what was kept stays, and the user is told in words. */
import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { adaptRecipe } from '../../engine/index.ts';
import {
  exportBackup,
  importBackup,
  importMessage,
} from '../../extension/store/backup/transfer.ts';
import { openStore, type Store } from '../../extension/store/db.ts';
import { listRecipes, saveRecipe } from '../../extension/store/kept/saved.ts';
import { BACKUP_VERSION } from '../../extension/store/records.ts';
import { sampleBake, sampleRecipe, sampleWork } from '../store/sample.ts';

const { adaptation: _, ...work } = sampleWork({ recipe: sampleRecipe({ title: 'Theirs' }) });

const row = (changes: object = {}) => ({
  ...work,
  id: 'theirs',
  savedAt: 5,
  updatedAt: 5,
  deletedAt: null,
  url: '',
  adaptation: null,
  ...changes,
});

const file = (changes: object = {}): string =>
  JSON.stringify({
    format: 'crumbshift-backup',
    version: BACKUP_VERSION,
    exportedAt: '',
    recipes: [row()],
    ...changes,
  });

/** Text put into a file as it is, where no object can say it. */
const raw = (old: string, text: string): string => file().replace(old, text);

let store: Store;
let before: string;
let count = 0;

beforeEach(async () => {
  count += 1;
  store = openStore(() => {}, `backup-faults-${count}`);
  const mine = sampleWork({ recipe: sampleRecipe({ title: 'Mine' }) });
  await saveRecipe(store, mine, 'mine', 1);
  before = await exportBackup(store, 0);
});

afterEach(() => store.delete());

const manyLines = (count: number) => ({
  title: null,
  lines: Array.from({ length: count }, () => '5 g flour'),
});

const REFUSED: Record<string, [text: string, words: string]> = {
  empty: ['', 'not complete JSON'],
  'of blanks': [' '.repeat(1000), 'not complete JSON'],
  'cut off': [file().slice(0, 200), 'not complete JSON'],
  'in another form': ['{"recipes":[]}', 'not a file that Crumbshift exported'],
  'a list': ['[]', 'not a file that Crumbshift exported'],
  'the word null': ['null', 'not a file that Crumbshift exported'],
  'from a newer build': [file({ version: 99 }), 'newer Crumbshift'],
  'of version one half': [file({ version: 0.5 }), 'damaged'],
  'without recipes': [file({ recipes: undefined }), 'list of recipes is missing'],
  'with recipes that are no list': [file({ recipes: { a: row() } }), 'list of recipes is missing'],
  'of wrong types throughout': [file({ recipes: [7, null, [], 'a', { id: 3 }] }), 'damaged'],
  'nested 100,000 deep': [`${'['.repeat(100_000)}${']'.repeat(100_000)}`, 'not a file'],
  'with a budget without end': [raw('"budgetG":15', '"budgetG":1e999'), 'damaged'],
  'with a budget below nothing': [raw('"budgetG":15', '"budgetG":-1'), 'damaged'],
  'with a moment no calendar has': [file({ recipes: [row({ savedAt: 9e15 })] }), 'damaged'],
  'with a moment before all': [file({ recipes: [row({ savedAt: -1 })] }), 'damaged'],
  'with a million servings': [
    file({ recipes: [row({ goals: { ...work.goals, servings: 1e6 } })] }),
    'damaged',
  ],
  'with a line of a thousand tons': [
    file({ recipes: [row({ corrections: { '0': { grams: 1e9 } } })] }),
    'damaged',
  ],
  'with a recipe of ten thousand lines': [
    file({ recipes: [row({ recipe: sampleRecipe({ groups: [manyLines(10_000)] }) })] }),
    'damaged',
  ],
  'with a step of two million characters': [
    file({
      recipes: [
        row({ recipe: sampleRecipe({ steps: [{ section: null, text: 'a '.repeat(1e6) }] }) }),
      ],
    }),
    'damaged',
  ],
  'with an endless id': [file({ recipes: [row({ id: 'x'.repeat(1e6) })] }), 'damaged'],
};

describe('a backup is refused that is', () => {
  it.each(Object.entries(REFUSED))('%s', async (_name, [text, words]) => {
    const result = await importBackup(store, text);
    if (result.ok) throw new Error(importMessage(result.count));
    expect(result.why).toContain(words);
    expect(result.why).toContain('Nothing was changed');
    expect(await exportBackup(store, 0)).toBe(before);
  });
});

/** What is wrong in the file, and how many entries of it cannot be read. */
const TAKEN: Record<string, [text: string, damaged: number]> = {
  'prototype keys': [
    raw('"id":"theirs"', '"__proto__":{"id":"x"},"constructor":7,"id":"theirs"'),
    0,
  ],
  'corrections of built-in names': [
    raw('"corrections":{}', '"corrections":{"__proto__":{"grams":5},"constructor":{"grams":5}}'),
    0,
  ],
  'half characters and text from right to left': [
    file({ recipes: [row({ recipe: sampleRecipe({ title: '\ud800\u202eTheirs' }) })] }),
    0,
  ],
  'a thousand damaged entries beside a good one': [
    file({ recipes: [...Array(1000).fill({ id: 7 }), row()] }),
    1000,
  ],
  'the same recipe a hundred times': [file({ recipes: Array(100).fill(row()) }), 0],
  'a bake on a day that is none': [file({ bakes: [sampleBake({ day: '2026-02-31' })] }), 1],
  'a bake of endless weight': [file({ bakes: [sampleBake({ dishGrams: 1e12 })] }), 1],
  'names for a food that is none': [
    file({ aliases: [{ name: 'mix', foodId: 'none', foodName: 'none', addedAt: 1 }] }),
    1,
  ],
  'lists that are no lists': [file({ recipes: [row({ tags: 'no list', note: 7 })] }), 0],
  'a result of another build': [file({ recipes: [row({ adaptation: { plan: 'old' } })] }), 0],
};

describe('a backup is read as far as it goes that holds', () => {
  it.each(Object.entries(TAKEN))('%s', async (_name, [text, damaged]) => {
    const result = await importBackup(store, text);
    if (!result.ok) throw new Error(result.why);
    expect(result.count.damaged).toBe(damaged);
    expect(result.count.added).toBe(1);
    const { recipes, damaged: unread } = await listRecipes(store);
    expect(unread).toBe(0);
    expect(recipes.map(({ id }) => id).sort()).toEqual(['mine', 'theirs']);
    for (const { recipe, goals, corrections } of recipes)
      expect(adaptRecipe(recipe, goals, { corrections }).before.servings).toBeGreaterThan(0);
    expect(Object.prototype).not.toHaveProperty('grams');
  });
});

it('a kept state is the newer one after the clock was moved back', async () => {
  const goals = { ...work.goals, budgetG: 9 };
  await saveRecipe(store, sampleWork({ goals }), 'mine', 0);
  expect((await listRecipes(store)).recipes.map((one) => one.goals.budgetG)).toEqual([9]);
  expect(JSON.parse(await exportBackup(store, 0)).versions).toHaveLength(1);
});
