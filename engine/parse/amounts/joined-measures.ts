/** The run of amounts that a line begins with, and how each further measure relates to it. */
import type { Amount } from '../../model.ts';
import { unitsIn } from '../../unit-ratios.ts';
import type { Unit } from '../words/lexicon.ts';
import type { Token } from '../words/tokens.ts';
import { type Measure, stated } from './measure.ts';
import { isMeasured } from './unit.ts';

export interface Amounts {
  amounts: Amount[];
  size: Token[];
  /** Tokens within the run that are no amount: 'packed', 'total'. */
  loose: Token[];
  /** Words between a count and the size of one, which belong before the name: '1 whole 6-pound salmon'. */
  front: Token[];
  /** The size of the pieces that a measured food is cut into. */
  cut: Token[];
  /** Brackets within the run that hold words. */
  asides: Token[][];
  /** Whether a word such as 'each' stands in it. */
  each: boolean;
}

export interface Run extends Amounts {
  /** Unit of the stated amount, and of the latest one. */
  stated: Unit | null;
  last: Unit | null;
}

/** Factor from `from` to the smaller unit `to`; null when the two have no fixed ratio here. */
function stepDown(from: string | null | undefined, to: string | null | undefined): number | null {
  if (!from || !to) return null;
  return from === to ? 1 : unitsIn(from, to);
}

export function startRun(first: Measure): Run {
  return {
    amounts: [first.amount],
    size: first.size,
    loose: [...first.fill],
    front: [],
    cut: [],
    asides: [],
    each: false,
    stated: first.unit,
    last: first.unit,
  };
}

/** Keeps the first size as the run's; a later one becomes loose words. */
export function addSize(run: Run, size: Token[]): void {
  if (run.size.length === 0) run.size = size;
  else run.loose.push(...size);
}

export function push(run: Run, measure: Measure, kind: Amount['kind']): void {
  run.amounts.push({ ...measure.amount, kind });
  run.last = measure.unit;
  addSize(run, measure.size);
  run.loose.push(...measure.fill);
}

/** Whether an amount in brackets is the size of one unit, or the whole quantity again. */
export function bracketKind(run: Run, measure: Measure, each: boolean): Amount['kind'] {
  if (each || measure.unit?.kind === 'length') return 'each';
  const container = run.stated?.kind === 'container';
  const bare = run.stated === null && isMeasured(measure.unit);
  return container || bare ? 'each' : 'same';
}

const samePlain = (a: Amount | undefined, b: Amount): boolean =>
  a !== undefined && a.quantity === b.quantity && a.max === b.max;

/** 'one (1)', '1 (one)': the number over again. */
export const repeats = (run: Run, measures: readonly Measure[]): boolean =>
  measures.length === 1 &&
  measures.every(
    (m) => m.unit === null && m.size.length === 0 && samePlain(run.amounts[0], m.amount),
  );

/** Units of which nothing is made in pieces: '4 8 cups' lost the dash between its two numbers. */
const SPOONED = new Set(['cup', 'tbsp', 'tsp']);

/**
 * A measure that follows without any mark: '1 lb 2 oz' adds, '2 15-ounce cans' sizes, '12 oz 340 g' and
 * '1 tbsp 1 tablespoon' or '½ cup 1 stick' say the same again; false when it does not belong.
 */
export function juxtapose(run: Run, measure: Measure): boolean {
  const { unit, amount } = measure;
  const last = run.amounts.at(-1);
  if (unit === run.last && samePlain(last, amount)) {
    run.loose.push(...measure.size, ...measure.fill);
    return true;
  }
  if (unit === null || unit === run.last) return false;
  if (unit.name === 'stick' && isMeasured(run.last)) {
    push(run, measure, 'same');
    return true;
  }
  const sized = run.last === null && isMeasured(unit);
  const high = amount.quantity;
  const range = last?.max === null && amount.max === null && high >= last.quantity;
  if (sized && range && SPOONED.has(unit.name)) {
    amount.quantity = last.quantity;
    if (high > last.quantity) amount.max = high;
    run.amounts = [];
    push(run, measure, 'stated');
    run.stated = unit;
    return true;
  }
  const alike = run.last?.kind === unit.kind || (unit.kind !== 'length' && isMeasured(run.last));
  if (!sized && !(alike && isMeasured(unit))) return false;
  push(run, measure, sized ? 'each' : continues(run, measure) ? 'plus' : 'same');
  return true;
}

/** Whether a measure after a comma adds to the one before: '1 pound, 2 ounces'. */
export function continues(run: Run, measure: Measure): boolean {
  const step = stepDown(run.last?.name, measure.unit?.name);
  return step !== null && step > 1 && measure.amount.quantity < step;
}

/** '1 cup minus 1 tbsp': takes the second amount off the first; false when their units have no fixed ratio. */
export function subtract(amount: Amount | undefined, less: Amount | undefined): boolean {
  const step = stepDown(amount?.unit, less?.unit);
  const off = step && less ? less.quantity / step : Number.NaN;
  if (!amount || !(off < amount.quantity) || less?.max !== null) return false;
  amount.quantity -= off;
  if (amount.max !== null) amount.max -= off;
  return true;
}

/** '325 ml - 350 ml', '1 cup to 1½ cups': the second measure is the upper end of the first, which is in `unit`. */
export function widen(low: Amount | undefined, unit: Unit | null, upper: Measure): boolean {
  const step = stepDown(upper.unit?.name, unit?.name);
  if (!low || step === null || low.max !== null || upper.amount.max !== null) return false;
  const high = upper.amount.quantity * step;
  if (high <= low.quantity) return false;
  low.max = high;
  return true;
}

/** '400 g tin', '2-inch piece': the measure is the size of one container or piece. */
export function contain(run: Run, unit: Unit): boolean {
  const container = unit.kind === 'container' || run.last?.kind === 'length';
  const counted = unit.kind === 'piece' || unit.kind === 'trail';
  if (!container && !counted && !(unit.kind === 'small' && run.stated === null)) return false;
  const first = run.amounts[0];
  if (!first) return false;
  if (run.stated === null) first.unit = unit.name;
  else if (isMeasured(run.stated) && container) {
    for (const amount of run.amounts) if (amount.kind === 'stated') amount.kind = 'each';
    run.amounts.unshift(stated(1, unit.name));
  } else return false;
  run.stated = unit;
  run.last = unit;
  return true;
}

/** '12 (3 l) cups water': the unit comes late, so the brackets held the same quantity. */
export function adopt(run: Run, unit: Unit): void {
  for (const [i, amount] of run.amounts.entries())
    if (i === 0) amount.unit = unit.name;
    else if (amount.kind === 'each') amount.kind = 'same';
  run.stated = unit;
  run.last = unit;
}
