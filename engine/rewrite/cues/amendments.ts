/** Phrases of the method that the new ingredients contradict, put right where they stand. */
import type { Cue } from './cue.ts';
import type { CueContext } from './cue-context.ts';
import { fill, reasonOf } from './cue-text.ts';
import { fittingCues } from './fitting-cues.ts';

interface Correction {
  step: RegExp;
  phrase: RegExp;
  to: string;
}

/** Whether meat, fish or eggs are in the dish, which need their time. */
const hasMeat = ({ plan, foods }: CueContext): boolean =>
  plan.items.some(({ foodId, grams }) => {
    const group = foods.byId(foodId)?.group ?? '';
    return grams > 0 && /^(meat|fish|eggs)/.test(group);
  });

/** What a cue corrects in the method's language, most special phrase first. */
function correctionsOf(cue: Cue, context: CueContext): Correction[] {
  const { amends, id } = cue;
  const { words } = context;
  if (amends === undefined || (amends.notWithMeat === true && hasMeat(context))) return [];
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
      why: reasonOf(cue, context),
    })),
  );
}
