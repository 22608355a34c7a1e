/** Foods that meet soda's alkali; `soda-acids.json` has the sources. */
import type { Food } from '../../model.ts';
import sodaAcids from '../data/soda-acids.json' with { type: 'json' };

/** Grams of soda that a gram of a food neutralises, by food. */
const SODA_MET = new Map(
  sodaAcids.flatMap(({ gramsForOneOfSoda, foods }) =>
    foods.map((id) => [id, 1 / gramsForOneOfSoda] as const),
  ),
);

/** Soda that a gram of a food meets, g. */
export const acidity = ({ food }: { food: Food }): number => SODA_MET.get(food.id) ?? 0;
