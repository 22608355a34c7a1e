/** Reads a quantity from tokens: digits, number words, mixed forms, ranges. */
import { type Lexicon, numberWord } from '../words/lexicon.ts';
import { isAt, isMark, isNumber, isWord, lowAt, type Token } from '../words/tokens.ts';

export interface Read<T> {
  value: T;
  /** Index of the first token after what was read. */
  next: number;
}

export const found = <T>(value: T, next: number): Read<T> => ({ value, next });

/** A number, or a range when `max` is not null. */
export interface Quantity {
  quantity: number;
  max: number | null;
}

const DASH = new Set('-–—‒−~‑');
/** Number words that multiply the one before them: 'two dozen', 'two hundred'. */
const MULTIPLIERS = new Set([12, 100]);

export const isDash = (t: Token | undefined): boolean => isMark(t) && DASH.has(t.text);

/** The part that a word names after a number word: a quarter in 'three quarters'. */
function partOf(low: string, lex: Lexicon): number | null {
  const value = lex.numbers.get(low) ?? lex.numbers.get(low.replace(/s$/, ''));
  return value && value < 0.5 ? value : null;
}

/** A value below one at `i`, after 'and': '1/2', 'media', 'a half', 'three quarters'. */
function readFraction(tokens: readonly Token[], i: number, lex: Lexicon): Read<number> | null {
  const t = tokens[i];
  const value = isNumber(t) ? t.value : numberWord(tokens, i, lex);
  if (!t || !value) return null;
  if (value < 1) return found(value, i + 1);
  const part = isWord(t) ? partOf(lowAt(tokens, i + 1), lex) : null;
  if (part !== null && value * part < 1) return found(value * part, i + 2);
  const half = lex.articles.has(t.low) ? numberWord(tokens, i + 1, lex) : 0;
  return half > 0 && half < 1 ? found(half, i + 2) : null;
}

/** A whole number with the fraction that 'and' joins to it, if there is one. */
function withFraction(
  value: number,
  next: number,
  tokens: readonly Token[],
  lex: Lexicon,
): Read<number> {
  const joined = Number.isInteger(value) && isAt(lex.and, tokens, next);
  const part = joined ? readFraction(tokens, next + 1, lex) : null;
  return part ? found(value + part.value, part.next) : found(value, next);
}

/** 'Two dozen', '2 hundred': the number times the word behind it. */
function multiplied(number: Read<number>, tokens: readonly Token[], lex: Lexicon): Read<number> {
  const times = numberWord(tokens, number.next, lex);
  return MULTIPLIERS.has(times) ? found(number.value * times, number.next + 1) : number;
}

/** A number at `i`: digits, a number word, 'half a', 'a dozen', 'three quarters'; null when none. */
function readNumber(tokens: readonly Token[], i: number, lex: Lexicon): Read<number> | null {
  const t = tokens[i];
  if (isNumber(t)) {
    const whole = withFraction(t.value, i + 1, tokens, lex);
    // '½ a bunch'
    if (t.value < 1 && isAt(lex.articles, tokens, i + 1)) return found(t.value, i + 2);
    const low = lowAt(tokens, whole.next);
    if (lex.pairs.has(low)) return found(whole.value * 2, whole.next + 1);
    return multiplied(whole, tokens, lex);
  }
  if (!isWord(t)) return null;
  const first = numberWord(tokens, i, lex);
  if (first === 0) return null;
  let value = first;
  let next = i + 1;
  if (lex.articles.has(t.low)) {
    const follow = numberWord(tokens, next, lex);
    if (follow === 0) return found(value, next);
    value = follow;
    next++;
  } else {
    const part = value > 1 ? partOf(lowAt(tokens, next), lex) : null;
    if (part !== null) {
      value *= part;
      next++;
    } else if (value < 1 && isAt(lex.articles, tokens, next)) next++;
  }
  if (isAt(lex.pairs, tokens, next - 1) && isAt(lex.of, tokens, next)) next++;
  const all = multiplied(found(value, next), tokens, lex);
  return lex.articles.has(t.low) ? all : withFraction(all.value, all.next, tokens, lex);
}

/** Where the upper end of a range may begin: 'to', a dash, '3- to 4-pound'; 0 when nothing links. */
function afterLink(tokens: readonly Token[], i: number, lex: Lexicon): number {
  const link = tokens[i];
  if (isDash(link)) {
    if (!isAt(lex.ranges, tokens, i + 1)) return i + 1;
    return isDash(tokens[i + 2]) ? i + 3 : i + 2;
  }
  return isWord(link) && lex.ranges.has(link.low) ? i + 1 : 0;
}

/** A number or a range of two at `i`; null when there is none. */
export function readQuantity(
  tokens: readonly Token[],
  i: number,
  lex: Lexicon,
): Read<Quantity> | null {
  const low = readNumber(tokens, i, lex);
  if (!low) return null;
  const from = afterLink(tokens, low.next, lex);
  if (from > 0) {
    const high = readNumber(tokens, from, lex);
    const alike = isNumber(tokens[from]) || isWord(tokens[i]);
    // '15- 15-ounce' says its number twice
    if (high && alike && high.value >= low.value) {
      // '2 to 3 dozen' counts both in dozens
      const all = multiplied({ ...low, next: high.next - 1 }, tokens, lex).value;
      const quantity = all > high.value ? low.value : all;
      return found({ quantity, max: high.value > quantity ? high.value : null }, high.next);
    }
  }
  return found({ quantity: low.value, max: null }, low.next);
}
