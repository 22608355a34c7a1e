/** Gum stands in for flour that thickens a sauce, never for flour that is the body of something. */
import { describe, expect, it } from 'vitest';
import type { Adaptation } from '../../../engine/model.ts';
import { adapted, dishesOf } from '../pasted.ts';

const dish = dishesOf('thickened-sauce', 'other');

const GLASSES = dish(
  'Pears in glasses with crumbs',
  ['2 pears', '60 ml water', '60 g sugar', '60 g flour', '40 g butter', '150 ml whipping cream'],
  [
    'Simmer the pears with the water and the sugar.',
    'Rub flour and butter to crumbs and bake 10 minutes.',
    'Whip the cream and layer all in glasses.',
  ],
);

const CURD_DUMPLINGS = dish(
  'Curd cheese dumplings with cream sauce',
  ['250 g cottage cheese', '1 egg', '100 g flour', '200 ml cream', '40 g parmesan'],
  [
    'Work the cheese, flour and egg to a smooth mass, roll and cut.',
    'Boil in salted water until they float.',
    'Warm the cream with the parmesan and fold them in.',
  ],
);

const GRAVY = dish(
  'Chicken in cream gravy',
  ['600 g chicken thighs', '60 g flour', '50 g butter', '700 ml chicken stock', '200 ml cream'],
  [
    'Brown the chicken.',
    'Melt the butter, stir in the flour, whisk in stock and cream and simmer 5 minutes.',
  ],
);

const foodsOf = ({ plan, ways }: Adaptation): string[] =>
  [plan, ...ways.map((way) => way.plan)].flatMap(({ items }) => items.map(({ foodId }) => foodId));

const GUMS = ['xanthan-gum', 'guar-gum', 'konjac-glucomannan', 'locust-bean-gum'];

describe('flour of which there is more than the liquid could take', () => {
  it.each([
    ['crumbs', GLASSES],
    ['dumplings', CURD_DUMPLINGS],
  ])('gets no gum in its place: %s', (_, recipe) => {
    const foods = foodsOf(adapted(recipe, { budgetG: 8 }));
    expect(GUMS.filter((gum) => foods.includes(gum))).toEqual([]);
  });

  it('leaves a gravy its gum', () => {
    const foods = foodsOf(adapted(GRAVY, { budgetG: 6 }));
    expect(GUMS.some((gum) => foods.includes(gum))).toBe(true);
  });
});
