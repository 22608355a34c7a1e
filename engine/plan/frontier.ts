/** The curve of closeness to the original against net carbs of a serving. */
import type { Plan } from '../model.ts';
import { type PlanModel, withBudget } from './model.ts';
import { solveProgram } from './program.ts';
import { evaluate } from './state.ts';

type Point = Plan['frontier'][number];

const POINTS = 14;

/** Closeness (0..1) of an objective value: 1 is the original. */
export const closenessOf = (objective: number): number => Math.max(0, Math.min(1, 1 - objective));

const round = (value: number): number => Math.round(value * 1000) / 1000;

/** Loss of a solution found without whole-number choices, with every swap in use paid in full. */
function lossOf(model: PlanModel, values: ReadonlyMap<string, number>): number {
  return model.variables.reduce((sum, { id, cost, binary }) => {
    const value = values.get(id) ?? 0;
    return sum + (binary ? (value > 1e-6 ? cost : 0) : cost * value);
  }, 0);
}

/** A plan with less net carbs also serves a larger budget, so closeness never falls along the curve. */
function rising(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((a, b) => a.netCarbsG - b.netCarbsG || b.closeness - a.closeness);
  const curve: Point[] = [];
  for (const point of sorted) {
    const last = curve.at(-1);
    if (last && point.netCarbsG <= last.netCarbsG) continue;
    curve.push({ ...point, closeness: Math.max(point.closeness, last?.closeness ?? 0) });
  }
  return curve;
}

/**
 * Points from the least reachable net carbs to the original's, with `chosen`, the plan's own point.
 * One point when nothing can change.
 */
export function frontierOf(model: PlanModel, least: number, chosen: Point | null): Point[] {
  const most = model.net.constant;
  const end = { netCarbsG: round(most), closeness: 1 };
  if (most - least < 0.05) return [end];
  const points: Point[] = [];
  for (let at = 0; at < POINTS - 1; at++) {
    const budget = least + 1e-3 + ((most - least) * at) / (POINTS - 1);
    const solution = solveProgram(withBudget(model, budget), { relax: true });
    if (solution.status !== 'optimal') continue;
    const netCarbsG = round(evaluate(model.net, solution.values));
    points.push({ netCarbsG, closeness: round(closenessOf(lossOf(model, solution.values))) });
  }
  if (chosen && chosen.netCarbsG < most - 0.01) {
    points.push({ netCarbsG: round(chosen.netCarbsG), closeness: round(chosen.closeness) });
  }
  return [...rising(points.filter((p) => p.netCarbsG < end.netCarbsG)), end];
}
