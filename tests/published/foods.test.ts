/**
 * Published composition and portion figures, per 100 g, from USDA FoodData Central (SR Legacy ids
 * with SR 28 values; Foundation Foods ids where they start with 2), against the food table.
 */
import { describe, expect, it } from 'vitest';
import { foodTable } from '../../engine/foods/index.ts';

const { byId } = foodTable();

type Figures = {
  carb?: number;
  fiber?: number;
  kcal?: number;
  protein?: number;
  fat?: number;
  sodium?: number;
  net?: number;
};

// [our id, USDA id, figures, household measures in grams]
const PUBLISHED: [string, string, Figures, Record<string, number>][] = [
  ['bread-flour', '168896', { carb: 72.53, fiber: 2.4, kcal: 361, net: 70.13 }, { cup: 137 }],
  ['all-purpose-flour', '168894', { carb: 76.31, fiber: 2.7, kcal: 364 }, { cup: 125 }],
  ['whole-wheat-flour', '168893', { fiber: 10.7, kcal: 340, protein: 13.21 }, { cup: 120 }],
  ['rye-flour-medium', '168886', { fiber: 11.8 }, { cup: 102 }],
  ['dry-yeast', '175043', { carb: 41.22, fiber: 26.9 }, { tsp: 4, packet: 7.2 }],
  ['salt', '173468', { sodium: 38758 }, { tsp: 6, dash: 0.4 }],
  ['sugar', '169655', { carb: 99.98, kcal: 387 }, { cup: 200, tsp: 4.2 }],
  ['brown-sugar', '168833', {}, { 'cup packed': 220 }],
  ['powdered-sugar', '169656', {}, { cup: 120, 'cup sifted': 100, tbsp: 8 }],
  [
    'egg',
    '171287',
    { carb: 0.72, protein: 12.56, fat: 9.51, kcal: 143 },
    { large: 50, medium: 44, 'extra large': 56 },
  ],
  ['egg-white', '172183', {}, { large: 33 }],
  ['egg-yolk', '172184', {}, { large: 17 }],
  ['almond-flour', '2261420', { carb: 16.249, fiber: 9.266, net: 6.983 }, {}],
  ['coconut-flour', '2515382', { carb: 58.903, fiber: 34.24, net: 24.663 }, {}],
  ['vital-wheat-gluten', '168147', { carb: 13.79, fiber: 0.6, protein: 75.16, net: 13.19 }, {}],
  [
    'cocoa-powder',
    '169593',
    { carb: 57.9, fiber: 37, kcal: 228, net: 20.9 },
    { cup: 86, tbsp: 5.4 },
  ],
  ['cream-heavy', '170859', { carb: 2.74 }, { cup: 238, 'cup whipped': 120, tbsp: 15 }],
  ['pasta-dry', '169736', { carb: 74.67, fiber: 3.2 }, {}],
  ['pasta-cooked', '169737', { carb: 30.86, fiber: 1.8 }, {}],
  ['rice-white-dry', '168877', { carb: 79.95, fiber: 1.3, kcal: 365 }, { cup: 185 }],
  ['rice-white-cooked', '168878', { carb: 28.17, fiber: 0.4 }, { cup: 158 }],
  ['potato', '170026', { carb: 17.49, fiber: 2.1, net: 15.39, kcal: 77 }, {}],
  ['baking-soda', '175040', { sodium: 27360 }, { tsp: 4.6 }],
  ['baking-powder', '172803', { carb: 27.7, sodium: 10600 }, { tsp: 4.6 }],
  ['olive-oil', '171413', { kcal: 884, fat: 100 }, { cup: 216, tbsp: 13.5 }],
  ['cornstarch', '169698', { carb: 91.27, fiber: 0.9 }, { cup: 128 }],
  ['honey', '169640', { carb: 82.4, fiber: 0.2 }, { cup: 339, tbsp: 21 }],
  ['breadcrumbs-dry', '174928', { carb: 71.98, fiber: 4.5, sodium: 732 }, { cup: 108 }],
  ['wheat-bran', '169722', { kcal: 216, fiber: 42.8 }, { cup: 58 }],
  ['milk-whole', '171265', { kcal: 61 }, { cup: 244, tbsp: 15 }],
  ['almonds', '170567', { kcal: 579 }, { 'cup ground': 95 }],
  ['butter', '173410', {}, { stick: 113, cup: 227, tbsp: 14.2 }],
  ['cheddar', '173414', {}, { 'cup shredded': 113 }],
  ['guar-gum', '169045', { carb: 77.3, fiber: 77.3, net: 0 }, {}],
];

describe.each(PUBLISHED)('%s against record %s', (id, record, figures, measures) => {
  const food = byId(id);

  it('names the record', () => {
    expect(food?.source.id).toBe(record);
  });

  it('has its figures', () => {
    const c = food?.per100g;
    const mine = {
      carb: c?.carbohydrateG,
      fiber: c?.fiberG,
      kcal: c?.energyKcal,
      protein: c?.proteinG,
      fat: c?.fatG,
      sodium: c?.sodiumMg,
      net: (c?.carbohydrateG ?? Number.NaN) - (c?.fiberG ?? Number.NaN),
    };
    for (const [key, value] of Object.entries(figures)) {
      expect(mine[key as keyof typeof mine], key).toBeCloseTo(value, 2);
    }
  });

  it('has its portions', () => {
    for (const [unit, grams] of Object.entries(measures)) {
      const measure = food?.measures.find((entry) => entry.unit === unit);
      expect(measure?.grams, unit).toBeCloseTo(grams, 1);
      expect(measure?.source.id, unit).toBe(record);
    }
  });
});

describe('polyols and allulose', () => {
  // US energy: 21 CFR 101.9(c)(1)(i)(F); allulose: FDA guidance, October 2020.
  it.each([
    ['erythritol', 0],
    ['mannitol', 160],
    ['isomalt', 200],
    ['lactitol', 200],
    ['maltitol', 210],
    ['xylitol', 240],
    ['sorbitol', 260],
  ])('%s has %i kcal and is all polyol', (id, kcal) => {
    const c = byId(id)?.per100g;
    expect(c?.energyKcal).toBe(kcal);
    expect(c?.carbohydrateG).toBe(100);
    expect(c?.polyolsG).toEqual({ [id]: 100 });
  });

  it('allulose is carbohydrate of 0.4 kcal per g and no sugar', () => {
    const c = byId('allulose')?.per100g;
    expect([c?.carbohydrateG, c?.alluloseG, c?.energyKcal, c?.sugarsG]).toEqual([100, 100, 40, 0]);
  });
});

describe('records that disagree', () => {
  it('flaxseed is counted at the higher net of two records, with both as its spread', () => {
    const flax = byId('flaxseed-ground');
    const net = (flax?.per100g.carbohydrateG ?? 0) - (flax?.per100g.fiberG ?? 0);
    expect(net).toBeCloseTo(11.23, 1); // FF 2262075; SR 169414 gives 1.58
    expect(flax?.spread.netCarbsG?.[0]).toBeCloseTo(1.58, 2);
  });

  it('stevia is not taken from the record that calls it pure carbohydrate', () => {
    expect(byId('steviol-glycosides')?.source.id).toBeNull(); // SR 170679: C 100, E 0
  });

  it('potatoes are never taken from records of raw starch fibre', () => {
    // FF 2346401, 2346402, 2346403: AOAC 2011.25 fibre of raw flesh, 13.8-14.9 g
    const ids = ['2346401', '2346402', '2346403'];
    expect(foodTable().foods.filter(({ source }) => ids.includes(source.id ?? ''))).toEqual([]);
  });

  it('sesame flour has no fibre figure, so none is made up', () => {
    expect(byId('sesame-flour')?.per100g.fiberG).toBeNull(); // SR 170560
  });
});
