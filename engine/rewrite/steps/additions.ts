/** Steps for foods that a plan adds and no step names. */
import { hasTag } from '../../foods/tags.ts';
import type { PlannedItem, RewrittenStep } from '../../model.ts';
import type { CueContext } from '../cues/cue-context.ts';
import { listIn, withAmount } from '../cues/cue-text.ts';
import { type Insertion, RANKS } from '../cues/insertion.ts';
import { localFoodName } from '../languages/method-words.ts';
import { capital, shortName } from '../naming/method-names.ts';

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
    const local = words === null ? null : localFoodName(foodId, words);
    const named = local ?? shortName(foodName);
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

const addition = (text: string, why: string): RewrittenStep => ({
  section: null,
  before: null,
  after: capital(text),
  change: 'inserted',
  why,
});

/** The first step that takes one of the liquids or eggs of the part; the one by which all is mixed when none does. */
function moistStep({ mentions, plan, course }: CueContext): number {
  const steps = mentions
    .filter(({ ingredient }) => ['liquid', 'egg'].includes(plan.roles[ingredient.key]?.[0] ?? ''))
    .flatMap(({ ingredient }) => course.named.get(ingredient.key) ?? []);
  return steps.length > 0 ? Math.min(...steps) : course.mixedAt;
}

/** The first step that takes something that changed; the part's first when none does. */
function changedStep({ mentions, course }: CueContext): number {
  const steps = mentions
    .filter(({ changed }) => changed)
    .flatMap(({ ingredient }) => course.named.get(ingredient.key) ?? []);
  return steps.length > 0 ? Math.min(...steps) : course.firstStep;
}

/** Steps for what no step names: dry things before the dough is mixed, moist ones where the first moist one goes in. */
export function additionSteps(context: CueContext, written: string): Insertion[] {
  const items = unnamed(context, written);
  if (items.length === 0) return [];
  const { words, plan, course } = context;
  const list = (some: readonly PlannedItem[]): string =>
    listIn(
      some.map((item) => withAmount(item, context)),
      context,
    );
  const sentences = words?.additions ?? ENGLISH_ADDITIONS;
  const why = words?.additionWhy ?? 'New in this version, so the method does not name it.';
  const step = (some: readonly PlannedItem[], at: number, sentence: string): Insertion[] =>
    some.length === 0
      ? []
      : [
          {
            at,
            rank: RANKS.use,
            behind: null,
            step: addition(sentence.replace('{list}', list(some)), why),
          },
        ];
  if (plan.dough === null) return step(items, changedStep(context), sentences.dish);
  const isDry = ({ role, foodId }: PlannedItem): boolean =>
    DRY_ROLES.includes(role) && !hasTag(foodId, 'syrup');
  const dry = items.filter(isDry);
  const wet = items.filter((item) => !isDry(item));
  return [
    ...step(dry, Math.min(course.firstStep, course.mixedAt), sentences.dry),
    ...step(wet, moistStep(context), sentences.moist),
  ];
}
