/** Reads amounts from tokens: quantities, ranges, units, and how one amount relates to the next. */
import type { Amount } from '../model.ts';
import { hasPair, type Lexicon, type Unit } from './lexicon.ts';
import { lowAt, type Token } from './tokens.ts';

export interface Read<T> {
  value: T;
  /** Index of the first token after what was read. */
  next: number;
}

export interface Measure {
  amount: Amount;
  unit: Unit | null;
  size: string | null;
  /** How the unit is filled or cut: 'packed', 'level', 'thick'. */
  fill: string[];
}

const NONE: string[] = [];
const DASH = new Set(['-', '–', '—', '‒', '−', '~', '‑']);
const APPROX_MARKS = new Set(['~', '≈', '±']);

export const isDash = (t: Token | undefined): boolean => t?.kind === 'p' && DASH.has(t.text);

/** A number at `i`: digits, a number word, 'half a', 'a dozen', 'two dozen'; null when none. */
function readNumber(tokens: readonly Token[], i: number, lex: Lexicon): Read<number> | null {
  const t = tokens[i];
  if (!t) return null;
  if (t.kind === 'n') {
    // '80% lean', '110°F', a '1:1' ratio are no quantities
    const mark = tokens[i + 1];
    if (mark?.text === '%' || mark?.text === '°') return null;
    if (mark?.text === ':' && !mark.space && tokens[i + 2]?.kind === 'n') return null;
    const part = lex.and.has(lowAt(tokens, i + 1)) ? fractionAt(tokens, i + 2, lex) : null;
    if (part !== null && Number.isInteger(t.value)) return { value: t.value + part, next: i + 3 };
    if (lex.numbers.get(lowAt(tokens, i + 1)) === 12) return { value: t.value * 12, next: i + 2 };
    return { value: t.value, next: i + 1 };
  }
  if (t.kind !== 'w') return null;
  const first = lex.numbers.get(t.low);
  if (first === undefined) return null;
  let value = first;
  let next = i + 1;
  const second = tokens[next];
  if (second?.kind === 'w') {
    const follow = lex.numbers.get(second.low);
    // 'a couple of'
    if (lex.pairs.has(t.low) && lex.of.has(second.low)) next++;
    // 'half a', 'a dozen', 'two dozen', 'a couple': the two words multiply
    if (
      follow !== undefined &&
      (lex.articles.has(t.low) || follow === 12 || lex.articles.has(second.low))
    ) {
      value *= follow;
      next++;
      if (lex.pairs.has(second.low) && lex.of.has(lowAt(tokens, next))) next++;
    }
  }
  return { value, next };
}

/** A value below one at `i` ('1/2', 'media'), else null: what follows 'and' in '1 and 1/2'. */
function fractionAt(tokens: readonly Token[], i: number, lex: Lexicon): number | null {
  const t = tokens[i];
  const value = t?.kind === 'n' ? t.value : lex.numbers.get(t?.low ?? '');
  return value !== undefined && value > 0 && value < 1 ? value : null;
}

/** A number or a range of two; `max` is null for a single number. */
export function readQuantity(
  tokens: readonly Token[],
  i: number,
  lex: Lexicon,
): Read<{ quantity: number; max: number | null }> | null {
  const low = readNumber(tokens, i, lex);
  if (!low) return null;
  const link = tokens[low.next];
  // '3- to 4-pound': the dash belongs to the unit that both share
  const hanging = isDash(link) && lex.ranges.has(lowAt(tokens, low.next + 1)) ? 1 : 0;
  const linked = isDash(link) || (link?.kind === 'w' && lex.ranges.has(link.low));
  if (linked) {
    const from = low.next + 1 + hanging;
    const high = readNumber(tokens, from, lex);
    const digits = tokens[from]?.kind === 'n' || tokens[i]?.kind === 'w';
    if (high && digits && high.value > low.value)
      return { value: { quantity: low.value, max: high.value }, next: high.next };
  }
  return { value: { quantity: low.value, max: null }, next: low.next };
}

/** A unit at `i`, longest form first; a full stop after it belongs to it. */
export function readUnit(tokens: readonly Token[], i: number, lex: Lexicon): Read<Unit> | null {
  const t = tokens[i];
  if (!t) return null;
  if (t.kind === 'p') {
    const inch = t.text === '"' || t.text === '”' || t.text === '″';
    const unit = inch ? lex.units.get('inch') : undefined;
    return unit ? { value: unit, next: i + 1 } : null;
  }
  if (t.kind !== 'w') return null;
  if (hasPair(lex.notUnits, t.low, lowAt(tokens, i + 1), lex)) return null;
  if (lex.unitStarts.has(t.low)) {
    const long = readNotedUnit(tokens, i, lex) ?? readLongUnit(tokens, i, lex);
    if (long) return long;
  }
  const unit = lex.exactUnits.get(t.text) ?? lex.units.get(t.low) ?? thickness(t.low, lex);
  if (!unit) return null;
  return { value: unit, next: skipStop(tokens, i + 1) };
}

/** 'colher (chá)': the bracket says which of the measures called so is meant. */
function readNotedUnit(tokens: readonly Token[], i: number, lex: Lexicon): Read<Unit> | null {
  if (tokens[i + 1]?.text !== '(' || !lex.unitStarts.has(lowAt(tokens, i))) return null;
  const inner = lex.of.has(lowAt(tokens, i + 2)) ? i + 3 : i + 2;
  const unit = lex.units.get(`${lowAt(tokens, i)} ${lowAt(tokens, inner)}`);
  return unit && tokens[inner + 1]?.text === ')' ? { value: unit, next: inner + 2 } : null;
}

/** '2-inch-thick', 'cm-long': a length that describes the piece. */
function thickness(low: string, lex: Lexicon): Unit | undefined {
  const m = /^(inch|cm|mm)-(?:thick|wide|long|diameter)$/.exec(low);
  return m ? lex.units.get(m[1] ?? '') : undefined;
}

function skipStop(tokens: readonly Token[], i: number): number {
  const t = tokens[i];
  return t?.text === '.' && !t.space ? i + 1 : i;
}

function readLongUnit(tokens: readonly Token[], i: number, lex: Lexicon): Read<Unit> | null {
  let form = '';
  let best: Read<Unit> | null = null;
  let at = i;
  for (let n = 0; n < 4; n++) {
    const t = tokens[at];
    if (t?.kind !== 'w') break;
    form = form === '' ? t.low : `${form} ${t.low}`;
    at = skipStop(tokens, at + 1);
    const unit = lex.units.get(form);
    if (unit) best = { value: unit, next: at };
    if (isDash(tokens[at])) at++;
  }
  return best;
}

/** Words between a number and its unit. */
interface Filling {
  size: string | null;
  fill: string[];
  rough: boolean;
}

/** Sizes and fill words from `i` on: 'large', 'heaped', 'loosely packed'. */
export function readSizes(
  tokens: readonly Token[],
  i: number,
  lex: Lexicon,
  withFill: boolean,
): Read<Filling> {
  let size: string | null = null;
  let rough = false;
  let fill = NONE;
  let next = i;
  for (;;) {
    const t = tokens[next];
    if (t?.kind !== 'w') break;
    const pair = lex.phraseStarts.has(t.low) ? `${t.low} ${lowAt(tokens, next + 1)}` : '';
    if (pair && lex.sizes.has(pair)) {
      size = size ? `${size} ${pair}` : pair;
      next += 2;
    } else if (lex.sizes.has(t.low) || /-sized?$/.test(t.low)) {
      size = size ? `${size} ${t.low}` : t.low;
      next++;
    } else if (withFill && (lex.fill.has(t.low) || lex.fillBeforeUnit.has(t.low))) {
      if (lex.approx.has(t.low)) rough = true;
      else fill = [...fill, t.low];
      next++;
    } else if (size && lex.ranges.has(t.low) && lex.sizes.has(lowAt(tokens, next + 1))) {
      size = `${size} ${t.low} ${tokens[next + 1]?.low}`;
      next += 2;
    } else break;
  }
  return { value: { size, fill, rough }, next };
}

/** Skips 'about', 'a scant', '~' and the like. */
function readApprox(tokens: readonly Token[], i: number, lex: Lexicon): Read<boolean> {
  let next = i;
  for (;;) {
    const t = tokens[next];
    if (!t) break;
    if (t.kind === 'w' && lex.approx.has(t.low)) {
      next = skipStop(tokens, next + 1);
      // 'cerca de 200 g'
      if (lex.of.has(lowAt(tokens, next)) && tokens[next + 1]?.kind === 'n') next++;
    } else if (t.kind === 'p' && APPROX_MARKS.has(t.text)) next++;
    else if (
      t.kind === 'w' &&
      lex.articles.has(t.low) &&
      lex.approx.has(lowAt(tokens, next + 1)) &&
      readQuantityDigits(tokens[next + 2])
    )
      next++;
    else break;
  }
  return { value: next > i, next };
}

const readQuantityDigits = (t: Token | undefined): boolean => t?.kind === 'n';

/**
 * One measure at `i`: quantity, sizes, unit ('2', '1½ cups', '3 large', 'a pinch', '400g'). An
 * article counts only before a unit or size, so that 'a' alone is no amount.
 */
export function readMeasure(
  tokens: readonly Token[],
  i: number,
  lex: Lexicon,
): Read<Measure> | null {
  const article = lex.articles.has(lowAt(tokens, i)) && tokens[i + 1]?.kind === 'n' ? 1 : 0;
  const rough = readApprox(tokens, i + article, lex);
  const quantity = readQuantity(tokens, rough.next, lex);
  if (!quantity) return null;
  let at = quantity.next;
  const hyphen = isDash(tokens[at]) && tokens[at + 1]?.kind === 'w';
  if (hyphen) at++;
  const rough2 = readApprox(tokens, at, lex);
  const filled = readSizes(tokens, rough2.next, lex, true);
  const unitAhead = readUnit(tokens, filled.next, lex) !== null;
  const sizes = unitAhead ? filled : readSizes(tokens, rough2.next, lex, false);
  let unit = readUnit(tokens, sizes.next, lex);
  let next = sizes.next;
  const { quantity: low, max } = quantity.value;
  const approximate = rough.value || rough2.value || sizes.value.rough;
  const word = tokens[sizes.next];
  // 'in' is a unit only where it is glued to its number or has a full stop
  if (unit && word?.low === 'in' && word.space && unit.next === sizes.next + 1) unit = null;
  if (unit) next = unit.next;
  else if (hyphen) return null;
  if (!unit && quantity.next === rough.next + 1 && lex.articles.has(lowAt(tokens, rough.next))) {
    if (!sizes.value.size) return null;
  }
  const scale = unit?.value.scale ?? 1;
  return {
    value: {
      amount: {
        quantity: low * scale,
        max: max === null ? null : max * scale,
        kind: 'stated',
        unit: unit?.value.name ?? null,
        approximate,
      },
      unit: unit?.value ?? null,
      size: sizes.value.size,
      fill: sizes.value.fill,
    },
    next,
  };
}
