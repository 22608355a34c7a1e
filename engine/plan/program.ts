/** A mixed-integer linear programme in plain form, and the simplex for its continuous part. */
import { solve } from 'yalps';

export interface Variable {
  id: string;
  /** Objective coefficient; the objective is minimised. Variables are at least 0. */
  cost: number;
  /** Upper bound, else none. */
  max?: number;
  binary?: boolean;
  /** Of a binary: the variables that stay 0 while it is 0, each with its largest value. */
  opens?: readonly { id: string; most: number }[];
  /** Pays for a wish that is missed, not for a change of the dish. */
  penalty?: boolean;
}

export interface Row {
  id: string;
  min?: number;
  max?: number;
  terms: readonly (readonly [string, number])[];
  /** The binary whose switch this row is: it says nothing while that is neither 0 nor 1. */
  switch?: string;
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

export const INFEASIBLE: Solution = {
  status: 'infeasible',
  objective: Number.NaN,
  values: new Map(),
};
const FAILED: Solution = { ...INFEASIBLE, status: 'failed' };

/** More pivots than this and the simplex goes in circles. */
const MOST_PIVOTS = 2000;

/** A variable with its coefficients by row. */
export interface Column {
  variable: Variable;
  terms: readonly (readonly [string, number])[];
}

type Bounds = { min?: number; max?: number };

const PRECISION = 1e-9;
/**
 * Bounds give way by this share, each by a little more or less than the next: rounding errors then
 * make no row look broken, and fewer rows are tight at once.
 */
const SLACK = 1e-8;
/** A bound that is missed by more than this share of what its row adds up is not kept. */
const KEPT = 1e-6;

/** Whether values keep every bound: a simplex that lost its way says it is done and is not. */
function keeps(
  columns: readonly Column[],
  constraints: ReadonlyMap<string, Bounds>,
  values: ReadonlyMap<string, number>,
): boolean {
  const at = new Map<string, number>();
  const size = new Map<string, number>();
  for (const { variable, terms } of columns) {
    const value = values.get(variable.id) ?? 0;
    if (value === 0) continue;
    if (variable.max !== undefined && value > variable.max + KEPT * (1 + variable.max))
      return false;
    for (const [row, c] of terms) {
      at.set(row, (at.get(row) ?? 0) + c * value);
      size.set(row, (size.get(row) ?? 0) + Math.abs(c * value));
    }
  }
  for (const [row, { min, max }] of constraints) {
    if (row.startsWith('bound ')) continue;
    const sum = at.get(row) ?? 0;
    const slack = KEPT * (1 + (size.get(row) ?? 0));
    if ((min !== undefined && sum < min - slack) || (max !== undefined && sum > max + slack))
      return false;
  }
  return true;
}

function once(columns: readonly Column[], rows: readonly Row[], nudge: number): Solution {
  const constraints = new Map<string, Bounds>();
  rows.forEach(({ id, min, max }, at) => {
    const slack = SLACK * (1 + ((at * 104729) % 97) / 97);
    constraints.set(id, {
      ...(min === undefined ? {} : { min: min - slack * (1 + Math.abs(min)) }),
      ...(max === undefined ? {} : { max: max + slack * (1 + Math.abs(max)) }),
    });
  });
  const variables = columns.map(({ variable, terms }, at) => {
    const { id, cost, binary } = variable;
    const max = binary ? 1 : variable.max;
    // A nudge of its own for each cost breaks the ties that a simplex can circle in.
    const own: (readonly [string, number])[] = [
      ['cost', cost + nudge * (1 + ((at * 7919) % 101) / 101)],
    ];
    if (max !== undefined) {
      constraints.set(`bound ${id}`, { max });
      own.push([`bound ${id}`, 1]);
    }
    return [id, own.concat(terms)] as const;
  });
  const answer = solve(
    { direction: 'minimize', objective: 'cost', constraints, variables },
    { precision: PRECISION, maxPivots: MOST_PIVOTS, includeZeroVariables: false },
  );
  if (answer.status === 'infeasible') return INFEASIBLE;
  if (!Number.isFinite(answer.result)) return FAILED;
  const values = new Map(answer.variables);
  if (!keeps(columns, constraints, values)) return FAILED;
  const objective = columns.reduce(
    (sum, { variable }) => sum + variable.cost * (values.get(variable.id) ?? 0),
    0,
  );
  return { status: 'optimal', objective, values };
}

/** Coefficients of rows by variable. */
export function columnsOf(rows: readonly Row[]): Map<string, (readonly [string, number])[]> {
  const columns = new Map<string, (readonly [string, number])[]>();
  for (const row of rows)
    for (const [id, value] of row.terms) {
      const column = columns.get(id);
      if (column) column.push([row.id, value]);
      else columns.set(id, [[row.id, value]]);
    }
  return columns;
}

/** Tried in turn until the simplex finds its way. */
const NUDGES = [0, 1e-7, 1e-5];

/** The same bounds with every row's largest coefficient 1, which a simplex finds easier. */
function evened(
  columns: readonly Column[],
  rows: readonly Row[],
): { columns: Column[]; rows: Row[] } {
  const largest = new Map<string, number>();
  for (const { terms } of columns)
    for (const [row, c] of terms) largest.set(row, Math.max(largest.get(row) ?? 0, Math.abs(c)));
  const by = (row: string): number => 1 / (largest.get(row) || 1);
  return {
    columns: columns.map(({ variable, terms }) => ({
      variable,
      terms: terms.map(([row, c]) => [row, c * by(row)] as const),
    })),
    rows: rows.map(({ id, min, max }) => ({
      id,
      terms: [],
      ...(min === undefined ? {} : { min: min * by(id) }),
      ...(max === undefined ? {} : { max: max * by(id) }),
    })),
  };
}

/** Solves columns under the bounds of rows, whose own terms are not looked at. */
export function solveColumns(columns: readonly Column[], rows: readonly Row[]): Solution {
  const first = once(columns, rows, 0);
  if (first.status !== 'failed') return first;
  const even = evened(columns, rows);
  for (const nudge of NUDGES) {
    const solution = once(even.columns, even.rows, nudge);
    if (solution.status !== 'failed') return solution;
  }
  return FAILED;
}

/**
 * Solves a programme with its binaries free between 0 and 1; deterministic (no clock). Never throws:
 * an unsolvable programme has status `infeasible` or `failed`.
 */
export function solveLinear(program: Program): Solution {
  const terms = columnsOf(program.rows);
  return solveColumns(
    program.variables.map((variable) => ({ variable, terms: terms.get(variable.id) ?? [] })),
    program.rows,
  );
}
