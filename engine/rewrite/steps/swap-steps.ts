/** Handling that a single swap calls for, as steps before the one that uses what came in. */
import { hasTag } from '../../foods/tags.ts';
import type { Ingredient, RewrittenStep, Swap } from '../../model.ts';
import type { CueContext } from '../cues/cue-context.ts';
import { fill } from '../cues/cue-text.ts';
import { isPrepared } from '../cues/fitting-cues.ts';
import { type Insertion, inserted, RANKS } from '../cues/insertion.ts';
import { thinsIcing } from '../cues/thin-icing.ts';
import {
  joinedWith,
  keyed,
  localFoodName,
  localHandling,
  type MethodWords,
} from '../languages/method-words.ts';
import { companionsOf, isCutUp } from '../naming/companions.ts';
import type { Mention } from '../naming/mention.ts';
import { capital, isMade, listOf, shortName } from '../naming/method-names.ts';
import { isNamedIn, literal } from '../wording/name-patterns.ts';
import { sentencesOf } from '../wording/sentences.ts';
import { boiledOf } from './boils-as.ts';
import { leftToDo, withoutRoasting } from './done-by-page.ts';
import {
  BY_PACKET,
  clauseHolds,
  heldFor,
  isTold,
  takesLong,
  withObject,
} from './spoken-handling.ts';

const own = (swap: Swap, ingredients: readonly Ingredient[]): Ingredient | undefined =>
  ingredients.find(({ key }) => key === swap.key);

/** What a swap says of its handling, and the ingredient it is for. */
interface Handling {
  swap: Swap;
  method: string;
  /** Whether each clause of the method holds for this dish. */
  holds: readonly boolean[];
  /** The method as it is told in English. */
  spoken: string;
  mention: Mention | undefined;
  old: string;
  /** What it is done with, where that is more than what came in. */
  object?: string | undefined;
}

const THINS = /\ban icing takes\b/i;

/** Clauses that hold for the dish; those of an icing only where the swapped sugar is one's. */
const clausesThatHold = (method: string, whole: string, thins: boolean): boolean[] =>
  method
    .split(/;\s*/)
    .map((clause) => clauseHolds(clause, whole) && (thins || !THINS.test(clause)));

/** A handling without the clauses that do not hold. */
function heldClauses(text: string, holds: readonly boolean[]): string {
  if (holds.every(Boolean)) return text;
  const clauses = text.split(/;\s*/);
  if (clauses.length !== holds.length) return text;
  const kept = clauses
    .filter((_, at) => holds[at])
    .join('; ')
    .trim();
  return kept === '' || /[.!]$/.test(kept) ? kept : `${kept}.`;
}

/** The method without its clauses about the food that is left out altogether; in other languages it is known whole. */
function withoutGone(
  method: string,
  { keptGrams }: Swap,
  mention: Mention | undefined,
  byClause: boolean,
): string {
  if (mention === undefined || keptGrams > 0 || !isNamedIn(method, mention)) return method;
  if (!byClause) return '';
  const clauses = method.split(/;\s*/).filter((clause) => !isNamedIn(clause, mention));
  const text = clauses.join('; ');
  return text === '' || /[.!]$/.test(text) ? text : `${text}.`;
}

function handlingOf(swap: Swap, context: CueContext, texts: readonly string[]): Handling {
  const { mentions, ingredients, method: said } = context;
  const mention = mentions.find(({ ingredient }) => ingredient.key === swap.key);
  const { method = '' } = swap;
  const kept = withoutGone(method, swap, mention, context.words === null);
  return {
    swap,
    method: kept,
    spoken: kept,
    holds: clausesThatHold(kept, said, thinsIcing(swap, context, texts)),
    mention,
    old: own(swap, ingredients)?.item.name ?? swap.from?.food ?? '',
  };
}

/** Whether the words name one of the foods that came in. */
const namesFood = (text: string, { to }: Swap): boolean =>
  to.some(({ food }) => {
    const [last = ''] = shortName(food).split(' ').slice(-1);
    return text.toLowerCase().includes(last.toLowerCase().slice(0, -1));
  });

const CUTS_FIRST = /^(?:grate|shred|slice|dice|chop|peel|cut|steam|boil|salt)\b/i;

/** What a handling is of: not what it says goes in with it. */
function handledIn(swap: Swap): Swap['to'] {
  const aside = companionsOf(swap);
  const cut = CUTS_FIRST.test(swap.method ?? '')
    ? swap.to.filter((one) => isCutUp(one.foodId))
    : [];
  // Nobody grates an egg.
  return cut.length > 0 ? cut : swap.to.filter(({ foodId }) => !aside.has(foodId));
}

/** A head that is steamed or boiled is cut first, where the page cuts nothing of the kind; 'before the sauce' where there is one. */
function inFlorets(text: string | null, food: string, said: string): string | null {
  const told = /\bsauce\b/i.test(said) ? text : (text?.replace(/ before the sauce\b/i, '') ?? null);
  const [, verb] = /^(Steam|Boil) the (?:cauliflower|broccoli)\b/i.exec(told ?? '') ?? [];
  if (told === null || verb === undefined || /floret/i.test(said)) return told;
  const rest = told.slice(`${verb} the ${food}`.length);
  return `Cut the ${food} into florets and ${verb.toLowerCase()} them${rest}`;
}

/** How many bought bases a line has: each is pressed into a plate of its own. */
const basesOf = (mention: Mention | undefined): number =>
  mention?.ingredient.item.amounts.find(({ unit }) => unit === null)?.quantity ?? 1;

/** 'press into a greased pie plate', for as many as the page has, with the butter melted. */
function pressed(method: string, list: string, mention: Mention | undefined): string {
  const bases = basesOf(mention);
  const plates =
    Number.isInteger(bases) && bases > 1
      ? method.replace(/\ba greased pie plate\b/i, `${bases} greased pie plates`)
      : method;
  const melts = /\bbutter\b/.test(list) && /^press into\b/i.test(plates);
  return melts ? `melt the butter and mix it in, ${plates}` : plates;
}

/** 'Slice the eggplant 1 cm thick'; 'Make the curd of egg and butter: stir it'. */
function englishText(
  { swap, spoken: whole, holds, mention, object }: Handling,
  said: string,
  place: string,
): string | null {
  const method = heldClauses(whole, holds);
  if (object !== undefined) return method.replace(/^dry(?: it)?\b/i, `Dry ${object}`);
  const list = listOf([...new Set(handledIn(swap).map(({ food }) => shortName(food)))]);
  const name = mention?.newName;
  const lower = `${method.charAt(0).toLowerCase()}${method.slice(1)}`;
  if (name && isMade(name)) {
    const made = `Make the ${name} of ${list}`;
    if (method === '') return `For the ${name}, mix ${list}.`;
    return `${made}: ${pressed(lower, list, mention)}${unspoken(method, swap)}`;
  }
  if (method === '') return null;
  const known = namesFood(place, swap) || (mention !== undefined && isNamedIn(place, mention));
  const ofStep = known && /^[a-z]+ (?:the|a) /i.test(method);
  const alone = namesFood(method, swap) || isTold(method) || ofStep;
  return (
    inFlorets(withObject(method, list), list, said) ??
    (alone ? method : `${capital(list)}: ${lower}`)
  );
}

/** What is dry in a thing made first and its handling does not speak of: 'stir in the allulose'. */
function unspoken(method: string, swap: Swap): string {
  if (!TOASTS.test(method)) return '';
  const names = handledIn(swap)
    .filter(({ food }) => !namesFood(method, { ...swap, to: [{ foodId: '', food, grams: 0 }] }))
    .map(({ food }) => shortName(food));
  return names.length === 0 ? '' : ` Stir in the ${listOf([...new Set(names)])}.`;
}

const TOASTS = /^toast\b[^;]*\bdry pan\b/i;

/** The same in another language; null where its handling has not been put into it. */
function localText({ swap, method, holds, old }: Handling, words: MethodWords): string | null {
  const whole = localHandling(method, words);
  if (whole === null) return null;
  const local = heldClauses(whole, holds);
  if (local === '') return null;
  // 'In den letzten 10 Minuten zugeben' says what only where its English does.
  if (isTold(swap.method ?? '') && withObject(method, old) === null) return capital(local);
  const names = handledIn(swap).map(
    ({ foodId, food }) => localFoodName(foodId, words) ?? shortName(food),
  );
  const frame = swap.keptGrams > 0 ? words.swaps.partly : words.swaps.instead;
  return capital(
    frame
      .replace('{list}', joinedWith([...new Set(names)], words.and))
      .replace('{old}', old)
      .replace('{method}', local),
  );
}

/** The step for one swap; in English, and marked so, where the recipe's language has no words for it. */
function stepOf(handling: Handling, context: CueContext, place: string): RewrittenStep | null {
  const { words } = context;
  const local = words === null ? null : localText(handling, words);
  const text = local ?? englishText(handling, context.method, place);
  if (text === null) return null;
  const why =
    words === null
      ? `What comes in is handled otherwise than the ${handling.old || 'original'}.`
      : words.swaps.why.replace('{old}', handling.old);
  const inEnglish = words !== null && local === null;
  return {
    section: null,
    before: null,
    after: fill(text, inEnglish ? { ...context, words: null } : context),
    change: 'inserted',
    why,
    ...(inEnglish ? { lang: 'en' } : {}),
  };
}

/** Whether all that came in is bought like pasta, with its own directions. */
const boilsAsPasta = ({ to }: Swap): boolean =>
  to.length > 0 &&
  to.every(({ food }) => /noodle|pasta|spaghetti|couscous|rice$/i.test(shortName(food)));

/** Sentences of all steps that name what came in. */
const sentencesNaming = ({ mention }: Handling, texts: readonly string[]): string[] => {
  const name = mention?.newName ?? null;
  if (name === null) return [];
  return texts.flatMap(sentencesOf).filter((sentence) => sentence.includes(name));
};

/** Where what no step names goes in. */
const PUTS_TOGETHER =
  /\b(?:assembl\w*|top(?:ped)? with|serve|build|fill|garnish\w*|combine everything)\b/i;
const COATS = /\b(?:dredge|coat|bread|dip)\b/i;
/** What rests so long that it is begun before all else. */
const AHEAD = /\b(?:chill|overnight|an hour|\d+ hours)\b/i;
const HEATED = /^(?:simmer|boil|roast|fry|brown|cook|melt|warm|heat|toast)\b/i;
const HEATS =
  /\b(?:cook|simmer|boil|fry|roast|bake|heat|oven|pan|pot|saucepan|skillet|saut[eé]|melt|warm|toast|grill)\b/i;

/** What is put under once the rest is boiled. */
const FOLDED_IN = /\bfold (?:it|them) in\b/i;

/** Whether none of what came in is boiled with what stays. */
const joinsLate = (mention: Mention): boolean => {
  const own = mention.ingredient.match?.foodId;
  const boiled = boiledOf(mention);
  return boiled?.every(({ foodId }) => foodId === own) === true && boiled.length > 0;
};

/** Words of a wrap's name that say what it is of, not which one. */
const OF_GRAIN = /^(?:flour|corn|maize|wheat|whole|white|large|small|medium|soft)$/i;

/** A wrap by the first word of its name: 'lay the gorditas out' of 'gordita flour tortillas'. */
function firstWordOf(mention: Mention | undefined): RegExp | null {
  const { item, match } = mention?.ingredient ?? {};
  const word = item?.name.split(/[\s-]+/).find((one) => !OF_GRAIN.test(one));
  if (word === undefined || word.length < 4 || !hasTag(match?.foodId ?? '', 'wrap-kind'))
    return null;
  return new RegExp(`\\b${literal(word)}`, 'i');
}

/** Index of the first step that takes the swapped ingredient, of several the first that heats where the handling does; the part's first when none takes it. */
function placeOf(
  { key, method = '' }: Swap,
  { course, mentions, words }: CueContext,
  texts: readonly string[],
): number {
  const boils = (at: number): boolean => {
    const text = texts[at] ?? '';
    return BOILS.test(words === null ? text : keyed(text, words));
  };
  const named = (key === null ? undefined : course.named.get(key)) ?? [];
  const [first] = named;
  // What is made first is made before it is named at all.
  const own = mentions.find(({ ingredient }) => ingredient.key === key);
  if (first !== undefined && isMade(own?.newName ?? ''))
    return AHEAD.test(method) ? Math.min(first, course.firstStep) : first;
  if (own !== undefined && FOLDED_IN.test(method) && joinsLate(own))
    return named.find((at) => !boils(at)) ?? first ?? course.firstStep;
  const heated = HEATED.test(method) ? named.find((at) => HEATS.test(texts[at] ?? '')) : undefined;
  const called = first === undefined ? firstWordOf(own) : null;
  const aside = called === null ? -1 : texts.findIndex((text) => called.test(text));
  if (aside >= 0) return aside;
  const together = texts.findLastIndex((text) => PUTS_TOGETHER.test(text));
  const coats = own?.role === 'coating' ? texts.findIndex((text) => COATS.test(text)) : -1;
  return heated ?? first ?? (coats >= 0 ? coats : Math.max(course.firstStep, together));
}

/** Index of the sentence of a step that takes what came in, else of one that names what it stands for; the first when none does. */
function sentenceOf(text: string, { mention, swap }: Handling): number {
  const sentences = sentencesOf(text);
  const saying = (names: readonly string[]): number => {
    if (names.length === 0) return -1;
    const said = new RegExp(names.map(literal).join('|'), 'i');
    return sentences.findIndex((sentence) => said.test(sentence));
  };
  const fresh = saying(swap.to.map(({ food }) => shortName(food)));
  return Math.max(0, fresh >= 0 ? fresh : saying(mention?.names ?? []));
}

/** The sentence behind which a handling is told: one about baking behind the last that bakes. */
function toldBehind(method: string, text: string, last: number): number {
  if (!/^bake\b/i.test(method)) return last;
  const baking = sentencesOf(text).findLastIndex((sentence) => /\bbake\b/i.test(sentence));
  return baking < 0 ? last : baking;
}

/** A step as it is told: within the one that takes the food, or before it where it takes long. */
function insertionOf(handling: Handling, text: string, at: number, step: RewrittenStep): Insertion {
  const { swap, method, mention } = handling;
  const made = mention?.newName !== undefined && isMade(mention.newName ?? '');
  const own = { at, rank: RANKS.use, behind: null, step };
  if (made || step.lang !== undefined || takesLong(method) || /^(?:Skip this step|$)/.test(text))
    return own;
  const water = waterSentence(method, text);
  if (water >= 0) return { ...own, behind: water };
  // Nothing is sifted while a pan bubbles.
  const sentence = /^sift\b/i.test(method) ? 0 : sentenceOf(text, handling);
  const last = sentencesOf(text).length - 1;
  const late = FOLDED_IN.test(method) && mention !== undefined && joinsLate(mention);
  const before = late ? sentence : sentence - 1;
  const behind = isTold(swap.method ?? '') ? toldBehind(method, text, last) : before;
  return { ...own, rank: isTold(swap.method ?? '') ? RANKS.after : RANKS.use, behind };
}

/** Pasta or rice that the page's line had cooked already, and no step boils. */
function cookedFirst(context: CueContext, texts: readonly string[]): [string, Insertion][] {
  if (context.words !== null) return [];
  return context.mentions.flatMap((mention): [string, Insertion][] => {
    const { ingredient, changed, newName } = mention;
    const [at] = context.course.named.get(ingredient.key) ?? [];
    // What stays of the page's own is cooked already.
    const boiled = (boiledOf(mention) ?? []).filter(
      ({ foodId }) => foodId !== ingredient.match?.foodId && !foodId.endsWith('-cooked'),
    );
    const said = `${ingredient.item.preparation ?? ''} ${ingredient.line.note ?? ''}`;
    if (!changed || newName === null || at === undefined || boiled.length === 0) return [];
    if (!/\bcooked\b/i.test(said) || texts.some((text) => BOILS.test(text))) return [];
    const list = listOf([...new Set(boiled.map(({ foodName }) => shortName(foodName)))]);
    const step = inserted(`Cook the ${list} as its packet says.`, 'It is bought dry.');
    return [[`cooked ${ingredient.key}`, { at, rank: RANKS.use, behind: -1, step }]];
  });
}

/** What is done in the pot that the page brings to a boil. */
const IN_WATER = /^(?:steam|boil)\b/i;
const HEATS_WATER = /\bwater to (?:a |the )?(?:rolling )?boil\b/i;

/** Index of the sentence that boils the water for it; -1 when none does. */
const waterSentence = (method: string, text: string): number =>
  IN_WATER.test(method) ? sentencesOf(text).findIndex((one) => HEATS_WATER.test(one)) : -1;

/** What a step of the page leaves to do, told behind its own sentences; null where it does nothing of it. */
function besidePage(
  whole: Handling,
  context: CueContext,
  texts: readonly string[],
): Insertion | 'nothing' | null {
  if (context.words !== null) return null;
  const left = leftToDo(whole.method, whole.mention, texts);
  if (left === null) return null;
  if (left.method === '') return 'nothing';
  // What stays is in the same pot.
  const object = whole.swap.keptGrams > 0 && /^dry\b/i.test(left.method) ? 'all of it' : undefined;
  const { at, behind, ahead } = left;
  const spoken = { ...whole, spoken: capital(left.method), holds: [true], object };
  const step = stepOf(spoken, context, texts[at] ?? '');
  if (step === null) return 'nothing';
  const { after } = step;
  const told = ahead ? `Once drained, ${after.charAt(0).toLowerCase()}${after.slice(1)}` : after;
  return { at, behind, rank: RANKS.after, step: { ...step, after: told } };
}

/** A pot that goes on cooking with what comes in needs no other one. */
const COOKS_ON = /\bcontinue (?:to (?:cook|simmer|boil)|cooking|simmering|boiling)\b/i;

const BOILS = /\b(?:boil\w*|cook the|package)\b/i;

const ONCE = /; (?=once the water boils\b)/i;

/** What is made ahead and cooked in the page's own pot: the making where it stands, the cooking in the step that cooks. */
function cookedLater(
  put: Insertion,
  { mention, method }: Handling,
  { course }: CueContext,
  texts: readonly string[],
): { first: Insertion; last: Insertion } | null {
  const at = (course.named.get(mention?.ingredient.key ?? '') ?? []).find((one) => one >= put.at);
  const [making, cooking, ...more] = put.step.after.split(/;\s+/);
  if (at === undefined || making === undefined || cooking === undefined) return null;
  if (!ONCE.test(method) || more.length > 0) return null;
  const names = mention?.names ?? [];
  const behind = sentencesOf(texts[at] ?? '').findIndex((sentence) =>
    [...names, mention?.newName ?? ''].some(
      (name) => name !== '' && sentence.toLowerCase().includes(name.toLowerCase()),
    ),
  );
  const told = (after: string): RewrittenStep => ({ ...put.step, after });
  return {
    first: { ...put, step: told(`${making}.`) },
    last: { at, behind: Math.max(0, behind), rank: RANKS.after, step: told(capital(cooking)) },
  };
}

/** Nothing is sifted for a step that does not name it. */
const isIdle = (
  { key, method = '' }: Swap,
  { course }: CueContext,
  texts: readonly string[],
): boolean =>
  /^sift\b/i.test(method) &&
  key !== null &&
  (course.named.get(key) ?? []).length === 0 &&
  !texts.some((text) => ICING_OF_ALL.test(text));

/** What takes icing sugar without its name. */
const ICING_OF_ALL =
  /\b(?:frosting|icing|glaze|topping|cream|filling) ingredients\b|\ball (?:of )?(?:the )?ingredients\b/i;

/**
 * What swaps say of the handling of their foods, each once, unless a cue of the method tells it already.
 * `texts`: the method's own steps as they read now.
 */
export function swapSteps(context: CueContext, texts: readonly string[]): Insertion[] {
  const steps = new Map<string, Insertion>(cookedFirst(context, texts));
  for (const swap of context.plan.swaps) {
    const same = `${swap.id}.${swap.method}`;
    if (steps.has(same) || isPrepared(swap, context)) continue;
    if (isIdle(swap, context, texts)) continue;
    const at = placeOf(swap, context, texts);
    const text = texts[at] ?? '';
    const whole = handlingOf(swap, context, texts);
    const sentence = sentencesOf(text)[sentenceOf(text, whole)] ?? '';
    if (IN_WATER.test(whole.method) && COOKS_ON.test(sentence)) continue;
    const beside = besidePage(whole, context, texts);
    if (beside === 'nothing') continue;
    if (beside !== null) {
      steps.set(same, beside);
      continue;
    }
    const method =
      context.words === null ? withoutRoasting(whole.method, whole.mention, texts) : whole.method;
    const spoken = heldFor(method, sentence);
    if (spoken === '' && whole.method !== '') continue;
    const handling = { ...whole, method, spoken };
    if (
      boilsAsPasta(swap) &&
      [sentence, ...sentencesNaming(whole, texts)].some((one) => BY_PACKET.test(one))
    )
      continue;
    const step = stepOf(handling, context, text);
    if (step === null) continue;
    const put = insertionOf(handling, text, at, step);
    const cooked = cookedLater(put, whole, context, texts);
    steps.set(same, cooked === null ? put : cooked.first);
    if (cooked !== null) steps.set(`${same} cooked`, cooked.last);
  }
  return [...steps.values()];
}
