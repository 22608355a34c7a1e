/** The rewritten recipe and the whole result. */
import * as z from 'zod';
import { Note } from './common.ts';
import { Allergen } from './food.ts';
import { Corrections, Ingredient } from './ingredient.ts';
import { Goals, Plan } from './plan.ts';
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

/** The whole result for one recipe: what was read, what was asked, what came of it. */
export const Adaptation = z.object({
  recipe: Recipe,
  goals: Goals,
  corrections: Corrections,
  ingredients: z.array(Ingredient),
  before: Tally,
  plan: Plan,
  after: Tally,
  verdict: Verdict,
  /** To ask before the figures are believed, with the key of the line that causes it; empty as a rule. */
  questions: z.array(Note),
  lines: z.array(RewrittenLine),
  steps: z.array(RewrittenStep),
  allergensAdded: z.array(Allergen),
  allergensRemoved: z.array(Allergen),
  /** What the result still has of what the goals avoid. */
  stillContains: z.array(StillContains),
  cautions: z.array(Note),
  notes: z.array(Note),
});
export type Adaptation = z.infer<typeof Adaptation>;
