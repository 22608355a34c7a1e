/** What the user asks for, and the plan that answers it. */
import * as z from 'zod';
import { Interval, Note } from './common.ts';
import { FAMILIES } from './families.ts';
import { Allergen } from './food.ts';
import { NetCarbRule } from './tally.ts';

export const Family = z.enum(FAMILIES);
export type Family = z.infer<typeof Family>;

const ROLES = [
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

/** What an accepted change after a bake acts on; `method` changes words only. */
export const Lever = z.enum([
  'water',
  'binder',
  'gluten',
  'egg',
  'egg-white',
  'fat',
  'salt',
  'yeast',
  'yeast-food',
  'leavening',
  'acid',
  'sugar',
  'insoluble-fibre',
  'resistant-starch',
  'erythritol-share',
  'intense-share',
  'allulose',
  'thickener',
  'method',
]);
export type Lever = z.infer<typeof Lever>;

/** One change after a bake, accepted by the user; goals carry it so that the plan is solved with it. */
export const Adjustment = z.object({
  /** Row of the failure table and its place in it, e.g. 'gummy.1'. */
  id: z.string(),
  symptom: z.string(),
  lever: Lever,
  /** Multiplies what the plan would take of the lever; null leaves it. */
  factor: z.number().positive().nullable(),
  /** Added to what the plan would take: percent of the flour base, or of the dish's mass without one; null adds nothing. */
  shiftPct: z.number().nullable(),
  /** With it the percent are of this food's grams, and nothing is done where there is none. */
  foodId: z.string().optional(),
  /** The change in plain words, for the screen and, with lever 'method', for the step. */
  text: z.string(),
  why: z.string(),
  source: z.string(),
});
export type Adjustment = z.infer<typeof Adjustment>;

/**
 * Ways to bring a serving within the budget: `within` changes the dish as far as the budget asks,
 * `lighter` makes two changes at most and a smaller piece, `smaller` cuts the original smaller.
 */
export const WAYS = ['within', 'lighter', 'smaller'] as const;
export const Way = z.enum(WAYS);
export type Way = z.infer<typeof Way>;

/** What a page may promise of its dish. */
export const PromiseName = z.enum([
  'vegan',
  'vegetarian',
  'gluten-free',
  'dairy-free',
  'egg-free',
  'nut-free',
  'soy-free',
  'grain-free',
  'paleo',
  'AIP',
  'low-FODMAP',
  'halal',
  'kosher',
]);
export type PromiseName = z.infer<typeof PromiseName>;

/** A promise of the page: nothing that breaks it is proposed, unless the user lifts it. */
export const KeptPromise = z.object({
  promise: PromiseName,
  /** The title or line that makes it. */
  said: z.string(),
  lifted: z.boolean(),
});
export type KeptPromise = z.infer<typeof KeptPromise>;

/** Grams of a food on a line of the reworked recipe, as the user set them: of its own food, or of one that came in. */
export const SetAmount = z.object({
  /** The ingredient's key, as in the plan's items. */
  key: z.string(),
  foodId: z.string(),
  grams: z.number().nonnegative(),
});
export type SetAmount = z.infer<typeof SetAmount>;

/** What the user asks for. Figures marked 'a serving' are as eaten. */
export const Goals = z.object({
  /** Net carbohydrate budget of one serving, g. */
  budgetG: z.number().nonnegative().max(10_000),
  /** Servings to reckon with; null takes the recipe's own or a proposal. */
  servings: z.number().positive().max(10_000).nullable(),
  rule: NetCarbRule,
  avoid: z.array(Allergen),
  /** Promises of the page that the user does not need kept. */
  liftedPromises: z.array(PromiseName).default([]),
  /** Ingredient keys that must stay as they are. */
  pinned: z.array(z.string()),
  /** Ingredient keys that the user leaves out of the reworked recipe, whatever it does to the dish. */
  leftOut: z.array(z.string()).default([]),
  /** Amounts of the reworked recipe that the user has set. */
  setAmounts: z.array(SetAmount).default([]),
  /** Swap ids that must not be used. */
  excludedSwaps: z.array(z.string()),
  /** Food ids that must not be added. */
  excludedFoods: z.array(z.string()),
  /** Wanted sweetness against the original, 0..1; 1 keeps it. */
  sweetness: z.number().min(0).max(1),
  /** The user's own word on the dish family, else null. */
  family: Family.nullable(),
  /** Judges the budget by the upper end of the estimate instead of the best one. */
  cautious: z.boolean().default(false),
  /** Least share of the original flour that stays, 0..1. */
  flourKept: z.number().min(0).max(1).default(0),
  /** Least fibre of a serving, g; null asks for none. */
  fibreFloorG: z.number().nonnegative().nullable().default(null),
  /** Most sodium of a serving, mg; null sets no limit. */
  sodiumLimitMg: z.number().nonnegative().nullable().default(null),
  /** Most energy of a serving, kcal; null sets no limit. */
  energyLimitKcal: z.number().nonnegative().nullable().default(null),
  /** Food ids the user has at home; only these may be added. Null allows every food. */
  pantry: z.array(z.string()).nullable().default(null),
  /** Changes accepted after earlier bakes. */
  adjustments: z.array(Adjustment).default([]),
  /** The way the user wants; 'recommended' leaves the choice to us. */
  way: z.enum(['recommended', ...WAYS]).default('recommended'),
  /** Sweetener food ids the user likes, the best first; the others come after them. */
  sweeteners: z.array(z.string()).default([]),
});
export type Goals = z.infer<typeof Goals>;

export const DEFAULT_GOALS: Goals = {
  budgetG: 15,
  servings: null,
  rule: { region: 'us', polyols: 'half' },
  avoid: [],
  liftedPromises: [],
  pinned: [],
  leftOut: [],
  setAmounts: [],
  excludedSwaps: [],
  excludedFoods: [],
  sweetness: 1,
  family: null,
  cautious: false,
  flourKept: 0,
  fibreFloorG: null,
  sodiumLimitMg: null,
  energyLimitKcal: null,
  pantry: null,
  adjustments: [],
  way: 'recommended',
  sweeteners: [],
};

/**
 * A mass of a food in the reworked recipe. `key` is the original ingredient's, or 'new.foodId' for an
 * addition ('new.foodId.1' in the second part of the dish).
 */
export const PlannedItem = z.object({
  key: z.string(),
  foodId: z.string(),
  foodName: z.string(),
  grams: z.number().nonnegative(),
  eaten: Interval,
  role: Role,
  /** Of an addition: the place of its part among the plan's; left out when the dish is one. */
  part: z.number().int().nonnegative().optional(),
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
  /** What the swap does to taste or texture. */
  effect: z.string(),
  /** What the cook does differently, in English, for the method; left out when nothing. */
  method: z.string().optional(),
  /** What else was considered. */
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

/** A point of the curve of closeness against net carbs of a serving, g. */
export const FrontierPoint = z.object({ netCarbsG: z.number(), closeness: z.number() });
export type FrontierPoint = z.infer<typeof FrontierPoint>;

/** Where a food is had: every kitchen or the user's own cupboard, most shops, or a special shop. */
export const Availability = z.enum(['cupboard', 'common', 'speciality']);
export type Availability = z.infer<typeof Availability>;

/** A food the dish did not have before. */
export const Purchase = z.object({
  foodId: z.string(),
  food: z.string(),
  grams: z.number().positive(),
  availability: Availability,
});
export type Purchase = z.infer<typeof Purchase>;

export const Plan = z.object({
  way: Way,
  /** Servings of the dish this way: the page's, or more when the piece is smaller. */
  servings: z.number().positive(),
  family: z.object({ id: Family, confidence: z.number().min(0).max(1), why: z.string() }),
  /** Parts of a dish made of several (crust and filling, cake and frosting); one entry when it is one. */
  parts: z
    .array(
      z.object({
        title: z.string().nullable(),
        family: Family,
        why: z.string(),
        keys: z.array(z.string()),
      }),
    )
    .default([]),
  roles: z.record(z.string(), z.array(Role)),
  budgetG: z.number(),
  met: z.boolean(),
  items: z.array(PlannedItem),
  swaps: z.array(Swap),
  /** Foods that come in, those of a special shop first. */
  shopping: z.array(Purchase),
  /** What a serving asks of the stomach, g: allulose, sugar alcohols and polydextrose together, and fibre that came in. */
  stomach: z.object({ sweetenersG: z.number(), addedFibreG: z.number() }),
  /** Water left out at mixing, to be added by feel after the rest; g, else null. */
  reserveWaterG: z.number().nullable(),
  dough: z.object({ before: DoughFigures, after: DoughFigures }).nullable(),
  /** 1 is the original; falls as the dish moves away from it. */
  closeness: z.number().min(0).max(1),
  closenessParts: z.partialRecord(ClosenessPart, z.number()),
  /** What holds the plan, in plain words, with what would loosen it. */
  limits: z.array(z.object({ code: z.string(), text: z.string() })),
  /** What the page promises, kept unless lifted. */
  promises: z.array(KeptPromise).default([]),
  /** Why the page is not reworked and only its figures are shown, in a sentence; null when it may be. */
  notReworked: z.string().nullable().default(null),
  notes: z.array(Note),
});
export type Plan = z.infer<typeof Plan>;
