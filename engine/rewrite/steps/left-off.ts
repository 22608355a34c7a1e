/** Toppings and dustings in no figure that take a serving past the budget, marked in the step that puts them on. */
import type { MissingLine, RewrittenStep } from '../../model.ts';
import data from '../data/left-off.json' with { type: 'json' };
import { isForeign, type MethodWords, methodWords } from '../languages/method-words.ts';
import { isSaidIn } from '../naming/foreign-forms.ts';
import type { Mention } from '../naming/mention.ts';
import { capital } from '../naming/method-names.ts';
import { sentencesOf, withSentence } from '../wording/sentences.ts';
import { withReason } from './step-reasons.ts';

type Words = Readonly<Record<string, string>>;

const SAYS: Words = data.says;
/** The same of a serving that is past the budget by itself. */
const SAYS_ABOVE: Words = data.above;
const WHY: Words = data.why;

/** What the page says of it already. */
const IS_MARKED = /\b(?:keep|stay) (?:to|within) the budget\b|\bpast the budget without\b/i;

/** From this on (g of net carbs in a serving) one of several is marked, and one that stands alone: a pinch is not. Own choice. */
const LEAST_G = { several: 2, alone: 1 };

const SERVES =
  /\b(?:serv|garnish|sprinkl|strew|scatter|top|dust|decorat|drizzl|scoop|finish|add|spoon|if desired|optional)/i;
/** What is made or bought to be put on: 'whip the cream' only makes it. */
const NO_AMOUNT = /\bno amount\b/;

/** 'naan bread or rice' of a line with a choice. */
function nameOf({ ingredient }: Mention, or: string | null): string {
  const { name, alternatives } = ingredient.item;
  const names = or === null ? [name] : [name, ...alternatives.map((one) => one.name)];
  return names.map((one) => one.charAt(0).toLowerCase() + one.slice(1)).join(` ${or} `);
}

const saidOf = (mention: Mention, tag: string, says: Words): string =>
  tag === 'en'
    ? (says.en ?? '').replace('{food}', nameOf(mention, 'or'))
    : (says[tag] ?? '').replace('{food}', capital(nameOf(mention, null)));

/** 'the naan' of naan breads. */
const KIND_OF = /^(\p{L}{4,}) (?:breads?|rolls?|rice)$/iu;

const isSaid = (text: string, mention: Mention, words: MethodWords | null): boolean => {
  if (isSaidIn(text, mention, words)) return true;
  const [, first] = KIND_OF.exec(mention.ingredient.item.name) ?? [];
  return first !== undefined && new RegExp(`\\b${first}\\b`, 'iu').test(text);
};

/** The place of the first of the page's sentences that names an ingredient; null where none does. */
function placeOf(
  steps: readonly RewrittenStep[],
  mention: Mention,
  language: string | null,
  atServing: boolean,
): { at: number; behind: number } | null {
  const words = methodWords(language);
  const strews = (one: string): boolean => !atServing || words !== null || SERVES.test(one);
  for (const [at, { before, after }] of steps.entries()) {
    // a sentence of ours ('a pinch of cream of tartar') names no topping
    if (before === null || !sentencesOf(before).some((one) => isSaid(one, mention, words)))
      continue;
    const behind = sentencesOf(after).findIndex(
      (one) => strews(one) && isSaid(one, mention, words),
    );
    if (behind >= 0) return { at, behind };
  }
  return null;
}

/**
 * The steps in which each of `besides` that is a line of the recipe is marked: what is put on by choice, in
 * no figure, and takes a serving past the budget; `above`: which is past it by itself.
 */
export function withLeftOff(
  steps: readonly RewrittenStep[],
  besides: readonly MissingLine[],
  mentions: readonly Mention[],
  language: string | null,
  above = false,
): RewrittenStep[] {
  const words = methodWords(language);
  if (words === null && isForeign(language)) return [...steps];
  const tag = words?.tag ?? 'en';
  return besides.reduce<RewrittenStep[]>(
    (now, { key, why, netCarbsG }) => {
      const least = besides.length > 1 ? LEAST_G.several : LEAST_G.alone;
      if ((netCarbsG?.best ?? 0) < least) return now;
      const mention = mentions.find((one) => one.ingredient.key === key);
      const place =
        mention === undefined ? null : placeOf(now, mention, language, NO_AMOUNT.test(why));
      const step = now[place?.at ?? -1];
      if (mention === undefined || place === null || step === undefined) return now;
      if (IS_MARKED.test(step.after)) return now;
      const after = withSentence(
        step.after,
        place.behind,
        saidOf(mention, tag, above ? SAYS_ABOVE : SAYS),
      );
      return now.with(place.at, withReason(step, after, WHY[tag] ?? ''));
    },
    [...steps],
  );
}
