/** Reads a bracket within the run of amounts at a line's head. */
import type { Lexicon } from '../words/lexicon.ts';
import { isMark, type Token } from '../words/tokens.ts';
import { amountsOf, readAmountList, SAME_MARKS } from './amount-list.ts';
import { addSize, bracketKind, push, type Run, repeats } from './joined-measures.ts';
import { type Measure, readMeasure } from './measure.ts';
import { isMeasured, readUnit } from './unit.ts';

/** Amounts in brackets at `i`: the index after them, or null when the brackets hold anything else. */
export function readBracket(
  tokens: readonly Token[],
  i: number,
  lex: Lexicon,
  run: Run,
): number | null {
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
  if (!isMark(mark)) return run.stated === null && readUnit(tokens, i, lex) !== null;
  const next = SAME_MARKS.has(mark.text) ? readMeasure(tokens, i + 1, lex) : null;
  return next !== null && isMeasured(next.value.unit);
}
