/** The words of a line that bear on its weight, in one lower-case string without accents. */
import { withoutAccents } from '../accents.ts';
import type { Food, Item, Line } from '../model.ts';

export const plain = (text: string): string => withoutAccents(text.slice(0, 2000).toLowerCase());

/** Done after measuring when it stands behind the food: '1 cup cream, whipped' was poured, not spooned. */
const DONE_LATER = /\b(?:whipped|whisked|beaten|melted)\b/g;

/** The words without such a state, unless it stands before the food or belongs to its name. */
function asMeasured(words: string, item: Item, line: Line): string {
  if (words.search(DONE_LATER) < 0) return words;
  const name = plain(item.name);
  const text = plain(line.text);
  const before = text.slice(0, Math.max(0, text.indexOf(name.split(' ')[0] ?? '')));
  return words.replace(DONE_LATER, (word) =>
    name.includes(word) || before.includes(word) ? word : '',
  );
}

/** Name, preparation and note of an item; falls back on the line's own text for one-item lines. */
export function wordsOf(item: Item, line: Line): string {
  const own = [item.size, item.name, item.preparation, line.note].filter((part) => part !== null);
  const words = plain(line.items.length > 1 ? own.join(' ') : `${own.join(' ')} ${line.text}`);
  return asMeasured(words, item, line).replace(/\bnot (sifted|packed)\b/g, 'un$1');
}

/** What the food is called: our food's name when matched, and the line's own name. */
export const nameOf = (item: Item, food: Food | null): string =>
  plain(`${food?.name ?? ''} ${item.name}`.trim());

type Finds = (text: string) => boolean;

const isLetter = (code: number): boolean => code >= 97 && code <= 122;

/** Does the word stand in the text with no letter before it? */
function begins(text: string, word: string): boolean {
  let at = text.indexOf(word);
  while (at > 0 && isLetter(text.charCodeAt(at - 1))) at = text.indexOf(word, at + 1);
  return at >= 0;
}

const PLAIN_WORDS = /^[a-z |-]+$/;

/** Most lists are plain words: to look for them costs less than to compile a pattern for a first recipe. */
function finderOf(words: string): Finds {
  if (PLAIN_WORDS.test(words)) {
    const list = words.split('|');
    return (text) => list.some((word) => begins(text, word));
  }
  const pattern = new RegExp(`(?:^|[^a-z])(?:${words})`);
  return (text) => pattern.test(text);
}

const finders = new Map<string, Finds>();

/** Does any of the words (joined by '|', no anchors needed) begin a word of the text? They come from data files. */
export function hasWord(text: string, words: string): boolean {
  if (words === '') return true;
  const finds = finders.get(words) ?? finderOf(words);
  finders.set(words, finds);
  return finds(text);
}
