import { describe, expect, it } from 'vitest';
import { adaptedPage } from '../../ui/adapted.ts';

/** Rolls whose dough is mixed and kneaded in one step, and baked under the heading of their glaze. */
const texts = adaptedPage('milk-rolls.html').steps.map(({ after }) => after);
const stepOf = (words: RegExp): number => texts.findIndex((text) => words.test(text));

describe('the course of a dough', () => {
  it('rests once the liquid is in, also where the same sentence kneads', () => {
    const mixed = stepOf(/Add the milk/);
    const rested = stepOf(/let it rest for/);
    expect(mixed).toBeGreaterThanOrEqual(0);
    expect(rested).toBeGreaterThan(mixed);
    expect(rested).toBeLessThan(stepOf(/soft butter bit by bit/));
  });

  it('ends in the oven, whatever the heading of that step names', () => {
    expect(texts[stepOf(/done when the centre/)]).toMatch(/^Bake at 180/);
  });
});
