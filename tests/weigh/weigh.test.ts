import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foodTable } from '../../engine/foods/index.ts';
import { matchItem } from '../../engine/match/index.ts';
import { Weight } from '../../engine/model.ts';
import { parseLine } from '../../engine/parse/index.ts';
import { type Region, weighItem } from '../../engine/weigh/index.ts';

const foods = foodTable();

interface Around {
  region?: Region;
  others?: string[];
  steps?: string[];
  group?: string;
  title?: string;
}

function weigh(text: string, around: Around = {}): Weight | null {
  const line = parseLine(text, { group: around.group ?? null });
  const lines = [line, ...(around.others ?? []).map((other) => parseLine(other))];
  const [item] = line.items;
  if (!item) return null;
  const match = matchItem(item, line, { foods });
  const recipe = { title: around.title ?? '', steps: around.steps ?? [], lines };
  return weighItem(item, line, foods.byId(match?.foodId ?? ''), {
    region: around.region ?? 'us',
    recipe,
  });
}

const best = (text: string, around?: Around): number =>
  weigh(text, around)?.grams.best ?? Number.NaN;
const eaten = (text: string, around?: Around): Weight['eaten'] | undefined =>
  weigh(text, around)?.eaten;

describe('which reading counts', () => {
  test('a stated mass wins over a volume', () => {
    const weight = weigh('2 cups (250 g) all-purpose flour');
    expect(weight?.grams.best).toBeCloseTo(250);
    expect(weight?.basis).toBe('mass');
    expect(weight?.disagreement).toBeNull();
  });

  test('readings that differ beyond the scatter are both told', () => {
    const weight = weigh('1 cup (300 g) all-purpose flour');
    expect(weight?.grams.best).toBeCloseTo(300);
    expect(weight?.disagreement).toMatchObject({ stated: 300 });
    expect(weight?.disagreement?.other).toBeCloseTo(125);
  });

  test('a flour cup filled by another habit is no disagreement', () => {
    expect(weigh('1 cup (140 g) all-purpose flour')?.disagreement).toBeNull();
    expect(weigh('1 cup (115 g) all-purpose flour')?.disagreement).toBeNull();
  });

  test('a size said twice is no second quantity', () => {
    const weight = weigh('2 x 750g/1lb 10oz chicken breasts');
    expect(weight?.grams.best).toBeCloseTo(1500);
    expect(weight?.disagreement).toBeNull();
    expect(best('6 pork chops, 12 ounces each')).toBeGreaterThan(1300);
  });

  test('the grain of salt, rounded ounces and shapes are no disagreement', () => {
    expect(weigh('1 tbsp kosher salt (10 grams)')?.disagreement).toBeNull();
    expect(weigh('35g/1½oz unsalted butter')?.disagreement).toBeNull();
    expect(weigh('9 oz pork loin, cut into 1-inch cubes')?.disagreement).toBeNull();
  });

  test('sums are added, package sizes multiplied', () => {
    expect(best('1 cup plus 2 tbsp sugar')).toBeCloseTo(225, 0);
    expect(best('2 x 400g tins chopped tomatoes')).toBeCloseTo(800);
    expect(best('2 (14 oz) cans chopped tomatoes')).toBeCloseTo(28 * 28.3495, 0);
  });

  test('a range is its middle with the ends as bounds', () => {
    const weight = weigh('2-3 tbsp sugar');
    expect(weight?.grams.best).toBeCloseTo(31.3, 0);
    expect(weight?.grams.low).toBeLessThan(25.1);
    expect(weight?.grams.high).toBeGreaterThan(37.4);
  });
});

describe('lengths', () => {
  test('a diameter sizes a tortilla, and is only a shape on other counted foods', () => {
    expect(best('2 (8-inch) flour tortillas')).toBeCloseTo(98);
    expect(best('1 (10-inch) flour tortilla')).toBeCloseTo(72);
    expect(best('1 (1-inch) piece ginger')).toBeLessThan(20);
  });
});

describe('half-widths', () => {
  test('a weight is good to 2 %', () => {
    expect(weigh('200 g sugar')?.grams).toEqual({ low: 196, best: 200, high: 204 });
  });

  test('a liquid by cup is good to 5 %', () => {
    const grams = weigh('1 cup water')?.grams;
    expect((grams?.high ?? 0) / (grams?.best ?? 1)).toBeCloseTo(1.05);
  });

  test('all-purpose flour by cup runs from 110 to 137 g', () => {
    const grams = weigh('1 cup all-purpose flour')?.grams;
    expect(grams?.low).toBeCloseTo(110);
    expect(grams?.best).toBeCloseTo(125);
    expect(grams?.high).toBeCloseTo(137);
  });

  test('brown sugar neither packed nor loose spans both', () => {
    const grams = weigh('1 cup brown sugar')?.grams;
    expect(grams?.low).toBeCloseTo(145);
    expect(grams?.high).toBeCloseTo(220);
  });

  test('an onion of no stated size may be a third off, a sized one a tenth', () => {
    const loose = weigh('1 onion')?.grams;
    expect(loose?.low).toBeCloseTo(110 * 0.65);
    expect(loose?.high).toBeCloseTo(110 * 1.35);
    expect(weigh('1 large onion')?.grams.high).toBeCloseTo(165);
  });

  test('an egg of no stated size is 50 g, 12 % either way', () => {
    const grams = weigh('1 egg')?.grams;
    expect(grams?.best).toBe(50);
    expect(grams?.low).toBeCloseTo(44);
  });
});

describe('regions', () => {
  test('a cup and a spoon are as large as where the recipe comes from', () => {
    expect(best('1 cup water', { region: 'us' })).toBeCloseTo(236.6, 0);
    const us = best('1 cup milk', { region: 'us' });
    expect(best('1 cup milk', { region: 'au' }) / us).toBeCloseTo(250 / 236.588, 3);
    expect(
      best('1 tbsp milk', { region: 'au' }) / best('1 tbsp milk', { region: 'us' }),
    ).toBeCloseTo(20 / 14.787, 2);
    expect(
      best('1 pint milk', { region: 'uk' }) / best('1 pint milk', { region: 'us' }),
    ).toBeCloseTo(568.26 / 473.18, 2);
  });
});

describe('what is not all eaten', () => {
  test('frying, greasing, dusting', () => {
    expect(eaten('3 tbsp oil, for frying')).toEqual({ low: 0.2, best: 0.5, high: 0.9 });
    expect(eaten('butter, for greasing')).toEqual({ low: 0.5, best: 0.75, high: 1 });
    expect(weigh('flour, for dusting')?.grams).toEqual({ low: 5, best: 10, high: 20 });
    expect(eaten('flour, for dusting')?.best).toBe(0.5);
  });

  test('a bath of oil counts by what the food takes up', () => {
    const around = {
      others: ['600 g chicken breast', '120 g dry breadcrumbs', '2 eggs'],
      steps: ['Dip each piece in the egg, then the crumbs. Deep-fry until golden.'],
    };
    const weight = weigh('500 ml vegetable oil, for deep-frying', around);
    const oil = (weight?.grams.best ?? 0) * (weight?.eaten.best ?? 0);
    expect(oil).toBeGreaterThan(30);
    expect(oil).toBeLessThan(90);
  });

  test('crumbs and egg of a breaded dish stick in part', () => {
    const around = {
      others: ['600 g chicken breast', '2 eggs'],
      steps: ['Dredge the chicken in flour, dip in egg, then coat with the crumbs.'],
    };
    expect(eaten('120 g dry breadcrumbs', around)).toEqual({ low: 0.6, best: 0.75, high: 0.9 });
    expect(eaten('2 eggs', { ...around, others: ['120 g dry breadcrumbs'] })?.best).toBe(0.6);
  });

  test('salt for the pasta water counts by what the pasta takes up', () => {
    const weight = weigh('30 g salt, for the pasta water', { others: ['400 g spaghetti'] });
    const salt = (weight?.grams.best ?? 0) * (weight?.eaten.best ?? 0);
    expect(salt).toBeCloseTo(3.2, 1);
  });

  test('optional and serving lines stay out of the main sum', () => {
    expect(eaten('50 g parmesan, to serve')).toEqual({ low: 0, best: 0, high: 1 });
    expect(eaten('50 g walnuts (optional)')).toEqual({ low: 0, best: 0, high: 1 });
  });

  test('the extra is for dusting or garnish, the stated amount is eaten', () => {
    const all = { low: 1, best: 1, high: 1 };
    expect(eaten('200 g flour, plus extra for dusting')).toEqual(all);
    expect(eaten('2 tbsp butter, plus more for the pan')).toEqual(all);
    expect(eaten('1 tbsp chopped dill, plus more to garnish')).toEqual(all);
  });

  test('purposes are understood in other languages', () => {
    const line = { ...parseLine('100 g flour'), purpose: 'zum Bestäuben' };
    const [item] = line.items;
    if (!item) throw new Error('no item');
    const recipe = { title: '', steps: [], lines: [line] };
    const food = foods.byId('all-purpose-flour');
    expect(weighItem(item, line, food, { region: 'eu', recipe })?.eaten.best).toBe(0.5);
  });

  test('a bay leaf is taken out', () => {
    expect(eaten('2 bay leaves')?.high).toBe(0);
  });

  test('a marinade poured away is mostly not eaten, one that stays is', () => {
    const group = 'For the marinade';
    const away = ['Remove the chicken from the marinade, discard the marinade and grill.'];
    expect(eaten('100 ml olive oil', { group, steps: away })?.best).toBe(0.15);
    const kept = ['Pour the marinade over the chicken and bake.'];
    expect(eaten('100 ml olive oil', { group, steps: kept })).toEqual({ low: 1, best: 1, high: 1 });
  });
});

describe('without an amount', () => {
  test('salt to taste is a pinch until the whole recipe is weighed, and may be none', () => {
    const grams = weigh('salt, to taste', { others: ['1 kg potatoes'] })?.grams;
    expect(grams).toEqual({ low: 0, best: 0.3, high: 1.5 });
    expect(weigh('salt, to taste')).toBeNull();
  });

  test('nothing is said where nothing is known', () => {
    expect(weigh('fresh parsley')).toBeNull();
    expect(weigh('sour cream, to serve')).toBeNull();
  });
});

describe('assumptions are told', () => {
  test('the grain of salt', () => {
    const told = weigh('1 tbsp salt')?.assumptions.join(' ');
    expect(told).toContain('fine');
    expect(told).toContain('coarse');
  });

  test('a fraction that lost its blank is read as a mixed number, and told', () => {
    const weight = weigh('13/4 cups all-purpose flour');
    // 125 g a cup: 1.75 cups
    expect(weight?.grams.best).toBeCloseTo(218.75);
    expect(weight?.assumptions).toContain("'13/4' read as 1 3/4");
    for (const text of ['1 3/4 cups all-purpose flour', '3/4 cup all-purpose flour'])
      expect(weigh(text)?.assumptions.some((one) => one.includes('read as'))).toBe(false);
  });

  test('a lump likened to a thing is as large as that', () => {
    expect(best('a walnut-size ball of shortcrust pastry')).toBeCloseTo(15);
    expect(best('1 lump of butter the size of an egg')).toBeCloseTo(50);
    expect(best('2 fist-sized turnips')).toBeCloseTo(500);
    // the size is that of the pieces it is cut into
    expect(best('2 large potatoes, cut into walnut-size chunks')).toBeGreaterThan(300);
  });

  test('leaves on the stalk do not make it a leaf', () => {
    // 40 g a stalk: USDA SR 169988
    expect(best('4 celery stalks with their leaves')).toBeCloseTo(160);
  });

  test('a size in grams whose unit is left out is told by the ounces behind it', () => {
    expect(best('2 x 410/14.5oz tins of chopped tomatoes')).toBeCloseTo(820);
  });

  test('what is trimmed at home is less than a canteen leaves out, within the published share', () => {
    const weight = weigh('400 g asparagus, ends trimmed');
    // USDA SR 168389: 47 % refuse
    expect(weight?.grams.low).toBeLessThanOrEqual(400 * 0.53);
    expect(weight?.grams.best).toBeGreaterThan(400 * 0.6);
    expect(weight?.grams.high).toBeGreaterThanOrEqual(400);
    expect(weight?.assumptions.join()).toMatch(/assumed weight as bought/);
    // USDA SR 169246: 56 % of a leek is refuse
    expect(best('500 g leeks, white and light green parts only')).toBeCloseTo(220);
  });

  test('refuse is left out of what is bought whole, not of what is already trimmed', () => {
    expect(best('1 kg broccoli')).toBeLessThan(900);
    expect(best('1 kg broccoli florets')).toBeCloseTo(1000);
    expect(weigh('1 kg broccoli')?.assumptions.join(' ')).toContain('left out');
  });

  test('a drained can is less than its label weight, unless that is the drained weight', () => {
    expect(best('1 (15 oz) can black beans, drained and rinsed')).toBeCloseTo(425.24 * 0.6, 0);
    expect(best('1 (14 oz) can tomatoes')).toBeCloseTo(396.9, 0);
    expect(best('1 x 240g tin black beans (240 g drained weight)')).toBeCloseTo(240, 0);
  });

  test('a food without a cup weight says that its density is assumed', () => {
    const line = parseLine('1 cup moonberry puree');
    const [item] = line.items;
    if (!item) throw new Error('no item');
    const recipe = { title: '', steps: [], lines: [line] };
    const weight = weighItem(item, line, null, { region: 'us', recipe });
    expect(weight?.assumptions.join(' ')).toContain('assumed');
    expect(weight?.grams.low).toBeLessThan(weight?.grams.best ?? 0);
  });
});

const FOODS = [
  'sugar',
  'all-purpose flour',
  'whole milk',
  'butter',
  'onions',
  'eggs',
  'garlic',
  'salt',
];
const UNITS = ['g', 'kg', 'oz', 'lb', 'ml', 'cup', 'tbsp', 'tsp', ''];

describe('properties', () => {
  test('twice the amount weighs twice as much', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...FOODS),
        fc.constantFrom(...UNITS),
        fc.integer({ min: 1, max: 40 }),
        (food, unit, amount) => {
          const one = weigh(`${amount} ${unit} ${food}`.replace('  ', ' '));
          const two = weigh(`${2 * amount} ${unit} ${food}`.replace('  ', ' '));
          if (one === null || two === null) return one === two;
          const apart = Math.abs(two.grams.best - 2 * one.grams.best);
          return apart <= 1e-6 * Math.max(1, two.grams.best);
        },
      ),
      { numRuns: 300 },
    );
  });

  test('low <= best <= high and shares within 0..1, whatever the amounts say', () => {
    const amount = fc.record({
      quantity: fc.double({ min: 0, max: 1e6, noNaN: true }),
      max: fc.option(fc.double({ min: 0, max: 1e6, noNaN: true })),
      unit: fc.option(
        fc.oneof(fc.constantFrom(...UNITS, 'clove', 'can', 'inch', 'pinch'), fc.string()),
      ),
      kind: fc.constantFrom('stated' as const, 'same' as const, 'plus' as const, 'each' as const),
      approximate: fc.boolean(),
    });
    const line = parseLine('1 cup flour, for frying');
    fc.assert(
      fc.property(
        fc.array(amount, { maxLength: 4 }),
        fc.constantFrom(...foods.foods),
        fc.constantFrom<Region>('us', 'uk', 'eu', 'au'),
        fc.option(fc.string()),
        (amounts, food, region, size) => {
          const item = { amounts, size, name: food.name, preparation: null, alternatives: [] };
          const recipe = { title: '', steps: [], lines: [line] };
          const weight = weighItem(item, line, food, { region, recipe });
          if (weight === null) return true;
          const { grams, eaten: share } = weight;
          return (
            Weight.safeParse(weight).success &&
            grams.low <= grams.best &&
            grams.best <= grams.high &&
            share.low >= 0 &&
            share.low <= share.best &&
            share.best <= share.high &&
            share.high <= 1
          );
        },
      ),
      { numRuns: 500 },
    );
  });

  test('no line makes it throw', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 120 }), (text) => {
        weigh(text);
        return true;
      }),
      { numRuns: 300 },
    );
  });
});

describe('a unit that is missing', () => {
  const cups = ['2 cups flour', '1 1/2 cups sugar', '1 cup milk'];

  test('a fraction among cups is taken as cups, down to spoons', () => {
    const weight = weigh('3/4 cocoa powder', { others: cups });
    expect(weight?.grams.best).toBeCloseTo(best('3/4 cup cocoa powder'), 1);
    expect(weight?.grams.low).toBeLessThan(best('3/4 tbsp cocoa powder'));
    expect(weight?.assumptions.join()).toContain('no unit');
  });

  test.each([
    ['3/4 cocoa powder', ['200 g flour', '150 g sugar', '1 cup milk']],
    ['3 cocoa powder', cups],
  ])('%s is not weighed beside %j', (text, others) => {
    expect(weigh(text, { others })).toBeNull();
  });

  test('half of what has pieces is half a piece', () => {
    expect(best('1/2 onion', { others: cups })).toBeCloseTo(55, 0);
  });
});
