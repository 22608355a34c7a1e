/** A mixed-integer linear programme in plain form. */
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
export const FAILED: Solution = { ...INFEASIBLE, status: 'failed' };
