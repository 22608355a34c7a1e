/** Stand-ins a cook would laugh at, each once seen in the plan of a dish. */
import { describe, expect, it } from 'vitest';
import { adapted, dishesOf, type Pasted } from '../pasted.ts';

const dish = dishesOf('other');

const brought = (recipe: Pasted): string[] =>
  adapted(recipe, { budgetG: 15 }).ways.flatMap(({ plan }) =>
    plan.swaps.flatMap(({ to }) => to.map(({ foodId }) => foodId)),
  );

const FILLED_TUBES = dish(
  'Cheese manicotti',
  ['200 g manicotti tubes', '400 g ricotta', '1 egg', '500 ml tomato sauce', '100 g mozzarella'],
  [
    'Boil the manicotti 8 minutes and drain.',
    'Mix ricotta and egg and pipe into the tubes.',
    'Cover with sauce and mozzarella and bake 30 minutes.',
  ],
);

const RICE_IN_BROTH = dish(
  'One pan paprika chicken and rice',
  [
    '600 g chicken thighs',
    '200 g long grain rice',
    '400 ml chicken broth',
    '1 onion',
    '2 tbsp oil',
  ],
  [
    'Brown the chicken in the oil, then soften the onion.',
    'Add the rice, pour in the broth, lay the chicken on top, cover and simmer 18 minutes.',
  ],
);

const FISH_TACOS = dish(
  'Grilled fish tacos',
  ['500 g cod', '12 corn tortillas', '200 g cabbage', '100 g sour cream', '1 lime'],
  ['Grill the cod.', 'Warm the tortillas, fill with fish, cabbage and sour cream. Roll up.'],
);

const CRISP_NOODLES = dish(
  'Charred tomato spaghetti',
  ['350 g spaghetti', '400 g tomato puree', '60 ml olive oil', '3 cloves garlic'],
  ['Lay the spaghetti in the hot oil with the sauce until the noodles are crisp and charred.'],
);

describe('stand-ins that keep the shape of the dish', () => {
  it('fills no strands and no elbows', () => {
    const foods = brought(FILLED_TUBES);
    expect(foods).not.toContain('soybean-pasta-dry');
    expect(foods).not.toContain('zucchini');
  });

  it('takes no soup vegetable for rice that is cooked in broth under a lid', () => {
    expect(brought(RICE_IN_BROTH)).not.toContain('celeriac');
  });

  it('wraps tacos in nothing that is scrambled or falls apart', () => {
    const foods = brought(FISH_TACOS);
    expect(foods.some((id) => /egg|zucchini/.test(id))).toBe(false);
  });

  it('chars no noodle that is sold wet', () => {
    const foods = brought(CRISP_NOODLES);
    expect(foods.some((id) => /konjac|tofu/.test(id))).toBe(false);
  });
});

describe('a budget out of reach', () => {
  const STICKY = dish(
    'Sticky sugar ribs',
    ['1 kg pork ribs', '200 g brown sugar', '150 g honey', '100 ml soy sauce', '300 g cooked rice'],
    ['Simmer the ribs with sugar, honey and soy sauce until sticky. Serve with the rice.'],
  );

  it('makes the changes that pay, and no more than two when it is to be light: its sugars are one', () => {
    const result = adapted(STICKY);
    const { plan } = result;
    const changes = new Set(
      plan.swaps.flatMap(({ key, from }) =>
        /sugar|honey/.test(from?.food ?? '') ? 'sweetness' : (key ?? []),
      ),
    );
    expect(plan.met).toBe(false);
    expect(changes.size).toBeGreaterThan(0);
    expect(changes.size).toBeLessThanOrEqual(2);
    expect(plan.closeness).toBeGreaterThanOrEqual(0.55);
    const before = result.before.perServing.netCarbsG?.best ?? 0;
    const after = result.after.perServing.netCarbsG?.best ?? Number.POSITIVE_INFINITY;
    expect(after).toBeLessThan(0.6 * before);
  });
});

describe('leaves in place of tortillas', () => {
  it('are not warmed in a pan', () => {
    const only = { pantry: ['lettuce-wraps'], excludedSwaps: ['tortilla-to-cabbage-leaves'] };
    const result = adapted(FISH_TACOS, { ...only, budgetG: 12, way: 'within' });
    expect(result.plan.items.map(({ foodId }) => foodId)).toContain('lettuce-wraps');
    const method = result.steps.map(({ after }) => after).join('\n');
    expect(method).not.toMatch(/warm the lettuce/i);
    expect(method).toMatch(/fill with fish/i);
  });
});

describe('small tortillas, two on a plate', () => {
  it('are all of them of the fibre kind, not half as many round the same filling', () => {
    const rolls = dish(
      'Oven taquitos with turkey',
      ['8 small flour tortillas', '400 g cooked turkey', '120 g cheddar', '80 g salsa'],
      [
        'Mix turkey, cheese and salsa.',
        'Fill the tortillas, roll them tight and bake until crisp.',
      ],
    );
    const { plan } = adapted(rolls);
    const [swap] = plan.swaps;
    expect(plan.met).toBe(true);
    expect(swap?.to.map(({ foodId }) => foodId)).toEqual(['tortilla-low-carb']);
    expect(swap?.keptGrams).toBe(0);
  });
});

describe('candied nuts on a salad', () => {
  it('are toasted plain', () => {
    const salad = dish(
      'Leaf salad with goat cheese',
      ['120 g candied walnuts', '200 g goat cheese', '200 g rocket', '2 pears', '3 tbsp olive oil'],
      ['Toss leaves, pears and oil; scatter cheese and walnuts over.'],
    );
    expect(brought(salad)).toContain('walnuts');
  });
});

describe('a sweet glaze', () => {
  it('makes no sweet sauce of a dish of meat', () => {
    const glazed = dish(
      'Honey chicken',
      ['800 g chicken thighs', '160 g honey', '1 tbsp vinegar', '1 tsp chilli flakes'],
      ['Grill the chicken. Warm the honey with the vinegar and brush it on.'],
    );
    expect(adapted(glazed).plan.family.id).not.toBe('sweet-sauce');
  });
});

describe('large single servings', () => {
  it('are offered as two, and what is one plate is not', () => {
    const shake = dish(
      'Banana oat smoothie',
      ['2 bananas', '300 ml milk', '60 g rolled oats', '100 g strawberries'],
      ['Blend everything until smooth.'],
    );
    const { ways } = adapted({ ...shake, serves: 'Serves 1' });
    expect(ways.some(({ plan }) => plan.servings === 2)).toBe(true);
    const toast = dish(
      'Beans on toast',
      ['1 slice bread', '120 g baked beans'],
      ['Toast and top.'],
    );
    const small = adapted({ ...toast, serves: 'Serves 1' });
    expect(small.ways.every(({ plan }) => plan.servings === 1)).toBe(true);
  });
});

describe('jam in pots', () => {
  it('keeps its fruit, in other languages too', () => {
    const jam = dish(
      'Pruimenjam',
      ['1 kg pruimen', '500 g suiker', '2 el citroensap'],
      ['Kook de pruimen met suiker en citroensap.', 'Schep de jam heet in de jampotten.'],
    );
    const { plan } = adapted(jam);
    expect(plan.notReworked).not.toBeNull();
    expect(plan.swaps).toEqual([]);
  });
});

describe('a dough within a dish of rice', () => {
  it('is not made of gum', () => {
    const burrito = dish(
      'Chicken burritos from scratch',
      [
        '300 g plain flour',
        '60 ml oil',
        '180 ml warm water',
        '200 g long grain rice',
        '800 g chicken thighs',
        '400 g tin black beans',
      ],
      [
        'Mix flour, oil and water to a dough, knead 2 minutes and roll out six rounds.',
        'Cook the rice. Fry the chicken and warm the beans.',
        'Fill the rounds and roll up.',
      ],
    );
    expect(brought(burrito).some((id) => /gum|glucomannan/.test(id))).toBe(false);
  });
});
