/** Amounts of the reworked recipe that the user sets: taken exactly, or missed with a word about it. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan, SetAmount } from '../../engine/model.ts';
import { plan } from './build.ts';
import { HEARTH_LOAF } from './samples.ts';
import { randomSample } from './solver/random-programme.ts';

const gramsOf = (result: Plan, { key, foodId }: Pick<SetAmount, 'key' | 'foodId'>): number =>
  result.items.find((item) => item.key === key && item.foodId === foodId)?.grams ?? 0;

const said = (result: Plan, code: string): string[] =>
  result.limits.filter((limit) => limit.code === code).map(({ text }) => text);

const FLOUR = { key: '0', foodId: 'bread-flour' };

describe('an amount that the user sets', () => {
  it('holds for the flour that stays, to the gram, and its stand-ins make room', () => {
    const free = plan(HEARTH_LOAF, { budgetG: 15 });
    const grams = gramsOf(free, FLOUR) - 37;
    const set = plan(HEARTH_LOAF, { budgetG: 15, setAmounts: [{ ...FLOUR, grams }] });
    expect(gramsOf(set, FLOUR)).toBe(grams);
    expect(said(set, 'SET_AMOUNT')).toEqual([]);
    const lineOf = (result: Plan) =>
      result.items.reduce((sum, item) => sum + (item.key === '0' ? item.grams : 0), 0);
    expect(Math.abs(lineOf(set) - lineOf(free))).toBeLessThan(0.1 * lineOf(free));
  });

  it('goes before the budget, and what giving it up would bring is told', () => {
    const set = plan(HEARTH_LOAF, { budgetG: 15, setAmounts: [{ ...FLOUR, grams: 402 }] });
    expect(gramsOf(set, FLOUR)).toBe(402);
    expect(set.met).toBe(false);
    expect(said(set, 'SET_AMOUNTS').join()).toMatch(/amounts you set free to change/);
    expect(set.swaps.find(({ key }) => key === '0')?.why).toContain('as you set it');
  });

  it('is left where the dish does not allow it, and that is said', () => {
    const free = plan(HEARTH_LOAF, { budgetG: 15 });
    const came = free.items.find(({ key, foodId }) => key === '0' && foodId !== FLOUR.foodId);
    if (!came) throw new Error('nothing stands in for the flour');
    const wish = { key: '0', foodId: came.foodId, grams: 5000 };
    const set = plan(HEARTH_LOAF, { budgetG: 15, setAmounts: [wish] });
    expect(set.items).toEqual(free.items);
    expect(said(set, 'SET_AMOUNT').join()).toContain('5000 g');
  });

  it.each([0.5, 1.5])(
    'holds for what was added, %s times as much, or is missed with a word',
    (times) => {
      const free = plan(HEARTH_LOAF, { budgetG: 15 });
      const added = free.items.filter(({ key }) => key.startsWith('new.'));
      expect(added.length).toBeGreaterThan(0);
      let taken = 0;
      for (const { key, foodId, grams: was } of added) {
        const wish = { key, foodId, grams: Math.round(10 * times * was) / 10 };
        const set = plan(HEARTH_LOAF, { budgetG: 15, setAmounts: [wish] });
        const holds = Math.abs(gramsOf(set, wish) - wish.grams) < 0.05;
        expect(said(set, 'SET_AMOUNT').length > 0).toBe(!holds);
        if (holds) taken += 1;
      }
      expect(taken).toBeGreaterThan(0);
    },
  );

  it('of an addition far beyond the dish is left, and that is said', () => {
    const free = plan(HEARTH_LOAF, { budgetG: 15 });
    const added = free.items.find(({ key }) => key.startsWith('new.'));
    if (!added) throw new Error('nothing is added');
    const wish = { key: added.key, foodId: added.foodId, grams: 4000 };
    const set = plan(HEARTH_LOAF, { budgetG: 15, setAmounts: [wish] });
    expect(set.items).toEqual(free.items);
    expect(said(set, 'SET_AMOUNT').join()).toContain('4000 g');
  });

  it('of a random recipe is taken exactly, or missed with a word', () => {
    let taken = 0;
    fc.assert(
      fc.property(
        randomSample,
        fc.nat(),
        fc.double({ min: 0.6, max: 1.4, noNaN: true }),
        (sample, pick, share) => {
          const free = plan(sample, { budgetG: 8 });
          const lines = free.items.filter((item) =>
            free.swaps.some(({ key, to }) => key === item.key && to.length > 0),
          );
          const item = lines[pick % Math.max(lines.length, 1)];
          if (!item) return;
          const grams = Math.round(item.grams * share);
          const wish = { key: item.key, foodId: item.foodId, grams };
          const set = plan(sample, { budgetG: 8, setAmounts: [wish] });
          const told = said(set, 'SET_AMOUNT').length > 0;
          expect(told).toBe(Math.abs(gramsOf(set, wish) - grams) >= 0.05);
          if (!told) taken += 1;
        },
      ),
      { numRuns: 60, seed: 41 },
    );
    expect(taken).toBeGreaterThan(20);
  });
});
