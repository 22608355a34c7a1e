/** Vegetables in place of potatoes are cut, boiled and mashed as they need it, and what binds them is told apart. */
import { describe, expect, it } from 'vitest';
import type { Adaptation } from '../../../engine/model.ts';
import { adapted, dishesOf, type Pasted } from '../../plan/pasted.ts';

const dish = dishesOf('potato-dish');

const MASH = dish(
  'Mashed potatoes with chives',
  ['1 kg potatoes', '80 ml milk', '60 g butter', '1 tsp salt', '2 tbsp chives'],
  [
    'Peel the potatoes and cut them into quarters.',
    'Cover the potatoes with cold water and boil 20 minutes, until tender.',
    'Drain, add milk, butter and salt and mash the potatoes.',
    'Strew with the chives.',
  ],
);

const CAKES = dish(
  'Grated potato pancakes',
  ['1 kg potatoes', '1 onion', '2 eggs', '30 g flour', '4 tbsp oil'],
  [
    'Coarsely grate the potatoes: half of the potatoes fine, the other half coarse.',
    'Squeeze dry, mix with onion, eggs and flour and fry in the oil.',
  ],
);

const POT = dish(
  'Beef and potato pot',
  ['600 g beef', '1 kg potatoes', '2 onions', '500 ml beef stock', '2 tbsp oil'],
  [
    'Peel the potatoes and cut them into chunks.',
    'Brown the beef with the onions.',
    'Add the stock and the potatoes and simmer 40 minutes.',
  ],
);

const method = ({ steps }: Adaptation): string => steps.map(({ after }) => after).join('\n');

const toldFor = (recipe: Pasted, foodId: string): string | null => {
  const result = adapted(recipe, { way: 'within' });
  const has = result.plan.items.some((item) => item.foodId === foodId && item.grams > 0);
  return has ? method(result) : null;
};

describe('what binds a vegetable that stands in', () => {
  it('cream cheese is not cut into quarters', () => {
    const text = toldFor(MASH, 'cream-cheese') ?? '';
    expect(text).toMatch(
      /Once drained, dry all of it [^.]*the cream cheese goes in as you mash\. Drain/,
    );
    expect(text).not.toMatch(/(?:Peel|cut|Cover)[^.]*cream cheese/);
  });

  it('egg is not grated', () => {
    const text = method(adapted(CAKES));
    expect(text).not.toMatch(/grate[^.;]*\begg/i);
    expect(text).toMatch(/egg goes in with the shreds/);
  });
});

describe('the time of what stands in for potatoes in a pot', () => {
  it('is told', () => {
    const text = method(
      adapted(POT, { excludedFoods: ['turnip', 'chayote', 'celeriac', 'rutabaga'] }),
    );
    if (/cauliflower/.test(text))
      expect(text).toMatch(
        /(?:For the last 10-12 minutes add the cauliflower in large florets|in large florets it needs only the last 10-12 minutes)/,
      );
    const roots = method(adapted(POT, { excludedFoods: ['turnip', 'chayote', 'cauliflower'] }));
    expect(roots).toMatch(/into pieces of about 1\.5 cm/);
  });
});

describe('the time of cauliflower beside the boiled potatoes', () => {
  const OTHERS = ['turnip', 'chayote', 'celeriac', 'rutabaga', 'kohlrabi', 'radish'];
  const bites = dish(
    'Cod cakes with potatoes',
    ['400 g cod', '700 g potatoes', '2 eggs', '30 g breadcrumbs', '4 tbsp oil', '1 tsp salt'],
    [
      'Mix the cod with the eggs and breadcrumbs, mash down on the mix and shape cakes.',
      'Cut the potatoes into small bite-size pieces, cover with water and boil 15 minutes.',
      'Fry the cakes in the oil.',
      'Transfer the potatoes to plates and lay the cakes on top.',
    ],
  );
  const soup = dish(
    'Cabbage soup',
    ['500 g white cabbage', '400 g potatoes', '1 onion', '1 l vegetable stock', '2 tbsp oil'],
    [
      'Peel the potatoes and cut them small.',
      'Fry the onion in the oil, add cabbage, potatoes and stock and simmer 25 minutes.',
      'Purée finely and serve.',
    ],
  );

  it('follows the size the page cuts', () => {
    const text = method(adapted(bites, { way: 'within', budgetG: 8, excludedFoods: OTHERS }));
    expect(text).toMatch(/cauliflower/);
    expect(text).toMatch(
      /(?:For the last 6-8 minutes add the cauliflower\.|cauliflower \(keep it back: in small pieces it needs only the last 6-8 minutes\))/,
    );
    expect(text).not.toMatch(/large florets/);
    expect(text).toMatch(/Transfer the (?:potatoes and )?cauliflower/);
  });

  it('is not said of a soup that is puréed', () => {
    const text = method(adapted(soup, { way: 'within', budgetG: 8, excludedFoods: OTHERS }));
    expect(text).toMatch(/cauliflower/);
    expect(text).not.toMatch(/large florets|6-8 minutes/);
  });
});

describe('dumplings of mashed potatoes', () => {
  const DUMPLINGS: Pasted = {
    ...dish(
      'Dumplings with potato and curd',
      [
        'For the filling:',
        '900 g potatoes',
        '200 g farmer cheese',
        '1 onion',
        'For the dough:',
        '350 g flour',
        '120 ml milk',
        '20 g butter',
      ],
      [
        'Place the potatoes in a pot, cover with water and cook until tender.',
        'Mash the potatoes and mix with the farmer cheese and the onion.',
        'Make a dough of the flour, milk and butter.',
        'Fill, seal and boil the dumplings.',
      ],
    ),
    family: ['fresh-pasta'],
  };
  const text = method(adapted(DUMPLINGS, { budgetG: 15, excludedFoods: ['turnip', 'rutabaga'] }));

  it('boil the roots once', () => {
    expect(text).not.toMatch(/Boil the roots/);
  });

  it('say where the butter of the mash goes in', () => {
    expect(text).toMatch(/Mash the potatoes and celeriac.*butter too\./);
  });
});

describe('chips that the page fries', () => {
  it('are salted and blotted once they are cut, and not roasted as well', () => {
    const chips = dish(
      'Fish and chips',
      [
        '1 kg potatoes',
        '800 g cod fillets',
        '150 g flour',
        '1 tsp baking powder',
        '220 ml cold beer',
        'oil for frying',
      ],
      [
        'Peel the potatoes and cut into thick chips. Blanch in oil at 140 °C for 6 minutes; drain.',
        'Whisk flour, baking powder and beer to a batter. Dip the fish and fry for 6 minutes.',
        'Fry the chips again at 190 °C for 3 minutes.',
      ],
    );
    const text = method(adapted(chips, { way: 'within' }));
    expect(text).toMatch(/thick chips\. Salt the [a-z]+ and blot\. Blanch/);
    expect(text).not.toMatch(/roast/);
  });
});
