/** The curve of closeness to the original against net carbs of a serving. */
import type { Plan } from '../model.ts';
import { type PlanModel, withBudget } from './model.ts';
import { solveProgram } from './program.ts';
import { evaluate } from './state.ts';

const POINTS = 13;

/** Closeness (0..1) of an objective value: 1 is the original. */
export const closenessOf = (objective: number): number => Math.max(0, Math.min(1, 1 - objective));

const round = (value: number): number => Math.round(value * 1000) / 1000;

/**
 * Points from the least reachable net carbs to the original's, closeness rising with net carbs.
 * One point when nothing can change.
 */
export function frontierOf(model: PlanModel, least: number): Plan['frontier'] {
  const most = model.net.constant;
  const end = { netCarbsG: round(most), closeness: 1 };
  if (most - least < 0.05) return [end];
  const points: Plan['frontier'] = [];
  for (let at = 0; at < POINTS - 1; at++) {
    const budget = least + 1e-3 + ((most - least) * at) / (POINTS - 1);
    const solution = solveProgram(withBudget(model, budget));
    if (solution.status !== 'optimal') continue;
    const netCarbsG = round(evaluate(model.net, solution.values));
    const closeness = round(closenessOf(solution.objective));
    const last = points.at(-1);
    if (last && netCarbsG <= last.netCarbsG) continue;
    points.push({ netCarbsG, closeness: Math.max(closeness, last?.closeness ?? 0) });
  }
  return [...points, end];
}
