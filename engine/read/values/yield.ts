/** Servings and pieces that a page says a recipe makes. */

import { LETTER, LETTERS } from '../../letters.ts';
import type { Yield } from '../../model.ts';
import servingWords from '../data/serving-words.json' with { type: 'json' };
import words from '../data/yield-words.json' with { type: 'json' };
import { cleanText, isLeftover } from '../document/clean-text.ts';
import {
  BOUND,
  COUNT_PEOPLE,
  countValue,
  DIGITS,
  isBelievable,
  PEOPLE_COUNT,
  RANGE,
  servingsRange,
  statedServings,
  TO,
  withoutServingSizes,
} from './stated-servings.ts';

const SIZES = servingWords.sizes.join('|');
const COUNT_NOUN = new RegExp(
  `(?<![${LETTERS}\\d/.,])${RANGE}[\\s-]*((?:${LETTER}[${LETTERS}'’.-]*\\s?){1,5})`,
  'gi',
);

function withoutSizes(text: string): string {
  return text
    .replace(SIZED, ' ')
    .replace(/\(\s*\)/g, ' ')
    .replace(/\s+/g, ' ');
}

const SIZE = new RegExp(`^(?:${SIZES})${BOUND}`, 'i');
const PART = new RegExp(`^(?:${LETTER}+\\s)?(?:${words.parts.join('|')})${BOUND}`, 'i');
const FILLER = new RegExp(`^(?:${words.filler.join('|')})${BOUND}\\s*`, 'i');

/** Sizes: '(9-inch)', '23 cm', '9x5-inch', '20 x 30 cm'. */
const SIZED = new RegExp(
  `\\(?\\d+(?:[.,]\\d+)?(?:\\s?[x×]\\s?\\d+(?:[.,]\\d+)?)*[\\s-]*(?:cm|mm|inch(?:es)?|in|″|")${BOUND}(?:\\s(?:round|square|tins?|pans?))*\\)?`,
  'gi',
);

/** '250 grams': the mass of the whole, no count. */
const SIZED_NUMBER = new RegExp(`\\d\\s?(?:${SIZES})${BOUND}`, 'i');

/** Pieces a text counts: '12 cookies', '1 loaf'; a count of slices beats the count of the loaf. */
function statedPieces(whole: string): Yield['pieces'] {
  const text = withoutSizes(whole);
  let best: Yield['pieces'] = null;
  for (const found of text.matchAll(COUNT_NOUN)) {
    const count = countValue(found[1] ?? '');
    const noun = (found[3] ?? '').replace(/[\s.'’-]+$/, '').replace(FILLER, '');
    if (!isBelievable(count) || noun === '' || SIZE.test(noun)) continue;
    if (best === null || (PART.test(noun) && count > best.count)) best = { count, noun };
  }
  return best;
}

const BARE = new RegExp(
  `^(?:${words.label.join('|')})?[\\s:=~]*(${DIGITS})(?:${TO}(${DIGITS}))?\\s*[.+]?$`,
  'i',
);

/** '4 (12-16 tortillas)': servings, and the pieces they are made of. */
const SERVINGS_OF_PIECES = /^\D{0,20}?(\d{1,2})\s?\((\D{0,10}\d[^()]*)\)\.?$/;

function servingsOfPieces(text: string): Pick<Yield, 'servings' | 'pieces'> | null {
  const found = SERVINGS_OF_PIECES.exec(text);
  const pieces =
    found && withoutSizes(found[2] ?? '').trim() !== '' && statedPieces(found[2] ?? '');
  if (!pieces || Number(found[1]) < 2) return null;
  return { servings: servingsRange(found[1], undefined), pieces };
}

function bareServings(text: string): Yield['servings'] {
  const bare = BARE.exec(text.trim());
  return bare ? servingsRange(bare[1], bare[2]) : null;
}

/**
 * Reads yield statements of one source (a page's words, cleaned or not; the entry with words is the one
 * shown). A bare number counts as servings only when no entry has words: of '12' and '12 cookies' the
 * number is the cookies' count. Ranges keep both ends.
 */
export function readYield(statements: readonly string[]): Yield {
  const texts = statements
    .map((text) => cleanText(text).slice(0, 300))
    .filter((text) => !isLeftover(text) && text !== '0');
  const worded = texts.filter((text) => /\p{L}/u.test(text) && !BARE.test(text));
  const text = worded[0] ?? texts[0] ?? null;
  if (text === null) return { text: null, servings: null, pieces: null };
  for (const one of worded) {
    const both = servingsOfPieces(one);
    if (both) return { text: one, ...both };
    const servings = statedServings(one) ?? bareServings(withoutServingSizes(one));
    if (!servings) continue;
    const rest = withoutServingSizes(one).replace(COUNT_PEOPLE, ' ').replace(PEOPLE_COUNT, ' ');
    return { text: one, servings, pieces: statedPieces(rest) };
  }
  for (const one of worded) {
    const pieces = statedPieces(one);
    if (pieces) return { text: one, servings: null, pieces };
  }
  if (worded.length > 0) {
    if (SIZED_NUMBER.test(text)) return { text, servings: null, pieces: null };
    const count = countValue(/(\d+(?:[.,]\d+)?)\D*$/.exec(withoutSizes(text))?.[1] ?? text);
    const pieces = isBelievable(count) ? { count, noun: 'pieces' } : null;
    return { text, servings: null, pieces };
  }
  return { text, servings: bareServings(text), pieces: null };
}
