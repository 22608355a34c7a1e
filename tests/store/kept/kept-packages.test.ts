import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { foodFromLabel } from '../../../engine/foods/label/label.ts';
import type { PackageLabel } from '../../../engine/foods/label/package-label.ts';
import {
  exportBackup,
  importBackup,
  importMessage,
} from '../../../extension/store/backup/transfer.ts';
import { openStore, type Store } from '../../../extension/store/db.ts';
import {
  deleteOwnFood,
  listOwnFoods,
  saveOwnFood,
} from '../../../extension/store/kept/kept-packages.ts';
import { saveRecipe } from '../../../extension/store/kept/saved.ts';
import type { OwnFood } from '../../../extension/store/records.ts';
import { blendEu, blendUs } from '../../foods/label/labels.ts';
import { sampleWork } from '../sample.ts';

function made(label: PackageLabel): OwnFood {
  const result = foodFromLabel(label);
  if (!result.ok) throw new Error(result.why);
  return { ...result.food, label };
}

const blend = made(blendEu());
const other = made(blendUs({ name: 'Another blend', standsInFor: null }));

let here: Store;
let there: Store;
let count = 0;

beforeEach(() => {
  count += 1;
  here = openStore(() => {}, `foods-here-${count}`);
  there = openStore(() => {}, `foods-there-${count}`);
});

afterEach(async () => {
  await here.delete();
  await there.delete();
});

const names = async (store: Store) => (await listOwnFoods(store)).foods.map((food) => food.name);

describe('own foods on disk', () => {
  it('come back as they were, by name', async () => {
    expect(await saveOwnFood(here, blend)).toBeNull();
    await saveOwnFood(here, other);
    here.close();
    const again = openStore(() => {}, here.name);
    expect(await listOwnFoods(again)).toEqual({ foods: [other, blend], damaged: 0 });
    again.close();
  });

  it('are one for each food they stand in for; the one replaced is told', async () => {
    await saveOwnFood(here, blend);
    const newer = made(blendEu({ name: 'Newer blend' }));
    expect(await saveOwnFood(here, newer)).toEqual(blend);
    expect(await names(here)).toEqual(['Newer blend']);
  });

  it('go for good when removed', async () => {
    await saveOwnFood(here, blend);
    await saveOwnFood(here, other);
    await deleteOwnFood(here, blend.id);
    expect(await names(here)).toEqual(['Another blend']);
  });

  it('may have been kept before labels were: such a food has none', async () => {
    const { label: _label, ...older } = blend;
    await here.foods.put(older as OwnFood);
    expect((await listOwnFoods(here)).foods).toEqual([{ ...blend, label: null }]);
  });

  it('leave their old place when a change gives them another', async () => {
    await saveOwnFood(here, other);
    const moved = made(blendEu({ name: other.name }));
    expect(await saveOwnFood(here, moved, other.id)).toBeNull();
    expect((await listOwnFoods(here)).foods).toEqual([moved]);
  });

  it('are counted, not used, when a row is damaged', async () => {
    await saveOwnFood(here, blend);
    await here.foods.put({ ...other, per100g: 'lost' } as unknown as OwnFood);
    expect(await listOwnFoods(here)).toEqual({ foods: [blend], damaged: 1 });
  });
});

describe('own foods in a backup', () => {
  it('go to another browser and are told of', async () => {
    await saveOwnFood(there, blend);
    await saveRecipe(there, sampleWork({}), null, 1000);
    const result = await importBackup(here, await exportBackup(there, 2000));
    if (!result.ok) throw new Error(result.why);
    expect(importMessage(result.count)).toBe('1 recipe added, 1 package added.');
    expect((await listOwnFoods(here)).foods).toEqual([blend]);
  });

  it('leave the packages that are here as they are', async () => {
    await saveOwnFood(here, made(blendEu({ name: 'Mine' })));
    await saveOwnFood(there, blend);
    await importBackup(here, await exportBackup(there, 2000));
    expect(await names(here)).toEqual(['Mine']);
  });

  it('may be missing from an older file', async () => {
    await saveRecipe(there, sampleWork({}), null, 1000);
    const { foods: _none, ...older } = JSON.parse(await exportBackup(there, 2000));
    const result = await importBackup(here, JSON.stringify(older));
    expect(result).toMatchObject({ ok: true, count: { added: 1, foods: 0, damaged: 0 } });
  });
});
