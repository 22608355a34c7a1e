/** A mixed-integer linear programme in plain form, and what the search asks of its binaries. */
export interface Variable {
  id: string;
  /** Objective coefficient; the objective is minimised. Variables are at least 0. */
  cost: number;
  /** Upper bound, else none. */
  max?: number;
  binary?: boolean;
  /** Of a binary: the variables that stay 0 while it is 0, each with its largest value. */
  opens?: readonly { id: string; most: number }[];
}

export interface Row {
  id: string;
  min?: number;
  max?: number;
  terms: readonly (readonly [string, number])[];
  /** The binary whose switch this row is: it says nothing while that is neither 0 nor 1. */
  switch?: string;
  /** The row is `leader - follower <= 0`: once the binary is 1, what follows it is 1 as well. */
  follows?: { leader: string; follower: string };
}

export interface Program<V extends Variable = Variable> {
  variables: readonly V[];
  rows: readonly Row[];
}

export interface Solution {
  /** `unfinished`: the work allowed ran out before any solution was found. */
  status: 'optimal' | 'infeasible' | 'failed' | 'unfinished';
  objective: number;
  values: ReadonlyMap<string, number>;
}

const without = (status: Solution['status']): Solution => ({
  status,
  objective: Number.NaN,
  values: new Map(),
});
export const INFEASIBLE = without('infeasible');
export const FAILED = without('failed');
export const UNFINISHED = without('unfinished');

const isFollowing = ({ follows, terms, min, max }: Row): boolean => {
  if (follows === undefined) return false;
  const by = new Map(terms);
  return (
    terms.length === 2 &&
    by.get(follows.leader) === 1 &&
    by.get(follows.follower) === -1 &&
    max === 0 &&
    min === undefined
  );
};

/**
 * What in a programme breaks the search's conditions, in words; empty when it may be searched. A binary
 * switches something on, each variable has one switch at most, and a binary or what follows it appears,
 * but for its own rows, only in rows that its being 1 makes harder to keep.
 */
export function conditionFaults({ variables, rows }: Program): string[] {
  const faults: string[] = [];
  const binaries = new Set(variables.flatMap(({ id, binary }) => (binary ? [id] : [])));
  const followers = new Set(rows.flatMap(({ follows }) => (follows ? [follows.follower] : [])));
  const known = new Set(variables.map(({ id }) => id));
  const opened = new Set<string>();
  for (const { id, binary, opens } of variables) {
    if (binary && (opens ?? []).length === 0) faults.push(`${id} switches nothing on`);
    for (const open of opens ?? []) {
      if (!known.has(open.id)) faults.push(`${id} opens ${open.id}, which is not there`);
      if (!(open.most > 0)) faults.push(`${id} opens ${open.id} by ${open.most}`);
      if (opened.has(open.id)) faults.push(`${open.id} has two switches`);
      opened.add(open.id);
    }
  }
  for (const row of rows) {
    if (row.follows && !isFollowing(row)) faults.push(`${row.id} is not 'leader - follower <= 0'`);
    if (row.follows) continue;
    for (const [id, c] of row.terms) {
      if (row.switch === id || !(binaries.has(id) || followers.has(id))) continue;
      const harder = (row.max === undefined || c >= 0) && (row.min === undefined || c <= 0);
      if (!harder) faults.push(`${row.id} is easier to keep with ${id}`);
    }
  }
  return faults;
}
