/**
 * Energy and carbohydrate of kinds of food against where such foods lie: near the 2nd and 98th
 * percentile of USDA SR 28, a little wider where a kind is small. Protein and carbohydrate have the
 * same energy factor, so only this sees them swapped.
 */
import { describe, expect, it } from 'vitest';
import { foodTable } from '../../engine/foods/index.ts';
import type { Food } from '../../engine/model.ts';

const { foods } = foodTable();

interface Window {
  kind: string;
  is: (food: Food) => boolean;
  kcal: readonly [number, number];
  carbohydrate: readonly [number, number];
}

const inGroup =
  (group: string, state?: Food['state']) =>
  (food: Food): boolean =>
    food.group === group && (state === undefined || food.state === state);

const WHEAT =
  /^(wheat|all-purpose|bread|cake|self-raising|00|spelt|rye|semolina|einkorn|whole-wheat)/;
const BREAD =
  /^(bread-(?!crumb|low|stick|mix|cube|flour|dumpling)|pita(?!-chips)|naan|bagel|burger-bun|dinner-roll|ciabatta|brioche|english-muffin|kaiser|flour-tortilla|corn-tortilla|pretzel-soft|chapati|croissant)/;
const COOKIE =
  /cookie(?!-dough|-butter)|gingersnap|shortbread|graham-cracker|wafers|amaretti|ladyfinger/;
const CHEESE =
  /^(?!vegan|cheesecake).*(cheese|cheddar|mozzarella|parmesan|feta|gouda|brie|gruyere|ricotta|romano|provolone|halloumi|paneer|mascarpone)/;

const WINDOWS: readonly Window[] = [
  {
    kind: 'wheat, spelt and rye flour',
    is: (food) => food.group === 'flours' && WHEAT.test(food.id) && /flour|semolina/.test(food.id),
    kcal: [320, 405],
    carbohydrate: [61, 79],
  },
  {
    kind: 'bread',
    is: ({ id }) => BREAD.test(id),
    kcal: [195, 418],
    carbohydrate: [37, 70],
  },
  {
    kind: 'cookies',
    is: ({ id }) => COOKIE.test(id),
    kcal: [348, 541],
    carbohydrate: [51, 88],
  },
  {
    kind: 'nuts and seeds',
    is: inGroup('nuts and seeds'),
    kcal: [480, 718],
    carbohydrate: [5, 55],
  },
  {
    kind: 'cheese',
    is: (food) => food.group === 'dairy' && CHEESE.test(food.id),
    kcal: [72, 475],
    carbohydrate: [0, 14],
  },
  {
    kind: 'oil',
    is: ({ id, group }) => group === 'fats and oils' && /oil$/.test(id),
    kcal: [792, 902],
    carbohydrate: [0, 0.4],
  },
  {
    kind: 'raw vegetables',
    is: inGroup('vegetables', 'raw'),
    kcal: [7, 162],
    carbohydrate: [1, 40],
  },
  { kind: 'raw fruit', is: inGroup('fruit', 'raw'), kcal: [15, 160], carbohydrate: [2, 32] },
  {
    kind: 'pasta and rice, cooked',
    is: inGroup('grains, pasta and rice', 'cooked'),
    kcal: [55, 200],
    carbohydrate: [11, 41],
  },
  {
    kind: 'pasta and rice, dry',
    is: inGroup('grains, pasta and rice', 'dry'),
    kcal: [300, 450],
    carbohydrate: [52, 92],
  },
  {
    kind: 'pulses, dry',
    is: inGroup('legumes', 'dry'),
    kcal: [325, 450],
    carbohydrate: [28, 68],
  },
  {
    kind: 'pulses, cooked',
    is: (food) => food.group === 'legumes' && /^(cooked|canned)$/.test(food.state),
    kcal: [80, 195],
    carbohydrate: [8, 30],
  },
  { kind: 'meat', is: inGroup('meat and poultry'), kcal: [60, 860], carbohydrate: [0, 9] },
  { kind: 'fish', is: inGroup('fish and seafood'), kcal: [45, 460], carbohydrate: [0, 9] },
  {
    kind: 'starches',
    is: inGroup('starches'),
    kcal: [325, 385],
    carbohydrate: [80, 100],
  },
  {
    kind: 'sugars and syrups',
    is: inGroup('sugars and syrups'),
    kcal: [195, 590],
    carbohydrate: [47, 101],
  },
];

/** Foods of a kind by name, another one by what they hold. */
const APART = new Map([
  ['chestnut-puree-sweetened', 'a starchy nut with sugar'],
  ['chestnuts-cooked', 'a starchy nut'],
  ['tiger-nut-flour', 'a starchy tuber'],
  ['peanut-flour-low-fat', 'pressed'],
  ['coconut-dried-sweetened', 'half sugar'],
  ['coconut-fresh', 'half water'],
  ['coconut-milk-canned', 'mostly water'],
  ['coconut-milk-light', 'mostly water'],
  ['coconut-cream', 'half water'],
  ['coconut-cream-sweetened', 'half sugar'],
  ['tamarind', 'a dry pulp'],
  ['herring-pickled', 'in a sweet brine'],
  ['brown-whey-cheese', 'boiled-down whey, mostly milk sugar'],
  ['fish-fingers', 'breaded'],
  ['chicken-nuggets', 'breaded'],
  ['crab-imitation', 'with starch and sugar'],
  ['clam-juice', 'mostly water'],
  ['edamame-pasta-dry', 'of soybeans'],
  ['taramasalata', 'an oily paste'],
]);

const outside = (value: number | null, [low, high]: readonly [number, number]): boolean =>
  value !== null && (value < low || value > high);

describe('foods lie where foods of their kind lie', () => {
  it.each(WINDOWS)('$kind', ({ is, kcal, carbohydrate }) => {
    const kind = foods.filter((food) => is(food));
    expect(kind.length).toBeGreaterThan(5);
    const odd = kind.filter(
      ({ id, per100g }) =>
        !APART.has(id) &&
        (outside(per100g.energyKcal, kcal) || outside(per100g.carbohydrateG, carbohydrate)),
    );
    expect(odd.map(({ id, per100g: p }) => `${id} ${p.energyKcal} ${p.carbohydrateG}`)).toEqual([]);
  });

  it('names no exception that is none', () => {
    const needless = [...APART.keys()].filter((id) => {
      const food = foods.find((each) => each.id === id);
      const window = WINDOWS.find(({ is }) => food && is(food));
      if (!food || !window) return true;
      const { energyKcal, carbohydrateG } = food.per100g;
      return !outside(energyKcal, window.kcal) && !outside(carbohydrateG, window.carbohydrate);
    });
    expect(needless).toEqual([]);
  });
});
