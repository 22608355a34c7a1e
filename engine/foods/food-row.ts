/** The shape of one row in `data/*.json`, and how it becomes a {@link Food}. */
import * as z from 'zod';
import {
  Allergen,
  CarbohydrateBasis,
  Food,
  type FoodFunction,
  type Measure,
  type Source,
} from '../model.ts';

const figure = z.number().nonnegative().nullable().optional();
const grams = z.record(z.string(), z.number().positive());

/**
 * One food a row, figures per 100 g of the edible part. A key left out means 'not measured',
 * but for polyols, allulose and alcohol: those are named wherever a food has them, so left out is none.
 * `src` is 'SR 168896', 'FF 790146' or one of 'published', 'calculated', 'memory', 'practice'
 * followed by words: 'memory typical label'.
 */
export const FoodRow = z.strictObject({
  id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  name: z.string(),
  aliases: z.array(z.string()).default([]),
  src: z.string(),
  state: z.enum(['raw', 'cooked', 'dry', 'canned', 'frozen', 'as-is']).default('as-is'),
  water: figure,
  kcal: figure,
  protein: figure,
  fat: figure,
  sat: figure,
  carb: figure,
  fiber: figure,
  sugars: figure,
  starch: figure,
  polyols: z.record(z.string(), z.number().nonnegative()).optional(),
  allulose: figure,
  alcohol: figure,
  sodium: figure,
  potassium: figure,
  spread: Food.shape.spread.optional(),
  basis: CarbohydrateBasis.default('total'),
  polyolsOutside: z.literal(true).optional(),
  method: z.string().optional(),
  /** Share of the food as bought that is thrown away, 0..1. */
  refuse: z.number().min(0).max(1).optional(),
  /** Grams of household measures from the same source's portion table. */
  measures: grams.default({}),
  /** Measures of the same food in another record's portion table, by that record: `{ 'SR 169741': { cup: 104 } }`. */
  measuresFrom: z.record(z.string(), grams).default({}),
  /** Grams of household measures that are common practice, without a published source. */
  practice: grams.default({}),
  allergens: z.array(Allergen).default([]),
});
export type FoodRow = z.infer<typeof FoodRow>;

export const FoodFile = z.strictObject({ group: z.string(), foods: z.array(FoodRow) });

/** A row as it stands in a file, where defaults may be left out. */
export type WrittenRow = z.input<typeof FoodRow>;

const PRACTICE: Source = { kind: 'practice', id: null, note: 'common practice, no source' };

/** @throws {Error} when `src` is of no known form. */
export function readSource(src: string): Source {
  const usda = /^(SR|FF) (\d+)(?: (.+))?$/.exec(src);
  if (usda) return { kind: usda[1] as 'SR' | 'FF', id: usda[2] ?? null, note: usda[3] ?? null };
  const other = /^(published|calculated|label|memory|practice|user)(?: (.+))?$/.exec(src);
  if (other) return { kind: other[1] as Source['kind'], id: null, note: other[2] ?? null };
  throw new Error(`unknown source form: ${src}`);
}

function addMeasures(
  measures: Measure[],
  units: Readonly<Record<string, number>>,
  source: Source,
): void {
  for (const unit in units) measures.push({ unit, grams: units[unit] ?? 0, source });
}

function measuresOf(row: WrittenRow, source: Source): Measure[] {
  const measures: Measure[] = [];
  if (row.measures) addMeasures(measures, row.measures, source);
  for (const from in row.measuresFrom) {
    addMeasures(measures, row.measuresFrom[from] ?? {}, readSource(from));
  }
  if (row.practice) addMeasures(measures, row.practice, PRACTICE);
  return measures;
}

/**
 * A row and, where it has one, its function, as a food. Trusts the row: the project's own files are
 * checked by the tests, anything else goes through {@link FoodRow} first.
 */
export function foodFromRow(row: WrittenRow, group: string, fn: FoodFunction | null): Food {
  const source = readSource(row.src);
  return {
    id: row.id,
    name: row.name,
    aliases: row.aliases ?? [],
    group,
    state: row.state ?? 'as-is',
    source,
    per100g: {
      waterG: row.water ?? null,
      energyKcal: row.kcal ?? null,
      proteinG: row.protein ?? null,
      fatG: row.fat ?? null,
      saturatedG: row.sat ?? null,
      carbohydrateG: row.carb ?? null,
      fiberG: row.fiber ?? null,
      sugarsG: row.sugars ?? null,
      starchG: row.starch ?? null,
      polyolsG: row.polyols ?? {},
      alluloseG: row.allulose ?? 0,
      alcoholG: row.alcohol ?? 0,
      sodiumMg: row.sodium ?? null,
      potassiumMg: row.potassium ?? null,
    },
    spread: row.spread ?? {},
    carbohydrateBasis: row.basis ?? 'total',
    polyolsInCarbohydrate: !row.polyolsOutside,
    fiberMethod: row.method ?? null,
    refuseShare: row.refuse ?? null,
    measures: measuresOf(row, source),
    allergens: row.allergens ?? [],
    function: fn,
  };
}
