/** Slips of the pen: the known word a misspelt one most likely stands for. */
import type { Lookup } from './lookup.ts';
import { ADJECTIVE, PART, STATE_WORDS, stateOfWord, WEAK } from './name-words.ts';

const SHORTEST = 5;
const SUBSTITUTED = 7;
const SLIP_CACHE_LIMIT = 5_000;

/**
 * Edits (insert, delete, replace, swap of neighbours) that turn `a` into `b`, counted up to
 * `limit`; anything beyond is `limit + 1`.
 */
export function editDistance(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, n) => n);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1];
      let cost = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1);
      cost = Math.min(cost, (last[j - 1] ?? 0) + (same ? 0 : 1));
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) cost = Math.min(cost, (before[j - 2] ?? 0) + 1);
      row.push(cost);
    }
    before = last;
    last = row;
  }
  return Math.min(last[b.length] ?? limit + 1, limit + 1);
}

const isSwap = (a: string, b: string): boolean => [...a].sort().join('') === [...b].sort().join('');

function nearest(word: string, lookup: Lookup): string | null {
  const limit = word.length >= 8 ? 2 : 1;
  let best: string | null = null;
  let bestDistance = limit + 1;
  for (const known of lookup.vocabulary().get(word.charAt(0)) ?? []) {
    if (known.length < SHORTEST) continue;
    // In a short word another letter in the same place is another word: 'wafer' is no 'water'.
    if (word.length < SUBSTITUTED && word.length === known.length && !isSwap(word, known)) continue;
    const distance = editDistance(word, known, limit);
    if (distance < bestDistance) {
      best = known;
      bestDistance = distance;
    }
  }
  return bestDistance <= 1 ? best : (nearAdjective(word) ?? best);
}

/** 'Groud pepper': one slip away from a word that only describes. */
function nearAdjective(word: string): string | null {
  for (const known of [...ADJECTIVE, ...STATE_WORDS]) {
    if (known.length < SHORTEST || known.charAt(0) !== word.charAt(0)) continue;
    if (known.length === word.length && !isSwap(word, known)) continue;
    if (editDistance(word, known, 1) <= 1) return known;
  }
  return null;
}

const isKnown = (word: string, lookup: Lookup): boolean =>
  lookup.isWord(word) ||
  ADJECTIVE.has(word) ||
  WEAK.has(word) ||
  PART.has(word) ||
  stateOfWord(word) !== null;

/** The word itself when known or too short to guess, else the nearest known word, else itself. */
export function withoutSlip(word: string, lookup: Lookup): string {
  if (word.length < SHORTEST || isKnown(word, lookup)) return word;
  let fixed = lookup.slips.get(word);
  if (fixed === undefined) {
    fixed = nearest(word, lookup);
    if (lookup.slips.size < SLIP_CACHE_LIMIT) lookup.slips.set(word, fixed);
  }
  return fixed ?? word;
}
