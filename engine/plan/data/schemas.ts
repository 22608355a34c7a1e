/** The shape of every row of the planner's tables. Only the tests run it: the files are trusted in the browser. */
import * as z from 'zod';
import { FAMILIES, Family, Role } from '../../model.ts';

const Window = z.strictObject({ min: z.number(), max: z.number() });

/** Doses of a binder, percent of the flour base. */
const BinderDose = z.strictObject({
  /** With all of the original's gluten. */
  least: z.number(),
  /** With none of it. */
  most: z.number(),
  cap: z.number(),
});

/** Limits of a dish family; percentages are of the flour base. */
export const FamilyLimits = z.strictObject({
  kind: z.enum(['dough', 'dish']),
  /** Column of the foods' largest shares. */
  share: z.enum(['YB', 'FT', 'QB', 'CK', 'CO', 'PA']).optional(),
  yeast: z.boolean().default(false),
  /** Gluten-forming protein, g per 100 g flour base. */
  gluten: z.strictObject({ min: z.number(), hard: z.number(), max: z.number() }).optional(),
  /** Digestible starch floor; `strong` once gluten reaches `atGluten`, on a straight line between. */
  starch: z
    .strictObject({ min: z.number(), strong: z.number(), atGluten: z.number() })
    .default({ min: 0, strong: 0, atGluten: 99 }),
  yeastFood: z.number().default(0),
  inertFibre: z.number().default(100),
  binder: z.record(z.string(), BinderDose).default({}),
  /** Extra binder per share of flour replaced: the gel of the missing starch. */
  binderLift: z.number().default(0),
  /** Binder also in place of flour that gives way to one with gluten of its own. */
  binderAlways: z.boolean().default(false),
  hydration: Window.optional(),
  fat: z
    .strictObject({
      window: Window.optional(),
      addPct: z.number().optional(),
      maxPct: z.number().optional(),
    })
    .default({}),
  /** Bulk sweetener against the original's sugar, 0..1. */
  bulkFloor: z.number(),
  /** Egg solids, gluten-forming protein, whey and egg-white powder together. */
  eggStructure: z.number().default(0),
  saltPct: Window.optional(),
  /** Erythritol: percent of the flour base in doughs, of the whole mass in dishes. */
  erythritolPct: z.number(),
  /** Largest share of allulose in the bulk sweetener. */
  alluloseShare: z.number().default(1),
  /** Largest shares of single sweeteners in the bulk, 0..1, by what they consist of. */
  sweetShares: z
    .partialRecord(z.enum(['erythritol', 'inulin', 'maltitol']), z.number())
    .default({}),
  /** Share of erythritol in the bulk sweetener above which it costs closeness. */
  erythritolOfSweet: z.number().default(1),
  /** Largest shares of single flours in this family, where they are below the foods' own for its group; `unlessEgg` percent of egg lifts them. */
  flourCaps: z.record(z.string(), z.number()).default({}),
  unlessEgg: z.number().optional(),
  source: z.string(),
});
export type FamilyLimits = z.infer<typeof FamilyLimits>;

export const FamilyFile = z.record(z.enum(FAMILIES), FamilyLimits);

export const FoodClass = z.strictObject({
  class: z.string(),
  role: Role,
  /** Last words of names of the user's own foods that belong here. */
  named: z.array(z.string()).optional(),
  foods: z.array(z.string()),
});

/** Words looked for in a text, or '@' and the name of a list of them; see `word-lists.json`. */
const Words = z.array(z.string()).min(1);

export const WordLists = z.record(z.string(), Words);

export const SwapRow = z.strictObject({
  id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  /** Classes of foods it replaces. */
  replaces: z.array(z.string()).min(1),
  /** Ids of the foods in those classes it is for; all when left out. */
  only: z.array(z.string()).optional(),
  /** Families, or 'dough', 'dish', '*'. */
  in: z.array(z.union([Family, z.enum(['dough', 'dish', '*'])])).min(1),
  role: Role.optional(),
  /** Words of title, line or method, one of which it needs. */
  when: Words.optional(),
  /** Words of the title or the part's heading alone, one of which it needs. */
  titled: Words.optional(),
  /** Words of dishes it spoils. */
  unless: Words.optional(),
  /** Ids of foods it does not go with, where the dish has a spoon of one or more for each serving. */
  notBeside: z.array(z.string()).optional(),
  /** Grams of each component per gram replaced; none when there is simply less of it. */
  to: z.array(z.strictObject({ food: z.string(), ratio: z.number().positive() })),
  /** Largest share of the ingredient it may replace, 0..1. */
  cap: z.number().positive().max(1),
  capBy: z.partialRecord(Family, z.number().positive().max(1)).optional(),
  /** All of the ingredient or nothing: half a jam or crust is not worth making. */
  whole: z.literal(true).optional(),
  /** Closeness lost when the whole of a dish's main ingredient is swapped, 0..1. */
  cost: z.number().positive().max(1),
  /** Water shift of the dish, g per gram replaced; negative when the replacement gives off water. */
  water: z.number().optional(),
  /** What it does to taste and texture. */
  effect: z.string().min(5),
  /** What the cook does differently. */
  method: z.string().optional(),
  cautions: z.array(z.string()).optional(),
  /** Where ratio and limits are from; the file's `source` when left out. */
  source: z.string().optional(),
});
export type SwapRow = z.infer<typeof SwapRow>;

export const SwapFile = z.strictObject({ source: z.string(), swaps: z.array(SwapRow) });

/** Foods that stay as they are where safety, ferment or set hangs on them. */
export const KeepRow = z.strictObject({
  classes: z.array(z.string()),
  /** Words that say so, of the title and of the method. */
  title: Words.optional(),
  method: Words.optional(),
  why: z.string(),
  source: z.string(),
});

/** A family's row as it stands in the file, where defaults may be left out. */
export type FamilyRow = z.input<typeof FamilyLimits>;

/** Foods that meet soda's alkali. */
export const SodaAcid = z.strictObject({
  /** Grams of the food that neutralise a gram of soda. */
  gramsForOneOfSoda: z.number().positive(),
  source: z.string(),
  foods: z.array(z.string()).min(1),
});
