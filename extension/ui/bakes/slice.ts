/** Net carbs of a weighed slice. */
import type { Interval, Tally } from '../../../engine/model.ts';

export const times = ({ low, best, high }: Interval, factor: number): Interval => ({
  low: low * factor,
  best: best * factor,
  high: high * factor,
});

/** Net carbs (g) of so many grams of the finished dish; null when 100 g of it are not known. */
export function sliceNetCarbs({ per100gCooked }: Tally, grams: number): Interval | null {
  const net = per100gCooked?.netCarbsG ?? null;
  return net && times(net, grams / 100);
}

/**
 * Grams of the finished dish that hold so many grams of net carbs: fewest where it has most. Null when
 * 100 g of it are not known, or may have none.
 */
export function gramsFor({ per100gCooked }: Tally, netCarbsG: number): Interval | null {
  const net = per100gCooked?.netCarbsG ?? null;
  if (net === null || net.low <= 0) return null;
  const grams = (each: number): number => (netCarbsG / each) * 100;
  return { low: grams(net.high), best: grams(net.best), high: grams(net.low) };
}
