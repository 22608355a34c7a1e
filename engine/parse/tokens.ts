/** Splits a tidy line into numbers, words and punctuation. */

/** `n` number (with its value), `w` word, `p` one punctuation character. */
export interface Token {
  kind: 'n' | 'w' | 'p';
  text: string;
  /** Lower case, straight apostrophes. */
  low: string;
  /** The number's value; NaN for other kinds. */
  value: number;
  /** Whether white space stands before it. */
  space: boolean;
}

const VULGAR: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅕': 1 / 5,
  '⅖': 2 / 5,
  '⅗': 3 / 5,
  '⅘': 4 / 5,
  '⅙': 1 / 6,
  '⅚': 5 / 6,
  '⅐': 1 / 7,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
  '⅑': 1 / 9,
  '⅒': 1 / 10,
};
const V = `[${Object.keys(VULGAR).join('')}]`;
const SLASH = '[/⁄∕]';

/** Numbers; the groups are the parts of each form. */
const NUMBER = new RegExp(
  [
    `(\\d+)(?:\\s+|\\s?[-–]\\s?|\\s?&\\s?)?(${V})(?!-?(?:inch|cm|mm)-(?:thick|wide|long))`, // 1½, 1 ½, 1-½
    `(${V})`,
    `(\\d+)(?:\\s+|-|\\s?&\\s?)(\\d+)\\s?${SLASH}\\s?(\\d+)(?![\\d.,])`, // 1 1/2, 1-1/2
    `(\\d{1,2})\\s?${SLASH}\\s?(\\d{1,3})(?![\\d.,]*\\d)`, // 1/2
    '(\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?|\\d*[.,]\\d+|\\d+)',
  ].join('|'),
  'yu',
);
/** 'and/or', dotted abbreviations, the 'x' of '2 x 400 g', units glued to digits, elided articles, words. */
const WORD = new RegExp(
  [
    'and/or|\\p{L}\\.(?:\\s?\\p{L}\\.)+(?!\\p{L})|[x×](?=\\s?\\d)|(?<=\\d)\\p{L}+(?=-?\\d)',
    "(?:[dDlL]|[Dd]ell|[Uu]n)['’](?=[\\p{L}\\d])|\\p{L}[\\p{L}\\p{M}]*(?:['’-]?[\\p{L}\\p{N}]+)*",
  ].join('|'),
  'iyu',
);

const THOUSANDS = /^\d{1,3}(,\d{3})+(\.\d+)?$/;
const DOT_THOUSANDS = /^[1-9]\d{0,2}(\.\d{3})+$/;

/** Value of decimal digits: '1,5' is one and a half everywhere, '1,000' and '1.000' go by language. */
function decimal(text: string, commaIsDecimal: boolean): number {
  if (commaIsDecimal && DOT_THOUSANDS.test(text)) return Number(text.replaceAll('.', ''));
  if (!commaIsDecimal && THOUSANDS.test(text) && !text.startsWith('0'))
    return Number(text.replaceAll(',', ''));
  return Number(text.replace(',', '.'));
}

function ratio(over: string, under: string): number {
  const d = Number(under);
  return d > 0 ? Number(over) / d : Number.NaN;
}

/** Lower case with straight apostrophes; a dotted abbreviation loses its dots ('q. b.' -> 'qb'). */
function lower(text: string): string {
  const low = text.toLowerCase().replaceAll('’', "'");
  return low.includes('.') ? low.replace(/[.\s]/g, '') : low;
}

const isDigit = (code: number): boolean => code >= 48 && code <= 57;
const isAsciiLetter = (code: number): boolean =>
  (code >= 97 && code <= 122) || (code >= 65 && code <= 90);

/** Whether the character after a run of plain letters ends the word for sure. */
const endsWord = (code: number): boolean =>
  Number.isNaN(code) || code === 32 || code === 44 || code === 40 || code === 41 || code === 59;

/** Value of a number match; NaN for what only looks like one. */
function numberOf(m: RegExpExecArray, commaIsDecimal: boolean): number {
  if (m[2] !== undefined) return Number(m[1]) + (VULGAR[m[2]] ?? 0);
  if (m[3] !== undefined) return VULGAR[m[3]] ?? 0;
  if (m[6] !== undefined) return Number(m[4]) + ratio(m[5] ?? '', m[6]);
  // '80/20' is a ratio, not a fraction
  if (m[8] !== undefined) return Number(m[7]) >= 50 ? Number.NaN : ratio(m[7] ?? '', m[8]);
  return decimal(m[9] ?? '', commaIsDecimal);
}

/** End of a word of plain letters at `at`; `at` itself when the full pattern has to decide. */
function plainWordEnd(line: string, at: number): number {
  let end = at;
  while (isAsciiLetter(line.charCodeAt(end))) end++;
  const cross = end === at + 1 && (line[at] === 'x' || line[at] === 'X');
  return !cross && endsWord(line.charCodeAt(end)) ? end : at;
}

/** Tokens of a tidy line, in order; joining them with their spaces gives the line back. */
export function tokenize(line: string, commaIsDecimal = false): Token[] {
  const out: Token[] = [];
  let at = 0;
  let end = 0;
  while (at < line.length) {
    const code = line.charCodeAt(at);
    if (code === 32) {
      at++;
      continue;
    }
    const space = at > end || at === 0;
    let token: Token | null = null;
    end = plainWordEnd(line, at);
    if (end > at) {
      const text = line.slice(at, end);
      token = { kind: 'w', text, low: text.toLowerCase(), value: Number.NaN, space };
    } else if (isDigit(code) || !isAsciiLetter(code))
      token = readNumeral(line, at, space, commaIsDecimal);
    token ??= readWord(line, at, space) ?? readMark(line, at, space);
    out.push(token);
    at += token.text.length;
    end = at;
  }
  return out;
}

function readNumeral(
  line: string,
  at: number,
  space: boolean,
  commaIsDecimal: boolean,
): Token | null {
  NUMBER.lastIndex = at;
  const m = NUMBER.exec(line);
  if (!m) return null;
  const value = numberOf(m, commaIsDecimal);
  return { kind: Number.isFinite(value) ? 'n' : 'p', text: m[0], low: m[0], value, space };
}

function readWord(line: string, at: number, space: boolean): Token | null {
  WORD.lastIndex = at;
  const text = WORD.exec(line)?.[0];
  return text ? { kind: 'w', text, low: lower(text), value: Number.NaN, space } : null;
}

function readMark(line: string, at: number, space: boolean): Token {
  const text = String.fromCodePoint(line.codePointAt(at) ?? 32);
  return { kind: 'p', text, low: text, value: Number.NaN, space };
}

/** The text of some tokens, spaced as written where they stand together. */
export function textOf(tokens: readonly Token[]): string {
  let s = '';
  for (const t of tokens) s += t.space && s !== '' ? ` ${t.text}` : t.text;
  return s;
}

/** Lower-case text of the token at `i`; '' past either end. */
export function lowAt(tokens: readonly Token[], i: number): string {
  return tokens[i]?.low ?? '';
}
