/** Solves a dish and puts its plan together: masses, changes, limits and notes. */
import type { Food, Goals, Ingredient, Note, Plan, Purchase, Role, Way } from '../model.ts';
import type { Dish } from './dish/dish.ts';
import { fibreIn, stomachSweetenersIn } from './dish/food-figures.ts';
import { availabilityOf } from './dish/shopping.ts';
import { icingLoss } from './dish/sugars/icing.ts';
import { itemsOf, swapsOf } from './explain.ts';
import { doughFigures } from './kitchen/dough-figures.ts';
import { type Amount, originalAmounts, total } from './kitchen/planned-masses.ts';
import { wishesMet } from './missed-wishes.ts';
import { closenessOf, closenessParts, lossOf } from './model/closeness.ts';
import { linear } from './model/expressions.ts';
import { buildModel, type Extent, type PlanModel, plainModel } from './model/plan-model.ts';
import { leverTargets } from './model/rows/lever-rows.ts';
import { withoutSet } from './model/rows/set-rows.ts';
import { dishNotes, workNote } from './plan-notes.ts';
import { type Rest, type Solved, solveWithin, solveWorthwhile, unchanged } from './solve.ts';
import type { Work } from './solver/work.ts';

export interface Answer {
  model: PlanModel;
  solved: Solved;
  /** Nothing had to change. */
  idle: boolean;
}

/** What one answer is asked for. */
export interface Question {
  /** Net carbs of a serving as it stands, g. */
  start: number;
  /** Net carbs a serving may have, g. */
  budgetG: number;
  extent: Extent;
  /** Where the budget is out of reach: the changes that pay for themselves, within this many g a serving. */
  atMost?: number;
  /** How dear what is left above the budget is; plain when left out. */
  rest?: Rest;
  /** Servings it is eaten in, where those are more than the page's. */
  pieces?: number;
}

/** Solves one model; the original stands when it is within the budget and every wish. */
function solveModel(
  model: PlanModel,
  { start, budgetG, atMost, rest = 'plain' }: Question,
  changes: boolean,
  work: Work,
): Answer {
  const still = unchanged(model);
  const idle =
    !changes && Math.max(start, still.net) <= budgetG && wishesMet(model, still.kitchen.amounts);
  const found = (of: PlanModel): Solved | null =>
    atMost === undefined
      ? solveWithin(of, budgetG, work)
      : solveWorthwhile(of, { most: atMost, rest }, work);
  // What the user has set may be more than the dish's limits allow; then they go first.
  const solved = idle ? still : (found(model) ?? found(withoutSet(model)) ?? still);
  return { model, solved, idle };
}

/**
 * Solves a dish with the changes accepted after a bake: first without those that need rows, then with
 * what they ask for.
 */
export function solveDish(dish: Dish, question: Question, work: Work): Answer {
  const { extent, pieces } = question;
  const plain = solveModel(plainModel(dish, extent, pieces), question, false, work);
  const targets = leverTargets(
    (attribute) => linear(dish, plain.model.choices, attribute),
    dish,
    plain.solved.solution.values,
  );
  return targets.length === 0
    ? plain
    : solveModel(buildModel(dish, targets, extent, pieces), question, true, work);
}

/** The dish as it is, as an answer of its own. */
export const unchangedAnswer = (model: PlanModel): Answer => ({
  model,
  solved: unchanged(model),
  idle: true,
});

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

const ORDER = { speciality: 0, common: 1, cupboard: 2 } as const;

/** Foods the dish did not have, those of a special shop first, then the largest. */
function shoppingOf(dish: Dish, amounts: readonly Amount[]): Purchase[] {
  const had = new Set(dish.parts.map(({ food }) => food.id));
  const grams = new Map<Food, number>();
  for (const { food, grams: g } of amounts)
    if (g > 0 && !had.has(food.id)) grams.set(food, (grams.get(food) ?? 0) + g);
  return [...grams]
    .map(([food, g]) => ({
      foodId: food.id,
      food: food.name,
      grams: Math.round(g * 1000) / 1000,
      availability: availabilityOf(food, dish.goals),
    }))
    .sort((a, b) => ORDER[a.availability] - ORDER[b.availability] || b.grams - a.grams);
}

function stomachOf(dish: Dish, amounts: readonly Amount[], servings: number): Plan['stomach'] {
  const fibre = (list: readonly Amount[]): number => total(list, (a) => fibreIn(a.food) * a.eaten);
  const sweeteners = total(amounts, (a) => stomachSweetenersIn(a.food) * a.eaten);
  return {
    sweetenersG: sweeteners / servings,
    addedFibreG: Math.max(0, fibre(amounts) - fibre(originalAmounts(dish))) / servings,
  };
}

/** How a plan is served, and whether that keeps to the budget. */
export interface Served {
  way: Way;
  servings: number;
  met: boolean;
}

/** The plan of an answer, served one way. */
export function planOf(found: Answer, served: Served, limits: Plan['limits'], notes: Note[]): Plan {
  const { model, solved } = found;
  const { dish } = model;
  const { main, goals } = dish;
  const { amounts, reserve } = solved.kitchen;
  const { values } = solved.solution;
  return {
    way: served.way,
    servings: served.servings,
    family: { id: main.family, confidence: main.confidence, why: main.why },
    parts: dish.sections.map(({ title, family, why, keys }) => ({ title, family, why, keys })),
    roles: rolesRecord(dish),
    budgetG: goals.budgetG,
    met: served.met,
    items: itemsOf(dish, amounts),
    swaps: swapsOf(model, values, amounts, served),
    shopping: shoppingOf(dish, amounts),
    stomach: stomachOf(dish, amounts, served.servings),
    reserveWaterG: reserve,
    dough: doughOf(dish, amounts),
    closeness: closenessOf(lossOf(model, values) + icingLoss(dish)),
    closenessParts: closenessParts(model, values),
    limits,
    promises: dish.promises,
    notReworked: dish.notReworked,
    notes,
  };
}

/** What the reader of an answer's plan should know. */
export const notesOf = (
  ingredients: readonly Ingredient[],
  { model, solved }: Answer,
  work: Work,
): Note[] => [
  ...dishNotes(ingredients, model.dish, solved.kitchen.amounts),
  ...workNote(work.ranOut || model.leftOut),
];

export const isMet = (net: number, { budgetG }: Goals): boolean => net <= budgetG + 1e-9;
