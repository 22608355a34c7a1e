/** How far a name reaches over the comma parts that follow it. */
import type { Lexicon } from './lexicon.ts';
import { readMeasure } from './measure.ts';
import { findCut, liftPrep } from './name.ts';
import { classify, describes, isPrepAt, onlyDescribes, type Segment } from './segments.ts';
import { lowAt, type Token } from './tokens.ts';

export const isJoint = (low: string, lex: Lexicon): boolean => lex.and.has(low) || lex.or.has(low);

export const allPrep = (seg: readonly Token[], lex: Lexicon): boolean =>
  seg.every(
    (t) =>
      lex.prep.has(t.low) ||
      lex.prepAdverbs.has(t.low) ||
      lex.and.has(t.low) ||
      lex.prepWith.has(t.low),
  );

/** Whether words can be a food with its preparation: 'grated nutmeg', 'melted butter'. */
export function couldBeFood(run: readonly Token[], lex: Lexicon): boolean {
  const last = run.at(-1);
  if (last?.kind !== 'w' || allPrep(run, lex) || onlyDescribes(run, lex)) return false;
  if (lex.noteStarts.has(lowAt(run, 0)) || readMeasure(run, 0, lex)) return false;
  if (isPrepAt(run, run.length - 1, lex) || findCut(run, lex) < run.length) return false;
  return !run.some(
    (t) =>
      lex.noteHeads.has(t.low) ||
      lex.prepTails.has(t.low) ||
      lex.optional.has(t.low) ||
      t.kind === 'n',
  );
}

/** 'and grated nutmeg', 'or chopped parsley': a food that ends a list. */
const endsList = (seg: readonly Token[], lex: Lexicon): boolean =>
  isJoint(lowAt(seg, 0), lex) && couldBeFood(seg.slice(1), lex);

/** Whether the words after the last joint only describe, so that the food comes after the comma. */
function leftOpen(seg: readonly Token[], lex: Lexicon): boolean {
  const joint = seg.findLastIndex((t) => isJoint(t.low, lex));
  const rest = seg.slice(joint + 1);
  return joint >= 0 && rest.length > 0 && rest.every((t) => describes(t, lex));
}

/** How many of the leading segments make up the name: 'basil, cilantro, or parsley' has three. */
export function nameSpan(segs: readonly Segment[], lex: Lexicon): number {
  const kinds = segs.map((s) => classify(s.tokens, lex));
  const at = (k: number): Token[] => segs[k]?.tokens ?? [];
  const bare = (seg: Token[]): boolean =>
    onlyDescribes(liftPrep(seg, lex, false).name, lex) || allPrep(seg, lex);
  const goesOn = (k: number): boolean => kinds[k] === 'name' || kinds[k] === 'prep';
  let n = 1;
  while (n < segs.length && (bare(at(n - 1)) || leftOpen(at(n - 1), lex)) && goesOn(n)) n++;
  if (bare(at(n - 1))) n = 1;
  let end = n;
  for (let k = n; k < segs.length; k++) {
    const seg = at(k);
    const ends = endsList(seg, lex);
    if (segs[k]?.mark === ':' || (kinds[k] !== 'name' && !ends && !isListed(segs, k, lex))) break;
    const joins =
      ends || isJoint(lowAt(seg, 0), lex) || seg.some((t, i) => i > 0 && isJoint(t.low, lex));
    if (onlyDescribes(seg, lex) && !lex.or.has(lowAt(seg, 0))) break;
    if (joins) {
      end = k + 1;
      while (
        end < segs.length &&
        leftOpen(at(end - 1), lex) &&
        goesOn(end) &&
        !allPrep(at(end), lex)
      )
        end++;
      k = end - 1;
    } else if (end > n) break;
  }
  return end;
}

/** Whether a part that looks like preparation is a food within a list: 'spray, melted butter, or oil'. */
function isListed(segs: readonly Segment[], k: number, lex: Lexicon): boolean {
  if (!couldBeFood(segs[k]?.tokens ?? [], lex)) return false;
  const ending = segs.findIndex((s, i) => i > k && isJoint(lowAt(s.tokens, 0), lex));
  return (
    ending > 0 &&
    segs
      .slice(k + 1, ending + 1)
      .every((s) =>
        couldBeFood(isJoint(lowAt(s.tokens, 0), lex) ? s.tokens.slice(1) : s.tokens, lex),
      )
  );
}

/** 'Salz, Pfeffer', 'salt; pepper': nothing but short names. */
export const isBareList = (segs: readonly Segment[], lex: Lexicon): boolean =>
  segs.length > 1 &&
  segs.every(
    (s) =>
      s.mark !== ':' &&
      !onlyDescribes(s.tokens, lex) &&
      (s.tokens.length <= 2 && classify(s.tokens, lex) === 'name'
        ? true
        : s.mark === ';' && s.tokens.length <= 4 && couldBeFood(s.tokens, lex)),
  );

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
  const joint = name.findLastIndex((t) => isJoint(t.low, lex));
  const comma = name.findLastIndex((t) => t.text === ',');
  return joint > comma && lex.and.has(lowAt(name, joint)) && joint < name.length - 1;
}
