/** Finds the plan of a model in kitchen amounts within a budget. */

import { judged } from './judge-masses.ts';
import { type Amount, amountsOf, originalAmounts } from './kitchen/planned-masses.ts';
import { type KitchenPlan, kitchenAmounts } from './kitchen/practical-amounts.ts';
import { evaluate } from './model/expressions.ts';
import { spread } from './model/many-lines.ts';
import { leastCarbs, type PlanModel, withBudget } from './model/plan-model.ts';
import { openedBy, solveFrame, solveProgram, solveSettled } from './solver/branch-and-bound.ts';
import type { Solution } from './solver/programme.ts';
import { type Frame, frameOf, rebound } from './solver/search-frame.ts';
import type { Work } from './solver/work.ts';

export interface Solved {
  solution: Solution;
  kitchen: KitchenPlan;
  /** g net carbs a serving that the budget is held against. */
  net: number;
  /** Least net carbs of a serving in reach before kitchen rounding, g; null when the budget did not ask for it. */
  least: number | null;
}

const UNCHANGED: Solution = { status: 'optimal', objective: 0, values: new Map() };

/** The dish as it is, with what the user accepted after a bake. */
export function unchanged(model: PlanModel): Solved {
  const { dish } = model;
  const original: Amount[] = originalAmounts(dish);
  const kitchen: KitchenPlan =
    dish.goals.adjustments.length > 0
      ? kitchenAmounts(original, dish, false)
      : { amounts: original, reserve: null };
  return { solution: UNCHANGED, kitchen, net: judged(kitchen.amounts, dish), least: null };
}

/** The lowest plan in reach, and its net carbs, g a serving before kitchen rounding. */
export interface Lowest {
  solution: Solution;
  net: number;
}

/** The plan with the least net carbs, to within `gap` g a serving. */
export function lowest(model: PlanModel, work: Work, gap = 0): Lowest {
  const solution = solveProgram(leastCarbs(model), { gap }, work);
  return {
    solution,
    net:
      solution.status === 'optimal'
        ? Math.max(0, evaluate(model.net, solution.values))
        : model.net.constant,
  };
}

/** Times the programme is tightened for what kitchen rounding and doubt add. */
const ROUNDS = 6;
/** Aims this much below the budget, g, so that one more round seldom is needed. */
const MARGIN = 0.02;

/** Net carbs a plan may have above the very least when the budget is out of reach: closer for so little, g. Own choice. */
const NEAR_LEAST_G = 0.05;

function inKitchen(model: PlanModel, found: Solution, budget: number, nearest: boolean): Solved {
  const { dish } = model;
  const solution = { ...found, values: spread(found.values, model) };
  const exact = amountsOf(model, solution.values);
  const at = (cautious: boolean): Solved => {
    const kitchen = kitchenAmounts(exact, dish, cautious);
    return { solution, kitchen, net: judged(kitchen.amounts, dish), least: null };
  };
  const plain = at(false);
  if (plain.net <= budget || nearest) return plain;
  const lower = at(true);
  return lower.net <= budget ? lower : plain;
}

/** The closest plan among those with about the least net carbs. */
function nearLeast(
  model: PlanModel,
  budget: number,
  at: (net: number) => Frame,
  work: Work,
): Solved | null {
  const low = lowest(model, work);
  if (low.solution.status !== 'optimal') return null;
  const closest = solveFrame(at(low.net + NEAR_LEAST_G));
  const best = closest.status === 'optimal' ? closest : low.solution;
  return { ...inKitchen(model, best, budget, true), least: low.net };
}

/**
 * Points of closeness that a budget's worth of net carbs less is worth where the budget is out of reach: a
 * cook then makes the changes that pay, not every change there is. They pay twice where they also leave
 * the serving larger. Own choice.
 */
const WORTH_OF_BUDGET = 0.45;
const WORTH_OF_SIZE = 0.45;

/** The same where little is left above it, and where an easy sugar is what is left. Own choice. */
const WORTH_OF_REST = { plain: WORTH_OF_BUDGET, dear: 0.9, dearest: 1.2 } as const;

/** How dear what is left above a budget is. */
export type Rest = keyof typeof WORTH_OF_REST;

/** The plan whose changes pay for themselves, with at most `most` g a serving; null when none has so little. */
export function solveWorthwhile(
  model: PlanModel,
  { most, rest }: { most: number; rest: Rest },
  work: Work,
): Solved | null {
  const slope = new Map(model.net.terms);
  const cut = Number.isFinite(most);
  const worth = WORTH_OF_REST[rest] + (cut ? WORTH_OF_SIZE : 0);
  const price = worth / Math.max(model.dish.goals.budgetG, 1);
  const { rows } = cut ? withBudget(model, most) : model;
  const variables = model.variables.map((v) => ({
    ...v,
    cost: v.cost + price * (slope.get(v.id) ?? 0),
  }));
  const solution = solveProgram({ variables, rows }, {}, work);
  return solution.status === 'optimal' ? inKitchen(model, solution, most, false) : null;
}

/**
 * The closest plan to the original whose kitchen amounts are within `budget`, g a serving; kitchen
 * rounding and, when judged cautiously, doubt may use up the budget, so the programme is solved again
 * a little tighter, with the same swaps, until it fits. When nothing fits, the closest plan with
 * about the least net carbs; null when the model cannot be solved with the work allowed.
 */
export function solveWithin(model: PlanModel, budget: number, work: Work): Solved | null {
  const frame = frameOf(withBudget(model, budget), work);
  const at = (net: number): Frame => rebound(frame, 'budget', net - model.net.constant);
  const first = solveFrame(frame);
  if (first.status !== 'optimal') return nearLeast(model, budget, at, work);
  const on = new Set(openedBy(model, first.values));
  let found = inKitchen(model, first, budget, false);
  let target = budget;
  for (let round = 1; round < ROUNDS && found.net > budget; round++) {
    target -= found.net - budget + MARGIN;
    const tighter = at(target);
    const same = solveSettled(tighter, on);
    const solution = same.status === 'optimal' ? same : solveFrame(tighter);
    if (solution.status !== 'optimal') break;
    const next = inKitchen(model, solution, budget, false);
    if (next.net < found.net) found = next;
    if (same.status !== 'optimal')
      openedBy(model, solution.values).forEach((id) => void on.add(id));
  }
  if (found.net <= budget) return found;
  const low = nearLeast(model, budget, at, work);
  return low && low.net < found.net ? low : { ...found, least: low?.least ?? null };
}
