/** Light plans: few changes, of which one sweetener for all sugars is one. */
import { describe, expect, it } from 'vitest';
import { adapted, type Pasted } from '../pasted.ts';

const SYRUP_BARS: Pasted = {
  title: 'Walnut syrup bars',
  serves: 'Makes 10',
  lines: [
    'For the base:',
    '250 g plain flour',
    '100 g sugar',
    '225 g butter',
    'For the topping:',
    '300 g maple syrup',
    '150 g brown sugar',
    '3 eggs',
    '90 g butter',
    '400 g walnuts',
  ],
  steps: [
    'Rub flour, sugar and butter together, press into a tin and bake 15 minutes at 180 °C.',
    'Whisk the syrup, brown sugar, eggs and melted butter, stir in the walnuts and pour over the base.',
    'Bake 25 minutes, cool and cut into 10 bars.',
  ],
  family: ['pie-crust', 'cookie'],
};

const SAVOURY_BUNS: Pasted = {
  title: 'Cheese filled buns',
  serves: 'Makes 20',
  lines: [
    '750 g bread flour',
    '250 ml milk',
    '120 ml water',
    '170 g salted butter',
    '70 g sugar',
    '2 eggs',
    '7 g instant yeast',
    '4 g salt',
    '400 g cheddar cheese',
  ],
  steps: [
    'Knead a dough of flour, milk, water, butter, sugar, eggs, yeast and salt and let it rise an hour.',
    'Divide into 20 balls, fill with the cheese, let rise and bake 15 minutes at 190 °C.',
  ],
  family: ['enriched-yeast-bread'],
};

const LAYERS: Pasted = {
  title: 'Almond layer tart',
  serves: 'Serves 6',
  lines: [
    '185 g plain flour',
    '185 g butter',
    '85 ml water',
    '100 g ground almonds',
    '80 g sugar',
    '2 eggs',
  ],
  steps: [
    'Work flour, cold butter and water into a dough.',
    'Roll the pastry out and fold it like a letter, four times.',
    'Beat almonds, sugar and eggs, spread between two rounds of the pastry and bake 35 minutes at 180 °C.',
  ],
  family: ['pie-crust'],
};

describe('a light plan', () => {
  it('gives every sugar of the dish the same sweetener, as one of its two changes', () => {
    const { plan } = adapted(SYRUP_BARS, { budgetG: 15, way: 'lighter' });
    const sweet = plan.swaps.filter(({ from }) => /sugar|syrup/.test(from?.food ?? ''));
    expect(sweet.length).toBeGreaterThanOrEqual(3);
    const bought = new Set(sweet.flatMap(({ to }) => to.map(({ food }) => food)));
    expect([...bought].every((food) => /allulose/.test(food))).toBe(true);
  });

  it('holds its sweeteners to what a stomach bears of one of its own pieces', () => {
    const { plan } = adapted(SYRUP_BARS, { budgetG: 15, way: 'lighter' });
    expect(plan.servings).toBeGreaterThan(10);
    expect(plan.stomach.sweetenersG).toBeLessThanOrEqual(15.5);
    expect(plan.stomach.sweetenersG * (plan.servings / 10)).toBeGreaterThan(15);
  });
});

describe("the dough's own fat", () => {
  it('stays where the new flour brings none', () => {
    const { plan } = adapted(SAVOURY_BUNS, { budgetG: 15, way: 'lighter' });
    expect(plan.items.map(({ foodId }) => foodId)).toContain('low-carb-wheat-flour-blend');
    const butter = plan.items.find(({ foodId }) => /butter/.test(foodId))?.grams;
    expect(butter).toBe(170);
  });
});

describe('a dough that is folded into layers', () => {
  it('keeps its flour: nuts would let the butter out', () => {
    const { ways } = adapted(LAYERS, { budgetG: 15 });
    for (const { plan } of ways)
      expect(plan.swaps.filter(({ from }) => /flour/.test(from?.food ?? ''))).toEqual([]);
  });
});

/** An invented plate with one large source of carbohydrate and two small ones. */
const BEAN_BOWL: Pasted = {
  title: 'Rice bowl with beans and sweetcorn',
  family: ['rice-dish'],
  serves: 'Serves 4',
  lines: [
    '240 g rice',
    '1 can (240 g drained) kidney beans',
    '200 g sweetcorn',
    '400 g chicken breast',
    '60 g dried apricots',
    '2 tbsp oil',
  ],
  steps: [
    'Boil the rice.',
    'Fry the chicken, stir in the beans, the corn and the apricots and serve over the rice.',
  ],
};

describe('a light plate', () => {
  it('has less of one thing more, which needs no shopping', () => {
    const { plan } = adapted(BEAN_BOWL, { budgetG: 15, way: 'lighter' });
    const less = plan.swaps.filter(({ from, to }) => from !== null && to.length === 0);
    const replaced = plan.swaps.filter(({ from, to }) => from !== null && to.length > 0);
    expect(replaced.length).toBeLessThanOrEqual(2);
    expect(less.length).toBeGreaterThanOrEqual(1);
    expect(less.length + replaced.length).toBe(3);
  });
});
