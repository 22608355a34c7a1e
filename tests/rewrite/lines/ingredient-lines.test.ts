import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { matchItem } from '../../../engine/match/index.ts';
import { parseLine } from '../../../engine/parse/index.ts';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { itemText } from '../../../engine/rewrite/lines/line-wording.ts';
import { kitchenGrams } from '../../../engine/rewrite/lines/written-amounts.ts';
import { weighItem } from '../../../engine/weigh/index.ts';
import { foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

const LINES = [
  '500 g bread flour, sifted',
  '350 g water',
  '10 g fine salt',
  '1 tsp dry yeast',
  '2 eggs, beaten',
  'salt and pepper',
];
const recipe = makeRecipe('Loaf', LINES, []);
const ingredients = understand(recipe);
const plan = makePlan(
  'lean-yeast-bread',
  ingredients,
  [
    { key: '0', kept: 150, to: [['low-carb-wheat-flour-blend', 350]] },
    { key: '1', kept: 430, to: [] },
    { key: '4', kept: 150, to: [] },
  ],
  { added: [['xanthan-gum', 2.8, 'binder']], reserveWaterG: 35 },
);
const { lines } = rewriteRecipe(recipe, ingredients, plan, { foods, region: 'us' });

/** Grams and food that a line's text is read as. */
function readBack(text: string): { foodId: string | null; grams: number | null } {
  const line = parseLine(text);
  const item = line.items[0];
  if (item === undefined) return { foodId: null, grams: null };
  const match = matchItem(item, line, { foods });
  const food = match === null ? null : foods.byId(match.foodId);
  const options = { region: 'us' as const, recipe: { title: '', steps: [], lines: [line] } };
  const weight = weighItem(item, line, food, options);
  return { foodId: match?.foodId ?? null, grams: weight?.grams.best ?? null };
}

describe('lines', () => {
  it('keeps untouched lines word for word, also those with several foods', () => {
    const kept = lines.filter(({ change }) => change === 'kept');
    expect(kept.map(({ after }) => after)).toEqual([
      '10 g fine salt',
      '1 tsp dry yeast',
      'salt and pepper',
    ]);
    expect(kept.every(({ before, after }) => before === after)).toBe(true);
  });

  it('keeps the name and preparation of a line whose amount changed', () => {
    const flour = lines.find(({ key }) => key === '0');
    expect(flour).toMatchObject({ change: 'amount', before: '500 g bread flour, sifted' });
    expect(flour?.after).toMatch(/^150 g .*bread flour, sifted$/);
  });

  it('puts stand-ins behind their line and other additions last', () => {
    const order = lines.map(({ key }) => key);
    expect(order.indexOf('0>low-carb-wheat-flour-blend')).toBe(1);
    expect(order.at(-1)).toBe('new.xanthan-gum');
    expect(new Set(order).size).toBe(order.length);
  });

  it('counts eggs whole and binders in quarter teaspoons', () => {
    expect(lines.find(({ key }) => key === '4')?.after).toBe(
      '3 large eggs (150 g shelled), beaten',
    );
    expect(lines.find(({ key }) => key === 'new.xanthan-gum')?.after).toMatch(
      /^1 tsp \(2\.8 g\) xanthan gum$/,
    );
  });

  it('says how much water is kept back', () => {
    expect(lines.find(({ key }) => key === '1')?.why).toContain('35 g more');
  });

  it('marks a line that is dropped and one that is replaced', () => {
    const cake = makeRecipe('Cake', ['100 g sugar', '20 g honey'], []);
    const read = understand(cake);
    const changes = [
      {
        key: '0',
        kept: 0,
        to: [['allulose', 100, 'sweetness']] as [string, number, 'sweetness'][],
      },
      { key: '1', kept: 0, to: [] },
    ];
    const rewritten = rewriteRecipe(cake, read, makePlan('cake', read, changes), {
      foods,
      region: 'us',
    }).lines;
    expect(rewritten).toMatchObject([
      { change: 'replaced', before: '100 g sugar', why: 'reason 0' },
      { change: 'removed', before: '20 g honey', after: null },
    ]);
    expect(rewritten[0]?.after).toMatch(/^100 g .*allulose$/);
  });

  it('shows no cups where cups are not used', () => {
    const uk = rewriteRecipe(recipe, ingredients, plan, { foods, region: 'uk' }).lines;
    expect(uk.some(({ after }) => /cup/.test(after ?? ''))).toBe(false);
  });

  const ids = [
    'bread-flour',
    'low-carb-wheat-flour-blend',
    'vital-wheat-gluten',
    'resistant-wheat-starch',
    'oat-fibre',
    'almond-flour',
    'coconut-flour',
    'xanthan-gum',
    'psyllium-husk-whole',
    'allulose',
    'erythritol',
    'water',
    'egg',
    'butter',
    'zucchini',
    'cauliflower',
    'konjac-noodles',
    'hearts-of-palm',
    'cream-cheese',
    'parmesan',
    'chocolate-unsweetened',
  ];

  it('writes lines that are read back as the same food and grams', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...ids),
        fc.double({ min: 0.7, max: 900, noNaN: true }),
        (foodId, grams) => {
          const food = foods.byId(foodId);
          if (food === null) throw new Error(`${foodId} is not in the table`);
          const role = /xanthan|psyllium/.test(foodId) ? 'binder' : 'other';
          const planned = {
            key: 'new',
            foodId,
            foodName: food.name,
            grams,
            eaten: { low: 1, best: 1, high: 1 },
            role,
          } as const;
          const text = itemText(planned, { plan, foods, region: 'us' });
          const read = readBack(text);
          expect(read.foodId, text).toBe(foodId);
          expect(read.grams, text).toBeCloseTo(kitchenGrams(food, grams, role), 6);
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe('a root in place of potatoes', () => {
  const rootLine = (line: string, foodId: string): string => {
    const dish = makeRecipe('Soup', [line, '1 litre water'], []);
    const read = understand(dish);
    const soup = makePlan('potato-dish', read, [{ key: '0', kept: 0, to: [[foodId, 500]] }]);
    return rewriteRecipe(dish, read, soup, { foods, region: 'us' }).lines[0]?.after ?? '';
  };

  it.each([
    [
      '500 g potato, peeled and chopped in small chunks',
      'kohlrabi',
      /kohlrabi, peeled and chopped in small chunks/,
    ],
    [
      '500 g potato, peeled and chopped in small chunks',
      'chayote',
      /chayote, stoned, peeled and chopped/,
    ],
    [
      '500 g potatoes, peeled and cut into 2 cm cubes',
      'turnip',
      /turnip, peeled and cut like the potato/,
    ],
  ])('is peeled and cut as they were: %s', (line, foodId, said) => {
    expect(rootLine(line, foodId)).toMatch(said);
    expect(readBack(rootLine(line, foodId)).grams).toBeCloseTo(500, -1);
  });

  it('is not what has no peel', () => {
    expect(rootLine('500 g potato, peeled and diced', 'cauliflower')).not.toMatch(/peeled/);
  });
});
