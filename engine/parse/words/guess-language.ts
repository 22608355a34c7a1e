/** Guesses the language of a line that stands alone, by its units and small words. */
import { LANGUAGES, SHARED_UNITS } from './language-data.ts';
import { lexiconOf } from './lexicon.ts';

type Vote = readonly [code: string, weight: number];
let markers: ReadonlyMap<string, readonly Vote[]> | null = null;

/** Words of measures and the language's marks (weight 2), preparation and grammar (1) -> the languages that use them. */
function markerWords(): ReadonlyMap<string, readonly Vote[]> {
  const owners = new Map<string, Vote[]>();
  const met = new Set();
  for (const [code, data] of Object.entries(LANGUAGES)) {
    // Of those that share a file the first speaks for all.
    if (met.has(data)) continue;
    met.add(data);
    const lex = lexiconOf(code);
    const own = new Map<string, number>();
    const lists = [lex.prep, lex.descriptors, lex.of, lex.and, lex.or, lex.purposeStarts];
    if (code === 'en') lists.push(lex.noteStarts, lex.heads);
    for (const list of lists) for (const word of list) own.set(word, 1);
    for (const word of data.marks?.split(' ') ?? []) own.set(word, 2);
    for (const [form, unit] of lex.units) {
      if (unit.name in SHARED_UNITS && unit.scale === 1) continue;
      for (const word of form.split(' ')) own.set(word, 2);
    }
    for (const [word, weight] of own) {
      // 'c' may be any language's; 'à' says something
      if (code === 'en' || !/^[a-z]$/.test(word))
        owners.set(word, [...(owners.get(word) ?? []), [code, weight]]);
    }
  }
  return owners;
}

/** How far another language must lead where the line has English words too: it may only name a dish. */
const LEAD_OVER_ENGLISH = 2;

/** The language whose measures, participles and small words stand most among lower-case words; 'en' when in doubt. */
export function guessLanguage(words: readonly string[]): string {
  markers ??= markerWords();
  const tally = new Map<string, number>();
  for (const word of words)
    for (const [code, weight] of markers.get(word) ?? [])
      tally.set(code, (tally.get(code) ?? 0) + weight);
  const english = tally.get('en') ?? 0;
  const least = english && english + LEAD_OVER_ENGLISH - 1;
  let best = 'en';
  let most = least;
  for (const [code, n] of tally) {
    const ahead = n === most && n > least && lettersOf(code, words) > lettersOf(best, words);
    if (n > most || ahead) best = code;
    most = Math.max(most, n);
  }
  return best;
}

/** How many of the words' letters are a language's own. */
const lettersOf = (code: string, words: readonly string[]): number =>
  [...words.join('')].filter((letter) => LANGUAGES[code]?.letters?.includes(letter)).length;
