/** Programmes of dishes: our optimum beside those of two other solvers, and the conditions the search asks for. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastCarbs, withBudget } from '../../../engine/plan/model/plan-model.ts';
import { solveProgram } from '../../../engine/plan/solver/branch-and-bound.ts';
import { conditionFaults, type Program } from '../../../engine/plan/solver/programme.ts';
import { workOf } from '../../../engine/plan/solver/work.ts';
import { highsLeast, yalpsLeast } from './other-solvers.ts';
import { modelOf, randomSample } from './random-programme.ts';

const second = (program: Program, relax: boolean): number | null =>
  highsLeast(program, { relax, asWritten: true });

const close = (a: number, b: number): void =>
  expect(Math.abs(a - b)).toBeLessThan(2e-5 * (1 + Math.abs(b)));

describe('solver', () => {
  it('agrees with a second solver on 320 random continuous programmes', () => {
    let feasible = 0;
    fc.assert(
      fc.property(randomSample, fc.double({ min: 0.15, max: 1, noNaN: true }), (sample, share) => {
        const model = modelOf(sample);
        fc.pre(model.net.terms.length > 0);
        const program = withBudget(model, model.net.constant * share);
        const ours = solveProgram(program, { relax: true });
        const theirs = second(program, true);
        expect(ours.status === 'optimal').toBe(theirs !== null);
        if (theirs === null) return;
        feasible++;
        close(ours.objective, theirs);
      }),
      { numRuns: 320, seed: 11 },
    );
    expect(feasible).toBeGreaterThan(120);
  });

  it('agrees with a second solver on 200 random programmes with whole-number choices', () => {
    fc.assert(
      fc.property(randomSample, fc.double({ min: 0.3, max: 1, noNaN: true }), (sample, share) => {
        const model = modelOf(sample);
        fc.pre(model.net.terms.length > 0);
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

  it('agrees with a third solver on 60 random programmes, with and without whole-number choices', () => {
    fc.assert(
      fc.property(randomSample, fc.double({ min: 0.3, max: 1, noNaN: true }), (sample, share) => {
        const model = modelOf(sample);
        fc.pre(model.net.terms.length > 0);
        const program = withBudget(model, model.net.constant * share);
        for (const relax of [true, false]) {
          const ours = solveProgram(program, { relax });
          const theirs = yalpsLeast(program, { relax });
          expect(ours.status === 'optimal').toBe(theirs !== null);
          if (theirs !== null) close(ours.objective, theirs);
        }
      }),
      { numRuns: 60, seed: 15 },
    );
  }, 60_000);

  it('stops where its work ends, at the same place every time', () => {
    fc.assert(
      fc.property(randomSample, fc.integer({ min: 1, max: 40 }), (sample, tableaux) => {
        const model = modelOf(sample);
        fc.pre(model.net.terms.length > 0);
        const program = withBudget(model, model.net.constant * 0.6);
        const cells = tableaux * program.rows.length * program.variables.length;
        const [one, two] = [0, 1].map(() => {
          const work = workOf(cells);
          return { answer: solveProgram(program, {}, work), work };
        });
        expect(one).toEqual(two);
        const best = solveProgram(program);
        if (one?.answer.status !== 'optimal' || best.status !== 'optimal') return;
        expect(one.answer.objective).toBeGreaterThan(best.objective - 1e-6);
        if (!one.work.ranOut) close(one.answer.objective, best.objective);
      }),
      { numRuns: 60, seed: 16 },
    );
  });
});

describe('conditions of the search', () => {
  it('hold for every programme of a dish', () => {
    fc.assert(
      fc.property(randomSample, (sample) => {
        const model = modelOf(sample);
        expect(conditionFaults(withBudget(model, 10))).toEqual([]);
        expect(conditionFaults(leastCarbs(model))).toEqual([]);
      }),
      { numRuns: 120, seed: 17 },
    );
  });

  const x = { id: 'x', cost: 1, max: 1 };
  const y = { id: 'y', cost: 1, binary: true, opens: [{ id: 'x', most: 1 }] };

  it('are missed by a binary that opens nothing, or what is not there', () => {
    expect(conditionFaults({ variables: [x, { ...y, opens: [] }], rows: [] })).toEqual([
      'y switches nothing on',
    ]);
    expect(conditionFaults({ variables: [y], rows: [] })).toEqual([
      'y opens x, which is not there',
    ]);
  });

  it('are missed by a variable with two switches', () => {
    const faults = conditionFaults({ variables: [x, y, { ...y, id: 'z' }], rows: [] });
    expect(faults).toEqual(['x has two switches']);
  });

  it('are missed by a row that a binary makes easier to keep', () => {
    const rows = [{ id: 'cover', min: 1, terms: [['y', 1] as const] }];
    expect(conditionFaults({ variables: [x, y], rows })).toEqual([
      'cover is easier to keep with y',
    ]);
  });

  it('are missed by a row that only says it follows', () => {
    const terms = [['y', 1] as const, ['f', -2] as const];
    const follows = { leader: 'y', follower: 'f' };
    const rows = [{ id: 'brings', max: 0, terms, follows }];
    const variables = [x, y, { id: 'f', cost: 1, max: 1 }];
    expect(conditionFaults({ variables, rows })).toEqual([
      "brings is not 'leader - follower <= 0'",
    ]);
  });
});
