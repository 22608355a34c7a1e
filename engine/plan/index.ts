/** The plan: the least change that brings a serving within its net-carb budget while the dish still works. */
import type { FoodTable } from '../foods/index.ts';
import type {
  ClosenessPart,
  Family,
  Goals,
  Ingredient,
  Note,
  Plan,
  Role,
  Tally,
} from '../model.ts';
import { type Amount, amountsOf, originalAmounts, total } from './amounts.ts';
import { type Dish, readDish } from './dish.ts';
import { doughFigures } from './dough.ts';
import { itemsOf, swapsOf } from './explain.ts';
import { recogniseFamily } from './family.ts';
import { netPerGram } from './figures.ts';
import { closenessOf, frontierOf } from './frontier.ts';
import { type KitchenPlan, kitchenAmounts } from './kitchen.ts';
import { bindingLimits, unmetLimits } from './limits.ts';
import { loosenings } from './loosen.ts';
import { buildModel, leastCarbs, type PlanModel, withBudget } from './model.ts';
import { type Solution, solveProgram } from './program.ts';
import { rolesOf } from './roles.ts';
import { evaluate } from './state.ts';

export { recogniseFamily } from './family.ts';

/** Net carbs of a serving of these masses, g. */
function netOf(amounts: readonly Amount[], dish: Dish): number {
  const rule = dish.goals.rule;
  return total(amounts, (a) => (netPerGram(a.food, rule) ?? 0) * a.eaten) / dish.servings;
}

interface Solved {
  solution: Solution;
  kitchen: KitchenPlan;
  net: number;
}

/** Kitchen rounding may use up the budget, so the programme is solved again a little tighter until it fits. */
function solveWithin(
  model: PlanModel,
  budget: number,
  lowest: Solution,
  least: number,
): Solved | null {
  const settle = (solution: Solution): Solved => {
    const exact = amountsOf(model, solution.values);
    const at = (cautious: boolean): Solved => {
      const kitchen = kitchenAmounts(exact, model.dish, cautious);
      return { solution, kitchen, net: netOf(kitchen.amounts, model.dish) };
    };
    const nearest = at(false);
    if (nearest.net <= budget || budget < least) return nearest;
    const lower = at(true);
    return lower.net <= budget ? lower : nearest;
  };
  const fallback = lowest.status === 'optimal' ? settle(lowest) : null;
  let target = budget;
  let found: Solved | null = null;
  for (let round = 0; round < 6; round++) {
    const solution = solveProgram(withBudget(model, target));
    if (solution.status !== 'optimal') break;
    const solved = settle(solution);
    if (found === null || solved.net < found.net) found = solved;
    if (solved.net <= budget) return found;
    target -= solved.net - budget + 0.02;
  }
  if (found === null) return fallback;
  return fallback && fallback.net <= budget ? fallback : found;
}

/** Closeness lost by these values, over all variables. */
const lossOf = (model: PlanModel, values: ReadonlyMap<string, number>): number =>
  model.variables.reduce((sum, { id, cost }) => sum + cost * (values.get(id) ?? 0), 0);

function closenessParts(
  model: PlanModel,
  values: ReadonlyMap<string, number>,
): Plan['closenessParts'] {
  const parts: Record<ClosenessPart, number> = {
    structure: 0,
    water: 0,
    sweetness: 0,
    fat: 0,
    flavour: 0,
  };
  for (const { id, cost } of model.variables) {
    const part = model.partOf.get(id);
    if (part) parts[part] += cost * (values.get(id) ?? 0);
  }
  const names = Object.keys(parts) as ClosenessPart[];
  return Object.fromEntries(names.map((name) => [name, closenessOf(parts[name])]));
}

function dishNotes(
  ingredients: readonly Ingredient[],
  dish: Dish,
  amounts: readonly Amount[],
): Note[] {
  const notes: Note[] = [];
  for (const { key, line, match, weight } of ingredients) {
    if (match && weight && dish.foods.byId(match.foodId)) continue;
    notes.push({
      code: 'NOT_PLANNED',
      text: `Left as it is, because ${match ? 'its weight' : 'the food'} is not known: ${line.text}`,
      key,
    });
  }
  for (const swap of new Set(
    amounts.flatMap((a) => (a.choice?.candidate ? [a.choice.candidate] : [])),
  )) {
    // What is cooked already was drained, and gives off nothing.
    if (swap.rule.water <= -0.1 && swap.to[0]?.food.state !== 'cooked') {
      notes.push({
        code: 'GIVES_OFF_WATER',
        text: `Expect water from the ${swap.to[0]?.food.name ?? 'replacement'}: dry it first, or use less liquid.`,
        key: swap.part.key,
      });
    }
  }
  return notes;
}

function familyOf(
  ingredients: readonly Ingredient[],
  recipe: { title: string; steps: readonly string[] },
  goals: Goals,
  foods: FoodTable,
): Plan['family'] {
  if (goals.family) return { id: goals.family, confidence: 1, why: 'chosen by you' };
  return recogniseFamily(ingredients, recipe, foods);
}

function rolesRecord(
  ingredients: readonly Ingredient[],
  family: Family,
  foods: FoodTable,
): Record<string, Role[]> {
  return Object.fromEntries(
    [...rolesOf(ingredients, family, foods)].map(([key, { role }]) => [key, [role]]),
  );
}

/**
 * Plans a recipe. Masses in grams, net carbs in grams a serving by the goals' rule. Lines without
 * food or weight are left alone and noted. When the budget is out of reach, the plan with the least
 * net carbs stands, `met` is false and `limits` says what holds it. Deterministic; never throws.
 */
export function planRecipe(
  ingredients: readonly Ingredient[],
  recipe: { title: string; steps: string[] },
  options: { goals: Goals; servings: number; foods: FoodTable; before: Tally },
): Plan {
  const { goals, foods, before } = options;
  const family = familyOf(ingredients, recipe, goals, foods);
  const build = (wishes: Goals): PlanModel =>
    buildModel(
      readDish(ingredients, {
        family: family.id,
        servings: options.servings,
        goals: wishes,
        foods,
        title: recipe.title,
        steps: recipe.steps,
      }),
    );
  const model = build(goals);
  const { dish } = model;
  const original = originalAmounts(dish);
  const start = before.perServing.netCarbsG?.best ?? model.net.constant;
  const within = Math.max(start, model.net.constant) <= goals.budgetG;
  const lowest = solveProgram(leastCarbs(model));
  const least =
    lowest.status === 'optimal'
      ? Math.max(0, evaluate(model.net, lowest.values))
      : model.net.constant;
  const idle: Solved = {
    solution: { status: 'optimal', objective: 0, values: new Map() },
    kitchen: { amounts: original, reserve: null },
    net: model.net.constant,
  };
  const solved = within ? idle : (solveWithin(model, goals.budgetG, lowest, least) ?? idle);
  const { amounts, reserve } = solved.kitchen;
  const met = solved.net <= goals.budgetG + 1e-9;
  const doughBefore = dish.dough ? doughFigures(original) : null;
  const doughAfter = dish.dough ? doughFigures(amounts) : null;
  const { values } = solved.solution;
  const closeness = closenessOf(lossOf(model, values));
  return {
    family,
    parts: [
      {
        title: null,
        family: family.id,
        why: family.why,
        keys: ingredients.map(({ key }) => key),
      },
    ],
    roles: rolesRecord(ingredients, family.id, foods),
    budgetG: goals.budgetG,
    met,
    items: itemsOf(dish, amounts),
    swaps: swapsOf(model, amounts),
    reserveWaterG: reserve,
    dough: doughBefore && doughAfter ? { before: doughBefore, after: doughAfter } : null,
    closeness,
    closenessParts: closenessParts(model, values),
    frontier: frontierOf(model, least, { netCarbsG: evaluate(model.net, values), closeness }),
    limits: met
      ? within
        ? []
        : bindingLimits(model, values).filter(({ code }) => code !== 'SWEETNESS-LEAST')
      : unmetLimits(model, solved.net, values, loosenings(build, goals, least)),
    notes: dishNotes(ingredients, dish, amounts),
  };
}
