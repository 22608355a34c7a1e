import { describe, expect, it } from 'vitest';
import { DEFAULT_GOALS } from '../../engine/model.ts';
import {
  type Area,
  DEFAULT_PREFERENCES,
  goalsFrom,
  loadPreferences,
  storePreferences,
} from '../../extension/store/prefs.ts';
import { sameRecipe } from '../../extension/store/working/current.ts';
import { sampleRecipe } from './sample.ts';

/** Like the browser's storage areas: values pass through JSON. */
function memory(start: Record<string, unknown> = {}): Area {
  const values = new Map(Object.entries(start));
  return {
    get: async (key) => (values.has(key) ? { [key]: values.get(key) } : {}),
    set: async (entries) => {
      for (const [key, value] of Object.entries(entries)) {
        values.set(key, JSON.parse(JSON.stringify(value)));
      }
    },
  };
}

describe('preferences', () => {
  it('start with the engine’s own goals', async () => {
    const preferences = await loadPreferences(memory());
    expect(preferences).toEqual(DEFAULT_PREFERENCES);
    expect(goalsFrom(preferences)).toEqual(DEFAULT_GOALS);
  });

  it('are kept', async () => {
    const area = memory();
    const mine = { ...DEFAULT_PREFERENCES, budgetG: 12.5, avoid: ['egg' as const] };
    await storePreferences(area, mine);
    expect(await loadPreferences(area)).toEqual(mine);
    expect(goalsFrom(mine)).toMatchObject({ budgetG: 12.5, avoid: ['egg'] });
  });

  it('of two windows are both kept', async () => {
    const area = memory();
    await storePreferences(area, { budgetG: 12.5 });
    await storePreferences(area, { lessonsOff: ['oven'] });
    const both = { ...DEFAULT_PREFERENCES, budgetG: 12.5, lessonsOff: ['oven'] };
    expect(await loadPreferences(area)).toEqual(both);
  });

  it('that change again before the change before is on disk are both kept', async () => {
    const area = memory();
    await Promise.all([
      storePreferences(area, { budgetG: 12.5 }),
      storePreferences(area, { lessonsOff: ['oven'] }),
    ]);
    const both = { ...DEFAULT_PREFERENCES, budgetG: 12.5, lessonsOff: ['oven'] };
    expect(await loadPreferences(area)).toEqual(both);
  });

  it('are kept after one change that the storage refused', async () => {
    const area = memory();
    let full = true;
    const refuse = () => Promise.reject(new Error('full'));
    const filling: Area = { ...area, set: (values) => (full ? refuse() : area.set(values)) };
    await expect(storePreferences(filling, { budgetG: 9 })).rejects.toThrow('full');
    full = false;
    await storePreferences(filling, { lessonsOff: ['oven'] });
    expect(await loadPreferences(filling)).toEqual({
      ...DEFAULT_PREFERENCES,
      lessonsOff: ['oven'],
    });
  });

  it('lose only the damaged part', async () => {
    const area = memory({ preferences: { budgetG: -3, energy: 'kJ', avoid: ['bread'] } });
    expect(await loadPreferences(area)).toEqual({ ...DEFAULT_PREFERENCES, energy: 'kJ' });
  });
});

describe('the recipe being worked on', () => {
  it('is the same recipe only when every line is', () => {
    const other = sampleRecipe({ groups: [{ title: null, lines: ['400 g bread flour'] }] });
    expect(sameRecipe(sampleRecipe(), sampleRecipe())).toBe(true);
    expect(sameRecipe(sampleRecipe(), other)).toBe(false);
  });
});
