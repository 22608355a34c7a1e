import { describe, expect, it } from 'vitest';
import { parseLine } from '../../engine/parse/index.ts';

/** Amounts as short text: '2 can; 14 oz each', '1-2 tsp', '3'. */
function amounts(text: string, language?: string): string {
  return parseLine(text, { language: language ?? 'en' })
    .items.flatMap((item) => item.amounts)
    .map((a) => {
      const quantity = Math.round(a.quantity * 1000) / 1000;
      const range = a.max === null ? `${quantity}` : `${quantity}-${a.max}`;
      const kind = a.kind === 'stated' ? '' : ` ${a.kind}`;
      return `${a.approximate ? '~' : ''}${range}${a.unit ? ` ${a.unit}` : ''}${kind}`;
    })
    .join('; ');
}

describe('numbers', () => {
  it.each([
    ['1 1/2 cups milk', '1.5 cup'],
    ['1-1/2 cups milk', '1.5 cup'],
    ['1½ cups milk', '1.5 cup'],
    ['1 ½ cups milk', '1.5 cup'],
    ['1&frac12; cups milk', '1.5 cup'],
    ['1/4 tsp salt', '0.25 tsp'],
    ['1⁄4 tsp salt', '0.25 tsp'],
    ['0.5 l water', '0.5 l'],
    ['1,5 kg potatoes', '1.5 kg'],
    ['1,000 g flour', '1000 g'],
    ['two eggs', '2'],
    ['a dozen eggs', '12'],
    ['2 to 3 dozen mussels', '24-36'],
    ['1-2 dozen eggs', '12-24'],
    ['1 dozen to 2 dozen figs', '12-24'],
    ['half a cup of sugar', '0.5 cup'],
    ['2-3 tbsp oil', '2-3 tbsp'],
    ['2–3 tbsp oil', '2-3 tbsp'],
    ['2 to 3 tbsp oil', '2-3 tbsp'],
    ['2 or 3 carrots', '2-3'],
    ['½ to ¾ cup water', '0.5-0.75 cup'],
    ['one or two onions', '1-2'],
    ['200g flour', '200 g'],
    ['Flour 200 g', '200 g'],
    ['about 200 g flour', '~200 g'],
    ['325ml-350ml warm water', '325-350 ml'],
    ['1 cup to 1½ cups milk', '1-1.5 cup'],
    ['14 oz to 1 lb cod', '14-16 oz'],
    ['1 and 1/2 cups milk', '1.5 cup'],
    ['a couple of tablespoons milk', '2 tbsp'],
    ['a few drops vanilla', '~2-4 drop'],
    ['scant 1/2 cup flour', '~0.5 cup'],
    ['one and three quarter pints stock', '1.75 pint'],
    ['two thirds of a cup of rice', '0.667 cup'],
    ['half a dozen figs', '6'],
    ['two hundred grams polenta', '200 g'],
    ['1 000 g rye flour', '1000 g'],
    ['1\u202f500 g rye flour', '1500 g'],
    ['2 through 3 limes', '2-3'],
    ['3- to 4-inch stick of cinnamon', '1 stick; 3-4 inch each'],
    ['4 three-inch biscuits', '4'],
    ['1 cup minus 2 tbsp oat flour', '0.875 cup'],
    ['1 kg less 100 g plums', '0.9 kg'],
    ['2 gallons minus some', '2 gallon'],
    ['1³⁄₄ cups bran', '1.75 cup'],
    ['6 ½-inch rounds of polenta', '6 round; 0.5 inch each'],
    ['2 ½-inch piece of ginger', '1 piece; 2.5 inch each'],
    ['2 1-cup bags of berries', '2 bag; 1 cup each'],
    ['2-3 1 cup pots', '2-3 pot; 1 cup each'],
    ['1 litre or so of stock', '~1 l'],
    ['up to 3 tbsp water', '~3 tbsp'],
    ['several figs', '~2-4'],
    ['some figs', ''],
    ['one (1) fig', '1'],
    ['11/3 cups barley flour', '1.333 cup'],
    ['23/4 cups oats', '2.75 cup'],
    ['31/2 tbsp oil', '3.5 tbsp'],
    ['15/8 tsp cream of tartar', '1.625 tsp'],
    ['11/4-13/4 cups milk', '1.25-1.75 cup'],
    ['5/2 cups bran', '2.5 cup'],
    ['9/16 cup bran', '0.563 cup'],
    ['2% milk', ''],
    ['200 g quark, 40% fat', '200 g'],
    ['1 cup 1:2 simple syrup', '1 cup'],
  ])('%s', (text, want) => {
    expect(amounts(text)).toBe(want);
  });
});

describe('sums, products and dual measures', () => {
  it.each([
    ['1 cup plus 2 tbsp flour', '1 cup; 2 tbsp plus'],
    ['1 lb 2 oz beef', '1 lb; 2 oz plus'],
    ['2 cups honey + 3 tbsp', '2 cup; 3 tbsp plus'],
    ['¾ cup rye flour plus 2 tbsp', '0.75 cup; 2 tbsp plus'],
    ['1 cup bran plus about 1 tbsp, toasted', '1 cup; ~1 tbsp plus'],
    ['1 cup rye flour plus 2 tbsp for dusting', '1 cup'],
    ['½ box macaroni (8 oz)', '0.5 box; 8 oz same'],
    ['2 boxes macaroni (8 oz)', '2 box; 8 oz each'],
    ['½ (16 oz) box macaroni', '0.5 box; 16 oz each'],
    ['2 x 400 g tins chopped tomatoes', '2 tin; 400 g each'],
    ['2 (14 oz) cans black beans', '2 can; 14 oz each'],
    ['1 can (14 oz) black beans', '1 can; 14 oz each'],
    ['two 8-ounce packages cream cheese', '2 package; 8 oz each'],
    ['4 (6 oz) fillets salmon', '4; 6 oz each'],
    ['1 3/4 cups (210 g) bread flour', '1.75 cup; 210 g same'],
    ['100g/4oz butter', '100 g; 4 oz same'],
    ['2 cups | 250 g flour', '2 cup; 250 g same'],
    ['10 tbsp (5 oz / 142 g) butter', '10 tbsp; 5 oz same; 142 g same'],
    ['475g/1lb 1oz currants', '475 g; 1 lb same; 1 oz plus'],
    ['2-inch piece of ginger', '1 piece; 2 inch each'],
    ['400 g tin coconut milk', '1 tin; 400 g each'],
    ['3 pounds, 8 ounces pears', '3 lb; 8 oz plus'],
    ['1 lb / 450 g pears', '1 lb; 450 g same'],
    ['2 - 8 oz packages curd', '2 package; 8 oz each'],
    ['1- 14 oz can beets', '1 can; 14 oz each'],
    ['1, 14 oz can beets', '1 can; 14 oz each'],
    ['12 - 16 oz package pasta', '1 package; 12-16 oz each'],
    ['1 -1/2 cups oats', '1.5 cup'],
    ['1 – 1½ cups oats', '1-1.5 cup'],
    ['⅔ cup (for the crust)/ 3 ounces/ 85 grams oat flour', '0.667 cup; 3 oz same; 85 g same'],
    ['1 (10-14) pound goose', '1; 10-14 lb each'],
    ['1 whole 2- to 3-kg trout', '1; 2-3 kg each'],
    ['1 boneless 4-lb/1.8-kg shoulder', '1; 4 lb each; 1.8 kg each'],
    ['2 cups (one 15-ounce can) pumpkin', '2 cup; 1 can same; 15 oz each'],
    ['1 box (two 8-oz packets) noodles', '1 box; 16 oz each'],
    ['3 cups cooked lentils, or 2 (15-ounce) tins', '3 cup; 2 tin same; 15 oz each'],
    ['1 #10 can beets', '1 can'],
    ['½ tsp or a few drops of rose water', '0.5 tsp; ~2-4 drop same'],
    ['2 cups oats, cut into 1-inch (2.5 cm) squares', '2 cup'],
    ['600 g beef, shaped into 4 (150 g) patties', '600 g'],
    ['3 oz paste (half of a 6-oz tube)', '3 oz; 0.5 tube same; 6 oz each'],
    ['half of a 300 g bag carrots', '0.5 bag; 300 g each'],
    ['half of one leek', '0.5'],
    ['½ a small bunch of dill', '0.5 bunch'],
    ['1 to 2 tbsp (15ml to 30ml) stock', '1-2 tbsp; 15-30 ml same'],
    ['Leeks 2-3, sliced', '2-3'],
    ['Flour type 550, sifted', ''],
    ['the juice of one lime', '1'],
    ['grated rind & juice of 2 limes', '2'],
    ['1 (2-cm) knob galangal', '1 knob; 2 cm each'],
    ['1 doz. figs', '12'],
    ['a pinch or two of mace', '1-2 pinch'],
    ['4 x figs', '4'],
    ['figs x 4', '4'],
    ['juice 2 limes', '2'],
    ['finely grated zest and juice 1 orange', '1'],
    ['1 tsp salt, plus a little more', '1 tsp'],
    ['1 cup carrots cut into ½-inch rounds', '1 cup'],
  ])('%s', (text, want) => {
    expect(amounts(text)).toBe(want);
  });
});

it.each([
  ['sprinkles optional', true],
  ['optional sprinkles', true],
  ['1/4 cup sugar Reserve 1 tablespoon for the optional rim', false],
  ['1/4 cup sugar (reserve 1 tbsp for the optional rim)', false],
])('%s: optional %s', (text, optional) => {
  expect(parseLine(text).optional).toBe(optional);
});

describe('many foods on one line', () => {
  it.each([
    [30, 30],
    [40, 40],
    [41, 1],
    [400, 1],
  ])('%i names are %i foods: more than a line ever has is prose', (names, foods) => {
    const text = Array.from({ length: names }, () => 'water').join(' and ');
    expect(parseLine(text, { language: 'en' }).items).toHaveLength(foods);
  });
});
