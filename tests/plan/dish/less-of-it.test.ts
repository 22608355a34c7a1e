/** Where a cook would simply take less of a line, the plan does so before it sends anyone shopping. */
import { describe, expect, it } from 'vitest';
import type { Adaptation } from '../../../engine/model.ts';
import { adapted, type Pasted } from '../pasted.ts';

const dish = (title: string, serves: string, lines: string[], steps: string[]): Pasted => ({
  title,
  serves,
  lines,
  steps,
  family: ['other'],
});

const LENTIL_SALAD = dish(
  'Green lentil salad with walnuts',
  'Serves 4',
  [
    '90 g dried cranberries',
    '200 g cooked green lentils',
    '100 g walnuts',
    '150 g rocket',
    '3 tbsp olive oil',
    '1 tbsp lemon juice',
  ],
  ['Toss the lentils, cranberries and walnuts with the rocket.', 'Dress with oil and lemon juice.'],
);

const GLAZED_CHICKEN = dish(
  'Mustard glazed chicken',
  'Serves 4',
  ['800 g chicken thighs', '120 g honey', '3 tbsp mustard', '1 tbsp soy sauce', '2 tbsp butter'],
  ['Brown the chicken in the butter.', 'Stir in honey, mustard and soy sauce and glaze.'],
);

const TOMATO_GRATIN = dish(
  'Crumbed tomatoes',
  'Serves 4',
  ['8 tomatoes', '80 g breadcrumbs', '60 g parmesan', '2 tbsp olive oil', '1 clove garlic'],
  ['Halve the tomatoes.', 'Mix crumbs, cheese, garlic and oil, strew over and bake 20 minutes.'],
);

const lessOf = (result: Adaptation, food: RegExp) =>
  result.plan.swaps.find(
    ({ from, to }) => from !== null && food.test(from.food) && to.length === 0,
  );

describe('less of a line', () => {
  it.each([
    ['a sweet fruit in a salad', LENTIL_SALAD, /cranberr/, 0.35],
    ['a honey glaze', GLAZED_CHICKEN, /honey/, 0.5],
    ['a crumb topping', TOMATO_GRATIN, /crumb/, 0.5],
  ] as const)('takes less of %s, and keeps some', (_, recipe, food, least) => {
    const result = adapted(recipe);
    const swap = lessOf(result, food);
    expect(swap).toBeDefined();
    expect(swap?.keptGrams).toBeGreaterThanOrEqual(least * (swap?.from?.grams ?? 0) - 3);
    expect(swap?.why).toMatch(/^Less of it is enough/);
    expect(result.plan.shopping).toEqual([]);
  });

  it('writes the smaller amount on the line and names nothing new in the method', () => {
    const result = adapted(LENTIL_SALAD);
    const line = result.lines.find(({ before }) => before?.includes('cranberries'));
    expect(line?.change).toBe('amount');
    expect(result.steps.map(({ after }) => after).join('\n')).toContain(
      'Toss the lentils, cranberries and walnuts with the rocket.',
    );
  });

  it('leaves the sugar of what sets with sugar to its stand-ins', () => {
    const jam = dish(
      'Strawberry jam',
      'Makes 40 servings',
      ['1 kg strawberries', '900 g sugar', '1 lemon'],
      ['Boil strawberries, sugar and lemon juice until set.'],
    );
    expect(adapted(jam).plan.swaps.filter(({ to }) => to.length === 0)).toEqual([]);
  });
});

const CRUMBED = dish(
  'Crumbed baked tomatoes with herbs',
  'Serves 6',
  ['6 tomatoes', '110 g breadcrumbs', '30 g parmesan', '1 tbsp olive oil', '1 clove garlic'],
  ['Halve the tomatoes.', 'Mix crumbs, cheese, garlic and oil, strew over and bake 20 minutes.'],
);

describe('a line of which there is to be less', () => {
  it('loses a share that is worth the trouble, not a spoonful', () => {
    const swap = lessOf(adapted(CRUMBED, { budgetG: 14 }), /crumb/);
    expect((swap?.keptGrams ?? 0) / (swap?.from?.grams ?? 1)).toBeLessThan(0.75);
  });
});

const HONEY_PASTA = dish(
  'Smoky turkey penne',
  'Serves 4',
  [
    '320 g penne',
    '400 g turkey breast',
    '60 g honey',
    '300 ml single cream',
    '1 red onion',
    '2 cloves garlic',
    '1 tsp smoked paprika',
  ],
  [
    'Boil the penne in salted water and drain.',
    'Brown the turkey, add onion, garlic and paprika, then cream and honey, and simmer.',
    'Toss the penne with the sauce.',
  ],
);

const STICKY_TOFU: Pasted = {
  title: 'Sticky tofu bowls',
  serves: 'Serves 2',
  lines: [
    '300 g tofu',
    '250 g cooked rice',
    '2 tbsp oil',
    'For the sauce',
    '2 tbsp soy sauce',
    '2 tbsp sriracha',
    '40 g honey',
    '1 tbsp rice vinegar',
  ],
  steps: [
    'Fry the tofu in the oil.',
    'Whisk the sauce ingredients, pour over and cook until sticky.',
    'Serve over the warm rice.',
  ],
  family: ['rice-dish'],
};

const RAISIN_PEPPERS = dish(
  'Peppers filled with rice',
  'Serves 4',
  [
    '4 red peppers',
    '180 g long grain rice',
    '300 g minced beef',
    '80 g raisins',
    '1 onion',
    '2 cloves garlic',
    '400 g chopped tomatoes',
  ],
  [
    'Fry the beef with onion and garlic, stir in rice, raisins and tomatoes and simmer 15 minutes.',
    'Fill the peppers and bake 30 minutes.',
  ],
);

describe('what seasons a savoury dish sweetly', () => {
  it.each([
    ['honey in a sauce', HONEY_PASTA, /honey/],
    ['honey in a salty sauce of its own', STICKY_TOFU, /honey/],
    ['raisins in a filling', RAISIN_PEPPERS, /raisin/],
  ] as const)('gives way where the starch alone does not do: %s', (_, recipe, food) => {
    const result = adapted(recipe);
    const key = result.ingredients.find(({ match }) => food.test(match?.foodName ?? ''))?.key;
    const swap = result.plan.swaps.find((one) => one.key === key);
    expect(swap?.keptGrams).toBeLessThanOrEqual(0.65 * (swap?.from?.grams ?? 0));
  });

  it('is not said to have to match', () => {
    const texts = adapted(HONEY_PASTA).plan.limits.map(({ text }) => text);
    expect(texts.join(' ')).not.toMatch(/sweetness has to match/i);
  });
});
