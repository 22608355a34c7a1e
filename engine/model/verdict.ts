/** Whether one serving of the reworked dish keeps to the budget, and what the answer leaves out. */
import * as z from 'zod';
import { Interval } from './common.ts';
import { Allergen } from './food.ts';

/** A line outside the totals that may hold more than a gram of net carbs a serving. */
export const MissingLine = z.object({
  /** Key of its ingredient, 'method.0' where only the method has it; null when no line could be counted at all. */
  key: z.string().nullable(),
  text: z.string(),
  why: z.string(),
  /** What it seems to be ('bread', 'jam'); null when nothing is known of it. */
  kind: z.string().nullable(),
  /** Rough net carbs it may add to one serving, g; null when nothing is known of its kind. */
  netCarbsG: Interval.nullable(),
  /** Eaten beside the dish and by choice ('to serve'): nothing of it has to be added. */
  beside: z.boolean().optional(),
});
export type MissingLine = z.infer<typeof MissingLine>;

/** Servings reckoned with where the page gives none and the user has set none. */
const assumedServings = z.number().positive().optional();

const counted = { netCarbsG: Interval, budgetG: z.number().nonnegative(), assumedServings };

const VerdictState = z.enum(['fits', 'probablyFits', 'fitsAsCounted', 'tooMuch']);
export type VerdictState = z.infer<typeof VerdictState>;

/**
 * What is said of a verdict: 'cannotBeTold' where what is missing may take a serving past the budget, 'fitsAlone'
 * where the least of what is eaten beside it, by choice, surely does.
 */
export const VerdictWord = z.enum([...VerdictState.options, 'fitsAlone', 'cannotBeTold']);
export type VerdictWord = z.infer<typeof VerdictWord>;

/**
 * The one answer that every screen, export and the command line tell. `netCarbsG` is one serving as
 * counted, g.
 *
 * - `fits`: everything that matters is counted and the whole range lies within the budget.
 * - `probablyFits`: everything that matters is counted, the best estimate fits, the range reaches above.
 * - `fitsAsCounted`: what was counted fits by its best estimate, but `missing` is not in it.
 * - `tooMuch`: the best estimate of what was counted, with the least that `missing` adds, is above the budget.
 */
export const Verdict = z.discriminatedUnion('state', [
  z.object({ state: z.literal('fits'), ...counted }),
  z.object({ state: z.literal('probablyFits'), ...counted }),
  z.object({
    state: z.literal('fitsAsCounted'),
    /** Null when nothing could be counted. */
    netCarbsG: Interval.nullable(),
    budgetG: z.number().nonnegative(),
    assumedServings,
    missing: z.array(MissingLine).min(1),
  }),
  z.object({ state: z.literal('tooMuch'), ...counted, missing: z.array(MissingLine) }),
]);
export type Verdict = z.infer<typeof Verdict>;

/** An allergen the user avoids that the reworked dish still contains, or may contain. */
export const StillContains = z.object({
  allergen: Allergen,
  /** Lines whose food has it: keys as in the plan's items ('3', '3.1', 'new.food-id'). */
  keys: z.array(z.string()),
  /** Lines without a known food whose own words name it. */
  likelyKeys: z.array(z.string()),
});
export type StillContains = z.infer<typeof StillContains>;
