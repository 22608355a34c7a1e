/** Looks for words of the tables in titles, lines and methods. */
import { plainWords } from '../../plain-words.ts';
import lists from '../data/word-lists.json' with { type: 'json' };

const LISTS: Readonly<Record<string, readonly string[]>> = lists;

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
  const within = plainWords(text);
  return wordsOf(words).some((word) => within.includes(word));
}
