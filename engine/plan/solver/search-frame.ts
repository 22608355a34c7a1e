/** A programme in numbers, taken apart once, so that a search only moves bounds. */
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

/** A binary that switches variables on, by number. */
export interface Switch {
  id: string;
  at: number;
  cost: number;
  opens: readonly { at: number; most: number }[];
}

/** A row of the programme as given, by number. */
interface Line {
  at: readonly number[];
  by: readonly number[];
  min: number;
  max: number;
}

export interface Frame {
  program: Program;
  switches: readonly Switch[];
  matrix: Matrix;
  lines: readonly Line[];
  /** What each row is divided by in the matrix. */
  scale: Float64Array;
  /** `switch - food <= 0`: the food follows the switch. */
  follows: ReadonlyMap<number, readonly number[]>;
  /** Rows that say how much of what switches bring may be together. */
  packs: readonly Line[];
  /** Solved with every switch free. */
  root: { tableau: Tableau; outcome: Outcome };
}

const NONE = Number.POSITIVE_INFINITY;

function lineOf({ terms, min, max }: Row, index: ReadonlyMap<string, number>): Line {
  const sums = new Map<number, number>();
  for (const [id, c] of terms) {
    const at = index.get(id);
    if (at !== undefined) sums.set(at, (sums.get(at) ?? 0) + c);
  }
  return { at: [...sums.keys()], by: [...sums.values()], min: min ?? -NONE, max: max ?? NONE };
}

function followsOf(lines: readonly Line[], switches: ReadonlySet<number>): Map<number, number[]> {
  const follows = new Map<number, number[]>();
  for (const { at, by, max } of lines) {
    const [first, second] = at;
    if (at.length !== 2 || max !== 0 || by[0] !== 1 || by[1] !== -1) continue;
    if (first === undefined || second === undefined || !switches.has(first)) continue;
    follows.set(first, [...(follows.get(first) ?? []), second]);
  }
  return follows;
}

export function frameOf(program: Program): Frame {
  const { variables } = program;
  const index = new Map(variables.map(({ id }, at) => [id, at]));
  const switches = variables.flatMap(({ id, cost, binary, opens }, at): Switch[] =>
    binary && opens
      ? [{ id, at, cost, opens: opens.map((o) => ({ at: index.get(o.id) ?? 0, most: o.most })) }]
      : [],
  );
  const lines = program.rows.map((row) => lineOf(row, index));
  const columns = variables.length;
  const matrix: Matrix = {
    rows: lines.length,
    columns,
    cells: new Float64Array(lines.length * columns),
    cost: Float64Array.from(variables, ({ cost }) => cost),
  };
  // A row's largest coefficient is 1, which a simplex finds easier.
  const scale = Float64Array.from(
    lines,
    ({ by }) => by.reduce((most, c) => Math.max(most, Math.abs(c)), 0) || 1,
  );
  lines.forEach(({ at, by }, row) => {
    at.forEach((v, n) => {
      matrix.cells[row * columns + v] = (by[n] ?? 0) / (scale[row] ?? 1);
    });
  });
  const follows = followsOf(lines, new Set(switches.map(({ at }) => at)));
  const brought = new Set([...switches.map(({ at }) => at), ...[...follows.values()].flat()]);
  const packs = lines.filter(
    ({ at, by, max }, row) =>
      program.rows[row]?.switch === undefined &&
      max < NONE &&
      by.every((c) => c >= 0) &&
      at.some((v) => brought.has(v)),
  );
  const lower = Float64Array.from(
    [...variables.map(() => 0), ...lines.map(({ min }) => min)],
    (bound, v) => (v < columns ? bound : bound / (scale[v - columns] ?? 1)),
  );
  const upper = Float64Array.from(
    [
      ...variables.map(({ max, binary }) => (binary ? 1 : (max ?? NONE))),
      ...lines.map((l) => l.max),
    ],
    (bound, v) => (v < columns ? bound : bound / (scale[v - columns] ?? 1)),
  );
  const tableau = tableauOf(matrix, lower, upper);
  const root = { tableau, outcome: optimise(tableau) };
  return { program, switches, matrix, lines, scale, follows, packs, root };
}

/** A bound missed by more than this share of what its row adds up is not kept. */
const KEPT = 1e-6;

/** Whether values keep every row, within the simplex's own precision. */
export function fits({ lines }: Frame, level: Float64Array, slack = KEPT): boolean {
  return lines.every(({ at, by, min, max }) => {
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

/** Solves a tableau of the frame; when rounding errors led it astray, once more from the start. */
export function solved(frame: Frame, tableau: Tableau): { tableau: Tableau; outcome: Outcome } {
  const outcome = optimise(tableau);
  if (outcome === 'infeasible' || (outcome === 'optimal' && fits(frame, tableau.level)))
    return { tableau, outcome };
  const again = tableauOf(frame.matrix, tableau.lower, tableau.upper);
  const second = optimise(again);
  const astray = second === 'optimal' && !fits(frame, again.level);
  return { tableau: again, outcome: astray ? 'failed' : second };
}

/** The same programme with another upper bound of one of its rows, solved from where this one stands. */
export function rebound(frame: Frame, id: string, max: number): Frame {
  const row = frame.program.rows.findIndex((r) => r.id === id);
  const old = frame.lines[row];
  if (!old) return frame;
  const changed = <T>(list: readonly T[], next: T): T[] =>
    list.map((item, at) => (at === row ? next : item));
  const program: Program = {
    variables: frame.program.variables,
    rows: changed(frame.program.rows, { ...(frame.program.rows[row] as Row), max }),
  };
  const line: Line = { ...old, max };
  const tableau = copyOf(frame.root.tableau);
  const by = frame.scale[row] ?? 1;
  setBounds(tableau, frame.matrix.columns + row, old.min / by, max / by);
  const next: Frame = {
    ...frame,
    program,
    lines: changed(frame.lines, line),
    packs: frame.packs.map((pack) => (pack === old ? line : pack)),
  };
  // A row that could not move was settled, and its column in the tableau with it.
  const from =
    old.min === old.max ? tableauOf(frame.matrix, tableau.lower, tableau.upper) : tableau;
  return { ...next, root: solved(next, from) };
}
