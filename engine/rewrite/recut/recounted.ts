/** The page's number of pieces in a sentence, and the new one in its place. */
import type { RewrittenStep } from '../../model.ts';
import { sentencesOf } from '../wording/sentences.ts';
import { CUTS, SERVES, SHAPES } from './piece-words.ts';
import type { Servings } from './recut-words.ts';
import { withSmallerSizes } from './smaller-measures.ts';

/** 'into 12 equal pieces', 'makes 10-12': how many a step makes. */
export const COUNT =
  /\b(?<lead>(?:into|in|makes?|making|make|form|shape|get|for|among|between|serves|(?:cut|stamp)(?: out)?)(?: about| approximately| the)? )(?<low>\d+)(?:\s?(?:-|–|to|or)\s?(?<high>\d+))?(?:(?=x\s[a-z])|\b(?!\s?(?:[-–x×/.]|inch|cm|mm|g\b|oz|lb|min|hour|sec|day|ml|(?<!\b(?:among|between)(?: the)? \d+ )cups?\b|tbsp|tsp|tables|teas|%|°|to \d)))/i;

interface Count {
  text: string;
  lead: string;
  low: number;
  high: number;
}

export function countIn(text: string): Count | null {
  const found = COUNT.exec(text);
  const { lead = '', low, high } = found?.groups ?? {};
  if (found === null || low === undefined) return null;
  return { text: found[0], lead, low: Number(low), high: Number(high ?? low) };
}

const isOf = ({ low, high }: Count, { page }: Servings): boolean => low <= page && page <= high;

/** The step with the page's number put right wherever it stands, and the size beside it; null when it does not stand there. */
export function recounted({ after }: RewrittenStep, servings: Servings): string | null {
  if (![SHAPES, SERVES, CUTS].some((words) => words.test(after))) return null;
  const wide = isFlat(after, servings) ? 1 : servings.page / servings.now;
  const put = sentencesOf(after).reduce(
    (text, sentence) => text.replace(sentence, () => recountedSentence(sentence, servings, wide)),
    after,
  );
  return put === after ? null : put;
}

/** '(a little larger than a golf ball)' holds of the page's pieces. */
const COMPARED = /\s?\([^()]*\b(?:larger|bigger|smaller|size) (?:than|of)\b[^()]*\)/gi;

/** A dough that is rolled up with its filling, of which flat slices are no rolls. */
const ROLLED_UP = /\broll(?:ed|ing)?\b[^.;]*\bup\b|\bsnake\b/i;

/** From this share (0..1) of the page's size on a slice of the same log is flat. Own choice. */
const FLAT = 0.72;

/** Whether these words roll a dough up. */
export const rollsUp = (text: string): boolean => ROLLED_UP.test(text);

/** Whether slices of the roll in this step would be flat, so that the roll is made thinner. */
export const isFlat = (text: string, { page, now }: Servings): boolean =>
  page / now < FLAT && rollsUp(text);

/** A sentence with the new number in place of the page's, and the size that is told behind it: a width at this share (0..1). */
function recountedSentence(sentence: string, servings: Servings, width: number): string {
  const numbers = [...sentence.matchAll(new RegExp(COUNT.source, 'gi'))].reverse();
  return numbers.reduce((text, { 0: found, index }) => {
    const count = countIn(found);
    if (count === null || !isOf(count, servings)) return text;
    const behind = text.slice(index + found.length).replace(COMPARED, '');
    const rest = withSmallerSizes(behind, servings.page / servings.now, width);
    return `${text.slice(0, index)}${count.lead}${servings.now}${rest}`;
  }, sentence);
}
