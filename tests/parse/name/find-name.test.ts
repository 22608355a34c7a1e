import { describe, expect, it } from 'vitest';
import { parseLine } from '../../../engine/parse/index.ts';

describe('name, preparation, note and purpose', () => {
  it.each([
    ['1 cup butter, softened', 'butter', 'softened', null, null],
    [
      '2 tbsp finely chopped fresh parsley, plus extra to serve',
      'fresh parsley',
      'finely chopped',
      'plus extra to serve',
      null,
    ],
    ['1 (3-pound) chicken, cut up', 'chicken', 'cut up', null, null],
    ['salt and freshly ground pepper', 'salt and pepper', 'freshly ground', null, null],
    ['oil for frying', 'oil', null, null, 'for frying'],
    ['1 onion, peeled and thinly sliced', 'onion', 'peeled and thinly sliced', null, null],
    ['2 cloves garlic, minced', 'garlic', 'minced', null, null],
    ['3 garlic cloves', 'garlic', null, null, null],
    ['1 can crushed tomatoes', 'crushed tomatoes', null, null, null],
    [
      '½ cup Parmesan cheese, grated, for serving',
      'Parmesan cheese',
      'grated',
      null,
      'for serving',
    ],
    ['1 tsp salt, or to taste', 'salt', null, 'or to taste', null],
    [
      '4 boneless, skinless chicken breasts',
      'boneless, skinless chicken breasts',
      null,
      null,
      null,
    ],
    ['1 cup basil, cilantro, or parsley', 'basil, cilantro, or parsley', null, null, null],
    [
      '2 cups peeled, cored, and diced pineapple',
      'pineapple',
      'peeled, cored, and diced',
      null,
      null,
    ],
    ['¼ cup toasted sesame oil', 'toasted sesame oil', null, null, null],
    ['1 tsp ground cinnamon', 'ground cinnamon', null, null, null],
    ['2 rib eye steaks', 'rib eye steaks', null, null, null],
    ['4 salmon fillets', 'salmon fillets', null, null, null],
    ['½ chili pepper', 'chili pepper', null, null, null],
    ['240 g plain (all-purpose) flour', 'plain flour (all-purpose)', null, null, null],
    [
      '90 g sun-dried, peeled and halved tomatoes',
      'sun-dried tomatoes',
      'peeled and halved',
      null,
      null,
    ],
    ['6 cardamoms, whole', 'cardamoms', 'whole', null, null],
    ['5 cloves, whole', 'cloves', 'whole', null, null],
    ['1 whole 3-pound duck', 'whole duck', null, null, null],
    ['1 tsp salt (scant)', 'salt', 'scant', null, null],
    ['a heaped cup of oats', 'oats', 'heaped', null, null],
    ['2 parsnips, coarsely chopped', 'parsnips', 'coarsely chopped', null, null],
    ['2 parsnips, roughly 200 g', 'parsnips', null, null, null],
    ['300 g swede, diced to serve', 'swede', 'diced', null, 'to serve'],
    [
      '1 cup greens, such as mustard, beet, or turnip',
      'greens',
      null,
      'such as mustard, beet, or turnip',
      null,
    ],
    ['1 lb turkey breast, smoked or roasted', 'turkey breast', 'smoked or roasted', null, null],
    ['6 tbsp oat milk (30 ml more if dry)', 'oat milk', null, '30 ml more if dry', null],
    [
      '800 g pork, diced into 3 cm (1 in) cubes',
      'pork',
      'diced into 3 cm (1 in) cubes',
      null,
      null,
    ],
    ['1 cup cream (36%)', 'cream', null, '36%', null],
    ["3 tbsp 'quick' oats", "'quick' oats", null, null, null],
    ['1 passion fruit, pulp and seeds only', 'passion fruit', 'pulp and seeds only', null, null],
    ['2 cups 1-inch pieces rhubarb', 'rhubarb', '1-inch pieces', null, null],
    ['Additional 50 g butter', 'butter', null, 'Additional', null],
    ['a little softened lard', 'lard', 'softened', 'a little', null],
    ['handful of herbs, such as dill, mint, sage', 'herbs', null, 'such as dill, mint, sage', null],
    ['salt as per taste', 'salt', null, 'as per taste', null],
    ['2 fat garlic cloves', 'garlic', 'fat', null, null],
    ['3 thick leeks', 'thick leeks', null, null, null],
    ['1 bag or box penne', 'penne', null, 'or box', null],
  ])('%s', (text, name, preparation, note, purpose) => {
    const line = parseLine(text);
    expect(line.name).toBe(name);
    expect(line.items.at(-1)?.preparation ?? null).toBe(preparation);
    expect(line.note).toBe(note);
    expect(line.purpose).toBe(purpose);
  });
});

describe('what kind of line it is', () => {
  it.each([
    ['For the sauce:', 'heading'],
    ['Topping:', 'heading'],
    ['For the dough', 'heading'],
    ['For dough', 'heading'],
    ['For serving: figs', 'ingredient'],
    ['1 batch pizza dough (recipe follows)', 'reference'],
    ['dough, recipe above', 'reference'],
    ['Custard (see recipe below)', 'reference'],
    ['250 g custard (recipe below) or store-bought', 'ingredient'],
    ['6 cups fish stock, shop-bought or homemade (recipe follows)', 'ingredient'],
    ['350 g shortcrust, recipe below', 'reference'],
    ['¾ cup boiled millet (see Note below)', 'ingredient'],
    ['3 cups rye flour (see above)', 'ingredient'],
    ['mint leaves, kept back (see below)', 'ingredient'],
    ['60 g cream, from above', 'ingredient'],
    ['FROSTING', 'heading'],
    ['Streusel', 'heading'],
    ['Egg wash', 'heading'],
    ['TREACLE', 'ingredient'],
    ['1 crust', 'ingredient'],
    ['1 egg', 'ingredient'],
  ])('%s is a %s', (text, kind) => {
    expect(parseLine(text).kind).toBe(kind);
  });

  it.each([
    ['120 g Grieß (siehe Tipp)', 'de', 'ingredient'],
    ['Mürbeteig (siehe Rezept unten)', 'de', 'reference'],
    ['250 g de semoule (voir ci-dessous)', 'fr', 'ingredient'],
    ['crème pâtissière (recette ci-dessous)', 'fr', 'reference'],
    ['200 g di burro (vedi sotto)', 'it', 'ingredient'],
    ['FÜLLUNG', 'de', 'heading'],
    ['Glassa', 'it', 'heading'],
    ['Vulling', 'nl', 'heading'],
  ])('%s (%s) is a %s', (text, language, kind) => {
    expect(parseLine(text, { language }).kind).toBe(kind);
  });

  it('sees what is optional', () => {
    expect(parseLine('½ cup walnuts (optional)').optional).toBe(true);
    expect(parseLine('Optional: 1 tsp vanilla').optional).toBe(true);
    expect(parseLine('1 tsp vanilla').optional).toBe(false);
  });

  it('keeps the group and the text as given', () => {
    const line = parseLine('  • 1 egg* ', { group: 'Dough' });
    expect(line.text).toBe('  • 1 egg* ');
    expect(line.group).toBe('Dough');
    expect(line.name).toBe('egg');
  });
});

describe('several foods and alternatives', () => {
  it('makes two items of two foods', () => {
    const line = parseLine('salt and freshly ground black pepper');
    expect(line.items.map((item) => item.name)).toEqual(['salt', 'black pepper']);
  });

  it.each([
    ['2 tbsp butter or margarine', 'butter', ['margarine']],
    ['1 cup chicken or vegetable stock', 'chicken stock', ['vegetable stock']],
    ['1 tbsp lemon or lime juice', 'lemon juice', ['lime juice']],
    ['3 tbsp avocado, peanut, or canola oil', 'avocado oil', ['peanut oil', 'canola oil']],
    ['2 tbsp butter or olive oil', 'butter', ['olive oil']],
    ['2 orange, yellow or red peppers', 'orange peppers', ['yellow peppers', 'red peppers']],
    [
      'dried red Thai, ancho, or pasilla chiles',
      'dried red Thai chiles',
      ['ancho chiles', 'pasilla chiles'],
    ],
    ['1 tin dried or fresh apricot halves', 'dried apricot halves', ['fresh apricot halves']],
    ['1 cup fresh or thawed currants', 'fresh currants', ['thawed currants']],
    ['1 cup jasmine rice or other white rice', 'jasmine rice', ['other white rice']],
    ['100 g Gouda or Edam cheese', 'Gouda cheese', ['Edam cheese']],
    ['100 g butter or cheddar cheese', 'butter', ['cheddar cheese']],
    ['6 corn or 4 flour tortillas', 'corn tortillas', ['flour tortillas']],
    ['1 chilli, or pinch of cayenne', 'chilli', ['cayenne']],
    ['2 tsp. Sumac or 1 tsp. Paprika', 'Sumac', ['Paprika']],
    ['sherry or other sweet, fortified wine', 'sherry', ['other sweet, fortified wine']],
    ['rolls, buns, or flatbreads, or other bread', 'rolls', ['buns', 'flatbreads', 'other bread']],
    ['1 loaf bread or thinly sliced brioche', 'bread', ['thinly sliced brioche']],
  ])('%s', (text, name, others) => {
    const [item] = parseLine(text).items;
    expect(item?.name).toBe(name);
    expect(item?.alternatives.map((a) => a.name)).toEqual(others);
  });

  it('gives an alternative its own amount', () => {
    const [item] = parseLine('1 cup milk or 3/4 cup cream').items;
    expect(item?.name).toBe('milk');
    expect(item?.amounts.map((a) => a.quantity)).toEqual([1]);
    expect(item?.alternatives).toEqual([
      {
        name: 'cream',
        amounts: [{ quantity: 0.75, max: null, unit: 'cup', kind: 'stated', approximate: false }],
      },
    ]);
  });
});

describe('sizes', () => {
  it.each([
    ['2 large eggs', 'large', 'eggs'],
    ['1 lg onion', 'lg', 'onion'],
    ['1 ripe medium tomato', 'medium', 'ripe tomato'],
    ['3 small to medium carrots', 'small to medium', 'carrots'],
    ['4 medium-sized potatoes', 'medium-sized', 'potatoes'],
  ])('%s', (text, size, name) => {
    const [item] = parseLine(text).items;
    expect(item?.size).toBe(size);
    expect(item?.name).toBe(name);
  });
});

describe('left-overs of pages', () => {
  it.each([
    ['1 cup cream* ($2.50)', 'cream'],
    ['1 cup cr&egrave;me &amp; co', 'crème & co'],
    ['▢ 1 cup milk', 'milk'],
    ['- 1 cup milk', 'milk'],
    ['1\u00a0cup\u00a0milk', 'milk'],
    ['<b>1 cup</b> milk', 'milk'],
    ['[x] 1 cup milk', 'milk'],
    ['2) 1 cup milk', 'milk'],
    ['“1 cup milk”', 'milk'],
    ['1 cup milk²', 'milk'],
    ['1 cup milk https://example.org/milk', 'milk'],
  ])('%s', (text, name) => {
    const line = parseLine(text);
    expect(line.name).toBe(name);
    expect(line.items[0]?.amounts).toEqual([
      { quantity: 1, max: null, unit: 'cup', kind: 'stated', approximate: false },
    ]);
  });
});

describe('further foods with their own amounts', () => {
  const foods = (text: string): unknown[] =>
    parseLine(text).items.map((item) => [
      item.name,
      item.amounts.map((a) => `${a.quantity} ${a.unit}`),
    ]);

  it.each([
    [
      '2 eggs plus 1 egg yolk',
      [
        ['eggs', ['2 null']],
        ['egg yolk', ['1 null']],
      ],
    ],
    [
      '¼ tsp each salt and pepper',
      [
        ['salt', ['0.25 tsp']],
        ['pepper', ['0.25 tsp']],
      ],
    ],
    [
      '3 leeks, 1 onion and 2 carrots, sliced',
      [
        ['leeks', ['3 null']],
        ['onion', ['1 null']],
        ['carrots', ['2 null']],
      ],
    ],
    [
      '1 green and 2 red apples',
      [
        ['green apples', ['1 null']],
        ['red apples', ['2 null']],
      ],
    ],
    [
      'salt, dried sage, smoked paprika to taste',
      [
        ['salt', []],
        ['dried sage', []],
        ['smoked paprika', []],
      ],
    ],
    [
      'Optional toppings: chives, capers, dill',
      [
        ['chives', []],
        ['capers', []],
        ['dill', []],
      ],
    ],
    [
      'flour, salt and ground mace',
      [
        ['flour', []],
        ['salt', []],
        ['ground mace', []],
      ],
    ],
    [
      '1 tsp each: cumin, coriander, paprika',
      [
        ['cumin', ['1 tsp']],
        ['coriander', ['1 tsp']],
        ['paprika', ['1 tsp']],
      ],
    ],
  ])('%s', (text, want) => {
    expect(foods(text)).toEqual(want);
  });

  it('gives each food the preparation that stands before it', () => {
    expect(
      parseLine('softened butter and chopped chives').items.map((item) => [
        item.name,
        item.preparation,
      ]),
    ).toEqual([
      ['butter', 'softened'],
      ['chives', 'chopped'],
    ]);
  });

  it('takes a label off', () => {
    expect(parseLine('Egg wash: 1 egg')).toMatchObject({ name: 'egg', purpose: 'Egg wash' });
    expect(parseLine('For serving: lemon wedges').name).toBe('lemon wedges');
    expect(parseLine('Sugar: 1 cup').name).toBe('Sugar');
  });

  it('reads no amount out of percentages and ratios', () => {
    expect(foods('100% whole wheat flour')).toEqual([['100% whole wheat flour', []]]);
    expect(foods('1 pound ground beef (80/20)')).toEqual([['ground beef', ['1 lb']]]);
  });
});
