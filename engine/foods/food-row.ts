/** The shape of one row in `data/*.json`. Only the tests run it: the files are trusted in the browser. */
import * as z from 'zod';
import { Allergen, CarbohydrateBasis, Food } from '../model.ts';

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
