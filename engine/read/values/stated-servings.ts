/** Servings that a text states: '4 servings', 'serves 4-6', 'für 4 Personen'. */

import { LETTER, LETTERS, WORD } from '../../letters.ts';
import type { Yield } from '../../model.ts';
import { numberValue } from '../../numerals.ts';
import words from '../data/serving-words.json' with { type: 'json' };

const WORD_NUMBERS = words.numbers
  .map(([word]) => String(word))
  .sort((a, b) => b.length - a.length);
export const DIGITS = String.raw`\d+\s+\d+\/\d+|\d+\/\d+|\d+[.,]\d+|\d+\s?[¼½¾⅓⅔]|\d+|[¼½¾⅓⅔]`;
const NUMBER = `(?:${DIGITS}|(?:${WORD_NUMBERS.join('|')})(?!${LETTER}))`;
export const TO = String.raw`\s?(?:-|–|—|~|to|bis|à|a|tot|till|til|of|or|oder|ou|o|até|al)\s?`;
export const RANGE = `(${NUMBER})(?:${TO}(${NUMBER}))?`;
export const BOUND = `(?!${WORD})`;
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
export const COUNT_PEOPLE = new RegExp(
  `(?<![${LETTERS}\\d/.,])${RANGE}[\\s-]*${WORDS_BETWEEN}${PEOPLE}${BOUND}`,
  'i',
);
/** 'Serves 4', 'Servings: 4-6', 'Portionen 4'. */
export const PEOPLE_COUNT = new RegExp(
  `(?<!${LETTER})(?:${words.serves.join('|')}|${PEOPLE})(?!${LETTER})(?:\\sper\\s(?:recipe|container|batch))?[\\s:=(]*(?:${words.about.join('|')})?\\s*${RANGE}${BOUND}${SIZES}`,
  'i',
);
/** 'Voor 4', 'Pour 6': a preposition counts only when the number is all there is. */
const FOR_COUNT = new RegExp(`^(?:${words.prepositions.join('|')})\\s+${RANGE}[\\s.:]*$`, 'i');
const NUMBER_WORDS = new Map(words.numbers as [string, number][]);

/** The value of a number as yields write it, in figures or as a word ('dozen'). Null if it is none. */
export function countValue(text: string): number | null {
  return NUMBER_WORDS.get(text.toLowerCase()) ?? numberValue(text);
}

/** A count that a recipe may make. */
export function isBelievable(count: number | null): count is number {
  return count !== null && count > 0 && count < 10_000;
}

/** Whole or half servings, one at least: '0.75' and '23.33' are what scaling left behind. */
function mayBeServings(count: number): boolean {
  return count >= 1 && Number.isInteger(count * 2);
}

/** The range of two numbers as written; null when they are no servings. */
export function servingsRange(
  low: string | undefined,
  high: string | undefined,
): Yield['servings'] {
  const from = countValue(low ?? '');
  const to = high === undefined ? from : countValue(high);
  if (!isBelievable(from) || !isBelievable(to) || !mayBeServings(from)) return null;
  return to >= from && mayBeServings(to) ? { low: from, high: to } : { low: from, high: from };
}

/** The size of a serving in brackets: '8 (1/2-cup) servings', '8 (~2-Tbsp servings)', '5 (small) servings'. */
const SERVING_SIZE = new RegExp(
  `(?<=\\d\\s?)\\((?:[^()\\d]*|[^()]*[\\d¼-¾⅐-⅞][\\s-]*(?:${words.sizes.join('|')}|cups?|tbsps?|tablespoons?)${BOUND}[^()]*)\\)`,
  'gi',
);

/** A text without the sizes of its servings, which hold numbers of their own. */
export function withoutServingSizes(text: string): string {
  if (!text.includes('(')) return text;
  return text.replace(SERVING_SIZE, (size) => (PEOPLE_WORD.test(size) ? 'servings' : ''));
}

/** Servings stated in a text that names people or servings, else null. */
export function statedServings(text: string): Yield['servings'] {
  const bare = withoutServingSizes(text);
  const found = COUNT_PEOPLE.exec(bare) ?? PEOPLE_COUNT.exec(bare) ?? FOR_COUNT.exec(bare);
  return found ? servingsRange(found[1], found[2]) : null;
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
