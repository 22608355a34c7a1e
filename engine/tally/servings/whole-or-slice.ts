/** What a yield counts: wholes that are cut, or what one person is given of them. */
import { withoutAccents } from '../../accents.ts';
import data from '../data/plates.json' with { type: 'json' };

const WHOLE = new RegExp(`\\b(?:${data.wholes})\\b`);
const SLICE = new RegExp(`\\b(?:${data.slices})\\b`);
/** 'Cuts into 12', 'sliced into 10-12 pieces'. */
const CUT_INTO = new RegExp(
  `\\b(?:${data.cuts})\\s+(?:up\\s+)?in(?:to)?\\s+(?:about\\s+)?(\\d{1,3})(?:\\s*(?:-|\u2013|to|or)\\s*(\\d{1,3}))?(?!\\s*-?\\s*(?:inch|cm|mm|in\\b|"))`,
);
/** '(4 generous bowls)' behind a volume. */
const IN_BOWLS = new RegExp(
  `\\((?:about |ca\\.? |etwa |or )?(\\d{1,2})\\s+(?:[a-z]+\\s+){0,2}?(?:${data.plates})\\)`,
);

const plain = (text: string): string => withoutAccents(text.slice(0, 200)).toLowerCase();

/** Is one of these a slice, a bowl, a piece that somebody is given? */
export const isSlice = (noun: string): boolean => SLICE.test(plain(noun));

/** Is one of these a whole to be cut ('loaf', 'Brot', 'teglia'), not something one person eats? */
export const isWhole = (noun: string): boolean => WHOLE.test(plain(noun)) && !isSlice(noun);

/** How many a yield says that its whole is cut into, the middle of a range rounded down; null where it does not. */
export function slicesSaid(text: string): number | null {
  const words = plain(text);
  const [, low = '', high = low] = CUT_INTO.exec(words) ?? IN_BOWLS.exec(words) ?? [];
  const count = Math.floor((Number(low) + Number(high)) / 2);
  return count > 0 ? count : null;
}
