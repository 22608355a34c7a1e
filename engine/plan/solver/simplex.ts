/**
 * The dual simplex for bounded variables, on a dense tableau that can be copied: after a bound has
 * moved, the old optimum is a few pivots from the new one. Variables are numbered first, then rows.
 */

import type { Work } from './work.ts';

/** A linear programme in numbers: `cells` holds a row's coefficients one after another. */
export interface Matrix {
  readonly rows: number;
  readonly columns: number;
  readonly cells: Float64Array;
  readonly cost: Float64Array;
}

export interface Tableau {
  readonly matrix: Matrix;
  /** What each basic variable is, in the others. */
  readonly cells: Float64Array;
  /** What a unit more of each other variable costs. */
  readonly price: Float64Array;
  /** The variable of each row, and of each column. */
  readonly basic: Int32Array;
  readonly other: Int32Array;
  /** Where a variable stands: its row, or -1 less its column. */
  readonly place: Int32Array;
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  readonly level: Float64Array;
}

export type Outcome = 'optimal' | 'infeasible' | 'failed' | 'unfinished';

/** Stands for no bound where a variable that pays has none; an optimum that reaches it has no end. */
const BOUNDLESS = 1e7;
/** A bound missed by less than this is kept. */
const KEPT = 1e-8;
/** A coefficient below this is no pivot. */
const LEAST_PIVOT = 1e-8;
/** What is left of a sum below this is a rounding error. */
const ROUNDING_ERROR = 1e-13;
/** Room for ties among entering variables, so that the largest pivot can be taken. */
const TIE = 1e-9;
/** More pivots than this and the simplex goes in circles. */
const MOST_PIVOTS = 3000;
/** After so many pivots in one go ties are broken by small prices of their own. */
const PIVOTS_BEFORE_TIE_BREAK = 150;

/** The tableau before any pivot: every row is basic, every variable at the bound its cost prefers. */
export function tableauOf(matrix: Matrix, lower: Float64Array, upper: Float64Array): Tableau {
  const { rows, columns, cells, cost } = matrix;
  const tableau: Tableau = {
    matrix,
    cells: cells.slice(),
    price: cost.slice(),
    basic: Int32Array.from({ length: rows }, (_, row) => columns + row),
    other: Int32Array.from({ length: columns }, (_, column) => column),
    place: Int32Array.from({ length: columns + rows }, (_, v) =>
      v < columns ? -1 - v : v - columns,
    ),
    lower: lower.slice(),
    upper: upper.slice(),
    level: new Float64Array(columns + rows),
  };
  for (let v = 0; v < columns; v++) {
    if ((cost[v] as number) >= 0) tableau.level[v] = lower[v] as number;
    else {
      tableau.upper[v] = Math.min(upper[v] as number, BOUNDLESS);
      tableau.level[v] = tableau.upper[v] as number;
    }
  }
  for (let row = 0; row < rows; row++) {
    let sum = 0;
    for (let v = 0; v < columns; v++)
      sum += (cells[row * columns + v] as number) * (tableau.level[v] as number);
    tableau.level[columns + row] = sum;
  }
  return tableau;
}

export const copyOf = (t: Tableau): Tableau => ({
  matrix: t.matrix,
  cells: t.cells.slice(),
  price: t.price.slice(),
  basic: t.basic.slice(),
  other: t.other.slice(),
  place: t.place.slice(),
  lower: t.lower.slice(),
  upper: t.upper.slice(),
  level: t.level.slice(),
});

/** Moves the bounds of a variable or row; one that stands at a bound moves along, so that bound may not become infinite. */
export function setBounds(t: Tableau, v: number, lower: number, upper: number): void {
  const { columns, rows } = t.matrix;
  const low = t.level[v] === t.lower[v];
  t.lower[v] = lower;
  t.upper[v] = upper;
  const place = t.place[v] as number;
  if (place >= 0) return;
  const column = -1 - place;
  const next = low ? lower : upper;
  const shift = next - (t.level[v] as number);
  if (shift === 0) return;
  t.level[v] = next;
  for (let row = 0; row < rows; row++) {
    const c = t.cells[row * columns + column] as number;
    if (c !== 0)
      t.level[t.basic[row] as number] = (t.level[t.basic[row] as number] as number) + c * shift;
  }
}

/** The row whose basic variable misses a bound by most; -1 when none does. */
function leavingRow({ matrix, basic, level, lower, upper }: Tableau): number {
  let found = -1;
  let most = KEPT;
  for (let row = 0; row < matrix.rows; row++) {
    const v = basic[row] as number;
    const at = level[v] as number;
    const off = Math.max((lower[v] as number) - at, at - (upper[v] as number));
    if (off > most && off > KEPT * (1 + Math.abs(at))) {
      most = off;
      found = row;
    }
  }
  return found;
}

/** Whether a column's variable may move so that the row's goes up (`sign` 1) or down (-1). */
function helps(t: Tableau, column: number, c: number): boolean {
  const v = t.other[column] as number;
  const lower = t.lower[v] as number;
  const upper = t.upper[v] as number;
  return lower < upper && (c > 0 ? (t.level[v] as number) < upper : (t.level[v] as number) > lower);
}

/** The column that enters for a row, the dearest last: among near ties the largest pivot. -1 when none can. */
function enteringColumn(t: Tableau, row: number, sign: 1 | -1): number {
  const { columns } = t.matrix;
  const start = row * columns;
  let least = Number.POSITIVE_INFINITY;
  for (let column = 0; column < columns; column++) {
    const c = sign * (t.cells[start + column] as number);
    const size = Math.abs(c);
    if (size <= LEAST_PIVOT || !helps(t, column, c)) continue;
    const ratio = (Math.abs(t.price[column] as number) + TIE) / size;
    if (ratio < least) least = ratio;
  }
  let found = -1;
  let largest = 0;
  for (let column = 0; column < columns; column++) {
    const c = sign * (t.cells[start + column] as number);
    const size = Math.abs(c);
    if (size <= LEAST_PIVOT || size <= largest || !helps(t, column, c)) continue;
    if (Math.abs(t.price[column] as number) <= least * size) {
      largest = size;
      found = column;
    }
  }
  return found;
}

/** Swaps the variables of a row and a column; what leaves goes to `target`. */
function pivot(t: Tableau, row: number, column: number, target: number, used: Int32Array): void {
  const { cells, price, basic, other, place, level, lower, upper } = t;
  const { columns, rows } = t.matrix;
  const start = row * columns;
  const by = 1 / (cells[start + column] as number);
  const leaving = basic[row] as number;
  const entering = other[column] as number;
  const step = (target - (level[leaving] as number)) * by;
  level[leaving] = target;
  level[entering] = (level[entering] as number) + step;
  let count = 0;
  for (let at = 0; at < columns; at++) {
    const c = cells[start + at] as number;
    if (c === 0 || at === column) continue;
    // What is settled never moves again, so nothing reads its column.
    const v = other[at] as number;
    if (lower[v] === upper[v]) continue;
    const next = -c * by;
    if (Math.abs(next) < ROUNDING_ERROR) cells[start + at] = 0;
    else {
      cells[start + at] = next;
      used[count++] = at;
    }
  }
  cells[start + column] = by;
  for (let r = 0; r < rows; r++) {
    if (r === row) continue;
    const from = r * columns;
    const c = cells[from + column] as number;
    if (c === 0) continue;
    const v = basic[r] as number;
    level[v] = (level[v] as number) + c * step;
    for (let n = 0; n < count; n++) {
      const at = used[n] as number;
      const next = (cells[from + at] as number) + c * (cells[start + at] as number);
      cells[from + at] = Math.abs(next) < ROUNDING_ERROR ? 0 : next;
    }
    cells[from + column] = c * by;
  }
  const dear = price[column] as number;
  if (dear !== 0)
    for (let n = 0; n < count; n++) {
      const at = used[n] as number;
      price[at] = (price[at] as number) + dear * (cells[start + at] as number);
    }
  price[column] = dear * by;
  basic[row] = entering;
  other[column] = leaving;
  place[entering] = row;
  place[leaving] = -1 - column;
}

/** Small prices of their own for what stands at a bound, so that no two are a tie. */
function breakTies({ matrix, other, level, lower, upper, price }: Tableau): void {
  for (let column = 0; column < matrix.columns; column++) {
    const v = other[column] as number;
    if ((lower[v] as number) >= (upper[v] as number)) continue;
    const own = 1e-8 * (1 + ((v * 7919) % 101) / 101);
    price[column] = (price[column] as number) + (level[v] === lower[v] ? own : -own);
  }
}

/** Pivots until every bound is kept, or the work allowed is done; deterministic. */
export function optimise(t: Tableau, work: Work): Outcome {
  const { rows, columns } = t.matrix;
  const used = new Int32Array(columns);
  for (let count = 1; count <= MOST_PIVOTS; count++) {
    const row = leavingRow(t);
    if (row < 0) {
      const endless = t.level.some((at, v) => v < columns && at >= BOUNDLESS);
      return endless ? 'failed' : 'optimal';
    }
    work.left -= rows * columns;
    if (work.left < 0) return 'unfinished';
    if (count % PIVOTS_BEFORE_TIE_BREAK === 0) breakTies(t);
    const v = t.basic[row] as number;
    const up = (t.level[v] as number) < (t.lower[v] as number);
    const column = enteringColumn(t, row, up ? 1 : -1);
    if (column < 0) return 'infeasible';
    pivot(t, row, column, (up ? t.lower[v] : t.upper[v]) as number, used);
  }
  return 'failed';
}
