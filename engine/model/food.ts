/** A food: composition, household measures, and what it does in a dish. */
import * as z from 'zod';
import { Interval } from './common.ts';

/** Allergens named by US or EU law, plus coconut, which some people must avoid. */
export const Allergen = z.enum([
  'celery',
  'coconut',
  'crustaceans',
  'egg',
  'fish',
  'gluten',
  'lupin',
  'milk',
  'molluscs',
  'mustard',
  'peanut',
  'sesame',
  'soy',
  'sulphites',
  'tree nuts',
  'wheat',
]);
export type Allergen = z.infer<typeof Allergen>;

/** Where a figure comes from. `SR`/`FF`: USDA FoodData Central (SR Legacy id with release 28 values, Foundation Foods). */
export const Source = z.object({
  kind: z.enum(['SR', 'FF', 'published', 'calculated', 'label', 'memory', 'practice', 'user']),
  id: z.string().nullable(),
  note: z.string().nullable(),
});
export type Source = z.infer<typeof Source>;

export const CarbohydrateBasis = z.enum(['total', 'available', 'available_mse', 'unknown']);
export type CarbohydrateBasis = z.infer<typeof CarbohydrateBasis>;

const Figure = z.number().nonnegative().nullable();

/** Composition of 100 g of the edible part, as the source gives it. */
export const Composition = z.object({
  waterG: Figure,
  energyKcal: Figure,
  proteinG: Figure,
  fatG: Figure,
  saturatedG: Figure,
  carbohydrateG: Figure,
  fiberG: Figure,
  sugarsG: Figure,
  starchG: Figure,
  /** Polyols by kind, e.g. `{ erythritol: 100 }`; empty when the food has none. */
  polyolsG: z.record(z.string(), z.number().nonnegative()).nullable(),
  alluloseG: Figure,
  alcoholG: Figure,
  sodiumMg: Figure,
  potassiumMg: Figure,
});
export type Composition = z.infer<typeof Composition>;

/** Grams of one household measure of a food ('cup', 'cup packed', 'clove', 'large', 'can drained'). */
export const Measure = z.object({ unit: z.string(), grams: z.number().positive(), source: Source });
export type Measure = z.infer<typeof Measure>;

/** How a food acts in a dough, batter, sauce or sweetening; shares are grams per gram of the food. */
export const FoodFunction = z.object({
  /** Water (g) held by 1 g at workable consistency. */
  absorption: Interval.nullable(),
  /** Gluten-forming protein, g per 100 g. */
  glutenProtein: z.number(),
  /** Digestible starch, g per 100 g. */
  digestibleStarch: z.number().nullable(),
  /** Isolated insoluble fibre counted per gram: 1 for oat or wheat fibre and bran, 0.3 for RS4, else 0. */
  insolubleFibre: z.number(),
  /** Sweetness against sucrose by mass; 0 when not sweet. */
  sweetness: z.number(),
  /** Bulk against sucrose by mass, 0..1. */
  bulk: z.number(),
  browning: z.enum(['none', 'mild', 'strong']),
  /** Freezing-point depression per gram against sucrose. */
  freezing: z.number().nullable(),
  /** Largest amount per serving before stomach upset is likely, g (adult). */
  doseCapG: z.number().nullable(),
  /** Largest share of the flour base, percent, by family group (YB FT QB CK CO PA). */
  maxShare: z.partialRecord(z.enum(['YB', 'FT', 'QB', 'CK', 'CO', 'PA']), z.number()),
  /** Flavour and colour cost, 0 none to 3 dominant. */
  flavour: z.number(),
  colour: z.number(),
  source: z.string(),
});
export type FoodFunction = z.infer<typeof FoodFunction>;

export const Food = z.object({
  /** Stable kebab-case id of our own. */
  id: z.string(),
  name: z.string(),
  aliases: z.array(z.string()),
  group: z.string(),
  state: z.enum(['raw', 'cooked', 'dry', 'canned', 'frozen', 'as-is']),
  source: Source,
  per100g: Composition,
  /** Published or label scatter of a figure, [low, high] per 100 g, where it is known to matter. */
  spread: z.partialRecord(
    z.enum(['carbohydrateG', 'fiberG', 'proteinG', 'energyKcal', 'netCarbsG']),
    z.tuple([z.number(), z.number()]),
  ),
  carbohydrateBasis: CarbohydrateBasis,
  /** True where the stated carbohydrate includes polyols (US, CA, EU, UK); false for AU, NZ, ZA. */
  polyolsInCarbohydrate: z.boolean(),
  fiberMethod: z.string().nullable(),
  /** Share of the food as bought that is thrown away, 0..1. */
  refuseShare: z.number().nullable(),
  measures: z.array(Measure),
  allergens: z.array(Allergen),
  function: FoodFunction.nullable(),
});
export type Food = z.infer<typeof Food>;
