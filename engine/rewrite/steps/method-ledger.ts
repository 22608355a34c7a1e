/** The ledger of a method: every reworked food, part by part, and the step that puts it in. */
import { hasTag } from '../../foods/tags.ts';
import type { MethodNote, Plan, PlannedItem, RewrittenStep } from '../../model.ts';
import { localFoodName, type MethodWords } from '../languages/method-words.ts';
import type { Mention } from '../naming/mention.ts';
import { isSweetener, shortName } from '../naming/method-names.ts';
import { partOfItem } from '../parts/part-of.ts';
import { literal } from '../wording/name-patterns.ts';
import type { UsedSoFar } from './used-so-far.ts';

export interface LedgerContext {
  plan: Plan;
  mentions: readonly Mention[];
  words: MethodWords | null;
  steps: readonly RewrittenStep[];
  /** Original steps that name each ingredient, by its key. */
  named: ReadonlyMap<string, readonly number[]>;
  used: UsedSoFar;
  /** How new foods are handled, by the key of their swap, where the page has no method that could say it. */
  handled?: ReadonlyMap<string, string> | undefined;
}

/** Words that mean every ingredient, or every one of a kind. */
const TOGETHER =
  /\b(?:all (?:of )?(?:the |your )?(?:other |remaining |dry |wet |filling |sauce |topping |crust |dough |dressing |frosting |icing |glaze |batter |salad |swirl |cake )*ingredients?|everything|ingredients (?:for|of) (?:the|your|each) [a-z]+|(?:dry|wet|remaining|other|rest of the|filling|sauce|topping|dressing|crust|marinade|frosting|icing|glaze|batter|salad|swirl|cake|brine) ingredients|combine all|mix all|alles|alle (?:übrigen |trockenen |overige |andere )?(?:zutaten|ingrediënten|ingredienser|ingredienserna|ingrediensene)|tous les (?:autres )?ingrédients|todos los (?:demás )?ingredientes|tutti gli (?:altri )?ingredienti|todos os (?:outros )?ingredientes|alla (?:övriga |torra )?ingredienser)\b/i;

/** Index of each original step among those of the result. */
const placesOf = (steps: readonly RewrittenStep[]): number[] =>
  steps.flatMap(({ before }, at) => (before === null ? [] : [at]));

const calledIn = (item: PlannedItem, words: MethodWords | null): string =>
  (words === null ? null : localFoodName(item.foodId, words)) ?? shortName(item.foodName);

/** The first step, inserted ones too, that says a food's name. */
function stepSaying(name: string, steps: readonly RewrittenStep[]): number | null {
  const pattern = new RegExp(literal(name), 'i');
  const at = steps.findIndex(({ after }) => pattern.test(after));
  return at < 0 ? null : at;
}

/** Words of a line's name that say how a food is, not which. */
const HOW =
  /^(?:fresh|frozen|light|dark|whole|large|small|medium|canned|tinned|dried|dry|ground|chopped|sliced|cooked|purpose|plain|pure|organic|white|black|brown|green|with|extra)$/i;

const ownWords = (name: string): string[] =>
  name.split(/[^\p{L}]+/u).filter((word) => word.length > 3 && !HOW.test(word));

/** The first step with a word of the line's own name that no other line has: 'the oats' of 'Old-Fashioned oats'. */
function stepByWord(
  { ingredient }: Mention,
  mentions: readonly Mention[],
  steps: readonly RewrittenStep[],
): number | null {
  const others = mentions.filter((one) => one.ingredient.key !== ingredient.key);
  const own = ownWords(ingredient.item.name).filter((word) => {
    const pattern = new RegExp(`(?<!\\p{L})${literal(word)}`, 'iu');
    return !others.some((one) => pattern.test(one.ingredient.item.name));
  });
  if (own.length === 0) return null;
  const pattern = new RegExp(`(?<!\\p{L})(?:${own.map(literal).join('|')})`, 'iu');
  const at = steps.findIndex(({ before, after }) => pattern.test(before ?? after));
  return at < 0 ? null : at;
}

/** The step that says a new flour by its kind: 'the flour mixture', where no other line is flour. */
function stepByHead(
  { foodId, key }: PlannedItem,
  { plan, steps, words }: LedgerContext,
): number | null {
  if (words !== null || !hasTag(foodId, 'flour-like')) return null;
  const others = plan.items.filter(
    (item) => item.key !== key && item.grams > 0 && /\bflour\b/.test(shortName(item.foodName)),
  );
  return others.length > 0 ? null : stepSaying('flour', steps);
}

const SWEETENERS = /\bsweeteners\b/i;

/** The step that takes a sugar among 'the sweeteners'. */
function stepOfSweeteners(foodId: string, steps: readonly RewrittenStep[]): number | null {
  if (!isSweetener(foodId) && !hasTag(foodId, 'sugar')) return null;
  const at = steps.findIndex(({ after }) => SWEETENERS.test(after));
  return at < 0 ? null : at;
}

const titleOf = (plan: Plan, part: number | null): string | null =>
  part === null ? null : (plan.parts[part]?.title ?? null);

/** Shares further than this from the whole are said: halves and thirds leave a rest by rounding. Own choice. */
const WHOLE = 0.03;

/** What a cook should know of a food that is put in, since the method's amounts do not add up. */
function remainder(
  mention: Mention | undefined,
  food: string,
  grams: number,
  { used, words }: LedgerContext,
): string | null {
  const left = mention === undefined || used.isIn(mention) ? null : used.left(mention);
  if (left === null || left <= WHOLE || words !== null || mention?.changed !== true) return null;
  return `The steps tell where ${Math.round(grams * (1 - left))} g of the ${Math.round(grams)} g ${food} go in; the rest is not told.`;
}

/** What the result calls a food: its own line's word, or the new one's. */
function calledBy(
  item: PlannedItem,
  mention: Mention | undefined,
  words: MethodWords | null,
): string {
  const isOwn = mention?.ingredient.match?.foodId === item.foodId;
  const called = isOwn ? mention.ingredient.item.name : calledIn(item, words);
  return called.replace(/(?<=chocolate )chip$/, 'chips');
}

const UNNAMED = {
  alone: 'No step names the {food}.',
  never: "The page's own steps never say when the {food} {goes} in.",
  instead: 'No step names the {food}; it goes in where {old} went.',
};

/** What a cook should know of a food that no step names. */
function unnamedText(
  item: PlannedItem,
  mention: Mention | undefined,
  { words, steps }: LedgerContext,
): string {
  const says = words?.unnamed ?? UNNAMED;
  const old = mention?.ingredient.item.name;
  const isOwn = mention?.ingredient.match?.foodId === item.foodId;
  const food = calledBy(item, mention, words);
  const isLost = mention !== undefined && !isOwn && stepByWord(mention, [], steps) === null;
  if (isLost && words === null)
    return UNNAMED.never
      .replace('{food}', food)
      .replace('{goes}', /[^s]s$/.test(food) ? 'go' : 'goes');
  return (old === undefined || isOwn ? says.alone : says.instead)
    .replace('{food}', food)
    .replace('{old}', old ?? '');
}

/** How the first new food of a swap is handled: told once, beside no step. */
function handlingText(
  { key, foodId }: PlannedItem,
  { plan, handled }: LedgerContext,
): string | null {
  const swap = plan.swaps.find((one) => one.key === key);
  return swap?.to[0]?.foodId === foodId ? (handled?.get(key) ?? null) : null;
}

function noteOf(
  item: PlannedItem,
  mention: Mention | undefined,
  context: LedgerContext,
): MethodNote {
  const { plan, words, steps, named } = context;
  const places = placesOf(steps);
  const { key, foodId, foodName: food, grams } = item;
  const first = mention === undefined ? undefined : named.get(mention.ingredient.key)?.[0];
  const byName = first === undefined ? undefined : places[first];
  const isOwn = mention !== undefined && mention.ingredient.match?.foodId === foodId;
  const step =
    byName ??
    stepSaying(calledIn(item, words), steps) ??
    (isOwn ? stepByWord(mention, context.mentions, steps) : null) ??
    (isOwn ? null : stepByHead(item, context)) ??
    stepOfSweeteners(foodId, steps);
  const base = { key, foodId, food, part: titleOf(plan, partOfItem(plan, item)), grams };
  if (step !== null)
    return {
      ...base,
      step,
      told: 'named',
      text: remainder(mention, calledBy(item, mention, words), grams, context),
    };
  const together = steps.findIndex(({ after }) => TOGETHER.test(after));
  if (together >= 0) return { ...base, step: together, told: 'together', text: null };
  const isNew = mention === undefined || mention.changed;
  if (steps.length === 0)
    return { ...base, step: null, told: 'unnamed', text: handlingText(item, context) };
  const text = isNew ? unnamedText(item, mention, context) : null;
  return { ...base, step: null, told: 'unnamed', text };
}

/** A food that has left: a step that still puts it in is said. */
function goneNote({ ingredient, part }: Mention, { plan }: LedgerContext): MethodNote[] {
  const { match, key } = ingredient;
  if (match === null) return [];
  const base = { key, foodId: match.foodId, food: match.foodName, part: titleOf(plan, part) };
  return [{ ...base, grams: 0, step: null, told: 'gone', text: null }];
}

/**
 * Where every food of the result goes in, in the order of the plan's items, then the foods that have
 * left. What no step puts in carries words for the cook.
 */
export function methodLedger(context: LedgerContext): MethodNote[] {
  const { plan, mentions } = context;
  const single = mentions.filter(
    (mention, at) =>
      mentions.findIndex((one) => one.ingredient.key === mention.ingredient.key) === at,
  );
  const owner = (item: PlannedItem): Mention | undefined =>
    single.find(({ ingredient }) => ingredient.key === item.key) ??
    single.find(({ goesInWith, items }) =>
      [...goesInWith, ...items].some(({ key }) => key === item.key),
    );
  const present = plan.items.filter(({ grams }) => grams > 0);
  const left = single.filter(
    ({ ingredient, changed, items }) =>
      changed && !items.some(({ foodId }) => foodId === ingredient.match?.foodId),
  );
  return [
    ...present.map((item) => noteOf(item, owner(item), context)),
    ...left.flatMap((mention) => goneNote(mention, context)),
  ];
}
