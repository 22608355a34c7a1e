/** Totals of a recipe. */
import * as z from 'zod';
import { Interval, Note } from './common.ts';
import { NUTRIENTS } from './nutrients.ts';

export const Nutrient = z.enum(NUTRIENTS);
export type Nutrient = z.infer<typeof Nutrient>;

/** Totals; null when no counted ingredient knows the figure. */
export const Nutrients = z.record(Nutrient, Interval.nullable());
export type Nutrients = z.infer<typeof Nutrients>;

/** How net carbohydrate is counted. `eu` states carbohydrate without fibre; polyol policies as in common teaching. */
export const NetCarbRule = z.object({
  region: z.enum(['us', 'eu']),
  polyols: z.enum(['half', 'half_over_5g', 'energy', 'none', 'all']),
});
export type NetCarbRule = z.infer<typeof NetCarbRule>;

export const Tally = z.object({
  rule: NetCarbRule,
  servings: z.number().positive(),
  whole: Nutrients,
  perServing: Nutrients,
  /** Per 100 g of the finished dish; needs a cooked weight, so null when that is unknown. */
  per100gCooked: Nutrients.nullable(),
  rawGrams: Interval,
  cookedGrams: Interval.nullable(),
  /** Where the cooked weight comes from. */
  cookedSource: z.string(),
  /** Each counted ingredient's net carbs in one serving and its share of the total, largest first. */
  contributions: z.array(
    z.object({ key: z.string(), netCarbsG: Interval.nullable(), share: z.number() }),
  ),
  /** Lines that are not in the totals, and why. */
  uncounted: z.array(z.object({ key: z.string(), text: z.string(), why: z.string() })),
  /** Nutrients whose total is only a lower bound, because these ingredients lack the figure. */
  incomplete: z.partialRecord(Nutrient, z.array(z.string())),
  notes: z.array(Note),
});
export type Tally = z.infer<typeof Tally>;
