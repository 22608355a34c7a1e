import { describe, expect, it } from 'vitest';
import type { Area } from '../../../extension/store/prefs.ts';
import {
  dropTimer,
  FIRST_PAGE,
  loadStove,
  loadTimers,
  storeStove,
  stoveKey,
} from '../../../extension/store/working/stove.ts';

function area(start: Record<string, unknown> = {}): Area {
  const kept: Record<string, unknown> = { ...start };
  return {
    get: async (key) => (key in kept ? { [key]: structuredClone(kept[key]) } : {}),
    set: async (values) => void Object.assign(kept, structuredClone(values)),
  };
}

const timer = { id: 'a', name: 'Rise', seconds: 600, endsAt: 1_000_000 };

describe('the place at the stove', () => {
  it('comes back for each recipe by itself', async () => {
    const disk = area();
    await storeStove(disk, 'rolls', { at: 3, ticked: ['0', '2>gluten'], timers: [timer] });
    await storeStove(disk, 'cake', { at: 1, ticked: [], timers: [] });
    expect(await loadStove(disk, 'rolls')).toEqual({
      at: 3,
      ticked: ['0', '2>gluten'],
      timers: [timer],
    });
    expect((await loadStove(disk, 'cake')).at).toBe(1);
    expect(await loadStove(disk, 'soup')).toEqual(FIRST_PAGE);
  });

  it('tells the timers of every recipe, and takes one away', async () => {
    const disk = area();
    const other = { ...timer, id: 'b', name: 'Boil' };
    await storeStove(disk, 'rolls', { at: 3, ticked: ['0'], timers: [timer] });
    await storeStove(disk, 'soup', { at: 1, ticked: [], timers: [other] });
    const found = await loadTimers(disk);
    expect(found).toEqual([
      { recipe: 'rolls', timer },
      { recipe: 'soup', timer: other },
    ]);
    await dropTimer(disk, { recipe: 'rolls', timer });
    expect(await loadTimers(disk)).toEqual([{ recipe: 'soup', timer: other }]);
    expect(await loadStove(disk, 'rolls')).toEqual({ at: 3, ticked: ['0'], timers: [] });
  });

  it('is the start when what is on disk is damaged', async () => {
    expect(await loadStove(area({ stove: 'broken' }), 'rolls')).toEqual(FIRST_PAGE);
    const half = area({
      stove: [{ recipe: 'rolls', page: { at: -4, ticked: 7, timers: [timer] } }],
    });
    expect(await loadStove(half, 'rolls')).toEqual({ ...FIRST_PAGE, timers: [timer] });
  });

  it('is kept for the last twenty recipes', async () => {
    const disk = area();
    for (let n = 0; n < 25; n++) await storeStove(disk, `${n}`, { at: n, ticked: [], timers: [] });
    expect((await loadStove(disk, '4')).at).toBe(0);
    expect((await loadStove(disk, '5')).at).toBe(5);
  });

  it('tells recipes apart by address and title', () => {
    expect(stoveKey({ url: null, title: 'Rolls' })).not.toBe(
      stoveKey({ url: 'https://a.example/', title: 'Rolls' }),
    );
  });
});
