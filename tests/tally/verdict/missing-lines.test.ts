import { describe, expect, it } from 'vitest';
import { foodTable } from '../../../engine/foods/index.ts';
import type { Ingredient } from '../../../engine/model.ts';
import { missingLines } from '../../../engine/tally/verdict/missing-lines.ts';
import { makeFood, makeIngredient, makeLine, makeTable, makeWeight, sure } from '../fixtures.ts';

const table = makeTable(makeFood('paste-of-unknown-make', { energyKcal: 100 }));

const unknown = (text: string, grams: number | null): Ingredient => ({
  ...makeIngredient('0', null, grams === null ? null : makeWeight(sure(grams))),
  line: makeLine(text),
  item: { amounts: [], size: null, name: text, preparation: null, alternatives: [] },
});

const missing = (ingredient: Ingredient, servings = 4) =>
  missingLines([ingredient], {
    foods: table,
    servings,
    rule: { region: 'us', polyols: 'half' },
    family: 'other',
  });

describe('kinds of food by their words', () => {
  it.each([
    ['quillberry dough', 'dough'],
    ['press-in quillberry crust', 'pie crust or pastry'],
    ['snorvel wraps', 'tortillas or wraps'],
    ['seeded snorvel rolls', 'bread or rolls'],
    ['snorvel gelling sugar', 'gelling sugar'],
    ['Gelierzucker 2:1', 'gelling sugar'],
    ['snorvel ravioli', 'pasta, noodles or dumplings'],
    ['quillberry jam', 'jam or sweet spread'],
    ['snorvel oat clusters', 'rice or grain'],
    ['snorvel sauce', 'sauce or dressing'],
  ])('%s is %s', (text, kind) => {
    const [line] = missing(unknown(text, 200));
    expect(line?.kind).toBe(kind);
    expect(line?.netCarbsG?.low).toBeLessThan(line?.netCarbsG?.high ?? 0);
  });

  it('reckons with the grams of the line: 400 g of dough in four servings', () => {
    const [line] = missing(unknown('quillberry dough', 400));
    expect(line?.netCarbsG).toEqual({ low: 38, best: 46.5, high: 55 });
  });

  it('a hot pepper strewn over is next to nothing', () => {
    expect(missing(unknown('jalapeño', null))).toEqual([]);
  });

  it('takes little of what dusts', () => {
    const [line] = missing(unknown('snorvel flour, for dusting', null));
    expect(line?.netCarbsG?.low).toBeCloseTo(0.65, 5);
    expect(line?.netCarbsG?.high).toBeCloseTo(3.68, 5);
  });

  it('takes a usual portion where there are no grams', () => {
    const [line] = missing(unknown('snorvel rolls', null));
    expect(line?.netCarbsG?.low).toBeCloseTo(12.6, 5);
    expect(line?.netCarbsG?.high).toBeCloseTo(55, 5);
  });

  it('takes no more of a crust than a dish can hold', () => {
    const [few] = missing(unknown('quillberry crust', null), 8);
    const [many] = missing(unknown('quillberry crust', null), 36);
    expect(few?.netCarbsG?.high).toBeCloseTo(31, 0);
    // 600 g of it at most, 62 g in 100 g
    expect(many?.netCarbsG?.high).toBeCloseTo(10.3, 1);
    expect(many?.netCarbsG?.low).toBeLessThan(4);
  });

  it.each([
    ['oven fries', 5.6, 60],
    ['potatoes', 9, 36],
    ['potatoes to garnish', 0, 1.5],
  ])('takes a plateful of %s without an amount', (text, low, high) => {
    const foods = foodTable();
    const id = text === 'oven fries' ? 'potato-fries' : 'potato';
    const match = { foodId: id, foodName: id, confidence: 1, reason: '', others: [] };
    const options = {
      foods,
      servings: 4,
      rule: { region: 'us', polyols: 'half' },
      family: 'other',
    };
    const [line] = missingLines([{ ...unknown(text, null), match }], options as never);
    const span = line?.netCarbsG ?? { low: 0, high: 0 };
    expect(span.low).toBeGreaterThanOrEqual(low * 0.9);
    expect(span.high).toBeLessThanOrEqual(high * 1.1);
    expect(span.high).toBeGreaterThan(text.includes('garnish') ? -1 : 30);
  });

  it.each([
    ['steamed snorvel rice, for serving', 7.2, 44.8],
    ['snorvel tortillas, to serve', 9.1, 47],
  ])('takes a plateful of what is eaten beside, as it is cooked: %s', (text, low, high) => {
    const [line] = missing(unknown(text, null));
    expect(line?.beside).toBe(true);
    expect(line?.netCarbsG?.low).toBeCloseTo(low, 0);
    expect(line?.netCarbsG?.high).toBeCloseTo(high, 5);
  });
});

describe('onion without an amount', () => {
  it('is a spoon strewn over the plate', () => {
    const ingredient: Ingredient = {
      ...unknown('red onion, diced', null),
      match: { foodId: 'red-onion', foodName: 'red onion', confidence: 1, reason: '', others: [] },
    };
    const [line] = missingLines([ingredient], {
      foods: foodTable(),
      servings: 4,
      rule: { region: 'us', polyols: 'half' },
      family: 'other',
    });
    expect(line?.netCarbsG?.high).toBeLessThan(1.5);
  });
});

describe('what cannot matter', () => {
  it.each([
    ['snorvel', 4],
    ['smoked snorvel salmon', 400],
    ['wooden skewers', null],
    ['snorvel parsley', null],
  ])('%s, %s g for four', (text, grams) => {
    expect(missing(unknown(text, grams))).toEqual([]);
  });

  it('is named from the first gram above one a serving', () => {
    expect(missing(unknown('snorvel', 4.1))).toMatchObject([{ kind: null, netCarbsG: null }]);
  });
});

describe('a counted food without a figure', () => {
  it('is missing, since its carbohydrate is not in the sum', () => {
    const paste = makeIngredient('0', 'paste-of-unknown-make', makeWeight(sure(80)));
    expect(missing(paste)).toMatchObject([{ key: '0', netCarbsG: null }]);
    const pinch = makeIngredient('0', 'paste-of-unknown-make', makeWeight(sure(3)));
    expect(missing(pinch)).toEqual([]);
  });
});

describe('sweet things without an amount', () => {
  const real = foodTable();
  const bare = (foodId: string): Ingredient => ({
    ...makeIngredient('0', foodId, null),
    line: makeLine(foodId),
  });
  const span = (foodId: string) =>
    missingLines([bare(foodId)], {
      foods: real,
      servings: 4,
      rule: { region: 'us', polyols: 'half' },
      family: 'other',
    })[0]?.netCarbsG;

  // Sugar is 99.98 g per 100 g (SR 169655): half a gram to five are about as much.
  it('are a pinch or what is strewn, not a portion', () => {
    expect(span('sugar')?.high).toBeCloseTo(5, 1);
    expect(span('powdered-sugar')?.high).toBeLessThan(5.1);
    // 93 g per 100 g, give or take a fifth.
    expect(span('sprinkles')?.high).toBeLessThan(6);
  });

  it('stay strewn where a line serves them, and berries are a few', () => {
    const served = { ...bare('powdered-sugar'), line: makeLine('powdered sugar, to serve') };
    const [line] = missingLines([served], {
      foods: real,
      servings: 4,
      rule: { region: 'us', polyols: 'half' },
      family: 'cake',
    });
    expect(line?.netCarbsG?.high).toBeLessThan(5.1);
    // 40 g of 12 g net carbs per 100 g (SR 171711).
    expect(span('blueberries')?.high).toBeCloseTo(4.8, 0);
  });

  it('are named by choice where a weighed line is optional, from a gram a serving', () => {
    const optional = (foodId: string, grams: number): Ingredient => ({
      ...makeIngredient('0', foodId, makeWeight(sure(grams))),
      line: { ...makeLine(foodId), optional: true },
    });
    const named = (ingredient: Ingredient) =>
      missingLines([ingredient], {
        foods: real,
        servings: 20,
        rule: { region: 'us', polyols: 'half' },
        family: 'brownie',
      });
    // 75 g in 20 pieces: 3.75 g each, most of it sugar.
    expect(named(optional('cherries-dried', 75))).toMatchObject([{ beside: true }]);
    expect(named(optional('walnuts', 50))).toEqual([]);
  });

  it.each([
    // A clove or two, 31 g per 100 g.
    ['garlic', 2.1],
    // Two ounces dry to twice as much, 72 g per 100 g.
    ['pasta-dry', 82],
    // A slice to a roll and a half.
    ['melba-toast', 75],
  ])('%s without an amount is at most a usual portion', (foodId, most) => {
    expect(span(foodId)?.high).toBeLessThan(most);
    expect(span(foodId)?.high).toBeGreaterThan(most / 2);
  });

  it('a herb by its name in another language is a sprig', () => {
    const herb = { ...bare('parsley'), line: makeLine('prezzemolo') };
    const rule = { region: 'us', polyols: 'half' } as const;
    expect(missingLines([herb], { foods: real, servings: 4, rule, family: 'other' })).toEqual([]);
  });

  it('are still told, and a syrup to pour keeps its portion', () => {
    expect(span('sugar')?.low).toBeGreaterThan(0);
    expect(span('maple-syrup')?.high).toBeGreaterThan(10);
  });
});
