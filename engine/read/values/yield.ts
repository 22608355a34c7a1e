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
/** One or two words between a number and what it counts: '4 large servings', '4 meal-size servings'. */
const WORDS_BETWEEN = `(?:[${LETTERS}]+(?:-[${LETTERS}]+)*\\s){0,2}`;
const SIZES = `(?!\\s*(?:${words.sizes.join('|')})${BOUND})`;

const LABEL = new RegExp(
  `^(?:${LETTER}{3,8}\\s(?:de|of|der|di|på)\\s)?(?:${words.serves.join('|')}|yields?|${PEOPLE})\\s?:?$`,
  'i',
);
const PEOPLE_WORD = new RegExp(PEOPLE, 'i');
/** '4 servings', '4-6 people', 'für 4 Personen', '4人分'. */
const COUNT_PEOPLE = new RegExp(
  `(?<![${LETTERS}\\d/.,])${RANGE}[\\s-]*${WORDS_BETWEEN}${PEOPLE}${BOUND}`,
  'i',
);
/** 'Serves 4', 'Servings: 4-6', 'Portionen 4'. */
const PEOPLE_COUNT = new RegExp(
  `(?<!${LETTER})(?:${words.serves.join('|')}|${PEOPLE})(?!${LETTER})(?:\\sper\\s(?:recipe|container|batch))?[\\s:=(]*(?:${words.about.join('|')})?\\s*${RANGE}${BOUND}${SIZES}`,
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

/** Whole or half servings, one at least: '0.75' and '23.33' are what scaling left behind. */
function mayBeServings(count: number): boolean {
  return count >= 1 && Number.isInteger(count * 2);
}

function range(low: string | undefined, high: string | undefined): Yield['servings'] {
  const from = value(low ?? '');
  const to = high === undefined ? from : value(high);
  if (!believable(from) || !believable(to) || !mayBeServings(from)) return null;
  return to >= from && mayBeServings(to) ? { low: from, high: to } : { low: from, high: from };
}

/** The size of a serving in brackets: '8 (1/2-cup) servings', '8 (~2-Tbsp servings)', '5 (small) servings'. */
const SERVING_SIZE = new RegExp(
  `(?<=\\d\\s?)\\((?:[^()\\d]*|[^()]*[\\d¼-¾⅐-⅞][\\s-]*(?:${words.sizes.join('|')}|cups?|tbsps?|tablespoons?)${BOUND}[^()]*)\\)`,
  'gi',
);

/** A text without the sizes of its servings, which hold numbers of their own. */
function withoutServingSizes(text: string): string {
  if (!text.includes('(')) return text;
  return text.replace(SERVING_SIZE, (size) => (PEOPLE_WORD.test(size) ? 'servings' : ''));
}

/** Servings stated in a text that names people or servings, else null. */
export function statedServings(text: string): Yield['servings'] {
  const bare = withoutServingSizes(text);
  const found = COUNT_PEOPLE.exec(bare) ?? PEOPLE_COUNT.exec(bare) ?? FOR_COUNT.exec(bare);
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

/** '250 grams': the mass of the whole, no count. */
const SIZED_NUMBER = new RegExp(`\\d\\s?(?:${words.sizes.join('|')})${BOUND}`, 'i');

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

/** '4 (12-16 tortillas)': servings, and the pieces they are made of. */
const SERVINGS_OF_PIECES = /^\D{0,20}?(\d{1,2})\s?\((\D{0,10}\d[^()]*)\)\.?$/;

function servingsOfPieces(text: string): Pick<Yield, 'servings' | 'pieces'> | null {
  const found = SERVINGS_OF_PIECES.exec(text);
  const pieces =
    found && withoutSizes(found[2] ?? '').trim() !== '' && statedPieces(found[2] ?? '');
  if (!pieces || Number(found[1]) < 2) return null;
  return { servings: range(found[1], undefined), pieces };
}

function bareServings(text: string): Yield['servings'] {
  const bare = BARE.exec(text.trim());
  return bare ? range(bare[1], bare[2]) : null;
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
    const count = value(/(\d+(?:[.,]\d+)?)\D*$/.exec(withoutSizes(text))?.[1] ?? text);
    const pieces = believable(count) ? { count, noun: 'pieces' } : null;
    return { text, servings: null, pieces };
  }
  return { text, servings: bareServings(text), pieces: null };
}

const NUMBER_OF = new RegExp(`^${LETTER}{3,8}\\s(?:de|of|der|di|på)\\s*$`, 'i');

/** 'Servings:', 'Nombre de personnes': words that a number belongs to. */
export function isServingsLabel(text: string): boolean {
  return text.length <= 30 && !/\d/.test(text) && LABEL.test(text);
}

/** A line that says how many the recipe serves, and nothing else: '6 port.', 'Number of people 12'. */
export function isServingsLine(line: string): boolean {
  if (line.length > 40 || !/\d/.test(line)) return false;
  const rest = line
    .replace(COUNT_PEOPLE, '')
    .replace(PEOPLE_COUNT, '')
    .replace(FOR_COUNT, '')
    .replace(NUMBER_OF, '');
  return rest !== line && !/[\p{L}\d]/u.test(rest);
}
