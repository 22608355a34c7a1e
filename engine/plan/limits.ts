/** Which limits hold a plan, in plain words, and what would loosen them. */
import type { Plan } from '../model.ts';
import type { PlanModel } from './model.ts';

type Limit = Plan['limits'][number];

/** Room for kitchen rounding in the servings proposed. */
const ROUNDING_ROOM = 1.01;

const TIGHT = 1e-4;

/** Limits that are met with nothing to spare at these values, in the order of the model. */
export function bindingLimits(model: PlanModel, values: ReadonlyMap<string, number>): Limit[] {
  const found: Limit[] = [];
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
    if (tight) found.push(meaning);
  }
  return found;
}

/** Words for a budget that cannot be met: what holds it, and how many servings would meet it. */
export function unmetLimits(
  model: PlanModel,
  least: number,
  values: ReadonlyMap<string, number>,
  loosened: readonly Limit[],
): Limit[] {
  const { dish } = model;
  const { budgetG } = dish.goals;
  const limits: Limit[] = [
    {
      code: 'BUDGET_NOT_MET',
      text: `The least this dish can reach is ${least.toFixed(1)} g net carbs a serving; the budget is ${budgetG} g.`,
    },
  ];
  if (budgetG > 0) {
    const servings = Math.ceil((ROUNDING_ROOM * least * dish.servings) / budgetG - 1e-9);
    limits.push({
      code: 'MORE_SERVINGS',
      text: `Cut into ${servings} servings instead of ${dish.servings}, a serving would be within the budget.`,
    });
  }
  limits.push(...loosened);
  limits.push(...bindingLimits(model, values).slice(0, 4));
  const movable = new Set(dish.candidates.map((c) => c.part.key));
  const stuck = dish.parts
    .filter(
      (p) =>
        !movable.has(p.key) && !p.fixed && p.net * p.grams * p.eaten > 0.1 * least * dish.servings,
    )
    .sort((a, b) => b.net * b.grams * b.eaten - a.net * a.grams * a.eaten);
  for (const part of stuck.slice(0, 2)) {
    limits.push({
      code: 'NO_SWAP',
      text: `There is no good stand-in for the ${part.food.name} here; use less of it.`,
    });
  }
  return limits;
}
