import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { basisByEnergy } from '../../engine/foods/carbohydrate-basis.ts';
import type { Family, Ingredient, NetCarbRule } from '../../engine/model.ts';
import { Tally } from '../../engine/model.ts';
import { tally } from '../../engine/tally/index.ts';
import { netCarbs } from '../../engine/tally/net-carbs.ts';
import { withUncertainty } from '../../engine/tally/propagate.ts';
import { makeFood, makeIngredient, makeLine, makeTable, makeWeight, sure } from './fixtures.ts';

const US: NetCarbRule = { region: 'us', polyols: 'half' };
const EU: NetCarbRule = { region: 'eu', polyols: 'half' };

// SR 168894 and SR 169655.
const flour = makeFood('all-purpose-flour', { carbohydrateG: 76.31, fiberG: 2.7, energyKcal: 364 });
const sugar = makeFood('sugar', { carbohydrateG: 99.98, fiberG: 0, energyKcal: 387 });
const water = makeFood('water', { carbohydrateG: 0, fiberG: 0, energyKcal: 0, waterG: 100 });
const mystery = makeFood('mystery-paste', { energyKcal: 100 });
const table = makeTable(flour, sugar, water, mystery);

const reckon = (ingredients: Ingredient[], rule = US, servings = 1): Tally =>
  tally(ingredients, { foods: table, servings, rule, family: 'cake' });

describe('propagation', () => {
  it('follows the worked sum of flour by the cup and weighed sugar', () => {
    // 375 g (330-411) flour at 73.61 net, match 5 %; sugar 4.00 g in all.
    const total = withUncertainty(376.0175, [
      { cause: 'amount flour', minus: 33.12, plus: 26.5 },
      { cause: 'match flour', minus: 13.8, plus: 13.8 },
      { cause: 'sugar', minus: 4, plus: 4 },
    ]);
    expect(total.best - total.low).toBeCloseTo(41.69, 1);
    expect(total.high - total.best).toBeCloseTo(34.81, 1);
  });

  it('adds parts of one cause linearly and never exceeds the linear sum', () => {
    const shared = withUncertainty(100, [
      { cause: 'flour', minus: 3, plus: 3 },
      { cause: 'flour', minus: 4, plus: 4 },
    ]);
    expect(shared).toEqual({ low: 93, best: 100, high: 107 });
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            cause: fc.constantFrom('a', 'b', 'c'),
            minus: fc.double({ min: 0, max: 50, noNaN: true }),
            plus: fc.double({ min: 0, max: 50, noNaN: true }),
          }),
        ),
        (parts) => {
          const value = withUncertainty(1000, parts);
          const plus = parts.reduce((sum, part) => sum + part.plus, 0);
          expect(value.low).toBeLessThanOrEqual(value.best);
          expect(value.high).toBeGreaterThanOrEqual(value.best);
          expect(value.high - value.best).toBeLessThanOrEqual(plus + 1e-9);
        },
      ),
    );
  });

  it('widens with an unsure match: exact 5 %, other 15 %, proxy 30 %', () => {
    const width = (confidence: number): number => {
      const net = reckon([makeIngredient('0', 'sugar', makeWeight(100), { confidence })]).whole
        .netCarbsG;
      return net === null ? 0 : (net.high - net.best) / net.best;
    };
    expect(width(1)).toBeCloseTo(0.05, 10);
    expect(width(0.7)).toBeCloseTo(0.15, 10);
    expect(width(0.3)).toBeCloseTo(0.3, 10);
  });
});

describe('tally', () => {
  it('gives valid data, and per serving is the whole over the servings', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(
            fc.constantFrom('all-purpose-flour', 'sugar', 'water', 'mystery-paste', null),
            fc.double({ min: 0, max: 2000, noNaN: true }),
          ),
        ),
        fc.integer({ min: 1, max: 40 }),
        (rows, servings) => {
          const ingredients = rows.map(([id, grams], at) =>
            makeIngredient(
              String(at),
              id,
              makeWeight({ low: grams * 0.9, best: grams, high: grams * 1.2 }),
            ),
          );
          const result = Tally.parse(reckon(ingredients, US, servings));
          const whole = result.whole.netCarbsG;
          const each = result.perServing.netCarbsG;
          expect(each === null).toBe(whole === null);
          if (whole !== null && each !== null) {
            expect(each.best * servings).toBeCloseTo(whole.best, 6);
            expect(whole.low).toBeLessThanOrEqual(whole.best);
            expect(whole.best).toBeLessThanOrEqual(whole.high);
            const carbohydrate = result.whole.carbohydrateG?.best ?? 0;
            expect(whole.best).toBeLessThanOrEqual(carbohydrate + 1e-9);
          }
          const counted = result.contributions.length + result.uncounted.length;
          expect(counted).toBe(rows.length);
        },
      ),
    );
  });

  it('lists what it could not count, with the reason', () => {
    const result = reckon([
      makeIngredient('0', 'sugar', makeWeight(100)),
      makeIngredient('1', null, makeWeight(50)),
      makeIngredient('2', 'sugar', null),
      makeIngredient('3', 'water', null),
      makeIngredient('4', 'sugar', makeWeight(30), {
        line: makeLine('30 g sugar (optional)', { optional: true }),
      }),
      makeIngredient('5', 'sugar', makeWeight(5, 0), {
        line: makeLine('sugar to serve', { purpose: 'to serve' }),
      }),
      makeIngredient('6', null, null, { line: makeLine('For the filling', { kind: 'heading' }) }),
      makeIngredient('7', null, null, { line: makeLine('1 batch pastry', { kind: 'reference' }) }),
    ]);
    expect(result.whole.netCarbsG?.best).toBeCloseTo(99.98, 10);
    expect(result.uncounted.map(({ key }) => key)).toEqual(['1', '2', '4', '5', '7']);
    expect(result.uncounted.map(({ why }) => why)).toEqual([
      'no food in the table matches',
      'no amount given',
      'optional, so not in the totals; 30 g net carbs a serving if eaten',
      'to serve: not in the totals; 5.0 g net carbs a serving if eaten',
      'another recipe, whose figures are not known here',
    ]);
  });

  it('names the foods that lack a figure, and keeps an unknown total null', () => {
    const result = reckon([makeIngredient('0', 'mystery-paste', makeWeight(100))]);
    expect(result.whole.netCarbsG).toBeNull();
    expect(result.incomplete.netCarbsG).toEqual(['0']);
    expect(result.whole.energyKcal?.best).toBe(100);
    const mixed = reckon([
      makeIngredient('0', 'mystery-paste', makeWeight(100)),
      makeIngredient('1', 'sugar', makeWeight(10)),
    ]);
    expect(mixed.whole.netCarbsG?.best).toBeCloseTo(9.998, 10);
    expect(mixed.incomplete.netCarbsG).toEqual(['0']);
  });

  it('shows carbohydrate without fibre in the EU and with it in the US, at the same net carbs', () => {
    const rows = [makeIngredient('0', 'all-purpose-flour', makeWeight(100))];
    expect(reckon(rows, US).whole.carbohydrateG?.best).toBeCloseTo(76.31, 10);
    expect(reckon(rows, EU).whole.carbohydrateG?.best).toBeCloseTo(73.61, 10);
    expect(reckon(rows, EU).whole.netCarbsG?.best).toBeCloseTo(73.61, 10);
    expect(reckon(rows, EU).notes.map(({ code }) => code)).toContain('EU_ENERGY');
  });

  it('gives EU carbohydrate the scatter of net carbs', () => {
    const blend = makeFood(
      'blend',
      { carbohydrateG: 51, fiberG: 30 },
      { spread: { netCarbsG: [4, 35] } },
    );
    const whole = tally([makeIngredient('0', 'blend', makeWeight(100))], {
      foods: makeTable(blend),
      servings: 1,
      rule: EU,
      family: 'cake',
    }).whole;
    expect(whole.carbohydrateG).toEqual({ low: 4, best: 21, high: 35 });
    expect(whole.netCarbsG).toEqual(whole.carbohydrateG);
  });

  it('orders contributions and their shares add to one', () => {
    const result = reckon([
      makeIngredient('0', 'sugar', makeWeight(50)),
      makeIngredient('1', 'all-purpose-flour', makeWeight(200)),
    ]);
    expect(result.contributions.map(({ key }) => key)).toEqual(['1', '0']);
    expect(result.contributions.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 10);
  });

  it('counts the eaten share of what is used', () => {
    const eaten = { low: 0.05, best: 0.15, high: 0.3 };
    const net = reckon([makeIngredient('0', 'sugar', makeWeight(100, eaten))]).whole.netCarbsG;
    expect(net?.best).toBeCloseTo(14.997, 10);
    expect(net?.low).toBeGreaterThan(0);
    expect(net?.high).toBeGreaterThan(29);
  });

  it('does not throw on no ingredients or no servings', () => {
    const none = tally([], { foods: table, servings: 0, rule: US, family: 'other' });
    expect(Tally.parse(none).whole.netCarbsG).toBeNull();
    expect(none.per100gCooked).toBeNull();
  });

  it('lets part of the alcohol cook off, and its energy with it', () => {
    // 10 g alcohol per 100 g at 7 kcal/g, invented; baked: 45 % retained.
    const wine = makeFood('wine-test', { energyKcal: 80, alcoholG: 10 });
    const rows = [makeIngredient('0', 'wine-test', makeWeight(100))];
    const baked = tally(rows, { foods: makeTable(wine), servings: 1, rule: US, family: 'cake' });
    expect(baked.whole.energyKcal?.best).toBeCloseTo(80 - 70 * 0.55, 10);
  });
});

describe('cooked weight', () => {
  const rice = makeFood('rice-white-dry', { carbohydrateG: 79.95, fiberG: 1.3, waterG: 11.6 });
  const cooked = (rows: [string, number][], cookedGrams?: number): Tally =>
    tally(
      rows.map(([id, grams], at) => makeIngredient(String(at), id, makeWeight(grams))),
      {
        foods: makeTable(rice, water),
        servings: 2,
        rule: US,
        family: 'rice-dish',
        cookedGrams: cookedGrams ?? null,
      },
    );

  it('lets dry rice take up water that the recipe does not list', () => {
    expect(cooked([['rice-white-dry', 100]]).cookedGrams?.best).toBeCloseTo(280, 10);
  });

  it('does not count that water twice when the recipe lists it', () => {
    const listed = cooked([
      ['rice-white-dry', 100],
      ['water', 200],
    ]);
    expect(listed.cookedGrams?.best).toBeCloseTo(285, 10);
    expect(listed.cookedSource).toContain('95 %');
  });

  it('takes a weighed dish at its weight, and servings do not depend on it', () => {
    const weighed = cooked([['rice-white-dry', 100]], 260);
    expect(weighed.cookedGrams).toEqual(sure(260));
    expect(weighed.per100gCooked?.netCarbsG?.best).toBeCloseTo(7865 / 260, 8);
    expect(weighed.perServing).toEqual(cooked([['rice-white-dry', 100]]).perServing);
  });

  it('lets fibre, gums and allulose hold water in the oven', () => {
    const flour = makeFood('bread-flour', { fiberG: 2.4 });
    const husk = makeFood('psyllium-husk-powder', { fiberG: 80 });
    const allulose = makeFood('allulose', { alluloseG: 100 });
    const baked = (rows: [string, number][], family: Family = 'lean-yeast-bread') =>
      tally(
        rows.map(([id, grams], at) => makeIngredient(String(at), id, makeWeight(grams))),
        { foods: makeTable(flour, husk, allulose, water), servings: 1, rule: US, family },
      );
    const loaf: [string, number][] = [
      ['bread-flour', 550],
      ['water', 400],
    ];
    // Of 1000 g a lean loaf loses 12 %; with 5 % of fibre 0.85 of that, with half as much 0.925 of it.
    const full = baked([...loaf, ['psyllium-husk-powder', 50]]);
    expect(full.cookedGrams?.best).toBeCloseTo(1000 - 120 * 0.85, 8);
    expect(full.cookedSource).toContain('85 % of the usual loss');
    const half = baked([...loaf, ['bread-flour', 25], ['psyllium-husk-powder', 25]]);
    expect(half.cookedGrams?.best).toBeCloseTo(1000 - 120 * 0.925, 8);
    const sweet = baked([...loaf, ['allulose', 50]], 'cake');
    expect(sweet.cookedGrams?.best).toBeCloseTo(1000 - 90 * 0.9, 8);
    // The bounds stay in order, and plain dough and unbaked dishes keep their loss.
    const { low, best, high } = full.cookedGrams ?? { low: 0, best: 0, high: 0 };
    expect(low).toBeLessThan(best);
    expect(best).toBeLessThan(high);
    expect(baked([...loaf, ['bread-flour', 50]]).cookedGrams?.best).toBeCloseTo(880, 8);
    const sauce = baked([...loaf, ['psyllium-husk-powder', 50]], 'thickened-sauce');
    expect(sauce.cookedGrams?.best).toBeCloseTo(800, 8);
  });

  it('widens figures per 100 g by the unsure loss', () => {
    const listed = cooked([
      ['rice-white-dry', 100],
      ['water', 200],
    ]);
    const per100 = listed.per100gCooked?.netCarbsG;
    const whole = listed.whole.netCarbsG;
    if (!per100 || !whole) throw new Error('figures are known');
    expect((per100.high - per100.best) / per100.best).toBeGreaterThan(
      (whole.high - whole.best) / whole.best,
    );
  });
});

describe('dish checks', () => {
  const breadFlour = makeFood('bread-flour', {
    energyKcal: 361,
    carbohydrateG: 72.53,
    fiberG: 2.4,
    waterG: 13.36,
  });
  const salt = makeFood('salt', { carbohydrateG: 0, fiberG: 0, sodiumMg: 38758, waterG: 0.2 });
  const butter = makeFood('butter-unsalted', { carbohydrateG: 0.06, fiberG: 0, waterG: 17.94 });
  const codesOf = (rows: [string, number][], servings: number): string[] =>
    tally(
      rows.map(([id, grams], at) => makeIngredient(String(at), id, makeWeight(grams))),
      {
        foods: makeTable(breadFlour, salt, water, butter),
        servings,
        rule: US,
        family: 'lean-yeast-bread',
      },
    ).notes.map(({ code }) => code);

  it('finds nothing to say about a usual loaf, also with much butter', () => {
    const loaf: [string, number][] = [
      ['bread-flour', 500],
      ['water', 340],
      ['salt', 10],
      ['butter-unsalted', 40],
    ];
    expect(codesOf(loaf, 12)).toEqual([]);
  });

  it('finds an unlikely unit, serving or amount of water', () => {
    const rows = (flourG: number, waterG: number, saltG: number): [string, number][] => [
      ['bread-flour', flourG],
      ['water', waterG],
      ['salt', saltG],
    ];
    expect(codesOf(rows(500, 340, 60), 12)).toEqual(['AMOUNT_UNUSUAL']);
    expect(codesOf(rows(500, 340, 10), 2)).toContain('SERVING_SIZE_UNUSUAL');
    expect(codesOf(rows(500, 340, 10), 2)).toContain('CARBS_UNUSUAL');
    expect(codesOf(rows(500, 700, 10), 20)).toEqual(['MOISTURE_UNUSUAL']);
  });
});

describe('net carbs', () => {
  const base = { basis: 'total', polyolsInCarbohydrate: true, fiber: sure(0) } as const;
  const xylitol = [{ kind: 'xylitol', grams: sure(10) }];

  it('knows every polyol policy', () => {
    const with10 = (policy: NetCarbRule['polyols'], polyolsPerServingG = 10): number =>
      netCarbs({ ...base, policy, carbohydrate: sure(20), polyols: xylitol, polyolsPerServingG })
        .net?.best ?? -1;
    expect(with10('half')).toBe(15);
    expect(with10('energy')).toBe(16);
    expect(with10('none')).toBe(20);
    expect(with10('all')).toBe(10);
    expect(with10('half_over_5g')).toBe(15);
    expect(with10('half_over_5g', 4)).toBe(20);
  });

  it('gives an unknown polyol the whole range', () => {
    const result = netCarbs({
      ...base,
      policy: 'half',
      carbohydrate: sure(20),
      polyols: [{ kind: 'sweet alcohol', grams: sure(10) }],
    });
    expect(result.net).toEqual({ low: 10, best: 15, high: 20 });
    expect(result.flags).toContain('POLYOL_KIND_UNKNOWN');
  });

  it('keeps a polyol of unknown amount in the count, with room below', () => {
    const result = netCarbs({
      ...base,
      policy: 'half',
      carbohydrate: sure(20),
      sugars: sure(3),
      polyols: [{ kind: 'maltitol', grams: null }],
    });
    expect(result.net).toEqual({ low: 3, best: 20, high: 20 });
  });

  it('assumes no fibre inside a carbohydrate of unknown basis', () => {
    const result = netCarbs({
      ...base,
      basis: 'unknown',
      policy: 'half',
      carbohydrate: sure(20),
      fiber: sure(8),
    });
    expect(result.net?.best).toBe(20);
    expect(result.flags).toEqual(['BASIS_ASSUMED']);
  });

  it('stays within bounds and never below zero for any input', () => {
    const grams = fc.double({ min: 0, max: 100, noNaN: true }).map(sure);
    fc.assert(
      fc.property(
        grams,
        fc.option(grams),
        fc.constantFrom('total', 'available', 'available_mse', 'unknown'),
        fc.boolean(),
        fc.constantFrom('half', 'half_over_5g', 'energy', 'none', 'all'),
        fc.constantFrom('erythritol', 'maltitol', 'glycerol', 'nonsense'),
        grams,
        (carbohydrate, fiber, basis, polyolsInCarbohydrate, policy, kind, polyol) => {
          const polyols = [{ kind, grams: polyol }];
          const { net } = netCarbs({
            carbohydrate,
            fiber,
            basis,
            polyolsInCarbohydrate,
            policy,
            polyols,
          });
          if (net === null) throw new Error('carbohydrate was known');
          expect(net.low).toBeGreaterThanOrEqual(0);
          expect(net.low).toBeLessThanOrEqual(net.best + 1e-9);
          expect(net.best).toBeLessThanOrEqual(net.high + 1e-9);
        },
      ),
    );
  });

  it('tells the basis from the energy when it can', () => {
    // 10 g protein, 2 g fat, 60 g carbohydrate, 20 g fibre, invented.
    const bran = makeFood('bran', { proteinG: 10, fatG: 2, carbohydrateG: 60, fiberG: 20 }).per100g;
    expect(basisByEnergy({ ...bran, energyKcal: 258 })).toBe('total');
    expect(basisByEnergy({ ...bran, energyKcal: 338 })).toBe('available');
    expect(basisByEnergy({ ...bran, energyKcal: 298 })).toBeNull();
  });
});
