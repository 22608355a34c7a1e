/** What a figure printed on a package really means, and how a figure is printed. */

import { clampAtZero, scale, spanning } from '../../interval.ts';
import type { Interval } from '../../model.ts';

export type LabelKind = 'energy' | 'fat' | 'macro' | 'sodium';

const nearest = (value: number, step: number): number => Math.round(value / step + 1e-9) * step;

/** A true value as a US label prints it, 21 CFR 101.9(c): kcal, grams, or mg for sodium. */
export function roundForUsLabel(value: number, kind: LabelKind): number {
  switch (kind) {
    case 'energy':
      return value < 5 ? 0 : nearest(value, value <= 50 ? 5 : 10);
    case 'fat':
      return value < 0.5 ? 0 : nearest(value, value < 5 ? 0.5 : 1);
    case 'sodium':
      return value < 5 ? 0 : nearest(value, value <= 140 ? 5 : 10);
    case 'macro':
      return value < 0.5 ? 0 : nearest(value, 1);
  }
}

function usMacro(printed: number): Interval {
  return printed === 0 ? { low: 0, best: 0.25, high: 0.5 } : around(printed, 0.5, 0.5);
}

const around = (value: number, below: number, above: number): Interval => ({
  low: value - below,
  best: value,
  high: value + above,
});

/** Half the step below and above a printed value, which differ where the step changes. */
function usStep(printed: number, kind: 'energy' | 'fat' | 'sodium'): Interval {
  const [small, large, edge, zeroBelow] = {
    energy: [5, 10, 50, 5] as const,
    fat: [0.5, 1, 5, 0.5] as const,
    sodium: [5, 10, 140, 5] as const,
  }[kind];
  if (printed === 0) return { low: 0, best: zeroBelow / 2, high: zeroBelow };
  return around(
    printed,
    (printed > edge ? large : small) / 2,
    (printed >= edge ? large : small) / 2,
  );
}

/**
 * True interval of a value printed on a US label, per serving (21 CFR 101.9(c)). `printed` is a
 * number or the words 'less than 1 g' / '<1'. Null when the text holds no number.
 */
export function usLabelInterval(printed: number | string, kind: LabelKind): Interval | null {
  const value = typeof printed === 'number' ? printed : numberIn(printed);
  if (value === null || !Number.isFinite(value) || value < 0) return null;
  const lessThan = typeof printed === 'string' && /<|less than/i.test(printed);
  if (lessThan) {
    // 'less than 1 g' is used from 0.5 g; below that the label may say 0.
    const low = kind === 'macro' && value === 1 ? 0.5 : 0;
    return spanning(low, (low + value) / 2, value);
  }
  return kind === 'macro' ? usMacro(value) : usStep(value, kind);
}

/**
 * True interval of a value printed on an EU or UK label, per 100 g (Commission guidance on
 * tolerances, December 2012, rounding part). '0' and '<0.5' mean up to 0.5 g; 'trace' likewise.
 */
export function euLabelInterval(printed: number | string): Interval | null {
  if (typeof printed === 'string' && /trace|^tr\.?$/i.test(printed.trim()))
    return { low: 0, best: 0, high: 0.5 };
  const value = typeof printed === 'number' ? printed : numberIn(printed);
  if (value === null || !Number.isFinite(value) || value < 0) return null;
  if (value === 0) return { low: 0, best: 0.25, high: 0.5 };
  if (typeof printed === 'string' && /</.test(printed))
    return { low: 0, best: value / 2, high: value };
  const half = value >= 10 ? 0.5 : 0.05;
  return clampAtZero(around(value, half, half));
}

function numberIn(text: string): number | null {
  const found = /\d+(?:[.,]\d+)?/.exec(text);
  return found ? Number(found[0].replace(',', '.')) : null;
}

/**
 * A label's per-serving interval for the grams used. Flag LABEL_ZERO_BULK: the label says 0, yet
 * more than one serving is used, so the hidden amount may add up.
 */
export function labelForGrams(
  perServing: Interval,
  servingG: number,
  gramsUsed: number,
): { amount: Interval; flags: string[] } {
  const amount = scale(perServing, gramsUsed / servingG);
  const hidden = perServing.low === 0 && perServing.high > 0 && perServing.high <= 0.5;
  return { amount, flags: hidden && gramsUsed > servingG ? ['LABEL_ZERO_BULK'] : [] };
}
