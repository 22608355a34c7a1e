/** Oven temperatures in the method's words, lowered for what browns fast. */

import { numberValue } from '../../numerals.ts';

/** Less heat in each scale: 10-15 °C (common practice, no source). */
const LESS = { C: 10, F: 25, gas: 1 };
/** What counts as an oven's temperature: below it is a kettle, a custard or a thermometer. */
const OVEN = { C: 130, F: 265 };

const DEGREES =
  /(\d{3})(?:(\s*(?:-|–|to|and|or)\s*)(\d{3}))?(\s*(?:°|º|˚|deg\.?|degrees?)?\s*)((?:celsius|centigrade|fahrenheit|C|F)\b|[℃℉])/gi;
const BARE = /(\d{3})((?:\s*[°º˚]|\s+degrees?\b)(?!\s*(?:[CF]\b|celsius|centigrade|fahrenheit)))/gi;
const GAS = /\b(gas(?:\s+mark)?\s+)(\d{1,2})\b/gi;
/** Fat and syrup have temperatures of their own. */
const NOT_OVEN =
  /(?<!\p{L})(oil|fry|frying|fryer|fat|lard|syrup|caramel|candy|thermometer|öl|fett|frittier\p{L}*|sirup|huile|friture|sirop|olie|frituur\p{L}*|stroop|aceite|freír|jarabe|olio|frigg\p{L}*|sciroppo)(?!\p{L})/iu;

const isCelsius = (scale: string | undefined): boolean => /^[c℃]/i.test(scale ?? '');

/** How far a Celsius figure may be from the Fahrenheit one that it repeats: kitchens round by up to this much. */
const SAME_C = 6;

/** Degrees F that a sentence states. */
const fahrenheitIn = (sentence: string): number[] =>
  [...sentence.matchAll(DEGREES)].flatMap(([, low, , high, , scale]) =>
    isCelsius(scale) ? [] : [low, high].flatMap((one) => (one === undefined ? [] : [Number(one)])),
  );

/** An oven's figure set lower; one in °C that repeats one in °F is what that has become. */
function less(number: string, celsius: boolean, fahrenheit: readonly number[] = []): string {
  const value = Number(number);
  const scale = celsius ? 'C' : 'F';
  if (value < OVEN[scale]) return number;
  const off = (f: number): number => Math.abs((f - 32) / 1.8 - value);
  const [same] = celsius
    ? fahrenheit.filter((f) => off(f) <= SAME_C).sort((a, b) => off(a) - off(b))
    : [];
  if (same === undefined || same < OVEN.F) return String(value - LESS[scale]);
  const degrees = (same - LESS.F - 32) / 1.8;
  const step = value % 5 === 0 ? 5 : 1;
  return String(Math.round(degrees / step) * step);
}

const lowerGas = (mark: string): string => {
  const value = Number(mark);
  if (value < 1) return mark;
  return value === 1 ? '½' : String(value - LESS.gas);
};

/** 'a 180°', '180 graden': Celsius where a language knows no other. */
const BARE_METRIC =
  /(\d{3})((?:\s*[°º˚]|\s+(?:grad(?:en|er|i|os)?|graus|degrés|celsius)\b)(?!\s*(?:[CF]\b|celsius|fahrenheit)))/giu;

function loweredSentence(sentence: string, metric: boolean): string {
  if (NOT_OVEN.test(sentence)) return sentence;
  const fahrenheit = fahrenheitIn(sentence);
  return sentence
    .replace(DEGREES, (...found) => {
      const [, low, to, high, gap, scale] = found as string[];
      const celsius = isCelsius(scale);
      const end = high === undefined ? '' : `${to}${less(high, celsius, fahrenheit)}`;
      return `${less(low ?? '', celsius, fahrenheit)}${end}${gap}${scale}`;
    })
    .replace(metric ? BARE_METRIC : BARE, (whole, number: string, rest: string) =>
      metric
        ? `${less(number, true)}${rest}`
        : Number(number) >= 300 && Number(number) <= 550
          ? `${less(number, false)}${rest}`
          : whole,
    )
    .replace(GAS, (_, word: string, mark: string) => `${word}${lowerGas(mark)}`);
}

/** The text with every oven temperature 10 °C, 25 °F or one gas mark lower; the same text when it has none. */
export const withLowerOven = (text: string, metric = false): string =>
  text
    .split(/(?<=[.!;]\s)/)
    .map((sentence) => loweredSentence(sentence, metric))
    .join('');

const MINUTES = (verb: string): RegExp =>
  new RegExp(
    `\\b(?:${verb})\\b[^.;]*?(\\d{1,3})(?:\\s*(?:-|–|to)\\s*\\d{1,3})?\\s*(?:min\\b|mins\\b|minutes)`,
    'i',
  );
const BAKED = MINUTES('bake');
const COOKED = MINUTES('roast|cook');
const IN_OVEN = MINUTES('oven');

/** 'Bake for 1 hour 10 minutes', 'bake 1½ to 2 hours': the first number, within one clause. */
const IN_HOURS =
  /\bbake\b[^.;,:]*?(?<![\d/])(?<hours>an|one|two|\d(?:\s\d\/\d|\s?[½¼¾]|\.\d+)?)(?:\s*(?:-|–|to)\s*\d[^.;,a-z]*)?[\s-]+(?:hours?|hrs?)\b(?:\s+(?:and\s+)?(?<minutes>\d{1,2})(?:\s*(?:-|–|to)\s*\d{1,2})?\s*min)?/i;
const SPELLED: Readonly<Record<string, number>> = { an: 1, one: 1, two: 2 };

/** Minutes of a bake that is stated in hours, before any that is in minutes alone; null when it is not. */
function hoursBaked(text: string, before: number): number | null {
  const found = IN_HOURS.exec(text);
  const { hours = '', minutes = '0' } = found?.groups ?? {};
  if (found === null || found.index > before) return null;
  const value = SPELLED[hours.toLowerCase()] ?? numberValue(hours);
  return value === null ? null : value * 60 + Number(minutes);
}

/** 'ca. 60 Minuten': its full stop ends no sentence. */
const ABOUT = /\b(ca|approx|env|aprox|circa|ung)\.(?=\s*\d)/gi;

/** Minutes of the first bake that a text states, or of the first roast or stay in the oven; null when it states none. The lower end of a range. */
export function bakeMinutes(said: string): number | null {
  const text = said.replace(ABOUT, '$1');
  const baked = BAKED.exec(text);
  const hours = hoursBaked(text, baked?.index ?? Number.POSITIVE_INFINITY);
  if (hours !== null) return hours;
  const found = baked ?? COOKED.exec(text) ?? IN_OVEN.exec(text);
  return found === null ? null : Number(found[1]);
}

/**
 * How much longer a bake takes in an oven 10-15 °C cooler, shares of its time: as heat flows with the difference between the
 * oven, 165-190 °C, and a crumb that is done at 95 °C (own reckoning).
 */
export const longerShares = { least: 0.1, most: 0.2 } as const;

/** Beside a bake, until all is worked into its time. */
export const LONGER = 'In the cooler oven it takes {minutes} minutes longer.';

/** Minutes that a bake takes longer in an oven 10-15 °C cooler, as a range. */
export function longerBy(minutes: number): string {
  const low = Math.max(1, Math.round(minutes * longerShares.least));
  return `${low}-${Math.max(low + 1, Math.round(minutes * longerShares.most))}`;
}
