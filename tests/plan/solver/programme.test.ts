import * as fc from 'fast-check';
import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { leastCarbs, withBudget } from '../../../engine/plan/model/plan-model.ts';
import { nearlySolve, solveProgram } from '../../../engine/plan/solver/branch-and-bound.ts';
import type { Program } from '../../../engine/plan/solver/programme.ts';
import { lpText } from './lp-text.ts';
import { modelOf, randomSample } from './random-programme.ts';

const highs = await loadHighs();

const second = (program: Program, relax: boolean): number | null => {
  const answer = highs.solve(lpText(program, relax), { mip_rel_gap: 0, presolve: 'off' });
  return answer.Status === 'Optimal' ? answer.ObjectiveValue : null;
};

const close = (a: number, b: number): void =>
  expect(Math.abs(a - b)).toBeLessThan(2e-5 * (1 + Math.abs(b)));

describe('solver', () => {
  it('agrees with a second solver on 260 random continuous programmes', () => {
    let feasible = 0;
    fc.assert(
      fc.property(randomSample, fc.double({ min: 0.15, max: 1, noNaN: true }), (sample, share) => {
        const model = modelOf(sample);
        fc.pre(model.choices.length > 0);
        const program = withBudget(model, model.net.constant * share);
        const ours = solveProgram(program, { relax: true });
        const theirs = second(program, true);
        expect(ours.status === 'optimal').toBe(theirs !== null);
        if (theirs === null) return;
        feasible++;
        close(ours.objective, theirs);
      }),
      { numRuns: 260, seed: 11 },
    );
    expect(feasible).toBeGreaterThan(120);
  });

  it('agrees with a second solver on 200 random programmes with whole-number choices', () => {
    fc.assert(
      fc.property(randomSample, fc.double({ min: 0.3, max: 1, noNaN: true }), (sample, share) => {
        const model = modelOf(sample);
        fc.pre(model.choices.length > 0);
        const program = withBudget(model, model.net.constant * share);
        const ours = solveProgram(program);
        const theirs = second(program, false);
        expect(ours.status === 'optimal').toBe(theirs !== null);
        if (theirs !== null) close(ours.objective, theirs);
      }),
      { numRuns: 200, seed: 12 },
    );
  }, 60_000);

  it('finds the least net carbs', () => {
    fc.assert(
      fc.property(randomSample, (sample) => {
        const program = leastCarbs(modelOf(sample));
        const theirs = second(program, false);
        if (theirs !== null) close(solveProgram(program).objective, theirs);
      }),
      { numRuns: 50, seed: 13 },
    );
  });

  it('says when a programme has no solution', () => {
    const rows = [{ id: 'a', min: 2, terms: [['x', 1] as const] }];
    expect(solveProgram({ variables: [{ id: 'x', cost: 1, max: 1 }], rows }).status).toBe(
      'infeasible',
    );
  });

  it('weighs the price of a switch against doing without', () => {
    const cheapest = (price: number) => {
      const variables = [
        { id: 'x', cost: 0.1, max: 1 },
        { id: 'z', cost: 0.4, max: 2 },
        { id: 'y', cost: price, binary: true, opens: [{ id: 'x', most: 1 }] },
      ];
      const rows = [
        { id: 'cover', min: 1, terms: [['x', 1] as const, ['z', 1] as const] },
        { id: 'link', max: 0, terms: [['x', 1] as const, ['y', -1] as const], switch: 'y' },
      ];
      return solveProgram({ variables, rows });
    };
    // x costs 0.1 and its switch, z 0.4.
    expect(cheapest(0.2).objective).toBeCloseTo(0.3, 6);
    expect(cheapest(0.2).values.get('y')).toBe(1);
    expect(cheapest(0.5).objective).toBeCloseTo(0.4, 6);
    expect(cheapest(0.5).values.get('x') ?? 0).toBe(0);
  });

  it('comes near the optimum quickly, and never below it', () => {
    let near = 0;
    let all = 0;
    fc.assert(
      fc.property(randomSample, fc.double({ min: 0.3, max: 1, noNaN: true }), (sample, share) => {
        const model = modelOf(sample);
        fc.pre(model.choices.length > 0);
        const program = withBudget(model, model.net.constant * share);
        const best = solveProgram(program);
        const quick = nearlySolve(program);
        if (best.status !== 'optimal') return;
        all++;
        if (quick.status !== 'optimal') return;
        expect(quick.objective).toBeGreaterThanOrEqual(best.objective - 1e-6);
        if (quick.objective < best.objective + 0.05) near++;
      }),
      { numRuns: 80, seed: 14 },
    );
    expect(near / all).toBeGreaterThan(0.8);
  });
});
