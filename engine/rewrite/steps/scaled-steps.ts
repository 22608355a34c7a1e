/** A method for another number of servings: its amounts times a factor. */
import { numberValue } from '../../numerals.ts';
import { asScalesRead, fractionText } from '../lines/written-amounts.ts';

export interface ScaledStep {
  text: string;
  /** What does not grow with the amounts, in English; null when the step says nothing of it. */
  note: string | null;
}

const NUMBER = '\\d+\\s?[¼-¾⅐-⅞]|\\d+\\s+\\d/\\d|\\d+/\\d|\\d+(?:[.,]\\d+)?|[¼-¾⅐-⅞]';
/** Weighed and poured units, then spoons and cups, in the languages of recipes. */
const WEIGHED =
  'g|gr|grams?|gramm|grammes?|gramos|grammi|gram|kg|ml|cl|dl|l|litres?|liters?|oz|ounces?|lbs?|pounds?';
const SPOONED =
  'cups?|tbsps?|tablespoons?|tsps?|teaspoons?|EL|TL|el|tl|msk|tsk|spsk|ss|ts|c\\. à soupe|c\\. à café|cucharadas?|cucharaditas?|cucchiai(?:o|ni|no)?|colheres? de (?:sopa|chá)|c\\. de sopa|c\\. de chá';
const EGGS = '(?:large |medium |small )?(?:eggs?|egg whites?|egg yolks?)';
/** What stands behind the size of a thing, not behind an amount of food. */
const VESSEL =
  /^[ -](?:\w+[ -]){0,2}(?:tins?|pans?|dish(?:es)?|moulds?|molds?|bowls?|jars?|pots?|saucepans?|casseroles?|ramekins?|skillets?|scoops?|form|springform)\b/i;
const AMOUNT = new RegExp(
  `(?<![\\p{L}\\d.,/°-])(?<low>${NUMBER})(?:(?<to>\\s?(?:-|–|to)\\s?)(?<high>${NUMBER}))?(?<gap>[\\s-]?)(?<unit>${WEIGHED}|${SPOONED}|${EGGS})(?![\\p{L}\\d])`,
  'gu',
);
const IS_WEIGHED = new RegExp(`^(?:${WEIGHED})$`);

const PAN =
  /\d\s?(?:-|x|×)?\s?\d*\s?(?:cm|inch(?:es)?|in\.|["”])|\b(?:tin|pan|baking dish|baking sheet)\b/i;
const TIME = /\b\d+\s*(?:-|–|to)?\s*\d*\s*(?:min(?:ute)?s?|hours?)\b/i;
const HEATS = /\b(?:bake|roast|cook|fry|simmer|boil)\b/i;
/** A change smaller than this, either way, needs no other pan or time: own choice. */
const SMALL = 1.2;

/** A number times a factor, as kitchens write it: grams as scales read, spoons in halves, thirds and quarters. */
function times(number: string, factor: number, unit: string): string {
  const value = (numberValue(number) ?? Number.NaN) * factor;
  if (Number.isNaN(value)) return number;
  if (IS_WEIGHED.test(unit)) {
    const text = String(asScalesRead(value));
    return number.includes(',') ? text.replace('.', ',') : text;
  }
  const near = Math.round(value * 12) / 12;
  return fractionText(near) === '0' ? '¼' : fractionText(near);
}

function scaledText(text: string, factor: number): string {
  return text.replace(AMOUNT, (...found) => {
    const whole = found[0] as string;
    const groups = found.at(-1) as Record<'low' | 'to' | 'high' | 'gap' | 'unit', string>;
    const at = found.at(-3) as number;
    if (VESSEL.test(text.slice(at + whole.length))) return whole;
    const { low, to = '', high, gap, unit } = groups;
    const end = high === undefined ? '' : `${to}${times(high, factor, unit)}`;
    return `${times(low, factor, unit)}${end}${gap}${unit}`;
  });
}

function noteOf(text: string, factor: number): string | null {
  if (factor < SMALL && factor > 1 / SMALL) return null;
  const notes = [
    ...(PAN.test(text) ? ['The pan is that of the recipe as written.'] : []),
    ...(TIME.test(text) && HEATS.test(text)
      ? ['The time is that of the recipe as written: go by the signs.']
      : []),
  ];
  return notes.length === 0 ? null : notes.join(' ');
}

/**
 * The texts of a method times a factor (servings wanted over servings had). Masses, volumes, spoons and
 * eggs are scaled; temperatures, times and sizes of pans stay, and a note says so where they matter. A
 * factor that is not above 0 counts as 1.
 */
export function scaledSteps(texts: readonly string[], factor: number): ScaledStep[] {
  const by = Number.isFinite(factor) && factor > 0 ? factor : 1;
  if (by === 1) return texts.map((text) => ({ text, note: null }));
  return texts.map((text) => ({ text: scaledText(text, by), note: noteOf(text, by) }));
}
