/** Pieces that a method counts by the log, half or sheet: '16 slices of each' of 32. */
import { sentencesOf } from '../wording/sentences.ts';

const OF_EACH =
  /\b(?:per|each|every|both|halves|half|logs?|ropes?|snakes?|rectangles?|rolls? of dough)\b/i;
const CUTS = /\b(?:cut|slice|divide|portion|shape|roll)\b/i;
const LOTS = [2, 3, 4];

/** '16 even slices', '16 per sheet': the number, no size, time or share of anything. */
const counted = (number: number): RegExp =>
  new RegExp(
    `(?<=\\b(?:into|in|makes?|cut|get|about)\\s|[,(:]\\s?|^)${number}(?=\\s(?:per\\b|(?:\\w+\\s){0,2}(?:slices|pieces|rolls|rounds|balls|buns|biscuits|cookies|bars|squares)\\b))`,
    'gi',
  );

/** Whether a step cuts so many pieces of one lot. */
export const cutsLots = (text: string, number: number): boolean =>
  sentencesOf(text).some(
    (sentence) => OF_EACH.test(sentence) && CUTS.test(sentence) && counted(number).test(sentence),
  );

/** In how many lots the pieces are cut; null when the method cuts none, or the new number does not go into them. */
export const lotsOf = (
  texts: readonly string[],
  { page, now }: { page: number; now: number },
): number | null =>
  LOTS.find(
    (lots) =>
      page % lots === 0 && now % lots === 0 && texts.some((text) => cutsLots(text, page / lots)),
  ) ?? null;

/** A step with the new number of each lot. */
export const recountedLots = (
  text: string,
  { page, now }: { page: number; now: number },
  lots: number,
): string =>
  sentencesOf(text).reduce((whole, sentence) => {
    if (!OF_EACH.test(sentence)) return whole;
    const put = sentence.replace(counted(page / lots), String(now / lots));
    return whole.replace(sentence, () => put);
  }, text);
