/** Packages from labels: invented labels, published composition printed as a label, any input. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foodTable } from '../../../engine/foods/index.ts';
import { foodFromLabel } from '../../../engine/foods/label/label.ts';
import { roundForUsLabel } from '../../../engine/foods/label/label-rounding.ts';
import type { PackageLabel } from '../../../engine/foods/label/package-label.ts';
import { Food, type NetCarbRule } from '../../../engine/model.ts';
import { foodNumbers } from '../../../engine/tally/composition.ts';
import { blendEu, blendUs, label } from './labels.ts';

const US: NetCarbRule = { region: 'us', polyols: 'half' };
const dish = { polyolsPerServingG: 0, alcoholRetained: 1 };
const netOf = (food: Food, rule = US) => foodNumbers(food, rule, dish).figures.netCarbsG;

function made(input: PackageLabel): { food: Food; codes: string[] } {
  const result = foodFromLabel(input);
  if (!result.ok) throw new Error(result.why);
  return { food: result.food, codes: result.warnings.map((note) => note.code) };
}

const why = (input: PackageLabel): string => {
  const result = foodFromLabel(input);
  return result.ok ? 'accepted' : result.why;
};

describe('a US label', () => {
  it('becomes figures of 100 g with the range of its rounding', () => {
    const { food, codes } = made(blendUs());
    // 14 g of 30 g: 13.5 to 14.5 g (21 CFR 101.9(c)(6)) of 29.5 to 30.5 g.
    expect(food.per100g.carbohydrateG).toBeCloseTo(46.67, 2);
    expect(food.spread.carbohydrateG).toEqual([44.26, 49.16]);
    // 14 - 8 = 6 g net, 5 to 7 g.
    expect(netOf(food)?.best).toBeCloseTo(20, 1);
    expect(food.spread.netCarbsG).toEqual([16.39, 23.73]);
    expect(food.carbohydrateBasis).toBe('total');
    expect(food.source).toEqual({ kind: 'user', id: null, note: 'package label, US form' });
    expect(codes).toEqual([]);
  });

  it('counts all carbohydrate when it gives no fibre, and says so', () => {
    const { food, codes } = made(blendUs({ fiberG: null, energyKcal: 100 }));
    expect(netOf(food)?.best).toBeCloseTo(46.67, 1);
    expect(codes).toContain('LABEL_FIBRE_MISSING');
  });

  it("reads 'less than 1 g' as half a gram to a gram", () => {
    const { food } = made(
      label({
        name: 'Soft cream',
        servingG: 15,
        carbohydrateG: '<1',
        fiberG: 0,
        fatG: 5,
        energyKcal: 50,
        proteinG: 0,
      }),
    );
    expect(food.per100g.carbohydrateG).toBeCloseTo(5, 1);
    expect(food.spread.carbohydrateG?.[0]).toBeCloseTo((0.5 * 100) / 15.5, 1);
    expect(food.spread.carbohydrateG?.[1]).toBeCloseTo(100 / 14.5, 1);
  });

  it('tells when a small serving leaves net carbs wide open', () => {
    const tiny = label({
      name: 'Sweet crystals',
      servingG: 4,
      carbohydrateG: 4,
      fiberG: 0,
      sugarsG: 0,
      polyolsG: 4,
      energyKcal: 0,
      fatG: 0,
      proteinG: 0,
      standsInFor: 'erythritol',
    });
    expect(made(tiny).codes).toContain('LABEL_COARSE');
  });
});

describe('an EU label', () => {
  it('keeps fibre beside the carbohydrate and makes sodium of salt', () => {
    const { food, codes } = made(blendEu());
    expect(netOf(food)?.best).toBe(21);
    expect(food.spread.netCarbsG).toEqual([20.5, 21.5]);
    expect(food.per100g.sodiumMg).toBeCloseTo(40, 6);
    expect(food.carbohydrateBasis).toBe('available');
    expect(codes).toEqual([]);
    const us = foodNumbers(food, US, dish).figures.carbohydrateG;
    expect(us).toEqual({ low: 46, best: 47, high: 48 });
    const eu = foodNumbers(food, { ...US, region: 'eu' }, dish).figures.carbohydrateG;
    expect(eu).toEqual({ low: 20.5, best: 21, high: 21.5 });
  });

  it('warns when its energy says the fibre is in the carbohydrate, and the other way round', () => {
    // 47 g carbohydrate with 26 g fibre in it: 4 x 20 + 9 x 1.2 + 4 x 21 + 2 x 26 = 227 kcal.
    const asEu = blendEu({ carbohydrateG: 47, proteinG: 20, energyKcal: 227 });
    expect(made(asEu).codes).toContain('LABEL_BASIS');
    const asUs = blendEu({
      form: 'us',
      servingG: 100,
      carbohydrateG: 30,
      energyKcal: 332,
      sodiumMg: 40,
      saltG: null,
    });
    expect(made(asUs).codes).toContain('LABEL_BASIS');
  });
});

describe('typing errors', () => {
  it.each<[string, Partial<PackageLabel>, RegExp]>([
    ['kJ for kcal', { energyKcal: 1226 }, /kcal figure, not kJ/],
    ['more than 100 g', { carbohydrateG: 71 }, /add up to more than 100 g/],
    [
      'one figure above 100 g',
      { carbohydrateG: 102, fiberG: 0, proteinG: 0, sugarsG: 0 },
      /add up to more than 100 g/,
    ],
    ['sugars above carbohydrate', { sugarsG: 30 }, /more sugars than carbohydrate/],
    ['saturates above fat', { saturatedG: 4 }, /saturated/],
    ['polyols above carbohydrate', { polyolsG: 40 }, /part of the carbohydrate/],
    ['salt in mg', { saltG: 120 }, /pure salt/],
    ['no name', { name: '  ' }, /name/],
    [
      'a name other recipes use',
      { name: 'Bread flour' },
      /Recipes call another food "Bread flour"/,
    ],
    ['an unknown stand-in', { standsInFor: 'no-such-food' }, /not known/],
  ])('%s is refused with words', (_, change, words) => {
    expect(why(blendEu(change))).toMatch(words);
  });

  it('fibre above carbohydrate and a missing serving are refused on a US label', () => {
    expect(why(blendUs({ fiberG: 20 }))).toMatch(/EU form/);
    expect(why(blendUs({ servingG: null }))).toMatch(/grams of one serving/);
  });

  it.each<[string, Partial<PackageLabel>]>([
    ['a wrong digit', { energyKcal: 189 }],
    ['carbohydrate left out', { carbohydrateG: 0, sugarsG: 0 }],
    ['energy of 30 g', { energyKcal: 88 }],
    ['kJ of a light portion', { energyKcal: 880 }],
  ])('%s draws a warning of the energy', (_, change) => {
    expect(made(blendEu(change)).codes).toContain('LABEL_ENERGY');
  });

  it('a package unlike what it stands in for draws a warning', () => {
    const plainFlour = blendEu({ carbohydrateG: 71, fiberG: 3, proteinG: 12, energyKcal: 350 });
    expect(made(plainFlour).codes).toContain('LABEL_UNLIKE');
  });

  it('allergens the usual food has are asked after; gluten brings wheat by itself', () => {
    expect(made(blendEu({ allergens: [] })).food.allergens).toEqual(['gluten', 'wheat']);
    expect(made(blendEu({ allergens: [] })).codes).toContain('LABEL_ALLERGENS');
    expect(made(blendEu()).codes).not.toContain('LABEL_ALLERGENS');
  });
});

describe('what it stands in for', () => {
  it('lends its id, names, measures and function; the label sets gluten, water and starch', () => {
    const { food } = made(blendEu());
    const like = foodTable().byId('low-carb-wheat-flour-blend');
    expect(food.id).toBe('low-carb-wheat-flour-blend');
    expect(food.aliases).toContain('low-carb wheat flour blend');
    expect(food.measures).toEqual(like?.measures);
    // 0.7 of 38 with soy beside the gluten; 0.58 + 0.38; 21 less 1 sugar.
    expect(food.function?.glutenProtein).toBeCloseTo(26.6, 6);
    expect(food.function?.absorption?.best).toBeCloseTo(0.96, 6);
    expect(food.function?.digestibleStarch).toBeCloseTo(20, 6);
    expect(food.function?.maxShare).toEqual(like?.function?.maxShare);
    const pure = made(blendEu({ otherProteins: false })).food;
    expect(pure.function?.glutenProtein).toBeCloseTo(34.2, 6);
    const none = made(blendEu({ glutenAmongFirst: false })).food;
    expect(none.function?.glutenProtein).toBe(0);
    expect(made(blendEu({ proteinG: 50, carbohydrateG: 10 })).food.function?.absorption?.best).toBe(
      1.05,
    );
  });

  it('a plain flour keeps its water and its share of gluten', () => {
    const flour = label({
      name: 'Village flour',
      form: 'eu',
      energyKcal: 346,
      fatG: 1.3,
      carbohydrateG: 71,
      fiberG: 3.1,
      sugarsG: 1,
      proteinG: 11,
      saltG: 0,
      allergens: ['wheat', 'gluten'],
      standsInFor: 'bread-flour',
    });
    const fn = made(flour).food.function;
    expect(fn?.absorption?.best).toBe(0.62);
    expect(fn?.glutenProtein).toBeCloseTo(11, 0);
  });

  it("a sweetener keeps its kind of polyol: erythritol's is not counted", () => {
    const sweet = label({
      name: 'Sweet crystals',
      form: 'eu',
      energyKcal: 0,
      fatG: 0,
      carbohydrateG: 100,
      fiberG: 0,
      sugarsG: 0,
      polyolsG: 100,
      proteinG: 0,
      saltG: 0,
      standsInFor: 'erythritol',
    });
    const { food } = made(sweet);
    expect(food.per100g.polyolsG).toEqual({ erythritol: 100 });
    expect(netOf(food)?.best).toBe(0);
    expect(food.function?.sweetness).toBe(foodTable().byId('erythritol')?.function?.sweetness);
    const unknown = made({ ...sweet, standsInFor: null }).food;
    expect(netOf(unknown)).toEqual({ low: 0, best: 50, high: 100 });
  });

  it('without one it is a food of its own', () => {
    const { food } = made(blendEu({ standsInFor: null, name: 'Früh-Mehl №7' }));
    expect(food.id).toBe('own-fruh-mehl-7');
    expect(food.aliases).toEqual([]);
    expect(food.function).toBeNull();
    expect(made(blendEu({ standsInFor: null, name: '全粒' })).food.id).toMatch(/^own-[a-z0-9]+$/);
  });
});

describe('the table with own foods', () => {
  it('holds each id once, the own food in place of the built-in one', () => {
    const { food } = made(blendEu());
    const table = foodTable([food, { ...food, name: 'another package' }]);
    expect(table.foods.filter((one) => one.id === food.id)).toEqual([food]);
    expect(table.byId(food.id)).toBe(food);
    expect(table.foods).toHaveLength(foodTable().foods.length);
    expect(new Set(table.foods.map((one) => one.id)).size).toBe(table.foods.length);
  });

  it('is made once for one list', () => {
    const own = [made(blendEu()).food];
    expect(foodTable(own)).toBe(foodTable(own));
  });
});

describe('any label', () => {
  const printed = (max: number) =>
    fc.oneof(
      fc.integer({ min: 0, max }),
      fc.double({ min: 0, max, noNaN: true }),
      fc.constant('<1'),
    );
  const maybe = (max: number) => fc.option(printed(max), { nil: null });
  const anyLabel: fc.Arbitrary<PackageLabel> = fc.record({
    name: fc.string({ maxLength: 80 }),
    form: fc.constantFrom('us' as const, 'eu' as const),
    servingG: fc.option(fc.double({ min: 0.1, max: 200, noNaN: true }), { nil: null }),
    energyKcal: printed(1200),
    fatG: printed(120),
    saturatedG: maybe(60),
    carbohydrateG: printed(120),
    fiberG: maybe(100),
    sugarsG: maybe(100),
    polyolsG: maybe(100),
    alluloseG: maybe(100),
    proteinG: printed(100),
    sodiumMg: maybe(5000),
    saltG: maybe(120),
    allergens: fc.constantFrom([], ['wheat' as const, 'gluten' as const]),
    standsInFor: fc.constantFrom(null, 'low-carb-wheat-flour-blend', 'erythritol', 'bread-flour'),
    glutenAmongFirst: fc.boolean(),
    otherProteins: fc.boolean(),
  });

  it('gives words or a sound food, and never throws', () => {
    fc.assert(
      fc.property(anyLabel, (input) => {
        const result = foodFromLabel(input);
        if (!result.ok) {
          expect(result.why.length).toBeGreaterThan(10);
          return;
        }
        const { food } = result;
        expect(Food.parse(JSON.parse(JSON.stringify(food)))).toEqual(food);
        for (const [name, range] of Object.entries(food.spread)) {
          const best = name === 'netCarbsG' ? netOf(food)?.best : food.per100g[name as 'fiberG'];
          expect(range[0]).toBeLessThanOrEqual((best ?? Number.NaN) + 0.02);
          expect(range[1]).toBeGreaterThanOrEqual((best ?? Number.NaN) - 0.02);
        }
      }),
      { numRuns: 400 },
    );
  });

  it('of a real food, rounded to print, keeps the true figures in its ranges', () => {
    // Foods of published composition, printed for a serving by 21 CFR 101.9(c).
    const real = foodTable().foods.filter(
      ({ source, per100g: c, carbohydrateBasis }) =>
        source.kind === 'SR' &&
        carbohydrateBasis === 'total' &&
        c.fiberG !== null &&
        c.carbohydrateG !== null &&
        c.carbohydrateG >= c.fiberG &&
        c.proteinG !== null &&
        c.fatG !== null &&
        c.energyKcal !== null,
    );
    fc.assert(
      fc.property(
        fc.constantFrom(...real),
        fc.integer({ min: 15, max: 120 }),
        ({ per100g: c }, servingG) => {
          const print = (value: number | null, kind: 'energy' | 'fat' | 'macro' | 'sodium') =>
            roundForUsLabel(((value ?? 0) * servingG) / 100, kind);
          const result = foodFromLabel(
            label({
              name: 'Printed package',
              servingG,
              energyKcal: print(c.energyKcal, 'energy'),
              fatG: print(c.fatG, 'fat'),
              carbohydrateG: print(c.carbohydrateG, 'macro'),
              fiberG: print(c.fiberG, 'macro'),
              proteinG: print(c.proteinG, 'macro'),
            }),
          );
          if (!result.ok) throw new Error(result.why);
          const { spread } = result.food;
          const within = (range: [number, number] | undefined, value: number) => {
            expect(value).toBeGreaterThanOrEqual((range?.[0] ?? Number.NaN) - 0.011);
            expect(value).toBeLessThanOrEqual((range?.[1] ?? Number.NaN) + 0.011);
          };
          within(spread.carbohydrateG, c.carbohydrateG ?? 0);
          within(spread.fiberG, c.fiberG ?? 0);
          within(spread.proteinG, c.proteinG ?? 0);
          within(spread.energyKcal, c.energyKcal ?? 0);
          within(spread.netCarbsG, (c.carbohydrateG ?? 0) - (c.fiberG ?? 0));
        },
      ),
      { numRuns: 500 },
    );
  });

  it('of a real food, rounded as Europe prints it, keeps the true figures in its ranges', () => {
    // Commission guidance of December 2012: from 10 g whole grams, below one decimal, up to 0.5 g 0.
    const print = (value: number): number =>
      value >= 10 ? Math.round(value) : value <= 0.5 ? 0 : Number(value.toFixed(1));
    const real = foodTable().foods.filter(
      ({ source, per100g: c, carbohydrateBasis }) =>
        source.kind === 'SR' &&
        carbohydrateBasis === 'total' &&
        c.alcoholG === 0 &&
        c.fiberG !== null &&
        c.carbohydrateG !== null &&
        c.carbohydrateG >= c.fiberG &&
        c.proteinG !== null &&
        c.fatG !== null,
    );
    fc.assert(
      fc.property(fc.constantFrom(...real), ({ per100g: c }) => {
        const [carbs, fibre] = [c.carbohydrateG ?? 0, c.fiberG ?? 0];
        const [protein, fat] = [c.proteinG ?? 0, c.fatG ?? 0];
        // Energy by Reg. (EU) 1169/2011 Annex XIV.
        const kcal = 4 * protein + 9 * fat + 4 * (carbs - fibre) + 2 * fibre;
        const result = foodFromLabel(
          label({
            name: 'Printed package',
            form: 'eu',
            servingG: null,
            energyKcal: Math.round(kcal),
            fatG: print(fat),
            carbohydrateG: print(carbs - fibre),
            fiberG: print(fibre),
            proteinG: print(protein),
          }),
        );
        if (!result.ok) throw new Error(result.why);
        const { spread, carbohydrateBasis } = result.food;
        expect(carbohydrateBasis).toBe('available');
        for (const [range, value] of [
          [spread.carbohydrateG, carbs - fibre],
          [spread.netCarbsG, carbs - fibre],
          [spread.fiberG, fibre],
          [spread.proteinG, protein],
          [spread.energyKcal, kcal],
        ] as const) {
          expect(value).toBeGreaterThanOrEqual((range?.[0] ?? Number.NaN) - 0.011);
          expect(value).toBeLessThanOrEqual((range?.[1] ?? Number.NaN) + 0.011);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('refuses what is no label at all', () => {
    for (const wrong of [null, {}, { ...blendEu(), fatG: -1 }, { ...blendEu(), fatG: 'much' }])
      expect(foodFromLabel(wrong as PackageLabel).ok).toBe(false);
  });
});
