/** Sums lines with their scatter. */
import type { Interval } from '../model.ts';

/**
 * One rectangular part of a total's uncertainty, in the total's unit. Parts with the same `cause`
 * (the same flour's match, the same cup) move together.
 */
export interface Part {
  cause: string;
  minus: number;
  plus: number;
}

/** Two standard uncertainties of rectangular parts: 2 / sqrt 3 (JCGM 100:2008). */
export const COVERAGE = 1.155;

function expanded(parts: readonly Part[], side: 'minus' | 'plus'): number {
  const byCause = new Map<string, number>();
  let linear = 0;
  for (const part of parts) {
    const width = Math.max(0, part[side]);
    byCause.set(part.cause, (byCause.get(part.cause) ?? 0) + width);
    linear += width;
  }
  let squares = 0;
  for (const width of byCause.values()) squares += width * width;
  return Math.min(linear, COVERAGE * Math.sqrt(squares));
}

/**
 * A total with its bounds: parts sharing a cause add linearly, different causes by root sum of
 * squares times 1.155, never wider than the plain sum of all parts, never below zero.
 */
export function withUncertainty(best: number, parts: readonly Part[]): Interval {
  return {
    low: Math.max(0, best - expanded(parts, 'minus')),
    best,
    high: best + expanded(parts, 'plus'),
  };
}
