/**
 * Branch and bound over the binaries of a programme that switch other variables on. Between 0 and 1
 * a switch is at its cheapest the share of what it opens, so it is put in by that share and the
 * simplex sees neither switches nor their rows.
 */
import {
  type Column,
  columnsOf,
  INFEASIBLE,
  type Program,
  type Row,
  type Solution,
  solveColumns,
  solveLinear,
} from './program.ts';

interface Switch {
  id: string;
  cost: number;
  opens: readonly { id: string; most: number }[];
}

type Settled = ReadonlyMap<string, boolean>;

const EPS = 1e-7;

const switchesOf = (program: Program): Switch[] =>
  program.variables.flatMap(({ id, cost, binary, opens }) =>
    binary && opens ? [{ id, cost, opens }] : [],
  );

/** A programme taken apart once, so that each node only puts its switches in. */
export interface Frame {
  program: Program;
  switches: readonly Switch[];
  by: ReadonlyMap<string, Switch>;
  /** Rows without any switch, and their coefficients by variable. */
  plain: readonly Row[];
  columns: ReadonlyMap<string, readonly (readonly [string, number])[]>;
  /** Rows with switches. */
  switched: readonly Row[];
}

export function frameOf(program: Program): Frame {
  const switches = switchesOf(program);
  const by = new Map(switches.map((s) => [s.id, s]));
  const has = (row: Row): boolean => row.terms.some(([id]) => by.has(id));
  const plain = program.rows.filter((row) => !has(row));
  return {
    program,
    switches,
    by,
    plain,
    columns: columnsOf(plain),
    switched: program.rows.filter(has),
  };
}

/** The same programme with another upper bound of one of its rows without switches. */
export function rebound(frame: Frame, id: string, max: number): Frame {
  const change = (row: Row): Row => (row.id === id ? { ...row, max } : row);
  return {
    ...frame,
    plain: frame.plain.map(change),
    program: { ...frame.program, rows: frame.program.rows.map(change) },
  };
}

/** Solves what is left with some switches settled and the others put in by share. */
function solveNode(frame: Frame, settled: Settled): Solution {
  const gone = new Set<string>();
  const dearer = new Map<string, number>();
  let fixed = 0;
  for (const s of frame.switches) {
    const state = settled.get(s.id);
    if (state === true) fixed += s.cost;
    else if (state === false) for (const { id } of s.opens) gone.add(id);
    else
      for (const { id, most } of s.opens)
        dearer.set(id, (dearer.get(id) ?? 0) + s.cost / (most * s.opens.length));
  }
  const rows = [...frame.plain];
  const more = new Map<string, (readonly [string, number])[]>();
  for (const row of frame.switched) {
    // Its switch is neither on nor off, or shut with all it opens: nothing to say.
    if (row.switch !== undefined && settled.get(row.switch) !== true) continue;
    const next = reducedRow(row, frame.by, settled, gone);
    if (next.terms.length === 0) {
      if ((next.min ?? 0) > EPS || (next.max ?? 0) < -EPS) return INFEASIBLE;
      continue;
    }
    rows.push(next);
    for (const [id, value] of next.terms) more.set(id, [...(more.get(id) ?? []), [row.id, value]]);
  }
  const columns = frame.program.variables.flatMap((v): Column[] => {
    if (frame.by.has(v.id) || gone.has(v.id)) return [];
    const extra = dearer.get(v.id);
    const own = frame.columns.get(v.id) ?? [];
    const also = more.get(v.id);
    return [
      {
        variable: extra === undefined ? v : { ...v, cost: v.cost + extra },
        terms: also ? [...own, ...also] : own,
      },
    ];
  });
  const solution = solveColumns(columns, rows);
  return solution.status === 'optimal'
    ? { ...solution, objective: solution.objective + fixed }
    : solution;
}

/** A row with settled switches as numbers and free ones as shares of what they open. */
function reducedRow(
  row: Row,
  by: ReadonlyMap<string, Switch>,
  settled: Settled,
  gone: ReadonlySet<string>,
): Row {
  let shift = 0;
  const terms = new Map<string, number>();
  const add = (id: string, value: number): void => {
    if (!gone.has(id)) terms.set(id, (terms.get(id) ?? 0) + value);
  };
  for (const [id, value] of row.terms) {
    const s = by.get(id);
    const state = settled.get(id);
    if (!s) add(id, value);
    else if (state === true) shift += value;
    else if (state === undefined)
      for (const open of s.opens) add(open.id, value / (open.most * s.opens.length));
  }
  return {
    id: row.id,
    terms: [...terms],
    ...(row.min === undefined ? {} : { min: row.min - shift }),
    ...(row.max === undefined ? {} : { max: row.max - shift }),
  };
}

/** Share to which a switch is used: 1 when what it opens is at its most. */
const shareOf = (s: Switch, values: ReadonlyMap<string, number>): number =>
  s.opens.reduce((sum, { id, most }) => sum + (values.get(id) ?? 0) / most, 0) / s.opens.length;

/** Whether values keep every row and bound, within the simplex's own precision. */
function fits(program: Program, values: ReadonlyMap<string, number>): boolean {
  return program.rows.every(({ min, max, terms }) => {
    let at = 0;
    let size = 1;
    for (const [id, value] of terms) {
      const part = value * (values.get(id) ?? 0);
      at += part;
      size += Math.abs(part);
    }
    return (
      (min === undefined || at >= min - EPS * size) && (max === undefined || at <= max + EPS * size)
    );
  });
}

/** A node's values with every used switch wholly on and what follows from it; null when that breaks a row. */
function rounded(
  program: Program,
  switches: readonly Switch[],
  values: ReadonlyMap<string, number>,
): Solution | null {
  const whole = new Map(values);
  for (const s of switches) if (shareOf(s, values) > EPS) whole.set(s.id, 1);
  for (const row of program.rows) {
    // `switch - food <= 0`: the food follows the switch.
    const [first, second] = row.terms;
    if (row.terms.length !== 2 || row.max !== 0 || !first || !second || second[1] !== -1) continue;
    if (
      first[1] === 1 &&
      (whole.get(first[0]) ?? 0) === 1 &&
      switches.some((s) => s.id === first[0])
    )
      whole.set(second[0], Math.max(1, whole.get(second[0]) ?? 0));
  }
  if (!fits(program, whole)) return null;
  const objective = program.variables.reduce(
    (sum, { id, cost }) => sum + cost * (whole.get(id) ?? 0),
    0,
  );
  return { status: 'optimal', objective, values: whole };
}

function settledAt(frame: Frame, on: ReadonlySet<string>): Solution {
  const solution = solveNode(frame, new Map(frame.switches.map(({ id }) => [id, on.has(id)])));
  if (solution.status !== 'optimal') return solution;
  const values = new Map(solution.values);
  for (const { id } of frame.switches) if (on.has(id)) values.set(id, 1);
  return { ...solution, values };
}

/** Solves a programme with its switches settled: those in `on` are 1, the others 0. */
export const solveSettled = (program: Program, on: ReadonlySet<string>): Solution =>
  settledAt(frameOf(program), on);

/** Switches that a solution uses, the most used first. */
export function openedBy(program: Program, values: ReadonlyMap<string, number>): string[] {
  return switchesOf(program)
    .map((s) => ({ id: s.id, share: shareOf(s, values) }))
    .filter(({ share }) => share > 1e-6)
    .sort((a, b) => b.share - a.share)
    .map(({ id }) => id);
}

interface Node {
  settled: Settled;
  bound: number;
}

/** The best node first, then the one found first. */
function pop(nodes: Node[]): Node | undefined {
  let best = 0;
  nodes.forEach((node, at) => {
    if (node.bound < (nodes[best]?.bound ?? Number.POSITIVE_INFINITY)) best = at;
  });
  return nodes.splice(best, 1)[0];
}

export interface SolveOptions {
  /** Drops the whole-number demand on binaries. */
  relax?: boolean;
  /** Sets of switches to try first: good plans near this one make the search short. */
  tries?: readonly ReadonlySet<string>[];
  /** Difference from the optimum that is let pass, absolute. */
  gap?: number;
}

/** More nodes than this are not looked at: the best plan so far stands, the same on every run. */
const MOST_NODES = 5000;

/** The switch whose price the node's values pay least of; null when every one in use is on. */
function toBranch(
  switches: readonly Switch[],
  settled: Settled,
  values: ReadonlyMap<string, number>,
): Switch | null {
  let best: Switch | null = null;
  let most = -1;
  for (const s of switches) {
    if (settled.has(s.id)) continue;
    const share = shareOf(s, values);
    if (share <= EPS) continue;
    const unpaid =
      s.cost * (1 - share) + (share < 1 - 1e-6 ? 1e-6 : 0) + 0.01 * Math.min(share, 1 - share);
    if (unpaid > most && share < 1 - 1e-6) {
      most = unpaid;
      best = s;
    }
  }
  return best;
}

/**
 * Solves a programme; deterministic (no clock). Every binary must switch something on (`opens`) and
 * appear, but for its own rows, only in rows it makes harder to keep. Never throws: an unsolvable
 * programme has status `infeasible` or `failed`.
 */
export function solveProgram(program: Program, options: SolveOptions = {}): Solution {
  if (options.relax) return solveLinear(program);
  const frame = frameOf(program);
  const { switches } = frame;
  const gap = Math.max(options.gap ?? 0, 1e-9);
  let best: Solution | null = null;
  let failed = false;
  const better = (solution: Solution | null): void => {
    if (solution?.status !== 'optimal') return;
    if (best === null || solution.objective < best.objective) best = solution;
  };
  const cutoff = (): number => (best === null ? Number.POSITIVE_INFINITY : best.objective - gap);
  for (const on of options.tries ?? []) better(settledAt(frame, on));
  const nodes: Node[] = [{ settled: new Map(), bound: Number.NEGATIVE_INFINITY }];
  for (let count = 0; count < MOST_NODES; count++) {
    const node = pop(nodes);
    if (!node || node.bound >= cutoff()) break;
    const relaxed = solveNode(frame, node.settled);
    if (relaxed.status === 'failed') failed = true;
    if (relaxed.status !== 'optimal' || relaxed.objective >= cutoff()) continue;
    better(rounded(program, switches, relaxed.values));
    const next = toBranch(switches, node.settled, relaxed.values);
    if (next === null) {
      const used = switches.filter(
        (s) => shareOf(s, relaxed.values) > EPS || node.settled.get(s.id),
      );
      better(settledAt(frame, new Set(used.map(({ id }) => id))));
      continue;
    }
    if (count === 0) better(settledAt(frame, usedTogether(frame, relaxed.values)));
    for (const state of [true, false])
      nodes.push({
        settled: new Map([...node.settled, [next.id, state]]),
        bound: relaxed.objective,
      });
  }
  return best ?? (failed ? { ...INFEASIBLE, status: 'failed' } : INFEASIBLE);
}

/** Whether rows of nothing but switches, and of what follows from them, let these be on together. */
function together(program: Program, on: ReadonlySet<string>): boolean {
  const follows = new Set<string>();
  for (const { terms, max } of program.rows) {
    const [first, second] = terms;
    if (terms.length === 2 && max === 0 && first && second?.[1] === -1 && on.has(first[0]))
      follows.add(second[0]);
  }
  const at = (id: string): number => (on.has(id) || follows.has(id) ? 1 : 0);
  const whole = new Set([...on, ...follows]);
  return program.rows.every(
    (row) =>
      row.switch !== undefined ||
      row.max === undefined ||
      !row.terms.some(([id]) => whole.has(id)) ||
      row.terms.some(([, c]) => c < 0) ||
      row.terms.reduce((sum, [id, c]) => sum + c * at(id), 0) <= row.max + EPS,
  );
}

/** Switches in use, the most used first, as far as they may be on together. */
function usedTogether({ program }: Frame, values: ReadonlyMap<string, number>): Set<string> {
  const on = new Set<string>();
  for (const id of openedBy(program, values)) {
    on.add(id);
    if (!together(program, on)) on.delete(id);
  }
  return on;
}

/** Settles the most used switch, looks again, and so on until every one in use is on; null when it ends nowhere. */
function dive(frame: Frame): Solution | null {
  const settled = new Map<string, boolean>();
  const on = new Set<string>();
  for (let step = 0; step <= frame.switches.length; step++) {
    const relaxed = solveNode(frame, settled);
    if (relaxed.status !== 'optimal') return null;
    const next = openedBy(frame.program, relaxed.values).find((id) => !settled.has(id));
    if (next === undefined) return settledAt(frame, on);
    on.add(next);
    settled.set(next, true);
    for (const { id } of frame.switches)
      if (!settled.has(id) && !together(frame.program, new Set([...on, id])))
        settled.set(id, false);
  }
  return null;
}

/**
 * A good solution with whole-number choices, quickly: what the relaxed programme uses most, as far as
 * it may be used together. Never better than the optimum; `infeasible` when none was found.
 */
export const nearlySolve = (program: Program): Solution => near(frameOf(program));

function near(frame: Frame): Solution {
  const relaxed = solveNode(frame, new Map());
  if (relaxed.status !== 'optimal') return relaxed;
  const found = settledAt(frame, usedTogether(frame, relaxed.values));
  return found.status === 'optimal' ? found : (dive(frame) ?? INFEASIBLE);
}

/** As `nearlySolve`, or one of the sets of switches given, whichever comes nearest to the optimum; null when none fits. */
export function nearest(frame: Frame, tries: readonly ReadonlySet<string>[]): Solution | null {
  const first = near(frame);
  let best = first.status === 'optimal' ? first : null;
  const seen = new Set<string>();
  const name = (on: Iterable<string>): string => [...on].sort().join();
  if (best) seen.add(name(openedBy(frame.program, best.values)));
  for (const on of tries) {
    const own = name(on);
    if (seen.has(own)) continue;
    seen.add(own);
    const found = settledAt(frame, on);
    if (found.status === 'optimal' && (best === null || found.objective < best.objective))
      best = found;
  }
  return best;
}

/** As `nearlySolve`, with a second way that takes longer and mostly comes nearer. */
export function nearlySolveWell(program: Program): Solution {
  const frame = frameOf(program);
  const quick = near(frame);
  const deep = dive(frame);
  if (deep?.status !== 'optimal') return quick;
  return quick.status === 'optimal' && quick.objective <= deep.objective ? quick : deep;
}
