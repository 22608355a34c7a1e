import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan, Recipe, RewrittenStep } from '../../../engine/model.ts';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

const rewrite = (recipe: Recipe, planOf: (read: ReturnType<typeof understand>) => Plan) => {
  const read = understand(recipe);
  return rewriteRecipe(recipe, read, planOf(read), { foods, region: 'us' }).steps;
};

const LOAF = makeRecipe(
  'Hearth loaf',
  ['500 g bread flour', '350 g water', '10 g fine salt', '1/2 tsp dry yeast'],
  [
    'Mix 500 g flour with the water, salt and yeast to a rough dough.',
    'Cover and let rise for 12 hours until doubled.',
    'Lightly flour the counter and shape the dough. Heat the oven to 230 C.',
    'Bake for 40 minutes.',
  ],
);

const loafPlan = (read: ReturnType<typeof understand>): Plan =>
  makePlan(
    'lean-yeast-bread',
    read,
    [
      { key: '0', kept: 150, to: [['low-carb-wheat-flour-blend', 350]] },
      { key: '1', kept: 430, to: [] },
    ],
    { added: [['xanthan-gum', 2.8, 'binder']], reserveWaterG: 35, starchPct: 22 },
  );

const textsOf = (steps: readonly RewrittenStep[], change: RewrittenStep['change']): string[] =>
  steps.filter((step) => step.change === change).map(({ after }) => after);

describe('method of a loaf', () => {
  const steps = rewrite(LOAF, loafPlan);
  const inserted = textsOf(steps, 'inserted').join('\n');

  it('renames and re-amounts what changed, and leaves the verb alone', () => {
    const [first] = textsOf(steps, 'changed');
    expect(first).toBe('Mix 500 g rested flours with the salt and yeast to a rough dough.');
    expect(steps.find(({ before }) => before?.startsWith('Lightly'))?.after).toBe(
      'Lightly flour the counter and shape the dough. Heat the oven to 230 C (445 °F).',
    );
  });

  it('keeps every original step, in order', () => {
    const before = steps.flatMap((step) => (step.before === null ? [] : [step.before]));
    expect(before).toEqual(LOAF.steps.map(({ text }) => text));
  });

  it('puts a shorter cooling time right instead of contradicting it', () => {
    const hasty = { ...LOAF, steps: [...LOAF.steps, { section: null, text: 'Cool for 1 hour.' }] };
    const last = rewrite(hasty, loafPlan).find(({ before }) => before === 'Cool for 1 hour.');
    expect(last?.after).toBe('Cool for at least 3 hours.');
    expect(last?.change).toBe('changed');
    expect(last?.why).toMatch(/set while cooling/);
  });

  // What happens in the oven or while it rises stands within that step, not behind it.
  it.each([
    ['folds', /^Cover and let rise.*twice/],
    ['lid, then the centre', /^Bake for 40 minutes\. Bake covered.*centre reaches/],
  ])('tells the %s within the step it belongs to', (_, pattern) => {
    expect(steps.some(({ before, after }) => before !== null && pattern.test(after))).toBe(true);
  });

  it.each([
    ['pre-hydration', /leave for 30 minutes; the salt and the yeast go in only after/],
    ['reserve water', /up to 35 g more water/],
    ['yeast', /50 g of the water at 35-38 °C \(95-100 °F\), never hotter than 43 °C \(109 °F\)/],
    [
      'flours',
      /^Mix 150 g .* and 1 tsp \(2\.8 g\) xanthan gum; from here on, the flours are this mix/,
    ],
    ['folds', /twice/],
    ['proof', /Go by the dough more than by the clock/],
    ['covered bake', /covered.*uncovered/],
    ['centre', /98-99 °C \(208-210 °F\)/],
    ['cooling', /3 hours/],
  ])('inserts the %s step with a reason', (_, pattern) => {
    const step = steps.find(({ change, after }) => change !== 'kept' && pattern.test(after));
    expect(step?.why, inserted).toBeTruthy();
  });

  it('puts the binder before the water and the cooling last', () => {
    const at = (pattern: RegExp): number => steps.findIndex(({ after }) => pattern.test(after));
    expect(at(/xanthan gum:/)).toBeLessThan(at(/leave for 30 minutes/));
    expect(at(/leave for 30 minutes/)).toBeLessThan(at(/^Mix 500 g/));
    expect(at(/cool for 3 hours/)).toBe(steps.length - 1);
  });

  it('does not say again what the method says already', () => {
    const full = makeRecipe('Loaf', LOAF.groups[0]?.lines ?? [], [
      'Autolyse flour and water for 30 minutes.',
      'Dissolve the yeast in warm water, add with the salt.',
      'Stretch and fold twice, then let rise until not doubled but 1.6 times.',
      'Bake with the lid on, then without, until the inside reaches 98 °C.',
      'Cool for 3 hours before cutting.',
    ]);
    const said = textsOf(rewrite(full, loafPlan), 'inserted');
    expect(said).toEqual([]);
  });

  it('changes nothing but scales when the plan changes nothing', () => {
    const steps = rewrite(LOAF, (read) => makePlan('lean-yeast-bread', read, []));
    expect(steps.every(({ change }) => change === 'kept')).toBe(true);
    expect(steps[0]?.after).toBe(LOAF.steps[0]?.text);
  });
});

describe('mentions', () => {
  it('takes the longest name and never a part of another', () => {
    const recipe = makeRecipe(
      'Cookies',
      ['200 g sugar', '100 g brown sugar', '100 g peanut butter', '100 g butter'],
      ['Cream 50 g of the butter with the sugar.', 'Stir in brown sugar and peanut butter.'],
    );
    const steps = rewrite(recipe, (read) =>
      makePlan('cookie', read, [
        { key: '0', kept: 0, to: [['allulose', 200, 'sweetness']] },
        { key: '3', kept: 80, to: [] },
      ]),
    );
    const changed = textsOf(steps, 'changed');
    expect(changed[0]).toMatch(/^Cream 40 g .*butter with the allulose\. Beat it for 2-3/);
    expect(steps.find(({ before }) => before?.startsWith('Stir'))?.change).toBe('kept');
  });

  it('tells to leave out what is gone', () => {
    const recipe = makeRecipe('Sauce', ['20 g sugar', '200 ml cream'], ['Whisk sugar and cream.']);
    const steps = rewrite(recipe, (read) =>
      makePlan('sweet-sauce', read, [{ key: '0', kept: 0, to: [] }]),
    );
    expect(textsOf(steps, 'changed')).toEqual(['Whisk cream.']);
  });

  it('names an addition that no step speaks of', () => {
    const recipe = makeRecipe('Muffins', ['200 g flour', '2 eggs'], ['Mix all and bake.']);
    const steps = rewrite(recipe, (read) =>
      makePlan('quick-bread', read, [], { added: [['egg-white', 33, 'egg']], starchPct: 40 }),
    );
    expect(textsOf(steps, 'inserted').join(' ')).toContain('egg white');
  });
});

describe('other families', () => {
  it('takes the gum into the fat and warns of the roux', () => {
    const recipe = makeRecipe(
      'White sauce',
      ['30 g butter', '30 g flour', '500 ml milk'],
      ['Melt the butter, add the flour and cook until golden.', 'Whisk in the milk.'],
    );
    const steps = rewrite(recipe, (read) =>
      makePlan('thickened-sauce', read, [
        { key: '1', kept: 0, to: [['xanthan-gum', 2.1, 'thickener']] },
      ]),
    );
    const text = steps.map(({ after }) => after).join('\n');
    expect(text).toMatch(/^Melt the butter, add the xanthan gum and cook/);
    expect(text).toMatch(/thickens fully only after 5-10 minutes/);
    expect(text).toMatch(/gum makes no roux/);
  });

  it('warns of caramel without sugar, before the step', () => {
    const recipe = makeRecipe(
      'Caramel',
      ['200 g sugar', '100 ml cream'],
      ['Cook the sugar to a dark caramel.', 'Stir in the cream.'],
    );
    const steps = rewrite(recipe, (read) =>
      makePlan('sweet-sauce', read, [
        { key: '0', kept: 0, to: [['erythritol', 200, 'sweetness']] },
      ]),
    );
    const warning = steps.findIndex(({ after }) => /will not turn to caramel/.test(after));
    const step = steps.findIndex(({ before }) => before?.startsWith('Cook the sugar') ?? false);
    expect(warning).toBe(step - 1);
  });

  it('rinses konjac and skips the boiling, but boils what is boiled', () => {
    const recipe = makeRecipe(
      'Spaghetti',
      ['400 g spaghetti', '400 g canned tomatoes'],
      ['Boil the spaghetti in salted water.', 'Toss the pasta with the sauce.'],
    );
    const konjac = rewrite(recipe, (read) =>
      makePlan('pasta-dish', read, [{ key: '0', kept: 0, to: [['konjac-noodles', 1000]] }]),
    );
    const texts = konjac.map(({ after }) => after);
    expect(texts.some((text) => /Rinse the konjac noodles/.test(text))).toBe(true);
    expect(texts.some((text) => /boil the/i.test(text))).toBe(false);
    expect(texts).toHaveLength(2);
    expect(texts.at(-1)).toBe('Toss the konjac noodles with the sauce.');
    const half = rewrite(recipe, (read) =>
      makePlan('pasta-dish', read, [{ key: '0', kept: 80, to: [['zucchini', 400]] }]),
    ).map(({ after }) => after);
    expect(half).toContain('Boil the spaghetti in salted water.');
    expect(half.at(-1)).toBe('Toss the pasta and zucchini with the sauce.');
  });

  it('lowers the oven for allulose', () => {
    const recipe = makeRecipe(
      'Cake',
      ['200 g sugar', '200 g flour'],
      ['Mix the sugar and flour.', 'Bake at 180 °C.'],
    );
    const steps = rewrite(recipe, (read) =>
      makePlan('cake', read, [{ key: '0', kept: 0, to: [['allulose', 200, 'sweetness']] }]),
    );
    const baking = steps.find(({ before }) => before === 'Bake at 180 °C.');
    expect(baking?.after).toMatch(/^Bake at 170 °C \(340 °F\)\./);
    expect(baking?.why).toMatch(/browns faster/);
  });

  it('gives every temperature of changed and inserted steps in both scales', () => {
    const steps = rewrite(LOAF, loafPlan).filter(({ change }) => change !== 'kept');
    const oneScale = steps.filter(({ after }) => /°C/.test(after) !== /°F/.test(after));
    expect(oneScale).toEqual([]);
  });
});

describe('shares of an ingredient', () => {
  const CAKE = ['200 g sugar', '300 ml water', '100 g butter', '250 g flour'];
  const plan = (read: ReturnType<typeof understand>): Plan =>
    makePlan('other', read, [
      { key: '0', kept: 0, to: [['allulose', 160, 'sweetness']] },
      { key: '1', kept: 390, to: [] },
      { key: '3', kept: 100, to: [['almond-flour', 150]] },
    ]);
  const one = (...texts: string[]): string[] =>
    rewrite(makeRecipe('Cake', CAKE, texts), plan)
      .filter(({ before }) => before !== null)
      .map(({ after }) => after);

  // Shares by hand: of 160 g allulose, 390 g water, 250 g flours.
  it.each([
    ['Stir in half the sugar.', 'Stir in half the allulose (80 g).'],
    ['Add a third of the water.', 'Add a third of the water (130 g).'],
    ['Sift in two thirds of the flour.', 'Sift in two thirds of the flours (165 g).'],
    ['Use 1/4 of the sugar.', 'Use 1/4 of the allulose (40 g).'],
    ['Whisk 50 g of the sugar in.', 'Whisk 40 g (about 3½ tbsp) allulose in.'],
    ['Melt half the butter.', 'Melt half the butter.'],
  ])('%s', (before, after) => {
    expect(one(before)[0]).toBe(after);
  });

  it('knows what earlier steps have left', () => {
    expect(one('Add a quarter of the sugar.', 'Beat in the remaining sugar.')[1]).toBe(
      'Beat in the remaining allulose (120 g).',
    );
    expect(one('Add 100 g of the sugar.', 'Beat in the rest of the sugar.')[1]).toBe(
      'Beat in the rest of the allulose (80 g).',
    );
    expect(one('Beat in the remaining sugar.')[0]).toBe('Beat in the remaining allulose.');
  });

  it('takes spoons in the plural for spoons', () => {
    const recipe = makeRecipe('Cake', ['4 tbsp sugar'], ['Stir in 4 tbsps sugar.']);
    const [step] = rewrite(recipe, (read) =>
      makePlan('cake', read, [{ key: '0', kept: 0, to: [['allulose', 60]] }]),
    );
    expect(step?.after).toBe('Stir in 60 g (5 tbsp) allulose.');
  });

  it('reckons spoons of a line in cups', () => {
    const recipe = makeRecipe('Cake', ['1 cup sugar'], ['Dust with 2 tablespoons of the sugar.']);
    const [step] = rewrite(recipe, (read) =>
      makePlan('other', read, [{ key: '0', kept: 0, to: [['allulose', 160, 'sweetness']] }]),
    );
    // 2 of 16 tablespoons: an eighth of 160 g.
    expect(step?.after).toBe('Dust with 20 g (about 1 tbsp + 2 tsp) allulose.');
  });

  it('leaves mixtures and what is only looked at under their names', () => {
    expect(one('Stir in the flour mixture until no dry flour is left.')[0]).toBe(
      'Stir in the flour mixture until no dry flour is left.',
    );
  });
});

describe('one food in two places', () => {
  const ROLLS = makeRecipe(
    'Rolls',
    ['300 ml milk', '60 g caster sugar', '100 g icing sugar', '2 tbsp milk'],
    ['Warm the milk with the caster sugar.', 'Mix the icing sugar with the milk.'],
  );
  const steps = rewrite(ROLLS, (read) => ({
    ...makePlan(
      'sweet-sauce',
      read,
      [
        { key: '1', kept: 0, to: [['allulose', 55, 'sweetness']] },
        { key: '2', kept: 0, to: [['allulose', 70, 'sweetness']] },
      ],
      { added: [['water', 75, 'liquid']] },
    ),
    roles: { 0: ['liquid'], 3: ['liquid'] },
  }));

  it('tells their amounts apart, and what is added goes in once', () => {
    expect(steps.map(({ after }) => after)).toEqual([
      'Warm the milk and 75 g water with 55 g allulose.',
      'Mix 70 g allulose with the milk.',
    ]);
  });

  it('names both sugars when only one changed', () => {
    const recipe = makeRecipe(
      'Cookies',
      ['100 g granulated sugar', '100 g brown sugar', '100 g butter'],
      ['Melt the butter with both sugars.'],
    );
    const [step] = rewrite(recipe, (read) =>
      makePlan('other', read, [{ key: '1', kept: 0, to: [['allulose', 100, 'sweetness']] }]),
    );
    expect(step?.after).toBe('Melt the butter with granulated sugar and allulose.');
  });
});

describe('ovens', () => {
  const bake = (text: string): string | undefined =>
    rewrite(makeRecipe('Cake', ['200 g sugar', '200 g flour'], [text]), (read) =>
      makePlan('cake', read, [{ key: '0', kept: 0, to: [['allulose', 200, 'sweetness']] }]),
    ).find(({ before }) => before === text)?.after;

  // 10 °C, 25 °F or one gas mark less; gas 4 is 180 °C, gas 3 is 170 °C.
  it.each([
    ['Bake at 350°F for 25 minutes.', 'Bake at 325°F (165 °C) for 28-30 minutes.'],
    ['Bake at 375 degrees F for an hour.', 'Bake at 350 degrees F (175 °C) for 65-70 minutes.'],
    ['Bake at 350 degrees.', 'Bake at 325 degrees F (165 °C).'],
    ['Bake at 180C/160C fan/gas 4.', 'Bake at 170C (340 °F)/150C fan/gas 3.'],
    ['Bake at gas mark 4 for an hour.', 'Bake at gas mark 3 (170 °C, 340 °F) for 65-70 minutes.'],
    ['Bake until 98 °C inside.', 'Bake until 98 °C (208 °F) inside.'],
    ['Heat the oil to 180 °C and fry.', 'Heat the oil to 180 °C (355 °F) and fry.'],
  ])('%s', (before, after) => {
    // What the middle and the top need follows.
    expect(bake(before)?.slice(0, after.length)).toBe(after);
  });

  it('says it in words where the method states no temperature', () => {
    const recipe = makeRecipe('Cake', ['200 g sugar', '200 g flour'], ['Bake until golden.']);
    const steps = rewrite(recipe, (read) =>
      makePlan('cake', read, [{ key: '0', kept: 0, to: [['allulose', 200, 'sweetness']] }]),
    );
    expect(textsOf(steps, 'inserted').join(' ')).toMatch(/10-15 °C \(20-25 °F\) lower/);
  });
});

describe('accepted changes', () => {
  it('become steps where they belong, when they are words', () => {
    const read = understand(LOAF);
    const adjustment = {
      id: 'gummy.2',
      symptom: 'gummy',
      lever: 'method',
      factor: null,
      shiftPct: null,
      text: 'Bake until the centre reaches 98 °C (208 °F).',
      why: 'Gummy crumb.',
      source: 'test',
    } as const;
    const water = { ...adjustment, id: 'gummy.4', lever: 'water', shiftPct: -5, text: 'Less.' };
    const { steps } = rewriteRecipe(LOAF, read, makePlan('lean-yeast-bread', read, []), {
      foods,
      region: 'us',
      adjustments: [adjustment, { ...water, lever: 'water' as const }],
    });
    expect(textsOf(steps, 'inserted')).toEqual([adjustment.text]);
    const at = steps.findIndex(({ after }) => after === adjustment.text);
    expect(steps[at + 1]?.before).toBe(
      'Lightly flour the counter and shape the dough. Heat the oven to 230 C.',
    );
  });
});

describe('flour and water first', () => {
  const method = (...texts: string[]): string[] =>
    rewrite({ ...LOAF, steps: texts.map((text) => ({ section: null, text })) }, loafPlan).map(
      ({ after }) => after,
    );

  it('takes the water out of the step that unites them', () => {
    const texts = method('Combine the flour, water, salt and yeast. Knead for 10 minutes.');
    expect(texts).toContain(
      'Combine the rested flours, salt and yeast. Knead for 3-4 minutes only.',
    );
  });

  it('rests the dough instead where the water has another use first', () => {
    const texts = method('Stir the yeast into the water, then mix in the flour and salt. Knead.');
    const [own] = texts.filter((text) => text.startsWith('Stir the yeast into the water'));
    expect(own).toMatch(
      /then mix in the .*, 2\.8 g xanthan gum and salt\. When the dough .* Knead\.$/,
    );
    expect(texts.some((text) => /let it rest for 20-30 minutes/.test(text))).toBe(true);
    expect(texts.some((text) => /salt and the yeast go in only after/.test(text))).toBe(false);
  });
});

describe('a dish of parts', () => {
  const SLICES: Recipe = {
    ...makeRecipe('Almond slices', [], []),
    groups: [
      { title: 'Base', lines: ['200 g flour', '100 g butter'] },
      { title: 'Topping', lines: ['150 g ground almonds', '2 eggs'] },
    ],
    steps: [
      { section: null, text: 'Rub the butter into the flour and bake for 15 minutes.' },
      { section: null, text: 'Beat the eggs with the ground almonds and spread over.' },
    ],
  };
  const planOf = (read: ReturnType<typeof understand>): Plan => {
    const plan = makePlan('cookie', read, [
      {
        key: '0',
        kept: 80,
        to: [
          ['casein-powder', 20],
          ['resistant-wheat-starch', 100],
        ],
      },
    ]);
    const structure = plan.items.map((item) =>
      item.foodId === 'almond-flour' ? { ...item, role: 'structure' as const } : item,
    );
    return {
      ...plan,
      items: structure,
      parts: [
        { title: 'Base', family: 'cookie', why: '', keys: ['0', '1'] },
        { title: 'Topping', family: 'cake', why: '', keys: ['2', '3'] },
      ],
    };
  };
  const texts = rewrite(SLICES, planOf).map(({ after }) => after);

  it('mixes the flours of the part whose flour changed, protein powders with them', () => {
    expect(texts[0]).toMatch(
      /^Rub the butter into the flour, casein powder and resistant wheat starch and bake/,
    );
    expect(texts.at(-1)).not.toMatch(/flours/);
  });

  it('gives no handling of a second dough', () => {
    expect(texts.join(' ')).not.toMatch(/in the tin for 10 minutes/);
  });
});

describe('a dough of two flours', () => {
  it('is mixed of what the lines say, each once', () => {
    const recipe = makeRecipe(
      'Plain loaf',
      ['300 g all-purpose flour', '300 g bread flour', '350 g water'],
      ['Whisk the all-purpose flour and bread flour.', 'Stir in the water and bake.'],
    );
    const [mix] = rewrite(recipe, (read) =>
      makePlan('lean-yeast-bread', read, [
        { key: '0', kept: 100, to: [['vital-wheat-gluten', 200]] },
        { key: '1', kept: 150, to: [['resistant-wheat-starch', 150]] },
      ]),
    ).map(({ after }) => after);
    expect(mix).toBe(
      'Whisk the all-purpose flour, vital wheat gluten, bread flour and resistant wheat starch.',
    );
  });
});

describe('warnings', () => {
  const warned = (title: string, lines: string[], ...texts: string[]): string =>
    rewrite(makeRecipe(title, lines, texts), (read) =>
      makePlan('sweet-sauce', read, [{ key: '0', kept: 0, to: [['allulose', 100, 'sweetness']] }]),
    )
      .filter(({ change }) => change !== 'kept')
      .map(({ after }) => after)
      .join(' ');

  it.each([
    ['brittle', 'Boil to the hard crack stage.', /will not set hard/],
    ['jam', 'Boil with the fruit until it sets.', /pectin sets only with much sugar/],
    ['meringue', 'Whisk the sugar in until stiff and glossy.', /meringue weeps/],
    ['brûlée', 'Sprinkle with sugar and caramelise with a blowtorch.', /glassy top/],
    ['preserve', 'Process the jars in a water bath.', /tested preserve/],
    ['creamed cake', 'Beat the butter and sugar until pale.', /takes up less air|butter takes/],
  ])('of %s', (_, text, pattern) => {
    const family = /cake/.test(_) ? 'cake' : 'sweet-sauce';
    const steps = rewrite(makeRecipe('Any', ['100 g sugar', '3 egg whites'], [text]), (read) =>
      makePlan(family, read, [{ key: '0', kept: 0, to: [['allulose', 100, 'sweetness']] }]),
    );
    expect(steps.map(({ after }) => after).join(' ')).toMatch(pattern);
  });

  it.each([
    ['a bowl of hot water is no canning', 'Custard', 'Bake in a water bath with the sugar.'],
    ['a spoon of jam is no jam making', 'Rice pudding with jam', 'Serve with jam and sugar.'],
    ['cream of tartar is no cream', 'Foam', 'Whisk sugar and cream of tartar to soft peaks.'],
  ])('but %s', (_, title, text) => {
    expect(warned(title, ['100 g sugar'], text)).not.toMatch(/preserve|pectin|whipped cream/);
  });
});

describe('two lines of one name', () => {
  const PIE = makeRecipe(
    'Chicken pie',
    ['250 g flour', '120 g butter', '30 g flour', '400 ml chicken stock'],
    [
      'Rub the butter into the flour and chill.',
      'Melt butter, stir in the flour, whisk in the stock and simmer until thick.',
    ],
  );

  it('means the thickener where a sauce is made', () => {
    const steps = rewrite(PIE, (read) => ({
      ...makePlan('pie-crust', read, [{ key: '0', kept: 100, to: [['almond-flour', 150]] }]),
      roles: { 0: ['structure'], 1: ['fat'], 2: ['thickener'], 3: ['liquid'] },
    })).filter(({ before }) => before !== null);
    expect(steps.map(({ after }) => after)).toEqual([
      'Rub the butter into the flour and almond flour and chill.',
      PIE.steps[1]?.text,
    ]);
  });

  it('goes by the ingredients beside it, when they are of one group', () => {
    const buns: Recipe = {
      ...makeRecipe('Buns', [], []),
      groups: [
        { title: 'For the dough', lines: ['500 g flour', '60 g caster sugar', '250 ml milk'] },
        { title: 'For the filling', lines: ['100 g brown sugar', '1 tbsp cinnamon'] },
      ],
      steps: [
        { section: null, text: 'Stir the flour, sugar and milk. Chill.' },
        { section: null, text: 'Sprinkle with the sugar and cinnamon.' },
      ],
    };
    const steps = rewrite(buns, (read) =>
      makePlan('other', read, [{ key: '3', kept: 0, to: [['allulose', 90, 'sweetness']] }]),
    );
    expect(steps.map(({ after }) => after)).toEqual([
      'Stir the flour, sugar and milk. Chill.',
      'Sprinkle with the allulose and cinnamon.',
    ]);
  });

  it('goes by the heading a step stands under', () => {
    const cake = {
      ...makeRecipe('Cake', [], []),
      groups: [
        { title: 'For the cake', lines: ['100 g sugar'] },
        { title: 'For the glaze', lines: ['50 g sugar'] },
      ],
      steps: [
        { section: 'Cake', text: 'Sift the sugar.' },
        { section: 'Glaze', text: 'Sift the sugar.' },
      ],
    };
    const steps = rewrite(cake, (read) =>
      makePlan('other', read, [{ key: '0', kept: 0, to: [['allulose', 100, 'sweetness']] }]),
    );
    expect(steps.map(({ after }) => after)).toEqual(['Sift the allulose.', 'Sift the sugar.']);
  });
});

describe('any text', () => {
  it('never throws, keeps every step, and changes nothing without a plan', () => {
    const words = fc.array(
      fc.oneof(
        fc.constantFrom(
          'flour',
          'the',
          '200 g',
          '½',
          'sugar',
          '180 °C',
          'bake',
          '(',
          '[',
          '*',
          'crème',
        ),
        fc.string({ maxLength: 8 }),
      ),
      { maxLength: 12 },
    );
    const text = words.map((list) => list.join(' '));
    fc.assert(
      fc.property(
        fc.array(text, { maxLength: 6 }),
        fc.array(text, { maxLength: 4 }),
        (lines, steps) => {
          const recipe = makeRecipe('Anything', lines, steps);
          const read = understand(recipe);
          const idle = rewriteRecipe(recipe, read, makePlan('cake', read, []), {
            foods,
            region: 'eu',
          });
          expect(idle.lines.map(({ after }) => after)).toEqual(lines);
          expect(idle.steps.map(({ before }) => before)).toEqual(steps);
          const changes = read.flatMap(({ key, match, weight }) =>
            match === null || weight === null
              ? []
              : [{ key, kept: 0, to: [['allulose', 10]] as [string, number][] }],
          );
          const plan = makePlan('cake', read, changes);
          const after = rewriteRecipe(recipe, read, plan, { foods, region: 'eu' }).steps;
          expect(after.flatMap(({ before }) => (before === null ? [] : [before]))).toEqual(steps);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('knows words with letters beyond ASCII', () => {
    const recipe = makeRecipe('Soup', ['200 g crème fraîche'], ['Stir in crème fraîche.']);
    const steps = rewrite(recipe, (read) =>
      makePlan('other', read, [{ key: '0', kept: 0, to: [['cream-cheese', 100]] }]),
    );
    expect(textsOf(steps, 'changed')).toEqual(['Stir in cream cheese.']);
  });
});
