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

const LEX = new RegExp(
  [
    `(\\d+)(?:\\s+|\\s?[-–]\\s?|\\s?&\\s?)?(${V})(?!-?(?:inch|cm|mm)-(?:thick|wide|long))`, // 1½, 1 ½, 1-½
    `(${V})`,
    `(\\d+)(?:\\s+|-|\\s?&\\s?)(\\d+)\\s?${SLASH}\\s?(\\d+)(?![\\d.,])`, // 1 1/2, 1-1/2
    `(\\d{1,2})\\s?${SLASH}\\s?(\\d{1,3})(?![\\d.,]*\\d)`, // 1/2
    '(\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?|\\d*[.,]\\d+|\\d+)',
    '(and/or|\\p{L}\\.(?:\\s?\\p{L}\\.)+(?!\\p{L})|[x×](?=\\s?\\d)|(?<=\\d)(?:lb|oz|kg|pt)(?=\\d))',
    "((?:[dDlL]|[Dd]ell|[Uu]n)['’](?=[\\p{L}\\d])|\\p{L}[\\p{L}\\p{M}]*(?:['’-]?[\\p{L}\\p{N}]+)*)",
    '(\\S)',
  ].join('|'),
  'giu',
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

/** Tokens of a tidy line, in order; joining them with their spaces gives the line back. */
export function tokenize(line: string, commaIsDecimal = false): Token[] {
  const out: Token[] = [];
  let end = 0;
  for (const m of line.matchAll(LEX)) {
    const text = m[0];
    let kind: Token['kind'] = 'n';
    let value = Number.NaN;
    if (m[2] !== undefined) value = Number(m[1]) + (VULGAR[m[2]] ?? 0);
    else if (m[3] !== undefined) value = VULGAR[m[3]] ?? 0;
    else if (m[6] !== undefined) value = Number(m[4]) + ratio(m[5] ?? '', m[6]);
    // '80/20' is a ratio, not a fraction
    else if (m[8] !== undefined) value = Number(m[7]) >= 50 ? Number.NaN : ratio(m[7] ?? '', m[8]);
    else if (m[9] !== undefined) value = decimal(m[9], commaIsDecimal);
    else kind = m[12] !== undefined ? 'p' : 'w';
    if (kind === 'n' && !Number.isFinite(value)) kind = 'p';
    out.push({
      kind,
      text,
      low: kind === 'w' ? lower(text) : text,
      value,
      space: m.index > end || m.index === 0,
    });
    end = m.index + text.length;
  }
  return out;
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
