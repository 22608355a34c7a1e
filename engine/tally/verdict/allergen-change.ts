/** Allergens that a rework brings in and takes out. */
import type { Allergen, Food } from '../../model.ts';

/** Seasonings are sold with and without: who avoids an allergen has one without it. */
const SEASONINGS: ReadonlySet<string> = new Set(['stocks and broths', 'spices and dried herbs']);

/** Whether a food has its allergens whatever the make. */
export const isOfAnyMake = ({ group }: Food): boolean => !SEASONINGS.has(group);

const allergensOf = (foods: readonly Food[]): Set<Allergen> =>
  new Set(foods.flatMap((food) => food.allergens));

/**
 * Allergens that came in and went out, each in alphabetical order. What only a seasoning of the original may
 * have had comes in with a food that surely has it.
 */
export function allergenChange(
  before: readonly Food[],
  after: readonly Food[],
): { added: Allergen[]; removed: Allergen[] } {
  const [had, has] = [allergensOf(before), allergensOf(after)];
  const [hadSurely, hasSurely] = [before, after].map((foods) =>
    allergensOf(foods.filter(isOfAnyMake)),
  );
  const isNew = (allergen: Allergen): boolean =>
    !had.has(allergen) || (hasSurely?.has(allergen) === true && !hadSurely?.has(allergen));
  return {
    added: [...has].filter(isNew).sort(),
    removed: [...had].filter((allergen) => !has.has(allergen)).sort(),
  };
}
