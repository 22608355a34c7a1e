/** Amounts in a method for another number of servings. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scaledSteps } from '../../../engine/rewrite/steps/scaled-steps.ts';

const twice = (text: string, factor = 2): string | undefined =>
  scaledSteps([text], factor)[0]?.text;

describe('a method times two', () => {
  it.each([
    ['Whisk 50 g sugar with 1/2 cup milk.', 'Whisk 100 g sugar with 1 cup milk.'],
    ['Stir in 1 ½ tbsp oil and 2 eggs.', 'Stir in 3 tbsp oil and 4 eggs.'],
    ['Add 1 1/2 tsps salt and 2 tbsps oil.', 'Add 3 tsps salt and 4 tbsps oil.'],
    ['Add 2-3 tbsp water.', 'Add 4-6 tbsp water.'],
    ['Beat with half the allulose (75 g).', 'Beat with half the allulose (150 g).'],
    ['0,5 l Milch mit 2 EL Zucker aufkochen.', '1 l Milch mit 4 EL Zucker aufkochen.'],
    ['1,4 g (½ TL) Xanthan unterrühren.', '2,8 g (1 TL) Xanthan unterrühren.'],
    // Temperatures, times and vessels are no amounts of food.
    ['Bake at 180 °C (355 °F) for 25 minutes.', 'Bake at 180 °C (355 °F) for 25 minutes.'],
    ['Line a 900 g loaf tin.', 'Line a 900 g loaf tin.'],
    ['Pour into a 2-quart baking dish.', 'Pour into a 2-quart baking dish.'],
    ['Roll out 5 mm thick, 20 cm wide.', 'Roll out 5 mm thick, 20 cm wide.'],
  ])('%s', (before, after) => {
    expect(twice(before)).toBe(after);
  });

  it('says beside the step what does not grow', () => {
    const [tin, bake, stir] = scaledSteps(
      ['Line a 20 cm tin.', 'Bake for 25 minutes.', 'Stir for 2 minutes.'],
      2,
    );
    expect(tin?.note).toMatch(/pan/);
    expect(bake?.note).toMatch(/time/);
    expect(stir?.note).toBeNull();
    expect(scaledSteps(['Line a 20 cm tin.'], 1.1)[0]?.note).toBeNull();
  });

  it('changes nothing at one, and never throws', () => {
    fc.assert(
      fc.property(fc.array(fc.string()), fc.double(), (texts, factor) => {
        expect(scaledSteps(texts, 1).map(({ text }) => text)).toEqual(texts);
        expect(scaledSteps(texts, factor)).toHaveLength(texts.length);
      }),
    );
  });
});
