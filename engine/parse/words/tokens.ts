/** Splits a tidy line into numbers, words and punctuation. */
import { numeralAt } from '../amounts/written-number.ts';

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

/** Whether it is a word, a number, a mark; false past either end of the line. */
export const isWord = (t: Token | undefined): t is Token & { kind: 'w' } => t?.kind === 'w';
export const isNumber = (t: Token | undefined): t is Token & { kind: 'n' } => t?.kind === 'n';
export const isMark = (t: Token | undefined): t is Token & { kind: 'p' } => t?.kind === 'p';

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

/** Most words, found faster. */
const PLAIN = /(?!x )[a-z]+(?=[ ,;()]|$)/iy;

/** Lower case with straight apostrophes; a dotted abbreviation loses its dots ('q. b.' -> 'qb'). */
function lower(text: string): string {
  const low = text.toLowerCase().replaceAll('’', "'");
  return low.includes('.') ? low.replace(/[.\s]/g, '') : low;
}

function numberAt(line: string, at: number, commaIsDecimal: boolean): Piece | null {
  const numeral = numeralAt(line, at, commaIsDecimal);
  if (!numeral) return null;
  const { text, value } = numeral;
  return { kind: Number.isFinite(value) ? 'n' : 'w', text, low: text.toLowerCase(), value };
}

function wordAt(line: string, at: number): Piece | null {
  for (const pattern of [PLAIN, WORD]) {
    pattern.lastIndex = at;
    const text = pattern.exec(line)?.[0];
    if (text) return { kind: 'w', text, low: lower(text), value: Number.NaN };
  }
  return null;
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
      wordAt(line, at) ?? numberAt(line, at, commaIsDecimal) ?? markAt(line, at);
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
  return words.has(lowAt(tokens, i));
}

/** Whether some token is one of `words`. */
export const someOf = (tokens: readonly Token[], words: ReadonlySet<string>): boolean =>
  tokens.some((t) => words.has(t.low));

/** Whether every token is one of `words`. */
export const allOf = (tokens: readonly Token[], words: ReadonlySet<string>): boolean =>
  tokens.every((t) => words.has(t.low));
