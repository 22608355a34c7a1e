/** Whether a cue is called for. */
import type { Swap } from '../../model.ts';
import type { Mention } from '../naming/mention.ts';
import { isMade } from '../naming/method-names.ts';
import { bakeMinutes } from '../oven/oven-heat.ts';
import { type Cue, isFor } from './cue.ts';
import {
  addedItems,
  type CueContext,
  floursOf,
  gumsOf,
  isShrunk,
  keptShare,
  newShare,
} from './cue-context.ts';
import { isListed, listsOneOf } from './listed-foods.ts';
import { icingHalves } from './thin-icing.ts';
import { isFriedOrBoiled, isKneaded } from './worked-how.ts';

/** Whether listed foods of the original are cut; with `keepsNone`, to a third or less. */
function areCut(context: CueContext, list: readonly string[], keepsNone: boolean): boolean {
  return context.mentions.some((mention) => {
    const { ingredient, changed } = mention;
    const id = ingredient.match?.foodId ?? '';
    return changed && isListed(id, list) && !(keepsNone && keptShare(mention) > 1 / 3);
  });
}

/** Whether flour or starch is left among what thickens. */
const starchStays = ({ plan }: CueContext): boolean =>
  plan.items.some(
    ({ role, grams, foodId }) =>
      role === 'thickener' && grams > 0 && isListed(foodId, ['flour', 'starch']),
  );

const fits = (list: readonly string[] | undefined, id: string): boolean =>
  list === undefined || isListed(id, list);

/** Whether a cue is about what a swap takes out and brings in. */
export const concerns = (cue: Cue, { from, to }: Swap): boolean =>
  fits(cue.cut, from?.foodId ?? '') && fits(cue.added, to[0]?.foodId ?? '');

/** Whether a swap brings in the foods of a cue and says nothing itself of what is made of them. */
const isMadeBy = (cue: Cue, swap: Swap): boolean =>
  fits(cue.cut, swap.from?.foodId ?? '') &&
  swap.to.length > 1 &&
  swap.to.some(({ foodId }) => fits(cue.added, foodId)) &&
  (swap.method ?? '') === '';

/** Keys of ingredients that have become a thing made first. */
const madeOf = ({ mentions }: CueContext): Set<string> =>
  new Set(
    mentions
      .filter(({ newName }) => newName !== null && isMade(newName))
      .flatMap(({ ingredient, items }) => [ingredient.key, ...items.map(({ key }) => key)]),
  );

/** Whether a cue that goes unsaid where nothing stays of what is cut has nothing to say. */
function isIdleWithNone(
  { unlessNone, cut = [] }: Cue,
  { mentions }: CueContext,
  words: string,
): boolean {
  if (unlessNone === undefined || !new RegExp(unlessNone, 'i').test(words)) return false;
  return !mentions.some(
    (one) => one.changed && isListed(one.ingredient.match?.foodId ?? '', cut) && keptShare(one) > 0,
  );
}

/** A part that is strewn on another, whatever family its ratios have: it is no dough of cookies. */
const STREWN = /\b(?:streusel|crumble|crumbs?|topping|sprinkle)\b/i;
const OF_PIECES: ReadonlySet<string> = new Set(['cookie-chill', 'cookie-firm']);
/** Nor has it a centre, or hours to cool in a tin. */
const OF_A_BAKE: ReadonlySet<string> = new Set(['core', 'cooling']);

/** Whether a cue is called for: by the plan, by the dish, and by what the method does not say already. */
export function applies(cue: Cue, context: CueContext): boolean {
  if (!isFor(cue.families, context.plan.family.id)) return false;
  const isOfBake = OF_PIECES.has(cue.id) || OF_A_BAKE.has(cue.group ?? '');
  if (isOfBake && STREWN.test(context.partTitle ?? '')) return false;
  // What joins late has a sentence of its own.
  if (cue.bracket === true && ((context.late ?? []).length > 0 || context.together === true))
    return false;
  const made = cue.notMade === true ? madeOf(context) : new Set<string>();
  const added = addedItems(context).flatMap(({ key, foodId }) => (made.has(key) ? [] : [foodId]));
  const all = context.plan.items.filter(({ grams }) => grams > 0).map(({ foodId }) => foodId);
  if (cue.added !== undefined && !listsOneOf(added, cue.added)) return false;
  if (cue.notAdded !== undefined && listsOneOf(added, cue.notAdded)) return false;
  if (cue.present !== undefined && !listsOneOf(all, cue.present)) return false;
  if (cue.makes === true && !context.plan.swaps.some((swap) => isMadeBy(cue, swap))) return false;
  if (cue.cut !== undefined && !areCut(context, cue.cut, cue.keepsNone === true)) return false;
  if (cue.shrinks === true && !context.mentions.some((mention) => isAbout(cue, mention)))
    return false;
  if (cue.fromShare !== undefined && newShare(context) < cue.fromShare) return false;
  if (cue.halved === true && icingHalves(context).length === 0) return false;
  if (cue.starchStays !== undefined && cue.starchStays !== starchStays(context)) return false;
  if (cue.severalFlours === true && floursOf(context).length < 2) return false;
  if (cue.text.includes('{binders}') && gumsOf(context, false).length === 0) return false;
  if (cue.text.includes('{gums}') && gumsOf(context, true).length === 0) return false;
  if (cue.baked === true && isFriedOrBoiled(context)) return false;
  if (cue.kneaded === true && !isKneaded(context)) return false;
  if (cue.yeast === true && !listsOneOf(all, ['yeast'])) return false;
  const words = `${context.title}\n${context.method}`;
  if (cue.ifSaid !== undefined && !new RegExp(cue.ifSaid, 'i').test(words)) return false;
  if (cue.titled !== undefined && !new RegExp(cue.titled, 'i').test(context.title)) return false;
  if (cue.notTitled !== undefined && new RegExp(cue.notTitled, 'i').test(context.title))
    return false;
  if (cue.autolyse !== undefined && cue.autolyse !== context.autolyses) return false;
  if (cue.bakeFrom !== undefined && (bakeMinutes(context.method) ?? 0) < cue.bakeFrom) return false;
  if (isIdleWithNone(cue, context, words)) return false;
  return cue.unless === undefined || !new RegExp(cue.unless, 'i').test(words);
}

/** Whether a cue is about what became of an ingredient: it is cut, or has what the cue is for in its place. */
export function isAbout(cue: Cue, mention: Mention): boolean {
  const { ingredient, changed, items, goesInWith } = mention;
  if (!changed && goesInWith.length === 0) return false;
  const now = [...items, ...goesInWith].map(({ foodId }) => foodId);
  const isCut = cue.cut === undefined || isListed(ingredient.match?.foodId ?? '', cue.cut);
  if (cue.shrinks === true) return isCut && isShrunk(mention);
  return isCut && (cue.added === undefined || listsOneOf(now, cue.added));
}
