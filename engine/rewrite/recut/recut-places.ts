/** Where in a method the number of pieces is told: the step that shapes or serves, and the sentence in it. */
import type { Family } from '../../model.ts';
import { sentencesOf } from '../wording/sentences.ts';
import { CUTS, HEATS, LINES_TIN, SERVES, SHAPES } from './piece-words.ts';
import { countIn } from './recounted.ts';

/** Remarks behind the method: on keeping, on other ways. */
const REMARKS =
  /\b(?:stor(?:e|ed|age|ing)|left ?overs?|keeps? (?:well|fresh|for|in)|freez\w+|up to \d+ (?:days|weeks|months)|reheat|make.ahead|variations?|substitut\w+|notes?|tips?)\b/i;

/** What is shaped or filled before it is baked or fried. */
export const SHAPED: ReadonlySet<Family> = new Set<Family>([
  'cookie',
  'biscuit',
  'cracker',
  'cake',
  'quick-bread',
  'pancake',
  'tortilla',
  'flatbread',
  'enriched-yeast-bread',
  'lean-yeast-bread',
  'pie-crust',
  'choux',
]);

/** Dough that is scooped piece by piece. */
const SCOOPED: ReadonlySet<Family> = new Set<Family>(['cookie', 'biscuit', 'cracker', 'pancake']);

/** What is cut up before it goes in, not for serving: 'cut in to 1/2-inch cubes'. */
const CUT_SMALL =
  /\b(?:cut|slice|divide|portion)\b[^.]{0,40}\b(?:inch|cm|mm|cubes?|dice|strips|bite[- ]size\w*|chunks|thin(?:ly)?)\b/gi;

const isRemarks = (text: string): boolean => REMARKS.test(sentencesOf(text)[0] ?? '');

/** Index of the step that serves: the last that serves, or cuts among the last two, else the last that is no remark. */
export function servingStep(texts: readonly string[]): number {
  const said = texts.flatMap((text, at) => (text === '' || isRemarks(text) ? [] : [at]));
  const late = Math.max(
    said.at(-2) ?? 0,
    texts.findLastIndex((text) => HEATS.test(text)),
  );
  const serves = said.findLast((at) => SERVES.test(texts[at] ?? ''));
  const cuts = said.findLast(
    (at) => at >= late && CUTS.test((texts[at] ?? '').replace(CUT_SMALL, '')),
  );
  return Math.max(0, serves ?? cuts ?? said.at(-1) ?? 0);
}

/** What is said of keeping. */
const KEEPING =
  /\b(?:stor(?:e|ed|age|ing)|left ?overs?|keeps? (?:well|fresh|for)|freez\w+|up to \d+ (?:days|weeks|months)|reheat)\b/i;

/** Index of the last sentence of a step before its remarks. */
export function lastOwnSentence(text: string): number {
  const sentences = sentencesOf(text);
  const remark = sentences.findIndex((sentence, at) => at > 0 && KEEPING.test(sentence));
  return remark < 0 ? sentences.length - 1 : remark - 1;
}

const IN_WORDS = ['two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const WORDED = new RegExp(
  `\\b(?:in|into) (${IN_WORDS.join('|')}) (?:equal |even |large )?(?:balls|rounds|pizzas|bases|loaves)\\b`,
  'i',
);

/** Whether a step makes a number of pieces, in words, that is not the page's number of servings: two pizzas for four. */
function makesOthers(text: string, page: number): boolean {
  const word = WORDED.exec(text)?.[1]?.toLowerCase();
  if (word === undefined) return false;
  return IN_WORDS.indexOf(word) + 2 !== page;
}

/**
 * Index of the step that shapes pieces before any heat; -1 when none does, or when a serving is several of them, or a
 * part of one. `page`: servings that the page makes.
 */
export function shapingStep(texts: readonly string[], family: Family, page: number): number {
  if (!SHAPED.has(family)) return -1;
  const shapes = texts.flatMap((text, at) => {
    const found = SHAPES.exec(text.replace(LINES_TIN, ''));
    const isNamed = found?.groups?.pieces !== undefined || SCOOPED.has(family);
    return found !== null && isNamed ? [at] : [];
  });
  // A step that makes another number than the page serves makes several for a serving.
  const others = (text: string): boolean => countIn(text) !== null || makesOthers(text, page);
  if (shapes.some((at) => others(texts[at] ?? ''))) return -1;
  const at = shapes[0] ?? -1;
  return at >= 0 && texts.slice(at).some((text) => HEATS.test(text)) ? at : -1;
}

/** Index of the sentence behind which the number of pieces is told: the one that shapes them, but before they are baked. */
export function besideShaping(text: string): number {
  const sentences = sentencesOf(text);
  const at = sentences.findIndex((sentence) => SHAPES.test(sentence));
  if (at < 0) return lastOwnSentence(text);
  return HEATS.test(sentences[at] ?? '') ? at - 1 : at;
}
