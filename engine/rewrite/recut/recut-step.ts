/** Says that more pieces or portions are made than the page makes, in the step that shapes, cuts or serves. */
import type { Family, MethodNote, RewrittenStep } from '../../model.ts';
import { isForeign, keyed, type MethodWords, methodWords } from '../languages/method-words.ts';
import { markedStep } from '../languages/unworded.ts';
import { bakesIn } from '../oven/bakes-in.ts';
import { sentencesOf, withSentence } from '../wording/sentences.ts';
import { recountedAbroad } from './counts-abroad.ts';
import { cuttingStep, withCut } from './cut-places.ts';
import { CUTS, FILLED, HEATS, SHAPES } from './piece-words.ts';
import { COUNT, isFlat, recounted, rollsUp } from './recounted.ts';
import { cutsLots, lotsOf, recountedLots } from './recut-lots.ts';
import {
  besideShaping,
  lastOwnSentence,
  SHAPED,
  servingStep,
  shapingStep,
} from './recut-places.ts';
import { ENGLISH, filled, type Servings } from './recut-words.ts';
import { fitToSize } from './smaller-pieces.ts';
import { isSmallerMeal } from './smaller-plate.ts';

interface Method {
  steps: RewrittenStep[];
  methodNotes: MethodNote[];
}

export const changedTo = (step: RewrittenStep, after: string, why: string): RewrittenStep => ({
  ...step,
  after,
  change: step.before === null ? step.change : 'changed',
  why: step.why === null ? why : `${step.why} ${why}`,
});

/** A step of our own behind one of the method, where a language has no words for a sentence within it. */
function stepBehind(method: Method, at: number, text: string, why: string): Method {
  const own = markedStep({
    section: method.steps[at]?.section ?? null,
    before: null,
    after: text,
    change: 'inserted',
    why,
  });
  return {
    steps: method.steps.toSpliced(at + 1, 0, own),
    methodNotes: method.methodNotes.map((note) =>
      note.step === null || note.step <= at ? note : { ...note, step: note.step + 1 },
    ),
  };
}

/** How full the page fills a tin, which more pieces of the same batter do not come to. */
const FULL =
  /(?<!\bthan )(?:\b(?:about|only) )?(?<level>(?:\b[123]\/[234]|\bhalf|\btwo[- ]thirds|\bthree[- ]quarters|[½⅔¾])(?:rds|ths)?(?:\s?(?:-|–|to)\s?(?:[123]\/[234]|half|two[- ]thirds|three[- ]quarters|[½⅔¾]))?(?: of)?(?: the)?(?: way)? full)\b/gi;

function lessFull(method: Method): Method {
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

const replaced = (method: Method, at: number, step: RewrittenStep): Method => ({
  ...method,
  steps: method.steps.with(at, step),
});

/** What is baked as one and cut. */
const WHOLES: ReadonlySet<Family> = new Set<Family>([
  'cake',
  'brownie',
  'quick-bread',
  'lean-yeast-bread',
  'enriched-yeast-bread',
]);

/** What fills a plate that is served smaller; nothing where it is none. */
function besidePlate(servings: Servings, says: { beside: string; leaves: string }): string {
  if (servings.plates !== true || !isSmallerMeal(servings)) return '';
  return ` ${servings.filling === true ? says.leaves : says.beside}`;
}

/** The method of plates that hold less though they are as many: what fills them is told where they are served. */
function withFuller(method: Method, servings: Servings, language: string | null): Method {
  const words = methodWords(language);
  const says = words?.recut ?? ENGLISH;
  const at = servingStep(searched(method.steps, words));
  const step = method.steps[at];
  const text = besidePlate(servings, says).trim();
  if (text === '' || step === undefined || (words === null && isForeign(language))) return method;
  const after = withSentence(step.after, lastOwnSentence(step.after), text);
  return replaced(method, at, changedTo(step, after, says.less));
}

/** How many a tin takes, as the method says it; twelve where it says nothing: common practice, no source. */
const TIN = /\b(?<count>6|8|9|12|24)[- ](?:cup|hole|well|count|cavity)\b/i;
const USUAL_TIN = 12;

/** Whether the pieces filled one tin and no longer do. */
function isOverTin({ page, now }: Servings, texts: readonly string[]): boolean {
  const stated = texts
    .map((text) => TIN.exec(text)?.groups?.count)
    .find((one) => one !== undefined);
  const size = stated === undefined ? USUAL_TIN : Number(stated);
  return page <= size && now > size;
}

/** What is said, by what the pieces are called; null is a dish that is served in portions. */
function sentenceFor(
  pieces: string | null,
  says: {
    pieces: string;
    portions: string;
    beside: string;
    leaves: string;
    filled?: string;
    cut?: string;
  },
  servings: Servings,
  isWhole: boolean,
  texts: readonly string[],
): string {
  if (pieces === null && isWhole) return says.cut ?? says.portions;
  if (pieces === null) return `${says.portions}${besidePlate(servings, says)}`;
  if (FILLED.test(pieces) && says.filled !== undefined)
    return isOverTin(servings, texts) ? ENGLISH.lots : says.filled;
  return says.pieces.replace('{pieces}', pieces.toLowerCase());
}

/** Texts by which places are found: those of the page's own steps. */
const searched = (steps: readonly RewrittenStep[], words: MethodWords | null): string[] =>
  steps.map(({ before, after }) =>
    before === null ? '' : words === null ? after : keyed(after, words),
  );

/** The method with the new number where the page's stands; null where it stands nowhere. */
function withOwnNumber(
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
function withNumberAbroad(
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

/** What keeps much smaller slices of a roll high, before it is cut. */
function withThinnerRoll(put: string, page: string, servings: Servings): string {
  if (!isFlat(page, servings)) return put;
  const cuts = lotsSentence(page);
  const rollsFirst = rollsUp(sentencesOf(page).slice(0, cuts).join(' '));
  return withSentence(put, rollsFirst ? cuts - 1 : cuts + 1, ENGLISH.thinner);
}

/** Index of the sentence that cuts the lots. */
const lotsSentence = (text: string): number =>
  Math.max(
    0,
    sentencesOf(text).findIndex((one) => COUNT.test(one) && CUTS.test(one)),
  );

/** What is baked in a form and cut when the method names one. */
const FORMED: ReadonlySet<Family> = new Set<Family>(['custard', 'pie-crust']);
const FORM =
  /\bspringform|\bpie (?:pan|plate|dish|tin)|\btart (?:pan|tin)|\bcheesecake\b[^.]*\bslic|\bcut into (?:bars|squares|slices|wedges)/i;

const MACHINE = /\b(?:slow cooker|crock ?pot|bread machine|air fryer|microwave|waffle iron)\b/i;

/** Whether one whole is cut up: what is fried piece by piece is none, though its coating is a batter. */
const isCutUp = (family: Family, texts: readonly string[]): boolean =>
  (WHOLES.has(family) &&
    texts.flatMap(sentencesOf).some((one) => bakesIn(one) || MACHINE.test(one))) ||
  (FORMED.has(family) && texts.some((text) => FORM.test(text)));

/** A loaf is cut into slices. */
const LOAF = /\bloa(?:f|ves)\b|\bbread pan\b/i;
const LOAVES: ReadonlySet<Family> = new Set<Family>([
  'quick-bread',
  'lean-yeast-bread',
  'enriched-yeast-bread',
]);

/** Breads of which a page gives several to a guest. */
const SEVERAL: ReadonlySet<Family> = new Set<Family>(['tortilla']);

/** What is said of a whole in English, by how it is cut; null where it is no loaf and not several. */
function sliceSentence(family: Family, texts: readonly string[]): string | null {
  if (SEVERAL.has(family)) return ENGLISH.single;
  return LOAVES.has(family) && texts.some((text) => LOAF.test(text)) ? ENGLISH.slices : null;
}

/** Dishes that are spooned from where they were baked. */
const SPOONED = /\b(?:bowls?|glasses|spoon(?:ed|ing)|scoop(?:ed|ing))\b/i;

/**
 * The method with the new number in the step that shapes pieces, or in the one that cuts or serves; the
 * same method where the number stays, or where there is none.
 */
export function withRecut(
  method: Method,
  servings: Servings,
  language: string | null,
  family: Family = 'other',
): Method {
  if (method.steps.length === 0) return method;
  if (servings.now <= servings.page) return withFuller(method, servings, language);
  const put = withNumber(method, servings, language, family);
  const isPieces = put.steps.some(({ after }) => TOLD_SMALLER.test(after));
  if (!isPieces || methodWords(language) !== null || isForeign(language)) return put;
  return { ...put, steps: fitToSize(put.steps, servings.page / servings.now) };
}

const TOLD_SMALLER = /smaller ones are done sooner\./;

function withNumber(
  method: Method,
  servings: Servings,
  language: string | null,
  family: Family,
): Method {
  const { steps } = method;
  const words = methodWords(language);
  const says = words?.recut ?? ENGLISH;
  const why = filled(says.why, servings);
  const unworded = words === null && isForeign(language);
  if (!unworded && words === null) {
    const own = withOwnNumber(method, servings, family, why);
    if (own !== null) return own;
  }
  if (words !== null) {
    const own = withNumberAbroad(method, servings, words, why);
    if (own !== null) return own;
  }
  const texts = searched(steps, words);
  const shapes = shapingStep(texts, family);
  const cutting = words === null && !unworded && isCutUp(family, texts) ? cuttingStep(texts) : -1;
  const served = cutting >= 0 ? cutting : servingStep(texts);
  const at = shapes >= 0 ? shapes : served;
  const pieces = shapes < 0 ? null : (SHAPES.exec(texts[shapes] ?? '')?.groups?.pieces ?? 'pieces');
  const step = steps[at];
  const isWhole = isCutUp(family, texts) && !SPOONED.test(step?.after ?? '');
  const sliced = words === null && !unworded ? sliceSentence(family, texts) : null;
  const isSliced = sliced !== null && (pieces === null || SEVERAL.has(family));
  const text = filled(
    isSliced ? sliced : sentenceFor(pieces, says, servings, isWhole, texts),
    servings,
  );
  if (unworded || step === undefined) return stepBehind(method, at, text, why);
  if (words === null && pieces === null && isWhole && !SEVERAL.has(family)) {
    const called = isSliced ? 'slices' : 'pieces';
    const cut = withCut(step.after, { now: servings.now, pieces: called, sentence: text });
    return replaced(method, at, changedTo(step, cut, why));
  }
  const isOwnWords = shapes >= 0 && words === null;
  const behind = isOwnWords ? besideShaping(step.after) : lastOwnSentence(step.after);
  const put = replaced(method, at, changedTo(step, withSentence(step.after, behind, text), why));
  return isOwnWords && FILLED.test(pieces ?? '') ? lessFull(put) : put;
}
