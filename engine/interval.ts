/** Small arithmetic on {@link Interval}s: `low <= best <= high`. */
import type { Interval } from './model.ts';

/** A value without scatter. */
export const exact = (value: number): Interval => ({ low: value, best: value, high: value });

/** An interval from three figures in any order of the bounds; `best` is kept inside them. */
export function interval(low: number, best: number, high: number): Interval {
  return { low: Math.min(low, best, high), best, high: Math.max(low, best, high) };
}

/** Every bound times a non-negative factor. */
export const scale = (value: Interval, factor: number): Interval => ({
  low: value.low * factor,
  best: value.best * factor,
  high: value.high * factor,
});

/** Bound-wise sum, for values that move together. */
export const add = (a: Interval, b: Interval): Interval => ({
  low: a.low + b.low,
  best: a.best + b.best,
  high: a.high + b.high,
});

/** `a - b`, with the bounds crossed so that the result covers every combination. */
export const subtract = (a: Interval, b: Interval): Interval => ({
  low: a.low - b.high,
  best: a.best - b.best,
  high: a.high - b.low,
});

/** Bounds below zero are raised to zero: a mass is never negative. */
export const clampAtZero = (value: Interval): Interval => ({
  low: Math.max(0, value.low),
  best: Math.max(0, value.best),
  high: Math.max(0, value.high),
});
