import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { fitted } from '../../../extension/ui/photo/small-picture.ts';

it('a picture is made to fit, keeps its shape, and never grows', () => {
  expect(fitted(4000, 3000, 1200)).toEqual({ wide: 1200, high: 900 });
  expect(fitted(3000, 4000, 1200)).toEqual({ wide: 900, high: 1200 });
  expect(fitted(300, 200, 1200)).toEqual({ wide: 300, high: 200 });
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 9000 }),
      fc.integer({ min: 1, max: 9000 }),
      (wide, high) => {
        const made = fitted(wide, high, 1200);
        expect(Math.max(made.wide, made.high)).toBeLessThanOrEqual(1200);
        expect(Math.min(made.wide, made.high)).toBeGreaterThanOrEqual(1);
        expect(Math.abs(made.wide * high - made.high * wide)).toBeLessThanOrEqual(
          Math.max(wide, high),
        );
      },
    ),
    { numRuns: 200, seed: 2 },
  );
});
