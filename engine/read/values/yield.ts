/** Servings and pieces that a page says a recipe makes. */
import type { Yield } from '../../model.ts';
import { numberValue } from '../../numerals.ts';
import words from '../data/yield-words.json' with { type: 'json' };
import { cleanText, isLeftover } from '../document/clean-text.ts';
import { LETTER, LETTERS, WORD } from './letters.ts';

const WORD_NUMBERS = words.numbers
  .map(([word]) => String(word))
  .sort((a, b) => b.length - a.length);
const DIGITS = String.raw`\d+\s+\d+\/\d+|\d+\/\d+|\d+[.,]\d+|\d+\s?[¼½¾⅓⅔]|\d+|[¼½¾⅓⅔]`;
const NUMBER = `(?:${DIGITS}|(?:${WORD_NUMBERS.join('|')})(?!${LETTER}))`;
const TO = String.raw`\s?(?:-|–|—|~|to|bis|à|a|tot|till|til|of|or|oder|ou|o|até|al)\s?`;
const RANGE = `(${NUMBER})(?:${TO}(${NUMBER}))?`;
const BOUND = `(?!${WORD})`;
const PEOPLE = `(?:${words.people.join('|')})`;
const SIZES = `(?!\\s*(?:${words.sizes.join('|')})${BOUND})`;

/** '4 servings', '4-6 people', 'für 4 Personen', '4人分'. */
const COUNT_PEOPLE = new RegExp(
  `(?<![${LETTERS}\\d/.,])${RANGE}[\\s-]*(?:${LETTER}+\\s)?${PEOPLE}${BOUND}`,
  'i',
);
/** 'Serves 4', 'Servings: 4-6', 'Portionen 4'. */
const PEOPLE_COUNT = new RegExp(
  `(?<!${LETTER})(?:${words.serves.join('|')}|${PEOPLE})(?!${LETTER})[\\s:=(]*(?:${words.about.join('|')})?\\s*${RANGE}${BOUND}${SIZES}`,
  'i',
);
/** 'Voor 4', 'Pour 6': a preposition counts only when the number is all there is. */
const FOR_COUNT = new RegExp(`^(?:${words.prepositions.join('|')})\\s+${RANGE}[\\s.:]*$`, 'i');
const COUNT_NOUN = new RegExp(
  `(?<![${LETTERS}\\d/.,])${RANGE}[\\s-]*((?:${LETTER}[${LETTERS}'’.-]*\\s?){1,5})`,
  'gi',
);

const NUMBER_WORDS = new Map(words.numbers as [string, number][]);

/** The value of a number as yields write it, in figures or as a word ('dozen'). Null if it is none. */
function value(text: string): number | null {
  return NUMBER_WORDS.get(text.toLowerCase()) ?? numberValue(text);
}

function believable(count: number | null): count is number {
  return count !== null && count > 0 && count < 10_000;
}

function range(low: string | undefined, high: string | undefined): Yield['servings'] {
  const from = value(low ?? '');
  const to = high === undefined ? from : value(high);
  if (!believable(from) || !believable(to)) return null;
  return to >= from ? { low: from, high: to } : { low: from, high: from };
}

/** Servings stated in a text that names people or servings, else null. */
export function statedServings(text: string): Yield['servings'] {
  const found = COUNT_PEOPLE.exec(text) ?? PEOPLE_COUNT.exec(text) ?? FOR_COUNT.exec(text);
  return found ? range(found[1], found[2]) : null;
}

function withoutSizes(text: string): string {
  return text
    .replace(SIZED, ' ')
    .replace(/\(\s*\)/g, ' ')
    .replace(/\s+/g, ' ');
}

const SIZE = new RegExp(`^(?:${words.sizes.join('|')})${BOUND}`, 'i');
const PART = new RegExp(`^(?:${LETTER}+\\s)?(?:${words.parts.join('|')})${BOUND}`, 'i');
const FILLER = new RegExp(`^(?:${words.filler.join('|')})${BOUND}\\s*`, 'i');

/** Sizes: '(9-inch)', '23 cm', '9x5-inch', '20 x 30 cm'. */
const SIZED = new RegExp(
  `\\(?\\d+(?:[.,]\\d+)?(?:\\s?[x×]\\s?\\d+(?:[.,]\\d+)?)*[\\s-]*(?:cm|mm|inch(?:es)?|in|″|")${BOUND}(?:\\s(?:round|square|tins?|pans?))*\\)?`,
  'gi',
);

/** Pieces a text counts: '12 cookies', '1 loaf'; a count of slices beats the count of the loaf. */
function statedPieces(whole: string): Yield['pieces'] {
  const text = withoutSizes(whole);
  let best: Yield['pieces'] = null;
  for (const found of text.matchAll(COUNT_NOUN)) {
    const count = value(found[1] ?? '');
    const noun = (found[3] ?? '').replace(/[\s.'’-]+$/, '').replace(FILLER, '');
    if (!believable(count) || noun === '' || SIZE.test(noun)) continue;
    if (best === null || (PART.test(noun) && count > best.count)) best = { count, noun };
  }
  return best;
}

const BARE = new RegExp(
  `^(?:${words.label.join('|')})?[\\s:=~]*(${DIGITS})(?:${TO}(${DIGITS}))?\\s*[.+]?$`,
  'i',
);

/**
 * Reads yield statements (a page's words, cleaned or not; the entry with words is the one shown).
 * A bare number counts as servings only when no entry has words: of '12' and '12 cookies' the
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
    const servings = statedServings(one);
    if (!servings) continue;
    const rest = one.replace(COUNT_PEOPLE, ' ').replace(PEOPLE_COUNT, ' ');
    return { text: one, servings, pieces: statedPieces(rest) };
  }
  for (const one of worded) {
    const pieces = statedPieces(one);
    if (pieces) return { text: one, servings: null, pieces };
  }
  if (worded.length > 0) {
    const count = value(/(\d+(?:[.,]\d+)?)\D*$/.exec(withoutSizes(text))?.[1] ?? text);
    const pieces = believable(count) ? { count, noun: 'pieces' } : null;
    return { text, servings: null, pieces };
  }
  const bare = BARE.exec(text);
  return { text, servings: bare ? range(bare[1], bare[2]) : null, pieces: null };
}
