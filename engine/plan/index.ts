/** The plan: the least change that brings a serving within its net-carb budget while the dish still works. */
import type { FoodTable } from '../foods/index.ts';
import type { FrontierPoint, Goals, Ingredient, Note, Plan, Role, Tally } from '../model.ts';
import {
  bindingLimits,
  cautiousLimit,
  missedChanges,
  missedWishes,
  unmetLimits,
  wishesMet,
} from './binding-limits.ts';
import type { Dish } from './dish/dish.ts';
import { readDish } from './dish/read-dish.ts';
import { itemsOf, swapsOf } from './explain.ts';
import { frontierOf } from './frontier.ts';
import { doughFigures } from './kitchen/dough-figures.ts';
import { type Amount, originalAmounts } from './kitchen/planned-masses.ts';
import { loosenings } from './loosen.ts';
import { closenessOf, closenessParts, lossOf } from './model/closeness.ts';
import { evaluate, linear } from './model/expressions.ts';
import { leverTargets } from './model/lever-rows.ts';
import { buildModel, type PlanModel } from './model/plan-model.ts';
import { dishNotes, workNote } from './plan-notes.ts';
import { type Solved, solveWithin, unchanged } from './solve.ts';
import { type Work, workOf } from './solver/work.ts';

export { recogniseFamily } from './dish/dish-family.ts';

/** What a plan is made for: goals, servings, foods, and the recipe's totals as it stands. */
export interface PlanOptions {
  goals: Goals;
  servings: number;
  foods: FoodTable;
  before: Tally;
}

type Words = { title: string; steps: string[] };

/** Work one plan may take, cells of tableaux: about half a second of a small laptop. Own choice. */
const PLAN_WORK = 3e8;

interface Answer {
  model: PlanModel;
  solved: Solved;
  /** Nothing had to change. */
  idle: boolean;
}

/** Solves one model; the original stands when it is within the budget and every wish. */
function answer(model: PlanModel, start: number, changes: boolean, work: Work): Answer {
  const { dish } = model;
  const still = unchanged(model);
  const { budgetG } = dish.goals;
  const idle =
    !changes && Math.max(start, still.net) <= budgetG && wishesMet(model, still.kitchen.amounts);
  const solved = idle ? still : (solveWithin(model, budgetG, work) ?? still);
  return { model, solved, idle };
}

/** Solves with the accepted changes: first without those that need rows, then with what they ask for. */
function solveWithChanges(dish: Dish, start: number, work: Work): Answer {
  const plain = answer(buildModel(dish), start, false, work);
  const targets = leverTargets(
    (attribute) => linear(dish, plain.model.choices, attribute),
    dish,
    plain.solved.solution.values,
  );
  return targets.length === 0 ? plain : answer(buildModel(dish, targets), start, true, work);
}

function limitsOf(
  found: Answer,
  met: boolean,
  build: (goals: Goals) => PlanModel,
  work: Work,
): Plan['limits'] {
  const { model, solved, idle } = found;
  const { values } = solved.solution;
  const { amounts } = solved.kitchen;
  const { goals } = model.dish;
  const wishes = [
    ...missedWishes(model, amounts, work),
    ...missedChanges(model, values, amounts),
    ...cautiousLimit(model, amounts),
  ];
  if (!met) {
    // Judged by the upper end, the least is known only of the plan itself.
    const least = goals.cautious ? solved.net : Math.min(solved.net, solved.least ?? solved.net);
    const loosened = loosenings(build, goals, least, work);
    return [...unmetLimits(model, { least, net: solved.net }, values, loosened, work), ...wishes];
  }
  if (idle) return wishes;
  const net = evaluate(model.net, values);
  const binding = bindingLimits(model, values, net, work).filter(
    ({ code }) => code !== 'SWEETNESS-LEAST',
  );
  return [...wishes, ...binding];
}

const rolesRecord = (dish: Dish): Record<string, Role[]> =>
  Object.fromEntries(dish.parts.map(({ key, role }) => [key, [role]]));

function doughOf(dish: Dish, amounts: readonly Amount[]): Plan['dough'] {
  const { main } = dish;
  if (!main.dough) return null;
  const ofMain = (list: readonly Amount[]): Amount[] => list.filter((a) => a.section === main.id);
  const before = doughFigures(ofMain(originalAmounts(dish)));
  const after = doughFigures(ofMain(amounts));
  return before && after ? { before, after } : null;
}

/** What a plan says besides its limits. */
function planOf(found: Answer, limits: Plan['limits'], notes: Note[]): Plan {
  const { model, solved } = found;
  const { dish } = model;
  const { main, goals } = dish;
  const { amounts, reserve } = solved.kitchen;
  const { values } = solved.solution;
  return {
    family: { id: main.family, confidence: main.confidence, why: main.why },
    parts: dish.sections.map(({ title, family, why, keys }) => ({ title, family, why, keys })),
    roles: rolesRecord(dish),
    budgetG: goals.budgetG,
    met: isMet(solved, goals),
    items: itemsOf(dish, amounts),
    swaps: swapsOf(model, amounts),
    reserveWaterG: reserve,
    dough: doughOf(dish, amounts),
    closeness: closenessOf(lossOf(model, values)),
    closenessParts: closenessParts(model, values),
    limits,
    notes,
  };
}

const isMet = ({ net }: Solved, { budgetG }: Goals): boolean => net <= budgetG + 1e-9;

const reader =
  (ingredients: readonly Ingredient[], recipe: Words, options: PlanOptions) =>
  (goals: Goals): Dish =>
    readDish(ingredients, {
      family: goals.family,
      servings: options.servings,
      goals,
      foods: options.foods,
      title: recipe.title,
      steps: recipe.steps,
    });

/** Net carbs of a serving of the recipe as it stands, as the budget judges them, g. */
function startOf({ goals, before }: PlanOptions): number {
  const counted = before.perServing.netCarbsG;
  if (counted === null) return 0;
  return goals.cautious ? counted.high : counted.best;
}

/**
 * Plans a recipe. Masses in grams, net carbs in grams a serving by the goals' rule. Lines without
 * food or weight are left alone and noted. When the budget is out of reach, the plan with the least
 * net carbs stands, `met` is false and `limits` says what holds it; a wish that cannot be met is
 * missed by as little as possible, and `limits` says so. Deterministic; never throws.
 */
export function planRecipe(
  ingredients: readonly Ingredient[],
  recipe: Words,
  options: PlanOptions,
): Plan {
  const { goals } = options;
  const read = reader(ingredients, recipe, options);
  const work = workOf(PLAN_WORK);
  const found = solveWithChanges(read(goals), startOf(options), work);
  const { dish } = found.model;
  const limits = limitsOf(
    found,
    isMet(found.solved, goals),
    (wishes) => buildModel(read(wishes)),
    work,
  );
  const notes = [
    ...dishNotes(ingredients, dish, found.solved.kitchen.amounts),
    ...workNote(work.ranOut || found.model.leftOut),
  ];
  return planOf(found, limits, notes);
}

/**
 * The curve of closeness against net carbs of a serving, from the least in reach to the original, with
 * a point at the net carbs of the plan. Worked out by itself, as it takes longer than the plan.
 */
export function planFrontier(
  ingredients: readonly Ingredient[],
  recipe: Words,
  options: PlanOptions,
): FrontierPoint[] {
  const dish = reader(ingredients, recipe, options)(options.goals);
  const work = workOf(PLAN_WORK);
  const { model, solved } = solveWithChanges(dish, startOf(options), work);
  return frontierOf(model, [evaluate(model.net, solved.solution.values)], work);
}
