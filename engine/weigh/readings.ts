/** The amounts of an item as readings: one quantity each, said in one or several measures. */
import type { Amount, Item } from '../model.ts';

/** `count` units of a package or piece, each of the size in `size`, when the line says so. */
export interface Part {
  amount: Amount;
  /** Size of one unit ('14 oz' of '2 (14 oz) cans'), else null. */
  size: Amount | null;
}

/** One reading of the quantity: parts to be added up. */
export type Reading = Part[];

/**
 * Readings in the order of the line. 'plus' adds to the reading before it, 'each' sizes the last
 * part, 'same' opens a new reading of the same quantity.
 */
export function readingsOf(item: Item): Reading[] {
  const readings: Reading[] = [];
  for (const amount of item.amounts) {
    const current = readings[readings.length - 1];
    const last = current?.[current.length - 1];
    if (amount.kind === 'each' && last && last.size === null) last.size = amount;
    else if (amount.kind === 'plus' && current) current.push({ amount, size: null });
    else readings.push([{ amount, size: null }]);
  }
  return readings;
}

/** The middle and the ends of a stated amount. */
export function spanOf(amount: Amount): { low: number; best: number; high: number } {
  const low = Number.isFinite(amount.quantity) ? amount.quantity : 0;
  const high = amount.max !== null && Number.isFinite(amount.max) ? amount.max : low;
  return { low: Math.min(low, high), best: (low + high) / 2, high: Math.max(low, high) };
}
