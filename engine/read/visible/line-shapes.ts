/** Shapes of visible lines: does one start with an amount, is it a sentence, is it only an amount. */
import { LETTER, LETTERS, WORD } from '../../letters.ts';

const NUMBER = String.raw`(?:\d+(?:[.,/]\d+)?(?:\s?[¼-¾⅐-⅞])?|[¼-¾⅐-⅞])`;
const ABOUT = String.raw`(?:(?:ca\.?|c\.|about|approx\.?|approximately|etwa|env\.?|environ|circa|cirka|~|≈|ongeveer)\s*)?`;
const UNITS =
  'g|gr|gram|grams|gramm|grammes?|kg|mg|ml|cl|dl|l|liter|litres?|liters?|oz|ounces?|lbs?|pounds?|cups?|c|tbsps?|tablespoons?|tbs|tsps?|teaspoons?|t|pinch(?:es)?|cloves?|cans?|tins?|sticks?|slices?|pieces?|stk|stück|st|el|tl|eetlepels?|theelepels?|esslöffel|teelöffel|prisen?|bund|zehen?|c\\.? ?à ?(?:s|c)\\.?|cuill(?:ère)?s?|pincées?|gousses?|cucharad(?:it)?as?|tazas?|dientes?|colher(?:es)?|xícaras?|dentes?|cucchiai(?:o|ni|no)?|spicchi(?:o)?|msk|tsk|krm|spsk|ts|ss|fed|stk|pkt|pck|ek|tk|mk|evőkanál|kiskanál|teáskanál|gerezd|db|dkg|csomag|łyż(?:ka|ki|ek|eczka|eczki|eczek)|szklank[ai]|sztuk[ai]|lžíc[eí]?|lžič(?:ka|ky|ek)|ks|polievkov\\S*|lyžic[ae]|lyžič\\S*|hrnek|šálek|žlic[ae]|žličic[ae]|κ\\.?σ\\.?|κ\\.?γ\\.?|κιλ\\S*|γρ\\.?|φλ\\S*|г|гр|кг|мл|л|шт|ст\\.? ?л\\.?|ч\\.? ?л\\.?|стакан\\S*|adet|su bardağı|yemek kaşığı|çay kaşığı|tatlı kaşığı|paket|克|个|個|本|枚|勺|杯|大匙|小匙|毫升|rkl|kpl';

const STARTS = new RegExp(
  `^${ABOUT}(?:${NUMBER}|(?:an?|one|two|three|half|ein[e]?|halbe[rs]?|een|half|une?|demi|una?|media|medio|meia|um|uma|mezz[oa]|en|ett|et|halv|fél|pół|několik|biraz)\\s(?=${LETTER}))`,
  'i',
);
const MEASURED = new RegExp(
  `^${ABOUT}${NUMBER}(?:\\s?(?:-|–|to|bis|à|a|tot)\\s?${NUMBER})?\\s?(?:(?:heaped|level|large|small|gestr\\.|geh\\.|schwach|rounded)\\s)?(?:${UNITS})(?!${WORD})`,
  'i',
);
const ENDS = new RegExp(
  `(?:[${LETTERS})][\\s:：.…–—-]+|[\\u3040-\\u30ff\\u4e00-\\u9fff])${ABOUT}${NUMBER}\\s?(?:${LETTER}{1,12}\\.?)?\\s*$|(?:大さじ|小さじ)[\\d/½]+`,
  'i',
);
const ENDS_MEASURED = new RegExp(
  `${LETTER}[)\\s:：.…–—-]*${ABOUT}${NUMBER}\\s?(?:${UNITS})\\.?\\s*$|(?:大さじ|小さじ)[\\d/½]+`,
  'i',
);
/** Times, energy, counts of visitors: amounts, but not of food. */
const OTHER_AMOUNT =
  /(?:\d\s?(?:min(?:ut\S*)?|hours?|hrs?|h|std\S*|uur|kcal|kj|cal(?:ories)?|%|votes?|comments?|views?|likes?|reviews?|shares?|px)\.?\s*$)|^(?:(?:serving|portion) size|calories|kcal|energy|energie|protein|proteins|eiweiß|total fat|saturated fat|fat|cholesterol|sodium|carbohydrates?|total carbohydrate|fiber|fibre|kohlenhydrate|fett|step|page|chapter|part|level|version)[\s:]+[\d<]/i;
const ONLY = new RegExp(
  `^${ABOUT}${NUMBER}(?:\\s?(?:-|–|to|x|×)?\\s?${NUMBER})?\\s?(?:(?:${UNITS}|large|medium|small)\\.?)?$`,
  'i',
);
const UNIT_ONLY = new RegExp(`^(?:${UNITS})\\.?$`, 'i');

/** The line starts with an amount, in figures or as a word ('a', 'half'). */
export function startsWithAmount(line: string): boolean {
  return STARTS.test(line) && !/^\d{1,2}\s?[.):]\s/.test(line) && !/^\d{4}$/.test(line);
}

/** The line starts or ends with a figure and a kitchen unit. */
export function isMeasured(line: string): boolean {
  if (line.length > 160) return false;
  // A row of many figures ('A 4.5 l 900 W 8 kg') is a table of something else.
  return (
    MEASURED.test(line) || (ENDS_MEASURED.test(line) && (line.match(/\d+/g)?.length ?? 0) <= 3)
  );
}

/** The words of a line without figures and units, to tell the same food in other measures. */
export function foodWords(line: string): string {
  return (line.toLowerCase().match(/\p{L}+/gu) ?? []).filter((word) => !isOnlyUnit(word)).join(' ');
}

/** The line starts or ends with an amount and is as short as an ingredient line. */
export function looksLikeIngredient(line: string): boolean {
  if (line.length > 160 || OTHER_AMOUNT.test(line)) return false;
  if (isSentence(line) && !startsWithFigure(line)) return false;
  return startsWithAmount(line) || ENDS.test(line);
}

const LETTER_FIRST = new RegExp(`^(?!(?:ca|about|approx|etwa|env|circa|cirka)\\b)${LETTER}`, 'i');

/** The line starts with a figure that is no list number. */
export function startsWithFigure(line: string): boolean {
  return startsWithAmount(line) && !LETTER_FIRST.test(line);
}

/** The line is nothing but an amount: a cell of a row. */
export function isOnlyAmount(line: string): boolean {
  return line.length <= 24 && ONLY.test(line);
}

const SHORT_AMOUNT = new RegExp(
  `^${ABOUT}${NUMBER}(?:\\s?(?:-|–|to|x|×)\\s?${NUMBER})?(?:\\s?${LETTER}[${LETTERS}.]{0,11}){0,2}$`,
  'i',
);

/** As short as a cell that holds an amount, its unit known or not: '4 stuks', '2 κ.σ.', '3'. */
export function isShortAmount(line: string): boolean {
  return line.length <= 16 && SHORT_AMOUNT.test(line) && !OTHER_AMOUNT.test(line);
}

/** The line begins with a unit, as what is left of one whose amount stands elsewhere. */
export function startsWithUnit(line: string): boolean {
  return isOnlyUnit(line.split(' ')[0] ?? '');
}

/** The line is nothing but a unit. */
export function isOnlyUnit(line: string): boolean {
  return line.length <= 20 && UNIT_ONLY.test(line);
}

/** 'Step 3', '3.', 'Schritt 3 von 8': the number of a step, not the step. */
export function isLabel(text: string): boolean {
  return /^(?:\p{L}{1,12}\s*)?#?\d{1,2}\s*[.):]?(?:\s?(?:\/|von|of|av|de|van)\s?\d+)?$/iu.test(
    text,
  );
}

/** A sentence or more: long enough, or several words with a full stop. */
export function isSentence(line: string): boolean {
  if (line.length > 120) return true;
  return /[.!?。]["'’”)]?$/.test(line) && (line.split(' ').length >= 5 || /。/.test(line));
}
