/** Looks for words of the tables in titles, lines and methods. */
import { withoutAccents } from '../../accents.ts';
import { keptResults } from '../../kept-results.ts';
import lists from '../data/word-lists.json' with { type: 'json' };

const LISTS: Readonly<Record<string, readonly string[]>> = lists;

/** Small letters without accents; whatever is no letter or digit becomes one space, also at both ends. */
const plain = (text: string): string =>
  ` ${withoutAccents(text.toLowerCase()).replace(/[^\p{L}\p{N}]+/gu, ' ')} `.replace(/ {2,}/g, ' ');

/** A plan asks for a handful of texts again and again: title, method, one line after the other. */
const MOST_TEXTS = 64;
const plainOnce = keptResults(MOST_TEXTS, plain);

const spelledOut = new WeakMap<readonly string[], readonly string[]>();

/** The words of a row of the tables with its named lists spelled out. */
export function wordsOf(words: readonly string[]): readonly string[] {
  const known = spelledOut.get(words);
  if (known !== undefined) return known;
  const all = words.flatMap((word) =>
    word.startsWith('@') ? (LISTS[word.slice(1)] ?? []) : [word],
  );
  spelledOut.set(words, all);
  return all;
}

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
