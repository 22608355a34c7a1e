/** Slices of bread that are said to be thicker or thinner than those of a packet. */
import { hasTag } from '../../foods/tags.ts';
import { massInterval } from '../../interval.ts';
import type { Amount, Food } from '../../model.ts';
import { FRACTION_SIGNS, numberValue } from '../../numerals.ts';
import { CM_PER_INCH } from '../../units.ts';
import { spanOf } from '../readings.ts';
import type { Weighed } from './volume.ts';

/** Inches of a slice as bread is sold, which the measures are of. Common practice, no source. */
const USUAL_INCHES = 0.5;
/** No slice is thinner or thicker by more. Own choice. */
const LEAST = 0.4;
const MOST = 3;
/** Thick: common practice, no source. Thin: USDA SR 174924, 20 g against 25 g. */
const BY_WORD: readonly (readonly [RegExp, number])[] = [
  [/\bthick(?:ly|-cut|-sliced)?\b/, 1.5],
  [/\bthin(?:ly|-cut|-sliced)?\b/, 0.8],
];
const SCATTER = 0.15;

function inchesOf(size: Amount | null): number | null {
  if (size === null) return null;
  const { best } = spanOf(size);
  if (size.unit === 'inch') return best;
  if (size.unit === 'cm') return best / CM_PER_INCH;
  return size.unit === 'mm' ? best / (10 * CM_PER_INCH) : null;
}

/** '¼ inch thick', '2 cm dick', '1-inch-thick slices': said behind the food or in brackets. */
const SAID_THICK = new RegExp(
  `((?:\\d+\\s+)?\\d+\\s?[/⁄]\\s?\\d+|\\d*[${FRACTION_SIGNS}]|\\d+(?:[.,]\\d+)?)[ -]*(inch(?:es)?|in|cm|mm)\\b(?:\\s?/\\s?[\\d.,${FRACTION_SIGNS}]+\\s?(?:cm|mm|inch|in))?[ -]*(?:thick|dick|epais|slices)`,
);
const INCHES_IN: Readonly<Record<string, number>> = { c: 1 / CM_PER_INCH, m: 0.1 / CM_PER_INCH };

function inchesSaid(text: string): number | null {
  const [, number = '', unit = ''] = SAID_THICK.exec(text) ?? [];
  const value = numberValue(number.replace('⁄', '/'));
  return value === null ? null : value * (INCHES_IN[unit.charAt(0)] ?? 1);
}

function factorOf(size: Amount | null, text: string): number | null {
  const inches = inchesOf(size) ?? inchesSaid(text);
  if (inches !== null) return inches / USUAL_INCHES;
  return BY_WORD.find(([words]) => words.test(text))?.[1] ?? null;
}

/** The weight of the slices times what their thickness makes of it; unchanged for anything else. */
export function asThickAs(
  weighed: Weighed,
  amount: Amount,
  size: Amount | null,
  food: Food | null,
  text: string,
): Weighed {
  if (amount.unit !== 'slice' || food === null || !hasTag(food, 'bread-kind')) return weighed;
  const factor = factorOf(size, text);
  if (factor === null || factor === 1 || factor < LEAST || factor > MOST) return weighed;
  const { low, best, high } = weighed.grams;
  const times = factor.toFixed(1);
  return {
    ...weighed,
    grams: massInterval(low * factor * (1 - SCATTER), best * factor, high * factor * (1 + SCATTER)),
    assumptions: [...weighed.assumptions, `${times} times a usual slice, by its thickness`],
  };
}
