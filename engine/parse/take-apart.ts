/** Takes a tokenized line apart: amounts, name, preparation, notes, purpose, alternatives. */

import { stated } from './amounts/measure.ts';
import { skipStop } from './amounts/unit.ts';
import { readExtract, readHead, skipLabel } from './line-head.ts';
import { keepRest, noParts, type Parts } from './line-parts.ts';
import { readRest } from './name/after-amounts.ts';
import type { Lexicon } from './words/lexicon.ts';
import { isAt, isMark, isNumber, lowAt, type Token } from './words/tokens.ts';

const OPENING = new Set(`([#'‘"“`);

/** 'de la farine', 'etwas Mehl', 'some salt': the index of the name after words that carry no amount. */
function skipArticles(tokens: readonly Token[], from: number, parts: Parts, lex: Lexicon): number {
  let at = from;
  while (isMark(tokens[at]) && !OPENING.has(lowAt(tokens, at))) at++;
  for (; at < tokens.length - 1; at++) {
    const low = lowAt(tokens, at);
    // 'cuillères rases de sel': how full the unit is may stand behind it
    const apart = at > from && isMark(tokens[at - 1]);
    if (lex.fill.has(low) && (apart || isAt(lex.of, tokens, at + 1))) {
      parts.preps.push(tokens.slice(at, at + 1));
      if (apart) at = skipStop(tokens, at + 1) - 1;
      if (lex.approx.has(low))
        parts.amounts = parts.amounts.map((a) => ({ ...a, approximate: true }));
      continue;
    }
    const vague = parts.amounts.length === 0 && lex.vague.has(low);
    if (!vague && !lex.of.has(low) && !lex.articles.has(low)) break;
  }
  return at;
}

/** Everything a line says, each token of it under one heading. */
export function readParts(tokens: readonly Token[], lex: Lexicon): Parts {
  const parts = noParts();
  let at = skipLabel(tokens, parts, lex);
  const extract = readExtract(tokens, at, lex);
  const taken = extract > at;
  if (taken) parts.preps.push(tokens.slice(at, extract));
  at = extract;
  // 'je 1 Prise Salz und Zucker'
  const each = isAt(lex.each, tokens, at) && isNumber(tokens[at + 1]);
  if (each) at++;
  const rest = readHead(tokens, at, parts, lex);
  if (each && parts.amounts.length > 0) {
    parts.each = true;
    parts.eachWord = tokens.slice(at - 1, at);
  }
  // 'juice of a lemon'
  const one = isAt(lex.articles, tokens, at) || isAt(lex.articles, tokens, at - 1);
  if (taken && parts.amounts.length === 0 && one) parts.amounts = [stated(1, null)];
  at = rest;
  at = skipArticles(tokens, at, parts, lex);
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
