/** The names of some foods under their keys; a name is taken apart when it is first met. */
import type { Food } from '../model.ts';
import { bareTokens, headOf, type Keyed, keyOf, type NameKeys, namesOf } from './name-keys.ts';
import { worth } from './name-words.ts';
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

/** Phrases of each kind of key, in the order of the table. */
export interface Phrases {
  exact(key: string): readonly Phrase[];
  bare(key: string): readonly Phrase[];
  anyOrder(key: string): readonly Phrase[];
  byWord(word: string): readonly Phrase[];
}

export const weightOf = (tokens: readonly string[]): number =>
  tokens.reduce((sum, token) => sum + worth(token), 0);

function numbersAt(keyed: Keyed, key: string): readonly number[] {
  // A word of a line may be that of something every object has.
  const value = Object.hasOwn(keyed, key) ? keyed[key] : undefined;
  if (value === undefined) return [];
  return typeof value === 'number' ? [value] : value;
}

/** The name of each number, with its food. */
const numbered = (foods: readonly Food[]) =>
  foods.flatMap((food, at) =>
    namesOf(food).map((name, n) => ({ food, at, name, isName: n === 0 })),
  );

/** `foods` stand in their table from position `from` on; `keys` are those of their names. */
export function phrasesOf(foods: readonly Food[], from: number, keys: NameKeys): Phrases {
  const names = numbered(foods);
  const met = new Map<number, Phrase>();
  const takenApart = (number: number): Phrase[] => {
    const known = met.get(number);
    if (known) return [known];
    const named = names[number];
    if (!named) return [];
    const { food, at, name, isName } = named;
    const tokens = tokensOf(name);
    const order = from + at;
    const phrase = { food, order, isName, tokens, head: headOf(tokens), weight: weightOf(tokens) };
    met.set(number, phrase);
    return [phrase];
  };
  const taken = (numbers: readonly number[]): Phrase[] => numbers.flatMap(takenApart);
  /** Those of a key, and those under another one that fit as well. */
  const withOthers = (
    own: readonly number[],
    others: readonly number[],
    fits: (tokens: readonly string[]) => boolean,
  ): Phrase[] => {
    const more = others.filter((number) => takenApart(number).some(({ tokens }) => fits(tokens)));
    return taken([...own, ...more].sort((a, b) => a - b));
  };
  return {
    exact: (key) => taken(numbersAt(keys.exact, key)),
    byWord: (word) => taken(numbersAt(keys.byWord, word)),
    bare: (key) =>
      withOthers(
        numbersAt(keys.bare, key),
        numbersAt(keys.exact, key),
        (tokens) => keyOf(bareTokens(tokens)) === key,
      ),
    anyOrder: (key) =>
      withOthers(
        numbersAt(keys.anyOrder, key),
        numbersAt(keys.exact, key.replaceAll(' ', '')),
        (tokens) => tokens.join(' ') === key,
      ),
  };
}
