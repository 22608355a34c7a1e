/** Closeness to the original: 1 is the original, each change costs some. */
import type { ClosenessPart, Plan } from '../../model.ts';
import type { PlanModel } from './plan-model.ts';

/** Closeness (0..1) of an objective value: 1 is the original. */
export const closenessOf = (objective: number): number => Math.max(0, Math.min(1, 1 - objective));

/** Closeness lost by these values, without what is paid for missed wishes. */
export const lossOf = (model: PlanModel, values: ReadonlyMap<string, number>): number =>
  model.variables.reduce(
    (sum, { id, cost, penalty }) => sum + (penalty ? 0 : cost * (values.get(id) ?? 0)),
    0,
  );

/** Closeness in each part of what a dish is; together the parts' losses are the whole loss. */
export function closenessParts(
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
