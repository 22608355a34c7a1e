/** Reads a unit from tokens, longest form first. */
import words from '../data/size-words.json' with { type: 'json' };
import { isPairAt, type Lexicon, type Unit } from '../words/lexicon.ts';
import { isAt, isMark, isNumber, isWord, lowAt, type Token } from '../words/tokens.ts';
import { found, isDash, type Read } from './quantity.ts';

const INCH_MARKS = new Set('"”″');
const THICKNESS = new RegExp(`^(${words.lengths})-(?:${words.extents})$`);
const MEASURES = new Set<string | undefined>(['mass', 'volume', 'length']);
const LONGEST_FORM = 4;

/** A unit at `i`; a full stop after it belongs to it. */
export function readUnit(tokens: readonly Token[], i: number, lex: Lexicon): Read<Unit> | null {
  const t = tokens[i];
  if (!t) return null;
  if (isMark(t)) {
    const inch = INCH_MARKS.has(t.text) && !t.space && isNumber(tokens[i - 1]);
    const unit = inch ? lex.units.get('inch') : undefined;
    return unit ? found(unit, i + 1) : null;
  }
  if (!isWord(t)) return null;
  if (isPairAt(lex.notUnits, tokens, i, lex)) return null;
  const special = unitBefore(tokens, i, lex);
  if (special) return special;
  if (lex.unitStarts.has(t.low)) {
    const long = readNotedUnit(tokens, i, lex) ?? readLongUnit(tokens, i, lex);
    if (long) return long;
  }
  const unit = lex.exactUnits.get(t.text) ?? lex.units.get(t.low) ?? thickness(t.low, lex);
  return unit ? found(unit, skipStop(tokens, i + 1)) : null;
}

/** 'filet d'huile' against 'filet de bœuf': the food behind the word tells the unit. */
function unitBefore(tokens: readonly Token[], i: number, lex: Lexicon): Read<Unit> | null {
  const special = lex.unitsBefore.get(lowAt(tokens, i));
  if (!special) return null;
  let at = i + 1;
  while (isAt(lex.of, tokens, at) || isAt(lex.articles, tokens, at)) at++;
  return special.foods.has(lowAt(tokens, at)) ? found(special.unit, i + 1) : null;
}

/** 'colher (chá)': the bracket says which of the measures called so is meant. */
function readNotedUnit(tokens: readonly Token[], i: number, lex: Lexicon): Read<Unit> | null {
  if (tokens[i + 1]?.text !== '(') return null;
  const inner = isAt(lex.of, tokens, i + 2) ? i + 3 : i + 2;
  const unit = lex.units.get(`${lowAt(tokens, i)} ${lowAt(tokens, inner)}`);
  return unit && tokens[inner + 1]?.text === ')' ? found(unit, inner + 2) : null;
}

function readLongUnit(tokens: readonly Token[], i: number, lex: Lexicon): Read<Unit> | null {
  let form = '';
  let best: Read<Unit> | null = null;
  let at = i;
  for (let n = 0; n < LONGEST_FORM; n++) {
    const t = tokens[at];
    if (!isWord(t)) break;
    form = form === '' ? t.low : `${form} ${t.low}`;
    at = skipStop(tokens, at + 1);
    const unit = lex.units.get(form);
    if (unit) best = found(unit, at);
    if (isDash(tokens[at])) at++;
  }
  return best;
}

/** '2-inch-thick', 'cm-long': a length that describes the piece. */
function thickness(low: string, lex: Lexicon): Unit | undefined {
  return lex.units.get(THICKNESS.exec(low)?.[1] ?? '');
}

/** The index after a full stop that touches the word before it. */
export function skipStop(tokens: readonly Token[], i: number): number {
  const t = tokens[i];
  return t?.text === '.' && !t.space ? i + 1 : i;
}

/** Whether the unit measures a quantity rather than counting things. */
export const isMeasured = (unit: Unit | null): boolean => MEASURES.has(unit?.kind);
