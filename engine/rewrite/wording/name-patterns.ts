/** Patterns that find names in running text. */
import { keptFor, keptResults } from '../../kept-results.ts';
import { WORD } from '../../letters.ts';
import type { Mention } from '../naming/mention.ts';

/** Word boundaries that know letters beyond ASCII. */
export const START = `(?<!${WORD})`;
export const END = `(?!${WORD})`;

/** The text as a pattern that matches nothing but itself. */
export const literal = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Patterns of the ingredients of one recipe, which each sentence is held against. */
const MOST_PATTERNS = 512;

const patternOf = keptResults(
  MOST_PATTERNS,
  (names) => new RegExp(`${START}(?:${names})(?:e?s)?${END}`, 'iu'),
);

const patternFor = keptFor((names: Mention['names']) => patternOf(names.map(literal).join('|')));

/** Any of an ingredient's names, also in the plural. */
export const namePattern = ({ names }: Mention): RegExp => patternFor(names);

/** Texts of one recipe's method, which every ingredient is looked for in. */
const MOST_TEXTS = 256;

/** The text in small letters; empty for one with letters whose case is no matter of single signs. */
const lowered = keptResults(MOST_TEXTS, (text) =>
  /[^\p{ASCII}\u0080-\u00ff\u2010-\u2027]/u.test(text) ? '' : text.toLowerCase(),
);

const loweredNames = keptFor((names: Mention['names']) => names.map((name) => name.toLowerCase()));

/** Whether a text says one of an ingredient's names: as its pattern does, which most texts need not be held against. */
export function isNamedIn(text: string, mention: Mention): boolean {
  const small = lowered(text);
  if (
    small !== '' &&
    mention.names.length > 0 &&
    !loweredNames(mention.names).some((name) => small.includes(name))
  )
    return false;
  return namePattern(mention).test(text);
}
