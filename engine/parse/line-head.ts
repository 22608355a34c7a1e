/** Reads how a line begins: a label, what is taken of the food, and the amounts. */
import { type Amounts, readAmounts } from './amounts/amount-run.ts';
import { sizesOne } from './amounts/measure.ts';
import type { Parts } from './line-parts.ts';
import { fileWords } from './name/file-segments.ts';
import { classify, onlyDescribes } from './name/segments.ts';
import type { Lexicon } from './words/lexicon.ts';
import { isAt, isMark, isNumber, isWord, lowAt, type Token } from './words/tokens.ts';

/** Longest label before a colon, and longest run of words before 'of' in 'zest and juice of'. */
const LONGEST_LABEL = 4;
const LONGEST_EXTRACT = 9;

/** 'Juice of 1 lemon', 'finely grated zest and juice of 2 limes': index after 'of', else `from`. */
export function readExtract(tokens: readonly Token[], from: number, lex: Lexicon): number {
  let seen = false;
  for (let i = from; i < from + LONGEST_EXTRACT; i++) {
    const t = tokens[i];
    // 'zest and juice 1 lemon'
    if (seen && isNumber(t) && isWord(tokens[i + 1])) return i;
    if (!t || (!isWord(t) && !lex.and.has(t.low))) return from;
    if (seen && lex.from.has(t.low)) return i + 1;
    if (lex.extracts.has(t.low)) seen = true;
    else if (!lex.preparing.has(t.low) && !lex.articles.has(t.low)) return from;
  }
  return from;
}

/** 'Optional: ...', 'Evtl. 1 EL ...', 'For serving: ...', 'Egg wash: 1 egg' at the start: the index after it. */
export function skipLabel(tokens: readonly Token[], parts: Parts, lex: Lexicon): number {
  let from = 0;
  if (tokens.length > 1 && isAt(lex.optional, tokens, 0)) {
    parts.optional = true;
    parts.known.push(tokens.slice(0, 1));
    from = isMark(tokens[1]) && !tokens[1].space ? 2 : 1;
  }
  const colon = tokens.findIndex((t, i) => i >= from && !isWord(t));
  if (colon <= from || colon > LONGEST_LABEL || tokens[colon]?.text !== ':') return from;
  const label = tokens.slice(from, colon);
  const head = readAmounts(tokens, colon + 1, lex);
  const food = head !== null && isWord(tokens[head.next]);
  if (!food && !isAt(lex.purposeStarts, label, 0) && !isAt(lex.labels, label, 0)) return from;
  parts.purposes.push(label);
  return colon + 1;
}

/** 'Additional 2 tbsp', 'most of 1 clove', 'up to 3 eggs': the index of the number, else `from`. */
function skipLead(tokens: readonly Token[], from: number, lex: Lexicon): number {
  let at = from;
  while (
    isAt(lex.leads, tokens, at) ||
    isAt(lex.bounds, tokens, at) ||
    (at > from && (isAt(lex.of, tokens, at) || isAt(lex.ranges, tokens, at)))
  )
    at++;
  return at > from && isNumber(tokens[at]) ? at : from;
}

/** The tokens of a run of amounts that the amounts themselves tell. */
export function amountTokens(words: readonly Token[], run: Amounts, lex: Lexicon): Token[] {
  const { loose, front, cut, asides } = run;
  const sized = sizesOne(run.amounts);
  const others = new Set([...loose, ...front, ...cut, ...asides.flat()]);
  return words.filter((t) => !others.has(t) && (sized || !lex.each.has(t.low)));
}

/** Reads the amounts at the head into `parts`; the index where the rest begins. */
export function readHead(
  tokens: readonly Token[],
  from: number,
  parts: Parts,
  lex: Lexicon,
): number {
  const at = skipLead(tokens, from, lex);
  const head = readAmounts(tokens, at, lex);
  if (!head) return from;
  const { amounts, size, loose, front, cut, asides, each } = head.value;
  parts.name = front;
  const bound = tokens.slice(from, at).some((t) => lex.bounds.has(t.low));
  parts.amounts = amounts;
  if (bound) for (const amount of amounts) amount.approximate = true;
  parts.size = size;
  parts.each = each && amounts.length === 1;
  const how = loose.filter((t) => lex.fill.has(t.low) || lex.prep.has(t.low));
  for (const run of [how, cut]) if (run.length > 0) parts.preps.push(run);
  for (const aside of asides) fileWords(aside, parts, lex);
  const food = foodAmongUnits(tokens, head.next, parts, lex);
  const words = tokens.slice(at, food);
  parts.known.push(amountTokens(words, head.value, lex));
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
