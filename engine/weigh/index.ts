/** Amounts and a food -> grams with a range, and the share of them that is eaten. */

import { massInterval } from '../interval.ts';
import type { Food, Item, Line, Weight } from '../model.ts';
import { millilitresOf, type Region } from '../units.ts';
import { AS_USED, asUsed } from './as-used.ts';
import { drained } from './eaten/drained.ts';
import { eatenShare } from './eaten/eaten-share.ts';
import type { RecipeWords } from './eaten/purpose.ts';
import { withoutRefuse } from './eaten/refuse.ts';
import { assumeUnstated } from './eaten/unstated-amounts.ts';
import { isOfOther, isShape } from './further-weights.ts';
import { plain, wordsOf } from './line-words.ts';
import { lostBlankNote } from './lost-blank.ts';
import { inLostCups } from './lost-unit.ts';
import { withGrain } from './measured/salt-grain.ts';
import type { Weighed } from './measured/volume.ts';
import { oneEach } from './one-each.ts';
import { type Reading, readingsOf } from './readings.ts';
import { likelyMeant } from './unlikely-counts.ts';
import { weighReading } from './weigh-reading.ts';

export type { Region } from '../units.ts';
export { measureRegion } from './region.ts';

export interface WeighOptions {
  region: Region;
  recipe: RecipeWords;
}

/** Readings further apart than their own ranges and this share disagree. Common practice, no source. */
const TOLERANCE: Readonly<Record<Weighed['basis'], number>> = {
  mass: 0.2,
  volume: 0.25,
  count: 0.7,
  assumed: 1,
};

/** Ounces are rounded to quarters ('10g/¼oz'), so a small amount may be this many grams off. */
const ROUNDED_G = 4;
/** A few spoonfuls scatter more than cups do. */
const SMALL_G = 60;
const SMALL_TOLERANCE = 0.35;

const TRUST: Readonly<Record<Weighed['basis'], number>> = {
  mass: 3,
  volume: 2,
  count: 1,
  assumed: 0,
};

interface Read {
  weighed: Weighed;
  order: number;
  rough: number;
  /** Millilitres, where the reading is a volume and nothing else. */
  ml: number | null;
  /** May measure the food that the line offers instead. */
  ofOther: boolean;
}

const agrees = (grams: number, { grams: span, basis }: Weighed): boolean => {
  const spoons = basis === 'volume' && span.best < SMALL_G ? SMALL_TOLERANCE : 0;
  const tolerance = Math.max(TOLERANCE[basis], spoons, ROUNDED_G / Math.max(span.best, 0.1));
  return grams >= span.low * (1 - tolerance) && grams <= span.high * (1 + tolerance);
};

/** '1 tbsp (15 ml)' is one amount twice, whatever the two weigh. */
const sameVolume = (a: Read, b: Read): boolean =>
  a.ml !== null && b.ml !== null && Math.max(a.ml / b.ml, b.ml / a.ml) < 1.1;

function disagreementOf(
  chosen: Read,
  others: readonly Read[],
  settled: (weighed: Weighed) => Weighed[],
): Weight['disagreement'] {
  for (const other of others) {
    if (other.ofOther || sameVolume(chosen, other)) continue;
    const readings = settled(other.weighed);
    const alike = settled(chosen.weighed).some(({ grams }) =>
      readings.some((reading) => agrees(grams.best, reading)),
    );
    if (alike) continue;
    const stated = chosen.weighed.grams.best;
    const [{ grams } = other.weighed] = readings;
    const shown = (value: number): string => value.toFixed(value < 10 ? 1 : 0);
    const text = `the line's amounts differ: ${shown(stated)} g taken, the other reading gives ${shown(grams.best)} g`;
    return { stated, other: grams.best, text };
  }
  return null;
}

const isRough = (reading: Reading): number =>
  reading.some(({ amount }) => amount.approximate) ? 1 : 0;

function millilitres(reading: Reading, region: Region): number | null {
  const parts = reading.map(({ amount }) => {
    const ml = millilitresOf(amount.unit, region);
    return ml === null ? null : ml * amount.quantity;
  });
  return parts.includes(null) ? null : parts.reduce<number>((sum, ml) => sum + (ml ?? 0), 0);
}

/** A reading in grams; a size that no such piece has is of all of them. */
function likelyWeighed(
  reading: Reading,
  item: Item,
  food: Food | null,
  text: string,
  region: Region,
): Weighed | null {
  const weigh = (one: Reading): Weighed | null => weighReading(one, item, food, text, region);
  const likely = likelyMeant(reading, food, text, weigh);
  const other = likely && weigh(likely.reading);
  return other
    ? { ...other, assumptions: [...other.assumptions, likely.assumption] }
    : weigh(reading);
}

/** All readings of an item in grams, the most trusted first; the earlier one among equals. */
function weighedReadings(
  item: Item,
  food: Food | null,
  text: string,
  written: string,
  region: Region,
): Read[] {
  const read = readingsOf(item, text).flatMap((reading, order): Read[] => {
    if (order > 0 && isShape(reading, written)) return [];
    const weighed = likelyWeighed(reading, item, food, text, region);
    if (!weighed || !(weighed.grams.best > 0)) return [];
    return [
      {
        weighed: withGrain(weighed, food, text),
        order,
        rough: isRough(reading),
        ml: millilitres(reading, region),
        ofOther: order > 0 && isOfOther(reading, written),
      },
    ];
  });
  const sorted = read.sort(
    (a, b) =>
      Number(a.ofOther) - Number(b.ofOther) ||
      TRUST[b.weighed.basis] - TRUST[a.weighed.basis] ||
      a.rough - b.rough ||
      a.order - b.order,
  );
  return asUsed(finerFirst(likelierFirst(sorted)), food, written);
}

/** '3/4 cup (5.5 oz / 150 g)': of two masses that agree, the one nearer to what the cup holds is less rounded. */
function finerFirst(read: Read[]): Read[] {
  const [first] = read;
  const volume = read.find(({ weighed }) => weighed.basis === 'volume');
  if (first?.weighed.basis !== 'mass' || !volume) return read;
  const apart = ({ weighed }: Read): number =>
    Math.abs(weighed.grams.best - volume.weighed.grams.best);
  const finer = read.find(
    (other) =>
      other.weighed.basis === 'mass' &&
      !other.ofOther &&
      other.rough <= first.rough &&
      agrees(first.weighed.grams.best, other.weighed) &&
      apart(other) < apart(first),
  );
  return finer === undefined ? read : [finer, ...read.filter((other) => other !== finer)];
}

/** '2½ cups (1¼ ounces/320 grams)': of two masses that differ, the one the volume speaks for. */
function likelierFirst(read: Read[]): Read[] {
  const [first] = read;
  if (first?.weighed.basis !== 'mass') return read;
  const rival = read.find(
    (other) => other.weighed.basis === 'mass' && !agrees(first.weighed.grams.best, other.weighed),
  );
  const volume = read.find(({ weighed }) => weighed.basis === 'volume');
  if (!rival || !volume || agrees(first.weighed.grams.best, volume.weighed)) return read;
  if (!agrees(rival.weighed.grams.best, volume.weighed)) return read;
  return [rival, ...read.filter((other) => other !== rival)];
}

/** A mass as stated and as it will be counted, to be compared with a cup or a count of the food. */
function settledWays(
  weighed: Weighed,
  item: Item,
  line: Line,
  text: string,
  food: Food | null,
): Weighed[] {
  if (weighed.basis !== 'mass') return [weighed];
  const solid = drained(weighed.grams, item, text, food);
  if (solid) return [{ ...weighed, grams: solid.grams }];
  const kept = withoutRefuse(weighed.grams, item, line, food);
  if (!kept) return [weighed];
  // Home trimming or the published refuse: a head's usual weight may be of either.
  const most = { ...kept.grams, best: kept.grams.low };
  return [weighed, { ...weighed, grams: kept.grams }, { ...weighed, grams: most }];
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
    weighed.basis === 'mass' && !weighed.assumptions.includes(AS_USED)
      ? (drained(weighed.grams, item, text, food) ??
        withoutRefuse(weighed.grams, item, line, food, options.recipe.title))
      : null;
  const { low, best, high } = bought?.grams ?? weighed.grams;
  const eaten = eatenShare(item, line, food, best, options.recipe, options.region);
  const eatenAndBought = [
    lostBlankNote(item, line),
    bought?.assumption ?? null,
    eaten.assumption,
  ].filter((text) => text !== null);
  return {
    grams: massInterval(low, best, high),
    eaten: eaten.share,
    basis: weighed.basis,
    assumptions: [...weighed.assumptions, ...eatenAndBought],
    disagreement,
  };
}

/**
 * Grams (edible part) of an item and the share eaten, 0..1. A stated mass wins over a volume, a
 * volume over a count; readings that disagree are both reported. Without a weighable amount salt, pepper, frying
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
  const [first, ...others] = weighedReadings(item, food, text, plain(line.text), options.region);
  if (first) {
    const disagreement = disagreementOf(first, others, (weighed) =>
      settledWays(weighed, item, line, text, food),
    );
    const { servings = null } = options.recipe;
    const isCounted = first.order === 0 && first.weighed.basis === 'count';
    const grams = isCounted ? oneEach(first.weighed.grams, item, food, servings) : null;
    const weighed = grams === null ? first.weighed : { ...first.weighed, grams };
    return finished(weighed, disagreement, item, line, food, options);
  }
  const inCups = inLostCups(item, food, text, options.recipe, options.region);
  if (inCups) return finished(inCups, null, item, line, food, options);
  const assumed = assumeUnstated(item, line, food, options.recipe, options.region);
  if (!assumed) return null;
  const weighed: Weighed = {
    grams: assumed.grams,
    basis: 'assumed',
    assumptions: [assumed.assumption],
  };
  return finished(weighed, null, item, line, food, options);
}
