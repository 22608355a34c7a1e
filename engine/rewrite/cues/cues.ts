/** Steps and sentences for the handling that the new ingredients call for. */
import { capital } from '../naming/method-names.ts';
import { brownsMore } from '../oven/browning.ts';
import type { PartMethod } from '../parts/part-contexts.ts';
import { sentencesOf } from '../wording/sentences.ts';
import { type Amendment, amendedSteps } from './amendments.ts';
import type { Cue } from './cue.ts';
import { addedItems, type CueContext } from './cue-context.ts';
import { fill, nameIn, reasonOf, riseFactor, textOf } from './cue-text.ts';
import { fittingCues } from './fitting-cues.ts';
import { type Insertion, inserted, placeOf, RANKS, yeastStep } from './insertion.ts';
import { isListed } from './listed-foods.ts';
import { byTheDough, riseAmendments, riseIn } from './rise-times.ts';
import { isDryCaramel, withoutSyrupHeat } from './stove/dry-caramel.ts';
import { isInFat, thickenedAt } from './stove/gum-places.ts';

/** Whether the plan takes water or stock off a line, as what drank it is gone. */
const asksForLessLiquid = ({ plan }: CueContext): boolean =>
  plan.swaps.some(({ id, to }) => to.length === 0 && /^less-(?:water|.*stock)/.test(id));

/** A sauce of a bake goes into the oven with it, and has no oven of its own. */
const isDish = ({ plan }: CueContext): boolean => plan.family.id !== 'sweet-sauce';

/** Whether the time of a rise is put right in the page's own sentence. */
const retimes = (cue: Cue, sentence: string, context: CueContext): boolean =>
  cue.retimes === true && riseFactor(context) !== null && riseIn(sentence, context.words) !== null;

/** What a page calls batter is no dough. */
const batterWord = (text: string, sentence: string, { words }: CueContext): string =>
  words?.tag === 'nl' && /\bbeslag\b/.test(sentence) ? text.replace(/\bdeeg\b/g, 'beslag') : text;

/** A rise in the cold takes its night, whatever the flour. */
const COLD =
  /overnight|over night|fridge|refrigerat|chill|über nacht|kühlschrank|frigo|réfrigér|nevera|geladeira|koelkast|kylskåp|køleskab|kjøleskap/i;

/** Times of rises in the page's steps that the new flours make longer. */
export function riseTimes({ context, texts, original }: PartMethod): Amendment[] {
  const factor = riseFactor(context);
  if (factor === null) return [];
  return fittingCues(context).flatMap((cue) => {
    const place = cue.retimes === true ? placeOf(cue, texts, context, original) : null;
    const text = original[place?.at ?? -1] ?? '';
    const sentence = place?.behind ?? 0;
    if (place === null || !retimes(cue, sentencesOf(text)[sentence] ?? '', context)) return [];
    const told = { factor, words: context.words, why: reasonOf(cue, context) };
    const rises = new RegExp(cue.where ?? '$^', 'i');
    return original.flatMap((page, at) => {
      if (at < yeastStep(texts)) return [];
      if (at === place.at) return riseAmendments(at, page, sentence, told);
      const keys = sentencesOf(texts[at] ?? '');
      const own = sentencesOf(page).findIndex(
        (one, index) =>
          rises.test(keys[index] ?? '') && !COLD.test(one) && riseIn(one, context.words) !== null,
      );
      return own < 0 || at < place.at ? [] : riseAmendments(at, page, own, told);
    });
  });
}

/** What the foods that a cue is for are called. */
const namesFor = ({ added = [] }: Cue, context: CueContext): string[] =>
  addedItems(context)
    .filter(({ foodId }) => isListed(foodId, added))
    .map((item) => nameIn(item, context));

/** Whether the liquid that a cue asks less of is gone from its step with the boiling, or boiled down there. */
const isDry = (cue: Cue, step: string | undefined, { words }: CueContext): boolean =>
  cue.saysLessLiquid === true &&
  words === null &&
  step !== undefined &&
  (/\bhardly any liquid\b/.test(step) || !new RegExp(cue.where ?? '', 'i').test(step));

/**
 * What the cues of one part say, with its places. `statesOven`: the method states oven temperatures,
 * which are changed where they stand; `now`: its steps as they are rewritten.
 */
export function insertions(
  { context, texts, original }: PartMethod,
  statesOven: boolean,
  now: readonly string[] = [],
): Insertion[] {
  return fittingCues(context)
    .filter((cue) => cue.text !== '' && !(cue.oven === true && statesOven))
    .filter((cue) => cue.oven !== true || (isDish(context) && brownsMore(cue, context)))
    .filter((cue) => cue.saysLessLiquid !== true || !asksForLessLiquid(context))
    .filter((cue) => cue.too === true || amendedSteps(cue, context, original).length === 0)
    .flatMap((cue) => {
      const place = placeOf(cue, texts, context, original);
      if (place === null || isDry(cue, now[place.at], context)) return [];
      const beside = sentencesOf(original[place.at] ?? '')[place.behind ?? 0] ?? '';
      const retimed = retimes(cue, beside, context);
      const own = retimed ? byTheDough(context.words) : textOf(cue, context);
      const keyed = sentencesOf(texts[place.at] ?? '')[place.behind ?? 0] ?? '';
      const text = cue.syrup === true && isDryCaramel(keyed) ? withoutSyrupHeat(own) : own;
      const said = batterWord(fill(text, context, beside), beside, context);
      const isBracket = cue.bracket === true;
      const why = reasonOf(cue, context);
      const rank = cue.place === 'within' ? RANKS.after : RANKS[cue.place];
      if (cue.afterwards === true && place.behind !== null) {
        const [first = '', ...later] = sentencesOf(said);
        const now = isInFat(texts[place.at] ?? '', cue)
          ? []
          : [{ ...place, rank, step: inserted(capital(first), why) }];
        const then = { ...thickenedAt(texts, place.at), rank: RANKS.after };
        return [...now, { ...then, step: inserted(later.join(' '), why) }];
      }
      const step = inserted(isBracket ? said : capital(said), why);
      const names = isBracket ? { inBracketsOf: namesFor(cue, context) } : {};
      return [{ ...place, rank, step, ...names }];
    });
}
