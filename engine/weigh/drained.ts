/** The label weight of a can less the liquid, when the line has it drained. */
import type { Food, Interval, Item } from '../model.ts';
import { interval } from './interval.ts';
import { gramsOf } from './units.ts';

/** Drained share of the label weight: [group, low, best, high]. Common practice, no source. */
const SHARES: readonly (readonly [RegExp, number, number, number])[] = [
  [/^legumes/, 0.55, 0.6, 0.68],
  [/^fish/, 0.7, 0.75, 0.85],
  [/^(vegetable|fruit)/, 0.5, 0.6, 0.7],
];

const CONTAINERS: ReadonlySet<string> = new Set(['can', 'tin', 'jar']);

/** Is the mass the label weight of a container? */
const isLabelWeight = (item: Item): boolean =>
  item.amounts.some(({ unit }) => unit !== null && CONTAINERS.has(unit)) &&
  item.amounts.some(({ unit, kind }) => kind !== 'stated' && gramsOf(unit) !== null);

/**
 * Grams left in the sieve, or null when the line does not drain a can or states the drained weight
 * itself.
 */
export function drained(
  grams: Interval,
  item: Item,
  text: string,
  food: Food | null,
): { grams: Interval; assumption: string } | null {
  if (!food || (food.state !== 'canned' && food.state !== 'cooked')) return null;
  if (!/\b(drained|rinsed)\b/.test(text) || /drained weight|\bg drained\b/.test(text)) return null;
  const share = SHARES.find(([group]) => group.test(food.group));
  if (!share || !isLabelWeight(item)) return null;
  const [, low, best, high] = share;
  return {
    grams: interval(grams.low * low, grams.best * best, grams.high * high),
    assumption: `drained: ${Math.round(best * 100)} % of the label weight taken as left`,
  };
}
