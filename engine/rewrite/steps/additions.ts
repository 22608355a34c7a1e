/** Steps for foods that a plan adds and no step names. */
import { hasTag } from '../../foods/tags.ts';
import type { PlannedItem, RewrittenStep } from '../../model.ts';
import type { CueContext } from '../cues/cue-context.ts';
import type { Insertion } from '../cues/insertion.ts';
import { joinedWith } from '../languages/method-words.ts';
import { foreignName } from '../naming/bracketed-names.ts';
import { capital, listOf, shortName } from '../naming/method-names.ts';
import { namePattern } from '../naming/name-patterns.ts';

/** Additions that no step names. */
function unnamed(context: CueContext, written: string): PlannedItem[] {
  const { words } = context;
  const text = written.toLowerCase();
  const had = new Set(context.ingredients.map(({ match }) => match?.foodId ?? ''));
  const standIns = new Set(
    context.mentions.flatMap(({ items, changed }) => (changed ? items.map((i) => i.foodId) : [])),
  );
  return context.plan.items.filter(({ foodId, foodName, grams, key }) => {
    if (grams <= 0 || had.has(foodId)) return false;
    if (standIns.has(foodId) && !key.startsWith('new.')) return false;
    const named = words === null ? shortName(foodName) : (words.foods[foodId] ?? foodName);
    return !text.includes(named.toLowerCase());
  });
}

const DRY_ROLES = [
  'structure',
  'starch-bulk',
  'sweetness',
  'leavening',
  'yeast-food',
  'binder',
  'salt',
];

const ENGLISH_ADDITIONS = {
  dry: 'Mix {list} into the dry ingredients.',
  moist: 'Add {list} with the other moist ingredients.',
  dish: 'Stir in {list} while mixing.',
};

const addition = (text: string): RewrittenStep => ({
  section: null,
  before: null,
  after: capital(text),
  change: 'inserted',
  why: 'New in this version, so the method does not name it.',
});

/** Steps for what no step names: dry things at the start, moist ones where the first moist one goes in. */
export function additionSteps(
  context: CueContext,
  written: string,
  texts: readonly string[],
): Insertion[] {
  const items = unnamed(context, written);
  if (items.length === 0) return [];
  const { words } = context;
  const names = (list: readonly PlannedItem[]): string =>
    words === null
      ? listOf(list.map(({ foodName }) => `the ${shortName(foodName)}`))
      : joinedWith(
          list.map((item) => foreignName(item, words)),
          words.and,
        );
  const sentences = words?.additions ?? ENGLISH_ADDITIONS;
  const moistAt = Math.max(
    0,
    texts.findIndex((text) =>
      context.mentions.some(
        (mention) =>
          ['liquid', 'egg'].includes(context.plan.roles[mention.ingredient.key]?.[0] ?? '') &&
          namePattern(mention).test(text),
      ),
    ),
  );
  const step = (list: readonly PlannedItem[], at: number, sentence: string) =>
    list.length === 0
      ? []
      : [{ at, rank: 0, step: addition(sentence.replace('{list}', names(list))) }];
  if (context.plan.dough === null) return step(items, moistAt, sentences.dish);
  const isDry = ({ role, foodId }: PlannedItem): boolean =>
    DRY_ROLES.includes(role) && !hasTag(foodId, 'syrup');
  const dry = items.filter(isDry);
  const wet = items.filter((item) => !isDry(item));
  return [...step(dry, 0, sentences.dry), ...step(wet, moistAt, sentences.moist)];
}
