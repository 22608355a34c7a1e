/** Reads a run of tokens that is nothing but amounts, as brackets and comma parts hold them. */
import type { Amount } from '../../model.ts';
import type { Lexicon } from '../words/lexicon.ts';
import { isMark, lowAt, type Token } from '../words/tokens.ts';
import { widen } from './joined-measures.ts';
import { type Measure, readMeasure } from './measure.ts';
import { isDash } from './quantity.ts';
import { isMeasured, readUnit } from './unit.ts';

export interface AmountList {
  /** Each with the kind that its joint gives it: `same`, `plus`, or `each` for the size of the count before it. */
  measures: Measure[];
  /** Words that say more than amounts do: 'total', 'drained'. */
  loose: Token[];
  each: boolean;
}

export const SAME_MARKS = new Set('[]()/|,;=-–—:·');
export const PLUS_MARKS = new Set('+&');

/** The size of all, from a count and the size of one: 'two 8-ounce packets' in a box are 16 ounces. */
function totalOf(count: Amount, size: Amount): Amount {
  const quantity = count.quantity * size.quantity;
  const max = (count.max ?? count.quantity) * (size.max ?? size.quantity);
  return { ...size, quantity, max: max > quantity ? max : null };
}

/** The list's amounts beside a leading one; `kindOf` says what a measure without a joint means there. */
export function amountsOf(
  { measures }: AmountList,
  kindOf: (measure: Measure) => Amount['kind'],
): Amount[] {
  const out: Amount[] = [];
  for (const [n, m] of measures.entries()) {
    const before = out.at(-1);
    if (m.amount.kind === 'each' && before?.kind === 'each')
      out[out.length - 1] = { ...totalOf(before, m.amount), kind: 'each' };
    else if (m.amount.kind === 'each' || (m.amount.kind === 'plus' && n > 0)) out.push(m.amount);
    else out.push({ ...m.amount, kind: kindOf(m) });
  }
  return out;
}

/** '5 oz / 142 g', 'about 2 cups total', 'one 28-ounce can'; null when it says anything else. */
export function readAmountList(tokens: readonly Token[], lex: Lexicon): AmountList | null {
  const list: AmountList = { measures: [], loose: [], each: false };
  let kind: 'same' | 'plus' = 'same';
  let i = 0;
  for (;;) {
    const t = tokens[i];
    if (!t) break;
    const measure = readMeasure(tokens, i, lex);
    if (measure) {
      const m = measure.value;
      // 'a little more' is no amount, nor is the can in 'half of a 6-ounce can'
      if (m.unit === null && lex.articles.has(t.low)) return null;
      const before = list.measures.at(-1);
      const touches = !isMark(tokens[i - 1]) || lowAt(tokens, i - 1) === '(';
      const sized = before?.unit === null && isMeasured(m.unit) && touches;
      m.amount.kind = sized && kind === 'same' ? 'each' : kind;
      list.measures.push(m);
      list.loose.push(...m.fill);
      i = measure.next;
      if (lowAt(tokens, i) === ')') i++;
      const next = readUnit(tokens, i, lex);
      const unit = next && (!isMeasured(next.value) || next.value === m.unit) ? next : null;
      if (unit && before && m.amount.kind === 'each') {
        before.unit = unit.value;
        before.amount.unit = unit.value.name;
      } else if (unit && unit.value !== m.unit) list.loose.push(...tokens.slice(i, unit.next));
      if (unit) i = unit.next;
      kind = 'same';
      continue;
    }
    const upper = isDash(t) || lex.ranges.has(t.low) ? readMeasure(tokens, i + 1, lex) : null;
    const low = list.measures.at(-1);
    if (upper && widen(low?.amount, low?.unit ?? null, upper.value)) {
      i = upper.next;
      continue;
    }
    if (isMark(t) && (SAME_MARKS.has(t.text) || t.text === '.')) kind = 'same';
    else if ((isMark(t) && PLUS_MARKS.has(t.text)) || lex.plus.has(t.low)) kind = 'plus';
    else if (lex.or.has(t.low)) kind = 'same';
    else if (lex.each.has(t.low)) list.each = true;
    else if (lex.of.has(t.low) && lowAt(tokens, i + 1) !== '') {
      if (readMeasure(tokens, i + 1, lex)) return null;
    } else if (lex.around.has(t.low)) list.loose.push(t);
    else if (!lex.approx.has(t.low)) return null;
    i++;
  }
  return list.measures.length > 0 ? list : null;
}
