/** Allergens that a rework brings in and takes out. */
import type { Allergen, Food } from '../../model.ts';

/** Allergens that came in and went out, each in alphabetical order. */
export function allergenChange(
  before: readonly Food[],
  after: readonly Food[],
): { added: Allergen[]; removed: Allergen[] } {
  const had = new Set(before.flatMap((food) => food.allergens));
  const has = new Set(after.flatMap((food) => food.allergens));
  return {
    added: [...has].filter((allergen) => !had.has(allergen)).sort(),
    removed: [...had].filter((allergen) => !has.has(allergen)).sort(),
  };
}
