/** Servings of a page that states none, but says what energy one has. */
import type { Recipe } from '../../model.ts';
import { statedEnergy } from '../stated/stated-figures.ts';

/** How far the page's own energy may move an estimate by weight, as a factor. Own choice. */
const MOVES_BY = 2;

/** As many as the page's energy of a serving makes of `energyKcal`; null where that is far from `byWeight`. */
export function servingsByEnergy(
  recipe: Recipe,
  energyKcal: number | null,
  byWeight: number,
): number | null {
  const theirs = recipe.statedNutrition === null ? null : statedEnergy(recipe.statedNutrition);
  if (theirs === null || theirs <= 0 || energyKcal === null) return null;
  const servings = Math.round(energyKcal / theirs);
  const near = servings <= byWeight * MOVES_BY && servings * MOVES_BY >= byWeight;
  return near && servings > 1 ? servings : null;
}
