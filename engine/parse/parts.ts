/** Takes a tokenized line apart: amounts, name, preparation, notes, purpose, alternatives. */
import type { Amount } from '../model.ts';
import { readMeasure } from './amounts.ts';
import { finishName, isGloss } from './finish.ts';
import type { Lexicon } from './lexicon.ts';
import { readAmountList, readAmounts } from './measures.ts';
import { findCut, liftPrep } from './name.ts';
import {
  classify,
  isPrepAt,
  onlyDescribes,
  type Segment,
  split,
  takeBrackets,
} from './segments.ts';
import { lowAt, type Token, textOf } from './tokens.ts';

export interface Parts {
  amounts: Amount[];
  size: string | null;
  /** The whole name, as written apart from what was lifted out. */
  name: string;
  nameTokens: Token[];
  preps: string[];
  notes: string[];
  purposes: string[];
  /** Token runs after an 'or' that has its own amount. */
  substitutes: Token[][];
  /** Token runs after a 'plus' or 'and' that has its own amount: further foods. */
  extras: Token[][];
  /** The amounts hold for every food of the line: '1 tsp each salt and pepper'. */
  each: boolean;
  /** The name is a list of foods with commas: 'salt, pepper'. */
  list: boolean;
  optional: boolean;
  reference: boolean;
}

/** 'Juice of 1 lemon', 'finely grated zest and juice of 2 limes': index after 'of', else 0. */
function readExtract(tokens: readonly Token[], lex: Lexicon): number {
  let seen = false;
  for (let i = 0; i < tokens.length && i < 9; i++) {
    const t = tokens[i];
    if (t?.kind !== 'w') return 0;
    if (seen && lex.from.has(t.low)) return i + 1;
    if (lex.extracts.has(t.low)) seen = true;
    else if (
      !lex.prep.has(t.low) &&
      !lex.prepAdverbs.has(t.low) &&
      !lex.and.has(t.low) &&
      !lex.articles.has(t.low)
    )
      return 0;
  }
  return 0;
}

/** 'de la farine', 'etwas Mehl', 'some salt': words before the name that carry no amount. */
function skipArticles(tokens: readonly Token[], from: number, lex: Lexicon): number {
  let at = from;
  while (at < tokens.length - 1 && isFunctionWord(lowAt(tokens, at), lex)) at++;
  return at;
}

const isFunctionWord = (low: string, lex: Lexicon): boolean =>
  lex.of.has(low) || lex.vague.has(low) || lex.articles.has(low);

/** 'Optional: ...', 'For serving: ...', 'Egg wash: 1 egg' at the start: index after the colon, else 0. */
function skipLabel(tokens: readonly Token[], parts: Parts, lex: Lexicon): number {
  const colon = tokens.findIndex((t) => t.kind !== 'w');
  if (colon < 1 || colon > 4 || tokens[colon]?.text !== ':') return 0;
  const label = tokens.slice(0, colon);
  if (label.length === 1 && lex.optional.has(lowAt(label, 0))) parts.optional = true;
  else {
    const head = readAmounts(tokens, colon + 1, lex);
    const food = head !== null && tokens[head.next]?.kind === 'w';
    if (!food && !lex.purposeStarts.has(lowAt(label, 0)) && !lex.labels.has(lowAt(label, 0)))
      return 0;
    parts.purposes.push(textOf(label));
  }
  return colon + 1;
}

/** 'plus 1 egg yolk': a further food with its own amount, not more of the same one. */
function isExtra(seg: readonly Token[], lex: Lexicon): boolean {
  if (!lex.plus.has(lowAt(seg, 0))) return false;
  const head = readAmounts(seg, 1, lex);
  const name = seg[head?.next ?? 0];
  return (
    head !== null &&
    name?.kind === 'w' &&
    classify(seg.slice(head.next), lex) === 'name' &&
    !lex.more.has(name.low)
  );
}

/** Files a segment or bracket that is not the name under what it is. */
function file(seg: readonly Token[], parts: Parts, lex: Lexicon): void {
  const text = textOf(seg);
  switch (classify(seg, lex)) {
    case 'optional':
      parts.optional = true;
      if (seg.length > 1) parts.notes.push(text);
      break;
    case 'purpose':
      parts.purposes.push(text);
      break;
    case 'reference':
      parts.reference ||= seg.length <= 4;
      parts.notes.push(text);
      break;
    case 'note':
      if (lex.or.has(lowAt(seg, 0)) && !lex.orNote.has(lowAt(seg, 1)))
        parts.substitutes.push(seg.slice(1));
      else if (isExtra(seg, lex)) {
        parts.extras.push(seg.slice(1));
        break;
      }
      parts.notes.push(text);
      break;
    case 'name':
      if (lex.or.has(lowAt(seg, 0))) parts.substitutes.push(seg.slice(1));
      (lex.or.has(lowAt(seg, 0)) ? parts.notes : parts.preps).push(text);
      break;
    default:
      parts.preps.push(text);
  }
}

/** Amounts of a bracket or segment further on, put beside those at the head. */
function addAmounts(seg: readonly Token[], parts: Parts, lex: Lexicon): boolean {
  const list = readAmountList(seg, lex);
  if (!list) return false;
  const each = list.words.some((w) => lex.each.has(w));
  const lead = parts.amounts[0];
  if (!list.measures.some((m) => m.unit ?? m.size)) return false;
  for (const m of list.measures) {
    if (m.unit?.kind === 'length' && m.amount.unit === null) continue;
    const container = lead?.unit != null && lex.byName.get(lead.unit)?.kind === 'container';
    const kind = !lead
      ? 'stated'
      : each || container || m.unit?.kind === 'length'
        ? 'each'
        : m.amount.kind;
    parts.amounts.push({ ...m.amount, kind });
    if (m.unit === null) parts.size ??= m.size;
  }
  return true;
}

/** An amount at the end of the line: 'Flour 200 g', 'Eggs: 3', '1 cup berries 250 ml'. */
function readTail(tokens: Token[], parts: Parts, lex: Lexicon): Token[] {
  const last = tokens.length - 1;
  for (let i = Math.max(1, last - 7); i <= last; i++) {
    const before = tokens[i - 1];
    if (!before || tokens[i]?.kind !== 'n') continue;
    const run = readAmounts(tokens, i, lex);
    if (!run || run.next !== tokens.length) continue;
    const measured = run.value.amounts[0]?.unit != null;
    if (parts.amounts.length > 0 && !measured) return tokens;
    if (
      before.kind === 'w' &&
      (lex.or.has(before.low) ||
        lex.plus.has(before.low) ||
        lex.and.has(before.low) ||
        lex.noteStarts.has(before.low) ||
        lex.cutWords.has(before.low))
    )
      return tokens;
    // '2 Dosen à 400 g'
    const per = lex.each.has(before.low) && parts.amounts.length > 0 && i > 1 ? 1 : 0;
    const kind = parts.amounts.length === 0 ? 'stated' : per ? 'each' : 'same';
    for (const [n, a] of run.value.amounts.entries())
      parts.amounts.push(n === 0 ? { ...a, kind } : a);
    parts.size ??= run.value.size;
    const end = (before.kind === 'p' && i > 1) || per ? i - 1 : i;
    return tokens.slice(0, end);
  }
  return tokens;
}

/** How many of the leading segments make up the name: 'basil, cilantro, or parsley' has three. */
function nameSpan(segs: readonly Segment[], lex: Lexicon): number {
  let n = 1;
  const kinds = segs.map((s) => classify(s.tokens, lex));
  const bare = (seg: Token[]): boolean =>
    onlyDescribes(liftPrep(seg, lex, false).name, lex) || allPrep(seg, lex);
  while (
    n < segs.length &&
    bare(segs[n - 1]?.tokens ?? []) &&
    kinds[n] !== 'purpose' &&
    kinds[n] !== 'optional' &&
    kinds[n] !== 'note'
  )
    n++;
  if (bare(segs[n - 1]?.tokens ?? [])) n = 1;
  for (let k = n; k < segs.length; k++) {
    const seg = segs[k]?.tokens ?? [];
    if (segs[k]?.mark === ':' || (kinds[k] !== 'name' && !lastOfList(seg, lex))) break;
    if (k > 0 && kinds[k] === 'name' && onlyDescribes(seg, lex) && !lex.or.has(lowAt(seg, 0)))
      break;
    const joins =
      lex.and.has(lowAt(seg, 0)) ||
      lex.or.has(lowAt(seg, 0)) ||
      seg.some((t, i) => i > 0 && (lex.or.has(t.low) || lex.and.has(t.low)));
    if (joins) return k + 1;
  }
  return n;
}

/** 'Salz, Pfeffer': nothing but short names. */
const isBareList = (segs: readonly Segment[], lex: Lexicon): boolean =>
  segs.length > 1 &&
  segs.every(
    (s) =>
      s.tokens.length <= 2 &&
      s.mark !== ':' &&
      classify(s.tokens, lex) === 'name' &&
      !onlyDescribes(s.tokens, lex),
  );

/** 'cumin, coriander, paprika' after '1 tsp each': every segment that can be a name. */
function eachSpan(segs: readonly Segment[], lex: Lexicon): number {
  const end = segs.findIndex((s, i) => i > 0 && classify(s.tokens, lex) !== 'name');
  return Math.max(1, end < 0 ? segs.length : end);
}

/** 'and grated nutmeg', 'or chopped parsley': a food with its preparation, ending a list. */
function lastOfList(seg: readonly Token[], lex: Lexicon): boolean {
  if (!lex.and.has(lowAt(seg, 0)) && !lex.or.has(lowAt(seg, 0))) return false;
  const rest = seg.slice(1);
  if (allPrep(rest, lex) || lex.noteStarts.has(lowAt(rest, 0)) || readMeasure(rest, 0, lex))
    return false;
  const last = rest.at(-1);
  return (
    last !== undefined &&
    !isPrepAt(rest, rest.length - 1, lex) &&
    findCut(rest, lex) === rest.length &&
    !rest.some(
      (t) =>
        lex.noteHeads.has(t.low) ||
        lex.prepTails.has(t.low) ||
        t.kind === 'n' ||
        lex.optional.has(t.low),
    )
  );
}

const allPrep = (seg: readonly Token[], lex: Lexicon): boolean =>
  seg.every(
    (t) =>
      lex.prep.has(t.low) ||
      lex.prepAdverbs.has(t.low) ||
      lex.and.has(t.low) ||
      lex.prepWith.has(t.low),
  );

/** Everything a line says, as texts and amounts. */
export function readParts(tokens: readonly Token[], lex: Lexicon): Parts {
  const parts: Parts = {
    amounts: [],
    size: null,
    name: '',
    nameTokens: [],
    preps: [],
    notes: [],
    purposes: [],
    substitutes: [],
    extras: [],
    each: false,
    list: false,
    optional: false,
    reference: false,
  };
  let at = skipLabel(tokens, parts, lex);
  const extract = readExtract(tokens.slice(at), lex);
  if (extract > 0) {
    parts.preps.push(textOf(tokens.slice(at, at + extract)));
    at += extract;
  }
  const head = readAmounts(tokens, at, lex);
  const how = head?.value.words.filter((w) => lex.fill.has(w) || lex.fillBeforeUnit.has(w)) ?? [];
  if (how.length > 0) parts.preps.push(how.join(' '));
  const eachWord = head?.value.words.some((w) => lex.each.has(w)) ?? false;
  parts.each = eachWord && head?.value.amounts.length === 1;
  if (head && head.next < tokens.length) {
    parts.amounts = head.value.amounts;
    parts.size = head.value.size;
    at = head.next;
  } else if (head) {
    // '20 cloves', '3 sheets': with nothing after it the last word is the food, not its unit
    const [first] = head.value.amounts;
    const word = lex.units.get(lowAt(tokens, tokens.length - 1));
    const food = word !== undefined && word.name === first?.unit && head.value.amounts.length === 1;
    parts.amounts = food && first ? [{ ...first, unit: null }] : head.value.amounts;
    parts.size = head.value.size;
    at = food ? tokens.length - 1 : head.next;
  }
  // 'juice of a lemon'
  if (
    extract > 0 &&
    !head &&
    (lex.articles.has(lowAt(tokens, at)) || lex.articles.has(lowAt(tokens, at - 1)))
  )
    parts.amounts = [{ quantity: 1, max: null, unit: null, kind: 'stated', approximate: false }];
  while (tokens[at]?.kind === 'p' && !'(['.includes(lowAt(tokens, at))) at++;
  at = skipArticles(tokens, at, lex);
  readRest(tokens.slice(at), parts, lex);
  return parts;
}

/** Files segments outside the name: each is an amount or words. */
function fileAll(segs: readonly Segment[], parts: Parts, lex: Lexicon): void {
  for (const s of segs) if (!addAmounts(s.tokens, parts, lex)) file(s.tokens, parts, lex);
}

function readRest(rest: readonly Token[], parts: Parts, lex: Lexicon): void {
  const { plain, brackets } = takeBrackets(rest);
  const body = readTail(plain, parts, lex);
  const segs = split(body);
  const first = segs[0];
  if (!first) {
    parts.nameTokens = rest.filter((t) => t.kind === 'w');
    parts.name = textOf(rest);
    return;
  }
  parts.list = parts.each || (parts.amounts.length === 0 && isBareList(segs, lex));
  const span = parts.list ? eachSpan(segs, lex) : nameSpan(segs, lex);
  const from = first.start;
  const lastSeg = segs[span - 1] ?? first;
  let nameTokens = body.slice(from, lastSeg.start + lastSeg.tokens.length);
  const cut = findCut(nameTokens, lex);
  const tail = nameTokens.slice(cut);
  nameTokens = nameTokens.slice(0, cut);
  const glosses: Token[][] = [];
  for (const b of brackets) {
    if (addAmounts(b.tokens, parts, lex)) continue;
    const inName = b.at > from && b.at <= from + cut;
    if (inName && isGloss(b.tokens, lex)) {
      glosses.push(b.tokens);
      if (lex.or.has(lowAt(b.tokens, 0))) parts.substitutes.push(b.tokens.slice(1));
    } else fileAll(split(b.tokens), parts, lex);
  }
  if (tail.length > 0) file(tail, parts, lex);
  fileAll(segs.slice(span), parts, lex);
  finishName(nameTokens, glosses, parts, lex);
}
