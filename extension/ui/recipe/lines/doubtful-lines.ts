/** Which lines the numbers rest on least surely. */
import type { Adaptation, Ingredient } from '../../../../engine/model.ts';
import { toldHere } from '../../words/engine-language.ts';
import { foodWord } from '../../words/food-words.ts';
import { say } from '../../words/say.ts';

export interface Reason {
  text: string;
  /** Said in the engine's English, for want of words; else in the language of the screen. */
  byEngine: boolean;
}

export interface Doubt {
  ingredient: Ingredient;
  /** Share of the recipe's net carbs, 0..1; null when the line is not counted. */
  share: number | null;
  reasons: Reason[];
}

/** Below this the match is shown as a guess. */
const SURE_MATCH = 0.85;
/** A wider spread of grams than this, against the best figure, is shown. */
const WIDE_SPREAD = 0.25;
/** A counted line below this share of the carbs is left out: its error does not matter. */
const SMALL_SHARE = 0.01;

/** 'No cup weight known.' of 'no cup weight known' */
const sentence = (text: string): string =>
  `${text.charAt(0).toUpperCase()}${text.slice(1)}${/[.!?]$/.test(text) ? '' : '.'}`;

export function reasonsOf({ match, weight, line }: Ingredient): Reason[] {
  const reasons: Reason[] = [];
  const ours = (text: string) => reasons.push({ text: sentence(text), byEngine: false });
  const theirs = (english: string) => {
    const { text, lang } = toldHere(english);
    reasons.push({ text: sentence(text), byEngine: lang !== undefined });
  };
  if (!match) ours(say('noFoodFound'));
  else if (match.confidence < SURE_MATCH)
    ours(say('takenForFood', foodWord(match.foodId, match.foodName)));
  if (!weight) ours(say('noWeightKnown'));
  else {
    const { low, best, high } = weight.grams;
    if (weight.disagreement) theirs(weight.disagreement.text);
    if (weight.basis === 'assumed') ours(say('weightAssumed', Math.round(best)));
    else if (best > 0 && (high - low) / best > WIDE_SPREAD) {
      ours(say('betweenGrams', Math.round(low), Math.round(high)));
    }
    const { disagreement, assumptions } = weight;
    for (const text of new Set(assumptions)) if (text !== disagreement?.text) theirs(text);
  }
  if (line.optional && reasons.length > 0) ours(say('optionalLine'));
  return reasons;
}

function isDoubtful({ match, weight }: Ingredient): boolean {
  if (!match || !weight) return true;
  const { low, best, high } = weight.grams;
  return (
    match.confidence < SURE_MATCH ||
    weight.disagreement !== null ||
    weight.basis === 'assumed' ||
    (best > 0 && (high - low) / best > WIDE_SPREAD)
  );
}

/** Uncertain lines, uncounted ones first, then by their share of the net carbs. */
export function doubtsOf(adaptation: Adaptation): Doubt[] {
  const shares = new Map(adaptation.before.contributions.map(({ key, share }) => [key, share]));
  const uncounted = new Set(adaptation.before.uncounted.map(({ key }) => key));
  return adaptation.ingredients
    .filter(({ line }) => line.kind === 'ingredient')
    .map((ingredient) => ({
      ingredient,
      share: uncounted.has(ingredient.key) ? null : (shares.get(ingredient.key) ?? 0),
      reasons: reasonsOf(ingredient),
    }))
    .filter(({ ingredient, share }) => {
      if (adaptation.corrections[ingredient.key]) return true;
      return isDoubtful(ingredient) && (share === null || share >= SMALL_SHARE);
    })
    .sort((a, b) => (b.share ?? 2) - (a.share ?? 2));
}

export interface VariedFood {
  key: string;
  name: string;
  low: number;
  high: number;
}

/** From this width on (g net carbs a serving) the scatter of a new food is worth telling. */
const WIDE_NET_G = 1;

/** Foods the plan brings in whose net carbs vary so much between makers or sources that it shows. */
export function variedFoods({ after, plan }: Adaptation): VariedFood[] {
  return after.contributions.flatMap(({ key, netCarbsG }) => {
    const [line, foodId] = key.split('>');
    if (foodId === undefined || !netCarbsG) return [];
    const { low, high } = netCarbsG;
    if (high - low < WIDE_NET_G) return [];
    const item = plan.items.find((one) => one.key === line && one.foodId === foodId);
    return [{ key, name: foodWord(foodId, item?.foodName ?? foodId), low, high }];
  });
}
