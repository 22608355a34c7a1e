/** Handling that the page's own step does already: nothing is boiled twice, nor grated twice. */
import type { Mention } from '../naming/mention.ts';
import { shortName } from '../naming/method-names.ts';
import { bakeMinutes } from '../oven/oven-heat.ts';
import { literal } from '../wording/name-patterns.ts';
import { sentencesOf } from '../wording/sentences.ts';

interface Doing {
  /** A handling's first clause, up to where the next begins. */
  clause: RegExp;
  /** What the page's sentence says when it does the same. */
  page: RegExp;
  /** What it must say as well, in that sentence or soon behind it. */
  until?: RegExp;
  /** What heats it there, where it is said soon behind. */
  heats?: RegExp;
}

const IN_POT =
  /\b(?:boil(?:ing)?|steam|simmer|parboil|pressure cook|(?:cook|cover|put|place)\b[^.;]*\b(?:water|pot|saucepan))\b/i;
const COOKED = /\b(?:tender|soft|done|\d+ ?min(?:ute)?s?)\b/i;

const DOINGS: readonly Doing[] = [
  {
    clause:
      /^(?:steam|boil|simmer)\b[^;,]*?\b(?:tender|soft|\d+ minutes)\b(?:,? or [^;,]*)?[,;]?\s*(?:(?:then|and)\s+)?/i,
    page: IN_POT,
    until: COOKED,
  },
  // 'Boil, drain and dry.'
  { clause: /^(?:steam|boil|simmer),\s*/i, page: IN_POT, until: COOKED },
  {
    clause: /^(?:warm|heat)\b[^;.]*\bsmooth\b[.;]?\s*/i,
    page: /\b(?:melt\w*|microwave|bowl|pan|saucepan)\b/i,
    until: /\b(?:melt\w*|smooth)\b/i,
    heats: /\b(?:melt\w*|microwave|heat|simmering)\b/i,
  },
  {
    clause: /^warm\b[^;.]*\bcrack\b[.;]?\s*/i,
    page: /\b(?:warm|heat|toast|char|grill|microwave)\b/i,
  },
  {
    clause: /^beat with soda water\b[^.;]*[.;]?\s*/i,
    page: /\b(?:whisk|beat|stir|mix|combine)\b/i,
    until: /\b(?:batter|smooth)\b/i,
    heats: /\b(?:batter|smooth)\b/i,
  },
  {
    clause: /^(?:grate|shred)[,;]?\s*(?:and\s+)?/i,
    page: /\b(?:grate|shred)\b/i,
  },
  {
    clause: /^(?:slice|dice|chop|cube) (?:thinly|small|finely)?[,;]?\s*(?:and\s+)?/i,
    page: /\b(?:slice|dice|chop|cube)\b/i,
  },
];

/** Sentences behind the one that puts it in, within which it gets soft. */
const SOON = 3;
const BOILS = /\b(?:boil|steam|simmer|cook|bake)\b/i;
const DRAINS = /\bdrain\b/i;
/** What only looks at it: 'while the potatoes boil'. */
const LOOKS = /\b(?:while|once|when|as|until) (?:the |your )?[^,.;]*,?/gi;

export interface LeftToDo {
  /** Index of the step that does the first of it. */
  at: number;
  /** Index of its last sentence about that. */
  behind: number;
  /** What is left of the handling; empty when nothing is. */
  method: string;
  /** Whether the next sentence drains it and goes on at once. */
  ahead: boolean;
}

interface Found {
  at: number;
  behind: number;
  drains: boolean;
  ahead?: boolean;
}

/** Where the page does the same with what came in. */
function placeOf(
  { page, until, heats = BOILS }: Doing,
  name: RegExp,
  texts: readonly string[],
): Found | null {
  for (const [at, text] of texts.entries()) {
    const sentences = sentencesOf(text.replace(/;\s+(?=\p{Ll})/gu, '. '));
    for (const [index, sentence] of sentences.entries()) {
      const said = sentence.replace(LOOKS, '');
      if (!name.test(said) || !page.test(said)) continue;
      if (until === undefined) return { at, behind: lastOf(text, name, page), drains: false };
      const soon = sentences.slice(index, index + SOON + 1).join(' ');
      if (!until.test(sentence) && !(until.test(soon) && heats.test(soon))) continue;
      const drained = drainedAt(at, texts);
      if (drained !== null) return { ...drained, drains: true };
      const boiled = sentencesOf(text).findIndex((one) => until.test(one) && heats.test(one));
      return { at, behind: Math.max(0, boiled), drains: false };
    }
  }
  return null;
}

/** Steps behind the one that boils, within which it is drained. Own choice. */
const LATER_STEPS = 3;

/** The sentence of a step, or of one soon behind it, that drains what it boiled; null where none does. */
function drainedAt(from: number, texts: readonly string[]): Omit<Found, 'drains'> | null {
  for (let at = from; at <= from + LATER_STEPS; at += 1) {
    const behind = sentencesOf(texts[at] ?? '').findIndex((one) => DRAINS.test(one));
    const said = sentencesOf(texts[at] ?? '')[behind] ?? '';
    if (behind >= 0)
      return GOES_ON.test(said) ? { at, behind: behind - 1, ahead: true } : { at, behind };
  }
  return null;
}

/** 'Drain, add the milk and mash'. */
const GOES_ON = /\bdrain\b.*\b(?:mash|add|stir|mix|toss|beat|return)\b/i;

/** 'then mash it with the butter and the rest', where a step of the page mashes. */
const MASHED = /,? (?:and |then )*mash it with the ([^,;.]+?)(?: and the rest)?\./i;

/** 'dry and blend', where a step of the page mashes or blends. */
const BLENDED = /(?:,| and|, and) (?:blend|mash)(?: it)?(?: smooth)?(?=\.?$)/i;

const lastOf = (text: string, name: RegExp, page: RegExp): number =>
  Math.max(
    0,
    sentencesOf(text).findLastIndex((one) => name.test(one) && page.test(one)),
  );

/**
 * What a handling leaves to do where a step of the page does its first clause with the food that came in;
 * null where none does. `texts`: the method's own steps as they read now.
 */
export function leftToDo(
  method: string,
  mention: Mention | undefined,
  texts: readonly string[],
): LeftToDo | null {
  const names = (mention?.newName ?? '')
    .split(/, | and /)
    .flatMap((name) => [name, name.replace(/ mash$/, '')])
    .filter((name) => name.length > 2);
  const fresh = names.filter((name) => name !== mention?.ingredient.item.name);
  const doing = DOINGS.find(({ clause }) => clause.test(method));
  if (fresh.length === 0 || doing === undefined) return null;
  const name = new RegExp(fresh.map(literal).join('|'), 'i');
  const found = placeOf(doing, name, texts);
  if (found === null) return null;
  const rest = method.replace(doing.clause, '');
  const left = found.drains ? rest.replace(/^drain(?: well)?(?:,| and)\s*/i, '') : rest;
  const mashes = texts.slice(found.at).some((text) => /\b(?:mash|blend|pur[eé]e|beat)/i.test(text));
  const told = (mashes ? left.replace(MASHED, '; the $1 goes in as you mash.') : left).replace(
    mashes ? BLENDED : /$^/,
    '',
  );
  const isDone = /^(?:drain and )?dry\.?$/i.test(told);
  const { at, behind, ahead = false } = found;
  return { at, behind, ahead, method: isDone ? '' : told };
}

/** A handling that ends in the oven: 'Salt, blot and roast at 220 °C.' */
const ROASTED_LAST = /^(?<first>[^;]*?)(?:,| and|, and) roast at \d[^;.]*\./i;
const BAKES = /\b(?:bake|roast)\b/i;
/** Cooked in hot fat, once or twice. */
const FRIES_IN_OIL = /\b(?:deep[- ]?fr\w+|(?:fry|blanch|cook)\b[^.;]*\boil)\b/i;

/** A handling that ends in a bake of its own: 'Blot, toss with oil and bake 25-30 minutes at 200 °C'. */
const BAKED_LAST =
  /^(?<first>[^;]*?),? (?:and )?bake (?<low>\d+)-(?<high>\d+) minutes at [^;.]*(?:; put it in before [^;.]*)?\.?$/i;
/** Minutes that no one waits for. */
const ABOUT = 3;
const FIVES = 5;

/** The same with what is left of its bake, where the page bakes what came in for a time of its own. */
function withoutBaking(
  method: string,
  mention: Mention | undefined,
  texts: readonly string[],
): string | null {
  const { first, low = '', high = '' } = BAKED_LAST.exec(method)?.groups ?? {};
  const own = mention?.ingredient.match?.foodId;
  const fresh = (mention?.items ?? []).filter(({ foodId }) => foodId !== own);
  if (first === undefined || fresh.length === 0) return null;
  const names = new RegExp(
    fresh.map(({ foodName }) => literal(shortName(foodName))).join('|'),
    'i',
  );
  const step = texts.find((text) => names.test(text) && bakeMinutes(text) !== null);
  const page = step === undefined ? null : bakeMinutes(step);
  if (page === null) return null;
  const done = first.replace(/, (?=[^,]*$)/, ' and ');
  const ahead = Math.round((Number(low) - page) / FIVES) * FIVES;
  if (ahead <= ABOUT) return `${done}.`;
  const stays = (mention?.items.length ?? 0) > fresh.length;
  return stays
    ? `${done}; bake it by itself for about ${ahead} minutes, then go on with the rest.`
    : `${done}; it takes ${low}-${high} minutes in the oven in all.`;
}

const FRIED_SHAPE = /\b(?:fries|chips|wedges|sticks)\b/i;

/** A handling without its roasting, where a step of the page bakes what came in till it is done. */
export function withoutRoasting(
  method: string,
  mention: Mention | undefined,
  texts: readonly string[],
): string {
  const baked = withoutBaking(method, mention, texts);
  if (baked !== null) return baked;
  const name = mention?.newName ?? '';
  const first = ROASTED_LAST.exec(method)?.groups?.first;
  if (name === '' || first === undefined || (mention?.items.length ?? 0) > 1) return method;
  const done = new RegExp(`\\buntil (?:the )?${literal(name)}\\b`, 'i');
  const sentences = texts.flatMap(sentencesOf);
  const bakes = sentences.some((one) => BAKES.test(one) && done.test(one));
  // What the page fries is not roasted as well.
  const named = new RegExp(`\\b${literal(name)}\\b`, 'i');
  const fries =
    sentences.some((one) => FRIES_IN_OIL.test(one)) &&
    !sentences.some((one) => BAKES.test(one) && named.test(one));
  return bakes || (fries && FRIED_SHAPE.test(sentences.join(' ')))
    ? `${first.replace(/, (?=[^,]*$)/, ' and ')}.`
    : method;
}
