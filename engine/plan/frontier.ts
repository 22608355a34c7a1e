/** The curve of closeness to the original against net carbs of a serving. */
import type { Plan } from '../model.ts';
import { closenessOf, lossOf } from './model/closeness.ts';
import { evaluate } from './model/expressions.ts';
import { type PlanModel, withBudget } from './model/plan-model.ts';
import { nearest, openedBy } from './solver/branch-and-bound.ts';
import { frameOf, rebound } from './solver/search-frame.ts';

type Point = Plan['frontier'][number];

const POINTS = 14;

const round = (value: number): number => Math.round(value * 1000) / 1000;

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
 * Points from the least reachable net carbs to the original's, each a plan that can be made, with
 * `chosen`, the plan's own point. One point when nothing can change.
 */
export function frontierOf(
  model: PlanModel,
  least: number,
  chosen: { point: Point; values: ReadonlyMap<string, number> },
): Point[] {
  const most = model.net.constant;
  const end = { netCarbsG: round(most), closeness: 1 };
  if (most - least < 0.05) return [end];
  const points: Point[] = [];
  const used = (values: ReadonlyMap<string, number>): Set<string> =>
    new Set(openedBy(model, values));
  const own = used(chosen.values);
  let frame = frameOf(withBudget(model, most));
  let last: Set<string> | null = null;
  const tryAt = (budget: number): void => {
    const nearby = [...(own.size > 0 ? [own] : []), ...(last ? [last] : [])];
    // The closest plan found: from the relaxed programme, or by the swaps of a plan nearby.
    frame = rebound(frame, 'budget', budget - most);
    const solution = nearest(frame, nearby);
    if (!solution) return;
    last = used(solution.values);
    const netCarbsG = round(evaluate(model.net, solution.values));
    points.push({ netCarbsG, closeness: round(closenessOf(lossOf(model, solution.values))) });
  };
  for (let at = 0; at < POINTS - 1; at++)
    tryAt(least + 1e-3 + ((most - least) * at) / (POINTS - 1));
  const { netCarbsG, closeness } = chosen.point;
  if (netCarbsG < most - 0.01)
    points.push({ netCarbsG: round(netCarbsG), closeness: round(closeness) });
  const curve = (): Point[] => [...rising(points.filter((p) => p.netCarbsG < end.netCarbsG)), end];
  for (let more = 0; more < MORE_TRIES && curve().length < POINTS; more++) {
    const gap = widestGap(curve(), more);
    if (gap !== null) tryAt(gap);
  }
  return curve();
}

/** Looks this often into gaps of a curve that came out with few points. */
const MORE_TRIES = 6;

/** A budget inside the `nth` widest gap between points; null when there is none. */
function widestGap(curve: readonly Point[], nth: number): number | null {
  const gaps = curve.slice(1).map((point, at) => ({
    width: point.netCarbsG - (curve[at]?.netCarbsG ?? 0),
    // A little above the middle, as a plan often stays below its budget.
    budget: 0.4 * (curve[at]?.netCarbsG ?? 0) + 0.6 * point.netCarbsG,
  }));
  return gaps.sort((a, b) => b.width - a.width)[nth % 2]?.budget ?? null;
}
