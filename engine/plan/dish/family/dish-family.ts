/** Tells the family of a dish: that of its main part. */
import type { FoodTable } from '../../../foods/index.ts';
import type { Ingredient } from '../../../model.ts';
import { sectionsOf } from '../sections.ts';
import { type FamilyGuess, guessFamily } from './recognise-family.ts';

/**
 * The dish family with a confidence (0..1) and the reason, from ratios by mass (flour base = 1;
 * thresholds: common practice, no source). Never throws.
 */
export function recogniseFamily(
  ingredients: readonly Ingredient[],
  recipe: { title: string; steps: readonly string[] },
  foods: FoodTable,
): FamilyGuess {
  const main = sectionsOf(ingredients, recipe, foods).find((section) => section.main);
  if (!main) return guessFamily(ingredients, recipe, foods);
  return { id: main.id, confidence: main.confidence, why: main.why };
}
