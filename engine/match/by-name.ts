/** Foods that bear a name word for word, in another state, or under another name for the same thing. */
import synonyms from './data/synonyms.json' with { type: 'json' };
import type { Candidate, Lookup } from './lookup.ts';
import { bareTokens, keyOf, orderlessKey } from './name-keys.ts';
import { headAt, type State, stateOfWord } from './name-words.ts';
import { tokensOf } from './normalise.ts';
import type { Phrase } from './phrases.ts';
import { FLOOR } from './score.ts';
import { stateFit } from './state.ts';

const SYNONYMS = new Map(
  synonyms.map(([from = '', to = '']): [string, string] => [keyOf(tokensOf(from)), to]),
);

function named(
  phrases: readonly Phrase[],
  wanted: State | null,
  score: number,
  reason: string,
): Candidate[] {
  return phrases.map(({ food, order, isName }) => ({
    food,
    order,
    score: score + (isName ? 0.01 : 0) + stateFit(food, wanted),
    reason,
  }));
}

/** A name that says the state itself, word for word, is not held against the food's own state. */
function namedExactly(
  tokens: readonly string[],
  phrases: readonly Phrase[],
  wanted: State | null,
): Candidate[] {
  const statesIt = tokens.some((token) => stateOfWord(token) !== null);
  const found = named(phrases, wanted, 0.96, 'same name');
  return statesIt ? found.map((c) => ({ ...c, score: Math.max(c.score, 0.97) })) : found;
}

const withoutState = (tokens: readonly string[]): string[] =>
  tokens.filter((token) => stateOfWord(token) === null);

/** Foods that bear this very name, and those that bear it in another state. */
function byName(tokens: readonly string[], lookup: Lookup, wanted: State | null): Candidate[] {
  const exact = lookup.exact(keyOf(tokens));
  const bare = bareTokens(tokens);
  const head = tokens[headAt(tokens)] ?? '';
  const shuffled = lookup.anyOrder(orderlessKey(tokens)).filter((phrase) => phrase.head === head);
  const stateless = withoutState(tokens);
  const unstated = lookup.exact(keyOf(stateless));
  const plain = lookup.exact(keyOf(bare));
  const stated = lookup.bare(keyOf(bare));
  // 'Wild rice' that is cooked is first of all the food that differs in its state alone.
  const sameButState =
    wanted === 'raw'
      ? []
      : stated.filter((phrase) => keyOf(withoutState(phrase.tokens)) === keyOf(stateless));
  return [
    ...namedExactly(tokens, exact, wanted),
    ...named(shuffled, wanted, 0.95, 'same name'),
    ...named(unstated, wanted, 0.9, 'same name, leaving out words of state'),
    ...named(plain, wanted, 0.88, 'same name, leaving out words of quality, cut or state'),
    ...named(sameButState, wanted, 0.87, 'same food, another state'),
    ...named(stated, wanted, 0.85, 'same food, another state or grade'),
  ];
}

function bySynonym(tokens: readonly string[], lookup: Lookup, wanted: State | null): Candidate[] {
  const other = SYNONYMS.get(keyOf(tokens)) ?? SYNONYMS.get(keyOf(bareTokens(tokens)));
  if (other === undefined) return [];
  return byName(tokensOf(other), lookup, wanted).map((candidate) => ({
    ...candidate,
    score: candidate.score - 0.01,
    reason: `another name for ${other}`,
  }));
}

/** Foods of this name, or of another name for it when none bears it. */
export function namesOrSynonyms(
  tokens: readonly string[],
  lookup: Lookup,
  wanted: State | null,
): Candidate[] {
  const names = byName(tokens, lookup, wanted);
  return names.some(({ score }) => score >= FLOOR) ? names : bySynonym(tokens, lookup, wanted);
}
