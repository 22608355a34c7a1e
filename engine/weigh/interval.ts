/** Arithmetic on intervals, kept in one place so that `low <= best <= high` always holds. */
import type { Interval } from '../model.ts';

export const ONE: Interval = { low: 1, best: 1, high: 1 };

const finite = (value: number): number =>
  Number.isFinite(value) ? Math.min(Math.max(value, 0), 1e9) : 0;

/** An interval from any three numbers: none negative, in order. */
export function interval(low: number, best: number, high: number): Interval {
  const middle = finite(best);
  return { low: Math.min(finite(low), middle), best: middle, high: Math.max(finite(high), middle) };
}

/** `best` with the same relative half-width on both sides; `scatter` is a share, 0.05 is 5 %. */
export const around = (best: number, scatter: number): Interval =>
  interval(best * (1 - scatter), best, best * (1 + scatter));

export const times = (a: Interval, b: Interval): Interval =>
  interval(a.low * b.low, a.best * b.best, a.high * b.high);

export const plus = (a: Interval, b: Interval): Interval =>
  interval(a.low + b.low, a.best + b.best, a.high + b.high);

export const scaled = (a: Interval, by: number): Interval =>
  interval(a.low * by, a.best * by, a.high * by);
