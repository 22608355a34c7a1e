/** Why a bake may have gone wrong, judged by the plan's own figures. */

import type { Cause, Condition, Row } from './failure-table.ts';
import type { BakeFigures, FigureName } from './value-names.ts';

/** 'likely': the figures say so; 'possible': they cannot tell; 'unlikely': they come near, but speak against it. */
export type Standing = 'likely' | 'possible' | 'unlikely';

export interface JudgedCause {
  id: string;
  standing: Standing;
  /** The cause in plain words with the plan's figures, without a full stop. */
  text: string;
  /** How far past its threshold the figure is; orders likely causes. */
  strength: number;
}

/** What stands for names in braces: figures as printed, and foods. */
export type Words = Partial<Record<string, string>>;

const shown = (value: number): string =>
  String(Math.abs(value) >= 20 ? Math.round(value) : Math.round(value * 10) / 10);

/** Figures as texts print them, beside the names of foods. */
export function wordsOf(figures: BakeFigures, foods: Record<string, string | null>): Words {
  const words: Words = {};
  for (const [name, value] of Object.entries(figures))
    if (value !== null) words[name] = shown(value);
  for (const [name, value] of Object.entries(foods)) if (value !== null) words[name] = value;
  return words;
}

/** The text with its names filled in, or null when one of them is not known. */
export function filled(text: string, words: Words): string | null {
  let known = true;
  const result = text.replace(/\{(\w+)\}/g, (_, name: string) => {
    const word = words[name];
    if (word === undefined) known = false;
    return word ?? '';
  });
  return known ? result : null;
}

const COMPARE: Record<Condition['is'], (a: number, b: number) => boolean> = {
  '<': (a, b) => a < b,
  '<=': (a, b) => a <= b,
  '>': (a, b) => a > b,
  '>=': (a, b) => a >= b,
};

/** Whether a condition holds; null when its figure is not known. */
const holds = ({ figure, is, than }: Condition, figures: BakeFigures): boolean | null => {
  const value = figures[figure];
  return value === null ? null : COMPARE[is](value, than);
};

/** True when every condition holds for certain. */
export const allHold = (conditions: readonly Condition[], figures: BakeFigures): boolean =>
  conditions.every((condition) => holds(condition, figures) === true);

/** A figure this many times on the wrong side of its threshold rules the cause out: own choice. */
const RULES_OUT = 1.5;

/** How far a figure is past its threshold: above 1 the condition holds. A threshold of 0 has no scale. */
function pastOf({ figure, is, than }: Condition, figures: BakeFigures): number {
  const value = figures[figure];
  if (value === null) return 0;
  if (than === 0) return COMPARE[is](value, than) ? 1 : 0;
  return is.startsWith('>') ? value / than : than / Math.max(value, 0.01 * than);
}

const strengthOf = ([first]: readonly Condition[], figures: BakeFigures): number =>
  first === undefined ? 0 : pastOf(first, figures);

/** Figures that only the baker can know; without them a cause stays possible. */
const MEASURED: readonly FigureName[] = ['innerC', 'cooledHours'];

function judged(id: string, cause: Cause, figures: BakeFigures, words: Words): JudgedCause | null {
  const { if: conditions, text } = cause;
  if (conditions.length === 0) return { id, standing: 'possible', text, strength: 0 };
  const unmeasured = conditions.some(
    ({ figure }) => MEASURED.includes(figure) && figures[figure] === null,
  );
  const said = filled(text, words) ?? cause.else ?? null;
  if (said === null) return null;
  if (unmeasured) return { id, standing: 'possible', text: cause.else ?? said, strength: 0 };
  if (allHold(conditions, figures))
    return { id, standing: 'likely', text: said, strength: strengthOf(conditions, figures) };
  const ruledOut = conditions.some(
    (condition) =>
      MEASURED.includes(condition.figure) || pastOf(condition, figures) < 1 / RULES_OUT,
  );
  return ruledOut ? null : { id, standing: 'unlikely', text: said, strength: 0 };
}

const ORDER: readonly Standing[] = ['likely', 'possible', 'unlikely'];

/** The causes of a row, likeliest first; those that the figures rule out or that mean nothing in this dish are left out. */
export function judgedCauses(row: Row, figures: BakeFigures, words: Words): JudgedCause[] {
  const causes = Object.entries(row.causes).flatMap(([id, cause]) => {
    const one = judged(id, cause, figures, words);
    return one === null ? [] : [one];
  });
  return causes.sort(
    (a, b) => ORDER.indexOf(a.standing) - ORDER.indexOf(b.standing) || b.strength - a.strength,
  );
}
