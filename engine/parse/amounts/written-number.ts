/** Reads a number as kitchens write it: digits, decimals, thousands, vulgar and mixed fractions. */

import { FRACTION_SIGNS, fractionValue, ratio } from '../../numerals.ts';
import words from '../data/size-words.json' with { type: 'json' };

/** One character that is a fraction: ½, ⅔, ⅞. */
const SIGN = `[${FRACTION_SIGNS}]`;
const SLASH = '[/⁄∕]';
const DASHES = '[-–‑]';
/** Before a proper fraction in lowest terms: '12/3' is 1 2/3, as nobody writes twelve thirds. */
const LOST_BLANK = '(?=1.2|[12].3|[13].4|[1357].8)';
/** After a fraction: the size of pieces, so that '8 ½-inch slices' are eight. */
const NO_SIZE = `(?!-?(?:${words.lengths})(?:-(?:${words.extents})|[- ](?:${words.shapes})))`;

/** What looks like a number and is none: '85%', '105 °F', '80F', a '1:1' ratio, '26C' unless it begins the line. */
const NO_QUANTITY =
  /\d+(?:[.,]\d+)?\s?(?:%|(?:°\s?C|°?\s?F)(?!\p{L})|°)|(?!^)[2-9]\dC\b|\d\d?:\d\d?(?![\d:])/uy;

/** Numbers; the groups are the parts of each form. */
const NUMBER = new RegExp(
  [
    `(\\d+)(?:\\s+|\\s?${DASHES}\\s?|\\s?&\\s?)?(${SIGN})${NO_SIZE}`, // 1½, 1 ½, 1-½
    `(${SIGN})`,
    `(\\d+)(?:\\s+|\\s?${DASHES}(?!\\d\\d)|\\s?&\\s?|${LOST_BLANK})(\\d+)\\s?${SLASH}\\s?(\\d+)(?![\\d.,]*\\d)${NO_SIZE}`, // 1 1/2, 1-1/2
    `(\\d{1,2})\\s?${SLASH}\\s?(\\d{1,3})(?![\\d.,]*\\d)`, // 1/2
    '(\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?|[1-9]\\d{0,2} 000(?!\\d)|\\d*[.,]\\d+|\\d+)',
  ].join('|'),
  'yu',
);

const THOUSANDS = /^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$/;
const DOT_THOUSANDS = /^[1-9]\d{0,2}(\.\d{3})+$/;

/** Value of decimal digits: '1,5' is one and a half everywhere, '1,000' and '1.000' go by language. */
function decimal(text: string, commaIsDecimal: boolean): number {
  if (text.includes(' ')) return Number(text.replace(' ', ''));
  if (commaIsDecimal && DOT_THOUSANDS.test(text)) return Number(text.replaceAll('.', ''));
  if (!commaIsDecimal && THOUSANDS.test(text)) return Number(text.replaceAll(',', ''));
  return Number(text.replace(',', '.'));
}

/** Value of a match; NaN for what only looks like a quantity. */
function quantityOf(m: RegExpExecArray, commaIsDecimal: boolean): number {
  if (m[2] !== undefined) return Number(m[1]) + fractionValue(m[2]);
  if (m[3] !== undefined) return fractionValue(m[3]);
  if (m[6] !== undefined) return Number(m[4]) + ratio(m[5] ?? '', m[6]);
  // '80/20' is a ratio, not a fraction
  if (m[8] !== undefined) return Number(m[7]) >= 50 ? Number.NaN : ratio(m[7] ?? '', m[8]);
  return decimal(m[9] ?? '', commaIsDecimal);
}

/**
 * The numeral at `at`, or null when none stands there. `value` is NaN for what has digits but is
 * no quantity: a percentage, a temperature, a ratio.
 */
export function numeralAt(
  line: string,
  at: number,
  commaIsDecimal: boolean,
): { text: string; value: number } | null {
  NO_QUANTITY.lastIndex = at;
  const other = NO_QUANTITY.exec(line);
  if (other) return { text: other[0], value: Number.NaN };
  NUMBER.lastIndex = at;
  const m = NUMBER.exec(line);
  return m ? { text: m[0], value: quantityOf(m, commaIsDecimal) } : null;
}
