/** One part of a reading ('2 (14 oz) cans', '1 cup', '3') -> grams. */

import { massAround, massInterval, scaleMass } from '../interval.ts';
import type { Amount, Food, Interval, Item } from '../model.ts';
import { byEyeMillilitres, CM_PER_INCH, gramsOf, millilitresOf, type Region } from '../units.ts';
import { weighCount } from './measured/count.ts';
import { sizeOf } from './measured/household-measures.ts';
import { asThickAs } from './measured/slice-thickness.ts';
import { weighTub } from './measured/tub-as-measure.ts';
import { type Weighed, weighVolume } from './measured/volume.ts';
import { type Part, spanOf } from './readings.ts';

/** Half-width of a weight, and what 'about' adds to any amount. Common practice, no source. */
const MASS_SCATTER = 0.02;
const ROUGHLY = 0.05;
const BY_EYE = 0.5;

/** Salt by the pinch: 0.3 g; by the dash: 0.4 g (USDA SR 173468, dash 0.4 g). */
const SALT_BY_EYE: Readonly<Record<string, number>> = { pinch: 0.3, dash: 0.4 };

/** A heap stands on a spoon as high as the bowl is deep, on a cup it is a small cap. */
const HEAPED_CUP: readonly [RegExp, number, number] = [/\bheap(?:ed|ing)\b/, 1.15, 0.1];
/** Filling beyond or short of level: [words, factor, half-width]. Common practice, no source. */
const FILLS: readonly (readonly [RegExp, number, number])[] = [
  [
    /\bheap(ed|ing)\b|\b(?:gehauft|geh\b|bombee|colmad|colm[oiae]\b|chei[ao]|opgehoopt|volle\b|ragad|toppe[td])/,
    1.8,
    0.3,
  ],
  [/\brounded\b/, 1.3, 0.15],
  [/\b(generous|good|overflowing)\b/, 1.1, 0.1],
  [/\b(scant|barely)\b/, 0.92, 0.06],
];

function filled(weighed: Weighed, amount: Amount, text: string): Weighed {
  if (!amount.approximate) return weighed;
  const fills = amount.unit === 'cup' ? [HEAPED_CUP, ...FILLS] : FILLS;
  const fill = weighed.basis === 'volume' ? fills.find(([words]) => words.test(text)) : undefined;
  if (!fill) {
    const { low, best, high } = weighed.grams;
    return { ...weighed, grams: massInterval(low * (1 - ROUGHLY), best, high * (1 + ROUGHLY)) };
  }
  const [words, factor, scatter] = fill;
  const { low, best, high } = weighed.grams;
  return {
    ...weighed,
    grams: massInterval(low * factor * (1 - scatter), best * factor, high * factor * (1 + scatter)),
    assumptions: [
      ...weighed.assumptions,
      `${words.exec(text)?.[0] ?? 'rough'}: ${factor} of a level measure assumed`,
    ],
  };
}

function byEye(
  unit: string,
  ml: number,
  item: Item,
  food: Food | null,
  text: string,
  region: Region,
): Weighed {
  const salt = SALT_BY_EYE[unit];
  if (salt !== undefined && food && /\bsalt\b/.test(food.name)) {
    return {
      grams: massAround(salt, BY_EYE),
      basis: 'volume',
      assumptions: [`${unit} of salt taken as ${salt} g`],
    };
  }
  const { grams } = weighVolume(ml, unit, item, food, text, region);
  return {
    grams: massAround(grams.best, BY_EYE),
    basis: 'volume',
    assumptions: [`${unit} taken as ${ml} ml, give or take half`],
  };
}

/** Glasses of wine as British bars pour them, ml; 125 and 175 and multiples by law. From memory. */
const GLASSES: Readonly<Record<string, number>> = { small: 125, medium: 175, large: 250 };

const glassOf = (item: Item): number | null =>
  GLASSES[sizeOf(item.size) ?? ''] ?? byEyeMillilitres('glass');

/** Grams of one unit; null when nothing is known of it. */
function weighUnit(
  unit: string | null,
  item: Item,
  food: Food | null,
  text: string,
  region: Region,
): Weighed | null {
  const mass = gramsOf(unit);
  if (mass !== null)
    return { grams: massAround(mass, MASS_SCATTER), basis: 'mass', assumptions: [] };
  const ml = millilitresOf(unit, region);
  if (ml !== null && unit !== null) return weighVolume(ml, unit, item, food, text, region);
  const own = weighOwn(unit, item, food, text);
  if (own) return own;
  const eye = unit === 'glass' ? glassOf(item) : byEyeMillilitres(unit);
  if (eye !== null && unit !== null) return byEye(unit, eye, item, food, text, region);
  if (unit === 'cm') {
    return weighCount(1 / CM_PER_INCH, 'inch', item, food, text);
  }
  return weighTub(unit, item, food, text, region) ?? weighCount(1, unit, item, food, text);
}

/** A measure by eye the food itself has ('pinch' of saffron). */
function weighOwn(
  unit: string | null,
  item: Item,
  food: Food | null,
  text: string,
): Weighed | null {
  if (unit === null || byEyeMillilitres(unit) === null) return null;
  if (!food?.measures.some((measure) => measure.unit === unit)) return null;
  const own = weighCount(1, unit, item, food, text);
  return own && { ...own, grams: massAround(own.grams.best, BY_EYE) };
}

const squeezed = (name: string): string | null =>
  /^(?:good |small |big )?squeeze\b/i.test(name) ? 'squeeze' : null;

const byAmount = (one: Interval, amount: Amount): Interval => {
  const { low, best, high } = spanOf(amount);
  return massInterval(one.low * low, one.best * best, one.high * high);
};

const LENGTH: ReadonlySet<string> = new Set(['inch', 'cm', 'mm', 'ft']);
const ROOT_PIECES: ReadonlySet<string> = new Set(['piece', 'knob', 'chunk', 'nub', 'finger']);

/** A length sizes a root or a stick by its inch; on a tortilla or a spoonful it is only a shape. */
function sizesOne(
  size: Amount,
  amount: Amount,
  item: Item,
  food: Food | null,
  text: string,
): boolean {
  if (size.unit === null) return false;
  if (!LENGTH.has(size.unit)) return true;
  if (amount.unit !== null && !ROOT_PIECES.has(amount.unit)) return false;
  return size.unit !== 'mm' && knowsInch(item, food, text);
}

const knowsInch = (item: Item, food: Food | null, text: string): boolean =>
  weighCount(1, 'inch', item, food, text) !== null;

/** Flour tortillas by diameter, inches: USDA SR 175037. */
const DIAMETERS: Readonly<Record<string, readonly (readonly [number, number])[]>> = {
  'flour-tortilla': [
    [6, 30],
    [8, 49],
    [10, 72],
    [12, 117],
  ],
};

/** Weight of a round of a stated diameter, where the table knows it; the nearest diameter counts. */
function byDiameter(size: Amount, food: Food | null): Weighed | null {
  const rows = food && Object.hasOwn(DIAMETERS, food.id) ? (DIAMETERS[food.id] ?? []) : [];
  if (rows.length === 0 || (size.unit !== 'inch' && size.unit !== 'cm')) return null;
  const inches = spanOf(size).best / (size.unit === 'cm' ? CM_PER_INCH : 1);
  const apart = ([inch]: readonly [number, number]): number => Math.abs(inch - inches);
  const nearest = rows.reduce((best, row) => (apart(row) < apart(best) ? row : best));
  return {
    grams: massAround(nearest[1], 0.15),
    basis: 'count',
    assumptions: [`one of ${nearest[0]} inches taken as ${nearest[1]} g`],
  };
}

/**
 * Grams of one part. A stated size of the unit wins over what the unit usually weighs; a range is
 * its middle, with the ends as bounds.
 */
function weighPart(
  part: Part,
  item: Item,
  food: Food | null,
  text: string,
  region: Region,
): Weighed | null {
  const { amount, size } = part;
  const round = size && (amount.unit === null || amount.unit === 'piece') && byDiameter(size, food);
  if (round) return { ...round, grams: byAmount(round.grams, amount) };
  if (size && sizesOne(size, amount, item, food, text)) {
    const one = weighUnit(size.unit, item, food, text, region);
    if (one) {
      const sized = filled({ ...one, grams: byAmount(one.grams, size) }, size, text);
      return { ...sized, grams: byAmount(sized.grams, amount) };
    }
  }
  const one = weighUnit(amount.unit ?? squeezed(item.name), item, food, text, region);
  const sliced = one && asThickAs(one, amount, size, food, text);
  return sliced && filled({ ...sliced, grams: byAmount(sliced.grams, amount) }, amount, text);
}

const withNote = (weighed: Weighed, note: string): Weighed => ({
  ...weighed,
  assumptions: [...weighed.assumptions, note],
});

const LEFT_OUT = 'a further amount on the line could not be weighed and is left out';

/** The sum of a reading's parts; null when its first part cannot be weighed. */
export function weighReading(
  reading: readonly Part[],
  item: Item,
  food: Food | null,
  text: string,
  region: Region,
): Weighed | null {
  const [first, ...rest] = reading.map((part) => weighPart(part, item, food, text, region));
  if (!first) return null;
  const weighed = rest.filter((part) => part !== null);
  const sum = weighed.reduce(added, first);
  return weighed.length === rest.length ? sum : withNote(sum, LEFT_OUT);
}

function added(a: Weighed, b: Weighed): Weighed {
  const grams = {
    low: a.grams.low + b.grams.low,
    best: a.grams.best + b.grams.best,
    high: a.grams.high + b.grams.high,
  };
  const basis = a.basis === b.basis ? a.basis : a.basis === 'mass' ? b.basis : a.basis;
  return {
    grams: scaleMass(grams, 1),
    basis,
    assumptions: [...new Set([...a.assumptions, ...b.assumptions])],
  };
}
