/** What is cooked before it joins the dish: in time, and cooled where the dish is cold. */

import { sentencesOf } from '../wording/sentences.ts';
import type { CueContext } from './cue-context.ts';
import { type Insertion, RANKS } from './insertion.ts';

const HEATS =
  /\b(?:cook|simmer|boil|fry|roast|bake|brown|heat|oven|pan|pot|saucepan|skillet|saut[eé]|melt|warm|toast|grill)\b/i;
/** Dishes that are eaten cold, and what no hot food is stirred into. */
const COLD = /\b(?:salad|mayonnaise|mayo)\b/i;
const WARM = /\bwarm\b/i;
const COOKED = /\b(?:steam|boil|fry|roast)\b/i;
/** Of a salad only the end tells whether it is heated: before it things are cooked to go in. Own choice. */
const LAST_STEPS = 3;
const COOLED = 'Let that cool before it goes in.';

/** Handling that cooks what goes into a cold dish, with word of its cooling. */
function cooledFirst(
  put: Insertion,
  { title, method }: CueContext,
  texts: readonly string[],
): Insertion {
  const { after } = put.step;
  const isCold = COLD.test(`${title} ${method}`) && !WARM.test(title);
  const goesInHot = COOKED.test(after) && !/\b(?:cool|cold)\b/i.test(after);
  const from = COLD.test(title) ? Math.max(put.at, texts.length - LAST_STEPS) : put.at;
  const isHeated = texts.slice(from).some((text) => HEATS.test(text));
  if (!isCold || !goesInHot || isHeated) return put;
  return { ...put, step: { ...put.step, after: `${after} ${COOLED}` } };
}

/** A step that ends with a pot on the boil, which waits for nothing that takes long. */
const LEFT_BOILING = /\bbring\b[^.;]*\b(?:boil|simmer)\b[^.;]*[.!]?$/i;

/** A step of our own, put before the cooking begins where it would stand beside a boiling pot. */
function beforeBoiling(
  put: Insertion,
  { course }: CueContext,
  texts: readonly string[],
): Insertion {
  const last = sentencesOf(texts[put.at - 1] ?? '').at(-1) ?? '';
  const isEmptied = /^Skip this step/.test(texts[put.at] ?? '');
  if (put.behind !== null || isEmptied || !COOKED.test(put.step.after)) return put;
  if (!LEFT_BOILING.test(last)) return put;
  const at = texts.findIndex((text, index) => index >= course.firstStep && HEATS.test(text));
  return at >= 0 && at < put.at ? { ...put, at } : put;
}

/** Handling in English that is told before its food is used, in time and cooled where it must be. `texts`: the method's own steps as they read now. */
export function cookedAhead(
  put: Insertion,
  context: CueContext,
  texts: readonly string[],
): Insertion {
  if (context.words !== null || put.rank !== RANKS.use || put.step.lang !== undefined) return put;
  return beforeBoiling(cooledFirst(put, context, texts), context, texts);
}
