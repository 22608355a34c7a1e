/** The curve of closeness to the original against net carbs of a serving. */
import type { FrontierPoint } from '../model.ts';
import { closenessOf, lossOf } from './model/closeness.ts';
import { evaluate } from './model/expressions.ts';
import { type PlanModel, withBudget } from './model/plan-model.ts';
import { lowest } from './solve.ts';
import { openedBy, solveFrame } from './solver/branch-and-bound.ts';
import { frameOf, rebound } from './solver/search-frame.ts';
import type { Work } from './solver/work.ts';

const POINTS = 14;

/** Looks this often into gaps of a curve that came out with few points. */
const MORE_TRIES = 6;

/** Net carbs between the least and the original's below which there is no curve to draw, g. */
const NO_CURVE_G = 0.05;

/** The curve starts this far above the very least, g: the last crumbs of it cost closeness no one would pay. Own choice. */
const ABOVE_LEAST_G = 0.05;

const round = (value: number): number => Math.round(value * 1000) / 1000;
/** Net carbs are rounded up, so that the plan of a point stays within them. */
const roundUp = (value: number): number => Math.ceil(value * 1000 - 1e-6) / 1000;

/** A plan with less net carbs also serves a larger budget, so closeness never falls along the curve. */
function rising(points: readonly FrontierPoint[]): FrontierPoint[] {
  const sorted = [...points].sort((a, b) => a.netCarbsG - b.netCarbsG || b.closeness - a.closeness);
  const curve: FrontierPoint[] = [];
  for (const point of sorted) {
    const last = curve.at(-1);
    if (last && point.netCarbsG <= last.netCarbsG) continue;
    curve.push({ ...point, closeness: Math.max(point.closeness, last?.closeness ?? 0) });
  }
  return curve;
}

/** A budget inside the `nth` widest gap between points; null when there is none. */
function inWidestGap(curve: readonly FrontierPoint[], nth: number): number | null {
  const gaps = curve.slice(1).map((point, at) => ({
    width: point.netCarbsG - (curve[at]?.netCarbsG ?? 0),
    // A little above the middle, as a plan often stays below its budget.
    budget: 0.4 * (curve[at]?.netCarbsG ?? 0) + 0.6 * point.netCarbsG,
  }));
  return gaps.sort((a, b) => b.width - a.width)[nth % 2]?.budget ?? null;
}

/**
 * Points from about the least reachable net carbs to the original's, each the closest plan there is at its
 * net carbs, before kitchen rounding; `also` are budgets that get a point of their own. One point when
 * nothing can change.
 */
export function frontierOf(model: PlanModel, also: readonly number[], work: Work): FrontierPoint[] {
  const most = model.net.constant;
  const end = { netCarbsG: roundUp(most), closeness: 1 };
  const least = lowest(model, work).net;
  const start = least + ABOVE_LEAST_G;
  if (most - start < NO_CURVE_G) return [end];
  const points: FrontierPoint[] = [];
  let frame = frameOf(withBudget(model, most), work);
  let last: ReadonlySet<string> | null = null;
  const solveAt = (budget: number): void => {
    frame = rebound(frame, 'budget', budget - most);
    const solution = solveFrame(frame, { tries: last ? [last] : [] });
    if (solution.status !== 'optimal') return;
    last = new Set(openedBy(model, solution.values));
    points.push({
      netCarbsG: roundUp(evaluate(model.net, solution.values)),
      closeness: round(closenessOf(lossOf(model, solution.values))),
    });
  };
  const even = Array.from({ length: POINTS - 1 }, (_, at) =>
    roundUp(start + ((most - start) * at) / (POINTS - 1)),
  );
  for (const budget of [...even, ...also.filter((b) => b > start && b < most)].sort(
    (a, b) => a - b,
  ))
    solveAt(budget);
  const curve = (): FrontierPoint[] => [
    ...rising(points.filter((p) => p.netCarbsG < end.netCarbsG)),
    end,
  ];
  for (let more = 0; more < MORE_TRIES && curve().length < POINTS; more++) {
    const budget = inWidestGap(curve(), more);
    if (budget !== null) solveAt(roundUp(budget));
  }
  return curve();
}
