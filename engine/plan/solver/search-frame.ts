/** A programme in numbers, taken apart once and solved with every switch free, so that a search only moves bounds. */
import type { Program, Row } from './programme.ts';
import {
  copyOf,
  type Matrix,
  type Outcome,
  optimise,
  setBounds,
  type Tableau,
  tableauOf,
} from './simplex.ts';
import { unlimited, type Work } from './work.ts';

/** A binary that switches variables on, by number. */
export interface Switch {
  id: string;
  at: number;
  cost: number;
  opens: readonly { at: number; most: number }[];
}

/** A row of the programme as given, by number. */
interface NumberedRow {
  at: readonly number[];
  by: readonly number[];
  min: number;
  max: number;
}

export interface Solved {
  tableau: Tableau;
  outcome: Outcome;
}

export interface Frame {
  program: Program;
  switches: readonly Switch[];
  matrix: Matrix;
  rows: readonly NumberedRow[];
  /** What each row is divided by in the matrix. */
  scale: Float64Array;
  /** What is 1 as soon as a switch is. */
  followers: ReadonlyMap<number, readonly number[]>;
  /** Rows that say how many switches, and followers of theirs, may be on together. */
  countRows: readonly NumberedRow[];
  /** Solved with every switch free. */
  root: Solved;
  /** What the search may still do. */
  work: Work;
}

const NO_BOUND = Number.POSITIVE_INFINITY;

function numbered({ terms, min, max }: Row, index: ReadonlyMap<string, number>): NumberedRow {
  const sums = new Map<number, number>();
  for (const [id, c] of terms) {
    const at = index.get(id);
    if (at !== undefined) sums.set(at, (sums.get(at) ?? 0) + c);
  }
  return {
    at: [...sums.keys()],
    by: [...sums.values()],
    min: min ?? -NO_BOUND,
    max: max ?? NO_BOUND,
  };
}

function followersOf(
  { rows }: Program,
  index: ReadonlyMap<string, number>,
): Map<number, readonly number[]> {
  const followers = new Map<number, number[]>();
  for (const { follows } of rows) {
    const leader = index.get(follows?.leader ?? '');
    const follower = index.get(follows?.follower ?? '');
    if (leader === undefined || follower === undefined) continue;
    followers.set(leader, [...(followers.get(leader) ?? []), follower]);
  }
  return followers;
}

function switchesOf({ variables }: Program, index: ReadonlyMap<string, number>): Switch[] {
  return variables.flatMap(({ id, cost, binary, opens }, at): Switch[] =>
    binary && opens
      ? [{ id, at, cost, opens: opens.map((o) => ({ at: index.get(o.id) ?? 0, most: o.most })) }]
      : [],
  );
}

/** A row's largest coefficient is 1 in the matrix, which a simplex finds easier. */
function matrixOf(
  { variables }: Program,
  rows: readonly NumberedRow[],
): { matrix: Matrix; scale: Float64Array } {
  const columns = variables.length;
  const matrix: Matrix = {
    rows: rows.length,
    columns,
    cells: new Float64Array(rows.length * columns),
    cost: Float64Array.from(variables, ({ cost }) => cost),
  };
  const scale = Float64Array.from(
    rows,
    ({ by }) => by.reduce((most, c) => Math.max(most, Math.abs(c)), 0) || 1,
  );
  rows.forEach(({ at, by }, row) => {
    at.forEach((v, n) => {
      matrix.cells[row * columns + v] = (by[n] ?? 0) / (scale[row] ?? 1);
    });
  });
  return { matrix, scale };
}

/** Takes a programme apart and solves it with every switch free; `work` is what may be done with it. */
export function frameOf(program: Program, work: Work = unlimited()): Frame {
  const { variables } = program;
  const index = new Map(variables.map(({ id }, at) => [id, at]));
  const switches = switchesOf(program, index);
  const rows = program.rows.map((row) => numbered(row, index));
  const { matrix, scale } = matrixOf(program, rows);
  const followers = followersOf(program, index);
  const counted = new Set([...switches.map(({ at }) => at), ...[...followers.values()].flat()]);
  const countRows = rows.filter(
    ({ at, by, max }, row) =>
      program.rows[row]?.switch === undefined &&
      max < NO_BOUND &&
      by.every((c) => c >= 0) &&
      at.some((v) => counted.has(v)),
  );
  const bounds = (ofVariables: number[], ofRows: number[]): Float64Array =>
    Float64Array.from([...ofVariables, ...ofRows.map((bound, row) => bound / (scale[row] ?? 1))]);
  const lower = bounds(
    variables.map(() => 0),
    rows.map(({ min }) => min),
  );
  const upper = bounds(
    variables.map(({ max, binary }) => (binary ? 1 : (max ?? NO_BOUND))),
    rows.map(({ max }) => max),
  );
  const tableau = tableauOf(matrix, lower, upper);
  const root = { tableau, outcome: optimise(tableau, work) };
  return { program, switches, matrix, rows, scale, followers, countRows, root, work };
}

/** A bound missed by more than this share of what its row adds up is not kept. */
const ROW_TOLERANCE = 1e-6;

/** Whether values keep every row, within the simplex's own precision. */
export function fits({ rows }: Frame, level: Float64Array, slack = ROW_TOLERANCE): boolean {
  return rows.every(({ at, by, min, max }) => {
    let sum = 0;
    let size = 1;
    for (let n = 0; n < at.length; n++) {
      const part = (by[n] as number) * (level[at[n] as number] as number);
      sum += part;
      size += Math.abs(part);
    }
    return sum >= min - slack * size && sum <= max + slack * size;
  });
}

/** A tableau to move bounds in, counted as work. */
export function copied({ work, matrix }: Frame, tableau: Tableau): Tableau {
  work.left -= matrix.rows * matrix.columns;
  return copyOf(tableau);
}

/** Solves a tableau of the frame; when rounding errors led it astray, once more from the start. */
export function solved(frame: Frame, tableau: Tableau): Solved {
  const outcome = optimise(tableau, frame.work);
  if (outcome === 'infeasible' || outcome === 'unfinished') return { tableau, outcome };
  if (outcome === 'optimal' && fits(frame, tableau.level)) return { tableau, outcome };
  const again = tableauOf(frame.matrix, tableau.lower, tableau.upper);
  const second = optimise(again, frame.work);
  const astray = second === 'optimal' && !fits(frame, again.level);
  return { tableau: again, outcome: astray ? 'failed' : second };
}

/** The same programme with another upper bound of one of its rows, solved from where this one stands. */
export function rebound(frame: Frame, id: string, max: number): Frame {
  const row = frame.program.rows.findIndex((r) => r.id === id);
  const old = frame.rows[row];
  if (!old) return frame;
  const changed = <T>(list: readonly T[], next: T): T[] =>
    list.map((item, at) => (at === row ? next : item));
  const program: Program = {
    variables: frame.program.variables,
    rows: changed(frame.program.rows, { ...(frame.program.rows[row] as Row), max }),
  };
  const bounded: NumberedRow = { ...old, max };
  const tableau = copied(frame, frame.root.tableau);
  const by = frame.scale[row] ?? 1;
  setBounds(tableau, frame.matrix.columns + row, old.min / by, max / by);
  const next: Frame = {
    ...frame,
    program,
    rows: changed(frame.rows, bounded),
    countRows: frame.countRows.map((counted) => (counted === old ? bounded : counted)),
  };
  // A row that could not move was settled, and its column in the tableau with it.
  const from =
    old.min === old.max ? tableauOf(frame.matrix, tableau.lower, tableau.upper) : tableau;
  return { ...next, root: solved(next, from) };
}
