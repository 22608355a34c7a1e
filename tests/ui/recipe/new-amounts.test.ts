import { expect, it } from 'vitest';
import { stepParts } from '../../../extension/ui/recipe/new-amounts.ts';

const fresh = (after: string, before: string | null) =>
  stepParts(after, before)
    .filter(({ isNew }) => isNew)
    .map(({ text }) => text);

it('only amounts that the page’s own step does not have are new', () => {
  expect(
    fresh(
      'Add the milk, 35 g water and egg. Knead for 3-6 minutes only.',
      'Add the milk and egg. Knead for 8 minutes.',
    ),
  ).toEqual(['35 g', '3-6 minutes']);
  expect(fresh('Bake at 170 °C for 22 minutes.', 'Bake at 180 °C for 22 minutes.')).toEqual([
    '170 °C',
  ]);
  expect(fresh('Whisk 2.8 g (1 tsp) xanthan gum in.', null)).toEqual(['2.8 g', '1 tsp']);
  expect(fresh('Mix and bake.', 'Mix and bake.')).toEqual([]);
});

it('the pieces are the step', () => {
  const step = 'Mix 185 g (1⅓ cups) flour with 85 g gluten; rest 20-30 minutes.';
  expect(
    stepParts(step, null)
      .map(({ text }) => text)
      .join(''),
  ).toBe(step);
});
