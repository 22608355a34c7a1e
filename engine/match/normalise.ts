/** Words of a food name in one canonical form: case, accents, spelling, plurals. */
import { withoutAccents } from '../accents.ts';
import spelling from './data/spelling.json' with { type: 'json' };
import words from './data/words.json' with { type: 'json' };

const SPELLING = new Map(Object.entries(spelling));
const IRREGULAR = new Map(Object.entries(words.irregular));

const LETTERS: Record<string, string> = { ß: 'ss', œ: 'oe', æ: 'ae', ø: 'o', ł: 'l', ð: 'd' };

/** Lower case without accents, with hyphens, commas kept apart as separators. */
export function plainText(text: string): string {
  const lower = text.toLowerCase();
  if (/^[a-z0-9 -]*$/.test(lower)) return lower;
  const ascii = withoutAccents(lower).replace(/[ßœæøłð]/g, (letter) => LETTERS[letter] ?? letter);
  return ascii.replace(/['’`´]/g, '').replace(/&/g, ' and ');
}

function singular(word: string): string {
  const known = IRREGULAR.get(word);
  if (known !== undefined) return known;
  if (word.length < 4 || !word.endsWith('s') || /(ss|us|is)$/.test(word)) return word;
  if (word.endsWith('ies')) return word.length > 4 ? `${word.slice(0, -3)}y` : word;
  if (/(oes|sses|ches|shes|xes|zzes)$/.test(word)) return word.slice(0, -2);
  return word.slice(0, -1);
}

const tokenCache = new Map<string, string>();
const TOKEN_CACHE_LIMIT = 20_000;

/** A lone letter is a unit or a slip ('100 F', 's' of a possessive), never a food. */
const LONE_LETTER = /^[a-z]$/;

/** One word in canonical form; empty when the word carries no meaning. */
function canonical(word: string): string {
  let token = tokenCache.get(word);
  if (token === undefined) {
    const spelled = SPELLING.get(word) ?? word;
    const one = singular(spelled);
    const known = SPELLING.get(one) ?? one;
    token = LONE_LETTER.test(known) ? '' : known;
    if (tokenCache.size < TOKEN_CACHE_LIMIT) tokenCache.set(word, token);
  }
  return token;
}

/** 'cheese, cheddar' reads as 'cheddar cheese'; what follows a second comma goes first too. */
function headLast(text: string): string {
  const parts = text.split(/[,;:]/).map((part) => part.trim());
  return parts.length < 2 ? text : parts.reverse().join(' ');
}

/** What a food free of something is called; a food free of anything else goes by its own name. */
const FREE_OF: Readonly<Record<string, string>> = words.freeOf;

/** What is free of fat or gluten is nothing like it: 'fat free creamer' has one word for both. */
const withoutFreeOf = (text: string): string =>
  text.replace(
    /\b([a-z]{3,})[- ]+free\b(?![- ]+(?:range|flow|fall|run))/g,
    (_, of: string) => FREE_OF[of] ?? '',
  );

/** 'leg of lamb' reads as 'lamb leg': what follows 'of' says which food it is. */
function ofLast(tokens: string[]): string[] {
  const at = tokens.indexOf('of');
  return at > 0 && at < tokens.length - 1
    ? [...tokens.slice(at + 1), ...tokens.slice(0, at)]
    : tokens.filter((token) => token !== 'of');
}

const WORDS_ALONE = /^[a-z]+(?: [a-z]+)*$/;

/** The words and numbers of a name, what is in brackets left out, head noun last where commas part them. */
function wordsOf(text: string): readonly string[] {
  // Nearly every name in the table is of this shape, and each is read before the first recipe.
  if (WORDS_ALONE.test(text)) return text.split(' ');
  const bare = text.includes('(') ? text.replace(/\([^)]*\)?/g, ' ') : text;
  return headLast(bare).match(/[a-z][a-z0-9]*|\d+(?:\.\d+)?%|\d+/g) ?? [];
}

/**
 * Canonical tokens of a name, head noun last. Text in brackets is left out.
 * Empty for a name without letters.
 */
export function tokensOf(name: string): string[] {
  const whole = plainText(name.length > 300 ? name.slice(0, 300) : name);
  const text = whole.includes('free') ? withoutFreeOf(whole) : whole;
  return ofLast(
    wordsOf(text)
      .map(canonical)
      .filter((token) => token !== ''),
  );
}
