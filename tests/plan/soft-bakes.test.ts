/** Batters and short doughs as a baker would rework them: few changes, ordinary products, nothing for show. */
import { describe, expect, it } from 'vitest';
import type { Adaptation, Family, Goals } from '../../engine/model.ts';
import { foods, type Part, plan, type Sample, tallyOf } from './build.ts';
import { adapted, type Pasted } from './pasted.ts';

const bake = (title: string, family: Family, servings: number, parts: Part[]): Sample => ({
  title,
  family,
  servings,
  parts,
});

const MUFFINS = bake('Walnut muffins', 'quick-bread', 12, [
  ['all-purpose-flour', 280],
  ['sugar', 160],
  ['butter', 110],
  ['egg', 100],
  ['milk-whole', 200],
  ['walnuts', 60],
  ['baking-powder', 10],
]);

describe('a line of flour', () => {
  it.each([18, 15, 12, 8])('of a batter has one stand-in at a budget of %i g', (budgetG) => {
    const stand = plan(MUFFINS, { budgetG }).swaps.filter(({ key, to }) => key === '0' && to[0]);
    expect(stand.length).toBeLessThanOrEqual(1);
  });

  it('is replaced by what is easily bought, or by what is at home', () => {
    const rare = [
      'almond-flour-defatted',
      'resistant-wheat-starch',
      'oat-fibre',
      'egg-white-powder',
    ];
    const bought = plan(MUFFINS, { budgetG: 12 }).items.map(({ foodId }) => foodId);
    expect(bought).toContain('almond-flour');
    expect(bought.filter((id) => rare.includes(id))).toEqual([]);
    const pantry = ['resistant-wheat-starch'];
    const home = plan(MUFFINS, { budgetG: 12, pantry }).items.map(({ foodId }) => foodId);
    expect(home).toContain('resistant-wheat-starch');
  });

  it('of a dish without wheat is not replaced by wheat', () => {
    const breads = bake('Corn flatbreads', 'tortilla', 4, [
      ['masa-harina', 230],
      ['water', 350],
      ['salt', 3],
    ]);
    for (const budgetG of [30, 20, 15])
      for (const { foodId } of plan(breads, { budgetG }).items)
        expect(foods.byId(foodId)?.allergens ?? []).not.toContain('wheat');
  });
});

const drizzled = (last: string): Pasted => ({
  title: 'Pear bread',
  serves: 'Makes 12 pieces',
  family: ['quick-bread'],
  lines: [
    '250 g plain flour',
    '2 tsp baking powder',
    '2 eggs',
    '100 g butter, melted',
    '2 pears, grated',
    '240 g maple syrup',
  ],
  steps: [
    'Beat the eggs and the butter. Stir in the pears, then the flour and the baking powder.',
    last,
  ],
});

describe('a syrup', () => {
  const dry = ['allulose', 'erythritol'];
  const dryIn = (last: string): string[] => {
    const { plan } = adapted(drizzled(last), { budgetG: 14, way: 'within', pantry: dry });
    return plan.items.map(({ foodId }) => foodId).filter((id) => dry.includes(id));
  };

  it('that is stirred into a batter may be replaced by a dry sweetener', () => {
    expect(dryIn('Stir in the maple syrup. Bake at 175 °C for 50 minutes.')).not.toEqual([]);
  });

  it('that is drizzled over the bake stays one that pours', () => {
    const last = 'Bake at 175 °C for 50 minutes and drizzle with the maple syrup while warm.';
    expect(dryIn(last)).toEqual([]);
  });
});

const ICED: Pasted = {
  title: 'Iced spice cake',
  serves: 'Makes 12 pieces',
  family: ['cake'],
  lines: [
    '250 g plain flour',
    '200 g sugar',
    '150 g butter',
    '3 eggs',
    '150 ml milk',
    '2 tsp baking powder',
    '1 tsp cinnamon',
    'For the frosting:',
    '300 g powdered sugar',
    '120 g butter',
    '150 g cream cheese',
    '40 g walnuts',
    '1 pinch salt',
  ],
  steps: [
    'Beat butter and sugar, stir in eggs, milk, flour, baking powder and cinnamon. Bake 40 minutes.',
    'Beat the frosting and spread it over the cake. Strew with walnuts.',
  ],
};

describe('an icing that carries much of the sugar', () => {
  const grams = (result: Adaptation, words: RegExp): number[] =>
    result.ingredients.flatMap(({ key, match, line }) =>
      words.test(line.text)
        ? (result.plan.items.find((i) => i.key === key && i.foodId === match?.foodId)?.grams ?? 0)
        : [],
    );

  it('is made by half before its sugar is bought anew, and says so', () => {
    const result = adapted(ICED, { budgetG: 20, way: 'within' });
    expect(grams(result, /^120 g butter/)).toEqual([60]);
    expect(grams(result, /cream cheese/)).toEqual([75]);
    expect(grams(result, /walnuts/)).toEqual([40]);
    expect(grams(result, /powdered sugar/)[0]).toBeLessThanOrEqual(150);
    const butter = result.plan.swaps.find(({ from, to }) => from?.grams === 120 && !to.length);
    expect(butter?.why).toContain('Half of it is enough');
  });

  it('is made by half where a juice of the title thins it, or an even number of whites', () => {
    const topped = (title: string, ...icing: string[]): Pasted => ({
      ...ICED,
      title,
      lines: [...ICED.lines.slice(0, 7), 'For the icing:', ...icing],
    });
    const lime = topped('Lime spice cake', '130 g powdered sugar', '45 g lime juice');
    expect(grams(adapted(lime, { budgetG: 15, way: 'lighter' }), /lime juice/)[0]).toBeLessThan(30);
    const nibs = topped('Spice cake', '200 g powdered sugar', '30 g water', '15 g cacao nibs');
    expect(grams(adapted(nibs, { budgetG: 15, way: 'lighter' }), /cacao nibs/)).toEqual([15]);
    const royal = topped('Spice cake', '300 g powdered sugar', '2 egg whites');
    expect(grams(adapted(royal, { budgetG: 15, way: 'lighter' }), /egg whites/)).toEqual([33]);
    const odd = topped('Spice cake', '300 g powdered sugar', '1 egg white');
    expect(grams(adapted(odd, { budgetG: 15, way: 'lighter' }), /egg white/)).toEqual([33]);
  });

  it('keeps a body of sugar and powdered sweetener', () => {
    const result = adapted(ICED, { budgetG: 12, way: 'within' });
    const body = result.plan.items
      .filter(({ foodId }) => /^(powdered-sugar|.*-powdered)$/.test(foodId))
      .reduce((sum, item) => sum + item.grams, 0);
    expect(body).toBeGreaterThanOrEqual(0.85 * 150);
    expect(grams(result, /powdered sugar/)[0]).toBeGreaterThanOrEqual(0.35 * 150);
  });

  it('stays whole when the cake fits, when the user says so, and in the way that only cuts smaller', () => {
    const whole = [
      adapted(ICED, { budgetG: 60 }),
      adapted(ICED, { budgetG: 20, way: 'within', excludedSwaps: ['half-icing'] }),
      adapted(ICED, { budgetG: 40, way: 'smaller' }),
    ];
    for (const result of whole) expect(grams(result, /^120 g butter/)).toEqual([120]);
  });
});

describe('less of a sweet line', () => {
  it('comes with a stand-in for part of the rest, and leaves real sugar', () => {
    const { items, swaps } = plan(MUFFINS, { budgetG: 15 });
    const sugar = items.find(({ foodId }) => foodId === 'sugar')?.grams ?? 0;
    expect(sugar).toBeGreaterThanOrEqual(0.29 * 160);
    expect(swaps.filter(({ key }) => key === '1')).toHaveLength(1);
  });

  it('or a darker chocolate is enough where biscuits are hardly above the budget', () => {
    const biscuits = bake('Peanut chocolate chip biscuits', 'cookie', 16, [
      ['peanut-butter', 240],
      ['brown-sugar', 120],
      ['rolled-oats', 60],
      ['egg', 100],
      ['chocolate-semisweet', 100, '100 g chocolate chips'],
    ]);
    const { swaps, shopping, met } = plan(biscuits, { budgetG: 14.5 });
    expect(met).toBe(true);
    expect(swaps.map(({ key }) => key)).toEqual(['4']);
    expect(shopping.filter(({ availability }) => availability === 'speciality')).toEqual([]);
  });
});

describe('pieces', () => {
  it('come in numbers that a tin is easily cut into', () => {
    const { plan: light } = adapted(ICED, { budgetG: 15, way: 'lighter' });
    expect([14, 15, 16, 18, 20, 24]).toContain(light.servings);
  });
});

describe('what is left and what follows', () => {
  it('a crumb base without its last spoon of sugar', () => {
    const { items } = plan(
      bake('Berry cream slice', 'custard', 12, [
        ['graham-cracker', 200],
        ['butter', 100],
        ['sugar', 50],
        ['cream-cheese', 400],
        ['powdered-sugar', 150],
      ]),
      { budgetG: 12 },
    );
    for (const id of ['sugar', 'powdered-sugar']) {
      const left = items.find(({ foodId }) => foodId === id)?.grams ?? 0;
      expect(left === 0 || left >= 15, `${left} g ${id}`).toBe(true);
    }
  });

  it('milk of a batter is not exchanged for cream and water', () => {
    const { items } = plan(MUFFINS, { budgetG: 12 });
    expect(items.filter(({ key }) => key === '4').map(({ foodId }) => foodId)).toEqual([
      'milk-whole',
    ]);
  });

  it('butter that makes layers stays when a third of the flour is nuts', () => {
    const biscuits = bake('Cut biscuits', 'biscuit', 8, [
      ['all-purpose-flour', 250],
      ['butter', 115],
      ['milk-whole', 180],
      ['baking-powder', 14],
      ['salt', 5],
    ]);
    const { items } = plan(biscuits, { budgetG: 21 });
    expect(items.map(({ foodId }) => foodId)).toContain('almond-flour');
    expect(items.find(({ foodId }) => foodId === 'butter')?.grams).toBe(115);
  });

  it('powder that makes up for self-raising flour fills level quarter teaspoons', () => {
    const cake = bake('Plain sponge', 'cake', 12, [
      ['self-raising-flour', 225],
      ['sugar', 225],
      ['butter', 225],
      ['egg', 200],
    ]);
    const { items } = plan(cake, { budgetG: 16 });
    const powder = items.find(({ foodId }) => foodId === 'baking-powder')?.grams ?? 0;
    const spoon = foods.byId('baking-powder')?.measures.find(({ unit }) => unit === 'tsp');
    const quarter = (spoon?.grams ?? 0) / 4;
    expect(powder).toBeGreaterThan(0);
    // As scales show it, in tenths of a gram.
    expect(Math.abs(powder - quarter * Math.round(powder / quarter))).toBeLessThan(0.051);
  });

  it('ice cream takes less of a sweetener that keeps it soft, and no fibre powder', () => {
    const cream = bake('Vanilla ice cream', 'frozen-dessert', 8, [
      ['cream-heavy', 400],
      ['milk-whole', 300],
      ['sugar', 150],
      ['egg-yolk', 80],
    ]);
    const { items } = plan(cream, { budgetG: 15 });
    expect(items.map(({ foodId }) => foodId)).not.toContain('inulin');
    expect(items.find(({ foodId }) => foodId === 'sugar')?.grams).toBeGreaterThan(0);
  });

  it('gingerbread keeps half of its molasses', () => {
    const bread = bake('Dark gingerbread', 'cake', 16, [
      ['all-purpose-flour', 300],
      ['molasses', 300],
      ['butter', 120],
      ['egg', 100],
      ['baking-soda', 6],
    ]);
    const { items } = plan(bread, { budgetG: 15 });
    expect(items.find(({ foodId }) => foodId === 'molasses')?.grams).toBeGreaterThanOrEqual(149);
  });

  it('no gum for a third of the flour, when gluten is left', () => {
    const { items } = plan(MUFFINS, { budgetG: 15 });
    expect(items.map(({ foodId }) => foodId)).not.toContain('xanthan-gum');
  });

  it('hard candy keeps the syrup that lets it set', () => {
    const brittle: Sample = {
      ...bake('Peanut brittle', 'candy', 20, [
        ['sugar', 200],
        ['corn-syrup', 170],
        ['peanuts', 290],
        ['butter', 10],
      ]),
      steps: ['Boil sugar and corn syrup to the hard crack stage, stir in the peanuts and butter.'],
    };
    expect(plan(brittle, { budgetG: 14 }).swaps).toEqual([]);
  });
});

/** An invented pie without headings: crust and filling in one list. */
const PIE = bake('Gooseberry lattice pie', 'pie-crust', 8, [
  ['all-purpose-flour', 310],
  ['butter', 115],
  ['water', 90],
  ['sugar', 70],
  ['cornstarch', 40, '40 g cornstarch'],
  ['blackberries', 600],
]);

/** Share of a line that a plan takes away. */
const gone = (sample: Sample, key: string, goals: Partial<Goals>): number => {
  const stays = plan(sample, goals)
    .items.filter((item) => item.key === key && item.foodId === sample.parts[Number(key)]?.[0])

    .reduce((sum, { grams }) => sum + (grams ?? 0), 0);
  return 1 - stays / (sample.parts[Number(key)]?.[1] ?? 1);
};

describe('the sugar of a bake', () => {
  it.each([35, 30, 25, 20])('goes before its flour at a budget of %i g', (budgetG) => {
    expect(gone(PIE, '3', { budgetG })).toBeGreaterThanOrEqual(gone(PIE, '0', { budgetG }) - 0.03);
  });

  it('may be less beside fruit that is sweet itself', () => {
    const sour: Sample = { ...PIE, parts: [...PIE.parts.slice(0, 5), ['rhubarb', 600]] };
    const lessBy = (sample: Sample, grams: number): boolean => {
      const net = tallyOf(sample).perServing.netCarbsG?.best ?? 0;
      return plan(sample, { budgetG: net - grams / sample.servings, pantry: [] }).met;
    };
    expect(lessBy(PIE, 25)).toBe(true);
    expect(lessBy(sour, 25)).toBe(false);
    expect(lessBy(sour, 18)).toBe(true);
  });
});

describe('a batter without egg', () => {
  const BATTER = bake('Plain oat-milk cake', 'cake', 8, [
    ['all-purpose-flour', 250],
    ['sugar', 60],
    ['vegetable-oil', 80],
    ['oat-milk', 300],
    ['baking-powder', 10],
  ]);
  const grams = (sample: Sample, budgetG: number, id: string): number =>
    plan(sample, { budgetG })
      .items.filter(({ foodId }) => foodId === id)
      .reduce((sum, item) => sum + (item.grams ?? 0), 0);

  it('has a quarter of nuts in its flour at most, and less milk with them', () => {
    const budgets = [24, 23, 22, 21, 20, 18];
    for (const budgetG of budgets) {
      const nuts = grams(BATTER, budgetG, 'almond-flour');
      expect(nuts).toBeLessThanOrEqual(0.27 * 250);
      if (nuts >= 55) expect(grams(BATTER, budgetG, 'oat-milk')).toBeLessThanOrEqual(255);
    }
    const most = Math.max(...budgets.map((budgetG) => grams(BATTER, budgetG, 'almond-flour')));
    expect(most).toBeGreaterThan(50);
  });

  it('that is pale and alkaline keeps half of its sugar from browning stand-ins', () => {
    const soda = (g: number): Sample => ({
      ...BATTER,
      servings: 20,
      parts: [...BATTER.parts.filter(([id]) => id !== 'sugar'), ['sugar', 250], ['baking-soda', g]],
    });
    const allulose = (sample: Sample): number =>
      grams(sample, 12, 'allulose') + grams(sample, 12, 'sweetener-blend-allulose');
    expect(allulose(soda(9))).toBeLessThanOrEqual(0.52 * 250);
    expect(allulose(soda(0.5))).toBeGreaterThan(0.52 * 250);
  });
});
