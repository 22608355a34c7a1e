/** Looks for words of the tables in titles, lines and methods. */
import { withoutAccents } from '../../accents.ts';
import lists from '../data/word-lists.json' with { type: 'json' };

const LISTS: Readonly<Record<string, readonly string[]>> = lists;

/** Small letters without accents; whatever is no letter or digit becomes one space, also at both ends. */
const plain = (text: string): string =>
  ` ${withoutAccents(text.toLowerCase()).replace(/[^\p{L}\p{N}]+/gu, ' ')} `.replace(/ {2,}/g, ' ');

let lastText = '';
let lastPlain = ' ';

const plainOnce = (text: string): string => {
  if (text !== lastText) {
    lastText = text;
    lastPlain = plain(text);
  }
  return lastPlain;
};

/** The words of a row of the tables with its named lists spelled out. */
export const wordsOf = (words: readonly string[]): readonly string[] =>
  words.flatMap((word) => (word.startsWith('@') ? (LISTS[word.slice(1)] ?? []) : [word]));

/**
 * Whether a text has one of the words, whatever case, accents and hyphens. A word is found inside
 * longer ones, unless a space marks where it begins or ends: ' ham ' is not in 'hamburger'.
 * '@fries' stands for the list of that name in `word-lists.json`.
 */
export function mentionsAny(words: readonly string[] | undefined, text: string): boolean {
  if (words === undefined) return false;
  const within = plainOnce(text);
  return wordsOf(words).some((word) => within.includes(word));
}
