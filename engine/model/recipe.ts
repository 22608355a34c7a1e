/** What a page says: a recipe, and its ingredient lines understood. */
import * as z from 'zod';
import { Note } from './common.ts';

export const Markup = z.enum(['json-ld', 'microdata', 'rdfa', 'h-recipe', 'page-text', 'pasted']);
export type Markup = z.infer<typeof Markup>;

export const IngredientGroup = z.object({
  title: z.string().nullable(),
  lines: z.array(z.string()),
});
export type IngredientGroup = z.infer<typeof IngredientGroup>;

export const Step = z.object({ section: z.string().nullable(), text: z.string() });
export type Step = z.infer<typeof Step>;

/** One count that the page gives for what the recipe makes. */
export const StatedYield = z.object({
  /** The page's own words. */
  text: z.string(),
  low: z.number().positive(),
  /** Upper end of a range, else the same as `low`. */
  high: z.number().positive(),
  /** What is counted ('cookies'); null for servings or people. */
  noun: z.string().nullable(),
  /** In the markup, on the visible page, or in the nutrition panel. */
  from: z.enum(['markup', 'page', 'nutrition']),
});
export type StatedYield = z.infer<typeof StatedYield>;

/** What a yield statement says. At most one of the counts is servings; the other counts pieces. */
export const Yield = z.object({
  /** The page's own words, or null when it states no yield. */
  text: z.string().nullable(),
  servings: z.object({ low: z.number().positive(), high: z.number().positive() }).nullable(),
  pieces: z.object({ count: z.number().positive(), noun: z.string() }).nullable(),
  /** Everything the page says, the most trusted first; absent in recipes kept before it was read. */
  stated: z.array(StatedYield).optional(),
});
export type Yield = z.infer<typeof Yield>;

export const Recipe = z.object({
  title: z.string(),
  url: z.string().nullable(),
  /** BCP 47 tag, from the page, or guessed from the words when the page gives none. */
  language: z.string().nullable(),
  author: z.string().nullable(),
  markup: Markup,
  yield: Yield,
  groups: z.array(IngredientGroup),
  steps: z.array(Step),
  minutes: z.object({
    prep: z.number().nullable(),
    cook: z.number().nullable(),
    total: z.number().nullable(),
  }),
  /** Address of a picture; kept for credit, never fetched. */
  image: z.string().nullable(),
  /** The publisher's own figures, word for word, kept apart from ours. */
  statedNutrition: z.record(z.string(), z.string()).nullable(),
  notes: z.array(Note),
});
export type Recipe = z.infer<typeof Recipe>;

/** Result of reading a page: the reader never throws. `why` tells the user what to do. */
export type ReadResult = { ok: true; recipes: Recipe[] } | { ok: false; why: string };

/**
 * One stated amount. `kind` tells how it relates to the one before it:
 * `stated` the leading amount; `same` the same quantity in another measure ('1 cup (120 g)');
 * `plus` to be added ('1 cup plus 2 tbsp'); `each` the size of one unit of the count before it
 * ('2 (14 oz) cans').
 */
export const Amount = z.object({
  quantity: z.number().nonnegative(),
  /** Upper end of a stated range, else null. */
  max: z.number().nullable(),
  /** Canonical short form (g kg ml l oz lb 'fl oz' cup tbsp tsp pint quart gallon), else a singular word, else null. */
  unit: z.string().nullable(),
  kind: z.enum(['stated', 'same', 'plus', 'each']),
  /** 'about 200 g', 'scant cup': the figure is said to be rough. */
  approximate: z.boolean(),
});
export type Amount = z.infer<typeof Amount>;

/** One food on a line, with its amounts. */
export const Item = z.object({
  amounts: z.array(Amount),
  /** 'small', 'large' ..., when the line sizes a count. */
  size: z.string().nullable(),
  name: z.string(),
  preparation: z.string().nullable(),
  /** 'butter or oil': what may stand in, with its own amounts when stated. */
  alternatives: z.array(z.object({ amounts: z.array(Amount), name: z.string() })),
});
export type Item = z.infer<typeof Item>;

/** An ingredient line, understood. `items` has one entry unless the line names several foods. */
export const Line = z.object({
  text: z.string(),
  group: z.string().nullable(),
  /** `reference`: made by another recipe; `made-here`: by another part of this one;
   * `other-version`: of a way of it that is not the one counted; `tool`: no food. */
  kind: z.enum(['ingredient', 'heading', 'reference', 'made-here', 'other-version', 'tool']),
  items: z.array(Item),
  /** The whole name as written, also when it covers several items ('salt and pepper'). */
  name: z.string(),
  note: z.string().nullable(),
  /** 'for frying', 'for dusting', 'to serve', 'to taste' ... in the line's words. */
  purpose: z.string().nullable(),
  optional: z.boolean(),
});
export type Line = z.infer<typeof Line>;
