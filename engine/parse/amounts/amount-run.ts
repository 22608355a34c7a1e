/** Reads the whole run of amounts at one place: sums, products, dual measures, containers. */

import { type Lexicon, numberWord } from '../words/lexicon.ts';
import { isAt, isMark, isNumber, isWord, lowAt, type Token } from '../words/tokens.ts';
import { readBracket } from './amount-bracket.ts';
import { PLUS_MARKS, SAME_MARKS } from './amount-list.ts';
import { readWithoutNumber } from './bare-unit.ts';
import {
  type Amounts,
  addSize,
  adopt,
  contain,
  continues,
  juxtapose,
  push,
  type Run,
  startRun,
  subtract,
  widen,
} from './joined-measures.ts';
import { readMeasure, readSizes, stated } from './measure.ts';
import { found, isDash, type Read } from './quantity.ts';
import { isMeasured, readUnit } from './unit.ts';

export type { Amounts } from './joined-measures.ts';

/** Describing words that may stand between a count and the size of one: '1 whole 6-pound salmon'. */
const MOST_BETWEEN = 2;

/** 'or so', 'a pinch or two of', 'cans or boxes': the index after it, null when it is another food. */
function readOr(tokens: readonly Token[], i: number, lex: Lexicon, run: Run): number | null {
  const last = run.amounts.at(-1);
  if (isAt(lex.more, tokens, i + 1)) {
    if (last) last.approximate = true;
    run.loose.push(...tokens.slice(i, i + 2));
    return i + 2;
  }
  const more = numberWord(tokens, i + 1, lex);
  if (last && more > last.quantity && isAt(lex.of, tokens, i + 2)) {
    last.max = more;
    return i + 2;
  }
  const other = readUnit(tokens, i + 1, lex);
  if (!other || !run.last || other.value.kind !== run.last.kind) return null;
  run.loose.push(...tokens.slice(i, other.next));
  return other.next;
}

/** A joint at `i` and the measure after it; null when they do not belong to the run. */
function readJoined(tokens: readonly Token[], i: number, lex: Lexicon, run: Run): number | null {
  const joint = tokens[i];
  const or = isAt(lex.or, tokens, i);
  const measure =
    readMeasure(tokens, i + 1, lex) ?? (or ? readWithoutNumber(tokens, i + 1, lex) : null);
  if (!joint || !measure) return null;
  const m = measure.value;
  if (joint.text === '/' && m.unit === null && isNumber(tokens[i + 1])) {
    run.loose.push(...tokens.slice(i + 1, measure.next));
    return measure.next;
  }
  const adds = PLUS_MARKS.has(joint.text) || lex.plus.has(joint.low);
  if (lex.times.has(joint.low)) {
    if (run.last !== null) return null;
    push(run, m, 'each');
  } else if (lex.minus.has(joint.low)) {
    if (!subtract(run.amounts.at(-1), m.amount)) return null;
  } else if (or && run.last === null && m.size[0] && run.size[0]) {
    push(run, m, 'same');
  } else if (!isMeasured(m.unit) && !(m.unit && (or || joint.text === '/' || adds))) {
    return null;
  } else if (run.last === null) {
    return null;
  } else if (adds) {
    push(run, m, 'plus');
  } else if (SAME_MARKS.has(joint.text) || or) {
    if (joint.text === ',' && !tokens[measure.next]) return null;
    if (joint.text === ',' && continues(run, m)) push(run, m, 'plus');
    else push(run, m, run.amounts.at(-1)?.kind === 'each' ? 'each' : 'same');
  } else return null;
  return measure.next;
}

/** A further unit or measure at `i` without a joint; null when none belongs to the run. */
function readNext(tokens: readonly Token[], i: number, lex: Lexicon, run: Run): number | null {
  const sizes = readSizes(tokens, i, lex, true);
  const unit = readUnit(tokens, sizes.next, lex);
  if (unit) {
    if (unit.value === run.last && sizes.next === i && isMeasured(unit.value)) return unit.next;
    if (unit.value === run.stated) return null;
    // '1 (generous) cup'
    const late = run.amounts.length > 1 || lowAt(tokens, i - 1) === ')';
    if (isMeasured(unit.value) && run.stated === null && late) adopt(run, unit.value);
    else if (!contain(run, unit.value)) return null;
    addSize(run, sizes.value.size);
    run.loose.push(...sizes.value.fill);
    return unit.next;
  }
  if (isWord(tokens[i])) return readSizeOfOne(tokens, i, lex, run);
  const measure = readMeasure(tokens, i, lex);
  if (!measure) return null;
  if (juxtapose(run, measure.value)) return measure.next;
  // '2 cups 1-inch cubes': how it is cut
  const pieces = readUnit(tokens, measure.next, lex);
  if (measure.value.unit?.kind !== 'length' || pieces?.value.kind !== 'piece') return null;
  run.cut.push(...tokens.slice(i, pieces.next));
  return pieces.next;
}

/** 'whole 6-pound' after a count: the size of one behind a describing word; null when not so. */
function readSizeOfOne(tokens: readonly Token[], i: number, lex: Lexicon, run: Run): number | null {
  if (run.last !== null) return null;
  let at = i;
  while (at - i < MOST_BETWEEN && isAt(lex.beforeSize, tokens, at)) at++;
  if (at === i || !isNumber(tokens[at])) return null;
  const measure = readMeasure(tokens, at, lex);
  if (!measure || !isMeasured(measure.value.unit)) return null;
  push(run, measure.value, 'each');
  run.front.push(...tokens.slice(i, at));
  return measure.next;
}

/** One step on from `i`: the index after it, or null when the run ends at `i`. */
function extend(tokens: readonly Token[], i: number, lex: Lexicon, run: Run): number | null {
  const t = tokens[i];
  if (!t) return null;
  if (t.text === ')') return i + 1;
  if (t.text === '(' || t.text === '[') return readBracket(tokens, i, lex, run);
  if (lex.or.has(t.low)) {
    const next = readOr(tokens, i, lex, run);
    if (next !== null) return next;
  }
  // 'boîte de 400 g de tomates', 'tub of 250 g mascarpone'
  if (run.last?.kind === 'container' && (lex.of.has(t.low) || lex.each.has(t.low))) {
    const size = readMeasure(tokens, i + 1, lex);
    if (size && isMeasured(size.value.unit)) {
      push(run, size.value, 'each');
      return size.next;
    }
  }
  // '4 x chicken thighs'
  if (lex.times.has(t.low) && run.last === null && isWord(tokens[i + 1])) return i + 1;
  if (isDash(t) || lex.ranges.has(t.low)) {
    const to = readMeasure(tokens, i + 1, lex);
    if (to && widen(run.amounts.at(-1), run.last, to.value)) return to.next;
  }
  // '1 cup, plus 2 tablespoons'
  if (t.text === ',' && isAt(lex.plus, tokens, i + 1)) return readJoined(tokens, i + 1, lex, run);
  const joint =
    isMark(t) ||
    lex.times.has(t.low) ||
    lex.plus.has(t.low) ||
    lex.or.has(t.low) ||
    lex.minus.has(t.low);
  return joint && t.text !== '#' ? readJoined(tokens, i, lex, run) : readNext(tokens, i, lex, run);
}

/**
 * '2 - 8 oz packages', '1, 14 oz can': a dash or comma may stand between the count and the size of
 * one. The index after the size, or null when it is a range ('12 - 16 oz package').
 */
function readPackages(tokens: readonly Token[], i: number, lex: Lexicon, run: Run): number | null {
  const [count, mark, size] = tokens.slice(i, i + 3);
  if (!isNumber(count) || !isNumber(size) || !size.space || size.value < 2 * count.value)
    return null;
  const one = isDash(mark) || mark?.text === ',' ? readMeasure(tokens, i + 2, lex) : null;
  if (!one || !isMeasured(one.value.unit)) return null;
  if (readUnit(tokens, one.next, lex)?.value.kind !== 'container') return null;
  run.amounts = [stated(count.value, null)];
  push(run, one.value, 'each');
  run.stated = null;
  return one.next;
}

/** The amounts that start at `i`, up to the food's name; null when no amount starts there. */
export function readAmounts(
  tokens: readonly Token[],
  i: number,
  lex: Lexicon,
): Read<Amounts> | null {
  const first = readMeasure(tokens, i, lex) ?? readWithoutNumber(tokens, i, lex);
  if (!first) return null;
  const run = startRun(first.value);
  let next = readPackages(tokens, i, lex, run) ?? first.next;
  for (;;) {
    const step = extend(tokens, next, lex, run);
    if (step === null) break;
    next = step;
  }
  if (isAt(lex.each, tokens, next)) {
    run.each = true;
    next++;
  }
  if (tokens[next] && isAt(lex.of, tokens, next)) next++;
  return found(run, next);
}
