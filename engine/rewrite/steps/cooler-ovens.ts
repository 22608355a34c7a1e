/** Ovens set lower for what browns fast, and the time that it then takes. */
import type { RewrittenStep } from '../../model.ts';
import { coolerOven } from '../cues/fitting-cues.ts';
import { keyed, type MethodWords } from '../languages/method-words.ts';
import { bakeMinutes, longerBy, withLowerOven } from '../oven/oven-heat.ts';
import type { PartMethod } from '../parts/part-contexts.ts';
import type { StepParts } from '../parts/step-parts.ts';
import { sentencesOf, withSentence } from '../wording/sentences.ts';
import { withReason } from './step-reasons.ts';

const LONGER = 'In the cooler oven it takes {minutes} minutes longer.';
const BAKES = /\bbak(?:e|es|ed)\b/i;
/** Roasted vegetables and toasted nuts keep their heat. */
const OTHER_HEAT = /\b(?:roast|toast|broil|grill)(?:s|ed|ing)?\b|\bcook until\b/i;

/** The step with how much longer it bakes, behind the sentence that says how long; the same step when none does. */
function withLongerBake(step: RewrittenStep, words: MethodWords | null): RewrittenStep {
  const at = sentencesOf(step.after).findIndex((sentence) => {
    const said = words === null ? sentence : keyed(sentence, words);
    return BAKES.test(said) && bakeMinutes(said) !== null;
  });
  const said = sentencesOf(step.after)[at];
  if (said === undefined) return step;
  const minutes = bakeMinutes(words === null ? said : keyed(said, words)) ?? 0;
  const text = (words?.longerBake ?? LONGER).replace('{minutes}', longerBy(minutes));
  return { ...step, after: withSentence(step.after, at, text), change: 'changed' };
}

/** The steps with a lower oven where a part that browns fast is baked, and the longer time beside the first bake. */
export function withOvens(
  steps: readonly RewrittenStep[],
  parts: readonly StepParts[],
  methods: readonly PartMethod[],
  words: MethodWords | null,
): RewrittenStep[] {
  const whys = methods.map(coolerOven);
  const any = whys.find((why) => why !== null) ?? null;
  const metric = words !== null;
  const lowered = steps.map((step, at) => {
    const part = parts[at]?.whole ?? null;
    const own = part === null || parts[at]?.headed !== true ? any : (whys[part] ?? null);
    const other = OTHER_HEAT.test(step.after) && !BAKES.test(step.after);
    const cooler = own === null || other ? step.after : withLowerOven(step.after, metric);
    return own === null || cooler === step.after ? step : withReason(step, cooler, own);
  });
  if (lowered.every((step, at) => step === steps[at])) return lowered;
  const first = lowered.findIndex((step) => withLongerBake(step, words) !== step);
  return lowered.map((step, at) => (at === first ? withLongerBake(step, words) : step));
}
