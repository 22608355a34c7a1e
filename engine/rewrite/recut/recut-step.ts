/** Says that more pieces or portions are made than the page makes, in the step that shapes, cuts or serves. */
import type { Family, RewrittenStep } from '../../model.ts';
import { isForeign, keyed, type MethodWords, methodWords } from '../languages/method-words.ts';
import { bakesIn } from '../oven/bakes-in.ts';
import { sentencesOf, withSentence } from '../wording/sentences.ts';
import { changedTo, type Method, replaced, stepBehind } from './changed-step.ts';
import { cuttingStep, withCut } from './cut-places.ts';
import { FILLED, SHAPES } from './piece-words.ts';
import {
  besidePlate,
  isOverTin,
  lessFull,
  withNumberAbroad,
  withOwnNumber,
} from './recut-numbers.ts';
import { besideShaping, lastOwnSentence, servingStep, shapingStep } from './recut-places.ts';
import { ENGLISH, filled, piecesEach, type Servings } from './recut-words.ts';
import { withAsManyFillings, withOneTime } from './smaller-bakes.ts';
import { fitToSize } from './smaller-pieces.ts';

/** What is baked as one and cut. */
const WHOLES: ReadonlySet<Family> = new Set<Family>([
  'cake',
  'brownie',
  'quick-bread',
  'lean-yeast-bread',
  'enriched-yeast-bread',
]);

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

/** The method of pieces that stay as they are, of which a serving is fewer: told where they are served. */
function withShare(method: Method, servings: Servings, language: string | null): Method {
  const words = methodWords(language);
  const says = words?.recut ?? ENGLISH;
  const at = servingStep(searched(method.steps, words));
  const step = method.steps[at];
  const [text, why] = [filled(says.share, servings), filled(says.why, servings)];
  if (step === undefined || (words === null && isForeign(language)))
    return stepBehind(method, at, text, why);
  const after = withSentence(step.after, lastOwnSentence(step.after), text);
  return replaced(method, at, changedTo(step, after, why));
}

/** What is said, by what the pieces are called; null is a dish that is served in portions. */
function sentenceFor(
  pieces: string | null,
  says: {
    pieces: string;
    portions: string;
    beside: string;
    leaves: string;
    lighter: string;
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
  if (piecesEach(servings) !== null) return withShare(method, servings, language);
  const put = withNumber(method, servings, language, family);
  if (put === method || methodWords(language) !== null || isForeign(language)) return put;
  const isPieces = family === 'cookie' || put.steps.some(({ after }) => TOLD_SMALLER.test(after));
  const many = withAsManyFillings(put.steps, servings, filled(ENGLISH.why, servings));
  const sized = isPieces ? fitToSize(many, servings.page / servings.now) : many;
  return { ...put, steps: isPieces ? withOneTime(sized) : sized };
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
  const shapes = shapingStep(texts, family, servings.page);
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
