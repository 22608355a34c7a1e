/** A mixed-integer linear programme in plain form, and its solution by simplex and branch and cut. */
import { solve } from 'yalps';

export interface Variable {
  id: string;
  /** Objective coefficient; the objective is minimised. Variables are at least 0. */
  cost: number;
  /** Upper bound, else none. */
  max?: number;
  binary?: boolean;
}

export interface Row {
  id: string;
  min?: number;
  max?: number;
  terms: readonly (readonly [string, number])[];
}

export interface Program {
  variables: readonly Variable[];
  rows: readonly Row[];
}

export interface Solution {
  status: 'optimal' | 'infeasible' | 'failed';
  objective: number;
  values: ReadonlyMap<string, number>;
}

const FAILED: Solution = { status: 'failed', objective: Number.NaN, values: new Map() };

/** Branches at most this often: beyond it the best plan found so far stands, the same on every run. */
const MAX_ITERATIONS = 400;

/**
 * Solves a programme; deterministic (no clock). `relax` drops the whole-number demand on binaries.
 * Never throws: an unsolvable programme has status `infeasible` or `failed`.
 */
export function solveProgram(program: Program, options: { relax?: boolean } = {}): Solution {
  const coefficients = new Map<string, Map<string, number>>();
  const constraints = new Map<string, { min?: number; max?: number }>();
  const binaries: string[] = [];
  for (const variable of program.variables) {
    const column = new Map<string, number>([['cost', variable.cost]]);
    coefficients.set(variable.id, column);
    if (variable.binary && !options.relax) binaries.push(variable.id);
    const max = variable.binary ? 1 : variable.max;
    if (max !== undefined && !(variable.binary && !options.relax)) {
      constraints.set(`bound ${variable.id}`, { max });
      column.set(`bound ${variable.id}`, 1);
    }
  }
  for (const row of program.rows) {
    const bounds: { min?: number; max?: number } = {};
    if (row.min !== undefined) bounds.min = row.min;
    if (row.max !== undefined) bounds.max = row.max;
    constraints.set(row.id, bounds);
    for (const [id, value] of row.terms) coefficients.get(id)?.set(row.id, value);
  }
  const answer = solve(
    { direction: 'minimize', objective: 'cost', constraints, variables: coefficients, binaries },
    { maxIterations: MAX_ITERATIONS, precision: 1e-9, includeZeroVariables: false },
  );
  if (answer.status === 'infeasible') return { ...FAILED, status: 'infeasible' };
  if (!Number.isFinite(answer.result)) return FAILED;
  return { status: 'optimal', objective: answer.result, values: new Map(answer.variables) };
}
