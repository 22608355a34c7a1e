/** Word classes that decide what a word in a food name is worth. */
import words from './data/words.json' with { type: 'json' };

const setOf = (list: readonly string[]): ReadonlySet<string> => new Set(list);

/** Words that say how good, how large or how cut: they never change which food it is. */
export const WEAK = setOf(words.weak);
/** Words that tell the kind of a food but never name one. */
export const ADJECTIVE = setOf(words.adjective);
/** Words that make another product of a food ('evaporated milk'): a name without them is another food. */
export const DEFINING = setOf(words.defining);
/** Nouns for a part or shape of a food ('clove', 'fillet'): the food is named by the word before. */
export const PART = setOf(words.part);
/** Class nouns a food is known without: 'cheddar' is 'cheddar cheese'. */
export const GENERAL = setOf(words.general);
/** Heads whose food stays about the same whatever noun stands before ('walnut oil', 'pork sausage'). */
export const HARMLESS = setOf(words.harmless);
/** Heads that name a class only: what stands before them says which food it is ('poppy seed'). */
export const CLASS = setOf(words.class);
/** Heads that become another food with a food noun before them ('almond milk', 'rice vinegar'). */
export const GUARDED = setOf(words.guarded);

export type State = 'canned' | 'cooked' | 'dry' | 'frozen' | 'raw';

const STATES: readonly (readonly [State, ReadonlySet<string>])[] = [
  ['canned', setOf(words.canned)],
  ['cooked', setOf(words.cooked)],
  ['frozen', setOf(words.frozen)],
  ['dry', setOf(words.dry)],
  ['raw', setOf(words.raw)],
];

const STATE_OF = new Map<string, State>(
  STATES.flatMap(([state, set]) => [...set].map((word): [string, State] => [word, state])),
);

/** Every word that tells a state. */
export const STATE_WORDS: readonly string[] = [...STATE_OF.keys()];

/** The state a word asks for, or null. */
export const stateOfWord = (word: string): State | null => STATE_OF.get(word) ?? null;

const isNumber = (token: string): boolean => token >= '0' && token < ':';

/** What each listed word is worth; a later list overrules an earlier one. */
const WORTH = new Map<string, number>([
  ...[...ADJECTIVE].map((word) => [word, 0.4] as const),
  ...[...PART].map((word) => [word, 0.3] as const),
  ...STATE_WORDS.map((word) => [word, 0.12] as const),
  ...[...WEAK].map((word) => [word, 0.04] as const),
]);

/** Worth of a token in a comparison, 0..1. */
export const worth = (token: string): number => WORTH.get(token) ?? (isNumber(token) ? 0.04 : 1);

/** Parts are nouns though they name no food. */
const isNoun = (token: string): boolean =>
  !WEAK.has(token) && !isNumber(token) && !ADJECTIVE.has(token) && stateOfWord(token) === null;

/**
 * Position of the head noun: the last noun that is not the name of a part, else the last part
 * ('whole cloves'); -1 when there is no noun at all.
 */
export function headAt(tokens: readonly string[]): number {
  let part = -1;
  for (let at = tokens.length - 1; at >= 0; at -= 1) {
    const token = tokens[at] ?? '';
    if (!isNoun(token)) continue;
    if (!PART.has(token)) return at;
    if (part < 0) part = at;
  }
  return part;
}
