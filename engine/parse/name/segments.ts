/** Splits what follows the amounts into brackets and comma segments, and says what each one is. */

import { readAmounts } from '../amounts/amount-run.ts';
import { readMeasure } from '../amounts/measure.ts';
import { hasPair, isPairAt, type Lexicon } from '../words/lexicon.ts';
import { isAt, isMark, isNumber, isWord, lowAt, someOf, type Token } from '../words/tokens.ts';

export type SegmentKind = 'name' | 'prep' | 'note' | 'purpose' | 'optional' | 'reference';

export interface Bracket {
  tokens: Token[];
  /** Index among the tokens outside brackets before which it stood. */
  at: number;
}

/** Longest remark that calls the whole line optional wherever the word stands in it. */
const SHORT_REMARK = 4;

const ALWAYS = new Set(',;:|—');
const OPEN = new Set('([{');
const CLOSE = new Set(')]}');

/** Takes bracketed runs out of a token list; nested brackets stay inside the outer one. */
export function takeBrackets(tokens: readonly Token[]): { plain: Token[]; brackets: Bracket[] } {
  const plain: Token[] = [];
  const brackets: Bracket[] = [];
  let depth = 0;
  let current: Token[] = [];
  for (const t of tokens) {
    if (OPEN.has(t.text)) {
      depth++;
      if (depth === 1) current = [];
      else current.push(t);
    } else if (CLOSE.has(t.text)) {
      if (depth > 1) current.push(t);
      if (depth === 1) brackets.push({ tokens: current, at: plain.length });
      depth = Math.max(0, depth - 1);
    } else if (depth > 0) current.push(t);
    else plain.push(t);
  }
  if (depth > 0 && current.length > 0) brackets.push({ tokens: current, at: plain.length });
  return { plain, brackets };
}

/** Whether the token at `i` parts segments: comma, semicolon, colon, full stop, or a spaced dash. */
function isBreak(tokens: readonly Token[], i: number): boolean {
  const t = tokens[i];
  const after = tokens[i + 1];
  if (!isMark(t)) return false;
  if (ALWAYS.has(t.text)) return true;
  // a full stop parts before a capital, but not after a unit ('2 tsp. Extra'); elsewhere it shortens a word
  if (t.text === '.') {
    if (after === undefined || isMark(after)) return true;
    return after.space && after.text !== after.low && !isNumber(tokens[i - 2]);
  }
  // a dash after a space parts, unless it joins a number to its unit: '1 –inch'
  const spaced = t.space && (after?.space !== false || !isNumber(tokens[i - 1]));
  return (t.text === '–' || t.text === '-') && spaced;
}

export interface Segment {
  tokens: Token[];
  /** Index of its first token. */
  start: number;
  /** The mark before it; '' for the first. */
  mark: string;
}

/** Top-level segments, none empty, with the index of each one's first token. */
export function split(tokens: readonly Token[]): Segment[] {
  const out: Segment[] = [];
  let start = 0;
  for (let i = 0; i <= tokens.length; i++) {
    if (i < tokens.length && !isBreak(tokens, i)) continue;
    if (i > start)
      out.push({ tokens: tokens.slice(start, i), start, mark: lowAt(tokens, start - 1) });
    start = i + 1;
  }
  return out;
}

/** Whether the word at `i` names a preparation: 'chopped', or 'ground' after 'freshly'. */
export function isPrepAt(tokens: readonly Token[], i: number, lex: Lexicon): boolean {
  const t = tokens[i];
  if (!isWord(t)) return false;
  const before = lowAt(tokens, i - 1);
  if (lex.keepAfter.has(before)) return false;
  if (isPairAt(lex.prepPairs, tokens, i - 1, lex)) return true;
  if (lex.prep.has(t.low)) {
    return (
      !isPairAt(lex.keepPairs, tokens, i, lex) &&
      !hasPair(lex.keepLast, t.low, lowAt(tokens, tokens.length - 1), lex)
    );
  }
  if (!lex.prepAdverbs.has(before)) return false;
  return (
    lex.prepWith.has(t.low) ||
    (t.low.endsWith('ed') && !lex.descriptors.has(t.low) && lex.language === 'en')
  );
}

/** Whether 'for', 'to' or 'as' at `i` begins a purpose: 'for frying', 'to serve', 'as garnish'. */
export function isPurposeAt(tokens: readonly Token[], i: number, lex: Lexicon): boolean {
  const t = tokens[i];
  const after = tokens[i + 1];
  if (!isWord(t) || !isWord(after) || !lex.purposeStarts.has(t.low)) return false;
  // 'nata para montar' is a kind of cream
  if (hasPair(lex.keepPairs, t.low, after.low, lex)) return false;
  if (lex.purposeAny.has(t.low)) return true;
  return lex.purposeVerbs.has(after.low);
}

/** What a segment after the first is, judged by its words alone. */
export function classify(seg: readonly Token[], lex: Lexicon): SegmentKind {
  const first = seg[0];
  if (!first) return 'note';
  // 'reserve 1 tbsp for the optional rim' is about a part of it
  if (someOf(seg.length > SHORT_REMARK ? seg.slice(0, 1) : seg, lex.optional)) return 'optional';
  if (isPurposeAt(seg, 0, lex)) return 'purpose';
  if (someOf(seg, lex.referenceWords)) return 'reference';
  if (lex.plus.has(first.low) && readMeasure(seg, 1, lex)) return 'note';
  if (isNoteStart(seg, lex)) return 'note';
  if (lex.or.has(first.low) && (readAmounts(seg, 1, lex) || isAt(lex.orNote, seg, 1)))
    return 'note';
  if (lex.noteHeads.has(first.low) || saysParts(seg, lex)) return 'prep';
  if (seg.some((_, i) => isPrepAt(seg, i, lex))) return 'prep';
  if (someOf(seg, lex.noteHeads) && seg.length <= 4) return 'prep';
  if (someOf(seg, lex.onlyNote)) return 'note';
  if (!isWord(first) || /^\d/.test(first.low)) return 'note';
  if (/(?:ed|[^s]less)$/.test(first.low) && !lex.descriptors.has(first.low)) return 'prep';
  return 'name';
}

/** Whether a remark begins: 'such as', 'about 2', 'at room temperature'; 'roughly' also begins 'roughly chopped'. */
function isNoteStart(seg: readonly Token[], lex: Lexicon): boolean {
  const low = lowAt(seg, 0);
  if (lex.purposeStarts.has(low)) return true;
  if (!lex.noteStarts.has(low)) return false;
  return !lex.prepAdverbs.has(low) || readMeasure(seg, 0, lex) !== null;
}

/** 'zest and juice', 'pulp scooped out': which part of the food is taken. */
function saysParts(seg: readonly Token[], lex: Lexicon): boolean {
  if (!isAt(lex.extracts, seg, 0) || seg.length < 2) return false;
  return isAt(lex.and, seg, 1) || someOf(seg, lex.prep);
}

/** Participles and compounds that describe without being listed: 'pitted', 'oil-cured', 'rustic-style'. */
const DESCRIBES =
  /^(?!.*bread$)(?:[^-]{3,}[^e]ed|.+-(?:[^-]+ed|style|type|fat|free|quality|tart))$/;

export const describes = (t: Token, lex: Lexicon): boolean =>
  lex.describing.has(t.low) ||
  (lex.language === 'en' && (t.low.endsWith('ed') || t.low.includes('-')) && DESCRIBES.test(t.low));

/** Whether every word only describes. */
export const allDescribe = (words: readonly Token[], lex: Lexicon): boolean =>
  words.every((t) => describes(t, lex));

/** Whether every word is a describing adjective, so that the name must go on after the comma. */
export const onlyDescribes = (seg: readonly Token[], lex: Lexicon): boolean =>
  seg.every((t) => describes(t, lex) || lex.joints.has(t.low));
