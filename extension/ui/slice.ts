/** Net carbs of a weighed slice. */
import type { Interval, Tally } from '../../engine/model.ts';

/** Net carbs (g) of so many grams of the finished dish; null when 100 g of it are not known. */
export function sliceNetCarbs({ per100gCooked }: Tally, grams: number): Interval | null {
  const net = per100gCooked?.netCarbsG ?? null;
  return net === null
    ? null
    : {
        low: (net.low * grams) / 100,
        best: (net.best * grams) / 100,
        high: (net.high * grams) / 100,
      };
}

/** Grams of the finished dish that hold so many grams of net carbs, or null. */
export function gramsFor({ per100gCooked }: Tally, netCarbsG: number): number | null {
  const net = per100gCooked?.netCarbsG ?? null;
  return net === null || net.best <= 0 ? null : (netCarbsG / net.best) * 100;
}
