/** Closeness to the original: 1 is the original, each change costs some. */
import type { ClosenessPart, Plan } from '../../model.ts';
import type { PlanVariable } from './row-builder.ts';

/** The costed variables of a programme, and the part of closeness each belongs to. */
interface Costed {
  variables: readonly PlanVariable[];
  partOf: ReadonlyMap<string, ClosenessPart>;
}

/** Closeness (0..1) of an objective value: 1 is the original. */
export const closenessOf = (objective: number): number => Math.max(0, Math.min(1, 1 - objective));

/** Closeness lost per unit of a variable: its cost without what is paid for missed wishes and for trouble. */
export const lossPerUnit = ({ cost, penalty, trouble = 0 }: PlanVariable): number =>
  penalty ? 0 : cost - trouble;

/** Closeness lost by these values. */
export const lossOf = (
  model: Pick<Costed, 'variables'>,
  values: ReadonlyMap<string, number>,
): number => model.variables.reduce((sum, v) => sum + lossPerUnit(v) * (values.get(v.id) ?? 0), 0);

/** Closeness in each part of what a dish is; together the parts' losses are the whole loss. */
export function closenessParts(
  model: Costed,
  values: ReadonlyMap<string, number>,
): Plan['closenessParts'] {
  const parts: Record<ClosenessPart, number> = {
    structure: 0,
    water: 0,
    sweetness: 0,
    fat: 0,
    flavour: 0,
  };
  for (const variable of model.variables) {
    const part = model.partOf.get(variable.id);
    if (part) parts[part] += lossPerUnit(variable) * (values.get(variable.id) ?? 0);
  }
  const names = Object.keys(parts) as ClosenessPart[];
  return Object.fromEntries(names.map((name) => [name, closenessOf(parts[name])]));
}
