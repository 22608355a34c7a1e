/** Amounts and a food -> grams with a range, and the share of them that is eaten. */
import type { Food, Item, Line, Weight } from '../model.ts';
import { drained } from './drained.ts';
import { eatenShare } from './eaten.ts';
import { interval } from './interval.ts';
import { weighReading } from './part.ts';
import type { RecipeWords } from './purpose.ts';
import { type Reading, readingsOf } from './readings.ts';
import { withoutRefuse } from './refuse.ts';
import { withGrain } from './salt.ts';
import { wordsOf } from './text.ts';
import type { Region } from './units.ts';
import { assumeUnstated } from './unstated.ts';
import type { Weighed } from './volume.ts';

export { measureRegion } from './region.ts';
export type { Region } from './units.ts';

export interface WeighOptions {
  region: Region;
  recipe: RecipeWords;
}

/** Readings further apart than their own ranges and this share disagree. Common practice, no source. */
const TOLERANCE: Readonly<Record<Weighed['basis'], number>> = {
  mass: 0.15,
  volume: 0.25,
  count: 0.5,
  assumed: 1,
};

/** Ounces of a small amount are rounded to quarters ('35g/1½oz'), so they may be this far off. */
const SMALL = 60;
const SMALL_TOLERANCE = 0.35;

const TRUST: Readonly<Record<Weighed['basis'], number>> = {
  mass: 3,
  volume: 2,
  count: 1,
  assumed: 0,
};

function disagreementOf(chosen: Weighed, others: readonly Weighed[]): Weight['disagreement'] {
  const stated = chosen.grams.best;
  for (const other of others) {
    const { low, best, high } = other.grams;
    const slack = best < SMALL ? SMALL_TOLERANCE : 0;
    const tolerance = Math.max(TOLERANCE[other.basis], slack);
    if (stated >= low * (1 - tolerance) && stated <= high * (1 + tolerance)) continue;
    const tell = (grams: number): string => grams.toFixed(grams < 10 ? 1 : 0);
    const text = `the line's amounts differ: ${tell(stated)} g taken, the other reading gives ${tell(best)} g`;
    return { stated, other: best, text };
  }
  return null;
}

/** '1-inch strips' after a mass is a shape. */
const LENGTHS: ReadonlySet<string> = new Set(['inch', 'cm', 'mm', 'ft']);

const isRough = (reading: Reading): number =>
  reading.some(({ amount }) => amount.approximate) ? 1 : 0;

/** All readings of an item in grams, the most trusted first; the earlier one among equals. */
function weighedReadings(
  item: Item,
  food: Food | null,
  text: string,
  region: Region,
): { weighed: Weighed; order: number; rough: number }[] {
  return readingsOf(item, text)
    .flatMap((reading, order) => {
      if (order > 0 && LENGTHS.has(reading[0]?.amount.unit ?? '')) return [];
      const weighed = weighReading(reading, item, food, text, region);
      return weighed && weighed.grams.best > 0
        ? [{ weighed: withGrain(weighed, food, text), order, rough: isRough(reading) }]
        : [];
    })
    .sort(
      (a, b) =>
        TRUST[b.weighed.basis] - TRUST[a.weighed.basis] || a.rough - b.rough || a.order - b.order,
    );
}

/** A label weight as it will be counted, to be compared with a cup or a count of the drained food. */
function withoutLiquid(weighed: Weighed, item: Item, text: string, food: Food | null): Weighed {
  if (weighed.basis !== 'mass') return weighed;
  return { ...weighed, grams: drained(weighed.grams, item, text, food)?.grams ?? weighed.grams };
}

function finished(
  weighed: Weighed,
  disagreement: Weight['disagreement'],
  item: Item,
  line: Line,
  food: Food | null,
  options: WeighOptions,
): Weight {
  const text = wordsOf(item, line);
  const bought =
    weighed.basis === 'mass'
      ? (drained(weighed.grams, item, text, food) ?? withoutRefuse(weighed.grams, item, text, food))
      : null;
  const { low, best, high } = bought?.grams ?? weighed.grams;
  const eaten = eatenShare(item, line, food, best, options.recipe, options.region);
  const said = [bought?.assumption ?? null, eaten.assumption].filter((text) => text !== null);
  return {
    grams: interval(low, best, high),
    eaten: eaten.share,
    basis: weighed.basis,
    assumptions: [...weighed.assumptions, ...said],
    disagreement,
  };
}

/**
 * Grams (edible part) of an item and the share eaten, 0..1. A stated mass wins over a volume, a
 * volume over a count; readings that disagree are both told. Without a weighable amount salt, pepper, frying
 * fat, greasing and dusting get an assumed weight; anything else is null, for the caller to list as
 * uncounted. Never throws.
 */
export function weighItem(
  item: Item,
  line: Line,
  food: Food | null,
  options: WeighOptions,
): Weight | null {
  const text = wordsOf(item, line);
  const [first, ...others] = weighedReadings(item, food, text, options.region);
  if (first) {
    const settled = (weighed: Weighed): Weighed => withoutLiquid(weighed, item, text, food);
    const disagreement = disagreementOf(
      settled(first.weighed),
      others.map(({ weighed }) => settled(weighed)),
    );
    return finished(first.weighed, disagreement, item, line, food, options);
  }
  const assumed = assumeUnstated(item, line, food, options.recipe, options.region);
  if (!assumed) return null;
  const weighed: Weighed = {
    grams: assumed.grams,
    basis: 'assumed',
    assumptions: [assumed.assumption],
  };
  return finished(weighed, null, item, line, food, options);
}
