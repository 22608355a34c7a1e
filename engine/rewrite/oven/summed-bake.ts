/** A bake that takes longer in a cooler oven, told as one time: nobody adds up with floury hands. */
import type { RewrittenStep } from '../../model.ts';
import type { MethodWords } from '../languages/method-words.ts';
import { withReason } from '../steps/step-reasons.ts';
import { literal } from '../wording/name-patterns.ts';
import { sentencesOf } from '../wording/sentences.ts';
import { LONGER, longerShares } from './oven-heat.ts';

const WHY = 'In the cooler oven it takes longer than on the page.';

/** '25-30 minutes', '55 to 65 mins', 'ca. 30 Min.', '13 - 15 minutes'. */
const TIME =
  /(?<![\d/.,–-])(?<low>\d{1,3})(?:(?<to>\s?(?:-|–|—|to|and|or|bis|und|et|y|oder|à|tot|of|o|ou|a|till|til|eller)\s?)(?<high>\d{1,3}))?(?<unit>[\s-]?min(?:ute[ns]?|utes|utos?|uti|uto|uter|utter|s)?(?!\p{L}))/giu;
/** 'for 1 hour', 'for an hour', with no minutes behind. */
const HOUR =
  /(?<![\d/.,–½-]\s?)\b(?:1|one|an) hour\b(?!\s+(?:and\s+)?(?:\d|a half)|\s*(?:-|–|to)\s*\d)/i;
/** What is done once it is out, or on the way. */
const THEN =
  /(?<!\p{L})(?:cool|rest|stand|remove|rotat|turn|halfway|after|every|last|final|first|then|dann|dan(?!\p{L})|daarna|abkühl|auskühl|ruhen|danach|nach|laisser|refroid|puis|apr[eè]s|dejar|enfriar|luego|despu[eé]s|lasciare|raffredd|poi|dopo|deixar|arrefecer|depois|afkoelen|svalna|sedan|efter|afkøl|derefter|avkjøl|deretter|etter)\p{L}*/iu;

/** Longer bakes are told in fives. */
const FIVES_FROM = 35;
const LONG = 45;
const HOUR_MINUTES = 60;

/** A time in the cooler oven: a range keeps its middle, one number becomes a range. */
function longer(low: number, high: number | null): { low: number; high: number } {
  const { least, most } = longerShares;
  const from = low * (1 + least);
  const to = high === null ? low * (1 + most) : high * (1 + (least + most) / 2);
  const step = from >= FIVES_FROM || to >= LONG ? 5 : 1;
  const near = (minutes: number): number =>
    minutes < FIVES_FROM ? Math.round(minutes) : Math.round(minutes / step) * step;
  const first = Math.max(low + 1, near(from));
  return { low: first, high: Math.max(first + step, near(to)) };
}

/** The text with its time of baking made longer, up to where it comes out; null where it states none in minutes. */
function longerIn(sentence: string): string | null {
  const stated = [TIME, HOUR].map((time) => sentence.search(time)).filter((at) => at >= 0);
  if (stated.length === 0) return null;
  const from = Math.min(...stated);
  const then = sentence.slice(from).search(THEN);
  const end = then < 0 ? sentence.length : from + then;
  const baked = sentence.slice(0, end);
  const summed = baked.replace(TIME, (...found) => {
    const { low, to = '-', high, unit } = found.at(-1) as Record<string, string> & { low: string };
    const now = longer(Number(low), high === undefined ? null : Number(high));
    return `${now.low}${to}${now.high}${unit}`;
  });
  const hours = summed === baked ? longer(HOUR_MINUTES, null) : null;
  const told = hours === null ? summed : summed.replace(HOUR, `${hours.low}-${hours.high} minutes`);
  return told === baked ? null : told + sentence.slice(end);
}

const sayingLonger = (words: MethodWords | null): RegExp =>
  new RegExp(
    `^${literal(words?.longerBake ?? LONGER).replace(literal('{minutes}'), '\\d+(?:-\\d+)?')}$`,
  );

/** A step with the sentence of the longer time worked into the time before it. */
function summedStep(step: RewrittenStep, words: MethodWords | null): RewrittenStep {
  const says = sayingLonger(words);
  const sentences = sentencesOf(step.after);
  const at = sentences.findIndex((one) => says.test(one.trim()));
  const bake = sentences[at - 1];
  const told = bake === undefined ? null : longerIn(bake);
  if (bake === undefined || told === null) return step;
  const after = step.after
    .replace(sentences[at] ?? '', '')
    .replace(bake, told)
    .replace(/ {2,}/g, ' ')
    .trim();
  return summedStep(withReason(step, after, words === null ? WHY : (sentences[at] ?? '')), words);
}

/** The steps with every longer bake as one time; where it cannot be worked out the sentence stays. */
export const withSummedBakes = (
  steps: readonly RewrittenStep[],
  words: MethodWords | null,
): RewrittenStep[] => steps.map((step) => summedStep(step, words));
