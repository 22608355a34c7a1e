/** Reads an amount that stands at the end of a line. */

import { amountTokens } from '../line-head.ts';
import type { Parts } from '../line-parts.ts';
import { findCut } from '../name/find-name.ts';
import type { Lexicon } from '../words/lexicon.ts';
import { isAt, isMark, isNumber, isWord, lowAt, type Token } from '../words/tokens.ts';
import { type Amounts, readAmounts } from './amount-run.ts';
import { subtract } from './joined-measures.ts';
import type { Read } from './quantity.ts';

/** Tokens at the line's end among which a late amount is looked for. */
const TAIL = 7;

/** Takes an amount off the end: 'Flour 200 g', 'Eggs: 3', '1 cup berries 250 ml'; gives the tokens before it. */
export function readTail(tokens: Token[], parts: Parts, lex: Lexicon): Token[] {
  const last = tokens.length - 1;
  for (let i = Math.max(1, last - TAIL); i <= last; i++) {
    if (!isNumber(tokens[i])) continue;
    // 'je ca. 150 g'
    let lead = i - 1;
    while (isAt(lex.approx, tokens, lead) || lowAt(tokens, lead) === '.') lead--;
    const before = tokens[lead];
    const run = readAmounts(tokens, lead + 1, lex);
    const counted = parts.amounts.length > 0;
    if (!before || !run) continue;
    const end = counted && saysEach(tokens, run.next, lex) ? tokens.length : run.next;
    if (!(end === tokens.length || (!counted && leadsOver(tokens, run, lex)))) continue;
    const { amounts, size } = run.value;
    if (counted && amounts[0]?.unit == null) return tokens;
    const per = counted && lead > 0 && (end > run.next || sizesEach(before.low, parts, lex));
    if (!per && isWord(before) && lex.leading.has(before.low)) return tokens;
    if (counted && findCut(tokens.slice(0, i), lex) < i) return tokens;
    // 'sugar minus 2 tablespoons'
    if (lex.minus.has(before.low) && subtract(parts.amounts.at(-1), amounts[0])) {
      parts.known.push(tokens.slice(i - 1));
      return tokens.slice(0, i - 1);
    }
    const beside = lex.plus.has(before.low) ? 'plus' : 'same';
    const kind = per ? 'each' : counted ? beside : 'stated';
    for (const [n, a] of amounts.entries()) parts.amounts.push(n === 0 ? { ...a, kind } : a);
    if (parts.size.length === 0) parts.size = size;
    // 'à je 25 g'
    const from = per && isAt(lex.each, tokens, lead - 1) ? lead - 1 : lead;
    if (per) parts.known.push(tokens.slice(from, i), tokens.slice(run.next, end));
    parts.known.push(amountTokens(tokens.slice(i, run.next), run.value, lex));
    const mark = isMark(before) || per || lex.times.has(before.low);
    const name = tokens.slice(0, mark && i > 1 ? from : i);
    return [...name, ...tokens.slice(end)];
  }
  return tokens;
}

/** 'environ chacun', 'cada uno', 'l'una': the tokens behind an amount say that each piece has it. */
function saysEach(tokens: readonly Token[], from: number, lex: Lexicon): boolean {
  const words = tokens.slice(from).filter(({ low }) => !lex.approx.has(low));
  const text = words.map(({ low }) => (lex.each.has(low) ? '' : low)).join('');
  // An 'each' right behind the amount was read with it.
  const each = tokens.slice(from - 1).some(({ low }) => lex.each.has(low));
  return /^(l')?(un[ao])?$/.test(text) && (each || text.length > 3);
}

/** 'Butter 100 g, weich', 'Burro 100 g a temperatura ambiente': a measure with words about the food after it. */
function leadsOver(tokens: readonly Token[], run: Read<Amounts>, lex: Lexicon): boolean {
  const [lead] = run.value.amounts;
  const [name] = tokens;
  const listed = lowAt(tokens, run.next) === ',';
  // 'Eggs 3, beaten', but not 'Type 550, sifted'
  if (lead?.unit == null) return listed && lead !== undefined && isCount(lead.quantity);
  if (listed) return true;
  return name !== undefined && findCut([name, ...tokens.slice(run.next)], lex) === 1;
}

/** Whether a bare number may count food: own choice of the bound. */
const isCount = (n: number): boolean => n > 0 && n <= 20;

/** '2 Dosen à 400 g', '1 rôti de 1,2 kg': the late amount is the size of each thing counted. */
function sizesEach(low: string, parts: Parts, lex: Lexicon): boolean {
  if (lex.each.has(low)) return true;
  const unit = parts.amounts[0]?.unit ?? null;
  const kind = unit === null ? 'piece' : lex.byName.get(unit)?.kind;
  return lex.of.has(low) && (kind === 'piece' || kind === 'container');
}
