/** Reads what follows the amounts: the name, then brackets and comma parts. */

import { readTail } from '../amounts/tail-amount.ts';
import type { Parts } from '../line-parts.ts';
import { isEntryAt, type Lexicon } from '../words/lexicon.ts';
import { isAt, isMark, lowAt, someOf, type Token } from '../words/tokens.ts';
import { alike, file, fileAmounts } from './file-segments.ts';
import { findCut } from './find-name.ts';
import { finishName, isGloss } from './finish-name.ts';
import { couldBeFood, eachSpan, hasJoint, isAndList, isBareList, nameSpan } from './name-span.ts';
import {
  type Bracket,
  classify,
  onlyDescribes,
  type Segment,
  split,
  takeBrackets,
} from './segments.ts';

/** The tokens of the line from the first to the last of `run`, brackets between them included. */
function between(rest: readonly Token[], run: readonly Token[]): Token[] {
  const base = rest[0]?.index ?? 0;
  const from = run[0]?.index ?? base;
  return rest.slice(from - base, (run.at(-1)?.index ?? from) - base + 1);
}

/** Tokens of a part that may be one more example where no 'or' ends the list. */
const SHORT = 2;

/** 'such as', 'e.g.', 'for example': words that begin a list of examples. */
const startsList = (tokens: readonly Token[], lex: Lexicon): boolean =>
  isEntryAt(lex.listStarts, tokens, 0, lex);

/** Where the remark that begins at segment `k` ends: 'such as radish, kale, or cress' has three. */
function remarkEnd(segs: readonly Segment[], k: number, lex: Lexicon): number {
  const opening = segs[k]?.tokens ?? [];
  const mixture = isAt(lex.or, opening, 0) && someOf(opening, lex.onlyNote);
  if (!mixture && (!startsList(opening, lex) || hasJoint(opening, lex))) return k;
  let last = k;
  for (let end = k + 1; end < segs.length; end++) {
    const seg = segs[end]?.tokens ?? [];
    const food = isAt(lex.joints, seg, 0) ? seg.slice(1) : seg;
    if (classify(food, lex) !== 'name' || isAt(lex.orNote, food, 0)) break;
    if (hasJoint(seg, lex)) return end;
    if (seg.length <= SHORT) last = end;
  }
  return mixture ? k : last;
}

/** Later segments, remarks that run over commas as one. */
function joinRemarks(segs: readonly Segment[], lex: Lexicon): Segment[] {
  const out: Segment[] = [];
  for (let k = 0; k < segs.length; k++) {
    const seg = segs[k];
    if (!seg) continue;
    const end = remarkEnd(segs, k, lex);
    out.push(end > k ? { ...seg, tokens: segs.slice(k, end + 1).flatMap((s) => s.tokens) } : seg);
    k = end;
  }
  return out;
}

const namesAgain = (t: Token, name: readonly Token[], lex: Lexicon): boolean =>
  !lex.units.has(t.low) && (lex.ones.has(t.low) || name.some((n) => alike(n.low, t.low)));

/** Whether a name lists several foods. */
const listsFoods = (name: readonly Token[], lex: Lexicon): boolean =>
  name.some((t, i) => i > 0 && i < name.length - 1 && (t.text === ',' || lex.and.has(t.low)));

/** Files everything after the amounts. A bracket within a later part stays in that part's words. */
export function readRest(rest: readonly Token[], parts: Parts, lex: Lexicon): void {
  const { plain, brackets } = takeBrackets(rest);
  const body = readTail(plain, parts, lex);
  const segs = split(body);
  const first = segs[0];
  if (!first) {
    parts.name.push(...rest.filter((t) => !isMark(t)));
    return;
  }
  parts.list = parts.each || (parts.amounts.length === 0 && isBareList(segs, lex));
  const span = parts.list ? eachSpan(segs, lex) : nameSpan(segs, lex);
  const last = segs[span - 1] ?? first;
  const words = body.slice(first.start, last.start + last.tokens.length);
  const cut = findCut(words, lex);
  const end = first.start + cut;
  const tail = words.slice(cut);
  const later = joinRemarks(segs.slice(span), lex);
  const tails = [{ start: end, tokens: tail }, ...later];
  const inside = brackets.filter(({ at }) =>
    tails.some((s) => at > s.start && at < s.start + s.tokens.length),
  );
  const name = [...parts.name, ...words.slice(0, cut)];
  for (const b of brackets) {
    if (inside.includes(b)) continue;
    // 'bananas (4 small bananas or 3 large ones)'
    const again = parts.amounts[0] ? [] : b.tokens.filter((t) => namesAgain(t, name, lex));
    parts.known.push(again);
    b.tokens = b.tokens.filter((t) => !again.includes(t));
    fileBracket(b, b.at > first.start && b.at <= end, b.at === end, parts, lex);
  }
  parts.name = name;
  if (tail.length > 0) file(between(rest, tail), parts, lex);
  for (const s of later) {
    // 'salt, to taste; pepper'
    if (s.mark === ';' && !parts.list && !parts.amounts[0] && couldBeFood(s.tokens, lex))
      parts.further.push(s.tokens);
    else file(between(rest, s.tokens), parts, lex);
  }
  parts.list ||= parts.amounts.length === 0 && isAndList(name, lex);
  finishName(name, parts, lex);
  if (parts.each && listsFoods(parts.name, lex)) parts.known.push(parts.eachWord);
}

/** Brackets that are one remark, commas and all: '(such as rye, oat, or barley)', '(Fuji, Gala, or Braeburn)'. */
function isRemark(tokens: readonly Token[], segs: readonly Segment[], lex: Lexicon): boolean {
  if (tokens.some((t) => lex.optional.has(t.low) || lex.referenceWords.has(t.low))) return false;
  if (startsList(tokens, lex)) return true;
  const low = lowAt(tokens, 0);
  if (lex.noteStarts.has(low)) return !lex.approx.has(low) && !lex.around.has(low);
  return segs.length > 2 && segs.every((s) => classify(s.tokens, lex) === 'name');
}

/** A bracket: amounts, a second name, or words; at the name's end describing words are preparation. */
function fileBracket(
  bracket: Bracket,
  inName: boolean,
  atEnd: boolean,
  parts: Parts,
  lex: Lexicon,
): void {
  // 'basil (chopped (16 g)'
  const { plain: tokens, brackets: inner } = takeBrackets(bracket.tokens);
  for (const { tokens: own } of inner) if (!fileAmounts(own, parts, lex)) tokens.push(...own);
  if (fileAmounts(tokens, parts, lex)) return;
  if (inName && isGloss(tokens, lex) && !(atEnd && onlyDescribes(tokens, lex))) {
    parts.glosses.push(tokens);
    if (isAt(lex.or, tokens, 0)) parts.substitutes.push(tokens.slice(1));
    return;
  }
  const segs = split(tokens);
  if (isRemark(tokens, segs, lex)) parts.notes.push(tokens);
  else for (const s of segs) file(s.tokens, parts, lex, true);
}
