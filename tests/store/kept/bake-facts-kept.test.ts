import 'fake-indexeddb/auto';
import Dexie from 'dexie';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openStore, type Store } from '../../../extension/store/db.ts';
import { factsOf, listFacts } from '../../../extension/store/kept/bake-facts-kept.ts';
import { deleteBake, saveBake } from '../../../extension/store/kept/kept-bakes.ts';
import { changeSwitch, lessonsOf, taughtOf } from '../../../extension/store/kept/taught-kept.ts';
import { sampleBake } from '../sample.ts';

let store: Store;
let count = 0;

beforeEach(() => {
  count += 1;
  store = openStore(() => {}, `facts-${count}`);
});

afterEach(() => store.delete());

describe('what the bakes measured', () => {
  it('is told for the recipe made once', () => {
    const bake = sampleBake({ factor: 2, dishGrams: 1500, extraWaterG: -30, ovenSetC: 220 });
    expect(factsOf(bake)).toMatchObject({ dishGrams: 750, extraWaterG: -15, ovenSetC: 220 });
  });

  it('is kept with each bake and goes with it', async () => {
    await saveBake(store, sampleBake({ id: 'a' }));
    await saveBake(store, sampleBake({ id: 'b' }));
    expect((await listFacts(store)).map(({ id }) => id).sort()).toEqual(['a', 'b']);
    await saveBake(store, sampleBake({ id: 'b', dishGrams: 700 }));
    await deleteBake(store, 'a');
    expect(await listFacts(store)).toMatchObject([{ id: 'b', dishGrams: 700 }]);
    expect(await store.taught.count()).toBe(1);
  });

  it('is made anew where a row is missing or damaged, and left out where its bake is', async () => {
    await saveBake(store, sampleBake({ id: 'a' }));
    await saveBake(store, sampleBake({ id: 'b' }));
    await store.table('taught').put({ id: 'a', dishGrams: 'much' });
    await store.bakes.delete('b');
    await store.table('bakes').put({ id: 'broken', recipeId: 'loaf' });
    expect(await listFacts(store)).toEqual([factsOf(sampleBake({ id: 'a' }))]);
    expect((await store.taught.toCollection().primaryKeys()).sort()).toEqual(['a']);
  });

  it('is there for bakes of the version before', async () => {
    const name = `facts-old-${count}`;
    const old = new Dexie(name);
    old.version(2).stores({
      recipes: 'id, updatedAt, url',
      versions: 'id, recipeId',
      foods: 'id',
      bakes: 'id, recipeId',
      aliases: 'name',
      pantry: 'foodId',
    });
    old.version(3).stores({ shelf: 'id' });
    const { extraWaterG, ovenSetC, ovenReadC, minutes, plan, ...bake } = sampleBake();
    expect([extraWaterG, ovenSetC, ovenReadC, minutes, plan]).toEqual([
      null,
      null,
      null,
      null,
      null,
    ]);
    await old.table('bakes').add(bake);
    old.close();
    const opened = openStore(() => {}, name);
    expect(await listFacts(opened)).toEqual([factsOf(sampleBake())]);
    await opened.delete();
  });
});

describe('lessons for a recipe', () => {
  const facts = ['2026-11-01', '2026-11-02'].map((day, at) =>
    factsOf(sampleBake({ id: `b${at}`, day, ovenSetC: 200, ovenReadC: 215 })),
  );

  it('leave out what is switched off', () => {
    const lessons = lessonsOf(facts, []);
    expect(lessons.map(({ id }) => id).sort()).toEqual(['dish-weight:loaf', 'oven']);
    const taught = taughtOf(lessons, [], ['oven', changeSwitch('loaf', 'gummy.1')], 'loaf');
    expect(taught.lessons.map(({ id }) => id)).toEqual(['dish-weight:loaf']);
    expect(taught.changesOff).toEqual(['gummy.1']);
    expect(taughtOf(lessons, [], [changeSwitch('other', 'gummy.1')], 'loaf').changesOff).toEqual(
      [],
    );
  });
});
