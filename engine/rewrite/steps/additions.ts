/** Steps for foods that a plan adds and no step names. */
import { hasTag } from '../../foods/tags.ts';
import type { PlannedItem, RewrittenStep, Swap } from '../../model.ts';
import type { CueContext } from '../cues/cue-context.ts';
import { listIn, withAmount } from '../cues/cue-text.ts';
import { type Insertion, RANKS } from '../cues/insertion.ts';
import { localFoodName } from '../languages/method-words.ts';
import { companionsOf } from '../naming/companions.ts';
import type { Mention } from '../naming/mention.ts';
import { capital, shortName } from '../naming/method-names.ts';
import { isNamedIn } from '../wording/name-patterns.ts';
import { sentencesOf } from '../wording/sentences.ts';

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
    // A method may speak of water that no line has: what is new is told by its grams.
    if (foodId === 'water') return !text.includes(`${Math.round(grams)} g`);
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
  dry: 'Mix in {list} as well, dry.',
  moist: 'Add {list} here too.',
  dish: 'Stir in {list} too.',
};

const addition = (text: string, why: string): RewrittenStep => ({
  section: null,
  before: null,
  after: capital(text),
  change: 'inserted',
  why,
});

/** The place behind the first sentence that takes one of some ingredients; a step of its own where none does. */
function placeBeside(
  own: readonly Mention[],
  elsewhere: number,
  { course }: CueContext,
  texts: readonly string[],
): Pick<Insertion, 'at' | 'behind'> {
  const steps = own.flatMap(({ ingredient }) => course.named.get(ingredient.key) ?? []);
  if (steps.length === 0) return { at: elsewhere, behind: null };
  const at = Math.min(...steps);
  const behind = sentencesOf(texts[at] ?? '').findIndex((sentence) =>
    own.some((mention) => isNamedIn(sentence, mention)),
  );
  return { at, behind: behind < 0 ? null : behind };
}

const POURS_WATER = /\bwater\b/i;

/** Where no line of what is moist is named: behind the sentence of the step that pours in water. */
function withWater(
  place: Pick<Insertion, 'at' | 'behind'>,
  texts: readonly string[],
): Pick<Insertion, 'at' | 'behind'> {
  if (place.behind !== null) return place;
  const behind = sentencesOf(texts[place.at] ?? '').findIndex((one) => POURS_WATER.test(one));
  return behind < 0 ? place : { ...place, behind };
}

const MASHES = /\bmash/i;

const saysAtEnd = ({ method = '' }: Swap): boolean => /\bat the end\b/i.test(method);

const TIMED = /\d ?min/i;
const RESTS =
  /\b(?:rest(?:ing)?|stand|serv\w*|cool\w*|repos\w*|réserv\w*|refroid\w*|ruhen|ziehen|anricht\w*|ripos\w*|raffredd\w*|repous\w*|enfri\w*|sirv\w*|rusten|afkoel\w*|vila|svalna|hvil\w*|køl\w*)\b/i;
const cooksFor = (text: string): boolean => TIMED.test(text) && !RESTS.test(text);

/** Behind the last sentence of a method that cooks for a time: what goes in at the end follows it. */
function lastTimed(texts: readonly string[]): { at: number; behind: number } | null {
  const at = texts.findLastIndex((text) => sentencesOf(text).some(cooksFor));
  const behind = sentencesOf(texts[at] ?? '').findLastIndex(cooksFor);
  return behind < 0 ? null : { at, behind };
}

/** What goes in with a vegetable that stands in, such as the butter of a mash, where no handling says it. */
export function companionSteps(
  context: CueContext,
  handling: string,
  texts: readonly string[],
): Insertion[] {
  const { words, plan, course } = context;
  const { dish } = words?.additions ?? ENGLISH_ADDITIONS;
  const why = words?.additionWhy ?? 'New in this version, so the method does not name it.';
  return plan.swaps.flatMap((swap): Insertion[] => {
    const aside = companionsOf(swap);
    const untold = plan.items.filter((item) => {
      const name = (words && localFoodName(item.foodId, words)) ?? shortName(item.foodName);
      const isOwn = item.key === swap.key || item.key.startsWith(`new.${item.foodId}`);
      return isOwn && aside.has(item.foodId) && item.grams > 0 && !isSaid(name, handling);
    });
    const steps = (swap.key === null ? undefined : course.named.get(swap.key)) ?? [];
    const mashed = steps.find((step) => MASHES.test(texts[step] ?? ''));
    const cooked = saysAtEnd(swap) ? lastTimed(texts) : null;
    const at = cooked?.at ?? mashed ?? steps.at(-1);
    if (untold.length === 0 || at === undefined) return [];
    const list = listIn(
      untold.map((item) => withAmount(item, context)),
      context,
    );
    const behind = cooked?.behind ?? Math.max(0, sentencesOf(texts[at] ?? '').length - 1);
    return [{ at, behind, rank: RANKS.after, step: addition(dish.replace('{list}', list), why) }];
  });
}

const isSaid = (name: string, text: string): boolean =>
  text.toLowerCase().includes(name.toLowerCase());

/** What no step names: dry things beside the flour, moist ones where the first moist one goes in. `texts`: the method's own steps as they read now. */
export function additionSteps(
  context: CueContext,
  written: string,
  texts: readonly string[],
): Insertion[] {
  const items = unnamed(context, written);
  if (items.length === 0) return [];
  const { words, plan, course, mentions } = context;
  const list = (some: readonly PlannedItem[]): string =>
    listIn(
      some.map((item) => withAmount(item, context)),
      context,
    );
  const sentences = words?.additions ?? ENGLISH_ADDITIONS;
  const why = words?.additionWhy ?? 'New in this version, so the method does not name it.';
  const step = (
    some: readonly PlannedItem[],
    place: Pick<Insertion, 'at' | 'behind'>,
    sentence: string,
  ): Insertion[] =>
    some.length === 0
      ? []
      : [
          {
            ...place,
            rank: RANKS.use,
            step: addition(sentence.replace('{list}', list(some)), why),
          },
        ];
  const beside = (fits: (mention: Mention) => boolean, elsewhere: number) =>
    placeBeside(mentions.filter(fits), elsewhere, context, texts);
  if (plan.dough === null)
    return step(
      items,
      beside(({ changed }) => changed, course.firstStep),
      sentences.dish,
    );
  const isDry = ({ role, foodId }: PlannedItem): boolean =>
    DRY_ROLES.includes(role) && !hasTag(foodId, 'syrup');
  const dry = items.filter(isDry);
  const wet = items.filter((item) => !isDry(item));
  const isMoist = ({ ingredient }: Mention): boolean =>
    ['liquid', 'egg'].includes(plan.roles[ingredient.key]?.[0] ?? '');
  const first = Math.min(course.firstStep, course.mixedAt);
  return [
    ...step(
      dry,
      beside(({ role }) => role === 'structure', first),
      sentences.dry,
    ),
    ...step(wet, withWater(beside(isMoist, course.mixedAt), texts), sentences.moist),
  ];
}
