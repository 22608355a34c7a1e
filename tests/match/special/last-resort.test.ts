/** Names that match nothing as a whole, foods offered as a choice, and words that make another food. */
import { describe, expect, test } from 'vitest';
import { foodTable } from '../../../engine/foods/index.ts';
import { matchItem } from '../../../engine/match/index.ts';
import type { Match } from '../../../engine/model.ts';
import { parseLine } from '../../../engine/parse/index.ts';

const foods = foodTable();

function match(text: string, at = 0): Match | null {
  const line = parseLine(text);
  const item = line.items[at];
  return item ? matchItem(item, line, { foods }) : null;
}

describe('what can still be read out of a name', () => {
  test.each([
    ['4 tbsp sukura (rice vinegar)', 'rice-vinegar'],
    ['2 tbsp Old Harbour hot sauce', 'hot-sauce'],
    ['40 ml Snowfield grapefruit vodka', 'vodka'],
    ['2 cups blackcurrant ripple ice cream', 'ice-cream-vanilla'],
    ['300 g morel, oyster and porcini mushrooms', 'mushroom-morel'],
    ['200 g veal cheek medallions', 'veal-cutlet'],
    ['250 g grated mozzarella and cheddar cheese blend', 'mozzarella'],
    ['3 cups water (90° to 100°F)', 'water'],
    ['2 tbsp warm water to loosen the paste', 'water'],
    ['100 g goat cheese without rind', 'goat-cheese-soft'],
    ['plenty of black pepper', 'black-pepper'],
  ])('%s -> %s', (text, id) => {
    const found = match(text);
    expect(found?.foodId).toBe(id);
  });

  test('such a match is never quite sure', () => {
    expect(match('2 tbsp Old Harbour hot sauce')?.confidence).toBeLessThan(0.8);
    expect(match('200 g veal cheek medallions')?.confidence).toBeLessThan(0.6);
    expect(match('200 g veal cheek medallions')?.reason).toContain('kind not known');
  });

  test('the end of a name is not taken where the word before it makes another food', () => {
    expect(match('2 tbsp hickory nut butter')?.foodId ?? 'none').not.toMatch(/^butter/);
    expect(match('1 cup tea leaf dressing')?.foodId ?? 'none').not.toMatch(/dressing/);
    expect(match('3 tbsp frobnicated beans')?.foodId ?? 'none').not.toMatch(/^mixed-beans/);
  });
});

describe('a name that is known only in part', () => {
  test.each([
    ['2 cups Meadowmill oats slow milled', 'rolled-oats'],
    ['6 tavern rolls', 'dinner-roll'],
    ['1 kg vanilla cookie mix', 'cake-mix-yellow'],
    ['2 cups bubbly, ripe sourdough starter', 'sourdough-starter'],
    ['4 bone in, skin on duck legs', 'duck-leg'],
    ['1 cup Dovecote measure for measure gluten-free flour', 'gluten-free-flour-blend'],
    ['½ cup orchard pepitas roasted with sea salt', 'pumpkin-seeds'],
  ])('%s -> %s, and is not sure', (text, id) => {
    const found = match(text);
    expect(found?.foodId).toBe(id);
    expect(found?.confidence).toBeLessThan(0.9);
  });

  test.each([
    '1 sugar sifter',
    '12 bamboo skewers',
    '8 wooden rice paddles',
    '1 egg cup stand board',
  ])('%s is a thing to cook with', (text) => {
    expect(match(text)).toBeNull();
  });
});

describe('food that is free of something', () => {
  test.each([
    ['1 cup fat free half and half creamer', 'half-and-half-fat-free'],
    ['2 cups lactose-free cream cheese', 'cream-cheese'],
    ['1 cup dairy free milk', 'oat-milk'],
    ['2 tbsp cholesterol-free mayonnaise', 'mayonnaise'],
    ['4 free-range eggs', 'egg'],
  ])('%s -> %s', (text, id) => {
    expect(match(text)?.foodId).toBe(id);
  });
});

describe('a word the choice says once', () => {
  test.each([
    ['150 g strawberry, plum or apricot jam', 'jam'],
    ['500 ml vanilla, coffee or chocolate ice cream', 'ice-cream-vanilla'],
    ['400 g whole-wheat or white pizza dough', 'pizza-dough'],
    ['1 cup lemon-flavored or plain yogurt', 'yogurt-plain'],
    ['1 cup light or dark brown sugar', 'brown-sugar'],
    ['2 tbsp red or white wine vinegar', 'red-wine-vinegar'],
  ])('%s -> %s', (text, id) => {
    expect(match(text)?.foodId).toBe(id);
  });

  test.each([
    ['3 tbsp butter or olive oil', 'butter'],
    ['2 tbsp olive oil or cooking spray', 'olive-oil'],
    ['1 cup walnuts or almond butter', 'walnuts'],
  ])('%s: the first stands alone', (text, id) => {
    expect(match(text)?.foodId).toBe(id);
  });
});

describe('another product of the food', () => {
  test.each([
    ['1 can evaporated whole milk', 'milk-evaporated'],
    ['3 tbsp sweetened cocoa powder', 'cocoa-mix'],
    ['2 slices candied orange', 'candied-fruit'],
  ])('%s -> %s', (text, id) => {
    expect(match(text)?.foodId).toBe(id);
  });

  test('a leaf is no fruit', () => {
    expect(match('6 fig leaves')?.foodId ?? 'none').not.toBe('fig');
    expect(match('2 handfuls summer leaves')?.foodId ?? 'none').not.toMatch(/squash/);
    expect(match('2 cups sweet potato leaves')?.foodId).toBe('sweet-potato-leaves');
  });
});

describe('state and amount tell the food', () => {
  test.each([
    ['4 sprigs oregano', 'oregano-fresh'],
    ['a handful of mixed herbs', 'mixed-herbs-fresh'],
    ['1 tsp mixed herbs', 'italian-seasoning'],
    ['60 ml rye', 'whisky'],
    ['100 g rye', 'rye-flour-medium'],
    ['180 g jasmine rice, boiled for 10 minutes, then drained', 'rice-white-dry'],
    ['15 oz dried butter beans, or 2 (15-ounce) cans', 'lima-beans-dry'],
    ['1 pound brown lentils, washed and drained', 'lentils-dry'],
    ['250 g chickpeas, rinsed and drained', 'chickpeas-canned'],
    ['500 g dried udon', 'udon-dry'],
    ['500 g udon', 'udon-cooked'],
    ['1 cup mashed potatoes', 'potato-mashed'],
    ['2 potatoes, mashed', 'potato'],
    ['1 packet orange jelly', 'gelatin-dessert-mix'],
    ['1 can refrigerated biscuits', 'biscuit-dough'],
    ['1 cup unsweetened coconut milk from a carton', 'coconut-milk-drink'],
    ['2 flax eggs', 'flaxseed-ground'],
    ['1 can Tuscan-style tomato puree', 'tomato-puree'],
    ['2 cups cheese grits, reheated', 'grits-cooked'],
    ['1 can fava beans, drained', 'broad-beans-canned'],
    ['3/4 cup canned cream of coconut', 'coconut-cream-sweetened'],
    ['2 tbsp redcurrant jelly', 'jelly-fruit'],
  ])('%s -> %s', (text, id) => {
    expect(match(text)?.foodId).toBe(id);
  });

  test('a slip in a describing word is put right', () => {
    expect(match('1 tsp groud cinnamon')?.foodId).toBe('cinnamon');
    expect(match('1 tsp groud pepper')?.foodId).toBe('black-pepper');
  });
});
