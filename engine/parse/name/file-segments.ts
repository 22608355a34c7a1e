/** Files the comma parts and brackets outside the name under what each one is. */

import { amountsOf, readAmountList } from '../amounts/amount-list.ts';
import { readAmounts } from '../amounts/amount-run.ts';
import { sizesOne } from '../amounts/measure.ts';
import { isMeasured } from '../amounts/unit.ts';
import type { Parts } from '../line-parts.ts';
import { isPairAt, type Lexicon } from '../words/lexicon.ts';
import { isAt, isMark, isNumber, isWord, type Token } from '../words/tokens.ts';
import { findCut } from './find-name.ts';
import { allPrep, couldBeFood } from './name-span.ts';
import { classify, isPurposeAt, onlyDescribes } from './segments.ts';

/**
 * 'plus 1 egg yolk', '2 celery stalks': a further food with its own amount. Without a 'plus' it must
 * stand outside brackets and share no word with the name, so that no food is counted twice.
 */
function isFurther(seg: readonly Token[], parts: Parts, bracket: boolean, lex: Lexicon): boolean {
  const from = isAt(lex.plus, seg, 0) ? 1 : 0;
  if (from === 0 && (bracket || !isNumber(seg[0]))) return false;
  const head = readAmounts(seg, from, lex);
  const name = head ? seg[head.next] : undefined;
  if (!head || !isWord(name) || lex.more.has(name.low) || lex.purposeStarts.has(name.low))
    return false;
  if (isMoreOfIt(seg, head.next, lex)) return false;
  const rest = seg.slice(head.next);
  const kind = classify(rest, lex);
  if (from > 0)
    return (kind === 'name' || kind === 'prep') && !allPrep(rest, lex) && !onlyDescribes(rest, lex);
  if (kind !== 'name' || sizesOne(head.value.amounts)) return false;
  const food = rest.slice(0, findCut(rest, lex));
  return couldBeFood(food, lex) && !food.some((t) => parts.name.some((n) => alike(n.low, t.low)));
}

/** 'plus a few extra for garnish': more of the same food, named no more. */
function isMoreOfIt(seg: readonly Token[], at: number, lex: Lexicon): boolean {
  const next = seg[at + 1];
  return isAt(lex.leads, seg, at) && (!isWord(next) || lex.purposeStarts.has(next.low));
}

/** Whether two words are the same, plural aside. */
export const alike = (a: string, b: string): boolean => a === b || `${a}s` === b || a === `${b}s`;

/** Preparation, and the purpose it may end in: 'halved, for serving', 'cut up to serve'. */
function filePrep(seg: readonly Token[], parts: Parts, lex: Lexicon): void {
  const purpose = seg.findIndex(
    (_, i) => i > 0 && isPurposeAt(seg, i, lex) && isAt(lex.purposeVerbs, seg, i + 1),
  );
  parts.preps.push(purpose > 0 ? seg.slice(0, purpose) : [...seg]);
  if (purpose > 0) parts.purposes.push(seg.slice(purpose));
}

/** Files words that are no amount. */
export function fileWords(
  seg: readonly Token[],
  parts: Parts,
  lex: Lexicon,
  bracket = false,
): void {
  if (seg.every(isMark)) return;
  const words = [...seg];
  const or = isAt(lex.or, seg, 0) && !onlyDescribes(seg, lex);
  switch (classify(seg, lex)) {
    case 'optional':
      parts.optional = true;
      (seg.length > 1 ? parts.notes : parts.known).push(words);
      break;
    case 'purpose':
      parts.purposes.push(words);
      break;
    case 'reference':
      parts.reference ||= seg.some((_, i) => isPairAt(lex.referenceWords, seg, i, lex));
      parts.notes.push(words);
      break;
    case 'note':
      if (isFurther(seg, parts, bracket, lex)) {
        parts.further.push(isAt(lex.plus, seg, 0) ? seg.slice(1) : [...seg]);
        break;
      }
      if (or && !isAt(lex.orNote, seg, 1)) parts.substitutes.push(seg.slice(1));
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
  const leadUnit = lex.byName.get(lead?.unit ?? '') ?? null;
  // '3 cups bread (½-inch cubes)': how it is cut, not how much
  if (isMeasured(leadUnit) && list.measures.every((m) => m.unit?.kind === 'length')) return false;
  // '½ box pasta (8 oz)' tells what the half weighs
  const container = leadUnit?.kind === 'container' && !(lead && lead.quantity < 1);
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
  const sized = sizesOne(parts.amounts);
  parts.known.push(seg.filter((t) => !list.loose.includes(t) && (sized || !lex.each.has(t.low))));
  return true;
}

/** Files a comma part or bracket: an amount or words. */
export function file(seg: readonly Token[], parts: Parts, lex: Lexicon, bracket = false): void {
  if (!fileAmounts(seg, parts, lex)) fileWords(seg, parts, lex, bracket);
}
