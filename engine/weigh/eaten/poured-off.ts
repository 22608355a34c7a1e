/** Meat whose fat is fried out and poured away: counted as fried, by the weight that is left. */
import type { FoodTable } from '../../foods/index.ts';
import { massInterval } from '../../interval.ts';
import type { Ingredient, Interval } from '../../model.ts';
import data from '../data/poured-off.json' with { type: 'json' };
import { plain } from '../line-words.ts';

const ROWS = new Map(data.map((row) => [row.food, row]));

const FAT = '(?:fat|grease|drippings?)';
/** 'Drain off the fat', 'pour away all grease'. */
const POURED = new RegExp(
  `\\b(?:drain|pour|spoon|discard|wipe|strain|skim)(?:ed|s|ing)?\\b[^.;]{0,40}\\b${FAT}\\b`,
);
/** 'Drain the beef', 'brown the mince and drain'. */
const DRAINED_MEAT =
  /\bdrain(?:ed)?\b[^.;]{0,20}\b(?:beef|meat|mince|bacon)\b|\b(?:beef|meat|mince)\b[^.;]{0,60}\bdrain(?:ed)?\b(?! (?:the |your )?(?:pasta|beans?|noodles?|potatoe?s?|rice|corn|tomatoe?s?))/;
/** What is taken out onto paper leaves its fat in the pan. */
const ON_PAPER = /\bbacon\b[^.;]{0,100}\b(?:paper towels?|kitchen (?:paper|towel))/;
/** The fat stays in the dish: 'in the bacon fat', 'all but 1 tablespoon of the grease', 'in the same pan'. */
const KEPT = new RegExp(
  `\\b(?:leav\\w+|reserv\\w+|keep\\w*|sav(?:e|ing)|retain\\w*|all but|except|in|into|to|with)\\b[^.;]{0,25}\\b${FAT}\\b|\\b(?:do not|don'?t|without) drain|\\bsame (?:pan|skillet|pot)\\b`,
);

function isPouredOff(food: string, steps: readonly string[]): boolean {
  const sentences = steps.flatMap((step) => plain(step).split(/(?<=[.;!?])\s+|\n/));
  if (sentences.some((sentence) => KEPT.test(sentence))) return false;
  const onPaper = food === 'bacon' && sentences.some((sentence) => ON_PAPER.test(sentence));
  return (
    onPaper ||
    sentences.some((sentence) => POURED.test(sentence)) ||
    (food !== 'bacon' && sentences.some((sentence) => DRAINED_MEAT.test(sentence)))
  );
}

const leftOf = (eaten: Interval, [low = 0, best = 0, high = 0]: readonly number[]): Interval =>
  massInterval(eaten.low * low, eaten.best * best, eaten.high * high);

/** The ingredients, with meat whose fat the method pours away as the fried meat that is left. */
export function withFatPouredOff(
  ingredients: readonly Ingredient[],
  steps: readonly string[],
  foods: FoodTable,
): Ingredient[] {
  return ingredients.map((one) => {
    const row = ROWS.get(one.match?.foodId ?? '');
    const food = row && foods.byId(row.as);
    const { match, weight } = one;
    if (!row || !food || !match || !weight || weight.basis === 'corrected') return one;
    if (match.confidence === 1 || !isPouredOff(row.food, steps)) return one;
    const text = `fried and its fat poured away: ${Math.round((row.left[1] ?? 1) * 100)} % of the raw weight is left`;
    return {
      ...one,
      match: { ...match, foodId: food.id, foodName: food.name, reason: text },
      weight: {
        ...weight,
        eaten: leftOf(weight.eaten, row.left),
        assumptions: [...weight.assumptions, text],
      },
    };
  });
}
