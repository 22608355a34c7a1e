/** How far a name reaches over the comma parts that follow it. */

import { readMeasure } from '../amounts/measure.ts';
import type { Lexicon } from '../words/lexicon.ts';
import { allOf, isAt, isNumber, isWord, someOf, type Token } from '../words/tokens.ts';
import { findCut, liftPrep } from './find-name.ts';
import { allDescribe, classify, isPrepAt, onlyDescribes, type Segment } from './segments.ts';

export const hasJoint = (seg: readonly Token[], lex: Lexicon): boolean => someOf(seg, lex.joints);

export const allPrep = (seg: readonly Token[], lex: Lexicon): boolean => allOf(seg, lex.preparing);

/** Whether words can be a food with its preparation: 'grated nutmeg', 'melted butter'. */
export function couldBeFood(run: readonly Token[], lex: Lexicon): boolean {
  const last = run.at(-1);
  if (!isWord(last) || allPrep(run, lex) || onlyDescribes(run, lex)) return false;
  if (isAt(lex.noteStarts, run, 0) || readMeasure(run, 0, lex)) return false;
  if (isPrepAt(run, run.length - 1, lex) || findCut(run, lex) < run.length) return false;
  return !run.some(
    (t) =>
      lex.noteHeads.has(t.low) ||
      lex.prepTails.has(t.low) ||
      lex.optional.has(t.low) ||
      isNumber(t),
  );
}

/** 'and grated nutmeg', 'or chopped parsley': a food that ends a list. */
const endsList = (seg: readonly Token[], lex: Lexicon): boolean =>
  isAt(lex.joints, seg, 0) && couldBeFood(seg.slice(1), lex);

/** Whether the words after the last joint only describe, so that the food comes after the comma. */
function leftOpen(seg: readonly Token[], lex: Lexicon): boolean {
  const joint = seg.findLastIndex((t) => lex.joints.has(t.low));
  const rest = seg.slice(joint + 1);
  return joint >= 0 && rest.length > 0 && allDescribe(rest, lex);
}

/** Whether a part cannot be a name: it only describes or says how the food is prepared. */
const isBare = (seg: readonly Token[], lex: Lexicon): boolean =>
  onlyDescribes(liftPrep(seg, lex, false).name, lex) || allPrep(seg, lex);

const goesOn = (seg: readonly Token[], lex: Lexicon): boolean => {
  const kind = classify(seg, lex);
  return kind === 'name' || kind === 'prep';
};

/** How many segments from the first one it takes to reach a noun: 'crisp, dry wine' has two. */
function firstNoun(segs: readonly Segment[], lex: Lexicon): number {
  for (let n = 1; n <= segs.length; n++) {
    const seg = segs[n - 1]?.tokens ?? [];
    const open = isBare(seg, lex);
    if (!open && !leftOpen(seg, lex)) return n;
    const next = segs[n]?.tokens;
    if (!next || !goesOn(next, lex)) return open ? 1 : n;
  }
  return 1;
}

/** The end of the list part at `k`, over parts that its describing words leave open: 'or other soft, mild cheese'. */
function partEnd(segs: readonly Segment[], k: number, lex: Lexicon): number {
  let end = k + 1;
  for (let next = segs[end]?.tokens; next; next = segs[end]?.tokens) {
    if (!leftOpen(segs[end - 1]?.tokens ?? [], lex) || !goesOn(next, lex) || allPrep(next, lex))
      break;
    end++;
  }
  return end;
}

/** How many of the leading segments make up the name: 'basil, cilantro, or parsley' has three. */
export function nameSpan(segs: readonly Segment[], lex: Lexicon): number {
  if (segs.length < 2) return segs.length;
  const first = firstNoun(segs, lex);
  let end = first;
  for (let k = first; k < segs.length; k++) {
    const seg = segs[k]?.tokens ?? [];
    const ends = endsList(seg, lex);
    if (segs[k]?.mark === ':') break;
    if (!ends && classify(seg, lex) !== 'name' && !isListed(segs, k, lex)) break;
    if (onlyDescribes(seg, lex) && !isAt(lex.or, seg, 0)) break;
    if (ends || hasJoint(seg, lex)) {
      end = partEnd(segs, k, lex);
      k = end - 1;
    } else if (end > first) break;
  }
  return end;
}

/** Whether a part that looks like preparation is a food within a list: 'spray, melted butter, or oil'. */
const isListed = (segs: readonly Segment[], k: number, lex: Lexicon): boolean =>
  couldBeFood(segs[k]?.tokens ?? [], lex) && segs.slice(k + 1).some((s) => endsList(s.tokens, lex));

/** 'Salz, Pfeffer', 'salt; ground pepper', 'salt, oregano to taste': nothing but short names. */
export const isBareList = (segs: readonly Segment[], lex: Lexicon): boolean =>
  segs.length > 1 &&
  segs.every(({ tokens, mark }, i) => {
    const name = i === segs.length - 1 ? tokens.slice(0, findCut(tokens, lex)) : tokens;
    if (mark === ':' || onlyDescribes(name, lex)) return false;
    const short = name.length <= 2 && classify(name, lex) === 'name';
    return short || (mark === ';' && name.length <= 4 && couldBeFood(name, lex));
  });

/** 'cumin, coriander, paprika' after '1 tsp each': every segment that can be a name. */
export function eachSpan(segs: readonly Segment[], lex: Lexicon): number {
  const end = segs.findIndex(
    (s, i) => i > 0 && classify(s.tokens, lex) !== 'name' && !endsList(s.tokens, lex),
  );
  return Math.max(1, end < 0 ? segs.length : end);
}

/** Whether a name without amounts lists foods: 'salt, pepper and nutmeg'. */
export function isAndList(name: readonly Token[], lex: Lexicon): boolean {
  if (!name.some((t) => t.text === ',')) return false;
  const joint = name.findLastIndex((t) => lex.joints.has(t.low));
  const comma = name.findLastIndex((t) => t.text === ',');
  return joint > comma && isAt(lex.and, name, joint) && joint < name.length - 1;
}
