/** Scoops and spoons of dough in a method that makes more and smaller pieces. */
import { numberValue } from '../../numerals.ts';
import { sentencesOf } from '../wording/sentences.ts';

const TEASPOONS: Readonly<Record<string, number>> = { cup: 48, tablespoon: 3, teaspoon: 1 };

/** Measures that kitchens have, in teaspoons. */
const MEASURES: readonly (readonly [number, string])[] = [
  [1, '1 teaspoon'],
  [1.5, '1½ teaspoons'],
  [2, '2 teaspoons'],
  [3, '1 tablespoon'],
  [4.5, '1½ tablespoons'],
  [6, '2 tablespoons'],
  [9, '3 tablespoons'],
  [12, '¼ cup'],
  [16, '⅓ cup'],
  [24, '½ cup'],
];

const PORTIONS = /\b(?:scoop\w*|drop|portion\w*|spoon(?:ful)?s?|dough balls?|balls of dough)\b/i;
/** Further off than this no measure is told. Own choice. */
const NEAR = 0.3;
const MEASURE =
  /(?<![\d½¼–-]\s?|\d (?:to|or) )(?<quantity>\d+(?: \d\/\d|\/\d|\.\d+)?|[¼½¾⅓⅔]|\d[¼½¾⅓⅔])(?:-| )(?:(?<unit>cup|tablespoon|tbsp|teaspoon|tsp)s?\b(?! of (?!(?:the )?(?:\w+ )?(?:dough|batter)\b))|(?<short>c)\b(?= of (?:the )?batter\b))/gi;
/** 'about 1 tablespoon of the cheese on each round': what goes into or onto every piece. */
const OF_FILLING =
  /(?<![\d½¼–-]\s?|\d (?:to|or) )(?<quantity>\d+(?: \d\/\d|\/\d|\.\d+)?|[¼½¾⅓⅔]|\d[¼½¾⅓⅔]|an?)(?:-| )(?:(?:heaping|heaped|scant|level) )?(?<unit>tablespoon|tbsp|teaspoon|tsp)s?\b(?= of )/gi;
const FILLS_EACH =
  /(?:^|[.)] )\W*(?:(?:then|next|now),? )?(?:place|put|spoon|dollop|pipe|fill|top|drop|add)\b[^.;]*\b(?:each|every)\b/i;
/** 'by rounded tablespoons': a spoon without a number. */
const BY_SPOON =
  /\b(?<by>by)(?: the)? (?:level )?(?<heap>(?:rounded|heaped|heaping) )?(?<unit>tablespoon|teaspoon)(?:ful)?s?\b/gi;
/** What a rounded spoon holds, in level ones: common practice, no source. */
const HEAPED = 1.3;
const LONG: Readonly<Record<string, string>> = {
  c: 'cup',
  tbsp: 'tablespoon',
  tsp: 'teaspoon',
};

/** The nearest measure of a kitchen; null when none is near. */
function measureOf(teaspoons: number): string | null {
  const off = ([each]: readonly [number, string]): number => Math.abs(Math.log(each / teaspoons));
  const [best] = MEASURES.toSorted((a, b) => off(a) - off(b));
  return best === undefined || off(best) > NEAR ? null : best[1];
}

/** A sentence with the measures of this kind at this share (0..1). */
const withMeasures = (sentence: string, kind: RegExp, share: number): string =>
  sentence.replace(kind, (...found) => {
    const { quantity = '', unit, short } = found.at(-1) as Record<string, string | undefined>;
    const low = (unit ?? short ?? '').toLowerCase();
    const number = /^an?$/i.test(quantity) ? 1 : numberValue(quantity);
    const value = (number ?? Number.NaN) * (TEASPOONS[LONG[low] ?? low] ?? 0);
    return (value > 0 ? measureOf(value * share) : null) ?? (found[0] as string);
  });

function smallerMeasures(sentence: string, share: number): string {
  if (FILLS_EACH.test(sentence)) return withMeasures(sentence, OF_FILLING, share);
  if (!PORTIONS.test(sentence)) return sentence;
  const put = withMeasures(sentence, MEASURE, share);
  const spooned = put.replace(BY_SPOON, (...found) => {
    const { by = '', heap, unit = '' } = found.at(-1) as Record<string, string | undefined>;
    const full = (TEASPOONS[unit.toLowerCase()] ?? 0) * (heap === undefined ? 1 : HEAPED);
    const measure = measureOf(full * share);
    return measure === null ? (found[0] as string) : `${by} ${measure}`;
  });
  return spooned.replace(/\blarge(?= (?:cookie |ice[- ]cream )?scoop\b)/gi, 'smaller');
}

/** '(45 g)' behind a measure of dough. */
const IN_GRAMS =
  /(?<=\()(?:about )?(?<grams>\d+)(?=\s?g(?:rams)?\)-?(?: sized)? (?:scoops?|portions?|balls?)\b)/gi;

const smallerGrams = (sentence: string, share: number): string =>
  sentence.replace(IN_GRAMS, (...found) => {
    const { grams } = found.at(-1) as { grams: string };
    return String(Math.round(Number(grams) * share));
  });

/** A step whose pieces weigh this share (0..1) of the page's, with the measures of their dough to match. */
export const withSmallerScoops = (text: string, share: number): string =>
  sentencesOf(text).reduce(
    (now, sentence) =>
      now.replace(sentence, () => smallerGrams(smallerMeasures(sentence, share), share)),
    text,
  );
