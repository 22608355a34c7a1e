import { describe, expect, it } from 'vitest';
import {
  clauseHolds,
  heldFor,
  isTold,
  takesLong,
  withObject,
  withoutSifting,
} from '../../../engine/rewrite/handling/spoken-handling.ts';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

describe('handling told with its food', () => {
  it.each([
    [
      'Steam until just tender, drain and dry well.',
      'Steam the swede until just tender, drain and dry well.',
    ],
    ['Rinse, press dry and fry hot.', 'Rinse the swede, press dry and fry hot.'],
    ['Boil it first; it doubles in weight.', 'Boil the swede first; it doubles in weight.'],
    ['Stir in at the end.', 'Stir in the swede at the end.'],
    ['Cut in bites and coat.', 'Cut the swede in bites and coat.'],
    ['Dice small.', 'Dice the swede small.'],
    ['Fry or bake at no more than 170 °C.', 'Fry or bake the swede at no more than 170 °C.'],
  ])('%s', (method, told) => {
    expect(withObject(method, 'swede')).toBe(told);
  });

  it.each([
    'Toast the nuts.',
    'Add a pinch of soda.',
    'Let the batter stand 10 minutes.',
    'Fry thin omelettes, then fill.',
    'Beat 0.1 g gum into the whites.',
  ])('leaves %s, which has its object', (method) => expect(withObject(method, 'swede')).toBeNull());

  it('knows what is done before, what follows and what takes long', () => {
    expect([isTold('Stir in at the end.'), isTold('Slice thin.')]).toEqual([true, false]);
    expect([takesLong('Soak overnight.'), takesLong('Slice thin.')]).toEqual([true, false]);
  });

  it('dissolves a sweetener in a liquid, not in butter', () => {
    const method = 'Where it goes into a liquid, dissolve it warm; it may crystallise once cold.';
    expect(heldFor(method, 'Cream the butter and sugar until pale.')).toBe('');
    expect(heldFor(method, 'Heat the milk with the sugar.')).not.toBe('');
  });
});

it('sifts nothing that the page sifts', () => {
  const method = 'Sift it; an icing takes a spoon less liquid.';
  expect(withoutSifting(method, 'Sift the sugar into the bowl.')).toBe(
    'an icing takes a spoon less liquid.',
  );
  expect(withoutSifting(method, 'Stir in the sugar.')).toBeNull();
});

it('asks for no zest where the page has its own', () => {
  const clause = 'Add a little grated zest of the fruit for taste.';
  expect(clauseHolds(clause, 'Pour in the juice.')).toBe(true);
  expect(clauseHolds(clause, 'Top with the zest.')).toBe(false);
});

it('speaks of an icing only where there is one', () => {
  const clause = 'an icing takes a spoon less liquid, as it draws moisture.';
  expect(clauseHolds(clause, 'Whip the cream.')).toBe(false);
  expect(clauseHolds(clause, 'Stir the icing.')).toBe(true);
  expect(clauseHolds(clause, 'Beat the icing sugar into the cheese.')).toBe(false);
  expect(heldFor('Roast rather than boil.', 'Roast for an hour.')).toBe('');
});

it('bakes what is made of raw egg or dough, though nothing else of the dish is baked', () => {
  const cold = 'Layer the sponge with cream and berries and chill.';
  for (const clause of ['bake 15 minutes at 165 °C', 'Bake thin sheets 10 minutes at 175 °C'])
    expect(clauseHolds(clause, cold)).toBe(true);
  expect(clauseHolds('Dice small, roast 25 minutes at 210 °C', cold)).toBe(false);
});

describe('handling in the method', () => {
  const soup = makeRecipe(
    'Potato soup',
    ['600 g potatoes', '1 litre vegetable stock'],
    ['Heat the stock.', 'Bring to the boil, then add the potatoes and simmer for 15 minutes.'],
  );
  const steps = (method: string): string[] => {
    const read = understand(soup);
    const plan = makePlan('other', read, [{ key: '0', kept: 0, to: [['kohlrabi', 600]] }]);
    const swaps = plan.swaps.map((swap) => ({ ...swap, method }));
    return rewriteRecipe(soup, read, { ...plan, swaps }, { foods, region: 'eu' }).steps.map(
      ({ after }) => after,
    );
  };

  it('stands in the step that takes the food, right before it', () => {
    const [heat, boil, ...more] = steps('Dice small.');
    expect(heat).toBe('Heat the stock.');
    expect(boil).toMatch(/^Dice the kohlrabi small\. Bring to the boil, then add the kohlrabi/);
    expect(more).toEqual([]);
  });

  it('stands behind it where it tells what follows', () => {
    expect(steps('Stir in at the end.')[1]).toMatch(
      /15 minutes\. Stir in the kohlrabi at the end\.$/,
    );
  });

  it('is a step of its own where it takes long', () => {
    expect(steps('Soak 4 hours.')[1]).toBe('Soak the kohlrabi 4 hours.');
  });
});

describe('an icing with less liquid', () => {
  const said = (steps: string[], milk: number): string => {
    const dish = makeRecipe(
      'Buns',
      ['200 g powdered sugar', '40 g milk', '200 g cream cheese'],
      steps,
    );
    const read = understand(dish);
    const plan = makePlan('cake', read, [
      { key: '0', kept: 0, to: [['allulose-powdered', 200, 'sweetness']] },
      { key: '1', kept: milk, to: [] },
    ]);
    const method = 'Sift it; an icing takes a spoon less liquid, as it draws moisture.';
    const swaps = plan.swaps.map((swap) => ({ ...swap, method }));
    return rewriteRecipe(dish, read, { ...plan, swaps }, { foods, region: 'eu' })
      .steps.map(({ after }) => after)
      .join(' ');
  };
  const ICING =
    'For the icing stir the powdered sugar and the milk. Spread it on the cream cheese.';

  it('is told where the page has its own liquid still', () => {
    expect(said([ICING], 40)).toMatch(/spoon less liquid/);
  });
  it('is not told once the liquid was cut', () => {
    expect(said([ICING], 20)).not.toMatch(/less liquid/);
  });
  it('is not told of a filling', () => {
    const filling = 'Beat the cream cheese, powdered sugar and milk.';
    expect(said([filling, 'Finish with any glaze.'], 40)).not.toMatch(/less liquid/);
  });
});

it('drops the free choice beside a stand-in', () => {
  const dish = makeRecipe(
    'Bowl',
    ['300 g spaghetti', '2 carrots'],
    ['Boil the spaghetti, or pasta of choice. Slice the carrots, or any root you like.'],
  );
  const read = understand(dish);
  const plan = makePlan('other', read, [{ key: '0', kept: 0, to: [['soybean-pasta', 300]] }]);
  const [step] = rewriteRecipe(dish, read, plan, { foods, region: 'eu' }).steps;
  expect(step?.after).not.toMatch(/of choice/);
  expect(step?.after).toMatch(/Slice the carrots, or any root you like\./);
});

it.each([
  ['Boil the potatoes for 12 minutes.', false],
  ['Put the potatoes under the cheese.', true],
])('steams nothing that the page cooks as well: %s', (text, steamed) => {
  const dish = makeRecipe('Gratin', ['600 g potatoes', '100 g cheddar'], [text, 'Serve.']);
  const read = understand(dish);
  const plan = makePlan('other', read, [{ key: '0', kept: 0, to: [['cauliflower', 600]] }]);
  const swaps = plan.swaps.map((swap) => ({
    ...swap,
    method: 'Steam until just tender, drain and dry well before the sauce.',
  }));
  const steps = rewriteRecipe(dish, read, { ...plan, swaps }, { foods, region: 'eu' }).steps;
  expect(steps.some(({ after }) => /into florets and steam them/.test(after))).toBe(steamed);
});

describe('what its packet tells', () => {
  const told = (
    line: string,
    steps: string[],
    kept: number,
    food: string,
    method: string,
  ): string => {
    const dish = makeRecipe('Bowl', [line, '2 carrots'], steps);
    const read = understand(dish);
    const plan = makePlan('other', read, [{ key: '0', kept, to: [[food, 100]] }]);
    const swaps = plan.swaps.map((swap) => ({ ...swap, method }));
    return rewriteRecipe(dish, read, { ...plan, swaps }, { foods, region: 'eu' })
      .steps.map(({ after }) => after)
      .join(' ');
  };

  it('is not told once more in a later step', () => {
    const steps = [
      'Prepare the noodles according to package directions and drain.',
      'Heat the oil. Fry the noodles until golden, then add the carrots.',
    ];
    const method = 'Boil it first; it doubles in weight.';
    expect(told('300 g egg noodles', steps, 0, 'soybean-pasta-dry', method)).not.toMatch(/doubles/);
    const fried = ['Fry the noodles until golden, then add the carrots.'];
    expect(told('300 g egg noodles', fried, 0, 'soybean-pasta-dry', method)).toMatch(/doubles/);
  });

  it('is none of what the page has cooked already', () => {
    const text = told(
      '300 g cooked quinoa',
      ['Mix the quinoa and carrots.'],
      100,
      'cauliflower',
      '',
    );
    expect(text).not.toMatch(/packet/);
  });
});

it('speaks of a batter only where there is one', () => {
  const method = 'Add at the table rather than to the batter.';
  expect(heldFor(method, 'Whisk the syrup with the oil and toss with the oats.')).toBe('');
  expect(heldFor(method, 'Whisk the syrup into the batter.')).not.toBe('');
});
