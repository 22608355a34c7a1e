/** The longest run of words within a name that is a food by itself. */
import type { Candidate, Lookup } from '../lookup.ts';
import { keyOf } from '../name-keys.ts';
import { CLASS, GUARDED, PART, worth } from '../name-words.ts';
import { tokensOf } from '../normalise.ts';

const LONGEST = 5;
/** Confidence when the run ends the name, and when other nouns stand behind it. Own choice. */
const AT_END = 0.65;
const WITHIN = 0.5;

const isNoun = (token: string): boolean => worth(token) === 1;

/** Words behind a run that make another product of it: 'oat cream', 'hazelnut spread', 'fig leaves'. */
const makesAnother = (after: readonly string[]): boolean =>
  after.some((token) => token === 'leaf' || CLASS.has(token) || GUARDED.has(token));

/** 'Old-mill oats traditional cut' is oats; words of a class alone ('seeds', 'mix') tell nothing. */
export function longestRun(
  name: string,
  lookup: Lookup,
  find: (name: string) => readonly Candidate[],
): readonly Candidate[] {
  const tokens = tokensOf(name);
  for (let length = Math.min(LONGEST, tokens.length - 1); length > 0; length -= 1) {
    for (let from = tokens.length - length; from >= 0; from -= 1) {
      const run = tokens.slice(from, from + length);
      const after = tokens.slice(from + length);
      if (!lookup.isName(keyOf(run)) || makesAnother(after)) continue;
      if (run.every((token) => !isNoun(token) || CLASS.has(token) || PART.has(token))) continue;
      const factor = after.some(isNoun) ? WITHIN : AT_END;
      const found = find(run.join(' '));
      if (found.length === 0) continue;
      return found.map((candidate) => ({
        ...candidate,
        score: candidate.score * factor,
        reason: `only '${run.join(' ')}' of the name is known`,
      }));
    }
  }
  return [];
}
