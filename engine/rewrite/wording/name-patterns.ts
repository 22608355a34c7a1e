/** Patterns that find names in running text. */
import type { Mention } from '../naming/mention.ts';

/** Word boundaries that know letters beyond ASCII. */
export const START = String.raw`(?<![\p{L}\p{N}])`;
export const END = String.raw`(?![\p{L}\p{N}])`;

/** The text as a pattern that matches nothing but itself. */
export const literal = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Any of an ingredient's names, also in the plural. */
export const namePattern = ({ names }: Mention): RegExp =>
  new RegExp(`${START}(?:${names.map(literal).join('|')})(?:e?s)?${END}`, 'iu');
