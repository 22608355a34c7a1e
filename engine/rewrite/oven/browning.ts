/** Whether enough of what browns fast meets the heat for the oven to be set lower. */
import { hasTag } from '../../foods/tags.ts';
import type { Cue } from '../cues/cue.ts';
import { type CueContext, newShare } from '../cues/cue-context.ts';
import { isNamedIn } from '../wording/name-patterns.ts';
import { sentencesOf } from '../wording/sentences.ts';

/** Least shares of allulose: of what sweetens, and of the whole part. Own choice. */
const ALLULOSE = { ofSweet: 1 / 3, ofAll: 0.05 };
/** Least share of new flours: a butter crust with less bakes at its own heat. Own choice. */
const FLOURS = { crust: 0.5, other: 0.2 };

const gramsOf = ({ plan }: CueContext, fits: (foodId: string) => boolean): number =>
  plan.items.reduce((sum, { foodId, grams }) => sum + (fits(foodId) ? grams : 0), 0);

const isAllulose = (foodId: string): boolean => hasTag(foodId, 'allulose');

/** Whether allulose goes into the dough itself, not into a filling that the crust covers. */
function isInDough({ mentions }: CueContext, texts: readonly string[]): boolean {
  const sweet = mentions.filter(({ items }) => items.some(({ foodId }) => isAllulose(foodId)));
  const dough = mentions.filter(
    ({ role, ingredient }) =>
      role === 'structure' || hasTag(ingredient.match?.foodId ?? '', 'flour-like'),
  );
  return texts
    .flatMap(sentencesOf)
    .some((sentence) =>
      [sweet, dough].every((some) => some.some((mention) => isNamedIn(sentence, mention))),
    );
}

/** `texts`: the steps of the part in the page's words. */
export function brownsMore(cue: Cue, context: CueContext, texts: readonly string[]): boolean {
  const isCrust = context.plan.family.id === 'pie-crust';
  if (cue.added?.includes('allulose') !== true)
    return newShare(context) >= (isCrust ? FLOURS.crust : FLOURS.other);
  const allulose = gramsOf(context, isAllulose);
  const sugar = gramsOf(context, (foodId) => hasTag(foodId, 'sugar'));
  const all = gramsOf(context, () => true);
  const isMuch = isCrust ? isInDough(context, texts) : allulose >= ALLULOSE.ofAll * all;
  return isMuch && allulose >= ALLULOSE.ofSweet * (allulose + sugar);
}
