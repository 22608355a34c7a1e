/** The simplex by itself: a programme worked out by hand, and random ones beside a second solver. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveFrame, solveProgram } from '../../../engine/plan/solver/branch-and-bound.ts';
import type { Program } from '../../../engine/plan/solver/programme.ts';
import { frameOf, rebound } from '../../../engine/plan/solver/search-frame.ts';
import { highsLeast, yalpsLeast } from './other-solvers.ts';

const whole = (min: number, max: number) => fc.integer({ min, max });

/** Bounded variables that may cost or pay, and rows with one bound or two; half of them cannot be kept. */
const randomProgram: fc.Arbitrary<Program> = fc
  .record({
    costs: fc.array(whole(-9, 9), { minLength: 3, maxLength: 12 }),
    rows: fc.array(
      fc.record({
        terms: fc.array(whole(-6, 6), { minLength: 12, maxLength: 12 }),
        min: fc.option(whole(-20, 8), { nil: undefined }),
        room: fc.option(whole(0, 15), { nil: undefined }),
      }),
      { minLength: 1, maxLength: 14 },
    ),
  })
  .map(({ costs, rows }) => ({
    variables: costs.map((cost, n) => ({
      id: `x${n}`,
      cost,
      ...(cost < 0 || n % 2 === 0 ? { max: 1 + (n % 4) } : {}),
    })),
    rows: rows.flatMap(({ terms, min, room }, n) => {
      const own = costs.flatMap((_, v): [string, number][] => {
        const c = terms[v] ?? 0;
        return c === 0 ? [] : [[`x${v}`, c]];
      });
      const max = room === undefined ? undefined : (min ?? 0) + room;
      if (own.length === 0 || (min === undefined && max === undefined)) return [];
      return [
        {
          id: `r${n}`,
          terms: own,
          ...(min === undefined ? {} : { min }),
          ...(max === undefined ? {} : { max }),
        },
      ];
    }),
  }));

describe('simplex', () => {
  it('finds an optimum worked out by hand', () => {
    // Most of 3x + 5y with x <= 4, 2y <= 12, 3x + 2y <= 18 is 36, at x = 2, y = 6.
    const answer = solveProgram({
      variables: [
        { id: 'x', cost: -3, max: 4 },
        { id: 'y', cost: -5, max: 100 },
      ],
      rows: [
        { id: 'two', max: 12, terms: [['y', 2]] },
        {
          id: 'both',
          max: 18,
          terms: [
            ['x', 3],
            ['y', 2],
          ],
        },
      ],
    });
    expect(answer.objective).toBeCloseTo(-36, 9);
    expect(answer.values.get('x')).toBeCloseTo(2, 9);
    expect(answer.values.get('y')).toBeCloseTo(6, 9);
  });

  it('says when what pays has no end', () => {
    const rows = [{ id: 'r', min: 0, terms: [['x', 1] as const] }];
    expect(solveProgram({ variables: [{ id: 'x', cost: -1 }], rows }).status).toBe('failed');
  });

  it('agrees with two other solvers on 400 random programmes, and again after a bound has moved', () => {
    let solved = 0;
    fc.assert(
      fc.property(randomProgram, whole(-4, 6), (program, moved) => {
        const frame = frameOf(program);
        const check = (ours: ReturnType<typeof solveFrame>, theirs: number | null): void => {
          expect(ours.status).toBe(theirs === null ? 'infeasible' : 'optimal');
          if (theirs === null) return;
          solved++;
          expect(Math.abs(ours.objective - theirs)).toBeLessThan(1e-5 * (1 + Math.abs(theirs)));
        };
        const theirs = highsLeast(program, { relax: true });
        check(solveFrame(frame), theirs);
        const third = yalpsLeast(program, { relax: true });
        expect(third === null).toBe(theirs === null);
        if (third !== null) expect(third).toBeCloseTo(theirs ?? Number.NaN, 5);
        const [row] = program.rows;
        if (row?.max === undefined) return;
        const next = rebound(
          frame,
          row.id,
          row.max + Math.max(moved, (row.min ?? moved) - row.max),
        );
        check(solveFrame(next), highsLeast(next.program, { relax: true }));
      }),
      { numRuns: 400, seed: 31 },
    );
    expect(solved).toBeGreaterThan(200);
  }, 60_000);
});
