/** Text as the tables of words are looked up in it. */
import { withoutAccents } from './accents.ts';
import { keptResults } from './kept-results.ts';

/** Small letters without accents; whatever is no letter or digit becomes one space, also at both ends. */
const plain = (text: string): string =>
  ` ${withoutAccents(text.toLowerCase()).replace(/[^\p{L}\p{N}]+/gu, ' ')} `.replace(/ {2,}/g, ' ');

/** A plan asks for a handful of texts again and again: title, method, one line after the other. */
const MOST_TEXTS = 64;
export const plainWords = keptResults(MOST_TEXTS, plain);
