/** A package label's printed figures as figures of 100 g, with the range that rounding leaves open. */
import { spanning } from '../../interval.ts';
import type { Food, Interval } from '../../model.ts';
import { euLabelInterval, type LabelKind, usLabelInterval } from './label-rounding.ts';
import type { PackageLabel, Printed } from './package-label.ts';

/** Per 100 g: grams, kcal, or mg for sodium; null where the label is silent. */
export interface LabelFigures {
  energyKcal: Interval;
  fatG: Interval;
  saturatedG: Interval | null;
  carbohydrateG: Interval;
  fiberG: Interval | null;
  sugarsG: Interval | null;
  polyolsG: Interval | null;
  alluloseG: Interval | null;
  proteinG: Interval;
  sodiumMg: Interval | null;
  netCarbsG: Interval;
}

/** Sodium is salt divided by 2.5, so 1 g salt is 400 mg sodium (Reg. (EU) 1169/2011 Annex I). */
const SODIUM_MG_PER_SALT_G = 400;

const NOTHING: Interval = { low: 0, best: 0, high: 0 };

/** Serving grams are whole, to 0.5 g from 2 to 5 g and to 0.1 g below: 21 CFR 101.9(b)(7), from memory. */
function servingRange(grams: number): Interval {
  const half = grams < 2 ? 0.05 : grams < 5 ? 0.25 : 0.5;
  return { low: grams - half, best: grams, high: grams + half };
}

const down = (value: number): number => Math.floor(value * 100 + 1e-6) / 100;
const near = (value: number): number => Math.round(value * 100) / 100;
const up = (value: number): number => Math.ceil(value * 100 - 1e-6) / 100;

/** Outward to hundredths, not below 0. */
const tidy = ({ low, best, high }: Interval): Interval => ({
  low: Math.max(0, down(low)),
  best: Math.max(0, near(best)),
  high: Math.max(0, up(high)),
});

const atMost = (value: Interval, most: number): Interval => ({
  low: Math.min(most, value.low),
  best: Math.min(most, value.best),
  high: Math.min(most, value.high),
});

/** The same figures with no part of 100 g above 100 g, which rounding of a small serving can give. */
export function withinHundred(figures: LabelFigures): LabelFigures {
  const part = (value: Interval): Interval => atMost(value, 100);
  const maybe = (value: Interval | null): Interval | null => value && part(value);
  return {
    ...figures,
    fatG: part(figures.fatG),
    saturatedG: maybe(figures.saturatedG),
    carbohydrateG: part(figures.carbohydrateG),
    fiberG: maybe(figures.fiberG),
    sugarsG: maybe(figures.sugarsG),
    polyolsG: maybe(figures.polyolsG),
    alluloseG: maybe(figures.alluloseG),
    proteinG: part(figures.proteinG),
    netCarbsG: part(figures.netCarbsG),
  };
}

/** Grams of a polyol or of allulose: a printed 0 says there is none, though up to half a gram may hide. */
const optional = (printed: Printed, range: Interval): Interval =>
  printed === 0 ? { ...range, best: 0 } : range;

interface PerDenominator {
  carbohydrate: Interval;
  fiber: Interval | null;
  polyols: Interval | null;
  allulose: Interval | null;
}

/**
 * Net carbs of what the label counts by. The best value takes polyols as half counted unless they
 * are erythritol; the range takes them from not counted to counted in full. Allulose is not counted.
 * With fibre missing from a US label, half as much again as `likeFiber` bounds it from below.
 */
function netOf(
  label: PackageLabel,
  parts: PerDenominator,
  likeFiber: number,
  erythritol: boolean,
): Interval {
  const { carbohydrate } = parts;
  const polyols = parts.polyols ?? NOTHING;
  const allulose = parts.allulose ?? NOTHING;
  const missing = { low: 0, best: 0, high: 1.5 * likeFiber };
  const fiber = label.form === 'us' ? (parts.fiber ?? missing) : NOTHING;
  const free = erythritol ? 1 : 0.5;
  return {
    low: carbohydrate.low - fiber.high - polyols.high - allulose.high,
    best: carbohydrate.best - fiber.best - free * polyols.best - allulose.best,
    high: carbohydrate.high - fiber.low - (erythritol ? polyols.low : 0) - allulose.low,
  };
}

/**
 * Figures of 100 g. US: the printed value's interval by 21 CFR 101.9(c), divided by the serving's own
 * interval. EU: the printed value's interval by the Commission's rounding guidance (December 2012).
 * Not yet held to 100 g. Null when a printed figure cannot be read. `like` is the built-in food the package stands in for.
 */
export function labelFigures(label: PackageLabel, like: Food | null): LabelFigures | null {
  const us = label.form === 'us';
  const serving = us ? servingRange(label.servingG ?? 0) : { low: 100, best: 100, high: 100 };
  if (serving.low <= 0) return null;
  const range = (printed: Printed, kind: LabelKind): Interval | null =>
    us ? usLabelInterval(printed, kind) : euLabelInterval(printed);
  const maybe = (printed: Printed | null, kind: LabelKind): Interval | null =>
    printed === null ? null : range(printed, kind);
  const per100 = (value: Interval): Interval =>
    tidy({
      low: (Math.max(0, value.low) * 100) / serving.high,
      best: (value.best * 100) / serving.best,
      high: (value.high * 100) / serving.low,
    });
  const grams = (value: Interval | null): Interval | null => value && per100(value);
  const energy = us ? range(label.energyKcal, 'energy') : wholeKcal(label.energyKcal);
  const fat = range(label.fatG, 'fat');
  const carbohydrate = range(label.carbohydrateG, 'macro');
  const protein = range(label.proteinG, 'macro');
  if (!energy || !fat || !carbohydrate || !protein) return null;
  const fiber = maybe(label.fiberG, 'macro');
  const polyols =
    label.polyolsG === null
      ? null
      : optional(label.polyolsG, maybe(label.polyolsG, 'macro') ?? NOTHING);
  const allulose =
    label.alluloseG === null
      ? null
      : optional(label.alluloseG, maybe(label.alluloseG, 'macro') ?? NOTHING);
  const likeFiber = ((like?.per100g.fiberG ?? 0) * serving.best) / 100;
  const erythritol = Object.keys(like?.per100g.polyolsG ?? {}).every(
    (kind) => kind === 'erythritol',
  );
  const onlyErythritol =
    like !== null && erythritol && like.per100g.polyolsG?.erythritol !== undefined;
  const net = netOf(label, { carbohydrate, fiber, polyols, allulose }, likeFiber, onlyErythritol);
  return {
    energyKcal: per100(energy),
    fatG: per100(fat),
    saturatedG: grams(maybe(label.saturatedG, 'fat')),
    carbohydrateG: per100(carbohydrate),
    fiberG: grams(fiber),
    sugarsG: grams(maybe(label.sugarsG, 'macro')),
    polyolsG: grams(polyols),
    alluloseG: grams(allulose),
    proteinG: per100(protein),
    sodiumMg: sodium(label, per100),
    netCarbsG: per100(spanning(net.low, net.best, net.high)),
  };
}

/** EU energy is printed to 1 kcal (Commission guidance, December 2012). */
function wholeKcal(printed: Printed): Interval | null {
  const value = euLabelInterval(printed);
  if (value === null || typeof printed === 'string' || printed === 0) return value;
  return { low: Math.max(0, printed - 0.5), best: printed, high: printed + 0.5 };
}

function sodium(label: PackageLabel, per100: (value: Interval) => Interval): Interval | null {
  if (label.form === 'us') {
    const range = label.sodiumMg === null ? null : usLabelInterval(label.sodiumMg, 'sodium');
    return range && per100(range);
  }
  if (label.saltG === null) return null;
  const salt = saltRange(label.saltG);
  return (
    salt &&
    per100({
      low: salt.low * SODIUM_MG_PER_SALT_G,
      best: salt.best * SODIUM_MG_PER_SALT_G,
      high: salt.high * SODIUM_MG_PER_SALT_G,
    })
  );
}

/** Salt is printed to 0.1 g from 1 g and to 0.01 g below; up to 0.0125 g may be 0 (guidance of December 2012, from memory). */
function saltRange(printed: Printed): Interval | null {
  if (typeof printed === 'string') return euLabelInterval(printed);
  if (printed === 0) return { low: 0, best: 0, high: 0.0125 };
  const half = printed >= 1 ? 0.05 : 0.005;
  return { low: Math.max(0, printed - half), best: printed, high: printed + half };
}
