/** What is asked of the planner: a recipe, goals, and how it reads as a dish. */
import type { FoodTable } from '../foods/index.ts';
import { keptFor } from '../kept-results.ts';
import type { Adjustment, Goals, Ingredient, Tally } from '../model.ts';
import type { Dish } from './dish/dish.ts';
import { readDish } from './dish/read-dish.ts';

/** What a plan is made for: goals, servings, foods, and the recipe's totals as it stands. */
export interface PlanOptions {
  goals: Goals;
  servings: number;
  foods: FoodTable;
  before: Tally;
  /** The page states no number of servings; false when left out. */
  servingsGuessed?: boolean;
  /** Pieces that the page makes beside its number of servings; null or left out where it counts one of them only. */
  made?: number | null;
  /** Changes that earlier bakes taught. */
  taught?: readonly Adjustment[];
}

export type Words = { title: string; steps: string[] };

/** Work the plan of one way may take, cells of tableaux: a third of a second of a small laptop. Own choice. */
export const PLAN_WORK = 2e8;

/** One request: the recipe, and what is asked of it. */
export interface Request {
  ingredients: readonly Ingredient[];
  read: (goals: Goals, whole?: boolean) => Dish;
  options: PlanOptions;
  /** Net carbs of a serving as it stands, as the budget judges them, g. */
  start: number;
}

export function requestOf(
  ingredients: readonly Ingredient[],
  recipe: Words,
  options: PlanOptions,
): Request {
  const { goals, before, servings, foods, taught = [] } = options;
  const { title, steps } = recipe;
  const counted = before.perServing.netCarbsG;
  const dishOf = (wishes: Goals, whole: boolean): Dish =>
    readDish(ingredients, {
      whole,
      family: wishes.family,
      servings,
      goals: wishes,
      taught,
      foods,
      title,
      steps,
    });
  // The ways of one plan ask for the same dish.
  const parted = keptFor((wishes: Goals) => dishOf(wishes, false));
  const entire = keptFor((wishes: Goals) => dishOf(wishes, true));
  return {
    ingredients,
    read: (wishes, whole = false) => (whole ? entire(wishes) : parted(wishes)),
    options,
    start: counted === null ? 0 : goals.cautious ? counted.high : counted.best,
  };
}
