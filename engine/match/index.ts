/** Name of an ingredient -> food of the table, with how sure and what else it might be. */
import type { FoodTable } from '../foods/index.ts';
import type { Item, Line, Match } from '../model.ts';
import { ambiguousMatch } from './ambiguous.ts';
import synonyms from './data/synonyms.json' with { type: 'json' };
import { meantName } from './first-of-two.ts';
import {
  isOtherLanguage,
  matchAnyLanguage,
  matchOtherLanguage,
} from './languages/foreign-names.ts';
import { lastResort } from './last-resort.ts';
import {
  bareTokens,
  type Candidate,
  keyOf,
  type Lookup,
  lookupOf,
  orderlessKey,
  type Phrase,
} from './lookup.ts';
import { ADJECTIVE, CLASS, headAt, type State, stateOfWord, worth } from './name-words.ts';
import { isLeftover, nameByAmount } from './named-by-amount.ts';
import { tokensOf } from './normalise.ts';
import { FLOOR, nameFit, queryOf } from './score.ts';
import { withoutSlip } from './slips.ts';
import { OPPOSED, stateFit, wantedState } from './state.ts';

export interface MatchOptions {
  foods: FoodTable;
  /** The user's own names for foods: name -> food id. */
  aliases?: Record<string, string>;
  language?: string | null;
}

const OTHERS = 4;
const SYNONYMS = new Map(
  synonyms.map(([from = '', to = '']): [string, string] => [keyOf(tokensOf(from)), to]),
);

const byScore = (a: Candidate, b: Candidate): number => b.score - a.score || a.order - b.order;

/** The best candidate of each food, best first. */
function ranked(candidates: readonly Candidate[]): Candidate[] {
  const best = new Map<string, Candidate>();
  for (const candidate of candidates) {
    const known = best.get(candidate.food.id);
    if (!known || candidate.score > known.score) best.set(candidate.food.id, candidate);
  }
  return [...best.values()].sort(byScore);
}

const round = (value: number): number => Math.round(Math.max(0, Math.min(1, value)) * 100) / 100;

function toMatch(candidates: readonly Candidate[]): Match | null {
  const [first, ...rest] = ranked(candidates);
  if (!first || first.score < FLOOR) return null;
  return {
    foodId: first.food.id,
    foodName: first.food.name,
    confidence: round(first.score),
    reason: first.reason,
    others: rest.slice(0, OTHERS).map(({ food, score }) => ({
      foodId: food.id,
      foodName: food.name,
      confidence: round(Math.min(score, first.score)),
    })),
  };
}

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
  const exact = lookup.exact.get(keyOf(tokens)) ?? [];
  const bare = bareTokens(tokens);
  const head = tokens[headAt(tokens)] ?? '';
  const shuffled = (lookup.anyOrder.get(orderlessKey(tokens)) ?? []).filter(
    (phrase) => phrase.head === head,
  );
  const stateless = withoutState(tokens);
  const unstated = lookup.exact.get(keyOf(stateless)) ?? [];
  const plain = lookup.exact.get(keyOf(bare)) ?? [];
  const stated = lookup.bare.get(keyOf(bare)) ?? [];
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

function namesOrSynonyms(
  tokens: readonly string[],
  lookup: Lookup,
  wanted: State | null,
): Candidate[] {
  const names = byName(tokens, lookup, wanted);
  return names.some(({ score }) => score >= FLOOR) ? names : bySynonym(tokens, lookup, wanted);
}

function byWords(tokens: readonly string[], lookup: Lookup, wanted: State | null): Candidate[] {
  // 'Seeds' alone could be any of them.
  if (bareTokens(tokens).every((token) => CLASS.has(token))) return [];
  const query = queryOf(tokens);
  const seen = new Set<Phrase>();
  const candidates: Candidate[] = [];
  for (const token of tokens) {
    if (worth(token) < 0.3) continue;
    for (const phrase of lookup.byWord.get(token) ?? []) {
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
  return nouns.length > 1 && nouns.length < tokens.length && lookup.exact.has(keyOf(nouns));
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

function candidatesFor(
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
function matchName(name: string, lookup: Lookup, wanted: State | null): readonly Candidate[] {
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

const CHOICE = /\s+(?:and\/)?or\s+|\s*\/\s*/i;

/** 'butter or margarine' -> both names; 'lemon or lime juice' also lends its end: 'lemon juice'. */
function choices(name: string, item: Item): string[] {
  const parts = name.split(CHOICE).filter((part) => part.trim() !== '');
  const others = item.alternatives.map((other) => other.name);
  if (parts.length < 2) return others;
  const [, ...end] = (parts[parts.length - 1] ?? '').trim().split(/\s+/);
  const lent = end.length > 0 ? [`${parts[0]} ${end.join(' ')}`] : [];
  const nouns = [...lent, ...parts].filter((part) => headAt(tokensOf(part)) >= 0);
  return [...nouns, ...others];
}

const CITRUS = /^(?:.* )?(lemon|lime|orange|grapefruit|clementine|tangerine|mandarin)s?$/i;

/** '1 lemon, juiced' names its juice, '1 lemon, zested' its zest; 'zest and juice' the juice. */
function takenPart(item: Item, line: Line, named: string): string {
  const [whole = '', ...rest] = named.split(',');
  const fruit = CITRUS.exec(whole.trim())?.[1];
  const done = `${item.preparation ?? ''} ${rest.join(' ')} ${line.items.length === 1 ? (line.note ?? '') : ''}`;
  if (fruit === undefined || done.trim() === '') return named;
  if (/juice/i.test(done)) return `${fruit} juice`;
  return /zest|rind|peel(?!ed)/i.test(done) ? `${fruit} zest` : named;
}

/** 'Beets with greens', 'carrots with their tops on' name the root, not what hangs on it; nor does 'the size of a walnut' name a nut. */
const ATTACHED =
  /(?<=[a-z])\s+with (?:(?:the|their|its|some|leafy|green) )*(?:greens|leaves|leaf|tops|stems?|fronds|stalks?|roots?)(?: (?:attached|on))?$|\s+(?:about )?the size of .*$/i;

const SURE = 0.7;

const sure = (found: readonly Candidate[]): readonly Candidate[] | null =>
  found.some(({ score }) => score >= SURE) ? found : null;

/** Where a name ends and words about it begin: 'mussels in the shell', 'lime, zest and juice'. */
const ABOUT =
  /,\s*(?:pulp|zest|juice|flesh|seeds|leaves|stems)\b|\s(?:stuffed|packed|filled|with|without|in|from|such|like|to|for|until|of your|of choice)\s/i;

/** The whole name's candidates, or the surer ones of its part before words about it. */
function shortened(
  name: string,
  whole: readonly Candidate[],
  lookup: Lookup,
  wanted: State | null,
): readonly Candidate[] {
  const [start = ''] = name.split(ABOUT);
  if (start === name || start.trim() === '') return whole;
  const found = sure(matchName(start.trim(), lookup, wanted));
  return found ? found.map((c) => ({ ...c, score: c.score * 0.95 })) : whole;
}

/** Peppers of an unknown kind are no spice. */
function vegetablePeppers(
  name: string,
  found: readonly Candidate[],
  lookup: Lookup,
): readonly Candidate[] {
  const [first] = found;
  const isNearest = first?.food.id === 'black-pepper' && first.reason.startsWith('nearest');
  if (!isNearest || !/\bpeppers$/i.test(name)) return found;
  return matchName('bell pepper', lookup, null).map((c) => ({
    ...c,
    score: c.score * 0.65,
    reason: 'a pepper of a kind not known, taken as bell pepper',
  }));
}

function ownChoice(name: string, options: MatchOptions): Match | null {
  if (!options.aliases) return null;
  const key = keyOf(tokensOf(name));
  for (const [alias, id] of Object.entries(options.aliases)) {
    const food = options.foods.byId(id);
    if (food && keyOf(tokensOf(alias)) === key) {
      return {
        foodId: food.id,
        foodName: food.name,
        confidence: 1,
        reason: 'your own name for it',
        others: [],
      };
    }
  }
  return null;
}

/**
 * The food an item names. The user's own aliases win; then the same name in any spelling; then the
 * nearest name with the same head noun. `confidence` is 0..1; null when no food is near enough.
 */
export function matchItem(item: Item, line: Line, options: MatchOptions): Match | null {
  const own = ownChoice(item.name, options) ?? matchByName(item, line, options);
  if (own && own.confidence >= FAR_OFF) return own;
  return matchAnyLanguage(item, line, options.language, options.foods) ?? own;
}

function matchByName(item: Item, line: Line, options: MatchOptions): Match | null {
  const lookup = lookupOf(options.foods);
  const wanted = wantedState(item, line);
  if (isOtherLanguage(options.language)) {
    const found = matchOtherLanguage(item, line, options.language, options.foods);
    // English names are tried too, but only whole ones: its rules do not fit another language.
    return found?.confidence && found.confidence > 0.9
      ? found
      : (toMatch(namesOrSynonyms(tokensOf(item.name), lookup, wanted)) ?? found);
  }
  const name = nameByAmount(
    takenPart(item, line, meantName(item, lookup)).replace(ATTACHED, ''),
    item,
    line.text,
  );
  if (isLeftover(line)) return null;
  const asked = wanted === 'cooked' ? `cooked ${name}` : name;
  const usual =
    wanted === null || wanted === 'cooked' ? ambiguousMatch(asked, options.foods, lookup) : null;
  if (usual) return usual;
  const found = vegetablePeppers(name, matchName(name, lookup, wanted), lookup);
  const whole = sure(found) ?? shortened(name, found, lookup, wanted);
  if (sure(whole)) return toMatch(whole);
  const first = toMatch(whole);
  if (first && first.confidence >= UNSURE) return first;
  const chosen = fromChoices(choices(name, item), lookup, wanted);
  if (chosen && chosen.confidence > (first?.confidence ?? 0)) return chosen;
  const find = (part: string): readonly Candidate[] =>
    sure(matchName(part.trim(), lookup, wanted)) ?? [];
  const names = [name, ...item.alternatives.map((other) => other.name)];
  const read = names.map((one) => lastResort(one, line, lookup, find));
  const last = toMatch(read.find((found) => found.length > 0) ?? []);
  return last && last.confidence > (first?.confidence ?? 0) ? last : first;
}

/** Below this a whole name of another language is nearer. Own choice. */
const FAR_OFF = 0.5;

/** Below this another reading of the name is tried. */
const UNSURE = 0.6;

/** The first food that a line with a choice offers, a little less sure. */
function fromChoices(names: readonly string[], lookup: Lookup, wanted: State | null): Match | null {
  for (const name of names) {
    const found = candidatesFor(tokensOf(name), lookup, wanted);
    const match = toMatch(found.map((c) => ({ ...c, score: c.score * 0.9 })));
    if (match) return { ...match, reason: `${match.reason}; the line offers a choice` };
  }
  return null;
}
