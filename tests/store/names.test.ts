import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { weighRecipe } from '../../engine/index.ts';
import {
  exportBackup,
  importBackup,
  importMessage,
} from '../../extension/store/backup/transfer.ts';
import { openStore, type Store } from '../../extension/store/db.ts';
import {
  aliasMap,
  deleteAlias,
  listAliases,
  saveAlias,
} from '../../extension/store/kept/aliases.ts';
import { addToPantry, listPantry, takeFromPantry } from '../../extension/store/kept/pantry.ts';
import type { Alias } from '../../extension/store/records.ts';
import { sampleRecipe } from './sample.ts';

const alias = (name: string, foodId: string): Alias => ({
  name,
  foodId,
  foodName: foodId.replaceAll('-', ' '),
  addedAt: 1000,
});

let here: Store;
let there: Store;
let count = 0;

beforeEach(() => {
  count += 1;
  here = openStore(() => {}, `names-here-${count}`);
  there = openStore(() => {}, `names-there-${count}`);
});

afterEach(async () => {
  await here.delete();
  await there.delete();
});

describe('names for foods', () => {
  it('are one for each name, whatever its case and spaces, and can be forgotten', async () => {
    await saveAlias(here, alias('House  Mix ', 'bread-flour'));
    await saveAlias(here, alias('house mix', 'all-purpose-flour'));
    expect(await listAliases(here)).toEqual([alias('house mix', 'all-purpose-flour')]);
    await deleteAlias(here, 'House Mix');
    expect(await listAliases(here)).toEqual([]);
  });

  it('decide what a line is taken for', async () => {
    await saveAlias(here, alias('House mix', 'bread-flour'));
    const recipe = sampleRecipe({ groups: [{ title: null, lines: ['300 g House Mix'] }] });
    const aliases = aliasMap(await listAliases(here));
    const [line] = weighRecipe(recipe, { aliases });
    expect(line?.match).toMatchObject({ foodId: 'bread-flour', confidence: 1 });
    expect(weighRecipe(recipe)[0]?.match?.foodId).not.toBe('bread-flour');
  });
});

describe('the pantry', () => {
  it('holds each food once, by name', async () => {
    await addToPantry(here, { foodId: 'xanthan-gum', foodName: 'xanthan gum' });
    await addToPantry(here, { foodId: 'almond-flour', foodName: 'almond flour' });
    await addToPantry(here, { foodId: 'xanthan-gum', foodName: 'xanthan gum' });
    expect((await listPantry(here)).map(({ foodId }) => foodId)).toEqual([
      'almond-flour',
      'xanthan-gum',
    ]);
    await takeFromPantry(here, 'almond-flour');
    expect(await listPantry(here)).toHaveLength(1);
  });
});

describe('names and pantry in a backup', () => {
  it('are added, and what is here stays as it is', async () => {
    await saveAlias(there, alias('house mix', 'bread-flour'));
    await saveAlias(there, alias('soft mix', 'cake-flour'));
    await addToPantry(there, { foodId: 'xanthan-gum', foodName: 'xanthan gum' });
    await saveAlias(here, alias('house mix', 'all-purpose-flour'));
    const result = await importBackup(here, await exportBackup(there, 2000));
    if (!result.ok) throw new Error(result.why);
    expect(importMessage(result.count)).toBe(
      '0 recipes added, 1 name of a food added, 1 food at home added.',
    );
    expect(aliasMap(await listAliases(here))).toEqual({
      'house mix': 'all-purpose-flour',
      'soft mix': 'cake-flour',
    });
    expect(await listPantry(here)).toHaveLength(1);
  });
});
