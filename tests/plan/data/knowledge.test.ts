import { describe, expect, it } from 'vitest';
import { type Allergen, DEFAULT_GOALS, FAMILIES, type Food } from '../../../engine/model.ts';
import classes from '../../../engine/plan/data/classes.json' with { type: 'json' };
import { limitsOf } from '../../../engine/plan/dish/family/family-limits.ts';
import { netPerGram } from '../../../engine/plan/dish/food-figures.ts';
import { SWAP_RULES, type SwapRule, suits } from '../../../engine/plan/dish/swap-rules.ts';
import { mentionsAny } from '../../../engine/plan/dish/word-search.ts';
import { erythritolIn } from '../../../engine/plan/model/rows/taste-rows.ts';
import { foods } from '../build.ts';
import { foodsOf, helped, netBrought } from './knowledge-samples.ts';

/** What a recipe may hold, with classes that stand for it and the least number of swaps a cook would expect. */
const KINDS: readonly (readonly [string, string[], number, SwapRule['role']?])[] = [
  ['flour of a dough', ['wheat-flours', 'other-flours'], 35],
  ['starch in a dough', ['starches'], 4, 'structure'],
  ['thickener', ['wheat-flours', 'starches'], 20, 'thickener'],
  ['flour or starch that coats', ['wheat-flours', 'starches'], 8, 'coating'],
  ['cornmeal and polenta', ['cornmeals'], 8],
  ['oats and porridge', ['oats', 'hot-cereals', 'cooked-porridges'], 10],
  ['breakfast cereals and granola', ['granolas', 'crisp-cereals', 'bran-cereals'], 6],
  ['solid sugar', ['dry-sugars'], 15],
  ['liquid sugar', ['syrups', 'drink-syrups'], 10],
  ['pasta, sheets and noodles', ['pasta-dry'], 25],
  ['cooked and fresh pasta', ['pasta-cooked'], 8],
  ['rice', ['rice-dry', 'rice-cooked'], 15],
  ['grains', ['grains-dry', 'grains-cooked'], 10],
  ['potatoes', ['potatoes', 'potato-flakes'], 20],
  ['sweet roots and squash', ['sweet-potatoes', 'roots-sweet'], 18],
  ['corn and peas', ['corn'], 6],
  ['onions and the like', ['vegetables'], 5],
  ['crumbs', ['breadcrumbs'], 15],
  ['bread and buns', ['breads', 'buns', 'flat-breads', 'bagels'], 16],
  ['croutons and stuffing', ['croutons'], 4],
  ['wraps', ['tortillas', 'taco-shells', 'thin-wrappers'], 14],
  ['pastry and pizza', ['pastries', 'layered-pastries', 'pizza-bases', 'crumb-crusts'], 14],
  ['biscuit bases and sponges', ['sweet-biscuits', 'chocolate-biscuits', 'sponges'], 7],
  ['mixes', ['cake-mixes', 'batter-mixes', 'bread-mixes'], 5],
  ['crackers and chips', ['crackers', 'chips', 'pretzels'], 6],
  ['beans and lentils', ['legumes', 'legumes-dry', 'bean-pastes'], 16],
  ['fresh and canned fruit', ['sweet-fruit', 'bananas', 'applesauces'], 18],
  ['dried and candied fruit', ['dried-fruit', 'candied-fruits'], 10],
  ['fruit sauces and fillings', ['cranberry-sauces', 'fruit-fillings', 'pumpkin-fillings'], 4],
  ['juices and soft drinks', ['juices', 'soft-drinks'], 9],
  ['milk and milk drinks', ['milks', 'plant-milks', 'sweet-milk-drinks', 'buttermilks'], 11],
  ['cream, yogurt and powders', ['light-creams', 'yogurts', 'sweet-yogurts', 'milk-powders'], 8],
  ['condensed and evaporated milk', ['condensed-milks', 'milk-concentrates'], 4],
  ['ice cream and custard', ['ice-creams', 'sherbets', 'ready-custards', 'whipped-toppings'], 6],
  ['beer', ['beers'], 5],
  ['wine and liqueurs', ['sweet-wines', 'mirins', 'liqueurs'], 8],
  ['ketchup and barbecue sauce', ['ketchups', 'barbecue-sauces'], 5],
  ['Asian sauces', ['hoisin-sauces', 'teriyaki-sauces', 'sweet-chili-sauces', 'plum-sauces'], 8],
  ['dressings, pickles and glazes', ['creamy-dressings', 'sweet-pickles', 'balsamic-glazes'], 4],
  ['soups and stock cubes', ['mushroom-soups', 'cream-soups', 'tomato-soups', 'stock-cubes'], 6],
  ['chocolate', ['chocolates', 'chocolate-sauces', 'cocoa-mixes'], 14],
  ['jams and spreads', ['jams', 'lemon-curds', 'chocolate-spreads', 'cookie-butters'], 12],
  ['sweets and decorations', ['marshmallows', 'caramels', 'gummies', 'sprinkles'], 8],
  ['frostings and marzipan', ['frostings', 'chocolate-frostings', 'fondants', 'almond-pastes'], 7],
  ['nuts', ['nuts'], 6],
  ['breaded and filled meat and fish', ['breaded-meats', 'crab-sticks', 'filler-sausages'], 5],
];

const forClasses = (names: readonly string[], role?: SwapRule['role']): SwapRule[] =>
  SWAP_RULES.filter(
    (rule) =>
      rule.replaces.some((name) => names.includes(name)) &&
      (role === undefined || rule.role === role),
  );

const idsOf = (bad: (rule: SwapRule) => boolean): string[] =>
  SWAP_RULES.filter(bad).map(({ id }) => id);

const foodsBrought = (rule: SwapRule): Food[] =>
  rule.to.flatMap(({ food }) => foods.byId(food) ?? []);

const brings = (rule: SwapRule, what: (food: Food) => boolean): boolean =>
  foodsBrought(rule).some(what);

const carries = (allergen: Allergen) => (food: Food) => food.allergens.includes(allergen);

/** A method that says nothing of what a dish is. */
const NEUTRAL =
  'Preheat the oven and heat a saucepan. Mix, season with salt and pepper, cover, cook for 20 minutes, stir, bake until golden, cool and serve warm.';

describe('swap table', () => {
  it('has at least 220 swaps with ids of their own, over foods that exist', () => {
    expect(SWAP_RULES.length).toBeGreaterThanOrEqual(220);
    expect(new Set(SWAP_RULES.map((r) => r.id)).size).toBe(SWAP_RULES.length);
    const named = SWAP_RULES.flatMap((r) => [...r.to.map((t) => t.food), ...(r.only ?? [])]);
    const missing = named.filter((id) => foods.byId(id) === null);
    expect([...new Set(missing)]).toEqual([]);
  });

  it.each(KINDS.map(([kind, names, least, role]) => ({ kind, names, least, role })))(
    'offers enough for $kind',
    ({ names, least, role }) => {
      expect(forClasses(names, role).length).toBeGreaterThanOrEqual(least);
    },
  );

  it('covers every class it names, and names classes, families, sources and single foods', () => {
    const known = new Set(classes.map((c) => c.class));
    const words = new Set<string>([...FAMILIES, 'dough', 'dish', '*']);
    for (const rule of SWAP_RULES) {
      for (const cls of rule.replaces) expect(known, rule.id).toContain(cls);
      for (const word of rule.in) expect(words, rule.id).toContain(word);
      expect(rule.source.length, rule.id).toBeGreaterThan(3);
      expect(new Set(foodsOf(rule)), rule.id).toEqual(new Set(rule.only ?? foodsOf(rule)));
    }
    for (const [kind, names] of KINDS)
      for (const name of names) expect(forClasses([name]).length, `${kind}: ${name}`).not.toBe(0);
  });

  it('says what happens and what to do in whole, short sentences', () => {
    const unfit = (text: string): boolean => !/^[A-Z0-9].{4,}\.$/.test(text) || / {2}/.test(text);
    expect(idsOf((r) => unfit(r.effect) || r.effect.length > 90)).toEqual([]);
    expect(idsOf((r) => r.method !== '' && (unfit(r.method) || r.method.length > 140))).toEqual([]);
    expect(idsOf((r) => r.cautions.some(unfit))).toEqual([]);
  });

  it('claims nothing of a food', () => {
    const claim =
      /low.?carb|diabet|\bketo|healthy|guilt|insulin|blood|medicine for|treats?\b|cure/i;
    expect(
      idsOf((r) => claim.test([r.effect, r.method, ...r.cautions, r.source].join(' '))),
    ).toEqual([]);
  });

  it('keeps ratios, caps and costs in range', () => {
    const total = (r: SwapRule): number => r.to.reduce((sum, t) => sum + t.ratio, 0);
    expect(idsOf((r) => r.to.some((t) => t.ratio < 0.001 || t.ratio > 11))).toEqual([]);
    // What swells or was dried stands for many times its own mass; nothing else does.
    const swells =
      /pasta|rice|grains|potato-flakes|legumes-dry|cornmeals|starches|flours|thin-wrappers/;
    expect(idsOf((r) => total(r) > 3.6 && !r.replaces.some((c) => swells.test(c)))).toEqual([]);
    expect(idsOf((r) => r.cap < 0.02 || r.cost < 0.03 || r.cost > 0.8)).toEqual([]);
    expect(idsOf((r) => Object.values(r.capBy ?? {}).some((cap) => cap <= 0 || cap > 1))).toEqual(
      [],
    );
    expect(idsOf((r) => r.water < -4 || r.water > 1)).toEqual([]);
    expect(idsOf((r) => r.whole === true && r.cap < 1)).toEqual([]);
  });

  it('has no two swaps of the same foods for the same foods and families', () => {
    const key = ({ replaces, in: families, role, to }: SwapRule): string =>
      JSON.stringify([replaces, families, role, to]);
    const seen = new Map<string, string>();
    const twice = SWAP_RULES.flatMap((rule) => {
      const other = seen.get(key(rule));
      seen.set(key(rule), rule.id);
      return other === undefined ? [] : [`${other} ${rule.id}`];
    });
    expect(twice).toEqual([]);
  });

  it('lowers the net carbs of a food it replaces, of single foods of each', () => {
    expect(idsOf((r) => Number.isNaN(netBrought(r)))).toEqual([]);
    expect(idsOf((r) => helped(r).length === 0)).toEqual([]);
    // A swap that names its foods helps all of them.
    expect(
      idsOf((r) => r.only?.some((id) => !helped(r).includes(id) && net(id) > 0.03) ?? false),
    ).toEqual([]);
  });

  it('has words that tell a dish from any other', () => {
    expect(idsOf((r) => mentionsAny(r.when, NEUTRAL))).toEqual([]);
  });

  it('warns of what a food can do', () => {
    const lacks = (what: (food: Food) => boolean, word: RegExp): string[] =>
      idsOf((r) => brings(r, what) && !r.cautions.some((text) => word.test(text)));
    const polyols = (food: Food): number =>
      Object.values(food.per100g.polyolsG ?? {}).reduce((sum, g) => sum + g, 0);
    expect(lacks((f) => (f.per100g.alluloseG ?? 0) > 0, /EU/)).toEqual([]);
    expect(lacks((f) => polyols(f) > 20, /stomach/)).toEqual([]);
    expect(lacks((f) => (f.per100g.polyolsG?.xylitol ?? 0) > 0, /dogs/)).toEqual([]);
    expect(lacks(carries('lupin'), /lupin/)).toEqual([]);
    expect(lacks((f) => f.id.startsWith('cel'), /celery/i)).toEqual([]);
    expect(lacks((f) => f.id.startsWith('psyllium'), /swell/)).toEqual([]);
    expect(lacks((f) => f.id === 'konjac-glucomannan', /swells/)).toEqual([]);
    expect(lacks((f) => /package label overrides/.test(f.source.note ?? ''), /label/)).toEqual([]);
  });

  it('puts each food into one class', () => {
    const ids = classes.flatMap((c) => c.foods);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
    expect(ids.filter((id) => foods.byId(id) === null)).toEqual([]);
  });

  it('gives every dough family several ways to replace flour, choux none, none too many', () => {
    for (const family of FAMILIES) {
      const limits = limitsOf(family);
      if (limits.kind !== 'dough') continue;
      const ways = SWAP_RULES.filter(
        (r) => r.replaces.includes('wheat-flours') && suits(r, family) && r.when === undefined,
      ).length;
      if (family === 'choux') expect(ways).toBe(0);
      else {
        expect(ways, family).toBeGreaterThanOrEqual(4);
        expect(ways, family).toBeLessThanOrEqual(12);
      }
    }
  });

  it('leaves out of doughs with yeast what would crystallise in them', () => {
    const yeasted = FAMILIES.filter((family) => limitsOf(family).yeast);
    const named = SWAP_RULES.filter((r) => yeasted.some((family) => r.in.includes(family)));
    expect(named.length).toBeGreaterThan(10);
    expect(
      named.filter((r) => brings(r, (f) => erythritolIn(f) > 0.5)).map(({ id }) => id),
    ).toEqual([]);
  });

  it('keeps family limits in order', () => {
    for (const family of FAMILIES) {
      const limits = limitsOf(family);
      expect(limits.source, family).not.toBe('');
      if (!limits.gluten) continue;
      expect(limits.gluten.hard, family).toBeLessThanOrEqual(limits.gluten.min);
      expect(limits.gluten.min, family).toBeLessThan(limits.gluten.max);
      for (const { least, most, cap } of Object.values(limits.binder)) {
        expect(least).toBeLessThanOrEqual(most);
        expect(most).toBeLessThanOrEqual(cap);
      }
    }
  });
});

function net(id: string): number {
  const food = foods.byId(id);
  return (food && netPerGram(food, DEFAULT_GOALS.rule)) ?? Number.NaN;
}
