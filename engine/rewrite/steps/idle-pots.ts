/** A pot of water that the page heats for what is no longer boiled. */
import type { RewrittenStep } from '../../model.ts';
import { sentencesOf } from '../wording/sentences.ts';

const HEATS_WATER =
  /^(?<lead>(?:meanwhile|in the meantime),? )?(?:bring|heat|fill|boil|put|place|set) (?:a |the )?(?:very )?(?:large |big |medium )?(?:pot|saucepan|pan|stockpot|kettle)\b[^.;]*\bwater\b[^.;]*[.;]?$/i;
/** What still needs it. */
const IN_WATER =
  /\b(?:boil(?:ing|ed|s)?|blanch\w*|poach\w*|steam\w*|parboil\w*|simmer\w*|the (?:\w+ )?water|drain\w*)\b/i;

/** Whether a sentence only heats a pot of water. */
const isPot = (sentence: string): boolean => HEATS_WATER.test(sentence.trim());

/**
 * The steps without a pot of water that nothing goes into. `isIdle`: whether the boiling of a food fell
 * away; a step that is nothing else stays.
 */
export function withoutIdlePots<T extends { step: RewrittenStep }>(
  steps: readonly T[],
  isIdle: boolean,
): T[] {
  if (!isIdle) return [...steps];
  const rest = steps.flatMap(({ step }) => sentencesOf(step.after).filter((one) => !isPot(one)));
  const isNeeded = rest.some((one) => IN_WATER.test(one) && !/^Skip this step/.test(one));
  if (isNeeded) return [...steps];
  return steps.map((renamed) => {
    const { step } = renamed;
    const kept = sentencesOf(step.after).filter((one) => !isPot(one));
    const after = kept.join(' ');
    if (kept.length === 0 || after === step.after) return renamed;
    return { ...renamed, step: { ...step, after, change: 'changed' } };
  });
}
