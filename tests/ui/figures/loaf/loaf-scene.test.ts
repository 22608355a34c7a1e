import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  groupsShown,
  type LoafFigures,
} from '../../../../extension/ui/figures/loaf/loaf-figures.ts';
import { cutAt, sceneOf } from '../../../../extension/ui/figures/loaf/loaf-scene.ts';
import {
  leftPiece,
  rightPiece,
  scoreStarts,
  wholeLoaf,
} from '../../../../extension/ui/figures/loaf/loaf-shape.ts';

const figures = (beforeG: number, afterG: number, highG: number, budgetG: number): LoafFigures => ({
  before: {
    grams: beforeG,
    groups: { flour: beforeG * 0.7, sugar: beforeG * 0.3, plant: 0, rest: 0 },
  },
  after: { grams: afterG, groups: { flour: afterG, sugar: 0, plant: 0, rest: 0 } },
  highG,
  budgetG,
});

const grams = fc.double({ min: 0, max: 300, noNaN: true });
const width = fc.integer({ min: 160, max: 1200 });

describe('the loaf', () => {
  it('is whole when it fits and cut at the knife when it does not', () => {
    const fits = sceneOf(figures(49, 14.8, 17, 15), 420);
    expect(fits.loaf.pieces.map(({ kind }) => kind)).toEqual(['whole']);
    expect(fits.dough.pieces.map(({ kind }) => kind)).toEqual(['left', 'right']);
    const over = sceneOf(figures(38, 22, 24, 15), 420);
    const [left, right] = over.loaf.pieces;
    expect(left?.box.to).toBe(over.knife);
    // What was cut off stands apart and still ends at its true length.
    expect((right?.box.from ?? 0) - over.knife).toBeGreaterThan(3);
    expect(right?.box.to).toBeCloseTo(2 + (22 / 38) * 416, 5);
  });

  it('draws net carbs to one scale, within the picture, for any figures and width', () => {
    fc.assert(
      fc.property(grams, grams, grams, grams, width, (before, after, more, budget, wide) => {
        const scene = sceneOf(figures(before, after, after + more, budget), wide);
        const ends = [...scene.dough.pieces, ...scene.loaf.pieces].map(({ box }) => box.to);
        for (const x of [...ends, scene.knife, scene.reach ?? 0]) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(wide);
        }
        const length = (pieces: typeof scene.loaf.pieces) => (pieces.at(-1)?.box.to ?? 2) - 2;
        const [a, b] = [length(scene.dough.pieces), length(scene.loaf.pieces)];
        if (a > 4 && b > 4) expect(a * after).toBeCloseTo(b * before, 3);
      }),
    );
  });

  it('never draws a path with a number that is none', () => {
    fc.assert(
      fc.property(grams, grams, width, (length, knife, wide) => {
        for (const { box, kind } of cutAt(Math.min(length, wide), knife, 60, 38)) {
          const path =
            kind === 'whole' ? wholeLoaf(box) : kind === 'left' ? leftPiece(box) : rightPiece(box);
          expect(path).not.toMatch(/NaN|Infinity|undefined/);
          for (const start of scoreStarts(box, 0.8)) {
            expect(start).toBeGreaterThanOrEqual(box.from);
            expect(start + 0.5 * box.high).toBeLessThanOrEqual(box.to);
          }
        }
      }),
    );
  });

  it('leaves a reach out that would not be seen', () => {
    expect(sceneOf(figures(49, 14.8, 14.9, 15), 420).reach).toBeNull();
    expect(sceneOf(figures(49, 14.8, 17, 15), 420).reach).not.toBeNull();
  });

  it('keys only groups that bring something', () => {
    expect(groupsShown(figures(49, 14.8, 17, 15))).toEqual(['flour', 'sugar']);
  });
});
