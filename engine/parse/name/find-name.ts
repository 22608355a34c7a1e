/** Reads the food's name out of the words after the amounts: what is cut off, what is lifted out. */

import { readMeasure } from '../amounts/measure.ts';
import { isEntryAt, isPairAt, type Lexicon } from '../words/lexicon.ts';
import { isAt, isMark, isNumber, isWord, lowAt, type Token } from '../words/tokens.ts';
import { isPrepAt, isPurposeAt, onlyDescribes } from './segments.ts';

/** Index where a phrase that is not the name begins ('for frying', 'plus extra', 'or 2 limes'). */
export function findCut(tokens: readonly Token[], lex: Lexicon): number {
  const other = lex.language !== 'en';
  let named = false;
  for (let i = 0; i < tokens.length; i++) {
    const t = tokens[i];
    const before = named;
    if (isWord(t) && !isPrepAt(tokens, i, lex) && !lex.unnamed.has(t.low)) named = true;
    if (t?.text === '+' && before && goesOn(tokens, i + 1, lex)) return i;
    if (!isWord(t) || !before) continue;
    const after = tokens[i + 1];
    if (isPurposeAt(tokens, i, lex)) return i;
    if (isEntryAt(lex.cuts, tokens, i, lex)) return i;
    if (other && leadsToShape(tokens, i, lex)) return i;
    if (lex.or.has(t.low) || lex.plus.has(t.low) || lex.origin.has(t.low)) {
      const measure = readMeasure(tokens, i + 1, lex);
      if (measure && (measure.value.unit || isNumber(after))) return i;
      if (other && lex.plus.has(t.low) && goesOn(tokens, i + 1, lex)) return i;
      if (after && lex.orNote.has(after.low)) return i;
    }
    if (
      isPrepAt(tokens, i, lex) &&
      after &&
      lex.prepTails.has(after.low) &&
      !leadsOn(tokens, i, lex)
    ) {
      let from = i;
      while (from > 1 && isAt(lex.prepAdverbs, tokens, from - 1)) from--;
      return from;
    }
  }
  return tokens.length;
}

/** 'in dünnen Scheiben', 'i tynde skiver', 'en petits dés': words of shape behind 'in'. */
function leadsToShape(tokens: readonly Token[], i: number, lex: Lexicon): boolean {
  if (!isAt(lex.prepTails, tokens, i) || isAt(lex.and, tokens, i)) return false;
  return tokens.slice(i + 1, i + 4).some((t) => lex.noteHeads.has(t.low));
}

/** What a '+' may add at `i`: '+ 1 egg', '+ etwas für die Form', '+ more to taste'. */
function goesOn(tokens: readonly Token[], i: number, lex: Lexicon): boolean {
  if (readMeasure(tokens, i, lex)) return true;
  const low = lowAt(tokens, isAt(lex.articles, tokens, i) ? i + 1 : i);
  return lex.vague.has(low) || lex.more.has(low);
}

/** Whether the preparation at `i` stands between describing words and a food: 'dried, peeled and halved peas'. */
function leadsOn(tokens: readonly Token[], i: number, lex: Lexicon): boolean {
  if (!onlyDescribes(tokens.slice(0, i).filter(isWord), lex)) return false;
  const food = tokens[prepRun(tokens, i, lex)];
  return isWord(food) && !lex.prepTails.has(food.low) && !lex.cuts.has(food.low);
}

/**
 * Lifts preparation words out of a name ('finely chopped fresh parsley' -> 'fresh parsley').
 * `keepAll` lifts nothing, as in 'can chopped tomatoes'. From an 'or' on nothing is lifted either: the
 * words there belong to the other food.
 */
export function liftPrep(
  tokens: readonly Token[],
  lex: Lexicon,
  keepAll: boolean,
): { name: Token[]; prep: Token[][] } {
  const name: Token[] = [];
  const prep: Token[][] = [];
  let i = 0;
  while (i < tokens.length) {
    if (isAt(lex.or, tokens, i)) {
      name.push(...tokens.slice(i));
      break;
    }
    const end = prepRun(tokens, i, lex);
    if (end > i) {
      prep.push(tokens.slice(i, end));
      i = end;
      while (name.length === 0 && isAt(lex.and, tokens, i)) i++;
    } else name.push(...tokens.slice(i, ++i));
  }
  const lifted = !keepAll && name.some((t) => !isMark(t));
  return lifted ? { name, prep } : { name: [...tokens], prep: [] };
}

/**
 * End of a run of preparation words at `i` ('peeled and finely chopped'); `i` when there is none,
 * or when an 'or' sets it against a word that is no preparation ('fresh or thawed cranberries').
 */
function prepRun(tokens: readonly Token[], i: number, lex: Lexicon): number {
  let at = i;
  let end = i;
  let or = false;
  for (;;) {
    while (isAt(lex.prepAdverbs, tokens, at) || isPairAt(lex.prepPairs, tokens, at, lex)) at++;
    if (!isPrepAt(tokens, at, lex)) return or && at < tokens.length ? i : end;
    at++;
    if (tokens.slice(at).every((t) => lex.prepAdverbs.has(t.low))) at = tokens.length;
    end = at;
    or = false;
    for (; lowAt(tokens, at) === ',' || isAt(lex.joints, tokens, at); at++)
      or ||= isAt(lex.or, tokens, at);
  }
}
