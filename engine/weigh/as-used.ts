/** What is left of a food bought raw or whole: '1 lb bacon, cooked and crumbled (about 1 cup)'. */
import type { Food } from '../model.ts';

/** A word of what is done to it, and behind it in brackets how much that makes. */
const MADE_INTO =
  /\b(?:cooked|roasted|baked|boiled|grilled|poached|shredded|pulled|picked|crumbled)\b[^()]*\([^()]*\d?[^()]*\b(?:cups?|lbs?|pounds?|oz|ounces?|g|grams)\b[^()]*\)/;
/** Of what is cooked no more than this is left in a smaller measure of the same thing. Own choice. */
const LEFT_AT_MOST = 0.8;

/** What a weight says of itself then. */
export const AS_USED = 'weighed as it is used, not as it is bought';

interface Reading {
  weighed: { grams: { best: number }; basis: string; assumptions: string[] };
  order: number;
}

/**
 * The readings of a food that is weighed as it is used, where the line says so: the first measure was of
 * what is bought. `written` is the line in plain letters.
 */
export function asUsed<R extends Reading>(read: R[], food: Food | null, written: string): R[] {
  const [first] = read;
  if (first === undefined || food?.state !== 'cooked' || !MADE_INTO.test(written)) return read;
  const last = read.find(
    ({ order, weighed }) =>
      order > first.order && weighed.grams.best < first.weighed.grams.best * LEFT_AT_MOST,
  );
  if (first.weighed.basis !== 'mass' || last === undefined) return read;
  const assumptions = [...last.weighed.assumptions, AS_USED];
  return [{ ...last, weighed: { ...last.weighed, assumptions } }];
}
