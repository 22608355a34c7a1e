import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Family, Recipe } from '../../../engine/model.ts';
import { proposeServings } from '../../../engine/tally/servings/servings.ts';

const recipe = (title: string, stated: Recipe['yield']): Recipe => ({
  title,
  url: null,
  language: 'en',
  author: null,
  markup: 'json-ld',
  yield: stated,
  groups: [],
  steps: [],
  minutes: { prep: null, cook: null, total: null },
  image: null,
  statedNutrition: null,
  notes: [],
});

const propose = (
  from: Recipe,
  rawGrams: number | null,
  family: Family,
  energyKcal: number | null = null,
) => proposeServings(from, { rawGrams, energyKcal, family });

/** The page's own energy of a serving. */
const withEnergy = (from: Recipe, calories: string, servingSize = '1 serving'): Recipe => ({
  ...from,
  statedNutrition: { calories, servingSize },
});

describe('servings', () => {
  it('takes the page at its word, and the middle of a range', () => {
    const four = recipe('Stew', { text: 'Serves 4', servings: { low: 4, high: 4 }, pieces: null });
    expect(propose(four, 900, 'other')).toMatchObject({ servings: 4, stated: true });
    const range = recipe('Stew', {
      text: 'Serves 4-6',
      servings: { low: 4, high: 6 },
      pieces: null,
    });
    expect(propose(range, 900, 'other').servings).toBe(5);
  });

  it('cuts a loaf cake into 12 slices at most, however much cream goes with it', () => {
    const unstated: Recipe['yield'] = { text: null, servings: null, pieces: null };
    const inTin = (tins: string): Recipe => ({
      ...recipe('Plum drizzle cake', unstated),
      steps: [{ text: `Pour into ${tins} and bake for an hour.`, section: null }],
    });
    expect(propose(inTin('a lined loaf tin'), 1900, 'cake')).toMatchObject({
      servings: 12,
      assumed: true,
    });
    expect(propose(inTin('a lined loaf tin'), 700, 'cake').servings).toBeLessThan(10);
    expect(
      propose(inTin('two loaf tins, the loaves side by side'), 1900, 'cake').servings,
    ).toBeGreaterThan(18);
    expect(propose(inTin('a round tin'), 1900, 'cake').servings).toBeGreaterThan(18);
  });

  it('takes pieces, several small ones together', () => {
    const cookies = recipe('Cookies', {
      text: 'Makes 48 cookies',
      servings: null,
      pieces: { count: 48, noun: 'cookie' },
    });
    // 48 x 15 g baked, 30 g eaten at a time.
    expect(propose(cookies, (48 * 15) / 0.89, 'cookie')).toMatchObject({
      servings: 24,
      stated: false,
    });
    const rolls = recipe('Rolls', {
      text: 'Makes 12 rolls',
      servings: null,
      pieces: { count: 12, noun: 'roll' },
    });
    expect(propose(rolls, 900, 'enriched-yeast-bread').servings).toBe(12);
  });

  it('takes a piece that is a meal for a serving by itself', () => {
    const sandwiches = recipe('Toasties', {
      text: '2 toasties',
      servings: null,
      pieces: { count: 2, noun: 'toastie' },
    });
    const dish = { rawGrams: 300, energyKcal: 1200, family: 'other' as const };
    expect(proposeServings(sandwiches, dish).servings).toBe(2);
    expect(proposeServings(sandwiches, { ...dish, energyKcal: 400 }).servings).toBe(1);
  });

  it('takes the size of a jar for no count, and what biscuits are made into for the pieces', () => {
    const jars = recipe('Plum spread', {
      text: '3 8-oz jars',
      servings: null,
      pieces: { count: 8, noun: 'pieces' },
    });
    expect(propose(jars, 700, 'sweet-sauce').servings).toBeGreaterThan(15);
    const stacked = recipe('Stacked biscuits', {
      text: 'Yield: 20 biscuits= 10 stacks',
      servings: null,
      pieces: { count: 20, noun: 'biscuits' },
    });
    expect(propose(stacked, 600, 'cookie').servings).toBe(10);
  });

  it('does not take one loaf for one serving', () => {
    const loaf = recipe('Loaf', {
      text: '1 loaf',
      servings: null,
      pieces: { count: 1, noun: 'loaf' },
    });
    const proposal = propose(loaf, 912, 'lean-yeast-bread');
    expect(proposal).toMatchObject({ servings: 16, stated: false });
    expect(proposal.text).toContain('Estimated 16');
  });

  it.each([
    ['Mushroom and lentil pâté', 55, 10],
    ['Chicken liver rillettes', 55, 10],
    ['White bean and sage dip', 30, 18],
    ['Paprika-Brotaufstrich', 30, 18],
    ['Smoky beetroot hummus', 30, 18],
    ['Lamb shoulder with hummus', 350, 2],
    ['Chicken and hummus bowl', 350, 2],
    ['Lentil soup', 400, 2],
    ['Mango sago', 120, 5],
    ['Berry smoothie', 240, 3],
    ['Rote Linsensuppe', 400, 2],
  ])('reckons %s without servings by %i g', (title, grams, servings) => {
    const nothing = recipe(title, { text: null, servings: null, pieces: null });
    const weighed = propose(nothing, servings < 5 ? 800 : 600, 'other');
    expect(weighed.text).toContain(`${grams} g each`);
    expect(Math.abs(weighed.servings - servings)).toBeLessThanOrEqual(servings * 0.15);
  });

  it('takes what is cooked in a thick sauce for a plate, the sauce alone for a spoonful', () => {
    const none = { text: null, servings: null, pieces: null };
    const stew = propose(recipe('Pork in cream', none), 1500, 'thickened-sauce');
    expect(stew.text).toContain('350 g each');
    const sauce = propose(recipe('Mushroom gravy', none), 500, 'thickened-sauce');
    expect(sauce.text).toContain('60 g each');
  });

  it('takes a small pizza for a serving', () => {
    const pizzas = recipe('Pizza', {
      text: 'Makes 4 pizzas',
      servings: null,
      pieces: { count: 4, noun: 'pizza' },
    });
    expect(propose(pizzas, 860, 'flatbread').servings).toBe(4);
    // four wholes are cut alike: five of each
    expect(propose(pizzas, 3000, 'flatbread').servings).toBe(20);
  });

  it.each([
    'Brot',
    'Laib',
    'Blech',
    'Kastenform',
    'pain',
    'pane',
    'teglia',
    'bizcocho',
    'brood',
    'limpa',
    'bolo',
  ])('cuts 1 %s, as it does a loaf', (noun) => {
    const one = (of: string): Recipe =>
      recipe('Thing', { text: `1 ${of}`, servings: null, pieces: { count: 1, noun: of } });
    const loaf = propose(one('loaf'), 860, 'lean-yeast-bread').servings;
    expect(loaf).toBeGreaterThan(8);
    expect(propose(one(noun), 860, 'lean-yeast-bread').servings).toBe(loaf);
  });

  it('takes the slices of a tin for servings in other languages too', () => {
    const tin = (text: string, noun: string): Recipe =>
      recipe('Thing', { text, servings: null, pieces: { count: 12, noun } });
    expect(propose(tin('1 Springform (12 Stücke)', 'Stücke'), 900, 'other').servings).toBe(12);
    expect(propose(tin('12 fette', 'fette'), 900, 'other').servings).toBe(12);
  });

  it.each([
    ['1 tray, cuts into 12', { count: 1, noun: 'tray' }, 12],
    ['1 x 20cm cake (cuts into 8)', null, 8],
    ['1 loaf, sliced into 10-13', { count: 1, noun: 'loaf' }, 11],
    ['1.5 litres (4 generous bowls)', { count: 1.5, noun: 'litres' }, 4],
  ])('%s: what the whole is cut or poured into', (text, pieces, expected) => {
    const page = recipe('Thing', { text, servings: null, pieces });
    expect(propose(page, 2000, 'other')).toMatchObject({ servings: expected, stated: true });
  });

  it('takes a jar that the method fills to be eaten from for a serving', () => {
    const oats = recipe('Layered cream', {
      text: '2 jars',
      servings: null,
      pieces: { count: 2, noun: 'jars' },
    });
    const filled = { ...oats, steps: [{ section: null, text: 'Divide between two large jars.' }] };
    expect(propose(filled, 1000, 'custard', 1200).servings).toBe(2);
    expect(propose(oats, 1000, 'custard', 1200).servings).toBeGreaterThan(2);
    const kept = [...filled.steps, { section: null, text: 'Seal in sterilised jars.' }];
    expect(propose({ ...filled, steps: kept }, 1000, 'custard', 1200).servings).toBeGreaterThan(2);
  });

  it('does not take the size of the pieces for their count', () => {
    const squares = { text: '1 pan, cut into 2-inch squares', servings: null, pieces: null };
    expect(propose(recipe('Thing', squares), 700, 'other').stated).toBe(false);
  });

  it('leaves the whole recipe as one when nothing is known', () => {
    const bare = recipe('Something', { text: null, servings: null, pieces: null });
    expect(propose(bare, null, 'other')).toMatchObject({ servings: 1, stated: false });
  });

  it("takes of a range what the page's own energy fits", () => {
    const range = recipe('Stew', {
      text: 'Serves 4-6',
      servings: { low: 4, high: 6 },
      pieces: null,
    });
    expect(propose(withEnergy(range, '300 kcal'), 900, 'other', 1750).servings).toBe(6);
    expect(propose(withEnergy(range, '300 kcal'), 900, 'other', 5000).servings).toBe(5);
  });

  it("takes pieces singly where the page's own energy is of one", () => {
    const balls = recipe('Nut balls', {
      text: 'Makes 36 balls',
      servings: null,
      pieces: { count: 36, noun: 'ball' },
    });
    expect(propose(balls, 36 * 14, 'cookie', 4300).servings).toBeLessThan(36);
    expect(propose(withEnergy(balls, '120 calories'), 36 * 14, 'cookie', 4300)).toMatchObject({
      servings: 36,
      stated: true,
    });
  });

  it('takes another count of the page where its own energy contradicts the first', () => {
    const rolls = recipe('Rolls', {
      text: '4 (makes 14 rolls)',
      servings: { low: 4, high: 4 },
      pieces: { count: 14, noun: 'roll' },
    });
    expect(propose(withEnergy(rolls, '150 kcal'), 900, 'other', 2100).servings).toBe(14);
    expect(propose(withEnergy(rolls, '500 kcal'), 900, 'other', 2100).servings).toBe(4);
    // No count fits: the page is taken at its word.
    expect(propose(withEnergy(rolls, '900 kcal'), 900, 'other', 2100).servings).toBe(4);
  });

  it('counts dozens, and never takes measures or wholes for servings', () => {
    const dozen = recipe('Buns', { text: 'about 2 dozen', servings: null, pieces: null });
    expect(propose(withEnergy(dozen, '100 kcal'), 1200, 'other', 2300).servings).toBe(24);
    for (const text of ['1 loaf', '2 quarts', '3 jars', '1 9-inch cake', '2 pies']) {
      const whole = recipe('Thing', { text, servings: null, pieces: null });
      const proposal = propose(withEnergy(whole, '1000 kcal'), 1200, 'cake', 2000);
      expect(proposal.text).toContain('Estimated');
    }
  });

  it.each([
    ['Makes about 3 dozen.', 3, 'dozen', 36],
    ['2-3 dozen cookies', 2, 'dozen cookies', 30],
    ['1 1/2 dozen muffins', 1.5, 'dozen muffins', 18],
    ['2 Dutzend Plätzchen', 2, 'Dutzend Plätzchen', 24],
  ])('a dozen is twelve pieces: %s', (text, count, noun, servings) => {
    const made = recipe('Bites', { text, servings: null, pieces: { count, noun } });
    expect(propose(made, servings * 32, 'cookie').servings).toBe(servings);
  });

  it.each([
    ['Oat squares', 342, 9],
    ['Chewy granola bars', 440, 11],
    ['Dark chocolate truffles', 316, 9],
    ['Truffle pasta', 700, 2],
    ['Garlic mayonnaise', 213, 14],
    ['Burgers with mayonnaise', 700, 2],
    ['Basil pesto', 240, 8],
    ['Apple pie', 1335, 11],
    ['Chicken pie', 1400, 4],
  ])('guesses at the size of what it is: %s', (title, grams, servings) => {
    const unstated: Recipe['yield'] = { text: null, servings: null, pieces: null };
    const { servings: guessed } = propose(recipe(title, unstated), grams, 'other');
    expect(Math.abs(guessed - servings)).toBeLessThanOrEqual(1);
  });

  it('lets the page’s own energy of a serving move an estimate, not overthrow it', () => {
    const unstated = recipe('Lime cake', { text: null, servings: null, pieces: null });
    const guessed = propose(unstated, 1000, 'cake', 2800).servings;
    expect(propose(withEnergy(unstated, '350 kcal'), 1000, 'cake', 2800).servings).toBe(8);
    expect(propose(withEnergy(unstated, '2800 kcal'), 1000, 'cake', 2800)).toMatchObject({
      servings: guessed,
      assumed: true,
    });
    expect(propose(withEnergy(unstated, '50 kcal'), 1000, 'cake', 2800).servings).toBe(guessed);
  });

  it('takes a mug for one serving where its own energy is of all of it, and no loaf', () => {
    const mug = recipe('Cocoa', { text: '1 cup', servings: null, pieces: null });
    expect(propose(withEnergy(mug, '400 kcal', '1 cup'), 280, 'other', 430).servings).toBe(1);
    expect(propose(mug, 280, 'other', 430).stated).toBe(false);
    const loaf = recipe('Bread', { text: '1 loaf', servings: null, pieces: null });
    const whole = propose(withEnergy(loaf, '2300 kcal'), 900, 'lean-yeast-bread', 2300);
    expect(whole.servings).toBeGreaterThan(8);
  });

  it('divides a volume by the volume of a serving', () => {
    const ice = recipe('Ice cream', { text: '1 quart', servings: null, pieces: null });
    expect(
      propose(withEnergy(ice, '300 kcal', '1/2 cup'), 900, 'frozen-dessert', 2300),
    ).toMatchObject({
      servings: 8,
      stated: true,
    });
  });

  it('reads nothing into figures of 100 g', () => {
    const balls = recipe('Nut balls', {
      text: 'Makes 36 balls',
      servings: null,
      pieces: { count: 36, noun: 'ball' },
    });
    const per100 = withEnergy(balls, '120 kcal', '100 g');
    expect(propose(per100, 36 * 14, 'cookie', 4300)).toEqual(
      propose(balls, 36 * 14, 'cookie', 4300),
    );
  });

  it('is always a whole number above zero', () => {
    fc.assert(
      fc.property(
        fc.option(fc.double({ min: 0.01, max: 900, noNaN: true }), { nil: null }),
        fc.option(fc.double({ min: 0.01, max: 900, noNaN: true }), { nil: null }),
        fc.option(fc.double({ min: 0, max: 1e6, noNaN: true }), { nil: null }),
        fc.option(fc.double({ min: 0, max: 1e6, noNaN: true }), { nil: null }),
        fc.option(fc.string(), { nil: null }),
        (count, pieces, grams, kcal, text) => {
          const stated = recipe('Dish', {
            text,
            servings: count === null ? null : { low: count, high: count * 1.5 },
            pieces: pieces === null ? null : { count: pieces, noun: 'piece' },
          });
          const { servings } = propose(withEnergy(stated, '210 kcal'), grams, 'cookie', kcal);
          expect(Number.isInteger(servings)).toBe(true);
          expect(servings).toBeGreaterThan(0);
        },
      ),
    );
  });

  it('does not take sweet cream for a sauce where the title cannot be read', () => {
    const none = { text: null, servings: null, pieces: null };
    const unread = propose(recipe('芝士蛋糕', none), 600, 'sweet-sauce').servings;
    expect(unread).toBeLessThan(8);
    expect(propose(recipe('Vanilla sauce', none), 600, 'sweet-sauce').servings).toBeGreaterThan(12);
  });
});

it('two sausage rolls, or one filled pastry, are a serving', () => {
  const pieces = (title: string, count: number, noun: string): Recipe =>
    recipe(title, { text: `${count} ${noun}s`, servings: null, pieces: { count, noun } });
  expect(propose(pieces('Sausage rolls', 24, 'roll'), 1020, 'other').servings).toBe(12);
  expect(propose(pieces('Beef empanadas', 16, 'empanada'), 1400, 'pie-crust').servings).toBe(16);
});
