/** What is being worked on is never lost to another recipe, another tab or another page of the extension. */
import { describe, expect, it } from 'vitest';
import { DEFAULT_GOALS } from '../../../engine/model.ts';
import type { Current } from '../../../extension/store/working/current.ts';
import {
  findWork,
  forgetLookedAt,
  forgetWork,
  listWork,
  loadWork,
  MOST_HELD,
  storeWork,
  type WorkArea,
  workHolder,
  workId,
} from '../../../extension/store/working/unsaved.ts';
import { sampleRecipe } from '../sample.ts';

/** Like the browser's storage: values pass through JSON, and there is only so much room. */
function session(room = Number.POSITIVE_INFINITY): WorkArea & { values: Map<string, string> } {
  const values = new Map<string, string>();
  const shown = (keys: Iterable<string>) =>
    Object.fromEntries([...keys].map((key) => [key, JSON.parse(values.get(key) ?? 'null')]));
  return {
    values,
    get: async (key) => shown(key === null ? values.keys() : values.has(key) ? [key] : []),
    set: async (entries) => {
      const texts = Object.entries(entries).map(([key, value]) => [key, JSON.stringify(value)]);
      const after = new Map([...values, ...(texts as [string, string][])]);
      if ([...after.values()].join('').length > room) throw new Error('QUOTA_BYTES quota exceeded');
      for (const [key, text] of after) values.set(key, text);
    },
    remove: async (keys) => {
      for (const key of keys) values.delete(key);
    },
  };
}

const work = (title: string, changes: Partial<Current> = {}): Current => ({
  recipe: sampleRecipe({ title }),
  goals: DEFAULT_GOALS,
  corrections: {},
  savedId: null,
  ...changes,
});

const edited = (title: string, budgetG: number): Current =>
  work(title, { goals: { ...DEFAULT_GOALS, budgetG } });

describe('work that was not kept', () => {
  it('is there again after another recipe was opened', async () => {
    const area = session();
    const buns = await storeWork(area, work('Buns'), null);
    const changed = await storeWork(area, edited('Buns', 9), buns);
    const loaf = await storeWork(area, work('Loaf'), null);
    expect(changed.id).toBe(buns.id);
    expect(loaf.id).not.toBe(buns.id);
    expect((await findWork(area, sampleRecipe({ title: 'Buns' })))?.current.goals.budgetG).toBe(9);
    expect((await loadWork(area, loaf.id))?.current.recipe.title).toBe('Loaf');
  });

  it('is found by the recipe as it was read, newest first', async () => {
    const area = session();
    await storeWork(area, work('Buns'), null);
    await storeWork(area, work('Loaf'), null);
    expect((await listWork(area)).map(({ current }) => current.recipe.title)).toEqual([
      'Loaf',
      'Buns',
    ]);
    expect(await findWork(area, sampleRecipe({ title: 'Cake' }))).toBeNull();
    expect(await loadWork(area, 'nothing')).toBeNull();
  });

  it('of two tabs on one recipe stays with both', async () => {
    const area = session();
    const start = await storeWork(area, work('Buns'), null);
    const left = await storeWork(area, edited('Buns', 9), start);
    const right = await storeWork(area, edited('Buns', 12), start);
    expect(right.id).not.toBe(left.id);
    const again = await storeWork(area, edited('Buns', 8), left);
    expect(again.id).toBe(left.id);
    expect((await loadWork(area, left.id))?.current.goals.budgetG).toBe(8);
    expect((await loadWork(area, right.id))?.current.goals.budgetG).toBe(12);
  });

  it('keeps its id when it becomes a kept recipe', async () => {
    const area = session();
    const start = await storeWork(area, work('Buns'), null);
    const kept = await storeWork(area, work('Buns', { savedId: 'a' }), start);
    expect(kept.id).toBe(start.id);
    expect(await listWork(area)).toHaveLength(1);
  });

  it(`is held for the last ${MOST_HELD} recipes`, async () => {
    const area = session();
    const first = await storeWork(area, work('Dish 0'), null);
    for (let n = 1; n <= MOST_HELD; n += 1) {
      if (n === MOST_HELD) await storeWork(area, edited('Dish 0', 9), first);
      await storeWork(area, work(`Dish ${n}`), null);
    }
    const titles = (await listWork(area)).map(({ current }) => current.recipe.title);
    expect(titles).toHaveLength(MOST_HELD);
    expect(titles).toContain('Dish 0');
    expect(titles).not.toContain('Dish 1');
  });

  it('that was changed stays however many pages are looked at after it', async () => {
    const area = session();
    const seen = (n: number) => {
      const url = `https://demo.invalid/${n}`;
      return { ...work(`Seen ${n}`), recipe: sampleRecipe({ title: `Seen ${n}`, url }) };
    };
    const first = await storeWork(area, work('Mine'), null);
    await storeWork(area, edited('Mine', 9), first);
    await storeWork(area, work('Kept', { savedId: 'a' }), null);
    for (let n = 0; n < 2 * MOST_HELD; n += 1) await storeWork(area, seen(n), null);
    const titles = (await listWork(area)).map(({ current }) => current.recipe.title);
    expect(titles).toHaveLength(MOST_HELD);
    expect(titles).toEqual(expect.arrayContaining(['Mine', 'Kept']));
    expect(titles[0]).toBe(`Seen ${2 * MOST_HELD - 1}`);
    expect(titles).not.toContain('Seen 0');
  });

  it('is not touched when there is no room for more', async () => {
    const start = work('Buns');
    const area = session(JSON.stringify(start).length * 2);
    await storeWork(area, start, null);
    const before = new Map(area.values);
    await expect(storeWork(area, work('Loaf'), null)).rejects.toThrow('quota');
    expect(area.values).toEqual(before);
  });

  it('that was damaged hides nothing else', async () => {
    const area = session();
    const buns = await storeWork(area, work('Buns'), null);
    await area.set({ 'work:x': { turn: 'late' }, 'work:y': 7, other: { turn: 99 } });
    expect((await listWork(area)).map(({ id }) => id)).toEqual([buns.id]);
    expect(await loadWork(area, 'x')).toBeNull();
  });
});

describe('at the next start of the browser', () => {
  const read = (title: string, changes: Partial<Current> = {}): Current => ({
    ...work(title, changes),
    recipe: sampleRecipe({ title, url: `https://demo.invalid/${title}` }),
  });
  const titles = async (area: WorkArea) =>
    (await listWork(area)).map(({ current }) => current.recipe.title).sort();

  it('what was changed, pasted or kept is there, and what was only looked at is not', async () => {
    const area = session();
    await storeWork(area, read('Looked'), null);
    const changed = await storeWork(area, read('Changed'), null);
    const other = { ...read('Changed'), goals: { ...DEFAULT_GOALS, budgetG: 9 } };
    await storeWork(area, other, changed);
    await storeWork(area, read('Kept', { savedId: 'a' }), null);
    await storeWork(area, { ...read('Pasted'), recipe: sampleRecipe({ url: null }) }, null);
    await forgetLookedAt(area, []);
    expect(await titles(area)).toEqual(['Changed', 'Kept', 'Sample loaf']);
  });

  it('a change that was taken back is still a change of mind worth holding', async () => {
    const area = session();
    const start = await storeWork(area, read('Buns'), null);
    const changed = { ...read('Buns'), goals: { ...DEFAULT_GOALS, budgetG: 9 } };
    await storeWork(area, read('Buns'), await storeWork(area, changed, start));
    await forgetLookedAt(area, []);
    expect(await titles(area)).toEqual(['Buns']);
  });

  it('what a tab shows stays', async () => {
    const area = session();
    const { id } = await storeWork(area, read('Shown'), null);
    await storeWork(area, read('Looked'), null);
    await forgetLookedAt(area, [`moz-extension://x/bench.html?work=${id}#recipe`]);
    expect(await titles(area)).toEqual(['Shown']);
  });

  it('what an earlier build held without saying so is taken for changed', async () => {
    const area = session();
    await area.set({ 'work:old': { turn: 1, current: read('Old') } });
    await forgetLookedAt(area, []);
    expect(await titles(area)).toEqual(['Old']);
  });
});

describe('work that is given up', () => {
  it('leaves nothing behind and takes nothing else with it', async () => {
    const area = session();
    const buns = await storeWork(area, work('Buns'), null);
    const loaf = await storeWork(area, work('Loaf'), null);
    await forgetWork(area, [buns.id]);
    expect([...area.values.keys()]).toEqual([`work:${loaf.id}`]);
  });
});

describe('a page that works on recipes', () => {
  it('holds its states in order, however fast they come', async () => {
    const area = session();
    const holder = workHolder(area, null);
    const budgets = [9, 8, 7, 6];
    const held = await Promise.all(budgets.map((grams) => holder.hold(edited('Buns', grams))));
    expect(new Set(held.map(({ id }) => id)).size).toBe(1);
    expect((await listWork(area)).map(({ current }) => current.goals.budgetG)).toEqual([6]);
  });

  it('goes on with what it started with', async () => {
    const area = session();
    const start = await storeWork(area, work('Buns'), null);
    const { id } = await workHolder(area, start).hold(edited('Buns', 9));
    expect(id).toBe(start.id);
  });

  it('begins anew with another recipe and leaves the first as it was', async () => {
    const area = session();
    const holder = workHolder(area, null);
    const buns = await holder.hold(edited('Buns', 9));
    const loaf = await holder.hold(work('Loaf'));
    expect(loaf.id).not.toBe(buns.id);
    expect((await loadWork(area, buns.id))?.current.goals.budgetG).toBe(9);
  });

  it('holds one recipe once, however often it is opened', async () => {
    const area = session();
    const ids = new Set<string>();
    for (let n = 0; n < 5; n += 1) ids.add((await workHolder(area, null).hold(work('Buns'))).id);
    expect(ids.size).toBe(1);
  });

  it('goes on after there was no room', async () => {
    const area = session(JSON.stringify(work('Buns')).length * 2);
    const holder = workHolder(area, null);
    const long = work('Buns', { corrections: { '0': { foodId: 'x'.repeat(9_000) } } });
    await expect(holder.hold(long)).rejects.toThrow('quota');
    expect((await holder.hold(work('Buns'))).current.recipe.title).toBe('Buns');
  });
});

describe('the id of a recipe', () => {
  it('is the same for the same recipe and goes into an address as it is', () => {
    const id = workId(sampleRecipe());
    expect(workId(sampleRecipe())).toBe(id);
    expect(encodeURIComponent(id)).toBe(id);
    const ids = Array.from({ length: 2000 }, (_, n) =>
      workId(sampleRecipe({ title: `Dish ${n}` })),
    );
    expect(new Set(ids).size).toBe(2000);
  });
});
