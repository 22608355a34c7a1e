/** Whether enough of what browns fast meets the heat for the oven to be set lower. */
import { hasTag } from '../../foods/tags.ts';
import type { Cue } from '../cues/cue.ts';
import { type CueContext, newShare } from '../cues/cue-context.ts';
import type { Mention } from '../naming/mention.ts';

/** Least shares of allulose: of what sweetens, and of the whole part. Own choice. */
const ALLULOSE = { ofSweet: 1 / 3, ofAll: 0.05 };
/** Least share of new flours: a butter crust with less bakes at its own heat. Own choice. */
const FLOURS = { crust: 0.5, other: 0.2 };

/** Toppings and batters that meet the heat themselves. */
const OPEN = /\b(?:cobbler|crumble|crisp|buckle|bars?|squares|slices?)\b/i;

/** Of what is set with egg only these bake open and dry; a custard in its bath or a cheesecake stays pale. */
const OPEN_CREAM =
  /\bbread (?:and butter )?pudding|\bfrench toast\b|clafoutis|pain perdu|brotauflauf|scheiterhaufen|ofenschlupfer|broodpudding|budino di pane|pud[ií]n de pan|pudim de p[aã]o/i;

const gramsOf = ({ plan }: CueContext, fits: (foodId: string) => boolean): number =>
  plan.items.reduce((sum, { foodId, grams }) => sum + (fits(foodId) ? grams : 0), 0);

const isAllulose = (foodId: string): boolean => hasTag(foodId, 'allulose');

/** Whether allulose goes into the dough itself, not into a filling that the crust covers. */
function isInDough({ mentions, course }: CueContext): boolean {
  const stepsOf = (fits: (mention: Mention) => boolean): Set<number> =>
    new Set(
      mentions.filter(fits).flatMap(({ ingredient }) => course.named.get(ingredient.key) ?? []),
    );
  const sweet = stepsOf(({ items }) => items.some(({ foodId }) => isAllulose(foodId)));
  const dough = stepsOf(
    ({ role, ingredient }) =>
      role === 'structure' || hasTag(ingredient.match?.foodId ?? '', 'flour-like'),
  );
  return [...sweet].some((step) => dough.has(step));
}

export function brownsMore(cue: Cue, context: CueContext): boolean {
  const isCrust = context.plan.family.id === 'pie-crust' && !OPEN.test(context.title);
  if (cue.added?.includes('allulose') !== true)
    return newShare(context) >= (isCrust ? FLOURS.crust : FLOURS.other);
  if (context.plan.family.id === 'custard' && !OPEN_CREAM.test(context.title)) return false;
  const allulose = gramsOf(context, isAllulose);
  const sugar = gramsOf(context, (foodId) => hasTag(foodId, 'sugar'));
  const all = gramsOf(context, () => true);
  const isMuch = isCrust ? isInDough(context) : allulose >= ALLULOSE.ofAll * all;
  return isMuch && allulose >= ALLULOSE.ofSweet * (allulose + sugar);
}
