/** Where a handling is told: in which step, behind which of its sentences. */
import { hasTag } from '../../foods/tags.ts';
import type { RewrittenStep, Swap } from '../../model.ts';
import type { CueContext } from '../cues/cue-context.ts';
import { type Insertion, RANKS } from '../cues/insertion.ts';
import { keyed } from '../languages/method-words.ts';
import type { Mention } from '../naming/mention.ts';
import { isMade, shortName } from '../naming/method-names.ts';
import { boiledOf } from '../steps/boils-as.ts';
import { literal } from '../wording/name-patterns.ts';
import { sentencesOf } from '../wording/sentences.ts';
import type { Handling } from './handling.ts';
import { isTold, takesLong } from './spoken-handling.ts';

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

/** What goes in once the pot is off the heat: behind the last cooking, wherever it is named. */
const OFF_HEAT = /^(?:at the end, |stir (?:it )?in )off the heat\b/i;
const COOKS = /\b(?:cook|simmer|boil)\b/i;
const SERVES = /^(?:serve|divide|garnish|top|spoon|ladle)\b/i;

/** The last sentence of a step that cooks and does not serve; -1 when none does. */
const lastCooking = (text: string): number =>
  sentencesOf(text).findLastIndex((one) => COOKS.test(one) && !SERVES.test(one));

export const BOILS = /\b(?:boil\w*|cook the|package)\b/i;

/** Index of the first step that takes the swapped ingredient, of several the first that heats where the handling does; the part's first when none takes it. */
export function placeOf(
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
  const cooks = (at: number): boolean => {
    const text = texts[at] ?? '';
    return lastCooking(words === null ? text : keyed(text, words)) >= 0;
  };
  const cooking = OFF_HEAT.test(method)
    ? texts.findLastIndex((_, at) => at >= (first ?? 0) && cooks(at))
    : -1;
  if (cooking >= 0) return cooking;
  // What is made first is made before it is named at all.
  const own = mentions.find(({ ingredient }) => ingredient.key === key);
  if (first !== undefined && isMade(own?.newName ?? ''))
    return AHEAD.test(method) ? Math.min(first, course.firstStep) : first;
  if (own !== undefined && FOLDED_IN.test(method) && joinsLate(own))
    return named.find((at) => !boils(at)) ?? first ?? course.firstStep;
  const simmers = /^(?:simmer|boil)\b/i.test(method) ? named.find(boils) : undefined;
  const heated = HEATED.test(method)
    ? (simmers ?? named.find((at) => HEATS.test(texts[at] ?? '')))
    : undefined;
  const called = first === undefined ? firstWordOf(own) : null;
  const aside = called === null ? -1 : texts.findIndex((text) => called.test(text));
  if (aside >= 0) return aside;
  const together = texts.findLastIndex((text) => PUTS_TOGETHER.test(text));
  const coats = own?.role === 'coating' ? texts.findIndex((text) => COATS.test(text)) : -1;
  return heated ?? first ?? (coats >= 0 ? coats : Math.max(course.firstStep, together));
}

/** Index of the sentence of a step that takes what came in, else of one that names what it stands for; the first when none does. */
export function sentenceOf(text: string, { mention, swap }: Handling): number {
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

/** What is done in the pot that the page brings to a boil. */
export const IN_WATER = /^(?:steam|boil)\b/i;

const HEATS_WATER = /\bwater to (?:a |the )?(?:rolling )?boil\b/i;

/** Index of the sentence that boils the water for it; -1 when none does. */
const waterSentence = (method: string, text: string): number =>
  IN_WATER.test(method) ? sentencesOf(text).findIndex((one) => HEATS_WATER.test(one)) : -1;

/** 'Grate, salt, leave for 10 minutes and squeeze'. */
const WAITS = /\b(?:leave|stand|rest|soak|salt)\b[^;.]*\b\d+ ?min/i;
const HEATS_PAN = /\b(?:heat|melt|warm|preheat)\b/i;

/** Whether it keeps a cook from a pan that is hot already. */
function waitsOverHeat(handling: Handling, text: string): boolean {
  const before = sentencesOf(text).slice(0, sentenceOf(text, handling)).join(' ');
  return (
    WAITS.test(handling.method) && !isTold(handling.swap.method ?? '') && HEATS_PAN.test(before)
  );
}

/** Pieces are salted once they are cut. */
const CUTS = /^(?:peel[^.;]*\b(?:and|then) )?(?:cut|slice|chop|dice)\b/i;

/** A step as it is told: within the one that takes the food, or before it where it takes long. */
export function insertionOf(
  handling: Handling,
  text: string,
  at: number,
  step: RewrittenStep,
): Insertion {
  const { swap, method, mention } = handling;
  const made = mention?.newName !== undefined && isMade(mention.newName ?? '');
  const own = { at, rank: RANKS.use, behind: null, step };
  if (made || step.lang !== undefined || takesLong(method) || /^(?:Skip this step|$)/.test(text))
    return own;
  if (waitsOverHeat(handling, text)) return own;
  const water = waterSentence(method, text);
  if (water >= 0) return { ...own, behind: water };
  const cooked = OFF_HEAT.test(method) ? lastCooking(text) : -1;
  if (cooked >= 0) return { ...own, rank: RANKS.after, behind: cooked };
  // Nothing is sifted while a pan bubbles.
  const sentence = /^sift\b/i.test(method) ? 0 : sentenceOf(text, handling);
  const last = sentencesOf(text).length - 1;
  const late = FOLDED_IN.test(method) && mention !== undefined && joinsLate(mention);
  const isCut = /^salt\b/i.test(method) && CUTS.test(sentencesOf(text)[sentence] ?? '');
  const before = late || isCut ? sentence : sentence - 1;
  const behind = isTold(swap.method ?? '') ? toldBehind(method, text, last) : before;
  return { ...own, rank: isTold(swap.method ?? '') ? RANKS.after : RANKS.use, behind };
}
