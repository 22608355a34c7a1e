/** Which limits hold a plan, in plain words, what each costs, and what would loosen them. */
import type { Goals, Plan, Role } from '../model.ts';
import type { Dish, Part } from './dish/dish.ts';
import { evaluate } from './model/expressions.ts';
import { leastCarbs, type PlanModel, withBudget } from './model/plan-model.ts';
import { isServedOnPlates } from './serving-size.ts';
import { solveProgram } from './solver/branch-and-bound.ts';
import type { Program, Row, Solution } from './solver/programme.ts';
import type { Work } from './solver/work.ts';

export type Limit = Plan['limits'][number];

/** Room for kitchen rounding in the servings proposed. */
const ROUNDING_ROOM = 1.01;

const TIGHT = 1e-4;

/** Limits named at most, so that the list is read. Own choice. */
const MOST_NAMED = 4;

/** Times as many plates as the page's, up to which a smaller one is advice: half a plate is no meal. Own choice. */
const MOST_PLATES = 1.7;

/** Net carbs in a gram of a food of which less is worth a word, and what nobody weighs with carbohydrate in mind. Own choice. */
const RICH = 0.1;
const SEASONING: ReadonlySet<Role> = new Set(['vegetable', 'flavour', 'acid', 'liquid', 'protein']);

interface Binding extends Limit {
  row: Row;
}

/** Limits that are met with nothing to spare at these values, in the order of the model. */
function bindingRows(model: PlanModel, values: ReadonlyMap<string, number>): Binding[] {
  const found: Binding[] = [];
  for (const row of model.rows) {
    const meaning = model.meaning.get(row.id);
    if (!meaning) continue;
    const at = row.terms.reduce((sum, [id, c]) => sum + c * (values.get(id) ?? 0), 0);
    // A row no used choice touches does not hold anything back.
    const touched = row.terms.some(([id, c]) => Math.abs(c * (values.get(id) ?? 0)) > TIGHT);
    if (!touched) continue;
    const tight =
      (row.min !== undefined && at - row.min < TIGHT * (1 + Math.abs(row.min))) ||
      (row.max !== undefined && row.max - at < TIGHT * (1 + Math.abs(row.max)));
    if (tight) found.push({ ...meaning, row });
  }
  return found;
}

const without = (program: Program, row: Row): Program => ({
  variables: program.variables,
  rows: program.rows.filter((r) => r.id !== row.id),
});

/** Points of a hundred and grams below which a price is not worth a word. Own choice. */
export const WORTH = { points: 1, grams: 0.2 } as const;

/** A programme's optimum without the whole-number demand. */
export const relaxed = (program: Program, work: Work): Solution =>
  solveProgram(program, { relax: true }, work);

/** Limits that bind a plan within its budget, each with the closeness it costs. */
export function bindingLimits(
  model: PlanModel,
  values: ReadonlyMap<string, number>,
  budget: number,
  work: Work,
): Limit[] {
  const program = withBudget(model, budget);
  const as = relaxed(program, work);
  return bindingRows(model, values)
    .slice(0, MOST_NAMED)
    .map(({ code, text, row }) => {
      const free = relaxed(without(program, row), work);
      const points = 100 * (as.objective - free.objective);
      const said =
        as.status === 'optimal' && free.status === 'optimal' && points >= WORTH.points
          ? ` Without this limit the plan would be ${Math.round(points) === 1 ? '1 point' : `${Math.round(points)} points`} of 100 closer to the original.`
          : '';
      return { code, text: `${text}${said}` };
    });
}

/** Limits that keep the net carbs from falling further, each with the grams a serving it costs. */
function holdingLimits(model: PlanModel, work: Work): Limit[] {
  const program = leastCarbs(model);
  const netOf = (solution: Solution): number | null =>
    solution.status === 'optimal' ? evaluate(model.net, solution.values) : null;
  const lowest = relaxed(program, work);
  const as = netOf(lowest);
  return bindingRows(model, lowest.values)
    .slice(0, MOST_NAMED)
    .map(({ code, text, row }) => {
      const free = netOf(relaxed(without(program, row), work));
      const gain = as === null || free === null ? 0 : as - Math.max(0, free);
      const said =
        gain >= WORTH.grams
          ? ` Without this limit a serving would have ${gain.toFixed(1)} g less net carbs.`
          : '';
      return { code, text: `${text}${said}` };
    });
}

/** Foods that carry a good part of the net carbs, `net` g a serving, and that nothing replaces: two at most. */
function stuckFoods({ candidates, parts, servings }: Dish, net: number): string[] {
  const movable = new Set(candidates.map((c) => c.part.key));
  const carbs = (p: Part): number => p.net * p.grams * p.eaten;
  const stuck = parts.filter(
    (p) =>
      !movable.has(p.key) &&
      !p.fixed &&
      p.net >= RICH &&
      !SEASONING.has(p.role) &&
      carbs(p) > 0.1 * net * servings,
  );
  const names = stuck.sort((a, b) => carbs(b) - carbs(a)).map(({ food }) => food.name);
  return [...new Set(names)].slice(0, 2);
}

/** To a tenth of a gram, whole grams without it. */
export const shownGrams = (grams: number): string =>
  (Math.round(grams * 10) / 10).toFixed(1).replace(/\.0$/, '');

/** g a serving from which what is shown is not as far as the dish could be changed. Own choice. */
const FAR_FROM_LEAST = 1;

function leastText(
  { least, net }: { least: number; net: number },
  { budgetG, cautious }: Pick<Goals, 'budgetG' | 'cautious'>,
): string {
  const grams = `${least.toFixed(1)} g net carbs`;
  if (net > least + FAR_FROM_LEAST)
    return `Changed as far as we know how, a serving would still have ${grams} and hardly be the same dish; the budget is ${budgetG} g.`;
  const upper = cautious ? ' by the upper end' : '';
  return `The changes worth making bring this dish to ${grams} a serving${upper}; the budget is ${budgetG} g.`;
}

/**
 * Words for a budget that cannot be met: what holds it, and how many servings would meet it. `least` is
 * the least net carbs in reach, `net` what the plan comes to in kitchen amounts, both g a serving; of an
 * `unchanged` dish that is as low as it goes, nothing is said of changes.
 */
export function unmetLimits(
  model: PlanModel,
  { least, net, unchanged }: { least: number; net: number; unchanged: boolean },
  loosened: readonly Limit[],
  work: Work,
): Limit[] {
  const { dish } = model;
  const { budgetG } = dish.goals;
  const idle = unchanged && net <= least + FAR_FROM_LEAST;
  const text = idle
    ? `This way a serving has ${shownGrams(net)} g net carbs; the budget is ${shownGrams(budgetG)} g.`
    : leastText({ least, net }, dish.goals);
  const limits: Limit[] = [{ code: 'BUDGET_NOT_MET', text }];
  if (budgetG > 0) {
    const servings = Math.ceil((ROUNDING_ROOM * net * dish.servings) / budgetG - 1e-9);
    const plates = isServedOnPlates(dish.main.family) ? MOST_PLATES : Number.POSITIVE_INFINITY;
    if (servings <= plates * dish.servings)
      limits.push({
        code: 'MORE_SERVINGS',
        text: `Cut into ${servings} servings instead of ${dish.servings}, a serving would be within the budget.`,
      });
  }
  limits.push(...loosened, ...holdingLimits(model, work));
  for (const name of stuckFoods(dish, net)) {
    limits.push({
      code: 'NO_SWAP',
      text: `There is no good stand-in for the ${name} here; use less of it.`,
    });
  }
  return limits;
}
