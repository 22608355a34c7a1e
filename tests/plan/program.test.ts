import * as fc from 'fast-check';
import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { solveProgram } from '../../engine/plan/branch.ts';
import { leastCarbs, withBudget } from '../../engine/plan/model.ts';
import type { Program } from '../../engine/plan/program.ts';
import { lpText } from './lp-text.ts';
import { modelOf, randomSample } from './random.ts';

const highs = await loadHighs();

const second = (program: Program, relax: boolean): number | null => {
  const answer = highs.solve(lpText(program, relax), { mip_rel_gap: 0 });
  return answer.Status === 'Optimal' ? answer.ObjectiveValue : null;
};

const close = (a: number, b: number): void =>
  expect(Math.abs(a - b)).toBeLessThan(2e-5 * (1 + Math.abs(b)));

describe('solver', () => {
  it('agrees with a second solver on 240 random continuous programmes', () => {
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
      { numRuns: 240, seed: 11 },
    );
    expect(feasible).toBeGreaterThan(120);
  });

  it('agrees with a second solver on 60 random programmes with whole-number choices', () => {
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
      { numRuns: 60, seed: 12 },
    );
  });

  it('finds the least net carbs', () => {
    fc.assert(
      fc.property(randomSample, (sample) => {
        const program = leastCarbs(modelOf(sample));
        const theirs = second(program, true);
        if (theirs !== null) close(solveProgram(program, { relax: true }).objective, theirs);
      }),
      { numRuns: 40, seed: 13 },
    );
  });

  it('says when a programme has no solution', () => {
    const rows = [{ id: 'a', min: 2, terms: [['x', 1] as const] }];
    expect(solveProgram({ variables: [{ id: 'x', cost: 1, max: 1 }], rows }).status).toBe(
      'infeasible',
    );
  });

  it('honours bounds and binaries', () => {
    const variables = [
      { id: 'x', cost: 1 },
      { id: 'y', cost: 0.4, binary: true },
    ];
    const rows = [{ id: 'cover', min: 1.5, terms: [['x', 1] as const, ['y', 1] as const] }];
    const whole = solveProgram({ variables, rows });
    expect(whole.objective).toBeCloseTo(0.9, 9);
    expect(whole.values.get('y')).toBe(1);
  });
});
