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
  bakesOf,
  deleteBake,
  saveBake,
  weighedDish,
} from '../../../extension/store/kept/kept-bakes.ts';
import {
  BIN_DAYS,
  deleteRecipe,
  emptyOldBin,
  saveRecipe,
} from '../../../extension/store/kept/saved.ts';
import type { Bake } from '../../../extension/store/records.ts';
import { sampleBake, sampleWork } from '../sample.ts';

let here: Store;
let there: Store;
let count = 0;

beforeEach(() => {
  count += 1;
  here = openStore(() => {}, `bakes-here-${count}`);
  there = openStore(() => {}, `bakes-there-${count}`);
});

afterEach(async () => {
  await here.delete();
  await there.delete();
});

describe('the bake log', () => {
  it('holds what was written, latest day first, over a reopened database', async () => {
    const older = sampleBake({ id: 'a', day: '2026-11-20' });
    const newer = sampleBake({ id: 'b', day: '2026-11-24', symptoms: ['gummy'] });
    await saveBake(here, older);
    await saveBake(here, newer);
    here.close();
    here = openStore(() => {}, `bakes-here-${count}`);
    expect(await bakesOf(here, 'loaf')).toEqual({ bakes: [newer, older], damaged: 0 });
    expect((await bakesOf(here, 'another')).bakes).toEqual([]);
  });

  it('counts rows that cannot be read and leaves them on disk', async () => {
    await saveBake(here, sampleBake({ id: 'a' }));
    await here.bakes.put({ ...sampleBake({ id: 'b' }), dishGrams: 'heavy' } as unknown as Bake);
    expect(await bakesOf(here, 'loaf')).toMatchObject({ damaged: 1, bakes: [{ id: 'a' }] });
    expect(await here.bakes.count()).toBe(2);
  });

  it('gives back a removed bake as it was', async () => {
    const bake = sampleBake();
    await saveBake(here, bake);
    await deleteBake(here, bake.id);
    expect((await bakesOf(here, 'loaf')).bakes).toEqual([]);
    await saveBake(here, bake);
    expect((await bakesOf(here, 'loaf')).bakes).toEqual([bake]);
  });

  it('goes with its recipe when that leaves the bin for good', async () => {
    const gone = await saveRecipe(here, sampleWork(), null, 0);
    await saveBake(here, sampleBake({ id: 'gone', recipeId: gone.id }));
    await saveBake(here, sampleBake({ id: 'kept' }));
    await deleteRecipe(here, gone.id, 0);
    await emptyOldBin(here, BIN_DAYS * 86_400_000 + 1);
    expect((await here.bakes.toArray()).map(({ id }) => id)).toEqual(['kept']);
  });
});

describe('the weighed dish', () => {
  const work = sampleWork();
  const other = sampleWork({ goals: { ...DEFAULT_GOALS, budgetG: 10 } });

  it('is that of the last bake of exactly this state', () => {
    const bakes = [
      sampleBake({ day: '2026-11-25', baked: other, dishGrams: 700 }),
      sampleBake({ day: '2026-11-24', dishGrams: null }),
      sampleBake({ day: '2026-11-23', dishGrams: 780 }),
      sampleBake({ day: '2026-11-22', dishGrams: 760 }),
    ];
    expect(weighedDish(bakes, work)).toBe(780);
    expect(weighedDish(bakes, other)).toBe(700);
  });

  it('of a double recipe is half of what stood on the scale', () => {
    expect(weighedDish([sampleBake({ factor: 2, dishGrams: 1560 })], work)).toBe(780);
  });

  it('is not known for a state that was never weighed', () => {
    expect(weighedDish([sampleBake({ dishGrams: 780 })], other)).toBeNull();
  });

  it('does not hang on the order of keys or on goals that an older row lacks', () => {
    const { cautious: _a, pantry: _b, adjustments: _c, ...older } = work.goals;
    const bake = sampleBake({ dishGrams: 780 });
    const baked = { ...bake.baked, goals: older } as Bake['baked'];
    expect(weighedDish([{ ...bake, baked }], work)).toBe(780);
  });
});

describe('bakes in a backup', () => {
  it('go with their recipe, once, and are told of', async () => {
    const { id } = await saveRecipe(there, sampleWork(), null, 1000);
    const bake = sampleBake({ recipeId: id });
    await saveBake(there, bake);
    const text = await exportBackup(there, 2000);
    const first = await importBackup(here, text);
    if (!first.ok) throw new Error(first.why);
    expect(importMessage(first.count)).toBe('1 recipe added, 1 bake added.');
    expect((await bakesOf(here, id)).bakes).toEqual([bake]);
    expect(await importBackup(here, text)).toMatchObject({ ok: true, count: { bakes: 0 } });
    expect(await here.bakes.count()).toBe(1);
  });

  it('stay behind when their recipe is in the bin', async () => {
    const { id } = await saveRecipe(there, sampleWork(), null, 1000);
    await saveBake(there, sampleBake({ recipeId: id }));
    await deleteRecipe(there, id, 2000);
    expect(JSON.parse(await exportBackup(there, 3000)).bakes).toEqual([]);
  });
});
