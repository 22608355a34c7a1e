/** How well a name of a food fits the words of a line. */
import type { Lookup, Phrase } from './lookup.ts';
import { weightOf } from './lookup.ts';
import { GENERAL, GUARDED, HARMLESS, headAt, WEAK, worth } from './words.ts';

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

/** A left-over word that is itself a food makes another food of the head: 'almond' in 'almond milk'. */
function strangeness(token: string, head: string, lookup: Lookup): number {
  if (WEAK.has(token) || worth(token) < 0.3) return 0;
  if (!lookup.heads.has(token) || GENERAL.has(token)) return GUARDED.has(head) ? 0.12 : 0.06;
  if (GUARDED.has(head) && !HARMLESS.has(head)) return 0.5;
  return HARMLESS.has(head) ? 0.12 : 0.3;
}

/** The head of the line's name, and whether the food's name may stand for it. */
function headFit(query: Query, phrase: Phrase): number {
  if (query.head === phrase.head) return 1;
  const has = (tokens: readonly string[], token: string): boolean => tokens.includes(token);
  if (GENERAL.has(query.head) && has(query.tokens, phrase.head)) {
    return query.tokens.indexOf(phrase.head) === headAt(query.tokens) - 1 ? 0.95 : 0.6;
  }
  if (GENERAL.has(phrase.head) && has(phrase.tokens, query.head)) {
    return phrase.tokens.indexOf(query.head) === headAt(phrase.tokens) - 1 ? 0.95 : 0.6;
  }
  return 0;
}

/** Fit of a food's name to the query, 0..1; 0 when the heads differ. */
export function nameFit(query: Query, phrase: Phrase, lookup: Lookup): number {
  const head = headFit(query, phrase);
  if (head === 0) return 0;
  let shared = 0;
  let strange = 0;
  for (const token of query.tokens) {
    if (phrase.tokens.includes(token)) shared += worth(token);
    else if (token !== query.head) strange += strangeness(token, phrase.head, lookup);
  }
  for (const token of phrase.tokens) {
    if (!query.tokens.includes(token) && token !== phrase.head) {
      strange += strangeness(token, query.head, lookup);
    }
  }
  const recall = query.weight === 0 ? 0 : shared / query.weight;
  const precision = phrase.weight === 0 ? 0 : shared / phrase.weight;
  // A word too many in the line ('Finn potatoes') is less grave than one too many in the food.
  const overlap = 0.4 + 0.25 * recall + 0.35 * precision;
  return Math.max(0, Math.min(1, overlap * head - strange));
}
