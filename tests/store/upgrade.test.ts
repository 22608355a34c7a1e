/** What an earlier schema left on the disk must open, whole, in this one. */
import 'fake-indexeddb/auto';
import Dexie from 'dexie';
import { afterEach, describe, expect, it } from 'vitest';
import { exportBackup, importBackup } from '../../extension/store/backup/transfer.ts';
import { openStore, type Store } from '../../extension/store/db.ts';
import {
  getRecipe,
  listRecipes,
  saveRecipe,
  versionsOf,
} from '../../extension/store/kept/saved.ts';
import { sampleWork } from './sample.ts';

const NAME = 'upgrade';
let store: Store | undefined;

afterEach(async () => {
  await store?.delete();
});

/** Rows as the first version wrote them: goals, plan and rows without what came later. */
function firstRow(id: string, budgetG: number, savedAt: number) {
  const { recipe, goals, corrections, adaptation } = sampleWork();
  const { rule, servings, avoid, pinned, excludedSwaps, excludedFoods, sweetness, family } = goals;
  const asked = {
    budgetG,
    servings,
    rule,
    avoid,
    pinned,
    excludedSwaps,
    excludedFoods,
    sweetness,
    family,
  };
  const { parts: _parts, ...plan } = adaptation.plan;
  return {
    recipe,
    goals: asked,
    corrections,
    id,
    savedAt,
    adaptation: { ...adaptation, goals: asked, plan },
  };
}

async function firstDatabase(): Promise<void> {
  const first = new Dexie(NAME);
  first.version(1).stores({ recipes: 'id, updatedAt, url', versions: 'id, recipeId', foods: 'id' });
  const recipe = firstRow('loaf', 12, 1000);
  await first.table('recipes').bulkAdd([
    { ...recipe, updatedAt: 2000, deletedAt: null, url: recipe.recipe.url ?? '' },
    { id: 'broken', updatedAt: 1, url: '', goals: 'damaged' },
  ]);
  await first.table('versions').add({ ...firstRow('loaf.1000', 15, 1000), recipeId: 'loaf' });
  first.close();
}

describe('a database of the first version', () => {
  it('opens with its recipes and versions, unnamed', async () => {
    await firstDatabase();
    store = openStore(() => {}, NAME);
    const { recipes, damaged } = await listRecipes(store);
    expect(recipes).toHaveLength(1);
    expect(damaged).toBe(1);
    expect(recipes[0]).toMatchObject({
      id: 'loaf',
      name: '',
      worked: false,
      goals: { budgetG: 12, cautious: false, adjustments: [] },
      adaptation: { plan: { parts: [] } },
    });
    expect(await versionsOf(store, 'loaf')).toMatchObject([{ name: '', goals: { budgetG: 15 } }]);
  });

  it('keeps a damaged row as it is', async () => {
    await firstDatabase();
    store = openStore(() => {}, NAME);
    expect(await store.table('recipes').get('broken')).toMatchObject({ goals: 'damaged' });
    expect(JSON.parse(await exportBackup(store, 0)).recipes).toHaveLength(2);
  });

  it('does not take new fields of the goals for a change of the recipe', async () => {
    await firstDatabase();
    store = openStore(() => {}, NAME);
    const opened = await getRecipe(store, 'loaf');
    if (!opened?.adaptation) throw new Error('not opened');
    await saveRecipe(store, { ...opened, adaptation: opened.adaptation }, 'loaf', 3000);
    expect(await versionsOf(store, 'loaf')).toHaveLength(1);
  });
});

describe('a backup of the first version', () => {
  it('is read', async () => {
    const recipe = firstRow('loaf', 12, 1000);
    const text = JSON.stringify({
      format: 'crumbshift-backup',
      version: 1,
      exportedAt: '2026-01-01T00:00:00.000Z',
      recipes: [{ ...recipe, updatedAt: 2000, deletedAt: null, url: '' }],
      versions: [{ ...firstRow('loaf.1000', 15, 1000), recipeId: 'loaf' }],
      foods: [],
    });
    store = openStore(() => {}, NAME);
    expect(await importBackup(store, text)).toMatchObject({
      ok: true,
      count: { added: 1, versions: 1, damaged: 0 },
    });
  });
});
