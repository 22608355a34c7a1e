/** The rewritten recipe and the whole result. */
import * as z from 'zod';
import { Note } from './common.ts';
import { Allergen } from './food.ts';
import { Corrections, Ingredient } from './ingredient.ts';
import { MethodNote } from './method-note.ts';
import { Adjustment, Goals, Plan, Way } from './plan.ts';
import { Recipe } from './recipe.ts';
import { Tally } from './tally.ts';
import { StillContains, Verdict } from './verdict.ts';

export const RewrittenLine = z.object({
  key: z.string(),
  before: z.string().nullable(),
  after: z.string().nullable(),
  change: z.enum(['kept', 'amount', 'replaced', 'added', 'removed']),
  group: z.string().nullable(),
  why: z.string().nullable(),
});
export type RewrittenLine = z.infer<typeof RewrittenLine>;

export const RewrittenStep = z.object({
  section: z.string().nullable(),
  before: z.string().nullable(),
  after: z.string(),
  change: z.enum(['kept', 'changed', 'inserted']),
  why: z.string().nullable(),
  /** BCP 47 tag of `after`, when it is another than the recipe's. */
  lang: z.string().optional(),
});
export type RewrittenStep = z.infer<typeof RewrittenStep>;

/** What one way comes to: its plan, and the figures of a serving. */
export const WayOutcome = z.object({
  plan: Plan,
  after: Tally,
  verdict: Verdict,
});
export type WayOutcome = z.infer<typeof WayOutcome>;

/** The dish one way, written out: its outcome, the new lines and the method. */
export const Rework = WayOutcome.extend({
  lines: z.array(RewrittenLine),
  steps: z.array(RewrittenStep),
  /** Where every food goes in; what the method cannot tell carries words for the cook. */
  methodNotes: z.array(MethodNote).default([]),
  allergensAdded: z.array(Allergen),
  allergensRemoved: z.array(Allergen),
  /** What the result still has of what the goals avoid. */
  stillContains: z.array(StillContains),
  cautions: z.array(Note),
});
export type Rework = z.infer<typeof Rework>;

/**
 * The whole result for one recipe: what was read, what was asked, what came of it. The fields of a
 * rework hold the chosen way (`plan.way`): the one asked for, else the recommended one.
 */
export const Adaptation = Rework.extend({
  recipe: Recipe,
  goals: Goals,
  corrections: Corrections,
  /** What bakes taught and the plan went by, beside the goals. */
  taught: z.array(Adjustment).default([]),
  ingredients: z.array(Ingredient),
  before: Tally,
  /** To ask before the figures are believed, with the key of the line that causes it; empty as a rule. */
  questions: z.array(Note),
  /** The way we would take. */
  recommended: Way,
  /** Every way there is, `within` first; one that would be the same as another, or no sensible piece, is left out. Empty in a stored result. Only the chosen one is written out. */
  ways: z.array(WayOutcome),
  notes: z.array(Note),
});
export type Adaptation = z.infer<typeof Adaptation>;
