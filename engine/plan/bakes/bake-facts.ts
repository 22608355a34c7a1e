/** What one bake measured, all for the recipe made once; what lessons are drawn from. */
import * as z from 'zod';
import { Family } from '../../model.ts';

/** What the plan that was baked had; figures that measurements are held against. */
export const BakedPlan = z.object({
  family: Family,
  /** Grams of each flour, by food id. */
  flours: z.record(z.string(), z.number().nonnegative()),
  /** Water that lessons of earlier bakes had put into its list, g; negative when they took some out. */
  taughtWaterG: z.number(),
});
export type BakedPlan = z.infer<typeof BakedPlan>;

export const BakeFacts = z.object({
  id: z.string(),
  recipeId: z.string(),
  /** The dish, in the words of its page. */
  title: z.string(),
  day: z.string(),
  addedAt: z.number(),
  plan: BakedPlan.nullable(),
  /** What went in, and what the scale said after baking, g. */
  rawGrams: z.number().positive().nullable(),
  dishGrams: z.number().positive().nullable(),
  /** Water that went in beyond the list, g; negative when less did. */
  extraWaterG: z.number().nullable(),
  /** What the oven was set to and what a thermometer in it said, °C. */
  ovenSetC: z.number().nullable(),
  ovenReadC: z.number().nullable(),
});
export type BakeFacts = z.infer<typeof BakeFacts>;
