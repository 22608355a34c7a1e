/** Reads one measure from tokens: 'about 2', '1½ cups', '3 large', 'a heaped tablespoon', '400g'. */
import type { Amount } from '../../model.ts';
import { type Lexicon, numberWord, type Unit } from '../words/lexicon.ts';
import { isAt, isMark, isNumber, isWord, lowAt, type Token } from '../words/tokens.ts';
import { found, isDash, type Read, readQuantity } from './quantity.ts';
import { isMeasured, readUnit, skipStop } from './unit.ts';

export interface Measure {
  amount: Amount;
  unit: Unit | null;
  size: Token[];
  /** How the unit is filled or cut: 'packed', 'level', 'thick'. */
  fill: Token[];
}

/** Words between a number and its unit. */
interface Filling {
  size: Token[];
  fill: Token[];
  rough: boolean;
}

/** A leading amount. */
export const stated = (
  quantity: number,
  unit: string | null,
  max: number | null = null,
  approximate = false,
): Amount => ({ quantity, max, unit, kind: 'stated', approximate });

/** Whether one of the amounts is the size of each thing counted. */
export const sizesOne = (amounts: readonly Amount[]): boolean =>
  amounts.some(({ kind }) => kind === 'each');

const NO_TOKENS: Token[] = [];
const APPROX_MARKS = new Set('~≈±');

/** How many tokens at `i` name a size: 'large', 'extra large', '#10', 'size 28'; 0 when none. */
function sizeLength(tokens: readonly Token[], i: number, lex: Lexicon): number {
  const t = tokens[i];
  if (!t) return 0;
  if (t.text === '#' || lex.sizeMarks.has(t.low)) {
    const number = skipStop(tokens, i + 1);
    return isNumber(tokens[number]) ? number + 1 - i : 0;
  }
  if (!isWord(t)) return 0;
  if (lex.phraseStarts.has(t.low) && lex.sizes.has(`${t.low} ${lowAt(tokens, i + 1)}`)) return 2;
  return lex.sizes.has(t.low) || /-sized?$/.test(t.low) ? 1 : 0;
}

/** Sizes and, `withFill`, fill words from `i` on: 'large', 'small to medium', 'loosely packed'. */
export function readSizes(
  tokens: readonly Token[],
  i: number,
  lex: Lexicon,
  withFill: boolean,
): Read<Filling> {
  let size = NO_TOKENS;
  let fill = NO_TOKENS;
  let rough = false;
  let next = i;
  for (;;) {
    const t = tokens[next];
    // 'kl.' is small, 'KL' a spoon
    if (!t || lex.exactUnits.has(t.text)) break;
    const long = sizeLength(tokens, next, lex);
    if (long > 0) {
      size = [...size, ...tokens.slice(next, next + long)];
      next = skipStop(tokens, next + long);
    } else if (withFill && (lex.fill.has(t.low) || lex.fillBeforeUnit.has(t.low))) {
      if (lex.approx.has(t.low)) rough = true;
      fill = [...fill, t];
      next = skipStop(tokens, next + 1);
    } else if (
      size.length > 0 &&
      (t.text === '/' || lex.ranges.has(t.low)) &&
      sizeLength(tokens, next + 1, lex) > 0
    ) {
      size = [...size, ...tokens.slice(next, next + 2)];
      next += 2;
    } else break;
  }
  return found({ size, fill, rough }, next);
}

/** Skips 'about', 'a scant', '~' and the like; those that say how full the unit is are kept. */
function readApprox(tokens: readonly Token[], i: number, lex: Lexicon): Read<Token[]> {
  let next = i;
  let fill = NO_TOKENS;
  for (;;) {
    const t = tokens[next];
    if (!t) break;
    if (isWord(t) && lex.approx.has(t.low)) {
      if (lex.fill.has(t.low)) fill = [...fill, t];
      next = skipStop(tokens, next + 1);
      // 'cerca de 200 g'
      if (isAt(lex.of, tokens, next) && isNumber(tokens[next + 1])) next++;
    } else if (isMark(t) && APPROX_MARKS.has(t.text)) next++;
    else if (
      isWord(t) &&
      lex.articles.has(t.low) &&
      isAt(lex.approx, tokens, next + 1) &&
      isNumber(tokens[next + 2])
    )
      next++;
    else break;
  }
  return found(fill, next);
}

/** 'a quarter of a cup', 'half of one onion', 'un cuarto de kilo': the index after 'of' and article, else `i`. */
function skipOfArticle(tokens: readonly Token[], i: number, lex: Lexicon): number {
  if (!isAt(lex.of, tokens, i)) return i;
  if (isMeasured(readUnit(tokens, i + 1, lex)?.value ?? null)) return i + 1;
  return lex.numbers.get(lowAt(tokens, i + 1)) === 1 ? i + 2 : i;
}

/** 'taza y media', 'xícara e meia': the fraction that stands behind its unit. */
function fractionBehind(tokens: readonly Token[], i: number, lex: Lexicon): number {
  if (!isAt(lex.and, tokens, i)) return 0;
  const value = numberWord(tokens, i + 1, lex);
  return value < 1 ? value : 0;
}

/**
 * One measure at `i`: quantity, sizes, unit. An article counts only before a unit or size, so that
 * 'a' alone is no amount; null when no measure stands there.
 */
export function readMeasure(
  tokens: readonly Token[],
  i: number,
  lex: Lexicon,
): Read<Measure> | null {
  const article = isAt(lex.articles, tokens, i) && isNumber(tokens[i + 1]) ? 1 : 0;
  const rough = readApprox(tokens, i + article, lex);
  const quantity = readQuantity(tokens, rough.next, lex);
  if (!quantity) return null;
  let at = quantity.value.quantity < 1 ? skipOfArticle(tokens, quantity.next, lex) : quantity.next;
  const hyphen = isDash(tokens[at]) && isWord(tokens[at + 1]);
  if (hyphen) at++;
  const rough2 = readApprox(tokens, at, lex);
  const filled = readSizes(tokens, rough2.next, lex, true);
  const unitAhead = readUnit(tokens, filled.next, lex) !== null;
  const sizes = unitAhead ? filled : readSizes(tokens, rough2.next, lex, false);
  let unit = readUnit(tokens, sizes.next, lex);
  const word = tokens[sizes.next];
  // 'in' is a unit only where it is glued to its number or has a full stop
  if (unit && word?.low === 'in' && word.space && unit.next === sizes.next + 1) unit = null;
  // '2 - onions', but not '2-ply'
  if (hyphen && !unit && !tokens[at]?.space) return null;
  const onlyArticle = quantity.next === rough.next + 1 && isAt(lex.articles, tokens, rough.next);
  if (!unit && onlyArticle && sizes.value.size.length === 0) return null;
  // '½-inch-thick' says more than the length
  const long = unit?.value.kind === 'length' && word && !lex.units.has(word.low);
  const piece = long && isWord(word) ? tokens.slice(rough.next, unit?.next) : NO_TOKENS;
  const scale = unit?.value.scale ?? 1;
  const behind = unit ? fractionBehind(tokens, unit.next, lex) : 0;
  if (unit && behind > 0) unit = { ...unit, next: unit.next + 2 };
  const low = quantity.value.quantity + behind;
  const { max } = quantity.value;
  return {
    value: {
      amount: stated(
        low * scale,
        unit?.value.name ?? null,
        max === null ? null : max * scale,
        rough.next > i + article || rough2.next > at || sizes.value.rough,
      ),
      unit: unit?.value ?? null,
      size: sizes.value.size,
      fill: [...rough.value, ...rough2.value, ...sizes.value.fill, ...piece],
    },
    next: unit ? unit.next : sizes.next,
  };
}
