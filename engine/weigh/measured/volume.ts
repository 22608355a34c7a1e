/** Volume -> grams: by the food's own measures, else by the density of foods of its kind. */

import { massInterval, scaleMass } from '../../interval.ts';
import type { Food, Interval, Item } from '../../model.ts';
import { millilitresOf, type Region, US_CUP_ML } from '../../units.ts';
import densities from '../data/density.json' with { type: 'json' };
import scatters from '../data/volume-scatter.json' with { type: 'json' };
import { hasWord, nameOf } from '../line-words.ts';
import { chooseVolume, type VolumeMeasure } from './household-measures.ts';

export interface Weighed {
  grams: Interval;
  basis: 'mass' | 'volume' | 'count' | 'assumed';
  assumptions: string[];
}

const SCATTER: Readonly<Record<string, { cup: number[] }>> = scatters;

/** Half-widths of a filled cup or spoon. Common practice, no source. */
const LIQUID_SCATTER = 0.05;
const SOLID_SCATTER = 0.12;

const rounded = (grams: number): string => (grams >= 10 ? grams.toFixed(0) : grams.toFixed(1));

const CUP_NAME: Readonly<Record<Region, string>> = {
  us: 'US',
  uk: 'metric',
  eu: 'metric',
  au: 'Australian',
};

/** Density of the words' kind, g/ml, or of foods at large; `known` false for the latter. */
function densityByKind(text: string): Interval & { liquid: boolean; known: boolean } {
  const words = text
    .replace(/[^a-z ]+/g, ' ')
    .split(' ')
    .filter((word) => word !== '');
  // The head noun comes last, so the kinds are asked from the last word back.
  for (let at = words.length - 1; at >= 0; at -= 1) {
    const word = words[at] ?? '';
    const row = densities.find((kind) => hasWord(word, kind.words));
    if (row)
      return { low: row.low, best: row.best, high: row.high, liquid: row.liquid, known: true };
  }
  return { low: 0.25, best: 0.6, high: 1.1, liquid: false, known: false };
}

/** Does the food pour or spoon level, so that a cup of it is always the same? */
function isLiquid(item: Item, food: Food | null): boolean {
  const { liquid, known } = densityByKind(
    food ? nameOf({ ...item, name: '' }, food) : nameOf(item, null),
  );
  return known && liquid;
}

/** Ends for brown sugar and flour, whose cups differ by how they are filled. */
function filledSpan(food: Food, chosen: VolumeMeasure, text: string): Interval | null {
  const row = Object.hasOwn(SCATTER, food.id) ? SCATTER[food.id] : undefined;
  const [low = 0, best = 0, high = 0] = row?.cup ?? [];
  // A decilitre is filled by another habit, and has a measure of its own.
  if (row === undefined || chosen.unit === 'dl') return null;
  if (/\b(?:lightly|loosely|softly) packed\b/.test(text)) return massInterval(low, best, high);
  if (/\bpacked\b/.test(text) && food.id === 'brown-sugar')
    return massInterval(high * 0.95, high, high * 1.05);
  if (/\bsifted\b/.test(text)) return massInterval(low * 0.95, (low + best) / 2, best);
  if (chosen.form.length > 0) return null;
  return massInterval(low, best, high);
}

function withOwnMeasure(
  ml: number,
  unit: string,
  food: Food,
  chosen: VolumeMeasure,
  text: string,
  region: Region,
  liquid: boolean,
): Weighed {
  const span = filledSpan(food, chosen, text);
  const scatter = liquid ? LIQUID_SCATTER : SOLID_SCATTER;
  const grams = span
    ? scaleMass(span, ml / US_CUP_ML)
    : massInterval(
        ml * chosen.density * (1 - scatter),
        ml * chosen.density,
        ml * chosen.density * (1 + scatter),
      );
  const perUnit =
    (millilitresOf(unit, region) ?? 1) * (span ? span.best / US_CUP_ML : chosen.density);
  const form = chosen.form.length > 0 ? ` (${chosen.form.join(' ')})` : '';
  const metric = /^(ml|cl|dl|l)$/.test(unit);
  const which = unit === 'cup' ? `${CUP_NAME[region]} cup` : unit;
  return {
    grams,
    basis: 'volume',
    assumptions: [
      metric
        ? `${(grams.best / ml).toFixed(2)} g a millilitre${form}`
        : `${which} of ${rounded(perUnit)} g${form}`,
    ],
  };
}

/**
 * Grams of `ml` millilitres, stated in `unit`. `text` holds the line's words, which choose the
 * form (packed, chopped, grated). Without a measure of the food's own the kind's density is assumed.
 */
export function weighVolume(
  ml: number,
  unit: string,
  item: Item,
  food: Food | null,
  text: string,
  region: Region,
): Weighed {
  const chosen = food ? chooseVolume(food, unit, text) : null;
  if (food && chosen) {
    const liquid = isLiquid(item, food);
    return withOwnMeasure(ml, unit, food, chosen, text, region, liquid);
  }
  const kind = densityByKind(food ? nameOf({ ...item, name: '' }, food) : nameOf(item, null));
  const share = kind.best.toFixed(2);
  return {
    grams: massInterval(ml * kind.low, ml * kind.best, ml * kind.high),
    basis: 'volume',
    assumptions: [
      kind.known
        ? `no cup weight known; ${share} g a millilitre assumed, as for foods of its kind`
        : `no cup weight known; ${share} g a millilitre assumed, which is a rough guess`,
    ],
  };
}
