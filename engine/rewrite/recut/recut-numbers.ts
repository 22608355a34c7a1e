/** The page's own number of pieces, and the new one in its place. */
import type { Family } from '../../model.ts';
import type { MethodWords } from '../languages/method-words.ts';
import { capital } from '../naming/method-names.ts';
import { sentencesOf, withSentence } from '../wording/sentences.ts';
import { changedTo, type Method, replaced } from './changed-step.ts';
import { recountedAbroad } from './counts-abroad.ts';
import { CUTS, FILLED, HEATS, SHAPES } from './piece-words.ts';
import { COUNT, isFlat, recounted, rollsUp } from './recounted.ts';
import { cutsLots, lotsOf, recountedLots } from './recut-lots.ts';
import { besideShaping, lastOwnSentence, SHAPED } from './recut-places.ts';
import { ENGLISH, filled, type Servings } from './recut-words.ts';
import { isSmallerMeal } from './smaller-plate.ts';

/** How full the page fills a tin, which more pieces of the same batter do not come to. */
const FULL =
  /(?<!\bthan )(?:\b(?:about|only) )?(?<level>(?:\b[123]\/[234]|\bhalf|\btwo[- ]thirds|\bthree[- ]quarters|[½⅔¾])(?:rds|ths)?(?:\s?(?:-|–|to)\s?(?:[123]\/[234]|half|two[- ]thirds|three[- ]quarters|[½⅔¾]))?(?: of)?(?: the)?(?: way)? full)\b/gi;

export function lessFull(method: Method): Method {
  const steps = method.steps.map((step) => {
    const after = step.after.replace(FULL, 'less than $<level>');
    return after === step.after ? step : { ...step, after, change: 'changed' as const };
  });
  return { ...method, steps };
}

/** Smaller pieces in a step that has its own number, told where they are shaped and baked after. */
function withSize(text: string, servings: Servings, later: readonly string[]): string {
  const pieces = SHAPES.exec(text)?.groups?.pieces;
  if (pieces === undefined || !later.some((one) => HEATS.test(one))) return text;
  return withSentence(text, besideShaping(text), filled(ENGLISH.each, servings));
}

/** The method with the new number where the page's stands; null where it stands nowhere. */
export function withOwnNumber(
  method: Method,
  servings: Servings,
  family: Family,
  why: string,
): Method | null {
  const { steps } = method;
  const at = steps.findIndex((one) => one.before !== null && recounted(one, servings) !== null);
  const step = steps[at];
  const after = step === undefined ? null : recounted(step, servings);
  if (step === undefined || after === null) return inLots(method, servings, why);
  const later = steps.slice(at + 1).map((one) => one.after);
  const beside = besidePlate(servings, ENGLISH).trim();
  const isFilled = FILLED.test(SHAPES.exec(after)?.groups?.pieces ?? '');
  const allSteps = steps.map((one) => one.after);
  const over = isFilled && isOverTin(servings, allSteps);
  const shaped = SHAPED.has(family) ? withSize(after, servings, later) : after;
  const rolled = withThinnerRoll(shaped, step.after, servings);
  const sized = over ? withSentence(rolled, besideShaping(rolled), ENGLISH.twoTins) : rolled;
  const told = beside === '' ? sized : withSentence(sized, lastOwnSentence(sized), beside);
  const put = replaced(method, at, changedTo(step, told, why));
  return isFilled ? lessFull(put) : put;
}

/** The method with the numbers of each log or sheet; null where it counts no lots. */
function inLots(method: Method, servings: Servings, why: string): Method | null {
  const texts = method.steps.map(({ before, after }) => (before === null ? '' : after));
  const lots = lotsOf(texts, servings);
  if (lots === null) return null;
  const first = texts.findIndex((text) => cutsLots(text, servings.page / lots));
  const steps = method.steps.map((step, at) => {
    const put = step.before === null ? step.after : recountedLots(step.after, servings, lots);
    const told = at === first ? toldOfLots(put, step.after, servings) : put;
    return told === step.after ? step : changedTo(step, told, why);
  });
  return { ...method, steps };
}

/** The method in another language with the new number where the page's stands; null where it stands nowhere. */
export function withNumberAbroad(
  method: Method,
  servings: Servings,
  words: MethodWords,
  why: string,
): Method | null {
  const put = method.steps.map((step) =>
    step.before === null ? null : recountedAbroad(step.after, servings, words),
  );
  if (put.every((text) => text === null)) return null;
  const filling = besidePlate(servings, words.recut).trim();
  const first = put.findIndex((text) => text !== null);
  const steps = method.steps.map((step, at) => {
    const text = put[at] ?? null;
    if (text === null) return step;
    const told =
      at === first && filling !== '' ? withSentence(text, lastOwnSentence(text), filling) : text;
    return changedTo(step, told, why);
  });
  return { ...method, steps };
}

/** The size of each slice behind the cutting, and what keeps much smaller ones high before it. */
function toldOfLots(put: string, page: string, servings: Servings): string {
  const cuts = lotsSentence(page);
  return withThinnerRoll(withSentence(put, cuts, filled(ENGLISH.each, servings)), page, servings);
}

/** About twice as many slices come of two rolls. Own choice. */
const isTwiceAsMany = ({ page, now }: Servings): boolean => page / now >= 0.4 && page / now <= 0.6;

/** 'Roll it up tightly and cut into 12 rolls': two sentences for what is told between. */
const ROLLS_THEN_CUTS =
  /^(?<rolls>.*\broll\b[^.;]*?)(?:,? and(?: then)?|[,;] then)\s(?<then>(?:cut|slice|divide)\b.*)$/is;

/** What keeps much smaller slices of a roll high, before it is cut. */
function withThinnerRoll(put: string, page: string, servings: Servings): string {
  if (!isFlat(page, servings)) return put;
  const cuts = lotsSentence(page);
  const rollsFirst = rollsUp(sentencesOf(page).slice(0, cuts).join(' '));
  const told = isTwiceAsMany(servings) ? ENGLISH.halves : ENGLISH.thinner;
  const sentence = sentencesOf(put)[cuts] ?? '';
  const { rolls, then } = ROLLS_THEN_CUTS.exec(sentence)?.groups ?? {};
  if (!rollsFirst && rolls !== undefined && then !== undefined)
    return put.replace(sentence, () => `${rolls}. ${told} ${capital(then)}`);
  return withSentence(put, rollsFirst ? cuts - 1 : cuts + 1, told);
}

/** Index of the sentence that cuts the lots. */
const lotsSentence = (text: string): number =>
  Math.max(
    0,
    sentencesOf(text).findIndex((one) => COUNT.test(one) && CUTS.test(one)),
  );

/** How many a tin takes, as the method says it; twelve where it says nothing: common practice, no source. */
const TIN = /\b(?<count>6|8|9|12|24)[- ](?:cup|hole|well|count|cavity)\b/i;

const USUAL_TIN = 12;

/** Whether the pieces filled one tin and no longer do. */
export function isOverTin({ page, now }: Servings, texts: readonly string[]): boolean {
  const stated = texts
    .map((text) => TIN.exec(text)?.groups?.count)
    .find((one) => one !== undefined);
  const size = stated === undefined ? USUAL_TIN : Number(stated);
  return page <= size && now > size;
}

/** What fills a plate that is served smaller; nothing where it is none. */
export function besidePlate(
  servings: Servings,
  says: { beside: string; leaves: string; lighter: string },
): string {
  if (servings.plates !== true) return '';
  const { lightKcal = null } = servings;
  if (lightKcal !== null) return ` ${says.lighter.replace('{kcal}', String(lightKcal))}`;
  if (!isSmallerMeal(servings)) return '';
  return ` ${servings.filling === true ? says.leaves : says.beside}`;
}
