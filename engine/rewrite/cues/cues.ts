/** Steps and sentences for the handling that the new ingredients call for. */
import { capital } from '../naming/method-names.ts';
import { brownsMore } from '../oven/browning.ts';
import type { PartMethod } from '../parts/part-contexts.ts';
import { sentencesOf } from '../wording/sentences.ts';
import { amendedSteps } from './amendments.ts';
import type { Cue } from './cue.ts';
import { addedItems, type CueContext } from './cue-context.ts';
import { fill, nameIn, reasonOf, textOf } from './cue-text.ts';
import { fittingCues } from './fitting-cues.ts';
import { type Insertion, inserted, placeOf, RANKS } from './insertion.ts';
import { isListed } from './listed-foods.ts';

/** Whether the plan takes water or stock off a line, as what drank it is gone. */
const asksForLessLiquid = ({ plan }: CueContext): boolean =>
  plan.swaps.some(({ id, to }) => to.length === 0 && /^less-(?:water|.*stock)/.test(id));

/** A sauce of a bake goes into the oven with it, and has no oven of its own. */
const isDish = ({ plan }: CueContext): boolean => plan.family.id !== 'sweet-sauce';

/** What the foods that a cue is for are called. */
const namesFor = ({ added = [] }: Cue, context: CueContext): string[] =>
  addedItems(context)
    .filter(({ foodId }) => isListed(foodId, added))
    .map((item) => nameIn(item, context));

/**
 * What the cues of one part say, with its places. `statesOven`: the method states oven temperatures,
 * which are changed where they stand.
 */
export function insertions(
  { context, texts, original }: PartMethod,
  statesOven: boolean,
): Insertion[] {
  return fittingCues(context)
    .filter((cue) => cue.text !== '' && !(cue.oven === true && statesOven))
    .filter((cue) => cue.oven !== true || (isDish(context) && brownsMore(cue, context)))
    .filter((cue) => cue.saysLessLiquid !== true || !asksForLessLiquid(context))
    .filter((cue) => cue.too === true || amendedSteps(cue, context, original).length === 0)
    .flatMap((cue) => {
      const place = placeOf(cue, texts, context, original);
      if (place === null) return [];
      const beside = sentencesOf(original[place.at] ?? '')[place.behind ?? 0] ?? '';
      const said = fill(textOf(cue, context), context, beside);
      const isBracket = cue.bracket === true;
      const step = inserted(isBracket ? said : capital(said), reasonOf(cue, context));
      const rank = cue.place === 'within' ? RANKS.after : RANKS[cue.place];
      const names = isBracket ? { inBracketsOf: namesFor(cue, context) } : {};
      return [{ ...place, rank, step, ...names }];
    });
}
