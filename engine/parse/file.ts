/** Files the comma parts and brackets outside the name under what each one is. */

import { readAmounts } from './amounts.ts';
import type { Lexicon } from './lexicon.ts';
import { amountsOf, readAmountList } from './list.ts';
import { findCut } from './name.ts';
import type { Parts } from './parts.ts';
import { classify, isPurposeAt, onlyDescribes } from './segments.ts';
import { allPrep, couldBeFood } from './span.ts';
import { lowAt, type Token } from './tokens.ts';

/** 'plus 1 egg yolk', '2 celery stalks': a further food with its own amount, not more of the same one. */
function isFurther(seg: readonly Token[], lex: Lexicon): boolean {
  const from = lex.plus.has(lowAt(seg, 0)) ? 1 : 0;
  if (from === 0 && seg[0]?.kind !== 'n') return false;
  const head = readAmounts(seg, from, lex);
  const name = head ? seg[head.next] : undefined;
  if (!head || name?.kind !== 'w' || lex.more.has(name.low) || lex.purposeStarts.has(name.low))
    return false;
  const rest = seg.slice(head.next);
  const kind = classify(rest, lex);
  if (from === 0 && head.value.amounts.some((a) => a.kind === 'each')) return false;
  if (from === 0) return kind === 'name' && couldBeFood(rest.slice(0, findCut(rest, lex)), lex);
  return (kind === 'name' || kind === 'prep') && !allPrep(rest, lex) && !onlyDescribes(rest, lex);
}

/** Preparation, and the purpose it may end in: 'halved, for serving', 'cut up to serve'. */
function filePrep(seg: readonly Token[], parts: Parts, lex: Lexicon): void {
  const purpose = seg.findIndex(
    (_, i) => i > 0 && isPurposeAt(seg, i, lex) && lex.purposeVerbs.has(lowAt(seg, i + 1)),
  );
  parts.preps.push(purpose > 0 ? seg.slice(0, purpose) : [...seg]);
  if (purpose > 0) parts.purposes.push(seg.slice(purpose));
}

/** Files words that are no amount. */
export function fileWords(seg: readonly Token[], parts: Parts, lex: Lexicon): void {
  const words = [...seg];
  const or = lex.or.has(lowAt(seg, 0)) && !onlyDescribes(seg, lex);
  switch (classify(seg, lex)) {
    case 'optional':
      parts.optional = true;
      (seg.length > 1 ? parts.notes : parts.understood).push(words);
      break;
    case 'purpose':
      parts.purposes.push(words);
      break;
    case 'reference':
      parts.reference ||= seg.length <= 4;
      parts.notes.push(words);
      break;
    case 'note':
      if (isFurther(seg, lex)) {
        const from = lex.plus.has(lowAt(seg, 0)) ? 1 : 0;
        parts.understood.push(seg.slice(0, from));
        parts.further.push(seg.slice(from));
        break;
      }
      if (or && !lex.orNote.has(lowAt(seg, 1))) parts.substitutes.push(seg.slice(1));
      parts.notes.push(words);
      break;
    case 'name':
      if (or) parts.substitutes.push(seg.slice(1));
      (or ? parts.notes : parts.preps).push(words);
      break;
    default:
      filePrep(seg, parts, lex);
  }
}

/** Amounts further on in the line, put beside those at the head; false when `seg` says anything else. */
export function fileAmounts(seg: readonly Token[], parts: Parts, lex: Lexicon): boolean {
  const list = readAmountList(seg, lex);
  if (!list?.measures.some((m) => m.unit ?? m.size[0])) return false;
  const lead = parts.amounts[0];
  const container = lead?.unit != null && lex.byName.get(lead.unit)?.kind === 'container';
  parts.amounts.push(
    ...amountsOf(list, (m) => {
      if (!lead) return 'stated';
      return list.each || container || m.unit?.kind === 'length' ? 'each' : m.amount.kind;
    }),
  );
  for (const m of list.measures) {
    if (m.size.length > 0 && m.unit === null && parts.size.length === 0) parts.size = m.size;
    else list.loose.push(...m.size);
  }
  const sized = parts.amounts.some((a) => a.kind === 'each');
  parts.understood.push(
    seg.filter((t) => !list.loose.includes(t) && (sized || !lex.each.has(t.low))),
  );
  return true;
}

/** Files a comma part or bracket: an amount or words. */
export function file(seg: readonly Token[], parts: Parts, lex: Lexicon): void {
  if (!fileAmounts(seg, parts, lex)) fileWords(seg, parts, lex);
}
