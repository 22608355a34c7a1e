/** An amount as a shop sells it: eggs by number, what is poured in millilitres, all else by weight. */
import type { Food } from '../../../engine/model.ts';
import { digitsOf } from '../figures/format.ts';
import { gramsOnScale } from '../figures/sources/source-words.ts';
import { sayCount } from '../words/say.ts';
import type { ToBuy } from './buy-list.ts';

/** US cup, ml: the table's cups of what is poured are these. */
const CUP_ML = 236.6;
/** What is left of a piece is not bought for: own choice. */
const REST_OF_PIECE = 0.15;

const measure = (food: Food, unit: string): number | null =>
  food.measures.find((one) => one.unit === unit)?.grams ?? null;

/** Whole in fives of ten millilitres and more, as jugs and bottles are marked. */
const millilitres = (grams: number, cup: number): string => {
  const ml = (grams / cup) * CUP_ML;
  return `${digitsOf(ml >= 50 ? 5 * Math.round(ml / 5) : Math.round(ml), 0)} ml`;
};

/** '250 g', '260 ml', '2 eggs'. */
export function shopAmount({ grams, poured }: ToBuy, food: Food | null): string {
  const weight = `${gramsOnScale(grams)} g`;
  if (!food) return weight;
  if (food.id === 'egg') {
    const each = measure(food, 'large');
    return each === null
      ? weight
      : sayCount('eggs', Math.max(1, Math.ceil(grams / each - REST_OF_PIECE)));
  }
  const cup = measure(food, 'cup');
  return poured && cup !== null && grams >= 15 ? millilitres(grams, cup) : weight;
}
