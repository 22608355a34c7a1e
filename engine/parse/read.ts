/** Takes a tokenized line apart: amounts, name, preparation, notes, purpose, alternatives. */
import { type Amounts, readAmounts } from './amounts.ts';
import { file, fileAmounts, fileWords } from './file.ts';
import { finishName, isGloss } from './finish.ts';
import type { Lexicon } from './lexicon.ts';
import { findCut } from './name.ts';
import { keepRest, noParts, type Parts } from './parts.ts';
import {
  type Bracket,
  classify,
  onlyDescribes,
  type Segment,
  split,
  takeBrackets,
} from './segments.ts';
import { eachSpan, isAndList, isBareList, isJoint, nameSpan } from './span.ts';
import { lowAt, type Token } from './tokens.ts';

/** Longest label before a colon, and longest run of words before 'of' in 'zest and juice of'. */
const LONGEST_LABEL = 4;
const LONGEST_EXTRACT = 9;
/** Tokens at the line's end among which a late amount is looked for. */
const TAIL = 7;

/** 'Juice of 1 lemon', 'finely grated zest and juice of 2 limes': index after 'of', else `from`. */
function readExtract(tokens: readonly Token[], from: number, lex: Lexicon): number {
  let seen = false;
  for (let i = from; i < tokens.length && i < from + LONGEST_EXTRACT; i++) {
    const t = tokens[i];
    if (t?.kind !== 'w') return from;
    if (seen && lex.from.has(t.low)) return i + 1;
    if (lex.extracts.has(t.low)) seen = true;
    else if (
      !lex.prep.has(t.low) &&
      !lex.prepAdverbs.has(t.low) &&
      !lex.and.has(t.low) &&
      !lex.articles.has(t.low)
    )
      return from;
  }
  return from;
}

/** 'de la farine', 'etwas Mehl', 'some salt': words before the name that carry no amount. */
function skipArticles(tokens: readonly Token[], from: number, bare: boolean, lex: Lexicon): number {
  const skipped = (low: string): boolean =>
    lex.of.has(low) || lex.articles.has(low) || (bare && lex.vague.has(low));
  let at = from;
  while (at < tokens.length - 1 && skipped(lowAt(tokens, at))) at++;
  return at;
}

/** 'Optional: ...', 'For serving: ...', 'Egg wash: 1 egg' at the start: index after the colon, else 0. */
function skipLabel(tokens: readonly Token[], parts: Parts, lex: Lexicon): number {
  const colon = tokens.findIndex((t) => t.kind !== 'w');
  if (colon < 1 || colon > LONGEST_LABEL || tokens[colon]?.text !== ':') return 0;
  const label = tokens.slice(0, colon);
  if (label.length === 1 && lex.optional.has(lowAt(label, 0))) {
    parts.optional = true;
    parts.understood.push(label);
  } else {
    const head = readAmounts(tokens, colon + 1, lex);
    const food = head !== null && tokens[head.next]?.kind === 'w';
    if (!food && !lex.purposeStarts.has(lowAt(label, 0)) && !lex.labels.has(lowAt(label, 0)))
      return 0;
    parts.purposes.push(label);
  }
  return colon + 1;
}

/** 'Additional 2 tbsp', 'most of 1 clove', 'up to 3 eggs': the index of the number, else `from`. */
function skipLead(tokens: readonly Token[], from: number, lex: Lexicon): number {
  let at = from;
  while (
    lex.leads.has(lowAt(tokens, at)) ||
    lex.bounds.has(lowAt(tokens, at)) ||
    (at > from && (lex.of.has(lowAt(tokens, at)) || lex.ranges.has(lowAt(tokens, at))))
  )
    at++;
  return at > from && tokens[at]?.kind === 'n' ? at : from;
}

/** An amount at the end of the line: 'Flour 200 g', 'Eggs: 3', '1 cup berries 250 ml'. */
function readTail(tokens: Token[], parts: Parts, lex: Lexicon): Token[] {
  const last = tokens.length - 1;
  for (let i = Math.max(1, last - TAIL); i <= last; i++) {
    const before = tokens[i - 1];
    if (!before || tokens[i]?.kind !== 'n') continue;
    const run = readAmounts(tokens, i, lex);
    if (!run || run.next !== tokens.length) continue;
    const { amounts, size } = run.value;
    const counted = parts.amounts.length > 0;
    if (counted && amounts[0]?.unit == null) return tokens;
    if (before.kind === 'w' && joinsOn(before.low, lex)) return tokens;
    if (counted && findCut(tokens.slice(0, i), lex) < i) return tokens;
    // '2 Dosen à 400 g'
    const per = lex.each.has(before.low) && counted && i > 1;
    const kind = counted ? (per ? 'each' : 'same') : 'stated';
    for (const [n, a] of amounts.entries()) parts.amounts.push(n === 0 ? { ...a, kind } : a);
    if (parts.size.length === 0) parts.size = size;
    if (per) parts.understood.push([before]);
    parts.understood.push(told(tokens.slice(i), run.value, lex));
    return tokens.slice(0, (before.kind === 'p' && i > 1) || per ? i - 1 : i);
  }
  return tokens;
}

/** Words before a late amount that make it part of a phrase: 'cut into 2 cm', 'or 200 g'. */
const joinsOn = (low: string, lex: Lexicon): boolean =>
  lex.or.has(low) ||
  lex.plus.has(low) ||
  lex.and.has(low) ||
  lex.noteStarts.has(low) ||
  lex.cutWords.has(low);

/** The tokens of a run of amounts that the amounts themselves tell. */
function told(words: readonly Token[], run: Amounts, lex: Lexicon): Token[] {
  const others = new Set([...run.loose, ...run.front, ...run.cut, ...run.asides.flat()]);
  const sized = run.amounts.some((a) => a.kind === 'each');
  return words.filter((t) => !others.has(t) && (sized || !lex.each.has(t.low)));
}

/** Reads the amounts at the head into `parts`; the index where the rest begins. */
function readHead(tokens: readonly Token[], from: number, parts: Parts, lex: Lexicon): number {
  const at = skipLead(tokens, from, lex);
  const head = readAmounts(tokens, at, lex);
  if (!head) return from;
  const { amounts, size, loose, front, cut, asides, each } = head.value;
  parts.name = front;
  const bound = tokens.slice(from, at).some((t) => lex.bounds.has(t.low));
  parts.amounts = bound ? amounts.map((a) => ({ ...a, approximate: true })) : amounts;
  parts.size = size;
  parts.each = each && amounts.length === 1;
  const how = loose.filter((t) => lex.fill.has(t.low) || lex.prep.has(t.low));
  for (const run of [how, cut]) if (run.length > 0) parts.preps.push(run);
  for (const aside of asides) fileWords(aside, parts, lex);
  const food = foodAmongUnits(tokens, head.next, parts, lex);
  const words = tokens.slice(at, food);
  parts.understood.push(told(words, head.value, lex));
  if (parts.each) parts.eachWord = words.filter((t) => lex.each.has(t.low));
  return food;
}

/**
 * '20 cloves', '3 sheets, halved': with no food after it the unit's word is the food. Gives the index
 * of that word, or `end` when the unit stays one.
 */
function foodAmongUnits(tokens: readonly Token[], end: number, parts: Parts, lex: Lexicon): number {
  const [lead] = parts.amounts;
  const unit = lex.units.get(lowAt(tokens, end - 1));
  const named = unit !== undefined && unit.name === lead?.unit && parts.amounts.length === 1;
  if (!named || unit.kind === 'mass' || unit.kind === 'volume') return end;
  const rest = tokens.slice(end + 1);
  const alone =
    end >= tokens.length ||
    (tokens[end]?.text === ',' &&
      (onlyDescribes(rest, lex) ||
        (classify(rest, lex) !== 'name' && classify(rest, lex) !== 'note')));
  if (!alone) return end;
  lead.unit = null;
  return end - 1;
}

/** Everything a line says, each token of it under one heading. */
export function readParts(tokens: readonly Token[], lex: Lexicon): Parts {
  const parts = noParts();
  let at = skipLabel(tokens, parts, lex);
  const extract = readExtract(tokens, at, lex);
  const taken = extract > at;
  if (taken) parts.preps.push(tokens.slice(at, extract));
  at = extract;
  const rest = readHead(tokens, at, parts, lex);
  // 'juice of a lemon'
  const one = lex.articles.has(lowAt(tokens, at)) || lex.articles.has(lowAt(tokens, at - 1));
  if (taken && parts.amounts.length === 0 && one)
    parts.amounts = [{ quantity: 1, max: null, unit: null, kind: 'stated', approximate: false }];
  at = rest;
  while (tokens[at]?.kind === 'p' && !'([#'.includes(lowAt(tokens, at))) at++;
  at = skipArticles(tokens, at, parts.amounts.length === 0, lex);
  readRest(tokens.slice(at), parts, lex);
  parts.extras = parts.further.map((run) => readFurther(run, lex));
  keepRest(tokens, parts, lex);
  return parts;
}

/** A further food; only the line's own name shows second names in brackets, so they become notes. */
function readFurther(run: readonly Token[], lex: Lexicon): Parts {
  const parts = readParts(run, lex);
  return { ...parts, notes: [...parts.notes, ...parts.glosses], glosses: [] };
}

/** The tokens of the line from one to another, brackets between them included. */
function between(
  rest: readonly Token[],
  first: Token | undefined,
  last: Token | undefined,
): Token[] {
  const base = rest[0]?.index ?? 0;
  return first && last ? rest.slice(first.index - base, last.index - base + 1) : [];
}

/** Where the remark that begins at segment `k` ends: 'such as radish, kale, or cress' has three. */
function remarkEnd(segs: readonly Segment[], k: number, lex: Lexicon): number {
  const joins = (t: Token | undefined): boolean => t !== undefined && isJoint(t.low, lex);
  const opening = segs[k]?.tokens ?? [];
  if (!lex.listStarts.has(lowAt(opening, 0)) || opening.some(joins)) return k;
  for (let end = k + 1; end < segs.length; end++) {
    const seg = segs[end]?.tokens ?? [];
    const food = joins(seg[0]) ? seg.slice(1) : seg;
    if (classify(food, lex) !== 'name' || lex.orNote.has(lowAt(food, 0))) return k;
    if (seg.some(joins)) return end;
  }
  return k;
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

function readRest(rest: readonly Token[], parts: Parts, lex: Lexicon): void {
  const { plain, brackets } = takeBrackets(rest);
  const body = readTail(plain, parts, lex);
  const segs = split(body);
  const first = segs[0];
  if (!first) {
    parts.name.push(...rest.filter((t) => t.kind !== 'p'));
    return;
  }
  parts.list = parts.each || (parts.amounts.length === 0 && isBareList(segs, lex));
  const span = parts.list ? eachSpan(segs, lex) : nameSpan(segs, lex);
  const last = segs[span - 1] ?? first;
  const words = body.slice(first.start, last.start + last.tokens.length);
  const cut = findCut(words, lex);
  const end = first.start + cut;
  const inside = new Set<Bracket>();
  const whole = (tokens: readonly Token[], start: number): Token[] => {
    for (const b of brackets) if (b.at > start && b.at < start + tokens.length) inside.add(b);
    return between(rest, tokens[0], tokens.at(-1));
  };
  const tail = whole(words.slice(cut), end);
  const later = joinRemarks(segs.slice(span), lex).map((s) => whole(s.tokens, s.start));
  for (const b of brackets)
    if (!inside.has(b)) fileBracket(b, b.at > first.start && b.at <= end, b.at === end, parts, lex);
  if (tail.length > 0) fileWords(tail, parts, lex);
  for (const seg of later) file(seg, parts, lex);
  const name = [...parts.name, ...words.slice(0, cut)];
  parts.list ||= parts.amounts.length === 0 && isAndList(name, lex);
  finishName(name, parts, lex);
  const several = (t: Token, i: number): boolean =>
    i > 0 && i < parts.name.length - 1 && (t.text === ',' || lex.and.has(t.low));
  if (parts.name.some(several)) parts.understood.push(parts.eachWord);
}

/** A bracket: amounts, a second name, or words; at the name's end describing words are preparation. */
function fileBracket(
  bracket: Bracket,
  inName: boolean,
  atEnd: boolean,
  parts: Parts,
  lex: Lexicon,
): void {
  const { tokens } = bracket;
  if (fileAmounts(tokens, parts, lex)) return;
  if (!inName || !isGloss(tokens, lex) || (atEnd && onlyDescribes(tokens, lex))) {
    for (const s of split(tokens)) file(s.tokens, parts, lex);
    return;
  }
  parts.glosses.push(tokens);
  if (lex.or.has(lowAt(tokens, 0))) parts.substitutes.push(tokens.slice(1));
}
