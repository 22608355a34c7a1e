/** Arithmetic on {@link Interval}s (`low <= best <= high`): one constructor for any figure, one for masses. */
import type { Interval } from './model.ts';

/** A value without scatter. */
export const exact = (value: number): Interval => ({ low: value, best: value, high: value });

/** An interval from three figures of either sign; bounds in the wrong order are widened to hold all. */
export function spanning(low: number, best: number, high: number): Interval {
  return { low: Math.min(low, best, high), best, high: Math.max(low, best, high) };
}

/** More grams than any dish holds; keeps sums finite on senseless input. Own choice. */
const MOST_GRAMS = 1e9;

const asMass = (value: number): number =>
  Number.isFinite(value) ? Math.min(Math.max(value, 0), MOST_GRAMS) : 0;

/** A mass or a share from any three numbers: none negative, all finite, bounds on their side of `best`. */
export function massInterval(low: number, best: number, high: number): Interval {
  const middle = asMass(best);
  return { low: Math.min(asMass(low), middle), best: middle, high: Math.max(asMass(high), middle) };
}

/** A mass with the same relative half-width on both sides; `scatter` is a share, 0.05 is 5 %. */
export const massAround = (best: number, scatter: number): Interval =>
  massInterval(best * (1 - scatter), best, best * (1 + scatter));

/** A mass times any factor, still a mass. */
export const scaleMass = (mass: Interval, factor: number): Interval =>
  massInterval(mass.low * factor, mass.best * factor, mass.high * factor);

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

/** Bound-wise product of values that are not negative: grams times the share eaten. */
export const product = (a: Interval, b: Interval): Interval => ({
  low: a.low * b.low,
  best: a.best * b.best,
  high: a.high * b.high,
});

/** Bounds below zero are raised to zero: a mass is never negative. */
export const clampAtZero = (value: Interval): Interval => ({
  low: Math.max(0, value.low),
  best: Math.max(0, value.best),
  high: Math.max(0, value.high),
});
