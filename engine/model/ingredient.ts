/** An ingredient: a line's item with its food and grams. */
import * as z from 'zod';
import { Interval } from './common.ts';
import { Item, Line } from './recipe.ts';

/** A food chosen for an item, with how sure we are (0..1), why, and what else it might be. */
export const Match = z.object({
  foodId: z.string(),
  foodName: z.string(),
  confidence: z.number().min(0).max(1),
  reason: z.string(),
  others: z.array(z.object({ foodId: z.string(), foodName: z.string(), confidence: z.number() })),
});
export type Match = z.infer<typeof Match>;

/** Grams of an item, and the share of them that is eaten (frying oil, marinade, dusting flour). */
export const Weight = z.object({
  grams: Interval,
  eaten: Interval,
  /** What the grams rest on. */
  basis: z.enum(['mass', 'volume', 'count', 'assumed', 'corrected']),
  /** Plain words for the screen: 'US cup of 125 g', 'assumed fine salt; coarse would be 14 g'. */
  assumptions: z.array(z.string()),
  /** Set when two stated amounts disagree beyond the food's scatter: both readings, in grams. */
  disagreement: z.object({ stated: z.number(), other: z.number(), text: z.string() }).nullable(),
});
export type Weight = z.infer<typeof Weight>;

/** One food of a recipe after reading, matching and weighing. */
export const Ingredient = z.object({
  /** 'line' or 'line.item', counted over all groups: '0', '3', '3.1'. Stable for one recipe. */
  key: z.string(),
  line: Line,
  item: Item,
  match: Match.nullable(),
  weight: Weight.nullable(),
});
export type Ingredient = z.infer<typeof Ingredient>;

/** What the user put right, by ingredient key. */
export const Corrections = z.record(
  z.string(),
  z.object({
    foodId: z.string().optional(),
    grams: z.number().nonnegative().max(1_000_000).optional(),
  }),
);
export type Corrections = z.infer<typeof Corrections>;
