/** An index over a food table, built once per table: names to foods, words to names. */
import type { FoodTable } from '../foods/index.ts';
import type { Food } from '../model.ts';
import { ADJECTIVE, headAt, stateOfWord, WEAK, worth } from './name-words.ts';
import { tokensOf } from './normalise.ts';

/** One name or alias of a food, ready to compare. */
export interface Phrase {
  food: Food;
  /** Position of the food in the table; breaks ties the same way every time. */
  order: number;
  isName: boolean;
  tokens: readonly string[];
  head: string;
  weight: number;
}

export interface Candidate {
  food: Food;
  order: number;
  /** Fit, 0..1 (states may lift it a little above). */
  score: number;
  reason: string;
}

export interface Lookup {
  /** By all words run together, so that 'corn starch' is 'cornstarch'. */
  exact: ReadonlyMap<string, readonly Phrase[]>;
  /** The same without weak words and states: 'canned chickpeas' is under 'chickpea'. */
  bare: ReadonlyMap<string, readonly Phrase[]>;
  /** By the words in alphabetical order: 'skinless boneless thigh' is 'boneless skinless thigh'. */
  anyOrder: ReadonlyMap<string, readonly Phrase[]>;
  byWord: ReadonlyMap<string, readonly Phrase[]>;
  /** Words that are the head of some food: as a modifier they may change the food. */
  heads: ReadonlySet<string>;
  /** Known words by first letter, for slips of the pen. */
  vocabulary: ReadonlyMap<string, readonly string[]>;
  /** Corrected words, filled as they are met. */
  slips: Map<string, string | null>;
  /** Answers, filled as names are met. */
  found: Map<string, readonly Candidate[]>;
}

/** Key of the same words in any order. */
export const orderlessKey = (tokens: readonly string[]): string =>
  tokens.length < 2 ? (tokens[0] ?? '') : [...tokens].sort().join(' ');

export const keyOf = (tokens: readonly string[]): string => tokens.join('');

/** 'Whole cloves' are uncut ones; 'whole milk' and 'whole wheat' are foods of their own. */
const UNCUT = /^(?!milk|wheat|grain|meal|oat|rye|spelt|yogurt|barley|durum|kamut|einkorn|egg)/;
const isUncut = (token: string, next: string | undefined): boolean =>
  token === 'whole' && next !== undefined && UNCUT.test(next);

/** Tokens without weak words and state words; all of them when nothing would be left. */
export function bareTokens(tokens: readonly string[]): readonly string[] {
  const kept = tokens.filter(
    (token, at) =>
      !WEAK.has(token) && stateOfWord(token) === null && !isUncut(token, tokens[at + 1]),
  );
  return kept.length === 0 ? tokens : kept;
}

export const weightOf = (tokens: readonly string[]): number =>
  tokens.reduce((sum, token) => sum + worth(token), 0);

function add<T>(map: Map<string, T[]>, key: string, value: T): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}

function phrasesOf(food: Food, order: number): Phrase[] {
  return [food.name, ...food.aliases].flatMap((name, n) => {
    const tokens = tokensOf(name);
    const head = tokens[headAt(tokens)] ?? '';
    return tokens.length === 0
      ? []
      : [{ food, order, isName: n === 0, tokens, head, weight: weightOf(tokens) }];
  });
}

function vocabularyOf(words: Iterable<string>): Map<string, string[]> {
  const letters = new Map<string, string[]>();
  for (const word of words) add(letters, word.charAt(0), word);
  return letters;
}

function build(table: FoodTable): Lookup {
  const exact = new Map<string, Phrase[]>();
  const bare = new Map<string, Phrase[]>();
  const anyOrder = new Map<string, Phrase[]>();
  const byWord = new Map<string, Phrase[]>();
  const heads = new Set<string>();
  for (const [order, food] of table.foods.entries()) {
    for (const phrase of phrasesOf(food, order)) {
      add(exact, keyOf(phrase.tokens), phrase);
      add(anyOrder, orderlessKey(phrase.tokens), phrase);
      add(bare, keyOf(bareTokens(phrase.tokens)), phrase);
      for (const [at, word] of phrase.tokens.entries()) {
        if (worth(word) >= 0.3 && phrase.tokens.indexOf(word) === at) add(byWord, word, phrase);
      }
      if (phrase.head !== '') heads.add(phrase.head);
    }
  }
  return {
    exact,
    bare,
    anyOrder,
    byWord,
    heads,
    vocabulary: vocabularyOf([...byWord.keys()].filter((word) => !ADJECTIVE.has(word))),
    slips: new Map(),
    found: new Map(),
  };
}

const cache = new WeakMap<FoodTable, Lookup>();

/** The index of a table; built on first use and kept as long as the table lives. */
export function lookupOf(table: FoodTable): Lookup {
  let lookup = cache.get(table);
  if (!lookup) {
    lookup = build(table);
    cache.set(table, lookup);
  }
  return lookup;
}
