/** Looks the names of a food table up; made once per table. */
import { type FoodTable, foodTable } from '../foods/index.ts';
import type { Food } from '../model.ts';
import { keysOf, type NameKeys } from './name-keys.ts';
import { ADJECTIVE } from './name-words.ts';
import { type Phrase, type Phrases, phrasesOf } from './phrases.ts';
import { READY_KEYS } from './ready-keys.ts';

export interface Candidate {
  food: Food;
  order: number;
  /** Fit, 0..1 (states may lift it a little above). */
  score: number;
  reason: string;
}

export interface Lookup extends Phrases {
  /** Whether a food has this very name, all words run together. */
  isName(key: string): boolean;
  /** Whether a word stands in some name, and is worth something there. */
  isWord(word: string): boolean;
  /** Words that are the head of some food: as a modifier they may change the food. */
  heads: ReadonlySet<string>;
  /** Known words by first letter, for slips of the pen. */
  vocabulary(): ReadonlyMap<string, readonly string[]>;
  /** Corrected words, filled as they are met. */
  slips: Map<string, string | null>;
  /** Answers, filled as names are met. */
  found: Map<string, readonly Candidate[]>;
}

/** Foods that follow each other in a table, with the keys of their names. */
interface Layer {
  foods: readonly Food[];
  keys: NameKeys;
}

let builtInKeys: NameKeys | null = READY_KEYS;

function builtIn(): Layer {
  const { foods } = foodTable();
  builtInKeys ??= keysOf(foods);
  return { foods, keys: builtInKeys };
}

const taken = (foods: readonly Food[]): Layer => ({ foods, keys: keysOf(foods) });

/** The user's own foods stand before the built-in ones, whose names need not be taken apart again. */
function layersOf({ foods }: FoodTable): Layer[] {
  const own = foods.length - foodTable().foods.length;
  const isBuiltInBehind =
    own >= 0 && foodTable().foods.every((food, at) => foods[own + at] === food);
  if (!isBuiltInBehind) return [taken(foods)];
  return own === 0 ? [builtIn()] : [taken(foods.slice(0, own)), builtIn()];
}

function vocabularyOf(words: Iterable<string>): Map<string, string[]> {
  const letters = new Map<string, string[]>();
  for (const word of words) {
    if (ADJECTIVE.has(word)) continue;
    const list = letters.get(word.charAt(0));
    if (list) list.push(word);
    else letters.set(word.charAt(0), [word]);
  }
  return letters;
}

function lookupIn(layers: readonly Layer[]): Lookup {
  let from = 0;
  const parts = layers.map(({ foods, keys }) => {
    const phrases = phrasesOf(foods, from, keys);
    from += foods.length;
    return phrases;
  });
  const all =
    (kind: keyof Phrases) =>
    (key: string): readonly Phrase[] =>
      parts.length === 1 ? (parts[0]?.[kind](key) ?? []) : parts.flatMap((part) => part[kind](key));
  const some = (kind: 'exact' | 'byWord') => (key: string) =>
    layers.some(({ keys }) => Object.hasOwn(keys[kind], key));
  let vocabulary: Map<string, string[]> | null = null;
  return {
    exact: all('exact'),
    bare: all('bare'),
    anyOrder: all('anyOrder'),
    byWord: all('byWord'),
    isName: some('exact'),
    isWord: some('byWord'),
    heads: new Set(layers.flatMap(({ keys }) => keys.heads)),
    vocabulary: () => {
      vocabulary ??= vocabularyOf(new Set(layers.flatMap(({ keys }) => Object.keys(keys.byWord))));
      return vocabulary;
    },
    slips: new Map(),
    found: new Map(),
  };
}

const cache = new WeakMap<FoodTable, Lookup>();

/** The names of a table; made on first use and kept as long as the table lives. */
export function lookupOf(table: FoodTable): Lookup {
  let lookup = cache.get(table);
  if (!lookup) {
    lookup = lookupIn(layersOf(table));
    cache.set(table, lookup);
  }
  return lookup;
}
