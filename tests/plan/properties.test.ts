import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_GOALS, FAMILIES, Plan } from '../../engine/model.ts';
import { planRecipe } from '../../engine/plan/index.ts';
import { evaluate } from '../../engine/plan/model/expressions.ts';
import { withBudget } from '../../engine/plan/model/plan-model.ts';
import { solveProgram } from '../../engine/plan/solver/branch-and-bound.ts';
import {
  foods,
  ingredient,
  ingredientsOf,
  plan,
  type Sample,
  tallyAfter,
  tallyOf,
} from './build.ts';
import { faultsOf } from './checker.ts';
import { modelOf, randomSample } from './solver/random-programme.ts';

const share = fc.double({ min: 0.2, max: 1.1, noNaN: true });

describe('plans', () => {
  it('keep their limits on random recipes and budgets', () => {
    fc.assert(
      fc.property(randomSample, fc.integer({ min: 4, max: 30 }), (sample, budgetG) => {
        expect(faultsOf(sample, plan(sample, { budgetG }), budgetG)).toEqual([]);
      }),
      { numRuns: 80, seed: 21 },
    );
  });

  it('never gain net carbs or closeness from a tighter budget', () => {
    fc.assert(
      fc.property(
        randomSample,
        share,
        fc.double({ min: 0.6, max: 0.999, noNaN: true }),
        (sample, at, tighter) => {
          const model = modelOf(sample);
          const loose = solveProgram(withBudget(model, model.net.constant * at));
          const tight = solveProgram(withBudget(model, model.net.constant * at * tighter));
          if (tight.status !== 'optimal') return;
          expect(loose.status).toBe('optimal');
          expect(tight.objective).toBeGreaterThanOrEqual(loose.objective - 1e-6);
          expect(evaluate(model.net, tight.values)).toBeLessThanOrEqual(
            evaluate(model.net, loose.values) + 1e-4,
          );
        },
      ),
      { numRuns: 120, seed: 22 },
    );
  });

  it('never get closer to the original by forbidding a swap', () => {
    fc.assert(
      fc.property(randomSample, share, fc.nat(50), (sample, at, pick) => {
        const model = modelOf(sample);
        const budget = model.net.constant * at;
        const free = solveProgram(withBudget(model, budget));
        const swaps = model.choices.flatMap((c) => (c.candidate ? [c.candidate.rule.id] : []));
        const excluded = swaps[pick % Math.max(1, swaps.length)];
        if (excluded === undefined || free.status !== 'optimal') return;
        const less = solveProgram(
          withBudget(modelOf(sample, { excludedSwaps: [excluded] }), budget),
        );
        if (less.status === 'optimal')
          expect(less.objective).toBeGreaterThanOrEqual(free.objective - 1e-6);
      }),
      { numRuns: 120, seed: 23 },
    );
  });

  it('honour a pinned line', () => {
    fc.assert(
      fc.property(randomSample, fc.nat(12), (sample, pick) => {
        const ingredients = ingredientsOf(sample);
        const pinned = ingredients[pick % ingredients.length];
        if (!pinned?.weight) return;
        const result = plan(sample, { budgetG: 8, pinned: [pinned.key] });
        const items = result.items.filter((i) => i.key === pinned.key);
        expect(items.map((i) => [i.foodId, i.grams])).toEqual([
          [pinned.match?.foodId, pinned.weight.grams.best],
        ]);
      }),
      { numRuns: 80, seed: 24 },
    );
  });

  it('scale with the recipe before rounding', () => {
    fc.assert(
      fc.property(randomSample, share, fc.integer({ min: 2, max: 5 }), (sample, at, factor) => {
        const big = {
          ...sample,
          servings: sample.servings * factor,
          parts: sample.parts.map(([id, g]) => [id, g * factor] as const),
        };
        const plain = { ...sample, parts: sample.parts.map(([id, g]) => [id, g] as const) };
        const one = modelOf(plain);
        const many = modelOf(big);
        const budget = one.net.constant * at;
        const a = solveProgram(withBudget(one, budget), { relax: true });
        const b = solveProgram(withBudget(many, budget), { relax: true });
        expect(b.status).toBe(a.status);
        if (a.status === 'optimal') expect(b.objective).toBeCloseTo(a.objective, 5);
      }),
      { numRuns: 80, seed: 25 },
    );
  });

  it('are the same every time', () => {
    fc.assert(
      fc.property(randomSample, (sample) => {
        expect(plan(sample, { budgetG: 9 })).toEqual(plan(sample, { budgetG: 9 }));
      }),
      { numRuns: 30, seed: 26 },
    );
  });

  it('lose closeness in parts that add up to the whole', () => {
    fc.assert(
      fc.property(randomSample, fc.integer({ min: 5, max: 25 }), (sample, budgetG) => {
        const { closeness, closenessParts } = plan(sample, { budgetG });
        const lost = Object.values(closenessParts).reduce((sum, part) => sum + 1 - part, 0);
        expect(lost).toBeCloseTo(1 - closeness, 6);
      }),
      { numRuns: 50, seed: 31 },
    );
  });

  it('get no closer, and gain no net carbs, when the budget tightens', () => {
    fc.assert(
      fc.property(
        randomSample,
        fc.integer({ min: 5, max: 25 }),
        fc.integer({ min: 1, max: 8 }),
        (sample, budgetG, less) => {
          const loose = plan(sample, { budgetG });
          const tight = plan(sample, { budgetG: budgetG - less });
          // Out of reach, a plan goes no further than a dish one would still serve.
          if (tight.met) expect(tight.closeness).toBeLessThanOrEqual(loose.closeness + 0.03);
          const net = (result: Plan): number =>
            tallyAfter(sample, result).perServing.netCarbsG?.best ?? Number.NaN;
          // Kitchen rounding of both plans: 5 g of flour, and a scrap of up to 5 % of it that goes.
          const was = tallyOf(sample).perServing.netCarbsG?.best ?? 0;
          const grain = 7 / sample.servings + 0.05 * was + 0.06;
          if (tight.met) expect(net(tight)).toBeLessThanOrEqual(net(loose) + grain);
        },
      ),
      { numRuns: 60, seed: 32 },
    );
  });

  it('stay within the budget when counted by the tally, or say that they do not', () => {
    fc.assert(
      fc.property(randomSample, fc.double({ min: 2, max: 40, noNaN: true }), (sample, budgetG) => {
        const result = plan(sample, { budgetG });
        const after = tallyAfter(sample, result).perServing.netCarbsG?.best ?? Number.NaN;
        expect(result.met).toBe(after <= budgetG + 1e-6);
      }),
      { numRuns: 100, seed: 28 },
    );
  });

  it('hold together for any foods in any family', () => {
    const part = fc.tuple(
      fc.nat(foods.foods.length - 1),
      fc.double({ min: 0.2, max: 900, noNaN: true }),
    );
    const sample = fc
      .tuple(
        fc.array(part, { minLength: 1, maxLength: 9 }),
        fc.integer({ min: 1, max: 12 }),
        fc.constantFrom(...FAMILIES),
      )
      .map(
        ([parts, servings, family]): Sample => ({
          title: 'Anything',
          servings,
          family,
          parts: parts.map(([at, grams]) => [foods.foods[at]?.id ?? 'water', grams] as const),
        }),
      );
    fc.assert(
      fc.property(sample, fc.integer({ min: 0, max: 40 }), (any, budgetG) => {
        const result = plan(any, { budgetG, family: any.family });
        expect(() => Plan.parse(result)).not.toThrow();
        const before = tallyOf(any).perServing.netCarbsG?.best ?? 0;
        const after = tallyAfter(any, result).perServing.netCarbsG?.best ?? 0;
        expect(after).toBeLessThanOrEqual(before + 0.05);
        if (result.met) expect(after).toBeLessThanOrEqual(budgetG + 1e-6);
        else expect(result.limits.length).toBeGreaterThan(0);
        for (const item of result.items) expect(item.grams).toBeGreaterThan(0);
      }),
      { numRuns: 300, seed: 29 },
    );
  });

  it('survive senseless servings and masses', () => {
    for (const servings of [0, -3, Number.NaN, Number.POSITIVE_INFINITY]) {
      const parts = [
        ingredient('0', 'bread-flour', Number.NaN),
        ingredient('1', 'water', -5),
        ingredient('2', 'sugar', 100),
      ];
      const before = tallyOf({ title: '', servings: 4, family: 'other', parts: [] }, []);
      const result = planRecipe(
        parts,
        { title: '', steps: [] },
        { goals: DEFAULT_GOALS, servings, foods, before },
      );
      expect(() => Plan.parse(result)).not.toThrow();
    }
  });
});
