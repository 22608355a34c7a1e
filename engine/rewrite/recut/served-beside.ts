/** What to serve a dish with, where what the page serves with it takes a serving past the budget. */
import { withoutAccents } from '../../accents.ts';
import type { MissingLine, RewrittenStep } from '../../model.ts';
import data from '../data/served-beside.json' with { type: 'json' };
import { isForeign, keyed, methodWords } from '../languages/method-words.ts';
import { capital } from '../naming/method-names.ts';
import { sentencesOf, withSentence } from '../wording/sentences.ts';
import { changedTo } from './changed-step.ts';
import { lastOwnSentence, servingStep } from './recut-places.ts';

type Words = Readonly<Record<string, string>>;

const KINDS: Readonly<Record<string, Words>> = data.kinds;
const WHY: Words = data.why;
/** Where not even what is served in its place has room. */
const NO_ROOM: Readonly<Record<string, Words>> = data.noRoom;

/** Net carbs of a plate of what is served in its place, g: 100 g of cauliflower (USDA SR 169986). */
const IN_ITS_PLACE_G = 3;

/** Net carbs of a serving, g, as counted and as the budget has them. */
export interface Room {
  counted: number;
  budget: number;
}

/** Whether a serving is past the budget by itself. */
export const isAbove = (room: Room | null): boolean =>
  room !== null && room.counted > room.budget + SAME_G;

/** Grams that are the same when rounded. */
const SAME_G = 0.5;

const isFull = (room: Room | null): boolean =>
  room !== null && !isAbove(room) && room.counted + IN_ITS_PLACE_G > room.budget;

/** 'To keep to the budget, ...' without that, of a serving that is past it. */
const withoutBudget = (said: string): string => capital(said.replace(/^[^:,]*[:,]\s*/, ''));

const plain = (text: string): string => withoutAccents(text).toLowerCase();

/** The sentence of the method that a missing line quotes. */
const quotedIn = ({ text }: MissingLine): string => /“([^”]+)”/.exec(text)?.[1] ?? '';

const LIST = /:|,[^,]*,/;

/** 'Steamed rice, scallions and sesame seeds, for serving' */
const LED_BY_RICE = /^(?:\p{L}+ ){0,3}(?:rice|quinoa|couscous)\b/iu;

/** A list of toppings names no one food that something is served in place of, unless it begins with one. */
const isList = ({ text, ...line }: MissingLine): boolean =>
  quotedIn({ text, ...line }) === '' && LIST.test(text) && !LED_BY_RICE.test(text);

const CRISP =
  /(?<!\b(?:chocolate|caramel|butterscotch|toffee|peanut butter) )\b(?:chips|crisps|crackers)\b/i;

/** The kind that is served with it; pita chips are chips. */
const kindOf = ({ kind, text }: MissingLine): string =>
  CRISP.test(text) ? 'chips or fries' : (kind ?? '');

/** Index of the step that serves the dish with it; -1 without a method. */
function stepServing(steps: readonly RewrittenStep[], line: MissingLine, language: string | null) {
  const quoted = quotedIn(line);
  const own =
    quoted === '' ? -1 : steps.findIndex((one) => plain(one.before ?? '').includes(quoted));
  if (own >= 0 || steps.length === 0) return own;
  const words = methodWords(language);
  return servingStep(
    steps.map(({ before, after }) =>
      before === null ? '' : words === null ? after : keyed(after, words),
    ),
  );
}

/** What is said of the first of `besides` that there are words for; null when there are none. */
function saidOf(
  besides: readonly MissingLine[],
  language: string | null,
  room: Room | null,
): { line: MissingLine; said: string } | null {
  const tag = methodWords(language)?.tag ?? (isForeign(language) ? '' : 'en');
  for (const line of besides) {
    const kind = kindOf(line);
    const full = isFull(room) ? NO_ROOM[kind]?.[tag] : undefined;
    const said = isList(line) ? undefined : (full ?? KINDS[kind]?.[tag]);
    if (said !== undefined) return { line, said: isAbove(room) ? withoutBudget(said) : said };
  }
  return null;
}

/** The one of `besides` that something is served in place of; null when there are no words for any. */
export const replacedOf = (
  besides: readonly MissingLine[],
  language: string | null,
  room: Room | null,
): MissingLine | null => saidOf(besides, language, room)?.line ?? null;

/** Whether something is told that fills the plate already. */
export const isServedBeside = (besides: readonly MissingLine[], language: string | null): boolean =>
  saidOf(besides, language, null) !== null;

/** What the sides of each kind are called in a method. */
const SIDES: Readonly<Record<string, string>> = {
  'rice or grain': '(?:rice|quinoa|couscous)',
  'pasta, noodles or dumplings': '(?:pasta|noodles|spaghetti|orzo)',
  'potatoes or starchy vegetable': '(?:mashed )?potato(?:es)?',
  'bread or rolls': '(?:bread|toast|rolls|baguette)',
};
const HOW =
  '(?:(?:some|the|your|a side of|a bed of|hot|warm|steamed|boiled|cooked|fluffy|plain|white|brown|basmati|jasmine|crusty|fresh|toasted|buttered|egg) )*';

/** The text with no 'over rice' where it stands alone behind a verb: 'Serve at once over rice.' */
function withoutSide(text: string, kind: string): string {
  const side = SIDES[kind];
  if (side === undefined) return text;
  const pattern = new RegExp(
    `(\\bserve[sd]?\\b[^.!;]*?),? (?:with|over|on|atop|on top of|alongside|together with) ${HOW}${side}(?=[.!;]|,? and enjoy\\b|$)`,
    'giu',
  );
  return text
    .replace(pattern, '$1')
    .replace(/(?<=[.!?] )Serve[.!]$/u, '')
    .trimEnd();
}

/** 'Serve over basmati rice with naan' -> 'Serve over cauliflower rice … with naan': one instruction, where more follows. */
function overCauliflower(text: string, kind: string): string {
  if (kind !== 'rice or grain') return text;
  const pattern = new RegExp(
    `(\\b(?:serve|spoon|ladle)[sd]?\\b[^.!;]*? (?:over|with|on)) ${HOW}rice(?= (?:with|topped|alongside|garnished|and (?:top|sprinkle|garnish|scatter|pour))\\b)`,
    'iu',
  );
  return text.replace(pattern, '$1 cauliflower rice (100 g has about 3 g net carbs)');
}

/** The text with nothing of a side that it leaves open: 'If using potatoes, add those first', '(and potatoes if using)'. */
function withoutOptional(text: string, kind: string): string {
  const side = SIDES[kind];
  if (side === undefined) return text;
  const using = "if (?:you(?:['’]re| are) )?(?:using|adding)";
  const inBrackets = new RegExp(
    `\\s?\\((?:and |or |plus )?(?:the )?${side},? ${using}[^()]*\\)`,
    'gi',
  );
  const first = new RegExp(`^${using} (?:the )?${side}\\b`, 'i');
  const kept = sentencesOf(text.replace(inBrackets, '')).filter((one) => !first.test(one.trim()));
  return kept.length === 0 ? text : kept.join(' ');
}

/**
 * The steps with what is served in place of the first of `besides` that there are words for in the recipe's
 * language; the same steps when there are none. Without `room`, what is served instead is taken to fit.
 */
export function withServedBeside(
  steps: readonly RewrittenStep[],
  besides: readonly MissingLine[],
  language: string | null,
  room: Room | null = null,
): RewrittenStep[] {
  const found = saidOf(besides, language, room);
  const at = found === null ? -1 : stepServing(steps, found.line, language);
  const step = steps[at];
  if (found === null || step === undefined) return [...steps];
  const tag = methodWords(language)?.tag ?? 'en';
  const why = WHY[tag] ?? '';
  const kind = kindOf(found.line);
  const open = steps.map((one) => {
    const after =
      tag === 'en' && one.before !== null ? withoutOptional(one.after, kind) : one.after;
    return after === one.after ? one : changedTo(one, after, why);
  });
  const own = open[at] ?? step;
  const instead = tag === 'en' && !isFull(room) ? overCauliflower(own.after, kind) : own.after;
  if (instead !== own.after)
    return open.with(at, changedTo(own === step ? step : { ...own, why: step.why }, instead, why));
  const without = tag === 'en' ? withoutSide(own.after, kind) : own.after;
  const after = withSentence(without, lastOwnSentence(without), found.said);
  return open.with(at, changedTo(own === step ? step : { ...own, why: step.why }, after, why));
}
