/** What the user asks for, and the plan that answers it. */
import * as z from 'zod';
import { Interval, Note } from './common.ts';
import { Allergen } from './food.ts';
import { NetCarbRule } from './tally.ts';

export const FAMILIES = [
  'lean-yeast-bread',
  'enriched-yeast-bread',
  'flatbread',
  'tortilla',
  'quick-bread',
  'pancake',
  'biscuit',
  'cookie',
  'cake',
  'brownie',
  'pie-crust',
  'choux',
  'cracker',
  'fresh-pasta',
  'pasta-dish',
  'rice-dish',
  'potato-dish',
  'breaded-food',
  'thickened-sauce',
  'sweet-sauce',
  'frozen-dessert',
  'other',
] as const;
export const Family = z.enum(FAMILIES);
export type Family = z.infer<typeof Family>;

export const ROLES = [
  'structure',
  'starch-bulk',
  'sweetness',
  'liquid',
  'fat',
  'egg',
  'leavening',
  'yeast',
  'yeast-food',
  'thickener',
  'binder',
  'coating',
  'wrapper',
  'salt',
  'acid',
  'protein',
  'vegetable',
  'fruit',
  'flavour',
  'other',
] as const;
export const Role = z.enum(ROLES);
export type Role = z.infer<typeof Role>;

/** What the user asks for. */
export const Goals = z.object({
  /** Net carbohydrate budget of one serving, g. */
  budgetG: z.number().nonnegative(),
  /** Servings to reckon with; null takes the recipe's own or a proposal. */
  servings: z.number().positive().nullable(),
  rule: NetCarbRule,
  avoid: z.array(Allergen),
  /** Ingredient keys that must stay as they are. */
  pinned: z.array(z.string()),
  /** Swap ids that must not be used. */
  excludedSwaps: z.array(z.string()),
  /** Food ids that must not be added. */
  excludedFoods: z.array(z.string()),
  /** Wanted sweetness against the original, 0..1; 1 keeps it. */
  sweetness: z.number().min(0).max(1),
  /** The user's own word on the dish family, else null. */
  family: Family.nullable(),
});
export type Goals = z.infer<typeof Goals>;

export const DEFAULT_GOALS: Goals = {
  budgetG: 15,
  servings: null,
  rule: { region: 'us', polyols: 'half' },
  avoid: [],
  pinned: [],
  excludedSwaps: [],
  excludedFoods: [],
  sweetness: 1,
  family: null,
};

/** A mass of a food in the reworked recipe. `key` is the original ingredient's, or 'new.foodId' for an addition. */
export const PlannedItem = z.object({
  key: z.string(),
  foodId: z.string(),
  foodName: z.string(),
  grams: z.number().nonnegative(),
  eaten: Interval,
  role: Role,
});
export type PlannedItem = z.infer<typeof PlannedItem>;

/** One change: what goes, what comes, why this much, what it costs. `key` is null for an addition. */
export const Swap = z.object({
  id: z.string(),
  key: z.string().nullable(),
  from: z.object({ foodId: z.string(), food: z.string(), grams: z.number() }).nullable(),
  /** Grams of the original that stay. */
  keptGrams: z.number().nonnegative(),
  to: z.array(z.object({ foodId: z.string(), food: z.string(), grams: z.number() })),
  why: z.string(),
  /** What the swap does to taste or texture, and what else was considered. */
  effect: z.string(),
  considered: z.array(z.string()),
  allergens: z.array(Allergen),
  cautions: z.array(z.string()),
  source: z.string(),
});
export type Swap = z.infer<typeof Swap>;

export const ClosenessPart = z.enum(['structure', 'water', 'sweetness', 'fat', 'flavour']);
export type ClosenessPart = z.infer<typeof ClosenessPart>;

/** Figures a baker checks, before and after: percent of the flour base unless said. Null outside doughs. */
export const DoughFigures = z.object({
  flourBaseG: z.number(),
  hydrationPct: z.number(),
  saltPct: z.number(),
  yeastPct: z.number(),
  binderPct: z.number(),
  fatPct: z.number(),
  sugarPct: z.number(),
  glutenProteinPct: z.number(),
  digestibleStarchPct: z.number(),
});
export type DoughFigures = z.infer<typeof DoughFigures>;

export const Plan = z.object({
  family: z.object({ id: Family, confidence: z.number().min(0).max(1), why: z.string() }),
  roles: z.record(z.string(), z.array(Role)),
  budgetG: z.number(),
  met: z.boolean(),
  items: z.array(PlannedItem),
  swaps: z.array(Swap),
  /** Water left out at mixing, to be added by feel after the rest; g, else null. */
  reserveWaterG: z.number().nullable(),
  dough: z.object({ before: DoughFigures, after: DoughFigures }).nullable(),
  /** 1 is the original; falls as the dish moves away from it. */
  closeness: z.number().min(0).max(1),
  closenessParts: z.partialRecord(ClosenessPart, z.number()),
  frontier: z.array(z.object({ netCarbsG: z.number(), closeness: z.number() })),
  /** What holds the plan, in plain words, with what would loosen it. */
  limits: z.array(z.object({ code: z.string(), text: z.string() })),
  notes: z.array(Note),
});
export type Plan = z.infer<typeof Plan>;
