/** What may still be read out of a name that matches nothing as a whole. */
import type { Line } from '../../model.ts';
import kinds from '../data/unknown-kinds.json' with { type: 'json' };
import type { Candidate, Lookup } from '../lookup.ts';
import { bareTokens, keyOf } from '../name-keys.ts';
import { CLASS, GENERAL, GUARDED, headAt, worth } from '../name-words.ts';
import { tokensOf } from '../normalise.ts';
import { longestRun } from './longest-run.ts';

export type Find = (name: string) => readonly Candidate[];

/** Confidence of what each way finds, against a whole name. Own choice. */
const GLOSS = 0.85;
const ENDING = 0.75;
const FIRST_OF_SEVERAL = 0.8;
const UNKNOWN_KIND = 0.55;
const UNKNOWN_HEAD = 0.5;

const lowered = (
  found: readonly Candidate[],
  factor: number,
  reason?: string,
): readonly Candidate[] =>
  found.map((c) => ({ ...c, score: c.score * factor, reason: reason ?? c.reason }));

/** 'Komezu (rice vinegar)', 'lovage (or celery leaves)': the words in brackets say what it is. */
function fromBrackets(line: Line, find: Find): readonly Candidate[] {
  if (line.items.length > 1) return [];
  for (const [, inside = ''] of line.text.matchAll(/\(([^()]*[a-z][^()]*)\)/gi)) {
    const name = inside.replace(/^(?:aka|also known as|such as|like|or|i\.e\.|e\.g\.)[,\s]+/i, '');
    if (/\d|\bsee\b|\bnote|\brecipe|\boptional\b|\babout\b/i.test(name)) continue;
    const found = find(name);
    if (found.length > 0) return lowered(found, GLOSS);
  }
  return [];
}

/** Heads that another food's word before them turns into another food. */
const changes = (head: string): boolean => GUARDED.has(head) || CLASS.has(head);

/** 'Wild forest honey', 'house blend hot sauce': the longest end of the name that is a food. */
function fromEnding(name: string, lookup: Lookup, find: Find): readonly Candidate[] {
  const tokens = tokensOf(name);
  for (let from = 1; from < tokens.length; from += 1) {
    const end = tokens.slice(from);
    if (!lookup.isName(keyOf(end))) continue;
    const before = tokens.slice(0, from);
    const isFood = before.some((token) => worth(token) === 1 && lookup.isWord(token));
    const head = end[headAt(end)] ?? '';
    const isClass = end.length === 1 && CLASS.has(head);
    const mayChange = isClass || (isFood && changes(head));
    if (mayChange && !kinds.anyFlavour.includes(end.join(' '))) return [];
    return lowered(find(end.join(' ')), ENDING);
  }
  return [];
}

const LIST = /\s*,\s*(?:and\s+)?|\s+and\s+|\s+mixed with\s+|\s+plus\s+/i;

/** 'Oyster, morel and porcini mushrooms': the first of several, with the class word they share. */
function firstOfSeveral(name: string, find: Find): readonly Candidate[] {
  const parts = name.split(LIST).filter((part) => part.trim() !== '');
  if (parts.length < 2) return [];
  const last = bareTokens(tokensOf(parts[parts.length - 1] ?? ''));
  const shared = last[headAt(last)] ?? '';
  for (const part of parts) {
    const named = GENERAL.has(shared) ? find(`${part} ${shared}`) : [];
    const found = named.length > 0 ? named : find(part);
    if (found.length > 0) return lowered(found, FIRST_OF_SEVERAL);
  }
  return [];
}

/** 'Veal tail fillet', 'house seasoning': of a known class, though not of a known kind. */
function ofUnknownKind(name: string, find: Find): readonly Candidate[] {
  const tokens = tokensOf(name);
  const word = kinds.classes.find(({ words }) => words.some((known) => tokens.includes(known)));
  if (!word) return [];
  return lowered(find(word.food), UNKNOWN_KIND, `of a kind not known, taken as ${word.food}`);
}

/** 'Grinder rolls', 'house sauce': only what it is called at the end is known. */
function ofUnknownHead(name: string, find: Find): readonly Candidate[] {
  const tokens = tokensOf(name);
  const at = headAt(tokens);
  const head = tokens[at] ?? '';
  const two = `${tokens[at - 1]} ${head}`;
  const known = kinds.heads.find(({ words }) => words.includes(two) || words.includes(head));
  if (!known) return [];
  return lowered(find(known.food), UNKNOWN_HEAD, `of a kind not known, taken as ${known.food}`);
}

/** 'Flour sifter', 'wooden skewers': a thing to cook with. */
export const isTool = (name: string): boolean => {
  const tokens = tokensOf(name);
  const isMade = tokens.some((token) => kinds.materials.includes(token));
  return isMade || kinds.tools.includes(tokens[tokens.length - 1] ?? '');
};

/**
 * Candidates read from brackets, from the end of the name, from the first food of several, or from
 * its class alone; each less sure than the one before. Empty when nothing in the name is known, and for
 * tools.
 */
export function lastResort(
  name: string,
  line: Line,
  lookup: Lookup,
  find: Find,
): readonly Candidate[] {
  if (isTool(name)) return [];
  const ways = [
    () => fromBrackets(line, find),
    () => lowered(find(name), GLOSS),
    () => firstOfSeveral(name, find),
    () => fromEnding(name, lookup, find),
    () => ofUnknownKind(name, find),
    () => ofUnknownHead(name, find),
    () => longestRun(name, lookup, find),
  ];
  for (const way of ways) {
    const found = way();
    if (found.length > 0) return found;
  }
  return [];
}
