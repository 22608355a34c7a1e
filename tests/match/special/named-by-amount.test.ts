/** Names whose food hangs on the amount, the plural or the state. */
import { describe, expect, test } from 'vitest';
import { foodTable } from '../../../engine/foods/index.ts';
import { matchItem } from '../../../engine/match/index.ts';
import type { Match } from '../../../engine/model.ts';
import { parseLine } from '../../../engine/parse/index.ts';

const foods = foodTable();

function match(text: string): Match | null {
  const line = parseLine(text);
  const [item] = line.items;
  return item ? matchItem(item, line, { foods }) : null;
}

test.each([
  ['6 bone in, skin on chicken', 'chicken-thigh-skin'],
  ['8 bone-in chicken', 'chicken-thigh-skin'],
  ['1 chicken', 'chicken-whole'],
])('%s -> %s', (text, id) => {
  expect(match(text)?.foodId).toBe(id);
});

test.each([
  ['1/2 tsp salt & pepper', 'salt'],
  ['1/4 teaspoon sea salt & black pepper, or as you like it', 'salt'],
  ['3 tablespoons hazelnut coffee creamer', 'coffee-creamer'],
  ['1/4 cup sweet cream creamer', 'coffee-creamer'],
  ['1/4 cup fat-free half-and-half creamer', 'half-and-half-fat-free'],
  ['1 cup strong coffee', 'coffee'],
  ['1/2 cup lychee jelly', 'dessert-jelly'],
  ['100 g coconut jelly, in cubes', 'dessert-jelly'],
  ['2 tbsp redcurrant jelly', 'jelly-fruit'],
  ['1/4 cup mango popping boba', 'bursting-boba'],
  ['1 cup dried tapioca pearls', 'tapioca-pearl'],
  ['24 dried corn husks, soaked', undefined],
  ['2 tablespoons psyllium husk', 'psyllium-husk-whole'],
])('%s -> %s', (text, id) => {
  expect(match(text)?.foodId).toBe(id);
});

describe('pepper: spice or vegetable', () => {
  test.each([
    ['2 peppers, sliced', 'bell-pepper-red'],
    ['2 red peppers', 'bell-pepper-red'],
    ['1 green pepper, diced', 'bell-pepper-green'],
    ['peppers, seeded', 'bell-pepper-red'],
    ['1 pepper', 'bell-pepper-red'],
    ['1/2 pepper, diced', 'bell-pepper-red'],
    ['1 large pepper, chopped', 'bell-pepper-red'],
    ['1 cup chopped pepper', 'bell-pepper-red'],
    ['200g peppers', 'bell-pepper-red'],
    ['3 peppers (mixed colours)', 'bell-pepper-red'],
    ['pepper', 'black-pepper'],
    ['1 tsp pepper', 'black-pepper'],
    ['pinch of pepper', 'black-pepper'],
    ['fresh pepper', 'black-pepper'],
    ['1/4 tsp pepper, or to taste', 'black-pepper'],
    ['freshly ground pepper, to taste', 'black-pepper'],
    ['5 black peppercorns, crushed', 'black-pepper'],
    ['4 dried peppers', 'dried-chili'],
    ['3 hot peppers', 'red-chili'],
    ['1 jar roasted red peppers', 'roasted-red-pepper'],
  ])('%s -> %s', (text, id) => {
    expect(match(text)?.foodId).toBe(id);
  });
});

describe('tomato purée', () => {
  test.each([
    ['2 tbsp tomato purée', 'tomato-paste'],
    ['1 tsp tomato puree', 'tomato-paste'],
    ['1 dessert spoon tomato purée', 'tomato-paste'],
    ['1 cup tomato puree', 'tomato-puree'],
    ['400g tomato purée', 'tomato-puree'],
  ])('%s -> %s', (text, id) => {
    expect(match(text)?.foodId).toBe(id);
  });
});

describe('states and choices', () => {
  test.each([
    ['200g frozen mango cubes', 'mango'],
    ['2 frozen bananas', 'banana'],
  ])('freezing makes %s no less sure', (text, id) => {
    expect(match(text)).toMatchObject({ foodId: id });
    expect(match(text)?.confidence).toBeGreaterThan(0.9);
  });

  test.each([
    ['400ml canned or fresh coconut milk', 'coconut-milk-canned'],
    ['18 corn or 12 flour tortillas, warmed', 'corn-tortilla'],
    ['1 cup cooked rice', 'rice-white-cooked'],
    ['2 cups cooked chicken', 'chicken-cooked'],
    ['71 grams durum flour', 'semolina'],
  ])('%s -> %s', (text, id) => {
    expect(match(text)?.foodId).toBe(id);
  });

  test('corn and butter stay themselves beside another food with its own measure', () => {
    expect(match('1 cup corn or 2 cups tortilla chips')?.foodId).toBe('corn-kernels');
    expect(match('2 tbsp butter or 1 tbsp sesame oil')?.foodId).toBe('butter');
  });
});

describe('foods missing from the table before', () => {
  test.each([
    ['1 tsp herbes de provence', 'italian-seasoning'],
    ['2 clementines', 'clementine'],
    ['500ml custard', 'custard-ready'],
    ['250ml carrot juice', 'carrot-juice'],
    ['400g diced game', 'venison'],
    ['2 tbsp tamarind paste', 'tamarind-paste'],
    ['4 meringues', 'meringue-nests'],
    ['100g fondant icing', 'fondant'],
    ['100g ready-to-roll fondant icing', 'fondant'],
  ])('%s -> %s', (text, id) => {
    expect(match(text)?.foodId).toBe(id);
  });

  test.each(['1 cup seeds, cleaned', 'Gelato base'])('%s could be anything', (text) => {
    expect(match(text)).toBeNull();
  });
});

describe('the name and the words about it', () => {
  test.each([
    ['500g mussels in the shell, cleaned', 'mussels'],
    ['24 prunes with their pits', 'prune'],
    ['1 lime, juice only', 'lime-juice'],
    ['½ lime, zest and juice', 'lime-juice'],
    ['1 lemon, juiced', 'lemon-juice'],
    ['1 orange, zested', 'orange-zest'],
    ['1 lemon, cut into wedges', 'lemon'],
    ['4 passion fruit, pulp and seeds scooped out', 'passion-fruit'],
    ['24 large green olives stuffed with pimientos, onions, or jalapeños', 'olives-green'],
    ['1/2 can mackerel in tomato sauce', 'mackerel-canned'],
    ['400 g very fresh peas in their pods', 'peas-fresh'],
    ['3½ cups fresh-cooked black beans, drained', 'black-beans-cooked'],
    ['15 oz can pigeon peas, drained and rinsed', 'pigeon-peas-canned'],
    ['250g fudge, roughly chopped', 'fudge'],
  ])('%s -> %s', (text, id) => {
    expect(match(text)?.foodId).toBe(id);
  });

  test.each(['shells from 1 pound of shrimp', 'Neck and giblets from 1 turkey'])(
    '%s is none of the food',
    (text) => expect(match(text)).toBeNull(),
  );

  test('a dried fruit is never taken for the fresh one', () => {
    expect(match('½ cup dried kiwi, diced')?.foodId).not.toBe('kiwi');
    expect(match('½ cup dried mango')?.foodId).not.toBe('mango');
  });

  test('peppers of an unknown kind are a vegetable, said with doubt', () => {
    const found = match('1 cup zorbo peppers');
    expect(found?.foodId).toMatch(/bell-pepper/);
    expect(found?.confidence).toBeLessThan(0.7);
  });
});

describe('a weight of pasta is the packet, a cup of it what is on the plate', () => {
  test.each([
    ['10 oz wide egg noodles, cooked', 'egg-noodles-dry'],
    ['350 g fusilli, boiled and drained', 'pasta-dry'],
    ['350 g boiled fusilli', 'pasta-cooked'],
    ['350 g fusilli, cooked weight', 'pasta-cooked'],
    ['3 cups macaroni, cooked', 'pasta-cooked'],
    ['250 g cooked noodles', 'egg-noodles-cooked'],
  ])('%s -> %s', (text, id) => {
    expect(match(text)?.foodId).toBe(id);
  });
});

describe('grains and pulses by the cup, cooked', () => {
  test.each([
    ['2 cups cooked fusilli', 'pasta-cooked'],
    ['1 cup orzo, cooked', 'pasta-cooked'],
    ['3 cups cooked soba noodles', 'soba-cooked'],
    ['2 cups cooked wholemeal pasta', 'whole-wheat-pasta-cooked'],
    ['1 1/2 cups cooked wild rice', 'wild-rice-cooked'],
    ['2 cups cooked brown basmati rice', 'rice-brown-cooked'],
    ['2 cups leftover sticky rice', 'rice-glutinous-cooked'],
    ['1 cup cooked red lentils', 'lentils-cooked'],
    ['1 cup cooked yellow split peas', 'split-peas-cooked'],
    ['1 cup cooked peas', 'peas-cooked'],
    ['1 cup cooked black-eyed beans', 'black-eyed-peas-cooked'],
    ['1 cup cooked mung beans', 'mung-beans-cooked'],
    ['1 cup cooked spelt', 'spelt-grain-cooked'],
    ['1 cup cooked amaranth', 'amaranth-cooked'],
  ])('%s -> %s', (text, id) => {
    expect(match(text)?.foodId).toBe(id);
  });
});

describe('chicken by the words of its line', () => {
  test.each([
    ['2 cups shredded chicken', 'chicken-cooked'],
    ['500 g chicken, boneless and skinless, diced', 'chicken-breast'],
    ['1 lb chicken (breasts or thighs)', 'chicken-breast'],
    ['6 chicken, on the bone', 'chicken-thigh-skin'],
    ['1 whole chicken', 'chicken-whole'],
    ['2 racks of lamb', 'lamb-rack'],
  ])('%s -> %s', (text, id) => {
    expect(match(text)?.foodId).toBe(id);
  });
});

describe('seeds and sweets by the spoon', () => {
  test.each([
    ['2 tsp coriander', 'coriander-seed'],
    ['1 tsp coriander, chopped', 'cilantro'],
    ['¼ cup crushed peppermint', 'hard-candy'],
    ['3 sprigs peppermint', 'mint'],
  ])('%s -> %s', (text, id) => {
    expect(match(text)?.foodId).toBe(id);
  });
});

describe('grains that only want warming', () => {
  test.each([
    ['1 cup herbed ready rice', 'rice-white-cooked'],
    ['250 g microwave brown rice', 'rice-brown-cooked'],
    ['200 g ready-made rice noodles', 'rice-noodles-dry'],
    ['1 cup rice', 'rice-white-dry'],
  ])('%s -> %s', (text, id) => {
    expect(match(text)?.foodId).toBe(id);
  });
});

test('peppers beside salt without an amount are the spice', () => {
  const line = parseLine('salt and peppers to taste');
  const ids = line.items.map((item) => matchItem(item, line, { foods })?.foodId);
  expect(ids).toEqual(['salt', 'black-pepper']);
});
