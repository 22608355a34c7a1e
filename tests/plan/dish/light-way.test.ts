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
    expect([...bought].every((food) => /allulose|vanilla/.test(food))).toBe(true);
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

/** A loaf with three large sources: flour, sugar and chocolate. */
const FRUIT_LOAF: Pasted = {
  title: 'Banana loaf with chocolate pieces',
  serves: 'Serves 8',
  lines: [
    '250 g plain flour',
    '150 g sugar',
    '115 g semi-sweet chocolate, chopped',
    '450 g ripe bananas, mashed',
    '2 eggs',
    '85 g butter',
    '60 g sour cream',
    '1 tsp baking soda',
  ],
  steps: [
    'Melt the butter and beat it with the bananas, the eggs and the sour cream.',
    'Fold in the flour, the sugar, the baking soda and the chocolate.',
    'Bake in a loaf tin at 175 °C for 60 minutes.',
  ],
  family: ['quick-bread'],
};

/** Two layers and a frosting: so much sugar that the flour is less than a tenth of what is too much. */
const TALL_CAKE: Pasted = {
  title: 'Tall cocoa cake',
  serves: 'Serves 14',
  lines: [
    '250 g plain flour',
    '450 g sugar',
    '20 g cocoa powder',
    '2 tsp baking powder',
    '120 ml oil',
    '270 ml buttermilk',
    '2 eggs',
    '240 ml hot water',
    'For the frosting:',
    '450 g butter',
    '600 g icing sugar',
    '80 g cocoa powder',
    '120 ml double cream',
  ],
  steps: [
    'Whisk flour, sugar, cocoa and baking powder, then the oil, the buttermilk, the eggs and the hot water.',
    'Bake in two tins at 175 °C for 35 minutes and let them cool.',
    'Beat the butter with the icing sugar, the cocoa and the cream and spread it over both layers.',
  ],
  family: ['cake'],
};

const CREAM_ON_CRUMBS: Pasted = {
  title: 'Peanut cream cheesecake without baking',
  serves: 'Serves 9',
  lines: [
    'For the base:',
    '225 g graham crackers',
    '100 g butter',
    'For the filling:',
    '680 g cream cheese',
    '190 g icing sugar',
    '270 g peanut butter',
    '120 ml double cream',
    'For the glaze:',
    '115 g semi-sweet chocolate',
    '120 ml double cream',
  ],
  steps: [
    'Crush the graham crackers, stir in the melted butter and press the crumbs into a tin as the base.',
    'Beat the cream cheese with the icing sugar, the peanut butter and the cream.',
    'Spread it over the base and chill it overnight.',
    'Melt the chocolate in the hot cream and pour it over the top.',
  ],
  family: ['custard'],
};

const SET_MILK: Pasted = {
  title: 'Set milk custard with caramel',
  serves: 'Serves 10',
  lines: [
    '200 g sugar',
    '700 g evaporated milk',
    '397 g sweetened condensed milk',
    '1 tbsp vanilla extract',
    '6 eggs',
  ],
  steps: [
    'Melt the sugar to a caramel and pour it into a mould.',
    'Whisk the milks, the vanilla and the eggs and pour them over the caramel.',
    'Bake in a water bath at 165 °C for 60 minutes and chill.',
  ],
  family: ['custard'],
};

const MAIZE_CAKES: Pasted = {
  title: 'Corn tortillas',
  serves: 'Serves 4',
  lines: ['240 g masa harina', '1 tsp salt', '360 ml warm water'],
  steps: ['Knead masa, salt and water, press 12 thin rounds and bake them in a hot pan.'],
  family: ['tortilla'],
};

const lightOf = (recipe: Pasted) => adapted(recipe, { budgetG: 15, way: 'lighter' }).plan;
const leftOf = ({ items }: ReturnType<typeof lightOf>, food: RegExp): number =>
  items.reduce((sum, item) => sum + (food.test(item.foodId) ? item.grams : 0), 0);

describe('a light plan of a heavy bake', () => {
  it('makes a third change where two leave the smallest slice far above the budget', () => {
    const plan = lightOf(FRUIT_LOAF);
    expect(leftOf(plan, /^sugar$/)).toBeLessThan(75);
    expect(leftOf(plan, /all-purpose-flour/)).toBeLessThan(200);
    expect(leftOf(plan, /^chocolate-(semi|dark)/)).toBeLessThan(60);
  });

  it('leaves soured cream in: it is there for its fat and acid, not for its water', () => {
    expect(leftOf(lightOf(FRUIT_LOAF), /sour-cream/)).toBe(60);
  });

  it('weighs what a change saves against what the smallest piece leaves too much', () => {
    const plan = lightOf(TALL_CAKE);
    expect(plan.met).toBe(true);
    expect(leftOf(plan, /all-purpose-flour/)).toBeLessThan(200);
  });

  it('gives up the crumb base of a cream before the cream, in a part of its own too', () => {
    const plan = lightOf(CREAM_ON_CRUMBS);
    expect(plan.met).toBe(true);
    expect(leftOf(plan, /graham/)).toBe(0);
  });

  it('goes back to the smaller pieces that fit where larger ones bear too little sweetener', () => {
    expect(lightOf(SET_MILK).met).toBe(true);
  });

  it('is not worth two flours to buy where a smaller piece of the original fits', () => {
    const { plan } = adapted(MAIZE_CAKES, { budgetG: 15 });
    expect(plan.swaps).toEqual([]);
    expect(plan.servings).toBe(12);
  });
});

/** An invented cake that stays above the budget: its frosting's little sugar is the next that would go. */
const FROSTED: Pasted = {
  title: 'Parsnip ring cake with soft cheese frosting',
  serves: 'Makes 12 slices',
  family: ['cake'],
  lines: [
    'For the cake:',
    '250 g plain flour',
    '200 ml vegetable oil',
    '4 eggs',
    '250 g sugar',
    '220 g grated parsnips',
    '1 tsp baking soda',
    '1 tsp baking powder',
    'For the frosting:',
    '225 g cream cheese',
    '60 ml whole milk',
    '30 g powdered sugar',
  ],
  steps: [
    'Whisk oil, eggs and sugar, stir in the parsnips, then flour, soda and baking powder.',
    'Bake in a greased bundt pan 45 minutes at 175 °C.',
    'Beat the cream cheese with the milk and the powdered sugar and spread it over the cake.',
  ],
};

describe('a sweet that stays above the budget', () => {
  it('gives up the little sugar of its frosting too, before any more of the flour', () => {
    const { plan } = adapted(FROSTED, { budgetG: 10, way: 'lighter' });
    expect(plan.met).toBe(false);
    expect(plan.swaps.map(({ from }) => from?.food)).toContain('powdered sugar');
  });
});
