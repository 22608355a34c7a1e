/** Looks a name up: as it stands, by its head, by its nearest name, with slips of the pen mended. */
import { namesOrSynonyms } from './by-name.ts';
import type { Candidate, Lookup } from './lookup.ts';
import { bareTokens, keyOf } from './name-keys.ts';
import { ADJECTIVE, CLASS, headAt, type State, worth } from './name-words.ts';
import { tokensOf } from './normalise.ts';
import type { Phrase } from './phrases.ts';
import { OTHERS, ranked } from './ranked.ts';
import { FLOOR, nameFit, queryOf } from './score.ts';
import { withoutSlip } from './slips.ts';
import { OPPOSED, stateFit } from './state.ts';

function byWords(tokens: readonly string[], lookup: Lookup, wanted: State | null): Candidate[] {
  // 'Seeds' alone could be any of them.
  if (bareTokens(tokens).every((token) => CLASS.has(token))) return [];
  const query = queryOf(tokens);
  const seen = new Set<Phrase>();
  const candidates: Candidate[] = [];
  for (const token of tokens) {
    if (worth(token) < 0.3) continue;
    for (const phrase of lookup.byWord(token)) {
      if (seen.has(phrase)) continue;
      seen.add(phrase);
      const value = nameFit(query, phrase, lookup);
      const state = stateFit(phrase.food, wanted);
      if (value < FLOOR || state === OPPOSED) continue;
      candidates.push({
        food: phrase.food,
        order: phrase.order,
        score: Math.min(0.86, value * 0.86 + state / 2),
        reason: `nearest name: ${phrase.food.name}`,
      });
    }
  }
  return candidates;
}

/** 'Italian-style tomato puree' is a puree: its nouns together name a food. */
function isNamedWithoutKinds(tokens: readonly string[], lookup: Lookup): boolean {
  const nouns = bareTokens(tokens).filter((token) => !ADJECTIVE.has(token));
  return nouns.length > 1 && nouns.length < tokens.length && lookup.isName(keyOf(nouns));
}

/** 'boneless chicken breast halves' -> 'chicken breast': words after the head may be parts. */
function withoutParts(tokens: readonly string[]): readonly string[] {
  const bare = bareTokens(tokens);
  return bare.slice(0, headAt(bare) + 1);
}

/** 'Fig leaves' hold no fruit. */
const notLeafOfFruit =
  (tokens: readonly string[]) =>
  ({ food }: Candidate): boolean =>
    !(tokens.includes('leaf') && food.group === 'fruit');

const LEAFY = /^(?:leaf|sprig|handful|bunch|head)\b/;

/** 'Summer leaves' are no summer squash: a nearest name must have leaves where the line has them. */
const isLeafWhereAsked =
  (tokens: readonly string[]) =>
  ({ food }: Candidate): boolean =>
    !tokens.includes('leaf') || food.measures.some(({ unit }) => LEAFY.test(unit));

/** Foods whose name fits these words, the surer ways first. */
export function candidatesFor(
  tokens: readonly string[],
  lookup: Lookup,
  wanted: State | null,
): Candidate[] {
  if (tokens.length === 0) return [];
  const whole = namesOrSynonyms(tokens, lookup, wanted);
  if (whole.length > 0) return whole;
  const head = withoutParts(tokens);
  const shorter = head.length > 0 && head.length < bareTokens(tokens).length;
  if (shorter && !isNamedWithoutKinds(tokens, lookup)) {
    const found = namesOrSynonyms(head, lookup, wanted).filter(notLeafOfFruit(tokens));
    if (found.length > 0) return found.map((c) => ({ ...c, score: c.score - 0.05 }));
  }
  return byWords(tokens, lookup, wanted).filter(isLeafWhereAsked(tokens));
}

function withSlips(tokens: readonly string[], lookup: Lookup, wanted: State | null): Candidate[] {
  const fixed = tokens.map((token) => withoutSlip(token, lookup));
  if (keyOf(fixed) === keyOf(tokens)) return [];
  return candidatesFor(fixed, lookup, wanted).map((candidate) => ({
    ...candidate,
    score: candidate.score * 0.85,
    reason: `${candidate.reason} (read as '${fixed.join(' ')}')`,
  }));
}

const MEMORY_LIMIT = 10_000;

/** A name on its own, without what may stand in for it; remembered, as names come back often. */
export function matchName(
  name: string,
  lookup: Lookup,
  wanted: State | null,
): readonly Candidate[] {
  const key = `${wanted ?? ''}|${name}`;
  const known = lookup.found.get(key);
  if (known) return known;
  const found = ranked(search(name, lookup, wanted)).slice(0, OTHERS + 1);
  if (lookup.found.size < MEMORY_LIMIT) lookup.found.set(key, found);
  return found;
}

function search(name: string, lookup: Lookup, wanted: State | null): Candidate[] {
  const tokens = tokensOf(name);
  const found = candidatesFor(tokens, lookup, wanted);
  if (found.some((candidate) => candidate.score >= 0.7)) return found;
  return [...found, ...withSlips(tokens, lookup, wanted)];
}

const SURE = 0.7;

/** The candidates, when one of them is sure enough to need no other reading. */
export const sure = (found: readonly Candidate[]): readonly Candidate[] | null =>
  found.some(({ score }) => score >= SURE) ? found : null;

/** Where a name ends and words about it begin: 'mussels in the shell', 'lime, zest and juice'. */
const ABOUT =
  /,\s*(?:pulp|zest|juice|flesh|seeds|leaves|stems)\b|\s(?:stuffed|packed|filled|with|without|in|from|such|like|to|for|until|of your|of choice)\s/i;

/** The whole name's candidates, or the surer ones of its part before words about it. */
export function shortened(
  name: string,
  whole: readonly Candidate[],
  lookup: Lookup,
  wanted: State | null,
): readonly Candidate[] {
  const [start = ''] = name.split(ABOUT);
  if (start === name || start.trim() === '') return whole;
  const found = matchName(start.trim(), lookup, wanted).map((c) => ({
    ...c,
    score: c.score * 0.95,
  }));
  return (found[0]?.score ?? 0) > (whole[0]?.score ?? 0) ? found : whole;
}
