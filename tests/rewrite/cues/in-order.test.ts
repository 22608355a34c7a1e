/** Handling stands in the sentence where it is done: before what it changes, after what it waits for. */
import { describe, expect, it } from 'vitest';
import type { Family, Recipe } from '../../../engine/model.ts';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { type Change, foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

/** The whole method after one change of the first line. */
function told(
  recipe: Recipe,
  family: Family,
  to: Change['to'],
  { kept = 0, starchPct = 40 }: { kept?: number; starchPct?: number } = {},
): string {
  const read = understand(recipe);
  const plan = makePlan(family, read, [{ key: '0', kept, to }], { starchPct });
  return rewriteRecipe(recipe, read, plan, { foods, region: 'us' })
    .steps.map(({ after }) => after)
    .join('\n');
}

describe('handling in another language', () => {
  const cake = (step: string): string =>
    told(
      {
        ...makeRecipe('Citroencake', ['200 g suiker', '200 g bloem'], [step]),
        language: 'nl',
      },
      'quick-bread',
      [
        ['allulose', 140],
        ['almond-flour', 60],
      ],
      { kept: 60 },
    );

  it('stands behind the sentence that bakes, not at the head of its step', () => {
    const text = cake(
      'Meng suiker en bloem. Doe het beslag in de bakvorm. Bak de cake 40 minuten in de oven. Serveer met room.',
    );
    expect(text).toMatch(/Bak de cake 40 minuten in de oven\.[^\n]*met folie[^\n]*Serveer/);
  });

  it('says nothing of cooling where the page lets it cool', () => {
    const text = cake('Meng suiker en bloem. Bak 40 minuten in de oven. Laat helemaal afkoelen.');
    expect(text).not.toMatch(/twee uur afkoelen/);
  });
});

it('only half of the milk goes in at first', () => {
  const text = told(
    makeRecipe(
      'Mash',
      ['800 g potatoes', '200 ml milk'],
      ['Boil the potatoes for 20 minutes and drain. Mash them. Add the milk and beat until light.'],
    ),
    'potato-dish',
    [['cauliflower', 400]],
    { kept: 400 },
  );
  expect(text).toMatch(
    /Mash them\. Add half of the milk \(the rest only as the mash needs it\) and beat/,
  );
});

it('the heat of the fat is told where it is heated', () => {
  const text = told(
    makeRecipe(
      'Cutlets',
      ['100 g breadcrumbs', '4 pork cutlets'],
      [
        'Press the cutlets into the breadcrumbs. Heat the oil in a wide pan. Cook until brown, then lift out to drain.',
      ],
    ),
    'breaded-food',
    [['almond-flour', 100]],
  );
  expect(text).toMatch(/Heat the oil in a wide pan\. Keep the fat at [^.]* early\. Cook until/);
});

describe('the time of another pasta', () => {
  const soy: Change['to'] = [['soybean-pasta-dry', 280]];
  const pasta = (step: string): string =>
    told(makeRecipe('Pasta', ['300 g spaghetti', '1 onion'], [step]), 'pasta-dish', soy);

  it('stands in place of the old one in the sentence that boils it', () => {
    expect(
      pasta('Boil the spaghetti for 10 minutes. Cook the onion slowly for 15 minutes and serve.'),
    ).toMatch(/by the time on its own packet, testing it early\. Cook the onion slowly for 15 min/);
    expect(pasta('Brown the meatballs and cook them for 12 minutes in the sauce.')).toContain(
      'cook them for 12 minutes',
    );
    expect(pasta('Cook the chicken and spaghetti for 14 minutes.')).toContain('for 14 minutes');
  });

  it('is not told where it is only looked at, nor at the end of a method that boils none', () => {
    const charred = pasta(
      'Lay the spaghetti in the hot pan and press it down. Cook the onion for 5 minutes. Cook until the oil is gone and the spaghetti is charred, 4 minutes.',
    );
    expect(charred).not.toMatch(/packet/);
  });
});

describe('a longer rise', () => {
  const loaf = (step: string, starchPct = 40): string =>
    told(
      makeRecipe('Loaf', ['500 g bread flour', '7 g dry yeast', '300 g water'], [step, 'Bake it.']),
      'lean-yeast-bread',
      [['low-carb-wheat-flour-blend', 250]],
      { kept: 250, starchPct },
    );

  it('stands where the page says how long, in place of its time', () => {
    const range = loaf('Mix all to a dough. Let it rise for 1 to 1½ hours.');
    expect(range).toMatch(/Let it rise for 75-115 minutes\..*Go by the dough/s);
    expect(range).not.toMatch(/as stated|1 to 1½/);
    expect(loaf('Mix all to a dough. Let it rise for 2 hours.', 20)).toMatch(
      /rise for 3 hours\..*Go by/s,
    );
    expect(loaf('Mix all to a dough. Let it rise for an hour.')).toMatch(/rise for 75 minutes\./);
  });

  it('is longer the second time too, but not in the cold', () => {
    const twice = told(
      makeRecipe(
        'Rolls',
        ['500 g bread flour', '7 g dry yeast', '300 g water'],
        [
          'Mix all to a dough. Let it rise for 1 hour.',
          'Shape 12 rolls and let rise for 40 minutes.',
          'Or let them rise in the fridge for 8 hours.',
        ],
      ),
      'enriched-yeast-bread',
      [['low-carb-wheat-flour-blend', 250]],
      { kept: 250 },
    );
    expect(twice).toMatch(/rise for 75 minutes\./);
    expect(twice).toMatch(/let rise for 50 minutes\./);
    expect(twice).toMatch(/fridge for 8 hours/);
    expect(twice.match(/by the clock/g)).toHaveLength(1);
  });

  it('is put right in what the page says it took', () => {
    expect(
      loaf(
        'Mix all to a dough. Let it rise for 1.5-2 hours. (In my kitchen it takes about 2 hours.)',
      ),
    ).toMatch(/rise for 2-2½ hours\.[^(]*Go by[^(]*\(In my kitchen it takes about 2½ hours/);
  });

  it.each([
    [
      'de',
      '500 g Mehl',
      'Alles zu einem Teig verkneten. Den Teig 2 Stunden gehen lassen.',
      'Den Teig 2½ Stunden gehen lassen. … Mehr auf den Teig',
    ],
    [
      'nl',
      '500 g bloem',
      'Meng alles tot een beslag. Laat het beslag 1 uur rijzen.',
      'Laat het beslag 75 minuten rijzen. … Let meer op het beslag',
    ],
    [
      'fr',
      '500 g de farine',
      'Pétrir la pâte. Laisser lever la pâte une heure.',
      'Laisser lever la pâte 75 minutes. … Regarder la pâte',
    ],
    [
      'it',
      '500 g di farina',
      'Impastare tutto. Far lievitare l’impasto per 2 ore.',
      'per 2½ ore. … Guardare l’impasto',
    ],
    [
      'es',
      '500 g de harina',
      'Mezclar la masa. Dejar levar la masa 2 horas.',
      'Dejar levar la masa 2½ horas. … Mirar la masa',
    ],
    [
      'sv',
      '500 g vetemjöl',
      'Arbeta ihop till en deg. Låt degen jäsa i 1 timme.',
      'Låt degen jäsa i 75 minuter. … Se mer',
    ],
  ])('%s: in the language’s own units', (language, line, step, told) => {
    const recipe = {
      ...makeRecipe('X', [line, '7 g dry yeast', '300 ml water'], [step]),
      language,
    };
    const read = understand(recipe);
    const plan = makePlan('lean-yeast-bread', read, [
      { key: '0', kept: 250, to: [['low-carb-wheat-flour-blend', 250]] },
    ]);
    const text = rewriteRecipe(recipe, read, plan, { foods, region: 'eu' })
      .steps.map(({ after }) => after)
      .join('\n');
    for (const one of told.split(' … ')) expect(text.replaceAll("'", '’')).toContain(one);
  });

  it('has no figures where the page has none', () => {
    expect(loaf('Mix all to a dough. Let it rise until doubled.')).toMatch(/as stated, and go by/);
  });

  it('says how far it rises once, where the page does', () => {
    const doubled = loaf('Mix all to a dough. Let it rise for 2 hours until doubled.');
    expect(doubled).toMatch(/until it has grown by two thirds/);
    expect(doubled).not.toMatch(/1\.6-1\.8/);
    expect(loaf('Mix all to a dough. Let it rise for 2 hours.')).toMatch(/1\.6-1\.8 times/);
  });
});

describe('an icing made by half', () => {
  const iced = (grams: number, icing = 'Dip the tops in the glaze.'): string => {
    const recipe = makeRecipe(
      'Biscuits',
      ['300 g flour', '180 g icing sugar', '40 g milk'],
      ['Bake the flour biscuits.', `Mix icing sugar and milk to a glaze. ${icing}`],
    );
    const read = understand(recipe);
    const plan = makePlan('cookie', read, [
      { key: '1', kept: grams, to: [] },
      { key: '2', kept: grams / 4.5, to: [] },
    ]);
    return rewriteRecipe(recipe, read, plan, { foods, region: 'us' })
      .steps.map(({ after }) => after)
      .join('\n');
  };

  it('is told where it is mixed, not where it is spread', () => {
    expect(iced(90)).toMatch(
      /The amounts are for half as much icing\. Where it is too shallow to dip, spoon it on\. Mix icing sugar/,
    );
    const spread = iced(90, 'Spread the glaze over the biscuits.');
    expect(spread).toMatch(
      /half as much icing\. A thin layer or a small swirl is enough\. Mix icing sugar/,
    );
    expect(spread.match(/half as much/g)).toHaveLength(1);
    expect(iced(90, 'Dip a toothpick into the icing to tint it.')).not.toMatch(/too shallow/);
  });

  it('is spread thin where the page spreads it thick', () => {
    expect(iced(90, 'Pipe a generous swirl of the glaze, then spread the glaze.')).toMatch(
      /Pipe a small swirl of the glaze/,
    );
    expect(iced(180, 'Pipe a generous swirl, then spread the glaze.')).toMatch(/generous swirl/);
  });

  it('has half of its flavouring too, where the plan has left that whole', () => {
    const recipe = makeRecipe(
      'Cupcakes with frosting',
      ['300 g flour', '200 g butter', '180 g icing sugar', '1 tsp vanilla extract'],
      [
        'Bake the flour in cases.',
        'Beat the butter. Add icing sugar and vanilla extract and frost the cakes.',
      ],
    );
    const read = understand(recipe);
    const plan = makePlan('cake', read, [
      { key: '1', kept: 100, to: [] },
      { key: '2', kept: 90, to: [] },
    ]);
    const text = rewriteRecipe(recipe, read, plan, { foods, region: 'us' })
      .steps.map(({ after }) => after)
      .join(' ');
    expect(text).toMatch(
      /half as much icing\. Take half of its vanilla extract too\. A thin layer or a small swirl is enough\. Beat the butter/,
    );
  });

  it('is none where a stew has half of its sugar', () => {
    const recipe = makeRecipe(
      'Baked beans',
      ['100 g molasses', '50 g brown sugar', '400 g beans'],
      ['Stir molasses and brown sugar into the beans and bake.'],
    );
    const read = understand(recipe);
    const plan = makePlan('other', read, [
      { key: '0', kept: 50, to: [] },
      { key: '1', kept: 25, to: [] },
    ]);
    const { steps } = rewriteRecipe(recipe, read, plan, { foods, region: 'us' });
    expect(steps.map(({ after }) => after).join(' ')).not.toMatch(/half as much/);
  });

  it('goes on as ever where most of it is left', () => {
    expect(iced(150)).not.toMatch(/half as much/);
  });
});

it('gum is stirred into fat before it meets the liquid that the page whisks it into', () => {
  const text = told(
    makeRecipe(
      'Stew',
      ['3 tbsp cornstarch', '1 kg beef'],
      ['Simmer the beef. Whisk the cornstarch into a ladle of the sauce and stir it in.'],
    ),
    'thickened-sauce',
    [['xanthan-gum', 2, 'thickener']],
  );
  expect(text).toMatch(/before it meets any liquid/);
  expect(text).not.toMatch(/whisk the liquid in/);
});

describe('what is told of a bake', () => {
  const bread = (bake: string): string =>
    told(
      makeRecipe(
        'Pot bread',
        ['400 g flour', '300 g water', '1 tsp yeast'],
        ['Mix all to a dough and let it rise for 8 hours.', bake],
      ),
      'lean-yeast-bread',
      [['vital-wheat-gluten', 100]],
      { kept: 300 },
    );

  it('says when it is done behind the last bake, not while the lid is on', () => {
    const text = bread('Cover and bake for 30 minutes. Remove the lid and bake 15 minutes more.');
    expect(text).toMatch(/bake 15 minutes more\. The loaf is done when/);
  });

  it('stands before what cools', () => {
    const text = bread('Bake for 30 minutes; cool on a rack.');
    expect(text).toMatch(/Bake for 30 minutes\. .*is done when[^.]*\. Cool on a rack\./);
  });
});

it.each([
  ['en', 'Divide among the muffin cups.', 'let the batter stand', 'Divide among'],
  ['it', 'Versate in una tortiera.', "riposare l'impasto", 'Versate in'],
] as const)('a batter in %s stands before it is in its tin', (language, pours, rest, filled) => {
  const text = told(
    {
      ...makeRecipe(
        'Plain muffins',
        ['200 g flour', '100 g sugar', '200 ml milk', '2 eggs'],
        language === 'en'
          ? ['Whisk flour and sugar. Beat in the milk and eggs.', pours, 'Bake for 20 minutes.']
          : ['Mescolate la farina. Unite il latte.', pours, 'Cuocete in forno per 40 minuti.'],
      ),
      language,
    },
    'quick-bread',
    [['coconut-flour', 60]],
    { kept: 120 },
  );
  expect(text).toContain(rest);
  expect(text.indexOf(rest)).toBeLessThan(text.indexOf(filled));
});
