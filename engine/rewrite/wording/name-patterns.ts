/** Patterns that find names in running text. */
import { keptResults } from '../../kept-results.ts';
import type { Mention } from '../naming/mention.ts';

/** Word boundaries that know letters beyond ASCII. */
export const START = String.raw`(?<![\p{L}\p{N}])`;
export const END = String.raw`(?![\p{L}\p{N}])`;

/** The text as a pattern that matches nothing but itself. */
export const literal = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Patterns of the ingredients of one recipe, which each sentence is held against. */
const MOST_PATTERNS = 512;

const patternOf = keptResults(
  MOST_PATTERNS,
  (names) => new RegExp(`${START}(?:${names})(?:e?s)?${END}`, 'iu'),
);

/** Any of an ingredient's names, also in the plural. */
export const namePattern = ({ names }: Mention): RegExp => patternOf(names.map(literal).join('|'));
