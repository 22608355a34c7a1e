/** Ovens set lower for what browns fast, and the time that it then takes. */
import type { Family, RewrittenStep } from '../../model.ts';
import { coolerOven } from '../cues/fitting-cues.ts';
import { type Insertion, inserted, RANKS } from '../cues/insertion.ts';
import { keyed, type MethodWords } from '../languages/method-words.ts';
import { bakeMinutes, LONGER, longerBy, withLowerOven } from '../oven/oven-heat.ts';
import type { PartMethod } from '../parts/part-contexts.ts';
import type { StepParts } from '../parts/step-parts.ts';
import { sentencesOf } from '../wording/sentences.ts';
import { withReason } from './step-reasons.ts';

const BAKES = /\bbak(?:e|es|ed)\b/i;
/** What is done when it is out. */
const COOLS = /\b(?:cool|remove|rack|rest)\b/i;
/** Roasted vegetables and toasted nuts keep their heat. */
const OTHER_HEAT = /\b(?:roast|toast|broil|grill)(?:s|ed|ing)?\b|\bcook until\b/i;

/** Nothing is baked at less: '8 min at 90 °C' is a pan. */
const LEAST_BAKE_C = 110;

/** Whether a sentence says that something is in the oven for a time; one that only heats it does not. */
function isBake(said: string): boolean {
  const heat = /(\d{2,3})\s?°/.exec(said)?.[1];
  if (heat !== undefined && Number(heat) < LEAST_BAKE_C) return false;
  return BAKES.test(said) || (/\boven\b/i.test(said) && !/\bpreheat/i.test(said));
}

interface BakeSentence {
  said: string;
  at: number;
  behind: number;
  minutes: NonNullable<ReturnType<typeof bakeMinutes>>;
}

function bakesIn(steps: readonly RewrittenStep[], words: MethodWords | null): BakeSentence[] {
  return steps.flatMap(({ after }, at) =>
    sentencesOf(after).flatMap((sentence, behind): BakeSentence[] => {
      const said = words === null ? sentence : keyed(sentence, words);
      const minutes = isBake(said) ? bakeMinutes(said) : null;
      return minutes === null ? [] : [{ said, at, behind, minutes }];
    }),
  );
}

/** How much longer each bake takes from the first lowered oven on, behind the sentence that says how long. */
function longerBakes(
  steps: readonly RewrittenStep[],
  lowered: (at: number) => boolean,
  words: MethodWords | null,
): Insertion[] {
  const bakes = bakesIn(steps, words);
  const first = steps.findIndex((_, at) => lowered(at));
  // In other languages 'cook' is said of pans as well: the step whose oven was lowered is sure.
  const sure = bakes.filter(({ at }) => lowered(at));
  const later = bakes.filter(
    ({ at, said }) => at >= first && BAKES.test(said) && !COOLS.test(said),
  );
  const foreign = sure.length > 0 ? sure.slice(0, 1) : bakes.slice(0, 1);
  const own = later.length > 0 ? later : bakes.slice(0, 1);
  return (words === null ? own : foreign).map(({ at, behind, minutes }) => {
    const text = (words?.longerBake ?? LONGER).replace('{minutes}', longerBy(minutes));
    return { at, behind, rank: RANKS.after, step: inserted(text, ''), each: true };
  });
}

/** Bakes whose sauces and fillings go into the oven with them. */
const BAKES_WHOLE: ReadonlySet<Family> = new Set<Family>([
  'enriched-yeast-bread',
  'biscuit',
  'quick-bread',
  'cake',
]);

/** The steps with a lower oven where a part that browns fast is baked, and the longer time beside the first bake. */
export function withOvens(
  steps: readonly RewrittenStep[],
  parts: readonly StepParts[],
  methods: readonly PartMethod[],
  words: MethodWords | null,
  unworded = false,
): { steps: RewrittenStep[]; longer: Insertion[] } {
  const isBake = methods.some(({ context }) => BAKES_WHOLE.has(context.plan.family.id));
  const whys = methods.map((method) =>
    isBake || method.context.plan.family.id !== 'sweet-sauce' ? coolerOven(method) : null,
  );
  const any = whys.find((why) => why !== null) ?? null;
  const metric = words !== null || unworded;
  const lowered = steps.map((step, at) => {
    const part = parts[at]?.whole ?? null;
    const own = part === null || parts[at]?.headed !== true ? any : (whys[part] ?? null);
    const other = OTHER_HEAT.test(step.after) && !BAKES.test(step.after);
    const cooler = own === null || other ? step.after : withLowerOven(step.after, metric);
    return own === null || cooler === step.after ? step : withReason(step, cooler, own);
  });
  const isLower = (at: number): boolean => lowered[at] !== steps[at];
  const some = lowered.some((_, at) => isLower(at));
  return { steps: lowered, longer: some ? longerBakes(lowered, isLower, words) : [] };
}
