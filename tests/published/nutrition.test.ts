/**
 * Worked cases reckoned by hand from published composition. Figures per 100 g with ids are USDA
 * FoodData Central: SR = Standard Reference 28 values, FF = Foundation Foods.
 */
import { describe, expect, it } from 'vitest';
import {
  labelForGrams,
  roundForUsLabel,
  usLabelInterval,
} from '../../engine/foods/label/label-rounding.ts';
import type { Composition, Family, Food, Ingredient, Tally } from '../../engine/model.ts';
import { tally } from '../../engine/tally/index.ts';
import { type NetCarbInput, netCarbs } from '../../engine/tally/net-carbs.ts';
import { euEnergyKcal } from '../../engine/tally/tally-notes.ts';
import { makeFood, makeIngredient, makeTable, makeWeight, sure } from '../tally/fixtures.ts';

const net = (
  carbohydrate: number,
  fiber: number | null,
  rest: Partial<NetCarbInput> = {},
): ReturnType<typeof netCarbs> =>
  netCarbs({
    carbohydrate: sure(carbohydrate),
    fiber: fiber === null ? null : sure(fiber),
    basis: 'total',
    polyolsInCarbohydrate: true,
    policy: 'half',
    ...rest,
  });

const maltitol = [{ kind: 'maltitol', grams: sure(15) }];

describe('net carbs, worked cases', () => {
  it('1: bread flour SR 168896, fibre subtracted from total carbohydrate', () => {
    expect(net(72.53, 2.4).net?.best).toBeCloseTo(70.13, 10);
    expect(net(72.53, 2.4).flags).toEqual([]);
  });

  it('2: EU flour label, whose carbohydrate has no fibre in it', () => {
    expect(net(71, 3.1, { basis: 'available' }).net?.best).toBe(71);
  });

  it('3: US bar with maltitol', () => {
    const result = net(47, 12, { polyols: maltitol });
    expect(result.net?.best).toBeCloseTo(27.5, 10);
    expect(result.flags).toContain('HIGHER_GI_POLYOL');
    expect(net(47, 12, { polyols: maltitol, policy: 'all' }).net?.best).toBe(20);
  });

  it('4: the same bar on an EU label', () => {
    expect(net(35, 12, { basis: 'available', polyols: maltitol }).net?.best).toBe(27.5);
  });

  it('5: the same bar on an Australian label', () => {
    const bar = { basis: 'available', polyolsInCarbohydrate: false, polyols: maltitol } as const;
    expect(net(20, 12, bar).net?.best).toBe(27.5);
  });

  it('6: erythritol', () => {
    const polyols = [{ kind: 'erythritol', grams: sure(90) }];
    expect(net(90, 0, { polyols }).net?.best).toBe(0);
  });

  it('7: allulose', () => {
    expect(net(14, 2, { allulose: sure(9) }).net?.best).toBe(3);
  });

  it('8: a printed zero in bulk', () => {
    const printed = usLabelInterval('0 g', 'macro');
    if (printed === null) throw new Error('no figure read');
    const { amount, flags } = labelForGrams(printed, 15, 240);
    expect(amount).toEqual({ low: 0, best: 4, high: 8 });
    expect(flags).toEqual(['LABEL_ZERO_BULK']);
    // Heavy cream SR 170859: 2.74 g per 100 g.
    expect(net(2.74 * 2.4, 0).net?.best).toBeCloseTo(6.576, 10);
  });

  it('9: "less than 1 g" fibre', () => {
    const result = netCarbs({
      carbohydrate: usLabelInterval(1, 'macro'),
      fiber: usLabelInterval('<1 g', 'macro'),
      basis: 'total',
      polyolsInCarbohydrate: true,
      policy: 'half',
    });
    expect(result.net).toEqual({ low: 0, best: 0.25, high: 1 });
  });

  it('10: fibre missing, FF 790146', () => {
    const result = net(72.8, null, { likeFiberG: 2.4 });
    expect(result.net?.low).toBeCloseTo(69.2, 10);
    expect(result.net?.best).toBe(72.8);
    expect(result.net?.high).toBe(72.8);
    expect(result.flags).toEqual(['FIBRE_UNKNOWN']);
  });

  it('11: fibre above carbohydrate', () => {
    const result = net(3, 4);
    expect(result.net).toEqual(sure(0));
    expect(result.flags).toEqual(['FIBRE_EXCEEDS_CARB']);
  });

  it('12: raw potato FF 2346401, to be boiled, takes the record SR 170026', () => {
    const result = net(17.77125, 14.93, {
      rawStarchWillBeCooked: true,
      safeRecord: { carbohydrate: sure(17.49), fiber: sure(2.1) },
    });
    expect(result.net?.best).toBeCloseTo(15.39, 10);
    expect(result.flags).toEqual(['RAW_STARCH_FIBRE']);
    expect(net(17.77125, 14.93).net?.best).toBeCloseTo(2.84125, 10);
  });

  it('13: white sugar in monosaccharide equivalents', () => {
    const result = net(105, 0, { basis: 'available_mse', mseDivisor: 1.05 });
    expect(result.net?.best).toBeCloseTo(100, 10);
  });

  it('14: glycerol is not subtracted', () => {
    const polyols = [{ kind: 'glycerol', grams: sure(8) }];
    expect(net(25, 9, { polyols }).net?.best).toBe(16);
    expect(net(25, 9, { polyols, policy: 'all' }).net?.best).toBe(16);
  });
});

type Row = [
  kcal: number,
  protein: number,
  fat: number,
  carb: number,
  fiber: number,
  sodium: number,
];

/** A food from its six figures per 100 g: kcal, protein, fat, carbohydrate, fibre g, sodium mg. */
function usda(id: string, row: Row, rest: Partial<Composition> = {}): Food {
  const [energyKcal, proteinG, fatG, carbohydrateG, fiberG, sodiumMg] = row;
  return makeFood(id, { energyKcal, proteinG, fatG, carbohydrateG, fiberG, sodiumMg, ...rest });
}

const FOODS = [
  usda('bread-flour', [361, 11.98, 1.66, 72.53, 2.4, 2]), // SR 168896
  usda('water', [0, 0, 0, 0, 0, 0], { waterG: 100 }),
  usda('salt', [0, 0, 0, 0, 0, 38758]), // SR 173468
  usda('dry-yeast', [325, 40.44, 7.61, 41.22, 26.9, 51]), // SR 175043
  usda('almond-flour', [577.62536, 26.24375, 50.23, 16.24925, 9.266, 0.8944]), // FF 2261420
  usda('almonds-blanched', [590, 21.4, 52.52, 18.67, 9.9, 19]), // SR 170568
  usda('egg', [143, 12.56, 9.51, 0.72, 0, 142]), // SR 171287
  usda('butter-unsalted', [717, 0.85, 81.11, 0.06, 0, 11]), // SR 173430
  usda('erythritol', [0, 0, 0, 100, 0, 0], { polyolsG: { erythritol: 100 } }),
  usda('baking-powder', [53, 0, 0, 27.7, 0.2, 10600]), // SR 172803
  usda('pasta-dry', [371, 13.04, 1.51, 74.67, 3.2, 6]), // SR 169736
  usda('olive-oil', [884, 0, 100, 0, 0, 2]), // SR 171413
  usda('onion', [40, 1.1, 0.1, 9.34, 1.7, 4]), // SR 170000
  usda('garlic', [149, 6.36, 0.5, 33.06, 2.1, 17]), // SR 169230
  usda('tomatoes-canned', [16, 0.79, 0.25, 3.47, 1.9, 115]), // SR 170051
  usda('chicken-breast', [120, 22.5, 2.62, 0, 0, 45]), // SR 171077
  usda('all-purpose-flour', [364, 10.33, 0.98, 76.31, 2.7, 2]), // SR 168894
  usda('breadcrumbs-dry', [395, 13.35, 5.3, 71.98, 4.5, 732]), // SR 174928
];
const TABLE = makeTable(...FOODS);

function dish(
  rows: [id: string, grams: number, eaten?: number][],
  servings: number,
  family: Family,
  options: { cookedGrams?: number; policy?: 'half' | 'none' } = {},
): Tally {
  const ingredients: Ingredient[] = rows.map(([id, grams, eaten], at) =>
    makeIngredient(String(at), id, makeWeight(grams, eaten ?? 1)),
  );
  return tally(ingredients, {
    foods: TABLE,
    servings,
    family,
    rule: { region: 'us', polyols: options.policy ?? 'half' },
    cookedGrams: options.cookedGrams ?? null,
  });
}

/** The six figures and net carbs of a column of a tally. */
function figures(column: Tally['whole'] | null): (number | undefined)[] {
  const keys = [
    'energyKcal',
    'proteinG',
    'fatG',
    'carbohydrateG',
    'fiberG',
    'sodiumMg',
    'netCarbsG',
  ] as const;
  return keys.map((key) => column?.[key]?.best);
}

function expectFigures(column: Tally['whole'] | null, expected: number[]): void {
  const got = figures(column);
  expected.forEach((value, at) => {
    expect(got[at], `figure ${at}`).toBeCloseTo(value, 3);
  });
}

const LOAF: [string, number][] = [
  ['bread-flour', 500],
  ['water', 400],
  ['salt', 10],
  ['dry-yeast', 2],
];

describe('worked dishes', () => {
  it('A: bread of 500 g flour, 12 servings, 12 % bake loss', () => {
    const bread = dish(LOAF, 12, 'lean-yeast-bread');
    expect(bread.cookedGrams?.best).toBeCloseTo(802.56, 6);
    expectFigures(bread.whole, [1811.5, 60.7088, 8.4522, 363.4744, 12.538, 3886.82, 350.9364]);
    expectFigures(
      bread.per100gCooked,
      [225.7152, 7.5644, 1.0532, 45.2894, 1.5623, 484.3027, 43.7271],
    );
    expectFigures(bread.perServing, [150.9583, 5.0591, 0.7043, 30.2895, 1.0448, 323.9017, 29.2447]);
    expect(((bread.per100gCooked?.netCarbsG?.best ?? 0) * 40) / 100).toBeCloseTo(17.4908, 4);
    expect(bread.uncounted).toEqual([]);
  });

  it.each([
    [0.08, 41.826],
    [0.1, 42.755],
    [0.15, 45.27],
    [0.18, 46.927],
  ])('A: a bake loss of %f gives %f g net per 100 g', (loss, expected) => {
    const bread = dish(LOAF, 12, 'lean-yeast-bread', { cookedGrams: 912 * (1 - loss) });
    expect(bread.per100gCooked?.netCarbsG?.best).toBeCloseTo(expected, 3);
    expect(bread.perServing.netCarbsG?.best).toBeCloseTo(29.2447, 4);
  });

  it('A: energy by the EU factors', () => {
    const kcal = LOAF.reduce((sum, [id, grams]) => {
      const food = TABLE.byId(id);
      return sum + ((food === null ? 0 : (euEnergyKcal(food) ?? 0)) * grams) / 100;
    }, 0);
    expect(kcal).toBeCloseTo(1747.7, 1);
  });

  const MUFFINS: [string, number][] = [
    ['almond-flour', 200],
    ['egg', 250],
    ['butter-unsalted', 75],
    ['erythritol', 90],
    ['baking-powder', 8],
    ['salt', 1],
  ];

  it('B: ten almond muffins, 10 % loss', () => {
    const muffins = dish(MUFFINS, 10, 'quick-bread');
    expect(muffins.cookedGrams?.best).toBeCloseTo(561.6, 6);
    expectFigures(
      muffins.whole,
      [2054.7407, 84.525, 185.0675, 126.5595, 18.548, 1600.6188, 18.0115],
    );
    expectFigures(
      muffins.per100gCooked,
      [365.8726, 15.0507, 32.9536, 22.5355, 3.3027, 285.0105, 3.2072],
    );
    expectFigures(
      muffins.perServing,
      [205.4741, 8.4525, 18.5068, 12.656, 1.8548, 160.0619, 1.8011],
    );
    expect(muffins.perServing.polyolsG?.best).toBe(9);
  });

  it('B: counting every polyol, and with another almond record', () => {
    const cautious = dish(MUFFINS, 10, 'quick-bread', { policy: 'none' });
    expect(cautious.whole.netCarbsG?.best).toBeCloseTo(108.0115, 4);
    const blanched = MUFFINS.map(([id, g]): [string, number] => [
      id === 'almond-flour' ? 'almonds-blanched' : id,
      g,
    ]);
    expect(dish(blanched, 10, 'quick-bread').perServing.netCarbsG?.best).toBeCloseTo(2.1585, 4);
  });

  it('C: spaghetti with tomato sauce, salted water drained', () => {
    // Dry matter of SR 169736 over that of SR 169737.
    const cooked = (400 * (100 - 9.9)) / (100 - 62.13);
    // 130 mg sodium stay per 100 g boiled pasta (SR 169751 against 169737).
    const saltEaten = (1.3 * cooked) / (30 * 387.58);
    const pasta = dish(
      [
        ['pasta-dry', 400],
        ['salt', 30, saltEaten],
        ['olive-oil', 30],
        ['onion', 150, 0.9],
        ['garlic', 9],
        ['tomatoes-canned', 800],
        ['salt', 4],
      ],
      4,
      'pasta-dish',
      { cookedGrams: 1734.0768 },
    );
    expectFigures(pasta.whole, [1944.61, 60.5374, 38.22, 342.0244, 30.484, 3739.0298, 311.5404]);
    expectFigures(
      pasta.per100gCooked,
      [112.1409, 3.491, 2.2041, 19.7237, 1.7579, 215.6208, 17.9658],
    );
    expectFigures(pasta.perServing, [486.1525, 15.1343, 9.555, 85.5061, 7.621, 934.7575, 77.8851]);
  });

  it('C: dry pasta takes up water that no line states, the sauce loses a fifth', () => {
    const pasta = dish(
      [
        ['pasta-dry', 400],
        ['olive-oil', 30],
        ['onion', 135],
        ['garlic', 9],
        ['tomatoes-canned', 800],
        ['salt', 4],
      ],
      4,
      'pasta-dish',
    );
    expect(pasta.cookedGrams?.best).toBeCloseTo(1734.0768, 3);
  });

  it('D: breaded fried chicken, with what stays on it', () => {
    const oil = 624 / 0.92 - 624;
    const chicken = dish(
      [
        ['chicken-breast', 600],
        ['all-purpose-flour', 40, 0.6],
        ['egg', 100, 0.6],
        ['breadcrumbs-dry', 120, 0.75],
        ['salt', 6],
        ['olive-oil', 460, oil / 460],
      ],
      4,
      'breaded-food',
    );
    expect(chicken.cookedGrams?.best).toBeCloseTo(678.2609, 4);
    expectFigures(
      chicken.whole,
      [1728.3261, 157.0302, 80.6921, 83.5284, 4.698, 3341.0452, 78.8304],
    );
    expectFigures(
      chicken.per100gCooked,
      [254.8173, 23.1519, 11.8969, 12.3151, 0.6927, 492.59, 11.6224],
    );
    expectFigures(
      chicken.perServing,
      [432.0815, 39.2575, 20.173, 20.8821, 1.1745, 835.2613, 19.7076],
    );
  });
});

describe('US label figures, 21 CFR 101.9(c)', () => {
  it.each([
    [3, 'energy', 0],
    [47, 'energy', 45],
    [52, 'energy', 50],
    [236, 'energy', 240],
    [0.49, 'fat', 0],
    [4.8, 'fat', 5],
    [141, 'sodium', 140],
    [146, 'sodium', 150],
    [0.4, 'macro', 0],
    [2.5, 'macro', 3],
  ] as const)('%f as %s is printed %f', (value, kind, printed) => {
    expect(roundForUsLabel(value, kind)).toBe(printed);
  });

  it.each([
    ['0', 'energy', 0, 5],
    ['45', 'energy', 42.5, 47.5],
    ['50', 'energy', 47.5, 55],
    ['160', 'energy', 155, 165],
    ['0', 'fat', 0, 0.5],
    ['2.5', 'fat', 2.25, 2.75],
    ['5', 'fat', 4.75, 5.5],
    ['9', 'fat', 8.5, 9.5],
    ['0', 'sodium', 0, 5],
    ['140', 'sodium', 137.5, 145],
    ['480', 'sodium', 475, 485],
    ['0', 'macro', 0, 0.5],
    ['less than 1 g', 'macro', 0.5, 1],
    ['1', 'macro', 0.5, 1.5],
    ['12', 'macro', 11.5, 12.5],
  ] as const)('%s as %s means %f to %f', (printed, kind, low, high) => {
    expect(usLabelInterval(printed, kind)).toMatchObject({ low, high });
  });

  it('a 30 g serving with 6 g carbohydrate and 3 g fibre, 200 g used', () => {
    const carbohydrate = usLabelInterval(6, 'macro');
    const fiber = usLabelInterval(3, 'macro');
    if (carbohydrate === null || fiber === null) throw new Error('no figure read');
    const used = netCarbs({
      carbohydrate: labelForGrams(carbohydrate, 30, 200).amount,
      fiber: labelForGrams(fiber, 30, 200).amount,
      basis: 'total',
      polyolsInCarbohydrate: true,
      policy: 'half',
    }).net;
    expect(used?.best).toBeCloseTo(20, 10);
    expect(used?.low).toBeCloseTo(13.333, 3);
    expect(used?.high).toBeCloseTo(26.667, 3);
  });
});
