/**
 * The names of foods taken apart, as plain data: under which keys each name is looked up. A build holds the keys
 * of the built-in foods ready, as taking nine thousand names apart is most of what a first recipe waits for.
 */
import { headAt, stateOfWord, WEAK, worth } from './name-words.ts';
import { tokensOf } from './normalise.ts';

/** Numbers of names; one alone as it is. */
export type Numbers = number | readonly number[];
export type Keyed = Readonly<Record<string, Numbers>>;

/** A name's number: its place among all names of the foods, each food's own before its aliases. */
export interface NameKeys {
  /** By all words run together, so that 'corn starch' is 'cornstarch'. */
  exact: Keyed;
  /** The same without weak words and states, of names that have some: 'canned chickpeas' is under 'chickpea'. */
  bare: Keyed;
  /** By the words in alphabetical order, of names that have another: 'thigh skinless' is under 'skinless thigh'. */
  anyOrder: Keyed;
  /** By each word that is worth something. */
  byWord: Keyed;
  /** Words that are the head of some name. */
  heads: readonly string[];
}

export interface Named {
  name: string;
  aliases: readonly string[];
}

export const namesOf = ({ name, aliases }: Named): readonly string[] => [name, ...aliases];

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

export const headOf = (tokens: readonly string[]): string => tokens[headAt(tokens)] ?? '';

/** Words by which a name is searched for. */
const searchWords = (tokens: readonly string[]): string[] =>
  tokens.filter((word, at) => worth(word) >= 0.3 && tokens.indexOf(word) === at);

type Lists = Map<string, number[]>;

function add(lists: Lists, key: string, name: number): void {
  const list = lists.get(key);
  if (list) list.push(name);
  else lists.set(key, [name]);
}

const asData = (lists: Lists): Keyed =>
  Object.fromEntries(
    [...lists].map(([key, [first = 0, ...others]]): [string, Numbers] => [
      key,
      others.length === 0 ? first : [first, ...others],
    ]),
  );

export function keysOf(foods: readonly Named[]): NameKeys {
  const exact: Lists = new Map();
  const bare: Lists = new Map();
  const anyOrder: Lists = new Map();
  const byWord: Lists = new Map();
  const heads = new Set<string>();
  for (const [number, name] of foods.flatMap(namesOf).entries()) {
    const tokens = tokensOf(name);
    if (tokens.length === 0) continue;
    const whole = keyOf(tokens);
    const kept = keyOf(bareTokens(tokens));
    const sorted = orderlessKey(tokens);
    add(exact, whole, number);
    if (kept !== whole) add(bare, kept, number);
    if (sorted !== tokens.join(' ')) add(anyOrder, sorted, number);
    for (const word of searchWords(tokens)) add(byWord, word, number);
    const head = headOf(tokens);
    if (head !== '') heads.add(head);
  }
  return {
    exact: asData(exact),
    bare: asData(bare),
    anyOrder: asData(anyOrder),
    byWord: asData(byWord),
    heads: [...heads],
  };
}
