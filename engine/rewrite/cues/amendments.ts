/** Phrases of the method that the new ingredients contradict, put right where they stand. */
import type { Plan } from '../../model.ts';
import type { Cue } from './cue.ts';
import type { CueContext } from './cue-context.ts';
import { fill } from './cue-text.ts';
import { fittingCues } from './fitting-cues.ts';

interface Correction {
  step: RegExp;
  phrase: RegExp;
  to: string;
}

/** Whether a food is in the dish for whose sake a phrase stays, such as meat that needs its time. */
const isHeld = (pattern: string | undefined, plan: Plan): boolean =>
  pattern !== undefined &&
  plan.items.some(({ foodId, grams }) => grams > 0 && new RegExp(pattern).test(foodId));

/** What a cue corrects in the method's language, most special phrase first. */
function correctionsOf(cue: Cue, { words, plan }: CueContext): Correction[] {
  const { amends, id } = cue;
  if (amends === undefined || isHeld(amends.notPresent, plan)) return [];
  const local = words?.amends[id] ?? [];
  const rows = words === null ? [[amends.step, amends.phrase, amends.to] as const] : local;
  return rows.map(([step, phrase, to]) => ({
    step: new RegExp(step, 'i'),
    phrase: new RegExp(phrase, 'i'),
    to,
  }));
}

/** Phrases of steps that a cue corrects: of the last step that says otherwise, or of all of them. */
export function amendedSteps(
  cue: Cue,
  context: CueContext,
  texts: readonly string[],
): { at: number; correction: Correction }[] {
  const corrections = correctionsOf(cue, context);
  const hits = texts.flatMap((text, at) => {
    const correction = corrections.find((one) => one.step.test(text) && one.phrase.test(text));
    return correction === undefined ? [] : [{ at, correction }];
  });
  return cue.amends?.all === true ? hits : hits.slice(-1);
}

export interface Amendment {
  /** Index of the step in the original method. */
  at: number;
  phrase: RegExp;
  to: string;
  why: string;
}

/** Phrases of steps that the new ingredients contradict, such as a shorter cooling. */
export function amendments(context: CueContext, texts: readonly string[]): Amendment[] {
  return fittingCues(context).flatMap((cue) =>
    amendedSteps(cue, context, texts).map(({ at, correction }) => ({
      at,
      phrase: correction.phrase,
      to: fill(correction.to, context),
      why: cue.why,
    })),
  );
}
