/** Grams and millilitres of units, by the measures in use where the recipe comes from. */
import definitions from './unit-sizes.json' with { type: 'json' };

export type Region = 'us' | 'uk' | 'eu' | 'au';

/** Centimetres of an inch; exact by definition (international inch, 1959). */
export const CM_PER_INCH = 2.54;

export const OUNCES_PER_POUND = 16;

const GRAMS: Readonly<Record<string, number>> = definitions.grams.sizes;
const METRIC: Readonly<Record<string, number>> = definitions.metricMillilitres.sizes;
const US: Readonly<Record<string, number>> = definitions.usMillilitres.sizes;

/** The cup of the food table's own measures, ml. */
export const US_CUP_ML = definitions.usMillilitres.sizes.cup;

/**
 * Imperial gallon 4546.09 ml; spoons metric. The cup sold and meant in Britain now is the metric one
 * (common practice, no source); half an imperial pint would be 284 ml.
 */
const UK: Readonly<Record<string, number>> = {
  tsp: 5,
  tbsp: 15,
  'fl oz': 28.41306,
  cup: 250,
  pint: 568.26125,
  quart: 1136.5225,
  gallon: 4546.09,
  shot: 25,
  gill: 142.06531,
};

/** Metric cup 250 ml (common practice in Europe, no source); a pint is half a litre. */
const EU: Readonly<Record<string, number>> = { ...UK, cup: 250, pint: 500, quart: 1000, shot: 40 };

/** Metric cup 250 ml, tablespoon 20 ml (Australian household measures, AS 1325). */
const AU: Readonly<Record<string, number>> = { ...UK, cup: 250, tbsp: 20, shot: 30 };

const VOLUMES: Readonly<Record<Region, Readonly<Record<string, number>>>> = {
  us: US,
  uk: UK,
  eu: EU,
  au: AU,
};

/** Amounts by eye, ml; half-width 50 %. A dash is 1/8 tsp, a pinch 1/16 tsp; common practice, no source. */
const BY_EYE: Readonly<Record<string, number>> = {
  pinch: 0.31,
  dash: 0.62,
  drop: 0.05,
  splash: 7.5,
  drizzle: 10,
  squeeze: 7.5,
  sprinkle: 1.2,
  grind: 0.15,
  glug: 15,
  dollop: 20,
  spoonful: 15,
  glass: 200,
  mug: 300,
};

const lookUp = (table: Readonly<Record<string, number>>, unit: string): number | null =>
  Object.hasOwn(table, unit) ? (table[unit] ?? null) : null;

/** Grams of one unit of mass, or null when it is none. */
export const gramsOf = (unit: string | null): number | null =>
  unit === null ? null : lookUp(GRAMS, unit);

/** Millilitres of one unit of volume in a region, or null when it is none. */
export const millilitresOf = (unit: string | null, region: Region): number | null =>
  unit === null ? null : (lookUp(METRIC, unit) ?? lookUp(VOLUMES[region], unit));

/** Millilitres of a measure taken by eye ('splash'), or null. */
export const byEyeMillilitres = (unit: string | null): number | null =>
  unit === null ? null : lookUp(BY_EYE, unit);
