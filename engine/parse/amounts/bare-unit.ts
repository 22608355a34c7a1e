/** Reads an amount without a number: 'pinch of salt', 'a few leaves', 'several eggs'. */
import type { Lexicon } from '../words/lexicon.ts';
import { isAt, isWord, lowAt, type Token } from '../words/tokens.ts';
import { type Measure, readSizes, stated } from './measure.ts';
import { found, type Read } from './quantity.ts';
import { readUnit } from './unit.ts';

/** 'a few' and 'several' are taken as two to four: common practice, no source. */
const FEW = [2, 4] as const;

/** 'pinch of salt', 'a large handful', 'bunch parsley': a bare unit means one of it. */
function readBare(
  tokens: readonly Token[],
  i: number,
  lex: Lexicon,
  vague: boolean,
): Read<Measure> | null {
  const sizes = readSizes(tokens, i, lex, true);
  const unit = readUnit(tokens, sizes.next, lex);
  if (!unit) return null;
  const { kind, name } = unit.value;
  const counted = kind === 'container' || kind === 'piece' || kind === 'trail' || kind === 'volume';
  const meansOne = vague || sizes.value.size.length > 0 || isAt(lex.of, tokens, unit.next);
  // 'sprig mint', 'cup sugar'
  const begins =
    tokens[i]?.index === 0 &&
    (kind === 'trail' || kind === 'volume') &&
    !lowAt(tokens, i).endsWith('s');
  if (kind !== 'small' && !begins && !(meansOne && counted)) return null;
  if (!isWord(tokens[unit.next]) && tokens[unit.next]?.text !== '(') return null;
  const [low, high] = vague ? FEW : [1, null];
  const amount = stated(low, name, high, true);
  const { size, fill } = sizes.value;
  return found({ amount, unit: unit.value, size, fill }, unit.next);
}

/** 'a few leaves', 'pinch of', 'several eggs': an article or vague word may stand first. */
export function readWithoutNumber(
  tokens: readonly Token[],
  i: number,
  lex: Lexicon,
): Read<Measure> | null {
  let at = i;
  while (isAt(lex.articles, tokens, at) || isAt(lex.vague, tokens, at)) at++;
  const vague = at > i && isAt(lex.vague, tokens, at - 1);
  const bare = readBare(tokens, at, lex, vague);
  if (bare || !vague || !isAt(lex.few, tokens, at - 1) || !isWord(tokens[at])) return bare;
  const { size } = readSizes(tokens, at, lex, false).value;
  const amount = stated(FEW[0], null, FEW[1], true);
  return found({ amount, unit: null, size, fill: [] }, at + size.length);
}
