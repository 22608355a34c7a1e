/** Bare words that stand for several foods: the usual one first, honestly unsure, the rest told. */
import { describe, expect, test } from 'vitest';
import { foodTable } from '../../../engine/foods/index.ts';
import ambiguous from '../../../engine/match/data/ambiguous.json' with { type: 'json' };
import { matchItem } from '../../../engine/match/index.ts';
import type { Food, Match } from '../../../engine/model.ts';
import { parseLine } from '../../../engine/parse/index.ts';

const foods = foodTable();

function match(text: string, table = foods): Match | null {
  const line = parseLine(text);
  const [item] = line.items;
  return item ? matchItem(item, line, { foods: table }) : null;
}

const net = (id: string): number => {
  const { carbohydrateG, fiberG } = foods.byId(id)?.per100g ?? {};
  return (carbohydrateG ?? 0) - (fiberG ?? 0);
};

describe('the list', () => {
  test('names foods of the table, each once a word', () => {
    for (const { names, foods: ids } of ambiguous) {
      expect(
        ids.filter((id) => foods.byId(id) === null),
        names[0],
      ).toEqual([]);
      expect(new Set(ids).size, names[0]).toBe(ids.length);
      expect(ids.length, names[0]).toBeGreaterThan(1);
    }
  });
});

describe('the usual food comes first, its rivals are told', () => {
  test.each([
    ['250 ml cream', 'cream-heavy', 'half-and-half'],
    ['⅓ cup dark baking chips', 'chocolate-dark-60', 'chocolate-semisweet'],
    ['90 g semi-sweet chips', 'chocolate-semisweet', 'chocolate-dark-70'],
    ['½ cup white chips', 'chocolate-white', 'chocolate-white-sugar-free'],
    ['⅔ cup chips', 'chocolate-semisweet', 'potato-chips'],
    ['2 cups chips, crushed', 'potato-chips', 'chocolate-semisweet'],
    ['300 g chips', 'potato-chips', 'potato-fries'],
    ['1 pot yogurt', 'yogurt-plain', 'yogurt-fruit'],
    ['2 cups milk', 'milk-whole', 'milk-low-fat'],
    ['150 g rice', 'rice-white-dry', 'rice-white-cooked'],
    ['3/4 cup coconut', 'coconut-dried-unsweetened', 'coconut-dried-sweetened'],
    ['200 ml coconut cream', 'coconut-cream', 'coconut-cream-sweetened'],
    ['1 pint stock', 'chicken-stock', 'vegetable-stock'],
    ['2 tbsp sugar', 'sugar', 'brown-sugar'],
    ['300 g beans', 'mixed-beans-canned', 'pinto-beans-dry'],
    ['1 cup corn', 'corn-kernels', 'corn-canned'],
    ['500 g squash', 'winter-squash', 'yellow-squash'],
    ['3 peppers', 'bell-pepper-red', 'bell-pepper-green'],
    ['80 g chocolate', 'chocolate-semisweet', 'chocolate-dark-70'],
    ['8 tortillas', 'flour-tortilla', 'corn-tortilla'],
    ['250 g noodles', 'egg-noodles-dry', 'rice-noodles-dry'],
    ['4 slices bread', 'bread-white', 'bread-whole-wheat'],
    ['2 scoops protein powder', 'whey-protein-concentrate', 'whey-protein-isolate'],
    ['60 g protein', 'whey-protein-concentrate', 'pea-protein-isolate'],
    ['1 tsp stevia', 'steviol-glycosides', 'sweetener-blend-erythritol'],
    ['1 glass wine', 'wine-white', 'wine-red'],
  ])('%s -> %s, or %s', (text, first, rival) => {
    const found = match(text);
    expect(found?.foodId).toBe(first);
    expect(found?.others.map(({ foodId }) => foodId)).toContain(rival);
  });

  test('the wider the carbohydrate of the candidates, the less sure the match', () => {
    const sureOf = (text: string): number => match(text)?.confidence ?? 1;
    // Per 100 g: chocolates 12 to 58 g net, milks all within 1 g of 5.
    expect(net('chocolate-semisweet') - net('chocolate-unsweetened')).toBeGreaterThan(40);
    expect(sureOf('80 g chocolate')).toBeLessThan(0.8);
    expect(Math.abs(net('milk-whole') - net('milk-skim'))).toBeLessThan(1);
    expect(sureOf('2 cups milk')).toBeGreaterThan(0.9);
    // Canned, dry and green beans: 4 to 47 g.
    expect(sureOf('300 g beans')).toBeLessThanOrEqual(0.5);
  });

  test('a word that says the kind settles it', () => {
    expect(match('200 ml whipping cream')?.confidence).toBeGreaterThan(0.9);
    expect(match('150 g cooked rice')?.foodId).toBe('rice-white-cooked');
    expect(match('1 can coconut cream')?.foodId).toBe('coconut-cream');
    expect(match('1 coconut')?.foodId).toBe('coconut-fresh');
    expect(match('1/2 cup stevia')?.foodId).toBe('sweetener-blend-erythritol');
  });

  test("a package of the user's own that bears the word settles it too", () => {
    const built = foods.byId('whey-protein-isolate') as Food;
    const own: Food = {
      ...built,
      id: 'my-protein',
      name: 'protein powder',
      aliases: [],
      source: { kind: 'label', id: null, note: null },
    };
    const found = match('2 scoops protein powder', foodTable([own]));
    expect(found?.foodId).toBe('my-protein');
    expect(found?.confidence).toBeGreaterThan(0.9);
  });
});

describe('what is free of gluten', () => {
  test.each([
    ['2 tsp gluten-free baking powder', 'baking-powder'],
    ['300 g gluten free flour', 'gluten-free-flour-blend'],
    ['2 tbsp vital wheat gluten', 'vital-wheat-gluten'],
  ])('%s is %s', (text, id) => {
    expect(match(text)?.foodId).toBe(id);
  });

  test('gluten is no rival of a flour that is not known', () => {
    for (const text of ['200 g cricket flour', '300 g gluten-free flour'])
      expect(match(text)?.others.map(({ foodId }) => foodId)).not.toContain('vital-wheat-gluten');
  });
});
