/** Steps for the handling that the new ingredients call for. */

import { capital } from '../naming/method-names.ts';
import { amendedSteps } from './amendments.ts';
import type { CueContext } from './cue-context.ts';
import { fill, textOf } from './cue-text.ts';
import { fittingCues } from './fitting-cues.ts';
import { type Insertion, inserted, placeOf, RANKS } from './insertion.ts';

/**
 * Steps to insert, with their places. `original`: the steps as they are; `texts`: the same with
 * English key words. `statesOven`: the method states oven temperatures, which are changed where they stand.
 */
export function insertions(
  context: CueContext,
  original: readonly string[],
  texts: readonly string[],
  statesOven: boolean,
): Insertion[] {
  return fittingCues(context)
    .filter((cue) => cue.text !== '' && !(cue.oven === true && statesOven))
    .filter((cue) => cue.too === true || amendedSteps(cue, context, original).length === 0)
    .flatMap((cue) => {
      const at = placeOf(cue, texts);
      if (at === null) return [];
      const step = inserted(capital(fill(textOf(cue, context), context)), cue.why);
      return [{ at, rank: RANKS.indexOf(cue.place), step }];
    });
}
