/** What a cook would serve: sauces that hold, wrappers that fold, dippers and crumbs of which there is less. */
import { describe, expect, it } from 'vitest';
import { adapted, broughtBy, type Pasted, plate, swapOf } from '../pasted.ts';

describe('a sauce of pasta water', () => {
  const PEPPERED = plate(
    'Quick cacio e pepe',
    'Serves 2',
    ['180 g spaghetti', '90 g pecorino, grated', '2 tsp peppercorns'],
    [
      'Boil the spaghetti for 9 minutes and save a cup of its water.',
      'Stir the pecorino to a paste with some of the water and toss with the spaghetti and pepper.',
    ],
    ['pasta-dish'],
  );

  it('is bound with cheese where the water has no starch', () => {
    expect(broughtBy(adapted(PEPPERED, { way: 'within' }), /spaghetti/)).toEqual([
      'soybean-pasta-dry',
      'cream-cheese',
    ]);
  });

  it('says so after the pasta is drained, and boils no cheese', () => {
    const { steps } = adapted(PEPPERED, { way: 'within' });
    const text = steps.map(({ after }) => after ?? '').join(' ');
    expect(text).toContain('off the heat, stir in the cream cheese');
    expect(text).not.toMatch(/boil the soybean pasta and cream cheese/i);
  });
});

it('a white sauce is made with cream and water, not with a thin drink', () => {
  const result = adapted(
    plate(
      'Pasta with ham in white sauce',
      'Serves 4',
      [
        '225 g penne',
        '600 ml whole milk',
        '30 g butter',
        '20 g flour',
        '300 g cooked ham, diced',
        '120 g cheddar',
        '1 onion, chopped',
        '100 g mushrooms',
      ],
      [
        'Boil the penne for 11 minutes.',
        'Soften the onion in the butter, stir in the flour, then whisk in the milk until thick.',
        'Stir in cheddar, ham and mushrooms and fold in the penne.',
      ],
      ['pasta-dish'],
    ),
    { way: 'within', budgetG: 15 },
  );
  const brought = result.plan.items.map(({ foodId }) => foodId);
  expect(brought).not.toContain('almond-milk-unsweetened');
  expect(broughtBy(result, /milk/)).toEqual(['cream-heavy', 'water']);
});

it('large tortillas become smaller ones that fold, not omelettes', () => {
  const result = adapted(
    plate(
      'Turkey burritos',
      'Serves 4',
      [
        '4 large flour tortillas',
        '500 g ground turkey',
        '150 g long grain rice',
        '1 onion, chopped',
        '1 cup salsa',
        '100 g grated cheddar',
      ],
      [
        'Cook the rice in salted water for 15 minutes and drain.',
        'Brown the turkey with the onion and stir in the salsa.',
        'Fill the tortillas with rice, turkey and cheddar and roll them up.',
      ],
      ['rice-dish'],
    ),
    { way: 'within' },
  );
  expect(broughtBy(result, /tortillas/)).toEqual(['tortilla-low-carb']);
});

it('there are fewer dumplings, and not a parcel of omelette', () => {
  const result = adapted(
    plate(
      'Pan-fried dumplings',
      'Serves 4',
      ['350 g ground chicken', '150 g cabbage, chopped', '32 dumpling wrappers', '2 tbsp oil'],
      ['Mix chicken and cabbage, fill the wrappers.', 'Fry in the oil, add water and steam.'],
    ),
    { way: 'within' },
  );
  const swap = swapOf(result, /wrappers/);
  expect(swap?.to).toEqual([]);
  expect(swap?.keptGrams).toBeGreaterThan(60);
});

it('of fried strips in a soup there are fewer', () => {
  const result = adapted(
    plate(
      'Chicken tortilla soup',
      'Serves 4',
      [
        '6 corn tortillas, in strips',
        '400 g chicken breast',
        '1 litre chicken stock',
        '400 g canned tomatoes',
        '1 avocado',
        '60 ml oil for frying',
      ],
      [
        'Fry the tortilla strips in the oil.',
        'Simmer the rest for 20 minutes. Serve with the strips and avocado.',
      ],
    ),
    { way: 'within' },
  );
  expect(swapOf(result, /tortillas/)?.to).toEqual([]);
});

it('of all that is dipped in a fondue there is less', () => {
  const result = adapted(
    plate(
      'Cheese and ale fondue',
      'Serves 8',
      [
        '400 g cheddar, grated',
        '250 ml ale',
        '1 tbsp cornstarch',
        '1 loaf French bread (350 g), cubed',
        '3 apples, in wedges',
        '300 g small potatoes',
        '300 g broccoli florets',
      ],
      [
        'Boil the potatoes and steam the broccoli.',
        'Warm the ale, stir in cheddar and cornstarch until smooth.',
        'Serve with bread, apples, potatoes and broccoli to dip.',
      ],
      ['other', 'potato-dish', 'thickened-sauce'],
    ),
  );
  expect(swapOf(result, /apples/)?.to ?? null).toEqual([]);
});

it('a plate that would be left as it is goes on to the next changes where they bring it near', () => {
  const result = adapted(
    plate(
      'Lemony couscous salad',
      'Serves 4',
      [
        '200 g couscous',
        '250 ml boiling vegetable stock',
        '1 cucumber',
        '200 g cherry tomatoes',
        '100 g feta',
        '50 g raisins',
        '1 can (400 g) chickpeas, drained',
        '3 tbsp olive oil',
        '2 tbsp lemon juice',
      ],
      ['Pour the stock over the couscous and leave for 5 minutes.', 'Stir in everything else.'],
      ['rice-dish'],
    ),
    { way: 'within' },
  );
  expect(result.plan.swaps.length).toBeGreaterThan(0);
  expect(result.after.perServing.netCarbsG?.best ?? 99).toBeLessThan(31);
});

it('spoons of water that stir a starch smooth stay when the rice goes', () => {
  const result = adapted(
    plate(
      'Glazed chicken bowls',
      'Serves 4',
      [
        '600 g chicken thighs',
        '120 ml soy sauce',
        '2 tbsp honey',
        '1 tbsp cornstarch',
        '2 tbsp water',
        '300 g jasmine rice',
        '450 ml water',
        '300 g broccoli',
      ],
      [
        'Bring the rice and 450 ml water to the boil, cover and cook 12 minutes.',
        'Simmer soy sauce and honey. Stir the cornstarch with 2 tbsp water and add.',
        'Fry the chicken, pour over the sauce and serve with broccoli on the rice.',
      ],
      ['rice-dish'],
    ),
    { way: 'within' },
  );
  expect(swapOf(result, /2 tbsp water/)).toBeUndefined();
  expect(swapOf(result, /450 ml water/)?.keptGrams ?? 450).toBeLessThan(300);
});

it('tacos are tacos on shells of cheese, and half a shell is none', () => {
  const { plan } = adapted(
    plate(
      'Beef tacos',
      'Serves 4',
      [
        '500 g ground beef',
        '1 onion',
        '200 ml passata',
        '8 hard taco shells',
        '1 cup grated cheddar',
        '1 cup corn',
      ],
      [
        'Brown the beef with the onion, add the passata.',
        'Warm the taco shells and fill them with beef, corn and cheddar.',
      ],
    ),
  );
  const shells = plan.items.filter(({ foodId }) => foodId === 'tostada-shell');
  expect(plan.met).toBe(true);
  for (const { grams } of shells)
    expect((grams * 8) / 104).toBeCloseTo(Math.round((grams * 8) / 104), 5);
});

it('the honey of a smoothie goes before most of its fruit', () => {
  const result = adapted(
    plate(
      'Peach smoothie',
      'Serves 2',
      [
        '1 banana',
        '1 cup frozen peaches',
        '1/2 cup Greek yogurt',
        '2 tbsp honey',
        '1 cup almond milk',
      ],
      ['Blend until smooth.'],
    ),
    { way: 'within' },
  );
  expect(swapOf(result, /honey/)?.keptGrams ?? 99).toBeLessThan(12);
});

it('cream and cheese of a risotto are told once, at its end', () => {
  const { steps } = adapted(
    plate(
      'Pea risotto',
      'Serves 4',
      [
        '280 g arborio rice',
        '1 shallot',
        '1 litre hot chicken stock',
        '50 g butter',
        '150 g peas',
        '50 g parmesan, grated',
      ],
      [
        'Soften the shallot in half the butter, add the rice and stir for 2 minutes.',
        'Add the stock a ladle at a time, about 18 minutes.',
        'Stir in peas, the remaining butter and the parmesan and serve.',
      ],
      ['rice-dish'],
    ),
    { way: 'within' },
  );
  const text = steps.map(({ after }) => after).join('\n');
  expect(text.match(/heavy cream/g)).toHaveLength(1);
  expect(steps.findIndex(({ after }) => after.includes('heavy cream'))).toBeGreaterThan(
    steps.findIndex(({ after }) => after.includes('Soften the shallot')),
  );
});

it('a few fries beside their stand-in are a token, and go', () => {
  const { plan } = adapted(
    plate(
      'Loaded sausage rolls',
      'Serves 8',
      ['550 g frozen french fries', '700 g sausage, sliced', '8 large grinder rolls'],
      ['Bake the fries.', 'Fry the sausage.', 'Stuff the rolls with fries and sausage.'],
    ),
    { way: 'within' },
  );
  const fries = plan.items.find(({ foodId }) => foodId === 'potato-fries')?.grams ?? 0;
  expect(fries === 0 || fries >= 8 * 20).toBe(true);
});

describe('potatoes and what stands in for some of them', () => {
  const told = (recipe: Pasted): string =>
    adapted(recipe, { way: 'within' })
      .steps.map(({ after }) => after)
      .join('\n');

  it('go on one tray, whatever simmers later', () => {
    const text = told(
      plate(
        'Salmon with roasted potatoes',
        'Serves 4',
        [
          '4 salmon fillets',
          '60 ml honey',
          '60 ml soy sauce',
          '800 g baby potatoes, halved',
          '2 tbsp olive oil',
        ],
        [
          'Toss the potatoes with oil and roast at 220 °C for 20 minutes.',
          'Simmer honey and soy sauce for 4 minutes.',
          'Add the salmon to the tray, brush with the glaze and roast 12 minutes.',
        ],
        ['potato-dish'],
      ),
    );
    expect(text).toContain('potatoes and cauliflower');
    expect(text).not.toMatch(/last 10-12 minutes/);
  });

  it('boil for a filling as long as they did, whatever the dough does', () => {
    const text = told(
      plate(
        'Potato pierogi',
        'Makes 36',
        [
          '350 g flour',
          '1 egg',
          '120 g sour cream',
          '60 ml water',
          '500 g potatoes',
          '150 g farmer cheese',
        ],
        [
          'Mix flour, egg, sour cream and water to a dough.',
          'Boil the potatoes for 20 minutes and mash with the cheese.',
          'Roll out, cut 36 rounds, fill and pinch shut. Boil for 4 minutes.',
        ],
        ['fresh-pasta'],
      ),
    );
    expect(text).toMatch(/potatoes[^.]* for 20 minutes/);
  });
});

it('a caramel drink may have caramel without sugar', () => {
  const { plan } = adapted(
    plate(
      'Iced caramel coffee',
      'Serves 1',
      ['60 ml espresso', '200 ml whole milk', '2 tbsp caramel sauce', '1 cup ice'],
      ['Stir the caramel sauce into the hot espresso. Pour over ice and milk.'],
    ),
    { way: 'within' },
  );
  expect(plan.met).toBe(true);
});
