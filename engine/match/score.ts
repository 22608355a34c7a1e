/** How well a name of a food fits the words of a line. */
import type { Lookup } from './lookup.ts';
import { CLASS, DEFINING, GENERAL, GUARDED, HARMLESS, headAt, worth } from './name-words.ts';
import { type Phrase, weightOf } from './phrases.ts';

/** Below this a fit says nothing. */
export const FLOOR = 0.42;

export interface Query {
  tokens: readonly string[];
  head: string;
  weight: number;
}

export function queryOf(tokens: readonly string[]): Query {
  return { tokens, head: tokens[headAt(tokens)] ?? '', weight: weightOf(tokens) };
}

/** How far a left-over word makes another food of the head: 'almond' in 'almond milk', 0..0.5. */
function strangeness(token: string, head: string, lookup: Lookup, akin: boolean): number {
  const value = worth(token);
  if (DEFINING.has(token)) return 0.25;
  if (value < 0.2) return 0;
  if (value < 1) return 0.03;
  if (CLASS.has(head) && !akin) return lookup.heads.has(token) ? 0.5 : 0.4;
  const guarded = GUARDED.has(head);
  if (!guarded && GENERAL.has(token)) return 0.02;
  const known = lookup.isWord(token);
  if (!known) return guarded ? 0.1 : 0.06;
  if (HARMLESS.has(head)) return 0.12;
  if (guarded && !akin) return lookup.heads.has(token) ? 0.5 : 0.4;
  return lookup.heads.has(token) ? 0.3 : 0.08;
}

/** The head of the line's name, and whether the food's name may stand for it. */
function headFit(query: Query, phrase: Phrase): number {
  if (query.head === '') return 0;
  if (query.head === phrase.head) return 1;
  const has = (tokens: readonly string[], token: string): boolean => tokens.includes(token);
  if (GENERAL.has(query.head) && has(query.tokens, phrase.head)) {
    return query.tokens.indexOf(phrase.head) === headAt(query.tokens) - 1 ? 0.85 : 0.5;
  }
  if (GENERAL.has(phrase.head) && has(phrase.tokens, query.head)) {
    return phrase.tokens.indexOf(query.head) === headAt(phrase.tokens) - 1 ? 0.95 : 0.6;
  }
  return 0;
}

const sharesNoun = (query: Query, phrase: Phrase): boolean =>
  query.tokens.some(
    (token) => token !== query.head && worth(token) === 1 && phrase.tokens.includes(token),
  );

/** Fit of a food's name to the query, 0..1; 0 when the heads differ. */
export function nameFit(query: Query, phrase: Phrase, lookup: Lookup): number {
  const head = headFit(query, phrase);
  if (head === 0) return 0;
  let shared = 0;
  let strange = 0;
  const akin = sharesNoun(query, phrase);
  for (const token of query.tokens) {
    if (phrase.tokens.includes(token)) shared += worth(token);
    else if (token !== query.head) strange += strangeness(token, phrase.head, lookup, akin);
  }
  for (const token of phrase.tokens) {
    if (!query.tokens.includes(token) && token !== phrase.head) {
      strange += strangeness(token, query.head, lookup, akin);
    }
  }
  const recall = query.weight === 0 ? 0 : shared / query.weight;
  const precision = phrase.weight === 0 ? 0 : shared / phrase.weight;
  // A word too many in the line ('Finn potatoes') is less grave than one too many in the food.
  const overlap = 0.4 + 0.25 * recall + 0.35 * precision;
  return Math.max(0, Math.min(1, overlap * head - strange));
}
