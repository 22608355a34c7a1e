/** Plates near their budget or above it: the changes that pay, no token rests, and what a cook would not do. */
import { describe, expect, it } from 'vitest';
import { DEFAULT_GOALS } from '../../../engine/model.ts';
import { readDish } from '../../../engine/plan/dish/read-dish.ts';
import { choicesFor } from '../../../engine/plan/model/decisions.ts';
import { foods, ingredientsOf, type Part } from '../build.ts';
import { adapted, broughtBy, plate, swapOf } from '../pasted.ts';

const FILLED_PEPPERS = plate(
  'Filled peppers with potatoes',
  'Serves 8',
  [
    '4 large tomatoes',
    '4 green peppers',
    '6 tbsp olive oil',
    '4 tbsp tomato paste',
    '1 large onion',
    '1 zucchini',
    '1 carrot',
    '500 g minced beef',
    '185 g rice',
    '400 g chopped tomatoes',
    '640 g potatoes, cut in wedges',
    '150 g feta',
  ],
  [
    'Soften onion, zucchini and carrot in the oil, brown the beef, stir in the rice and chopped tomatoes and simmer 10 minutes.',
    'Fill tomatoes and peppers with it.',
    'Tuck the potatoes between them, spread with the tomato paste and bake 75 minutes. Serve with the feta.',
  ],
  ['potato-dish'],
);

describe('a plate that stays above its budget', () => {
  it('goes on to the next change while it brings enough', () => {
    const result = adapted(FILLED_PEPPERS, { way: 'within' });
    expect(result.plan.met).toBe(false);
    expect(swapOf(result, /rice/)?.keptGrams).toBe(0);
    expect(swapOf(result, /potatoes/)?.keptGrams).toBeLessThan(300);
  });

  it('is not advised to be shared out to nearly twice as many', () => {
    const { plan } = adapted(FILLED_PEPPERS, { way: 'within', budgetG: 10 });
    expect(plan.met).toBe(false);
    expect(plan.limits.map(({ code }) => code)).not.toContain('MORE_SERVINGS');
  });
});

const STUFFED_MEATBALLS = plate(
  'Pearl pasta soup with meatballs',
  'Serves 4',
  [
    '180 g acini di pepe',
    '450 g minced beef',
    '55 g dry breadcrumbs',
    '1 egg',
    '1.4 l chicken stock',
    '100 g spinach',
    '1 carrot',
  ],
  [
    'Mix mince, breadcrumbs and egg, roll into meatballs and brown them.',
    'Simmer stock, carrot and meatballs 10 minutes, add the acini and cook 8 minutes.',
    'Stir in the spinach.',
  ],
  ['pasta-dish'],
);

const BUDGETS = [10, 11, 12, 13, 14, 15, 16, 17, 18];

describe('crumbs that something stands in for', () => {
  it.each(BUDGETS)('are gone, or at least a third of them stays: %d g', (budgetG) => {
    const swap = swapOf(adapted(STUFFED_MEATBALLS, { budgetG }), /breadcrumbs/);
    const kept = swap === undefined || swap.to.length === 0 ? 1 : swap.keptGrams / 55;
    expect(kept === 0 || kept >= 0.33).toBe(true);
  });
});

const DUSTED = plate(
  'Chicken with sun-dried tomatoes',
  'Serves 6',
  [
    '900 g chicken breast',
    '30 g plain flour, for dredging',
    '280 g sun-dried tomatoes in oil, drained',
    '2 shallots',
    '250 g mushrooms',
    '150 ml chicken stock',
    '300 ml milk',
  ],
  [
    'Dredge the chicken in the flour and brown it in oil.',
    'Add shallots, mushrooms, tomatoes, stock and milk and simmer 15 minutes.',
  ],
  ['breaded-food'],
);

describe('a dusting of flour', () => {
  it.each([5, 6, 7, 8, 9, 10])(
    'is made less, not replaced by something bought: %d g',
    (budgetG) => {
      expect(broughtBy(adapted(DUSTED, { budgetG }), /flour/)).toEqual([]);
    },
  );
});

const GRAVY = plate(
  'Country sausage with milk gravy',
  'Serves 4',
  ['450 g pork sausage', '45 g plain flour', '900 ml whole milk', '30 g butter'],
  [
    'Brown the sausage and lift it out.',
    'Melt the butter, whisk in the flour, then the milk, and stir until the gravy has thickened.',
  ],
  ['thickened-sauce'],
);

describe('milk that is thickened', () => {
  it('does not give way to a thin nut drink', () => {
    const thin = ['almond-milk-unsweetened', 'pea-milk'];
    expect(thin).not.toContain(broughtBy(adapted(GRAVY), /milk/)[0]);
  });
});

const CRISPY_RICE = plate(
  'Crispy rice salad',
  'Serves 4',
  ['400 g cooked rice', '3 tbsp oil', '5 small cucumbers', '80 g peanuts', '2 tbsp soy sauce'],
  [
    'Toss the rice with the oil and bake until crisp.',
    'Toss with cucumbers, peanuts and soy sauce.',
  ],
  ['rice-dish'],
);

describe('rice that is baked crisp', () => {
  it('is not replaced by what does not crisp', () => {
    expect(broughtBy(adapted(CRISPY_RICE), /rice/)).toEqual([]);
  });
});

const LAYERED = plate(
  'Aardappelschotel uit de oven',
  '6 personen',
  ['1 kg aardappelen', '500 gram gehakt', '200 ml kookroom', '1 ui', '200 g fetakaas'],
  [
    'Schil de aardappelen en snijd ze in dunne plakjes.',
    'Bak het gehakt met de ui.',
    'Leg in een ovenschaal een laag aardappel, het gehakt en weer een laag aardappel, giet de kookroom erover en bak 50 minuten.',
  ],
  ['potato-dish'],
);

describe('potatoes in slices', () => {
  it('give way to what can be sliced', () => {
    const brought = broughtBy(adapted(LAYERED), /aardappel/);
    expect(brought.length).toBeGreaterThan(0);
    expect(brought).not.toContain('cauliflower');
  });
});

const LOW_FODMAP = plate(
  'Low FODMAP creamy potato soup with ham',
  'Serves 4',
  ['800 g potatoes', '200 g cooked ham', '100 g carrots', '700 ml stock', '30 g butter'],
  ['Fry ham and carrots in the butter, add potatoes and stock and simmer until tender.'],
  ['potato-dish'],
);

describe('a promise of few FODMAPs', () => {
  it('rules out vegetables that keep it only in small helpings', () => {
    const limited = ['chayote', 'turnip', 'rutabaga', 'zucchini', 'kohlrabi'];
    const { plan } = adapted(LOW_FODMAP);
    const brought = plan.swaps.flatMap(({ to }) => to.map(({ foodId }) => foodId));
    expect(brought.filter((id) => limited.includes(id))).toEqual([]);
  });
});

const FISH_AND_CHIPS = plate(
  'Baked fish and chips with peas',
  'Serves 4',
  [
    '850 g potatoes',
    '1 tbsp oil',
    '75 g dry breadcrumbs',
    '1 egg',
    '4 cod fillets',
    '300 g mushy peas',
  ],
  [
    'Cut the potatoes into wedges, toss with the oil and roast 40 minutes.',
    'Dip the fillets in egg, then breadcrumbs, and bake 20 minutes.',
    'Heat the peas and serve with fish and chips.',
  ],
  ['breaded-food'],
);

describe('a heavy rework of a few ordinary foods', () => {
  it('is taken when nothing lighter comes near the budget', () => {
    const result = adapted(FISH_AND_CHIPS);
    expect(result.plan.met).toBe(true);
    expect(result.plan.shopping.filter((one) => one.availability === 'speciality')).toEqual([]);
  });
});

const BRIE = plate(
  'Baked brie with apple',
  'Serves 5',
  [
    '230 g brie',
    '125 g puff pastry',
    '20 g honey',
    '27 g maple syrup',
    '36 g apple butter',
    '1 apple, sliced',
    '30 g butter',
  ],
  [
    'Set the brie on the pastry, spread with honey and apple butter, wrap and bake 25 minutes.',
    'Cook the apple in butter and maple syrup and spoon over.',
  ],
);

describe('a few spoons of something sweet on a plate', () => {
  it.each([12, 13, 14, 15, 16])('are made less, not bought anew: %d g', (budgetG) => {
    const result = adapted(BRIE, { budgetG });
    expect([...broughtBy(result, /honey/), ...broughtBy(result, /maple/)]).toEqual([]);
    expect(broughtBy(result, /apple butter/).length).toBeLessThan(3);
  });
});

/** Cost of swapping the crumbs for almond in a dish with so many g of them for four. */
function crumbCost(grams: number, family: 'pasta-dish' | 'breaded-food'): number | undefined {
  const parts: Part[] = [
    ['pasta-dry', 300],
    ['breadcrumbs-dry', grams],
    ['cheddar', 200],
  ];
  const sample = { title: 'Cheesy bake', servings: 4, parts, family };
  const options = { family, servings: 4, goals: DEFAULT_GOALS, foods, title: sample.title };
  const dish = readDish(ingredientsOf(sample), options);
  return choicesFor(dish).find(({ candidate }) => candidate?.rule.id === 'crumbs-to-almond')?.cost;
}

describe('crumbs strewn over a dish', () => {
  it('matter half as much as a coat', () => {
    const coat = crumbCost(40, 'breaded-food') ?? Number.NaN;
    expect(crumbCost(40, 'pasta-dish')).toBeCloseTo(coat / 2, 6);
    expect(crumbCost(80, 'pasta-dish')).toBeCloseTo(coat, 6);
  });
});
