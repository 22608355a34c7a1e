/** Reads the whole run of amounts at one place: sums, products, dual measures, containers. */
import type { Lexicon } from './lexicon.ts';
import { amountsOf, PLUS_MARKS, readAmountList, SAME_MARKS } from './list.ts';
import { type Measure, readMeasure, readSizes, stated } from './measure.ts';
import { found, isDash, type Read } from './quantity.ts';
import {
  type Amounts,
  addSize,
  adopt,
  bracketKind,
  contain,
  continues,
  juxtapose,
  push,
  type Run,
  repeats,
  startRun,
  subtract,
  widen,
} from './run.ts';
import { isAt, lowAt, type Token } from './tokens.ts';
import { isMeasured, readUnit } from './unit.ts';

export type { Amounts } from './run.ts';

/** 'a few' and 'several' are taken as two to four: common practice, no source. */
const FEW = [2, 4] as const;
/** Describing words that may stand between a count and the size of one: '1 whole 6-pound salmon'. */
const MOST_BETWEEN = 2;

/** Amounts in brackets at `i`: the index after them, or null when the brackets hold anything else. */
function readBracket(tokens: readonly Token[], i: number, lex: Lexicon, run: Run): number | null {
  const closing = tokens[i]?.text === '[' ? ']' : ')';
  const close = tokens.findIndex((t, at) => at > i && t.text === closing);
  if (close < 0) return null;
  const inner = tokens.slice(i + 1, close);
  if (inner.every((t) => lex.fill.has(t.low) || lex.prep.has(t.low))) {
    run.loose.push(...inner);
    return close + 1;
  }
  const list = readAmountList(inner, lex);
  if (list && repeats(run, list.measures)) return close + 1;
  const late = list ? lateUnit(tokens, close + 1, lex, run, list.measures) : null;
  if (late !== null) return late;
  if (!list?.measures.some((m) => m.unit ?? m.size[0])) {
    if (!goesOn(tokens, close + 1, lex, run)) return null;
    run.asides.push(inner);
    return close + 1;
  }
  run.amounts.push(...amountsOf(list, (m) => bracketKind(run, m, list.each)));
  for (const m of list.measures) addSize(run, m.size);
  run.loose.push(...list.loose);
  return close + 1;
}

/** '1 (12-15) pound turkey': the bracket holds the number of the unit after it; null when not so. */
function lateUnit(
  tokens: readonly Token[],
  i: number,
  lex: Lexicon,
  run: Run,
  measures: readonly Measure[],
): number | null {
  const [m] = measures;
  const unit = readUnit(tokens, i, lex);
  if (!m || !unit || measures.length > 1 || m.unit || m.size.length > 0) return null;
  if (run.last !== null || !isMeasured(unit.value)) return null;
  m.amount = { ...m.amount, unit: unit.value.name };
  push(run, { ...m, unit: unit.value }, 'each');
  return unit.next;
}

/** Whether amounts go on after a bracket of words: '½ cup (…) / 71 grams', '1 (…) piece'. */
function goesOn(tokens: readonly Token[], i: number, lex: Lexicon, run: Run): boolean {
  const mark = tokens[i];
  if (mark?.kind !== 'p') return run.stated === null && readUnit(tokens, i, lex) !== null;
  const next = SAME_MARKS.has(mark.text) ? readMeasure(tokens, i + 1, lex) : null;
  return next !== null && isMeasured(next.value.unit);
}

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
  const said = vague || sizes.value.size.length > 0 || isAt(lex.of, tokens, unit.next);
  if (kind !== 'small' && !(said && counted)) return null;
  if (tokens[unit.next]?.kind !== 'w' && tokens[unit.next]?.text !== '(') return null;
  const [low, high] = vague ? FEW : [1, null];
  const amount = stated(low, name, high, true);
  const { size, fill } = sizes.value;
  return found({ amount, unit: unit.value, size, fill }, unit.next);
}

/** 'a few leaves', 'pinch of', 'several eggs': an article or vague word may stand first. */
function readWithoutNumber(
  tokens: readonly Token[],
  i: number,
  lex: Lexicon,
): Read<Measure> | null {
  let at = i;
  while (isAt(lex.articles, tokens, at) || isAt(lex.vague, tokens, at)) at++;
  const vague = at > i && isAt(lex.vague, tokens, at - 1);
  const bare = readBare(tokens, at, lex, vague);
  if (bare || !vague || !isAt(lex.few, tokens, at - 1) || tokens[at]?.kind !== 'w') return bare;
  const { size } = readSizes(tokens, at, lex, false).value;
  const amount = stated(FEW[0], null, FEW[1], true);
  return found({ amount, unit: null, size, fill: [] }, at + size.length);
}

/** 'or so', 'a pinch or two of', 'cans or boxes': the index after it, null when it is another food. */
function readOr(tokens: readonly Token[], i: number, lex: Lexicon, run: Run): number | null {
  if (isAt(lex.more, tokens, i + 1)) {
    const last = run.amounts.at(-1);
    if (last) last.approximate = true;
    run.loose.push(...tokens.slice(i, i + 2));
    return i + 2;
  }
  if (lex.numbers.has(lowAt(tokens, i + 1)) && isAt(lex.of, tokens, i + 2)) return i + 2;
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
  if (joint.text === '/' && m.unit === null && tokens[i + 1]?.kind === 'n') {
    run.loose.push(...tokens.slice(i + 1, measure.next));
    return measure.next;
  }
  const adds = PLUS_MARKS.has(joint.text) || lex.plus.has(joint.low);
  if (lex.times.has(joint.low)) {
    if (run.last !== null) return null;
    push(run, m, 'each');
  } else if (lex.minus.has(joint.low)) {
    if (!subtract(run, m)) return null;
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
    if (isMeasured(unit.value) && run.stated === null && run.amounts.length > 1)
      adopt(run, unit.value);
    else if (!contain(run, unit.value)) return null;
    addSize(run, sizes.value.size);
    run.loose.push(...sizes.value.fill);
    return unit.next;
  }
  if (tokens[i]?.kind === 'w') return readSizeOfOne(tokens, i, lex, run);
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
  if (at === i || tokens[at]?.kind !== 'n') return null;
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
  // '4 x chicken thighs'
  if (lex.times.has(t.low) && run.last === null && tokens[i + 1]?.kind === 'w') return i + 1;
  if (isDash(t) || lex.ranges.has(t.low)) {
    const to = readMeasure(tokens, i + 1, lex);
    if (to && widen(run, to.value)) return to.next;
  }
  const joint =
    t.kind === 'p' ||
    lex.times.has(t.low) ||
    lex.plus.has(t.low) ||
    lex.or.has(t.low) ||
    lex.minus.has(t.low);
  return joint && t.text !== '#' ? readJoined(tokens, i, lex, run) : readNext(tokens, i, lex, run);
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
  let next = first.next;
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
