/** Further amounts on a line that say nothing of how much there is: cuts, shapes, another food's. */
import type { Amount } from '../model.ts';
import { FRACTION_SIGNS, numberValue } from '../numerals.ts';
import { gramsOf, millilitresOf } from '../units.ts';
import { COUNT_OR_COUNT, type Reading } from './readings.ts';

const LENGTHS: ReadonlySet<string> = new Set(['inch', 'cm', 'mm', 'ft']);
const CUT_INTO =
  /\b(?:cut|sliced?|divided|chopped|broken|torn|halved|quartered|shaped|separated|split|formed|scooped)\b.{0,40}\binto\b/;
/** By eye, so that it never contradicts a measure. */
const VAGUE: ReadonlySet<string | null> = new Set(['handful', 'piece', 'batch', 'serving', 'inch']);

const isCount = ({ unit }: Amount): boolean =>
  gramsOf(unit) === null && millilitresOf(unit, 'us') === null;

const isLength = (amount: Amount | null): boolean =>
  amount?.unit !== null && amount?.unit !== undefined && LENGTHS.has(amount.unit);

/** '1-inch strips', 'cut into twelve squares', '(about 24 pieces)', '4 small or 2 large'. */
export function isShape(reading: Reading, text: string): boolean {
  const [first] = reading;
  if (!first) return true;
  if (isLength(first.amount) || isLength(first.size)) return true;
  if (!isCount(first.amount) || first.size !== null) return false;
  return VAGUE.has(first.amount.unit) || CUT_INTO.test(text) || COUNT_OR_COUNT.test(text);
}

const NUMBER = new RegExp(
  `(?:\\d+)?\\s*(?:[${FRACTION_SIGNS}]|\\d+\\/\\d+)|\\d+(?:[.,]\\d+)?`,
  'g',
);

const numbersIn = (text: string): number[] =>
  [...text.matchAll(NUMBER)].flatMap(([written]) => numberValue(written) ?? []);

/** 'Dates or ½ cup sugar', '..., or 2 (15-ounce) cans': what comes then is measured for itself. */
const OTHER_FOOD = new RegExp(
  `([a-z]{3,}|[,;)])\\s+or\\s+(?=[\\d${FRACTION_SIGNS}]|one\\b|two\\b|a\\s)`,
  'g',
);
/** '1 pound or 450 g': the same food in another measure. */
const UNIT_WORD =
  /^(?:cups?|pounds?|lbs|ounces?|grams?|tablespoons?|tbsps?|teaspoons?|tsps?|sticks?|pints?|quarts?|litres?|liters?|small|medium|large|packets?|packages?|sachets?|envelopes?|cans?|tins?|jars?|bags?|boxe?s?|cloves?|heads?|bunch|bunches|pieces?|slices?|stalks?|ears?|about)$/;

/** 'Or 3 (15-ounce) cans, drained': still the same food. */
const ONLY_CONTAINERS =
  /^[\d¼-¾⅐-⅞a-z\s(). /-]*\b(?:cans?|tins?|jars?|packages?|boxe?s?)\b\)?\s*(?:[,;)]|$)/;

function otherFoodAt(text: string): number | null {
  for (const found of text.matchAll(OTHER_FOOD)) {
    const tail = text.slice(found.index + found[0].length);
    if (!UNIT_WORD.test(found[1] ?? '') && !ONLY_CONTAINERS.test(tail)) return found.index;
  }
  return null;
}

/**
 * Do all amounts of the reading stand only behind an 'or' of the line? Then they may measure the
 * food offered instead. `text` is the line in lower case.
 */
export function isOfOther(reading: Reading, text: string): boolean {
  const at = otherFoodAt(text);
  if (at === null) return false;
  const before = numbersIn(text.slice(0, at));
  return reading.every(
    ({ amount }) => !before.some((value) => Math.abs(value - amount.quantity) < 0.02),
  );
}
