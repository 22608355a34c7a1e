/** Lines that the user leaves out: the dish is planned, written and counted without them. */
import type { Goals, Ingredient, Plan, Swap } from '../model.ts';

type LeftOut = Pick<Goals, 'leftOut'>;

/** The ingredients that are cooked. */
export const withoutLeftOut = (
  ingredients: readonly Ingredient[],
  { leftOut }: LeftOut,
): Ingredient[] => ingredients.filter(({ key }) => !leftOut.includes(key));

const leaving = ({ key, match, weight }: Ingredient): Swap => ({
  id: `left-out-${key}`,
  key,
  from: match && {
    foodId: match.foodId,
    food: match.foodName,
    grams: weight?.grams.best ?? 0,
  },
  keptGrams: 0,
  to: [],
  why: 'Left out, as you said.',
  effect: '',
  considered: [],
  allergens: [],
  cautions: [],
  source: '',
});

/** A plan of what is cooked, as one of the whole recipe: what is left out is a change of its own. */
export function leavingOut(plan: Plan, ingredients: readonly Ingredient[], goals: LeftOut): Plan {
  const gone = ingredients.filter(({ key }) => goals.leftOut.includes(key));
  return gone.length === 0 ? plan : { ...plan, swaps: [...plan.swaps, ...gone.map(leaving)] };
}
