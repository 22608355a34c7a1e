/** The foods that a line offers to choose from ('butter or margarine'). */
import type { Item, Match } from '../model.ts';
import type { Lookup } from './lookup.ts';
import { headAt, type State } from './name-words.ts';
import { tokensOf } from './normalise.ts';
import { toMatch } from './ranked.ts';
import { candidatesFor } from './search.ts';

const CHOICE = /\s+(?:and\/)?or\s+|\s*\/\s*/i;

/** 'butter or margarine' -> both names; 'lemon or lime juice' also lends its end: 'lemon juice'. */
export function choices(name: string, item: Item): string[] {
  const parts = name.split(CHOICE).filter((part) => part.trim() !== '');
  const others = item.alternatives.map((other) => other.name);
  if (parts.length < 2) return others;
  const [, ...end] = (parts[parts.length - 1] ?? '').trim().split(/\s+/);
  const lent = end.length > 0 ? [`${parts[0]} ${end.join(' ')}`] : [];
  const nouns = [...lent, ...parts].filter((part) => headAt(tokensOf(part)) >= 0);
  return [...nouns, ...others];
}

/** The first food that a line with a choice offers, a little less sure. */
export function fromChoices(
  names: readonly string[],
  lookup: Lookup,
  wanted: State | null,
): Match | null {
  for (const name of names) {
    const found = candidatesFor(tokensOf(name), lookup, wanted);
    const match = toMatch(found.map((c) => ({ ...c, score: c.score * 0.9 })));
    if (match) return { ...match, reason: `${match.reason}; the line offers a choice` };
  }
  return null;
}
