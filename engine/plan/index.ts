/** The plan: the least change that brings a serving within its net-carb budget while the dish still works. */
import type { FrontierPoint, Ingredient, Plan, Way } from '../model.ts';
import { solveDish } from './answer.ts';
import { frontierOf } from './frontier.ts';
import { evaluate } from './model/expressions.ts';
import { PLAN_WORK, type PlanOptions, requestOf, type Words } from './request.ts';
import { workOf } from './solver/work.ts';
import { lightWay, smallWay } from './ways/smaller-servings.ts';
import { withinWay } from './ways/within-way.ts';
import { paysOff } from './ways/worthwhile.ts';
import { recommendedWay } from './ways.ts';

export { recogniseFamily } from './dish/family/dish-family.ts';

/** Every way there is to plan a dish, `within` first, and the one we would take. */
export interface Ways {
  plans: [Plan, ...Plan[]];
  recommended: Way;
}

/**
 * Plans a recipe every way there is. Masses in grams, net carbs in grams a serving by the goals' rule.
 * Lines without food or weight are left alone and noted. When the budget is out of reach, the plan
 * within it is the one with the least net carbs, `met` is false and `limits` says what holds it; a wish
 * that cannot be met is missed by as little as possible, and `limits` says so. A recipe that fits as it
 * is has one way. Deterministic; never throws.
 */
export function planWays(
  ingredients: readonly Ingredient[],
  recipe: Words,
  options: PlanOptions,
): Ways {
  const request = requestOf(ingredients, recipe, options);
  const { found, way } = withinWay(request);
  if (found.idle && (way.plan.met || way.plan.notReworked !== null))
    return { plans: [way.plan], recommended: 'within' };
  const smaller = smallWay(request);
  const light = lightWay(request, way.plan);
  const lighter =
    light !== null && paysOff(light, { within: way.plan, smaller }, request) ? light : null;
  const others = [lighter, smaller].filter((w) => w !== null);
  return {
    plans: [way.plan, ...others.map(({ plan }) => plan)],
    recommended: recommendedWay(way, others, found.model.dish.servings),
  };
}

/** The plan that keeps a serving of the page's size within the budget; as {@link planWays}, of one way. */
export const planRecipe = (
  ingredients: readonly Ingredient[],
  recipe: Words,
  options: PlanOptions,
): Plan => withinWay(requestOf(ingredients, recipe, options)).way.plan;

/**
 * The curve of closeness against net carbs of a serving, from the least in reach to the original, with
 * a point at the net carbs of the plan. Worked out by itself, as it takes longer than the plan.
 */
export function planFrontier(
  ingredients: readonly Ingredient[],
  recipe: Words,
  options: PlanOptions,
): FrontierPoint[] {
  const { read, start } = requestOf(ingredients, recipe, options);
  const work = workOf(PLAN_WORK);
  const { budgetG } = options.goals;
  const question = { start, budgetG, extent: 'within' } as const;
  const { model, solved } = solveDish(read(options.goals), question, work);
  return frontierOf(model, [evaluate(model.net, solved.solution.values)], work);
}
