/** Splits a tidy line into numbers, words and punctuation. */
import { numeralAt } from './numerals.ts';

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
  /** Its place among the line's tokens; kept by changed copies of it. */
  index: number;
}

/** What a token says, wherever it stands. */
type Piece = Pick<Token, 'kind' | 'text' | 'low' | 'value'>;

const SPACE = 32;

/** 'and/or', dotted abbreviations, the 'x' of '2 x 400 g', units glued to digits, elided articles, words. */
const WORD = new RegExp(
  [
    "and/or|po['’](?!\\p{L})|c/[nsu](?!\\p{L})|\\p{L}\\.(?:\\s?\\p{L}\\.)+(?!\\p{L})|[x×](?=\\s?\\d)|(?<=\\d)\\p{L}+(?=-?\\d)",
    "(?:[dDlL]|[Dd]ell|[Uu]n)['’](?=[\\p{L}\\d])|\\p{L}[\\p{L}\\p{M}]*(?:['’-]?[\\p{L}\\p{N}]+)*",
  ].join('|'),
  'iyu',
);

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

/** End of a word of plain letters at `at`; `at` itself when the full pattern has to decide. */
function plainWordEnd(line: string, at: number): number {
  let end = at;
  while (isAsciiLetter(line.charCodeAt(end))) end++;
  const cross = end === at + 1 && (line[at] === 'x' || line[at] === 'X');
  return !cross && endsWord(line.charCodeAt(end)) ? end : at;
}

/** A word of plain letters at `at`, or null when the full patterns have to decide. */
function plainWordAt(line: string, at: number): Piece | null {
  const end = plainWordEnd(line, at);
  if (end === at) return null;
  const text = line.slice(at, end);
  return { kind: 'w', text, low: text.toLowerCase(), value: Number.NaN };
}

function numberAt(line: string, at: number, commaIsDecimal: boolean): Piece | null {
  const code = line.charCodeAt(at);
  if (!isDigit(code) && isAsciiLetter(code)) return null;
  const numeral = numeralAt(line, at, commaIsDecimal);
  if (!numeral) return null;
  const { text, value } = numeral;
  return { kind: Number.isFinite(value) ? 'n' : 'w', text, low: text.toLowerCase(), value };
}

function wordAt(line: string, at: number): Piece | null {
  WORD.lastIndex = at;
  const text = WORD.exec(line)?.[0];
  return text ? { kind: 'w', text, low: lower(text), value: Number.NaN } : null;
}

function markAt(line: string, at: number): Piece {
  const text = String.fromCodePoint(line.codePointAt(at) ?? 32);
  return { kind: 'p', text, low: text, value: Number.NaN };
}

/** Tokens of a tidy line, in order; joining them with their spaces gives the line back. */
export function tokenize(line: string, commaIsDecimal = false): Token[] {
  const out: Token[] = [];
  let at = 0;
  let end = 0;
  while (at < line.length) {
    if (line.charCodeAt(at) === SPACE) {
      at++;
      continue;
    }
    const { kind, text, low, value } =
      plainWordAt(line, at) ??
      numberAt(line, at, commaIsDecimal) ??
      wordAt(line, at) ??
      markAt(line, at);
    out.push({ kind, text, low, value, space: at > end || at === 0, index: out.length });
    at += text.length;
    end = at;
  }
  return out;
}

/** The text of some tokens, spaced as written where they stand together. */
export function textOf(tokens: readonly Token[]): string {
  let s = '';
  let last = -2;
  for (const t of tokens) {
    const apart = t.space || (t.kind !== 'p' && last !== t.index - 1);
    s += apart && s !== '' ? ` ${t.text}` : t.text;
    last = t.index;
  }
  return s;
}

/** Lower-case text of the token at `i`; '' past either end. */
export function lowAt(tokens: readonly Token[], i: number): string {
  return tokens[i]?.low ?? '';
}

/** Whether the token at `i` is one of `words`. */
export function isAt(words: ReadonlySet<string>, tokens: readonly Token[], i: number): boolean {
  const t = tokens[i];
  return t !== undefined && words.has(t.low);
}
