/** What stands in does the work of what went: a batter clings, a pudding sets, a beaten dough drops. */
import { describe, expect, it } from 'vitest';
import type { Adaptation } from '../../../engine/model.ts';
import { adapted, broughtBy, dishesOf, plate, swapOf } from '../pasted.ts';

const fried = dishesOf('breaded-food');

const everyWay = ({ plan, ways }: Adaptation) => [plan, ...ways.map((way) => way.plan)];

const BATTERED = fried(
  'Battered haddock wraps',
  [
    '400 g haddock, in strips',
    '130 g flour',
    '1 tsp baking powder',
    '250 ml cold beer',
    'oil for frying',
    '8 small corn tortillas',
    '120 g mayonnaise',
    '1 tbsp lime juice',
  ],
  [
    'Whisk the flour and baking powder. Stir in the beer until just smooth.',
    'Heat the oil to 190 °C. Dip the fish in the batter, let it drip and fry for 3 minutes.',
    'Stir the mayonnaise with the lime juice. Fill the warm tortillas with fish and sauce.',
  ],
);

describe('a batter', () => {
  it('is no dry coat of nuts, and its sauce keeps its fat', () => {
    const result = adapted(BATTERED, { budgetG: 12 });
    const ids = everyWay(result).flatMap(({ items }) =>
      items.filter(({ grams }) => grams > 0).map(({ foodId }) => foodId),
    );
    const isAlmondAlone = ids.includes('almond-flour') && !ids.includes('whey-protein-isolate');
    expect(isAlmondAlone).toBe(false);
    expect(swapOf(result, /mayonnaise/)).toBeUndefined();
  });
});

describe('a pudding of semolina', () => {
  const pudding = plate(
    'Creamy semolina pudding',
    'Serves 4',
    ['1 litre milk', '120 g semolina', '60 g sugar', '1 pinch of salt'],
    [
      'Bring the milk, sugar and salt to the boil. Trickle in the semolina, stirring.',
      'Cook gently for 5 minutes and let it swell.',
    ],
  );

  it('keeps half of it, and no gum stands for the rest', () => {
    for (const { items } of everyWay(adapted(pudding))) {
      expect(items.some(({ foodId }) => /xanthan|guar|psyllium|gum/.test(foodId))).toBe(false);
      const kept = items.find(({ foodId }) => foodId === 'semolina');
      expect(kept?.grams).toBeGreaterThanOrEqual(55);
    }
  });
});

describe('a dough that is beaten and drops into the water', () => {
  const beaten = plate(
    'Cheese spaetzle with onions',
    'Serves 4',
    ['400 g flour', '4 eggs', '150 ml sparkling water', '1 tsp salt', '300 g mountain cheese'],
    [
      'Beat the flour with the eggs, water and salt until the batter makes bubbles.',
      'Press it through a spaetzle maker into boiling water and lift them out once they float.',
      'Layer with the cheese and melt it in the oven.',
    ],
    ['fresh-pasta'],
  );

  it('gets no powder of gluten', () => {
    for (const { items } of everyWay(adapted(beaten)))
      expect(items.some(({ foodId }) => foodId === 'vital-wheat-gluten')).toBe(false);
  });
});

describe('lentils', () => {
  const soup = plate(
    'Lentil stew with sausages',
    'Serves 6',
    [
      '400 g brown lentils',
      '300 g potatoes',
      '3 carrots',
      '1 onion',
      '1.5 litres vegetable stock',
      '6 frankfurters',
    ],
    [
      'Simmer the lentils in the stock with onion and carrots for 25 minutes.',
      'Add the diced potatoes and cook for 20 minutes more. Warm the frankfurters in the stew.',
    ],
  );

  it('of a stew give way to no soy crumbs, and half of them stay', () => {
    for (const { items } of everyWay(adapted(soup))) {
      expect(items.some(({ foodId }) => foodId === 'textured-soy')).toBe(false);
      const kept = items.find(({ foodId }) => foodId === 'lentils-dry');
      expect(kept?.grams).toBeGreaterThanOrEqual(195);
    }
  });
});

describe('sheets of pasta', () => {
  const lasagne = plate(
    'Baked lasagne with beef',
    'Serves 8',
    [
      '400 g dried lasagne sheets',
      '700 g ground beef',
      '700 g passata',
      '250 g ricotta',
      '200 g mozzarella',
    ],
    [
      'Brown the beef, add the passata and simmer for 40 minutes.',
      'Layer sauce, lasagne sheets, ricotta and mozzarella in a dish and bake for 40 minutes.',
    ],
    ['pasta-dish'],
  );

  it('go all one way', () => {
    const swap = swapOf(adapted(lasagne), /lasagne/);
    expect(swap?.to.length).toBe(1);
    expect(swap?.keptGrams).toBe(0);
  });
});

describe('the rice of a bowl of raw fish', () => {
  const bowl = plate(
    'Salmon poke bowls',
    'Serves 4',
    [
      '300 g sushi rice',
      '2 tbsp rice vinegar',
      '1 tbsp sugar',
      '450 g raw salmon, cubed',
      '4 tbsp soy sauce',
      '1 avocado',
      '1 cucumber',
    ],
    [
      'Rinse the sushi rice and cook it in 350 ml water. Fold in vinegar and sugar.',
      'Toss the salmon with the soy sauce.',
      'Divide the rice between four bowls and top with salmon, avocado and cucumber.',
    ],
    ['rice-dish'],
  );

  it('may be cauliflower, as nothing is rolled', () => {
    expect(broughtBy(adapted(bowl), /rice$/)).toEqual(['cauliflower']);
  });
});

describe('a burger of beans', () => {
  const burgers = plate(
    'Spiced black bean burgers',
    'Makes 6 burgers',
    [
      '480 g canned black beans, drained',
      '1 onion',
      '60 g breadcrumbs',
      '2 eggs',
      '80 g feta',
      '6 hamburger buns',
    ],
    [
      'Dry the beans in the oven for 15 minutes and pulse them with onion, breadcrumbs, eggs and feta.',
      'Form into 6 patties and fry. Serve on the buns.',
    ],
  );

  it('is of beans', () => {
    for (const { items } of everyWay(adapted(burgers)))
      expect(items.some(({ foodId }) => foodId.startsWith('mushroom'))).toBe(false);
  });
});

describe('small pasta in a soup of beans', () => {
  it('is no long strand', () => {
    const soup = plate(
      'Pasta e fagioli',
      'Serves 4',
      ['300 g dried borlotti beans', '200 g dried pasta', '80 g pancetta', '250 g passata'],
      [
        'Soak the beans for 12 hours and boil them for 80 minutes.',
        'Fry the pancetta, add the passata and the beans with their water and cook for 20 minutes.',
        'Add the pasta and cook, stirring, until done.',
      ],
    );
    for (const { items } of everyWay(adapted(soup)))
      expect(items.some(({ foodId }) => /konjac-noodles|zucchini/.test(foodId))).toBe(false);
  });
});
