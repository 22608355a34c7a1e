/** Reads the whole run of amounts at one place: sums, products, dual measures, containers. */
import type { Amount } from '../model.ts';
import { isDash, type Measure, type Read, readMeasure, readSizes, readUnit } from './amounts.ts';
import type { Lexicon, Unit } from './lexicon.ts';
import { lowAt, type Token } from './tokens.ts';

export interface Amounts {
  amounts: Amount[];
  size: string | null;
  /** Words inside the run that are no amount: 'each', 'drained', 'total'. */
  words: string[];
}

interface Run extends Amounts {
  /** Unit of the stated amount, and of the latest one. */
  stated: Unit | null;
  last: Unit | null;
}

const SAME_MARKS = new Set(['[', ']', '(', ')', '/', '|', ',', ';', '=', '-', '–', '—', ':', '·']);
const PLUS_MARKS = new Set(['+', '&']);

const isMeasured = (unit: Unit | null): boolean =>
  unit?.kind === 'mass' || unit?.kind === 'volume' || unit?.kind === 'length';

function push(run: Run, measure: Measure, kind: Amount['kind']): void {
  run.amounts.push({ ...measure.amount, kind });
  run.last = measure.unit;
  run.size ??= measure.size;
  run.words.push(...measure.fill);
}

/** Whether an amount in brackets is the size of one unit, or the whole quantity again. */
function bracketKind(run: Run, measure: Measure, each: boolean): Amount['kind'] {
  if (each || measure.unit?.kind === 'length') return 'each';
  const container = run.stated?.kind === 'container';
  const bare = run.stated === null && isMeasured(measure.unit);
  return container || bare ? 'each' : 'same';
}

const samePlain = (a: Amount | undefined, b: Amount): boolean =>
  a !== undefined && a.quantity === b.quantity && a.max === b.max;

/** What a measure that follows without any mark means: '1 lb 2 oz', '2 15-ounce cans', '10 10 eggs'. */
function juxtapose(run: Run, measure: Measure): boolean {
  const last = run.amounts.at(-1);
  if (run.last === null && isMeasured(measure.unit)) {
    push(run, measure, 'each');
    return true;
  }
  if (measure.unit === null) return samePlain(last, measure.amount);
  if (run.last === measure.unit && samePlain(last, measure.amount)) return true;
  if (run.last && run.last.kind === measure.unit.kind && run.last !== measure.unit) {
    push(run, measure, 'plus');
    return true;
  }
  return false;
}

/** '400 g tin', '2-inch piece': the measure is the size of one container or piece. */
function contain(run: Run, unit: Unit): boolean {
  const container = unit.kind === 'container' || run.last?.kind === 'length';
  if (!container && unit.kind !== 'piece' && unit.kind !== 'trail') return false;
  const first = run.amounts[0];
  if (!first) return false;
  const counted = run.stated === null;
  if (counted) first.unit = unit.name;
  else if (isMeasured(run.stated) && container) {
    for (const amount of run.amounts) if (amount.kind === 'stated') amount.kind = 'each';
    run.amounts.unshift({
      ...first,
      quantity: 1,
      max: null,
      unit: unit.name,
      kind: 'stated',
      approximate: false,
    });
  } else return false;
  run.stated = unit;
  run.last = unit;
  return true;
}

/** Factor between units in which one range may be written: '14 oz to 1 lb', '800 g - 1 kg'. */
const STEPS: Readonly<Record<string, number>> = { 'lb>oz': 16, 'kg>g': 1000, 'l>ml': 1000 };

/** '325 ml - 350 ml', '1 cup to 1½ cups': the second measure is the upper end of the first. */
function widen(run: Run, upper: Measure): boolean {
  const amount = run.amounts.at(-1);
  if (!amount || !run.last || !upper.unit || amount.max !== null || upper.amount.max !== null)
    return false;
  const step = upper.unit === run.last ? 1 : STEPS[`${upper.unit.name}>${run.last.name}`];
  const high = upper.amount.quantity * (step ?? 0);
  if (high <= amount.quantity) return false;
  amount.max = high;
  return true;
}

/** '12 (3 l) cups water': the unit comes late, so the brackets held the same quantity. */
function adopt(run: Run, unit: Unit): void {
  for (const [i, amount] of run.amounts.entries())
    if (i === 0) amount.unit = unit.name;
    else if (amount.kind === 'each') amount.kind = 'same';
  run.stated = unit;
  run.last = unit;
}

/** The amounts inside brackets at `i`, null when the brackets hold anything else. */
function readBracket(tokens: readonly Token[], i: number, lex: Lexicon, run: Run): number | null {
  const closing = tokens[i]?.text === '[' ? ']' : ')';
  const close = tokens.findIndex((t, at) => at > i && t.text === closing);
  if (close < 0) return null;
  const inner = tokens.slice(i + 1, close);
  if (inner.every((t) => lex.fill.has(t.low) || lex.prep.has(t.low))) {
    run.words.push(...inner.map((t) => t.low));
    return close + 1;
  }
  const list = readAmountList(inner, lex);
  if (!list?.measures.some((m) => m.unit ?? m.size)) return null;
  const each = list.words.some((w) => lex.each.has(w));
  for (const [n, m] of list.measures.entries()) {
    let kind = n === 0 || m.amount.kind !== 'plus' ? bracketKind(run, m, each) : 'plus';
    if (m.amount.kind === 'each') kind = 'each';
    run.amounts.push({ ...m.amount, kind });
    if (m.size && m.unit === null) run.size ??= m.size;
  }
  run.words.push(...list.words);
  return close + 1;
}

/** A list that is nothing but amounts: '5 oz / 142 g', 'about 2 cups total', 'one 28-ounce can'. */
export function readAmountList(
  tokens: readonly Token[],
  lex: Lexicon,
): { measures: Measure[]; words: string[] } | null {
  const measures: Measure[] = [];
  const words: string[] = [];
  let kind: Amount['kind'] = 'same';
  let i = 0;
  for (;;) {
    const t = tokens[i];
    if (!t) break;
    const measure = readMeasure(tokens, i, lex);
    if (measure) {
      const before = measures.at(-1);
      const m = measure.value;
      if (
        before &&
        before.unit === null &&
        isMeasured(m.unit) &&
        kind === 'same' &&
        tokens[i - 1]?.kind === 'n'
      )
        m.amount.kind = 'each';
      else m.amount.kind = kind;
      measures.push(m);
      i = measure.next;
      const unit = readUnit(tokens, i, lex);
      if (unit) i = unit.next;
      kind = 'same';
      continue;
    }
    if (t.kind === 'p' && (SAME_MARKS.has(t.text) || t.text === '.')) kind = 'same';
    else if ((t.kind === 'p' && PLUS_MARKS.has(t.text)) || lex.plus.has(t.low)) kind = 'plus';
    else if (lex.or.has(t.low)) kind = 'same';
    else if (lex.each.has(t.low) || lex.approx.has(t.low) || lex.around.has(t.low))
      words.push(t.low);
    else return null;
    i++;
  }
  return measures.length > 0 ? { measures, words } : null;
}

/** A bare unit that means one of it: 'pinch of salt', 'a large handful', 'bunch parsley'. */
function readBare(
  tokens: readonly Token[],
  i: number,
  lex: Lexicon,
  vague: boolean,
): Read<Measure> | null {
  const sizes = readSizes(tokens, i, lex, true);
  const unit = readUnit(tokens, sizes.next, lex);
  if (!unit) return null;
  const of = vague || sizes.value.size !== null || lex.of.has(lowAt(tokens, unit.next));
  if (
    unit.value.kind !== 'small' &&
    !(
      of &&
      (unit.value.kind === 'container' ||
        unit.value.kind === 'piece' ||
        unit.value.kind === 'trail' ||
        unit.value.kind === 'volume')
    )
  )
    return null;
  if (tokens[unit.next]?.kind !== 'w' && tokens[unit.next]?.text !== '(') return null;
  const amount: Amount = {
    // 'a few sprigs' is taken as two to four: common practice, no source
    quantity: vague ? 2 : 1,
    max: vague ? 4 : null,
    unit: unit.value.name,
    kind: 'stated',
    approximate: true,
  };
  return {
    value: { amount, unit: unit.value, size: sizes.value.size, fill: sizes.value.fill },
    next: unit.next,
  };
}

/** One step on from `i`: the index after it, or null when the run ends at `i`. */
function extend(tokens: readonly Token[], i: number, lex: Lexicon, run: Run): number | null {
  const t = tokens[i];
  if (!t) return null;
  if (t.text === ')') return i + 1;
  if (t.text === '(' || t.text === '[') return readBracket(tokens, i, lex, run);
  if (lex.or.has(t.low)) {
    if (lex.more.has(lowAt(tokens, i + 1))) return i + 2;
    // 'a pinch or two of', 'cans or boxes'
    if (lex.numbers.has(lowAt(tokens, i + 1)) && lex.of.has(lowAt(tokens, i + 2))) return i + 2;
    const other = readUnit(tokens, i + 1, lex);
    if (other && run.last && other.value.kind === run.last.kind) return other.next;
  }
  if (isDash(t) || lex.ranges.has(t.low)) {
    const to = readMeasure(tokens, i + 1, lex);
    if (to && widen(run, to.value)) return to.next;
  }
  if (t.kind === 'p' || lex.times.has(t.low) || lex.plus.has(t.low) || lex.or.has(t.low)) {
    const measure = readMeasure(tokens, i + 1, lex);
    if (!measure) return null;
    const m = measure.value;
    if (lex.times.has(t.low)) {
      if (run.last !== null) return null;
      push(run, m, 'each');
    } else if (lex.or.has(t.low) && run.last === null && m.size && run.size) {
      push(run, m, 'same');
    } else if (
      !isMeasured(m.unit) &&
      !(m.unit && (t.text === '/' || PLUS_MARKS.has(t.text) || lex.plus.has(t.low)))
    )
      return null;
    else if (PLUS_MARKS.has(t.text) || lex.plus.has(t.low)) {
      if (run.last === null) return null;
      push(run, m, 'plus');
    } else if (SAME_MARKS.has(t.text) || lex.or.has(t.low)) {
      if (run.last === null || (t.text === ',' && !tokens[measure.next])) return null;
      push(run, m, run.amounts.at(-1)?.kind === 'each' ? 'each' : 'same');
    } else return null;
    return measure.next;
  }
  const sizes = readSizes(tokens, i, lex, true);
  const unit = readUnit(tokens, sizes.next, lex);
  if (unit) {
    if (unit.value === run.last && sizes.next === i && isMeasured(unit.value)) return unit.next;
    if (unit.value === run.stated) return null;
    if (isMeasured(unit.value) && run.stated === null && run.amounts.length > 1)
      adopt(run, unit.value);
    else if (!contain(run, unit.value)) return null;
    run.size ??= sizes.value.size;
    run.words.push(...sizes.value.fill);
    return unit.next;
  }
  const measure = readMeasure(tokens, i, lex);
  if (measure && t.kind === 'n' && juxtapose(run, measure.value)) return measure.next;
  return null;
}

/** The amounts that start at `i`, up to the food's name; null when no amount starts there. */
export function readAmounts(
  tokens: readonly Token[],
  i: number,
  lex: Lexicon,
): Read<Amounts> | null {
  const first = readMeasure(tokens, i, lex) ?? readArticleBare(tokens, i, lex);
  if (!first) return null;
  const run: Run = {
    amounts: [first.value.amount],
    size: first.value.size,
    words: [...first.value.fill],
    stated: first.value.unit,
    last: first.value.unit,
  };
  let next = first.next;
  for (;;) {
    const step = extend(tokens, next, lex, run);
    if (step === null) break;
    next = step;
  }
  if (lex.each.has(lowAt(tokens, next))) run.words.push(lowAt(tokens, next++));
  if (tokens[next] && lex.of.has(lowAt(tokens, next))) next++;
  return { value: { amounts: run.amounts, size: run.size, words: run.words }, next };
}

/** 'a few leaves', 'pinch of', 'some': an article or vague word may stand first. */
function readArticleBare(tokens: readonly Token[], i: number, lex: Lexicon): Read<Measure> | null {
  let at = i;
  while (tokens[at] && (lex.articles.has(lowAt(tokens, at)) || lex.vague.has(lowAt(tokens, at))))
    at++;
  return readBare(tokens, at, lex, at > i && lex.vague.has(lowAt(tokens, at - 1)));
}
