/** Changes accepted after a bake: the plan after differs in that lever as asked, and says so when it cannot. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Adjustment, Lever, Plan } from '../../../engine/model.ts';
import { foods, plan, type Sample } from '../build.ts';
import { HEARTH_LOAF, SAMPLES } from '../samples.ts';
import { randomSample } from '../solver/random-programme.ts';

const change = (
  lever: Lever,
  by: { factor?: number; shiftPct?: number },
  text = `Change ${lever}.`,
): Adjustment => ({
  id: `test.${lever}`,
  symptom: 'test',
  lever,
  factor: by.factor ?? null,
  shiftPct: by.shiftPct ?? null,
  text,
  why: 'test',
  source: 'own choice',
});

const named = (title: string): Sample => {
  const sample = SAMPLES.find((s) => s.title === title);
  if (!sample) throw new Error(title);
  return sample;
};

const sum = (result: Plan, of: (item: Plan['items'][number]) => number): number =>
  result.items.reduce((total, item) => total + of(item), 0);

const water = (result: Plan): number =>
  sum(result, (i) =>
    i.role === 'liquid' || i.role === 'egg'
      ? (i.grams * (foods.byId(i.foodId)?.per100g.waterG ?? 0)) / 100
      : 0,
  );
const ofRole =
  (...roles: string[]) =>
  (result: Plan): number =>
    sum(result, (i) => (roles.includes(i.role) ? i.grams : 0));
const ofFood =
  (pattern: RegExp) =>
  (result: Plan): number =>
    sum(result, (i) => (pattern.test(i.foodId) ? i.grams : 0));

/** Thickening in grams of starch: 1 g of gum or glucomannan does the work of about 8 g (common practice, no source). */
const thickening = (result: Plan): number =>
  sum(result, (i) => {
    if (/gum$|glucomannan/.test(i.foodId)) return 10 * i.grams;
    return i.role === 'thickener' ? i.grams : 0;
  });

/** Levers on kitchen amounts: a dish that has them, how to measure them, and the kitchen's grain in g. */
const KITCHEN: readonly [Lever, string, (result: Plan) => number, number][] = [
  ['water', 'Hearth loaf', water, 2.5],
  ['water', 'Sandwich bread', water, 2.5],
  ['binder', 'Hearth loaf', ofRole('binder'), 0.4],
  ['egg', 'Yellow layer cake', ofRole('egg'), 2.5],
  ['fat', 'Sandwich bread', ofRole('fat'), 2.5],
  ['salt', 'Hearth loaf', ofRole('salt'), 0.25],
  ['yeast', 'Sandwich bread', ofRole('yeast'), 0.25],
  ['leavening', 'Yellow layer cake', ofRole('leavening'), 0.5],
  ['sugar', 'Yellow layer cake', ofRole('sweetness'), 6],
];

describe('changes of kitchen amounts', () => {
  it.each(KITCHEN)('%s of %s follows a factor', (lever, title, measure, grain) => {
    const sample = named(title);
    const before = measure(plan(sample));
    expect(before).toBeGreaterThan(0);
    for (const factor of [0.6, 0.8, 0.95, 1.05, 1.5]) {
      const result = plan(sample, { adjustments: [change(lever, { factor })] });
      // More of a sweetener stays within what a serving may have of it.
      if (lever === 'sugar' && factor > 1) continue;
      expect(Math.abs(measure(result) - factor * before), `x ${factor}`).toBeLessThanOrEqual(
        grain + 1e-6,
      );
    }
  });

  it('water 5 % of the flour less is 5 % of the flour less', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -10, max: 10 }),
        fc.integer({ min: 12, max: 25 }),
        (shiftPct, budgetG) => {
          const before = water(plan(HEARTH_LOAF, { budgetG }));
          const after = water(
            plan(HEARTH_LOAF, { budgetG, adjustments: [change('water', { shiftPct })] }),
          );
          expect(Math.abs(after - before - (shiftPct / 100) * 500)).toBeLessThanOrEqual(5);
        },
      ),
      { numRuns: 25, seed: 41 },
    );
  });

  it('adds what the plan has none of, when it is raised', () => {
    const vinegar = plan(HEARTH_LOAF, {
      adjustments: [change('acid', { shiftPct: 1 }, 'A little vinegar.')],
    });
    expect(ofRole('acid')(vinegar)).toBeCloseTo(5, 6);
    expect(vinegar.swaps.find((s) => s.id === 'add-vinegar')?.why).toContain('A little vinegar.');
    const white = plan(HEARTH_LOAF, { adjustments: [change('egg-white', { shiftPct: 10 })] });
    expect(ofFood(/^egg-white$/)(white)).toBe(50);
    const fed = plan(HEARTH_LOAF, { adjustments: [change('yeast-food', { shiftPct: 2.5 })] });
    expect(Math.abs(ofRole('yeast-food')(fed) - 12.5)).toBeLessThanOrEqual(0.5);
    expect(fed.met).toBe(true);
  });

  it('more thickener is thicker, though grams fall when gum takes over from starch', () => {
    const gravy = named('Pan gravy');
    const before = thickening(plan(gravy));
    for (const factor of [0.8, 1.3, 1.6]) {
      const after = thickening(plan(gravy, { adjustments: [change('thickener', { factor })] }));
      // A quarter teaspoon of gum thickens like 7 g of starch, a sixth of what this gravy has; starch is weighed to 5 g.
      expect(Math.abs(after / before - factor), `x ${factor}`).toBeLessThan(0.16 + 0.06);
    }
  });

  it('says so when a kitchen could not weigh the change', () => {
    const loaf = HEARTH_LOAF;
    const before = ofRole('binder')(plan(loaf));
    expect(before).toBeGreaterThan(0);
    const after = plan(loaf, { adjustments: [change('thickener', { factor: 1.05 })] });
    expect(ofRole('binder')(after)).toBe(before);
    expect(after.limits.map(({ code }) => code)).toContain('CHANGE_IN_PART');
  });

  it('several changes of one lever follow one another', () => {
    const before = ofRole('salt')(plan(HEARTH_LOAF));
    const twice = plan(HEARTH_LOAF, {
      adjustments: [
        change('salt', { factor: 0.8 }, 'Once.'),
        change('salt', { factor: 0.9 }, 'Twice.'),
      ],
    });
    expect(Math.abs(ofRole('salt')(twice) - 0.72 * before)).toBeLessThanOrEqual(0.25);
  });

  it('says when there is nothing to act on', () => {
    const result = plan(HEARTH_LOAF, {
      adjustments: [change('leavening', { factor: 0.8 }, 'Less powder.')],
    });
    const said = result.limits.find(({ code }) => code === 'CHANGE_IN_PART');
    expect(said?.text).toContain('Less powder.');
  });

  it('words change nothing in the plan', () => {
    const result = plan(HEARTH_LOAF, { adjustments: [change('method', {}, 'Bake longer.')] });
    expect(result).toEqual(plan(HEARTH_LOAF));
  });

  it('stay within the budget on random recipes', () => {
    const lever = fc.constantFrom<Lever>(
      'water',
      'binder',
      'egg',
      'fat',
      'salt',
      'yeast-food',
      'sugar',
      'acid',
      'thickener',
      'gluten',
      'allulose',
      'erythritol-share',
    );
    fc.assert(
      fc.property(
        randomSample,
        lever,
        fc.double({ min: 0.5, max: 1.6, noNaN: true }),
        fc.integer({ min: 8, max: 20 }),
        (sample, which, factor, budgetG) => {
          const result = plan(sample, { budgetG, adjustments: [change(which, { factor })] });
          for (const item of result.items) expect(item.grams).toBeGreaterThan(0);
          if (!result.met)
            expect(result.limits.map(({ code }) => code)).toContain('BUDGET_NOT_MET');
        },
      ),
      { numRuns: 40, seed: 42 },
    );
  });
});

describe('changes of what flours and sweeteners are', () => {
  const share = (result: Plan, part: RegExp): number => {
    const sweet = result.items.filter((i) => i.role === 'sweetness');
    const bulk = (list: typeof sweet): number =>
      list.reduce((t, i) => t + i.grams * (foods.byId(i.foodId)?.function?.bulk ?? 0), 0);
    return bulk(sweet.filter((i) => part.test(i.foodId))) / bulk(sweet);
  };

  it('more gluten is more gluten', () => {
    const before = ofFood(/vital-wheat-gluten/)(plan(HEARTH_LOAF));
    const after = plan(HEARTH_LOAF, { adjustments: [change('gluten', { shiftPct: 5 })] });
    expect(after.met).toBe(true);
    expect(ofFood(/vital-wheat-gluten/)(after) - before).toBeGreaterThanOrEqual(25 - 2.5);
  });

  it('resistant starch in place of a tenth of the flour', () => {
    const before = ofFood(/resistant-wheat-starch|high-amylose/)(plan(HEARTH_LOAF));
    const after = plan(HEARTH_LOAF, {
      adjustments: [change('resistant-starch', { shiftPct: 10 })],
    });
    expect(
      Math.abs(ofFood(/resistant-wheat-starch|high-amylose/)(after) - before - 50),
    ).toBeLessThanOrEqual(5);
  });

  it('less erythritol among the sweeteners, allulose for it', () => {
    const cookies = named('Chocolate chip cookies');
    const excludedFoods = ['sweetener-blend-allulose', 'sweetener-blend-allulose-brown'];
    const goals = { budgetG: 8, excludedFoods };
    const before = share(plan(cookies, goals), /erythritol/);
    expect(before).toBeGreaterThan(0.1);
    const after = plan(cookies, {
      ...goals,
      adjustments: [change('erythritol-share', { factor: 0.6 })],
    });
    const text = after.limits.map(({ code }) => code);
    if (!text.includes('CHANGE_IN_PART'))
      expect(share(after, /erythritol/)).toBeLessThanOrEqual(0.6 * before + 0.03);
    expect(share(after, /erythritol/)).toBeLessThan(before);
  });

  it('half the insoluble fibre, or a word that it cannot be', () => {
    const fibre = (result: Plan): number =>
      sum(result, (i) =>
        i.role === 'structure'
          ? i.grams * (foods.byId(i.foodId)?.function?.insolubleFibre ?? 0)
          : 0,
      );
    for (const title of ['Hearth loaf', 'Country bread']) {
      const sample = named(title);
      const before = fibre(plan(sample, { budgetG: 12 }));
      const after = plan(sample, {
        budgetG: 12,
        adjustments: [change('insoluble-fibre', { factor: 0.5 })],
      });
      if (!after.limits.some(({ code }) => code === 'CHANGE_IN_PART'))
        expect(fibre(after), title).toBeLessThanOrEqual(0.5 * before + 2);
    }
  });

  it('a change that the dish forbids is followed in part, with a word', () => {
    const after = plan(HEARTH_LOAF, {
      adjustments: [change('gluten', { shiftPct: 60 }, 'Much more gluten.')],
    });
    expect(after.limits.find(({ code }) => code === 'CHANGE_IN_PART')?.text).toContain(
      'Much more gluten.',
    );
  });
});
