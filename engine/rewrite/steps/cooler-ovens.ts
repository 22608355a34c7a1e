/** Ovens set lower for what browns fast, and the time that it then takes. */
import type { RewrittenStep } from '../../model.ts';
import { coolerOven } from '../cues/fitting-cues.ts';
import { type Insertion, inserted, RANKS } from '../cues/insertion.ts';
import { keyed, type MethodWords } from '../languages/method-words.ts';
import { bakeMinutes, longerBy, withLowerOven } from '../oven/oven-heat.ts';
import type { PartMethod } from '../parts/part-contexts.ts';
import type { StepParts } from '../parts/step-parts.ts';
import { sentencesOf } from '../wording/sentences.ts';
import { withReason } from './step-reasons.ts';

const LONGER = 'In the cooler oven it takes {minutes} minutes longer.';
const BAKES = /\bbak(?:e|es|ed)\b/i;
/** Roasted vegetables and toasted nuts keep their heat. */
const OTHER_HEAT = /\b(?:roast|toast|broil|grill)(?:s|ed|ing)?\b|\bcook until\b/i;

/** How much longer the first bake takes, behind the sentence that says how long; none where none does. */
function longerBake(steps: readonly RewrittenStep[], words: MethodWords | null): Insertion[] {
  for (const [at, { after }] of steps.entries()) {
    for (const [behind, sentence] of sentencesOf(after).entries()) {
      const said = words === null ? sentence : keyed(sentence, words);
      const minutes = BAKES.test(said) ? bakeMinutes(said) : null;
      if (minutes === null) continue;
      const text = (words?.longerBake ?? LONGER).replace('{minutes}', longerBy(minutes));
      return [{ at, behind, rank: RANKS.after, step: inserted(text, '') }];
    }
  }
  return [];
}

/** The steps with a lower oven where a part that browns fast is baked, and the longer time beside the first bake. */
export function withOvens(
  steps: readonly RewrittenStep[],
  parts: readonly StepParts[],
  methods: readonly PartMethod[],
  words: MethodWords | null,
): { steps: RewrittenStep[]; longer: Insertion[] } {
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
  const isLower = lowered.some((step, at) => step !== steps[at]);
  return { steps: lowered, longer: isLower ? longerBake(lowered, words) : [] };
}
