/** The plan: the least change that brings a serving within its net-carb budget while the dish still works. */
import type { FoodTable } from '../foods/index.ts';
import type { Goals, Ingredient, Plan, Role, Tally } from '../model.ts';
import {
  bindingLimits,
  cautiousLimit,
  missedChanges,
  missedWishes,
  unmetLimits,
  wishesMet,
} from './binding-limits.ts';
import { type Dish, readDish } from './dish/dish.ts';
import { itemsOf, swapsOf } from './explain.ts';
import { frontierOf } from './frontier.ts';
import { doughFigures } from './kitchen/dough-figures.ts';
import { originalAmounts } from './kitchen/planned-masses.ts';
import { loosenings } from './loosen.ts';
import { closenessOf, closenessParts, lossOf } from './model/closeness.ts';
import { evaluate, linear } from './model/expressions.ts';
import { leverTargets } from './model/lever-rows.ts';
import { buildModel, type PlanModel } from './model/plan-model.ts';
import { dishNotes } from './plan-notes.ts';
import { nearlyLowest, type Solved, solveWithin, unchanged } from './solve.ts';

export { recogniseFamily } from './dish/dish-family.ts';

const rolesRecord = (dish: Dish): Record<string, Role[]> =>
  Object.fromEntries(dish.parts.map(({ key, role }) => [key, [role]]));

interface Answer {
  model: PlanModel;
  solved: Solved;
  /** Least net carbs of a serving in reach, g. */
  least: number;
  /** Nothing had to change. */
  idle: boolean;
}

/** Solves one model; the original stands when it is within the budget and every wish. */
function answer(model: PlanModel, start: number, changes: boolean): Answer {
  const { dish } = model;
  const still = unchanged(model);
  const { budgetG } = dish.goals;
  const idle =
    !changes && Math.max(start, still.net) <= budgetG && wishesMet(model, still.kitchen.amounts);
  const solved = idle ? still : (solveWithin(model, budgetG) ?? still);
  const least = Math.min(nearlyLowest(model).net, evaluate(model.net, solved.solution.values));
  return { model, solved, least, idle };
}

/** Solves with the accepted changes: first without those that need rows, then with what they ask for. */
function solveWithChanges(dish: Dish, start: number): Answer {
  const plain = answer(buildModel(dish), start, false);
  const targets = leverTargets(
    (attribute) => linear(dish, plain.model.choices, attribute),
    dish,
    plain.solved.solution.values,
  );
  return targets.length === 0 ? plain : answer(buildModel(dish, targets), start, true);
}

function limitsOf(found: Answer, met: boolean, build: (goals: Goals) => PlanModel): Plan['limits'] {
  const { model, solved, least, idle } = found;
  const { values } = solved.solution;
  const { amounts } = solved.kitchen;
  const { goals } = model.dish;
  const wishes = [
    ...missedWishes(model, amounts),
    ...missedChanges(model, values, amounts),
    ...cautiousLimit(model, amounts),
  ];
  if (!met)
    return [...unmetLimits(model, solved.net, values, loosenings(build, goals, least)), ...wishes];
  if (idle) return wishes;
  const net = evaluate(model.net, values);
  const binding = bindingLimits(model, values, net).filter(
    ({ code }) => code !== 'SWEETNESS-LEAST',
  );
  return [...wishes, ...binding];
}

/**
 * Plans a recipe. Masses in grams, net carbs in grams a serving by the goals' rule. Lines without
 * food or weight are left alone and noted. When the budget is out of reach, the plan with the least
 * net carbs stands, `met` is false and `limits` says what holds it; a wish that cannot be met is
 * missed by as little as possible, and `limits` says so. Deterministic; never throws.
 */
export function planRecipe(
  ingredients: readonly Ingredient[],
  recipe: { title: string; steps: string[] },
  options: { goals: Goals; servings: number; foods: FoodTable; before: Tally },
): Plan {
  const { goals, foods, before } = options;
  const read = (wishes: Goals): Dish =>
    readDish(ingredients, {
      family: wishes.family,
      servings: options.servings,
      goals: wishes,
      foods,
      title: recipe.title,
      steps: recipe.steps,
    });
  const dish = read(goals);
  const counted = before.perServing.netCarbsG;
  const start = counted === null ? 0 : goals.cautious ? counted.high : counted.best;
  const found = solveWithChanges(dish, start);
  const { model, solved, least } = found;
  const { amounts, reserve } = solved.kitchen;
  const { values } = solved.solution;
  const met = solved.net <= goals.budgetG + 1e-9;
  const { main } = dish;
  const ofMain = <T extends { section: number }>(list: readonly T[]): T[] =>
    list.filter((a) => a.section === main.id);
  const doughBefore = main.dough ? doughFigures(ofMain(originalAmounts(dish))) : null;
  const doughAfter = main.dough ? doughFigures(ofMain(amounts)) : null;
  const closeness = closenessOf(lossOf(model, values));
  return {
    family: { id: main.family, confidence: main.confidence, why: main.why },
    parts: dish.sections.map(({ title, family, why, keys }) => ({ title, family, why, keys })),
    roles: rolesRecord(dish),
    budgetG: goals.budgetG,
    met,
    items: itemsOf(dish, amounts),
    swaps: swapsOf(model, amounts),
    reserveWaterG: reserve,
    dough: doughBefore && doughAfter ? { before: doughBefore, after: doughAfter } : null,
    closeness,
    closenessParts: closenessParts(model, values),
    frontier: frontierOf(model, least, {
      point: { netCarbsG: evaluate(model.net, values), closeness },
      values,
    }),
    limits: limitsOf(found, met, (wishes) => buildModel(read(wishes))),
    notes: dishNotes(ingredients, dish, amounts),
  };
}
