/** The liquid of a pot goes with what drinks it. */
import { describe, expect, it } from 'vitest';
import { adapted, dishesOf, type Pasted } from '../pasted.ts';

const dish = dishesOf('rice-dish');

const RISOTTO = dish(
  'Leek risotto',
  ['300 g risotto rice', '1 l vegetable stock', '1 leek', '40 g butter', '50 g parmesan'],
  [
    'Soften the leek in half of the butter and stir in the rice.',
    'Add the stock by the ladle, stirring, until it is taken up, about 18 minutes.',
    'Beat in the rest of the butter and the parmesan.',
  ],
);

const BY_THE_STEP = dish(
  'Risotto with peas',
  ['190 g risotto rice', '480 g water', '1 onion', '30 g butter', '40 g parmesan'],
  [
    'Put onion and butter in the bowl and fry 3 minutes.',
    'Add the rice.',
    'Close the lid.',
    'Fry 2 minutes at speed 1.',
    'Add the water.',
    'Cook 15 minutes, then stir in the parmesan.',
  ],
);

const STEW = dish(
  'Sausage stew',
  ['150 g elbow pasta', '1.2 l water', '400 g kidney beans', '300 g smoked sausage', '1 onion'],
  [
    'Simmer sausage, beans and onion in the water for 30 minutes.',
    'Add the pasta to the water and cook 8 minutes.',
  ],
);

const PILAF = dish(
  'Spiced pilaf',
  ['250 g basmati rice', '500 ml water', '1 onion', '2 tbsp oil', '1 tsp cumin'],
  [
    'Soften the onion in the oil with the cumin and stir in the rice.',
    'Pour in the water, cover and cook 15 minutes, until it is all taken up.',
  ],
);

const DRAINED = dish(
  'Rice with peas',
  ['250 g basmati rice', '1.5 l water', '300 g peas', '40 g butter'],
  ['Boil the rice in the water and drain it well.', 'Stir in peas and butter.'],
);

const DRAINED_ELSEWHERE = dish(
  'Espaguetis con carne',
  ['400 g de espaguetis', '1 l de agua', '400 g de carne picada', '400 g de tomate triturado'],
  [
    'Sofríe la carne y añade el tomate.',
    'Hierve el agua, añade los espaguetis y cuece 10 minutos. Escurre y sirve con la salsa.',
  ],
);

const SOUP = dish(
  'Chicken and rice soup',
  ['150 g long grain rice', '900 ml chicken stock', '400 g chicken breast', '2 carrots'],
  ['Simmer chicken, carrots and rice in the stock for 20 minutes.'],
);

/** Grams of a liquid a gram of dry rice has, before and after; null when no rice is left. */
function liquid(recipe: Pasted, food: RegExp) {
  const { plan, ingredients } = adapted(recipe, { way: 'within' });
  const line = ingredients.find(({ match }) => food.test(match?.foodName ?? ''));
  const now = plan.items.find(
    ({ key, foodId }) => key === line?.key && foodId === line?.match?.foodId,
  );
  return {
    before: line?.weight?.grams.best ?? Number.NaN,
    now: now?.grams ?? Number.NaN,
    swaps: plan.swaps.filter(({ key, to }) => key === line?.key && to.length === 0),
    changed: plan.swaps.length > 0,
  };
}

const PORRIDGE = dish(
  'Orange oatmeal',
  ['240 g rolled oats', '700 ml orange juice', '500 ml oat milk', '1 pinch salt'],
  ['Bring oats, juice, milk and salt to a boil and simmer for 5 minutes.'],
);

describe('liquid of a pot', () => {
  it.each([
    ['a risotto', RISOTTO, /stock/],
    ['a risotto told step by step', BY_THE_STEP, /water/],
    ['a pilaf', PILAF, /water/],
  ] as const)('falls with the rice of %s, and says why', (_, recipe, food) => {
    const { before, now, swaps } = liquid(recipe, food);
    expect(now).toBeLessThanOrEqual(0.6 * before);
    expect(now).toBeGreaterThanOrEqual(0.15 * before);
    expect(swaps[0]?.why).toMatch(/takes it up/);
  });

  it('leaves the rest of the rice as much as it had', () => {
    const { plan, ingredients } = adapted(BY_THE_STEP, { way: 'within' });
    const shareOf = (food: RegExp): number => {
      const line = ingredients.find(({ match }) => food.test(match?.foodName ?? ''));
      const now = plan.items.find(({ foodId }) => foodId === line?.match?.foodId)?.grams ?? 0;
      return now / (line?.weight?.grams.best ?? Number.NaN);
    };
    expect(shareOf(/water/)).toBeGreaterThanOrEqual(shareOf(/rice/) - 0.05);
  });

  it('falls in a stew by what its pasta drank', () => {
    const { before, now, changed } = liquid(STEW, /water/);
    expect(changed).toBe(true);
    expect(now).toBeLessThan(0.9 * before);
    expect(now).toBeGreaterThan(0.6 * before);
  });

  it.each([
    ['water that is poured off', DRAINED, /water/],
    ['water that is poured off on a Spanish page', DRAINED_ELSEWHERE, /water/],
    ['a soup', SOUP, /stock/],
  ] as const)('stays in %s', (_, recipe, food) => {
    const { before, now, changed } = liquid(recipe, food);
    expect(changed).toBe(true);
    expect(now).toBe(before);
  });

  it('is told once: the method does not ask for a fifth of what is less already', () => {
    const method = adapted(PILAF, { way: 'within' })
      .steps.map(({ after }) => after)
      .join('\n');
    expect(method).not.toMatch(/a fifth/);
  });
});

describe('a meal that the method calls by another word', () => {
  it('has its liquid from its own group', () => {
    const polenta = dish(
      'Polenta',
      ['250 g cornmeal', '1.2 l vegetable stock', '40 g butter'],
      ['Bring the stock to the boil and rain it in, stirring.', 'Beat in the butter.'],
    );
    const { before, now } = liquid(polenta, /stock/);
    expect(now).toBeLessThan(0.85 * before);
  });

  it('takes what stands in for juice as liquid of the pot too', () => {
    const { plan, ingredients } = adapted({ ...PORRIDGE, family: ['other'] }, { way: 'within' });
    const oats = ingredients[0]?.weight?.grams.best ?? Number.NaN;
    const nowOats = plan.items.find(({ foodId }) => foodId === 'rolled-oats')?.grams ?? 0;
    const nowLiquid = plan.items
      .filter(({ foodId }) => /juice|milk|water/.test(foodId))
      .reduce((sum, { grams }) => sum + grams, 0);
    expect(nowOats).toBeLessThan(0.7 * oats);
    expect(plan.items.some(({ foodId }) => foodId === 'water')).toBe(true);
    expect(nowLiquid).toBeLessThan(0.85 * 1200);
  });
});

describe('a grain in plain water of its own', () => {
  it('has as much less of it as there is less to take it up', () => {
    const salad = dishesOf('other')(
      'Quinoa salad with herbs',
      ['170 g quinoa', '480 ml water', '200 g cherry tomatoes', '1 cucumber', '60 ml olive oil'],
      [
        'Combine the quinoa and water in a pan. Bring to a boil, cover and simmer for 15 minutes. Spread out to cool.',
        'Toss the quinoa with the tomatoes, cucumber and oil.',
      ],
    );
    const { plan } = adapted(salad, { budgetG: 12, way: 'within' });
    const gramsOf = (id: string) => plan.items.find(({ foodId }) => foodId === id)?.grams ?? 0;
    const kept = gramsOf('quinoa-dry');
    expect(kept).toBeLessThan(120);
    expect(gramsOf('water')).toBeLessThan((480 * (kept + 25)) / 170);
  });
});
