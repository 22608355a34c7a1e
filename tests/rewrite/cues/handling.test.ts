import { describe, expect, it } from 'vitest';
import type { Adaptation } from '../../../engine/model.ts';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

const LASAGNE = makeRecipe(
  'Meat bake',
  ['250 g dried lasagne sheets', '500 g ground beef', '400 g passata', '100 g parmesan'],
  [
    'Fry the beef and simmer it in the passata.',
    'Layer the lasagne sheets with the sauce and parmesan.',
    'Bake for 40 minutes.',
  ],
);

/** Steps after the first line gave way to one swap that says `method`. */
function swapped(recipe: Adaptation['recipe'], to: [string, number][], method?: string) {
  const read = understand(recipe);
  const plan = makePlan('pasta-dish', read, [{ key: '0', kept: 0, to }]);
  const swaps = plan.swaps.map((swap) => (method === undefined ? swap : { ...swap, method }));
  return rewriteRecipe(recipe, read, { ...plan, swaps }, { foods, region: 'us' }).steps;
}

describe('handling of a single swap', () => {
  const ROAST = 'Slice 1 cm thick, salt, blot, and roast 15 minutes at 200 °C before layering.';

  it('stands before the step that uses the new food, with the reason and both scales', () => {
    const steps = swapped(LASAGNE, [['eggplant', 700]], ROAST);
    const at = steps.findIndex(({ after }) => after.includes('Slice the eggplant 1 cm thick'));
    expect(steps[at]).toMatchObject({ change: 'inserted', before: null });
    expect(steps[at]?.after).toContain('200 °C (390 °F)');
    expect(steps[at]?.why).toContain('lasagne sheets');
    expect(steps[at + 1]?.before).toMatch(/^Layer/);
  });

  it('is not said twice where a cue tells it', () => {
    const steps = swapped(LASAGNE, [['zucchini', 700]], 'Slice thin, salt and blot.');
    const told = steps.filter(({ after }) => /salt/i.test(after));
    expect(told.map(({ after }) => after)).toEqual([expect.stringMatching(/sheets 3-4 mm thick/)]);
  });

  it('is said once for two lines with one swap each of the same kind', () => {
    const read = understand(LASAGNE);
    const plan = makePlan('pasta-dish', read, [{ key: '0', kept: 0, to: [['eggplant', 700]] }]);
    const [swap] = plan.swaps;
    const twice = swap ? [swap, { ...swap }].map((one) => ({ ...one, method: ROAST })) : [];
    const { steps } = rewriteRecipe(
      LASAGNE,
      read,
      { ...plan, swaps: twice },
      { foods, region: 'us' },
    );
    expect(steps.filter(({ after }) => after.includes('Slice the eggplant'))).toHaveLength(1);
  });

  it('is marked as English in a method of another language', () => {
    const german = { ...LASAGNE, language: 'de' };
    const step = swapped(german, [['eggplant', 700]], ROAST).find(({ after }) =>
      /Slice the/.test(after),
    );
    expect(step?.lang).toBe('en');
  });
});

describe('a crust of almonds', () => {
  const made = (old: string): string =>
    swapped(makeRecipe('Tart', [old, '200 g cheddar'], ['Use it.', 'Bake for 20 minutes.']), [
      ['almond-flour', 150],
      ['butter', 50],
      ['egg', 35],
    ])
      .map(({ after }) => after)
      .join('\n');

  it('goes into the tin for a pie, flat on paper for a pizza, and is rolled for pastry', () => {
    const [pie, pizza, puff] = [
      made('1 pie crust'),
      made('400 g pizza dough'),
      made('250 g puff pastry'),
    ];
    expect(pie).toMatch(/press it into the tin/);
    expect(pizza).toMatch(/on baking paper.*before it is topped/);
    expect(pizza).not.toMatch(/tin/);
    expect(puff).toMatch(/roll it between/);
    expect(puff).not.toMatch(/tin|before it is filled/);
  });
});

describe('flours that are ground seeds or proteins', () => {
  it('belong to the flours of the method', () => {
    const dough = makeRecipe(
      'Crackers',
      ['300 g flour', '100 g water'],
      ['Mix the flour with the water.', 'Bake for 20 minutes.'],
    );
    const read = understand(dough);
    for (const id of [
      'chia-ground',
      'sesame-seed-ground',
      'pea-protein-isolate',
      'casein-powder',
    ]) {
      const plan = makePlan('cracker', read, [{ key: '0', kept: 100, to: [[id, 100]] }]);
      const { steps } = rewriteRecipe(dough, read, plan, { foods, region: 'us' });
      const text = steps.map(({ after }) => after).join('\n');
      expect(text, id).toMatch(/^Mix the flour and [a-z ]+ with the water\./);
    }
  });
});

describe('the rest of an ingredient without its name', () => {
  const cake = (steps: string[]): string[] => {
    const recipe = makeRecipe('Cake', ['200 g sugar', '3 eggs', '200 g flour'], steps);
    const read = understand(recipe);
    const plan = makePlan('cake', read, [
      { key: '0', kept: 0, to: [['allulose', 240, 'sweetness']] },
    ]);
    return rewriteRecipe(recipe, read, plan, { foods, region: 'us' }).steps.map(
      ({ after }) => after,
    );
  };

  it('gets what is left in grams', () => {
    const steps = cake([
      'Beat the eggs with a quarter of the sugar.',
      'Whisk in the rest, then the flour.',
    ]);
    // 240 g, less a quarter
    expect(steps).toContainEqual('Whisk in the rest (180 g allulose), then the flour.');
  });

  it('stays as it is where it may mean anything else', () => {
    const steps = cake([
      'Beat the eggs with the sugar.',
      'Add the rest and fold. Chill the rest of the batter.',
    ]);
    expect(steps).toContainEqual('Add the rest and fold. Chill the rest of the batter.');
  });
});

describe('phrases that the new ingredients contradict', () => {
  const dough = (language: string, lines: string[], steps: string[]): string => {
    const recipe = { ...makeRecipe('Brot', lines, steps), language };
    const read = understand(recipe);
    const plan = makePlan('lean-yeast-bread', read, [
      {
        key: '0',
        kept: 100,
        to: [
          ['vital-wheat-gluten', 200],
          ['resistant-wheat-starch', 200],
        ],
      },
    ]);
    return rewriteRecipe(recipe, read, plan, { foods, region: 'us' })
      .steps.filter(({ before }) => before !== null)
      .map(({ after }) => after)
      .join('\n');
  };
  const LINES = ['500 g bread flour', '350 g water', '7 g dry yeast', '10 g salt'];

  it('are put right in German', () => {
    const text = dough('de', LINES, [
      'Alles mischen und etwa 10 Minuten zu einem glatten Teig verkneten.',
      'Gehen lassen, bis sich das Volumen verdoppelt hat. 10 Minuten ruhen lassen und kurz kneten.',
      'Auf das doppelte Volumen aufgehen lassen.',
    ]);
    expect(text).toMatch(/mischen und nur 3-4 Minuten zu einem glatten Teig verkneten/);
    expect(text).toMatch(/lassen, bis er um zwei Drittel größer ist\. .*10 Minuten ruhen lassen/);
    expect(text).toMatch(/^Auf das 1,6- bis 1,8-fache Volumen aufgehen lassen/im);
  });

  it('are put right in French', () => {
    const text = dough('fr', LINES, [
      'Mélanger le tout et pétrir pendant 10 minutes.',
      "Laisser lever jusqu'à ce que la pâte ait doublé de volume.",
      'Laisser doubler de volume une seconde fois.',
    ]);
    expect(text).toMatch(/pétrir 3-4 minutes seulement\./);
    expect(text).toMatch(/jusqu'à ce que le volume ait augmenté des deux tiers\./);
    expect(text).toMatch(/Laisser augmenter de deux tiers de volume/);
  });

  it.each([
    [
      'nl',
      'Voeg alles toe en kneed het deeg 10 minuten.',
      'Laat 10 minuten rusten en kneed kort door.',
      'Laat rijzen tot het in volume verdubbeld is.',
      /kneed het deeg maar 3-4 minuten\./,
      /Laat 10 minuten rusten/,
      /Laat rijzen tot het twee derde groter is\./,
    ],
    [
      'es',
      'Mezclar todo y amasar durante 10 minutos.',
      'Dejar reposar 10 minutos.',
      'Dejar levar hasta que la masa doble su volumen.',
      /amasar solo 3-4 minutos\./,
      /Dejar reposar 10 minutos/,
      /hasta que crezca dos tercios\./,
    ],
    [
      'it',
      'Unire il sale e impastare per 10 minuti.',
      'Far riposare 10 minuti.',
      'Far lievitare fino al raddoppio del volume.',
      /impastare solo 3-4 minuti\./,
      /Far riposare 10 minuti/,
      /Far lievitare finché cresce di due terzi\./,
    ],
  ] as const)('are put right in %s', (tag, knead, rest, rise, kneaded, rested, risen) => {
    const text = dough(tag, LINES, [knead, rest, rise]);
    expect(text).toMatch(kneaded);
    expect(text).toMatch(rested);
    expect(text).toMatch(risen);
  });

  it('are put right in every kneading step', () => {
    const text = dough('en', LINES, [
      'Mix the flour with the water and knead for 10 minutes until smooth.',
      'Add the salt and knead for 5 minutes more.',
    ]);
    expect(text).toMatch(/knead for 3-4 minutes only until smooth/);
    expect(text).toMatch(/knead for 3-4 minutes only\./);
  });
});

describe('cooking that must not be cut short', () => {
  const sauce = (kept: number, steps: string[]): string => {
    const recipe = makeRecipe(
      'Stew',
      ['30 g flour', '400 g chicken breast', '500 ml stock'],
      steps,
    );
    const read = understand(recipe);
    const plan = makePlan('thickened-sauce', read, [
      { key: '0', kept, to: [['xanthan-gum', 1.5, 'thickener']] },
    ]);
    const items = plan.items.map((item) =>
      item.key === '0' ? { ...item, role: 'thickener' as const } : item,
    );
    return rewriteRecipe(recipe, read, { ...plan, items }, { foods, region: 'us' })
      .steps.map(({ after }) => after)
      .join('\n');
  };

  it('keeps a long time, which is the meat’s, and drops the minutes of the roux', () => {
    expect(sauce(0, ['Stir in the flour and chicken and cook for 20 minutes.'])).toMatch(
      /for 20 minutes/,
    );
    expect(sauce(0, ['Stir in the flour and cook for 2 minutes. Add the stock.'])).not.toMatch(
      /2 minutes/,
    );
  });

  it.each([
    ['400 g chicken thighs', /cook for 25 minutes/],
    ['2 bell peppers', /cook for 5-10 minutes/],
  ])('gives rice pots with %s the time that needs', (line, time) => {
    const pot = makeRecipe(
      'Rice pot',
      ['300 g white rice', line, '700 ml stock'],
      ['Fry everything in oil.', 'Add the stock, cover and cook for 25 minutes.'],
    );
    const read = understand(pot);
    const plan = makePlan('rice-dish', read, [{ key: '0', kept: 0, to: [['cauliflower', 700]] }]);
    const { steps } = rewriteRecipe(pot, read, plan, { foods, region: 'us' });
    expect(steps.map(({ after }) => after).join('\n')).toMatch(time);
  });

  it('does not say that starch which stays needs no cooking', () => {
    const steps = ['Stir in the flour and cook for 2 minutes. Add the stock and simmer.'];
    expect(sauce(0, steps)).toMatch(/needs no cooking out/);
    expect(sauce(15, steps)).not.toMatch(/needs no cooking out/);
    expect(sauce(15, steps)).toMatch(/the starch still has to boil/);
    expect(sauce(15, steps)).toMatch(/cook for 2 minutes/);
  });
});

describe('potatoes that cauliflower and cream cheese stand in for', () => {
  it('boil without the cheese', () => {
    const recipe = makeRecipe(
      'Mash',
      ['900 g potatoes', '50 g butter'],
      ['Boil the potatoes for 15 minutes, then mash them with the butter.'],
    );
    const steps = swapped(recipe, [
      ['cauliflower', 800],
      ['cream-cheese', 50],
    ]).map(({ after }) => after);
    expect(steps.join('\n')).toMatch(/Boil the cauliflower for 15 minutes/);
  });
});

describe('a soup whose pasta gives way to konjac noodles', () => {
  const soup = makeRecipe(
    'Bean soup',
    ['100 g pasta', '240 g canned kidney beans', '1 l stock'],
    ['Heat the stock.', 'Add the beans and pasta and cook for 10 minutes.'],
  );
  const steps = (): string[] => {
    const read = understand(soup);
    const plan = makePlan('potato-dish', read, [
      { key: '0', kept: 0, to: [['konjac-noodles', 290]] },
    ]);
    return rewriteRecipe(soup, read, plan, { foods, region: 'us' }).steps.map(({ after }) => after);
  };

  it('names the noodles where the pasta went in, and rinses them first', () => {
    expect(steps()).toContainEqual('Add the beans and konjac noodles and cook for 10 minutes.');
    const at = (pattern: RegExp): number => steps().findIndex((text) => pattern.test(text));
    expect(at(/^Rinse the konjac noodles/)).toBe(at(/^Add the beans and konjac noodles/) - 1);
  });
});

describe('a proof that needs no longer because the yeast was raised', () => {
  it.each([
    ['en', /Let it rise about as long as stated/],
    ['de', /Den Teig etwa so lange gehen lassen wie angegeben/],
    ['fr', /Laisser lever environ le temps indiqué/],
    ['es', /Dejar levar aproximadamente el tiempo indicado/],
    ['it', /Far lievitare circa il tempo indicato/],
    ['nl', /Laat het deeg ongeveer zo lang rijzen als aangegeven/],
  ])('is not stretched in %s', (language, words) => {
    const texts: Record<string, string> = {
      en: 'Let the dough rise.',
      de: 'Den Teig gehen lassen.',
      fr: 'Laisser lever la pâte.',
      es: 'Dejar levar la masa.',
      it: 'Far lievitare la pasta.',
      nl: 'Laat het deeg rijzen.',
    };
    const recipe = {
      ...makeRecipe(
        'X',
        ['500 g bread flour', '350 g water', '7 g dry yeast'],
        [texts[language] ?? ''],
      ),
      language,
    };
    const read = understand(recipe);
    const plan = makePlan(
      'lean-yeast-bread',
      read,
      [
        {
          key: '0',
          kept: 100,
          to: [
            ['vital-wheat-gluten', 200],
            ['resistant-wheat-starch', 200],
          ],
        },
      ],
      { starchPct: 15 },
    );
    const told = (raised: boolean): string =>
      rewriteRecipe(
        recipe,
        read,
        raised ? { ...plan, notes: [{ code: 'YEAST_RAISED', text: '', key: null }] } : plan,
        { foods, region: 'us' },
      )
        .steps.map(({ after }) => after)
        .join('\n');
    expect(told(true)).toMatch(words);
    expect(told(true)).not.toMatch(/1½ (times|mal|fois|veces|volte|keer)/);
    expect(told(false)).toMatch(/1½ (times|mal|fois|veces|volte|keer)/);
  });
});

describe('things that are not made', () => {
  it('no almond bread is baked for almond flour in place of crumbs, nor wraps for an egg alone', () => {
    const cutlets = makeRecipe(
      'Cutlets',
      ['120 g dry breadcrumbs', '4 pork cutlets', '2 eggs'],
      ['Coat the cutlets in egg and breadcrumbs.', 'Fry for 4 minutes a side.'],
    );
    const text = swapped(cutlets, [['almond-flour', 85]])
      .map(({ after }) => after)
      .join('\n');
    expect(text).toMatch(/almond flour/);
    expect(text).not.toMatch(/almond bread/i);
  });

  it('konjac rice keeps its name where rice is not boiled', () => {
    const bowl = makeRecipe(
      'Bowl',
      ['300 g white rice', '2 eggs'],
      ['Boil the rice for 12 minutes.', 'Serve the eggs over the rice.'],
    );
    const text = swapped(bowl, [['konjac-rice', 800]])
      .map(({ after }) => after)
      .join('\n');
    expect(text).toMatch(/over the konjac rice\./);
    expect(text).not.toMatch(/konjac konjac/);
  });
});

describe('a pot in which rice cooks with other foods', () => {
  it('takes up what stands in for part of the rice once that is cooked', () => {
    const pot = makeRecipe(
      'Rice pot',
      ['300 g white rice', '400 g canned tomatoes', '700 ml stock'],
      ['Add the rice, tomatoes and stock and cook for 20 minutes.'],
    );
    const read = understand(pot);
    const plan = makePlan('rice-dish', read, [{ key: '0', kept: 120, to: [['cauliflower', 450]] }]);
    const { steps } = rewriteRecipe(pot, read, plan, { foods, region: 'us' });
    expect(steps.map(({ after }) => after).join('\n')).toMatch(
      /Add the .*rice, tomatoes and stock and cook for 20 minutes\. Stir in the cauliflower at the end/,
    );
  });
});

describe('German noodles of a longer name', () => {
  it('are not boiled where nothing of them is left', () => {
    const recipe = {
      ...makeRecipe(
        'Gulasch',
        ['300 g tagliatelle', '600 g beef'],
        ['Die Nudeln 10 Minuten kochen und dazu servieren.'],
      ),
      language: 'de',
    };
    const texts = swapped(recipe, [['konjac-noodles', 900]]).map(({ after }) => after);
    expect(texts.at(-1)).toBe('Dazu servieren.');
    expect(texts.join('\n')).not.toMatch(/10 Minuten kochen/);
  });
});

describe('flours that a method names together', () => {
  const mixOf = (second: string): string => {
    const recipe = makeRecipe(
      'Seed loaf',
      ['300 g bread flour', '100 g whole wheat flour', '280 g water', '7 g dry yeast', '8 g salt'],
      ['Stir yeast and water.', second, 'Let rise for 1 hour.', 'Bake for 40 minutes.'],
    );
    const read = understand(recipe);
    const to: [string, number][] = [['low-carb-wheat-flour-blend', 100]];
    const plan = makePlan('lean-yeast-bread', read, [{ key: '0', kept: 66, to }]);
    const { steps } = rewriteRecipe(recipe, read, plan, { foods, region: 'us' });
    return steps.map(({ after }) => after).find((one) => /flours? are this mix/.test(one)) ?? '';
  };

  it('are mixed with one that stays, where it has no name of its own', () => {
    expect(mixOf('Add the flours gradually, and salt.')).toMatch(/Mix [^;]*whole wheat flour/);
    expect(mixOf('Add the bread flour gradually, then whole wheat flour.')).not.toMatch(
      /Mix [^;]*whole wheat flour/,
    );
  });
});

describe('a cheesecake with much allulose that bakes for an hour', () => {
  const told = (...own: string[]): string => {
    const recipe = makeRecipe('Cheesecake', ['150 g sugar', '900 g cream cheese', '4 eggs'], own);
    const read = understand(recipe);
    const plan = makePlan('custard', read, [{ key: '0', kept: 0, to: [['allulose', 200]] }]);
    const { steps } = rewriteRecipe(recipe, read, plan, { foods, region: 'us' });
    return steps.map(({ after }) => after).join(' ');
  };

  it('is looked at before half of the time', () => {
    const own = 'Wrap the tin in foil and bake at 325 °F for 60 minutes.';
    expect(told('Beat the sugar, cream cheese and eggs.', own)).toMatch(
      /cover the top with foil after about 24 minutes/,
    );
    const covered = 'Bake for 60 minutes, covered with foil.';
    expect(told('Beat the sugar, cream cheese and eggs.', covered)).not.toMatch(/cover the top/);
    expect(told('Beat the sugar, cream cheese and eggs.', 'Bake for 20 minutes.')).not.toMatch(
      /cover the top/,
    );
  });
});

describe('a rise that a page lets go beyond double', () => {
  it.each([
    'until it has more than doubled',
    'until tripled in size',
    'until very puffy',
    'until doubled or tripled',
    'until at least doubled',
  ])('is shorter for a dough rich in gluten: %s', (until) => {
    const recipe = makeRecipe(
      'Milk loaf',
      ['500 g bread flour', '320 g milk', '7 g dry yeast', '9 g salt'],
      ['Knead all for 8 minutes.', `Cover and let rise ${until}.`, 'Bake for 40 minutes.'],
    );
    const read = understand(recipe);
    const to: [string, number][] = [
      ['low-carb-wheat-flour-blend', 250],
      ['vital-wheat-gluten', 50],
    ];
    const plan = makePlan('enriched-yeast-bread', read, [{ key: '0', kept: 200, to }]);
    const { steps } = rewriteRecipe(recipe, read, plan, { foods, region: 'us' });
    const told = steps.map(({ after }) => after).join(' ');
    expect(told).toContain('let rise until it has grown by two thirds.');
    expect(told).not.toMatch(/doubled|tripled|puffy/);
  });
});
