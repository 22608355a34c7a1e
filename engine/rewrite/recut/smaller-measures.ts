/** Sizes that stand beside a number of pieces, for pieces of a share of the page's size. */
import { numberValue } from '../../numerals.ts';

const NUMBER = '(?<number>\\d+(?:\\s\\d/\\d|/\\d|[.,]\\d+)?|\\d?[¼½¾⅓⅔])';

/** '60 g each', '(2-ounce) balls': what a piece weighs. */
const WEIGHT = new RegExp(
  `(?<![\\d/–-]\\s?|\\d[.,])${NUMBER}(?<gap>[\\s-]?)(?<unit>g|grams?|oz|ounces?)(?=\\s?(?:each|apiece|a piece)\\b|[)\\s-]+(?:balls|pieces|portions|rounds|rolls|scoops)\\b)`,
  'gi',
);
/** '1 1/2 inches wide', '2 cm thick', '2-inch-long pieces': what is cut off a log or strip. */
const WIDTH = new RegExp(
  `(?<![\\d/–-]\\s?|\\d[.,])${NUMBER}(?<gap>[\\s-]?)(?<unit>inch(?:es)?|cm)(?=[\\s-](?:wide|thick|slices|pieces|rolls)\\b|[\\s-]long\\)?[\\s-](?:\\w+\\s)?pieces\\b)`,
  'gi',
);
/** '2 1/2-inch round cutter': it cuts an area. */
const CUTTER = new RegExp(
  `(?<![\\d/–-]\\s?|\\d[.,])${NUMBER}(?<gap>[\\s-]?)(?<unit>inch|cm)(?=[\\s-](?:(?:round|biscuit|cookie|scone|pastry|fluted|circle)\\s){0,3}cutter\\b)`,
  'gi',
);

/** Steps in which kitchens measure, by unit: below 20 g a gram counts. */
const STEPS: readonly (readonly [RegExp, (value: number) => number])[] = [
  [/^g/i, (value) => (value < 20 ? 1 : 5)],
  [/^o/i, () => 0.25],
  [/^inch/i, () => 0.25],
  [/^cm/i, () => 0.5],
];

const QUARTERS: Readonly<Record<string, string>> = { '0.25': '¼', '0.5': '½', '0.75': '¾' };

/** A number as its unit is written: '1½' inches, '3.5' cm. */
function written(value: number, unit: string): string {
  const step = STEPS.find(([of]) => of.test(unit))?.[1](value) ?? 1;
  const near = Math.max(step, Math.round(value / step) * step);
  const rest = QUARTERS[String(near % 1)];
  if (rest === undefined || /^[gc]/i.test(unit)) return String(near);
  return `${Math.floor(near) || ''}${rest}`;
}

const scaled = (text: string, sizes: RegExp, share: number): string =>
  text.replace(sizes, (found, ...rest) => {
    const { number, gap, unit } = rest.at(-1) as { number: string; gap: string; unit: string };
    const value = numberValue(number);
    return value === null ? found : `${written(value * share, unit)}${gap}${unit}`;
  });

/** What stands behind the number of pieces, with the weight of each at this share (0..1) and the width at `width`. */
export const withSmallerSizes = (text: string, share: number, width = share): string =>
  scaled(scaled(text, WEIGHT, share), WIDTH, width);

/** 'Roll each ball into a 4-inch-wide circle': a piece rolled out. */
const ROUND = new RegExp(
  `(?<=\\b(?:each|every)\\b[^.\\d]{0,60})${NUMBER}(?<gap>[\\s-]?)(?<unit>inch|cm)(?=(?:[\\s-](?:wide|thin))?[\\s-](?:circles?|rounds?|dis[ck]s?|ovals?|squares?)\\b)`,
  'gi',
);

/** A text with the cutters and rounds of pieces of this share (0..1), rolled as thick as before. */
export const withSmallerCutter = (text: string, share: number): string =>
  scaled(scaled(text, CUTTER, Math.sqrt(share)), ROUND, Math.sqrt(share));

/** 'Place up to 4 large dough balls on each sheet': what goes onto one tray. */
const ON_TRAY =
  /(?<=\b(?:place|put|arrange|space)\b[^.\d]{0,40})(?<count>\d+)\s(?:large\s|big\s)?(?=(?:\w+\s){0,3}(?:balls|mounds|cookies|biscuits|scoops|rounds)\b[^.]{0,60}\b(?:sheet|tray|pan)s?\b)/gi;

/** A sentence with as many more of the smaller pieces on a tray. */
export const withFullTrays = (sentence: string, share: number): string =>
  sentence.replace(ON_TRAY, (_, ...rest) => {
    const { count } = rest.at(-1) as { count: string };
    return `${Math.floor(Number(count) / share)} `;
  });
