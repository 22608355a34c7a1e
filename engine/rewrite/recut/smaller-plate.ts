/** Which dishes are plates that want filling once they are served smaller: less of a meal is a meal no longer. */
import type { FoodTable } from '../../foods/index.ts';
import { isSavoury } from '../../foods/savoury.ts';
import type { Family, Ingredient, Plan, Tally } from '../../model.ts';

/** A plate of more than this share of the page's is no smaller meal. Own choice. */
const SMALLER = 0.8;

/** Families whose servings are plates, not pieces. */
const PLATES: ReadonlySet<Family> = new Set<Family>([
  'pasta-dish',
  'rice-dish',
  'potato-dish',
  'thickened-sauce',
  'breaded-food',
  'other',
]);

/** Whether a plan is served on plates that leaves go with: savoury, and no dough. */
export const isSavouryPlate = ({ family, dough, items }: Plan): boolean =>
  PLATES.has(family.id) && dough === null && items.some(({ foodId }) => isSavoury(foodId));

interface Plates {
  page: number;
  now: number;
  left?: number;
}

/** Whether so many servings of what is left make of each a smaller meal. */
export const isSmallerMeal = ({ page, now, left = 1 }: Plates): boolean =>
  (Math.min(1, left) * page) / now <= SMALLER + 1e-9;

const ofIngredients = (ingredients: readonly Ingredient[]): number =>
  ingredients.reduce((sum, { weight }) => {
    return sum + (weight === null ? 0 : weight.grams.best * weight.eaten.best);
  }, 0);

/** Share of the page's mass that a plate has, by what is eaten of it; 1 without a weight. */
export function shareOfPlate(ingredients: readonly Ingredient[], { items }: Plan): number {
  const was = ofIngredients(ingredients);
  const now = items.reduce((sum, { grams, eaten }) => sum + grams * eaten.best, 0);
  return was > 0 ? now / was : 1;
}

/** kcal below which a plate that was a meal is a light one, and share of the page's from which it is told. Own choice. */
const LIGHT_MEAL = { kcal: 350, share: 0.75 } as const;

/** kcal of a serving, in tens, where what was a meal is a light one now; null elsewhere. */
export function lightMeal(before: number | null, now: number | null): number | null {
  if (before === null || now === null || before < LIGHT_MEAL.kcal || now >= LIGHT_MEAL.kcal)
    return null;
  return now <= LIGHT_MEAL.share * before ? Math.round(now / 10) * 10 : null;
}

/** kcal of a serving as the page has it; null where nothing of it is known. */
export function energyBefore(
  ingredients: readonly Ingredient[],
  foods: FoodTable,
  servings: number,
): number | null {
  const kcal = ingredients.reduce((sum, { match, weight }) => {
    const each = match === null ? null : foods.byId(match.foodId)?.per100g.energyKcal;
    return sum + ((weight?.grams.best ?? 0) * (weight?.eaten.best ?? 1) * (each ?? 0)) / 100;
  }, 0);
  return kcal > 0 ? kcal / servings : null;
}

/** Protein of a plate that is enough for a meal, g (common practice, no source). */
const ENOUGH_PROTEIN_G = 20;

/** Whether a plate has protein enough, or may have: a line of it that is not counted may be the tofu. */
export function hasProtein(
  { perServing: { proteinG } }: Tally,
  ingredients: readonly Ingredient[],
): boolean {
  if (proteinG !== null && proteinG.best >= ENOUGH_PROTEIN_G) return true;
  return ingredients.some(({ match }) => match === null);
}
