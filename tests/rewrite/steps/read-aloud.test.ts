import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { type Change, foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

type Family = Parameters<typeof makePlan>[0];

/** The method read from its first step to its last; `method`: what the first swap says of its handling. */
function told(
  lines: string[],
  steps: string[],
  changes: Change[],
  {
    family = 'other',
    title = 'Supper',
    method = '',
  }: { family?: Family; title?: string; method?: string } = {},
): string[] {
  const recipe = makeRecipe(title, lines, steps);
  const read = understand(recipe);
  const plan = makePlan(family, read, changes);
  const swaps = plan.swaps.map((swap, at) =>
    at === 0 && method !== '' ? { ...swap, method } : swap,
  );
  return rewriteRecipe(recipe, read, { ...plan, swaps }, { foods, region: 'us' }).steps.map(
    ({ after }) => after,
  );
}

describe('what goes in later than the rest', () => {
  it('is named in full where it goes in, not only where it is excepted', () => {
    const [, last] = told(
      ['1 plantain (200 g)', '400 g chopped tomatoes'],
      [
        'Add all ingredients except the plantain and simmer.',
        'Add the plantain and cook 10 minutes.',
      ],
      [{ key: '0', kept: 100, to: [['butternut-squash', 80]] }],
    );
    expect(last).toMatch(/^Add the plantain and butternut squash/);
  });

  it('gets its own minute in the water when what it was boiled with is not boiled', () => {
    const text = told(
      ['300 g ramen noodles', '100 g spinach'],
      [
        'Cook noodles according to package directions. During the last minute of cooking, add spinach. Drain and rinse.',
      ],
      [{ key: '0', kept: 0, to: [['konjac-noodles', 400]] }],
      { family: 'pasta-dish' },
    ).join('\n');
    expect(text).toMatch(/Boil spinach for 1 minute\. Drain and rinse\./);
  });
});

describe('what the page bakes for a time of its own', () => {
  const BAKE =
    'Blot, toss with 1 tbsp oil and bake 25-30 minutes at 200-220 °C; put it in before any fries that stay.';
  const fries = (kept: number): string =>
    told(
      ['500 g frozen french fries', '4 buns'],
      [
        'Preheat oven to 425°F. Spread frozen fries on a sheet. Bake 10-13 minutes.',
        'Fill the buns.',
      ],
      [{ key: '0', kept, to: [['rutabaga', 400]] }],
      { family: 'potato-dish', method: BAKE },
    ).join('\n');

  it('is told to go in ahead of what stays, within the step and once', () => {
    expect(fries(100)).toMatch(
      /°C\)\. Blot the rutabaga and toss with 1 tbsp oil; bake it by itself for about 15 minutes, then go on with the rest\./,
    );
    expect(fries(100)).not.toMatch(/25-30/);
  });

  it('is told its whole time where nothing of the page’s own stays', () => {
    expect(fries(0)).toMatch(/it takes 25-30 minutes in the oven in all\./);
  });
});

describe('names of other things', () => {
  it('leaves the topping what it is called, and names the new food where it goes in', () => {
    const text = told(
      ['200 g dark chocolate', '100 g cream'],
      ['Make the chocolate topping. Put the chocolate in a bowl and melt it.'],
      [{ key: '0', kept: 0, to: [['chocolate-sugar-free', 200]] }],
    ).join(' ');
    expect(text).toMatch(
      /Make the chocolate topping\. Put the sugar-free chocolate chips? in a bowl/,
    );
  });

  it('knows a food that is written as one word or two', () => {
    const text = told(
      ['120 g yellow cornmeal'],
      ['Mix corn meal and salt.'],
      [{ key: '0', kept: 60, to: [['almond-flour', 40]] }],
    ).join(' ');
    expect(text).toMatch(/corn meal.* almond flour/);
  });
});

describe('steps that hold no more', () => {
  it('skips how to cook from scratch what is not in this version', () => {
    const text = told(
      ['3 cups cooked white rice', '1 avocado'],
      [
        'If you want to make rice from scratch, start with a cup of rice. Simmer in water until the water is absorbed.',
        'Fill the bowls with rice and avocado.',
      ],
      [{ key: '0', kept: 0, to: [['cauliflower', 400]] }],
      { family: 'rice-dish' },
    ).join('\n');
    expect(text).toMatch(/Skip this step: there is no white rice/);
    expect(text).not.toMatch(/from scratch/);
  });

  it('stirs gum in without the minute and the froth of a roux', () => {
    const text = told(
      ['3 tbsp flour', '40 g butter', '500 ml stock'],
      [
        'Melt the butter. Then add the flour and stir for 1 minute or so until frothy. Pour in the stock.',
      ],
      [{ key: '0', kept: 0, to: [['xanthan-gum', 1.5, 'thickener']] }],
      { family: 'thickened-sauce' },
    ).join(' ');
    expect(text).toMatch(/add the xanthan gum\. Pour/);
  });

  it('does not set a fryer’s warm oven lower, nor cut what is fried', () => {
    const text = told(
      ['180 g flour', '4 steaks'],
      [
        'Heat the oven to warm.',
        'Dip the steaks in the flour and fry them until brown. Place in the oven.',
        'Serve.',
      ],
      [{ key: '0', kept: 120, to: [['almond-flour', 60]] }],
      { family: 'quick-bread' },
    ).join(' ');
    expect(text).not.toMatch(/lower than stated|Cut it/);
  });
});

describe('gum and pasta by their own ways', () => {
  it('rubs gum into oil where the page stirs starch into water, and says it once', () => {
    const text = told(
      ['2 tbsp cornstarch', '500 g beef', '300 ml stock'],
      ['Simmer the beef in the stock.', 'Whisk the cornstarch with 2 tbsp water and stir it in.'],
      [{ key: '0', kept: 0, to: [['xanthan-gum', 2, 'thickener']] }],
      { family: 'thickened-sauce' },
    ).join(' ');
    expect(text).toMatch(/into a spoonful of oil before it meets the liquid/);
    expect(text).not.toMatch(/into the fat/);
  });

  it('boils new pasta by its packet where the page goes beyond al dente', () => {
    const text = told(
      ['400 g fusilli'],
      ['Cook the pasta for 2 minutes longer than the box says for al dente. Rinse it.'],
      [{ key: '0', kept: 0, to: [['soybean-pasta-dry', 300]] }],
      { family: 'pasta-dish' },
    ).join(' ');
    expect(text).toMatch(/own packet, not by the one below, and test it early\. Cook/);
  });
});

describe('handling of what stands in', () => {
  it('cuts a head that is steamed, and speaks of a sauce where there is one', () => {
    const steamed = (serve: string): string =>
      told(
        ['400 g penne', '2 onions'],
        ['Fry the onions.', serve],
        [{ key: '0', kept: 0, to: [['cauliflower', 600]] }],
        { family: 'pasta-dish', method: 'Steam until just tender and dry well before the sauce.' },
      ).join('\n');
    expect(steamed('Stir the penne into the onions.')).toMatch(
      /Cut the cauliflower into florets and steam them until just tender and dry well\./,
    );
    expect(steamed('Stir the penne into the sauce.')).toMatch(/dry well before the sauce/);
  });

  it('grates no egg', () => {
    const text = told(
      ['3 bananas (350 g)', '200 g flour'],
      ['Mash the bananas and mix with the flour.', 'Bake.'],
      [
        {
          key: '0',
          kept: 150,
          to: [
            ['zucchini', 150],
            ['egg', 50],
          ],
        },
      ],
      { family: 'quick-bread', method: 'Grate, squeeze dry; add banana extract if you have it.' },
    ).join('\n');
    expect(text).toMatch(/Grate the zucchini, squeeze dry/);
  });

  it('does not warm twice what the page warms', () => {
    const text = told(
      ['8 corn tortillas (200 g)', '300 g beans'],
      ['Warm the tortillas in a skillet.', 'Fill each tortilla with beans.'],
      [{ key: '0', kept: 0, to: [['tortilla-low-carb', 300]] }],
      { method: 'Warm it so that it does not crack.' },
    ).join('\n');
    expect(text.match(/warm/gi)).toHaveLength(1);
  });
});

it('a tin that is buttered and then floured takes flour from the bag', () => {
  const text = told(
    ['200 g flour', '100 g butter'],
    ['Rub butter on the bottoms and sides, and then flour. Mix the flour and butter.', 'Bake.'],
    [{ key: '0', kept: 130, to: [['almond-flour', 70]] }],
    { family: 'cake' },
  ).join(' ');
  expect(text).toMatch(/sides, and then flour\. /);
});

it('what is drained some steps later is not drained before it is done', () => {
  const text = told(
    ['1 kg potatoes', '100 ml milk'],
    [
      'Cover the potatoes with water and simmer until tender.',
      'Warm the milk.',
      'Drain the potatoes, add the milk and mash.',
    ],
    [{ key: '0', kept: 400, to: [['cauliflower', 600]] }],
    { family: 'potato-dish', method: 'Boil until soft, drain, dry in the pan 3 minutes.' },
  ).join('\n');
  expect(text.split('\n')[0]).not.toMatch(/drain/i);
  expect(text).toMatch(/drained, dry/i);
});
