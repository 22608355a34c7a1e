/** How much of a line is eaten, by what it is for. */
import { describe, expect, test } from 'vitest';
import { foodTable } from '../../../engine/foods/index.ts';
import { matchItem } from '../../../engine/match/index.ts';
import type { Interval } from '../../../engine/model.ts';
import { parseLine } from '../../../engine/parse/index.ts';
import { weighItem } from '../../../engine/weigh/index.ts';

interface Around {
  group?: string;
  others?: string[];
  steps?: string[];
  title?: string;
  language?: string;
}

const foods = foodTable();

function eaten(text: string, around: Around = {}): Interval | undefined {
  const { language = 'en' } = around;
  const line = parseLine(text, { group: around.group ?? null, language });
  const lines = [line, ...(around.others ?? []).map((other) => parseLine(other, { language }))];
  const [item] = line.items;
  if (!item) return undefined;
  const food = foods.byId(matchItem(item, line, { foods, language })?.foodId ?? '');
  const recipe = { title: around.title ?? '', steps: around.steps ?? [], lines };
  return weighItem(item, line, food, { region: 'us', recipe })?.eaten;
}

const ALL = { low: 1, best: 1, high: 1 };

describe('crumbs', () => {
  const meat = ['600 g ground beef', '2 eggs'];

  test.each([
    'Mix the mince with the breadcrumbs and eggs and roll into balls. Coat the balls with the sauce.',
    'Combine everything, shape into patties and fry.',
    'Stir the breadcrumbs into the meat.',
  ])('in the mince are eaten whole: %s', (step) => {
    const around = { others: meat, steps: [step] };
    expect(eaten('1 cup dry breadcrumbs', around)).toEqual(ALL);
    expect(eaten('2 eggs', { ...around, others: ['1 cup dry breadcrumbs'] })).toEqual(ALL);
  });

  test.each([
    'Dip each piece in the egg, then the breadcrumbs.',
    'Dredge the fillets in flour, then egg, then coat with the panko.',
    'Roll them in the breadcrumbs.',
    'Press each cutlet into the flour, the egg and the crumbs of the breading station.',
  ])('around the meat stick in part: %s', (step) => {
    const around = { others: ['600 g chicken breast'], steps: [step] };
    expect(eaten('1 cup dry breadcrumbs', around)?.best).toBe(0.75);
  });

  test('stick in part beside raspberries too, which are no Danish crumbs', () => {
    const around = {
      others: ['600 g chicken breast', '100 g raspberries'],
      steps: ['Dip each piece in the egg, then the breadcrumbs.'],
    };
    expect(eaten('1 cup dry breadcrumbs', around)?.best).toBe(0.75);
  });

  test('have stand-ins that a line puts on in their place', () => {
    const around = {
      others: ['600 g pork', '80 g almond flour, for coating in place of breadcrumbs'],
      steps: ['Coat each cutlet in flour, egg and almond flour.'],
    };
    expect(eaten('2 eggs', around)?.best).toBe(0.6);
  });

  test('of a pressed crust are eaten whole', () => {
    const around = { others: ['100 g butter'], steps: ['Press the crumbs into the tin.'] };
    expect(eaten('200 g graham cracker crumbs', around)).toEqual(ALL);
  });
});

describe('crumbs in other languages', () => {
  test.each([
    ['de', '150 g Semmelbrösel', '100 g Mehl', 'Schnitzel in Mehl, Ei und Semmelbröseln wenden.'],
    ['fr', '150 g de chapelure', '100 g de farine', 'Panez les escalopes avec la chapelure.'],
    ['it', '150 g di pangrattato', '100 g di farina', 'Impanate le fettine nel pangrattato.'],
    ['es', '150 g de pan rallado', '100 g de harina', 'Empanar los filetes con el pan rallado.'],
  ])('%s: %s sticks in part, and so does the flour', (language, crumbs, flour, step) => {
    const around = { language, steps: [step] };
    expect(eaten(crumbs, { ...around, others: [flour] })?.best).toBe(0.75);
    expect(eaten(flour, { ...around, others: [crumbs] })?.best).toBe(0.6);
  });

  test('in the mince are eaten whole', () => {
    const steps = ['Hackfleisch mit Ei und Semmelbröseln verkneten.'];
    expect(eaten('50 g Semmelbrösel', { language: 'de', steps })).toEqual(ALL);
  });
});

describe('the water that dough is boiled in', () => {
  const steps = [
    'Shape the dough into rings.',
    'Bring 2 litres of water to a boil in a wide pot. Whisk in the honey.',
    'Boil the bagels for a minute on each side, then bake.',
  ];
  const bagels = { title: 'Bagels', steps, others: ['500 g bread flour', '7 g instant yeast'] };

  test('keeps most of its honey and soda', () => {
    expect(eaten('1/4 cup honey', bagels)?.best).toBe(0.05);
    const pretzels = {
      title: 'Soft pretzels',
      steps: ['Bring the water and baking soda to a boil in a pot. Dip in the pretzels.'],
      others: ['500 g flour', '1 packet dry yeast'],
    };
    expect(eaten('2/3 cup baking soda', pretzels)?.best).toBe(0.05);
  });

  test('is itself no water of the dough', () => {
    const twice = { ...bagels, others: ['1 cup water', '7 g instant yeast', '1/4 cup honey'] };
    expect(eaten('2 quarts water', twice)?.best).toBe(0);
    expect(
      eaten('1 cup water', { ...twice, others: ['2 quarts water', '7 g instant yeast'] }),
    ).toEqual(ALL);
  });

  test('is told by the line too', () => {
    const twice = { ...bagels, others: ['1 tbsp honey', '7 g instant yeast'] };
    expect(eaten('1/4 cup honey, for boiling', twice)?.best).toBe(0.05);
    expect(eaten('1/4 cup honey', twice)).toEqual(ALL);
  });

  test('is no caramel beside bought pretzels or bagels: its sugar is eaten', () => {
    const caramel = {
      title: 'Caramel pretzel bark',
      steps: ['Boil the sugar and water in a pot until amber. Pour over the pretzels.'],
      others: ['200 g pretzels', '100 g butter'],
    };
    expect(eaten('300 g sugar', caramel)).toEqual(ALL);
    const jam = {
      title: 'Berry jam',
      steps: ['Boil the berries, water and honey in a pot.', 'Serve on bagels.'],
      others: ['500 g berries'],
    };
    expect(eaten('200 g honey', jam)).toEqual(ALL);
  });

  test('is not that of a syrup or of a dough', () => {
    const syrup = { title: 'Honey syrup', steps: ['Boil the water and honey in a pot.'] };
    expect(eaten('1/4 cup honey', syrup)).toEqual(ALL);
    const dough = { title: 'Bagels', steps: ['Mix flour, honey and salt.', 'Boil in water.'] };
    expect(
      eaten('1 tbsp honey', { ...dough, others: ['500 g bread flour', '7 g instant yeast'] }),
    ).toEqual(ALL);
  });
});

describe('oil', () => {
  const potatoes = { others: ['2 potatoes'], steps: ['Heat the oil and fry the chips.'] };

  test('of a bath is weighed beside the dish, not beside the lengths of its pieces', () => {
    const tacos = {
      others: ['700 g cod', '125 g flour', '12 (6-inch) corn tortillas'],
      steps: ['Deep fry the fish.'],
    };
    expect(eaten('3 cups vegetable oil, for frying', tacos)?.best).toBeLessThan(0.4);
  });

  test('is a bath where there is much of it beside little else and the recipe fries', () => {
    expect(eaten('2 cups vegetable oil', potatoes)?.best).toBeLessThan(0.2);
  });

  test.each([
    [['Whisk the oil into the batter and bake.'], ['300 g flour', '300 g sugar']],
    [['Air fry the chips with the oil.'], ['2 potatoes']],
    [['Stir-fry it all.'], ['2 potatoes']],
  ])('is eaten whole elsewhere: %s', (steps, others) => {
    expect(eaten('2 cups vegetable oil', { steps, others })).toEqual(ALL);
  });
});

describe('what is poured, dusted and brushed on', () => {
  test('a dry brine stays on, a wet one is poured away', () => {
    expect(eaten('1 tbsp sugar', { group: 'Dry brine' })).toEqual(ALL);
    expect(eaten('1 cup sugar', { group: 'For the brine' })?.best).toBe(0.05);
  });

  test('pasta that is drained does not pour a marinade away', () => {
    const steps = ['Drain the noodles and leave them to dry. Fry the beef.'];
    expect(eaten('2 tbsp soy sauce', { group: 'Marinade', steps })?.best).toBe(1);
    const patted = ['Pat the beef dry and fry it.'];
    expect(eaten('100 ml red wine', { group: 'Marinade', steps: patted })?.best).toBe(0.15);
  });

  test('sugar dusted on top is nearly all eaten, flour for the board by half', () => {
    expect(eaten('powdered sugar, for dusting')?.best).toBe(0.9);
    expect(eaten('flour, for dusting')?.best).toBe(0.5);
  });

  test('a coating group says what its lines are for', () => {
    expect(eaten('1/2 cup sugar', { group: 'Coating' })?.best).toBe(0.6);
  });

  test('what a line keeps back is not what the line is for', () => {
    expect(eaten('2 eggs (reserve one yolk for the egg wash)')).toEqual(ALL);
  });

  test('extra for a garnish is not the amount that goes in', () => {
    expect(eaten('2 tablespoons capers, chopped, plus a few extra for garnish')).toEqual(ALL);
    expect(eaten('2 tablespoons capers (chopped (plus a few extra for garnish)')).toEqual(ALL);
    expect(eaten('40 g walnuts, toasted and some more to serve')).toEqual(ALL);
    expect(eaten('2 tablespoons capers, chopped, for garnish')?.best).toBe(0);
  });

  test('juice to serve is eaten, a garnish is not counted', () => {
    expect(eaten('juice of 1 lime, to serve')).toEqual(ALL);
    expect(eaten('50 g parmesan, to serve')?.best).toBe(0);
  });
});

describe('a marinade that only the method names', () => {
  const steps = [
    'Whisk together the sesame oil, soy sauce and ginger.',
    'Season the pork with salt and pepper and place it in a bowl.',
    'Pour the marinade over the pork and chill overnight. Lift the pork out of the marinade and grill it.',
  ];
  const around = {
    steps,
    others: ['800 g pork fillet', '60 ml soy sauce', '20 g ginger', '2 tsp salt', '1 tsp pepper'],
  };

  test('is left behind in part', () => {
    expect(eaten('60 ml sesame oil', around)?.best).toBe(0.15);
    expect(
      eaten('60 ml soy sauce', { ...around, others: ['800 g pork fillet', '60 ml sesame oil'] })
        ?.best,
    ).toBe(0.2);
  });

  test('holds neither the meat nor what is not mixed into it', () => {
    expect(
      eaten('800 g pork fillet', { ...around, others: ['60 ml sesame oil', '60 ml soy sauce'] }),
    ).toEqual(ALL);
    expect(
      eaten('2 tsp salt', {
        ...around,
        others: ['60 ml sesame oil', '60 ml soy sauce', '1 tsp pepper'],
      }),
    ).toEqual(ALL);
  });

  test('is counted whole where the food stands on two lines, or goes into the pan', () => {
    expect(
      eaten('60 ml sesame oil', { ...around, others: ['2 tbsp olive oil', '60 ml soy sauce'] }),
    ).toEqual(ALL);
    const kept = [
      steps[0] ?? '',
      'Pour the marinade over the pork. Simmer the pork in the marinade.',
    ];
    expect(eaten('60 ml sesame oil', { ...around, steps: kept })).toEqual(ALL);
  });
});

test('an egg for an egg-wash is brushed on', () => {
  expect(eaten('1 egg (for egg-wash)')?.best).toBe(0.8);
});

describe('pickles', () => {
  const jar = {
    others: ['300 g red onions', '1 cup white vinegar', '2 tbsp sugar', '1 tbsp salt'],
    steps: [
      'Boil the vinegar with sugar and salt and pour the hot vinegar over the onions in a jar.',
    ],
  };
  const about = (text: string) => ({
    ...jar,
    others: jar.others.filter((other) => other !== text),
  });

  test.each(['2 tbsp sugar', '1 tbsp salt', '1 cup white vinegar'])(
    '%s stays in the jar',
    (text) => {
      expect(eaten(text, about(text))?.best).toBe(0.4);
    },
  );

  test('a group says the same', () => {
    const steps = ['Stir and leave for an hour.'];
    const around = { others: ['200 ml rice vinegar', '1 cup sugar'], steps };
    expect(eaten('2 tbsp sugar', { ...around, group: 'Pickled radishes' })?.best).toBe(0.4);
    expect(eaten('2 tbsp sugar', { ...around, group: 'Cake' })).toEqual(ALL);
  });

  test.each([
    ['a second line of it may be for the dish', '2 tbsp sugar', ['1 cup sugar'], jar.steps],
    ['onions are eaten', '300 g red onions', [], jar.steps],
    ['a dressing is eaten', '2 tbsp sugar', [], ['Whisk it all and pour the dressing over.']],
  ])('%s', (_why, text, more, steps) => {
    const around = { ...about(text), steps };
    expect(eaten(text, { ...around, others: [...around.others, ...more] })).toEqual(ALL);
  });

  test('spoons of vinegar are a dressing', () => {
    const others = ['1 tbsp vinegar', '300 g cabbage'];
    expect(eaten('2 tbsp sugar', { others, steps: jar.steps })).toEqual(ALL);
  });
});

describe('salt that is rinsed off', () => {
  const others = ['1 kg white cabbage'];

  test.each([
    ['3 tbsp salt', ['Salt the cabbage. Rinse it well to remove the salt.'], 0.2],
    ['3 tbsp salt', ['Leave the cabbage with the salt for an hour, then rinse and drain.'], 0.2],
    ['1 tsp salt', ['Rinse the cabbage to remove the salt.'], 1],
    ['3 tbsp salt', ['Rinse the cabbage. Add the stock and the salt.'], 1],
  ])('%s, %j', (text, steps, share) => {
    expect(eaten(text, { others, steps })?.best).toBe(share);
  });
});

describe('what is strained out of a stock', () => {
  const steps = [
    'Simmer the bones with the onion, the carrots and the celery for three hours.',
    'Strain the stock and discard the vegetables.',
    'Bring it back to the boil, add the sliced carrots and the noodles.',
  ];
  const around = { others: ['2 carrots, sliced', '200 g egg noodles'], steps };

  test('leaves little of its sugar in the liquid', () => {
    expect(eaten('2 onions, quartered', around)?.best).toBe(0.3);
    expect(eaten('3 carrots, in chunks', around)?.best).toBe(0.3);
  });

  test('is not what goes in afterwards, nor what nobody throws away', () => {
    expect(eaten('2 carrots, sliced', { others: ['1 onion'], steps })).toEqual(ALL);
    expect(eaten('200 g egg noodles', { others: ['1 onion'], steps })).toEqual(ALL);
    const kept = [steps[0] ?? '', 'Strain the broth; purée the vegetables and stir them in.'];
    expect(eaten('2 onions, quartered', { others: [], steps: kept })).toEqual(ALL);
  });
});
