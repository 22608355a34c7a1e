/** Branch and bound over the binaries of a programme that switch other variables on. */

import { FAILED, INFEASIBLE, type Program, type Solution } from './programme.ts';
import { type Frame, fits, frameOf, type Switch, solved } from './search-frame.ts';
import { copyOf, type Outcome, setBounds, type Tableau } from './simplex.ts';

const EPS = 1e-7;

interface Solved {
  tableau: Tableau;
  outcome: Outcome;
}

/** Objective of levels; the programme's own costs, whatever the simplex did to break ties. */
function objectiveOf({ matrix }: Frame, level: Float64Array): number {
  let sum = 0;
  for (let v = 0; v < matrix.columns; v++) sum += (matrix.cost[v] as number) * (level[v] as number);
  return sum;
}

/** Levels below this are none at all. */
const NONE = 1e-9;

function solutionOf(frame: Frame, level: Float64Array): Solution {
  const values = new Map<string, number>();
  frame.program.variables.forEach(({ id }, at) => {
    const value = level[at] ?? 0;
    if (value > NONE) values.set(id, value);
  });
  return { status: 'optimal', objective: objectiveOf(frame, level), values };
}

const unsolved = (outcome: Outcome): Solution => (outcome === 'failed' ? FAILED : INFEASIBLE);

/** Settles a switch in a tableau; what it opens stays 0 when it is off. */
function settle(tableau: Tableau, { at, opens }: Switch, on: boolean): void {
  setBounds(tableau, at, on ? 1 : 0, on ? 1 : 0);
  if (!on) for (const open of opens) setBounds(tableau, open.at, 0, 0);
}

/** Share to which a switch is used: 1 when what it opens is at its most. */
function shareOf({ opens }: Switch, level: Float64Array): number {
  let sum = 0;
  for (const { at, most } of opens) sum += (level[at] as number) / most;
  return sum / opens.length;
}

/** Switches that levels use, the most used first. */
function usedBy(frame: Frame, level: Float64Array): Switch[] {
  return frame.switches
    .map((s) => ({ s, share: shareOf(s, level) }))
    .filter(({ share }) => share > 1e-6)
    .sort((a, b) => b.share - a.share)
    .map(({ s }) => s);
}

/** Levels with every used switch wholly on and what follows from it; null when that breaks a row. */
function rounded(frame: Frame, level: Float64Array): Float64Array | null {
  const whole = level.slice();
  for (const s of frame.switches) {
    if (shareOf(s, level) > EPS) whole[s.at] = 1;
    else if ((whole[s.at] as number) < 1 - EPS) whole[s.at] = 0;
    if (whole[s.at] === 1) for (const food of frame.follows.get(s.at) ?? []) whole[food] = 1;
  }
  return fits(frame, whole, EPS) ? whole : null;
}

function settledAt(frame: Frame, on: ReadonlySet<string>): Solution {
  if (frame.root.outcome !== 'optimal') return unsolved(frame.root.outcome);
  const tableau = copyOf(frame.root.tableau);
  for (const s of frame.switches) settle(tableau, s, on.has(s.id));
  const { tableau: end, outcome } = solved(frame, tableau);
  return outcome === 'optimal' ? solutionOf(frame, end.level) : unsolved(outcome);
}

/** Solves a frame with its switches settled: those in `on` are 1, the others 0. */
export const solveSettled = settledAt;

/** Switches that a solution uses, the most used first. */
export function openedBy(program: Program, values: ReadonlyMap<string, number>): string[] {
  return program.variables
    .flatMap(({ id, opens }) => {
      if (!opens) return [];
      const sum = opens.reduce((all, o) => all + (values.get(o.id) ?? 0) / o.most, 0);
      return [{ id, share: sum / opens.length }];
    })
    .filter(({ share }) => share > 1e-6)
    .sort((a, b) => b.share - a.share)
    .map(({ id }) => id);
}

/** What is left to search: the switch to settle in a tableau, shared by two nodes, that was solved before. */
interface Node {
  from: Tableau;
  next: Switch | null;
  on: boolean;
  settled: ReadonlyMap<string, boolean>;
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

/** With more nodes open than this, new ones start from the root again, which takes less memory. */
const MOST_KEPT = 200;

/** The switch whose price the levels pay least of; null when every one in use is on. */
function toBranch(
  { switches }: Frame,
  settled: ReadonlyMap<string, boolean>,
  level: Float64Array,
): Switch | null {
  let best: Switch | null = null;
  let most = -1;
  for (const s of switches) {
    if (settled.has(s.id)) continue;
    const share = shareOf(s, level);
    if (share <= EPS || share >= 1 - 1e-6) continue;
    const unpaid = s.cost * (1 - share) + 1e-6 + 0.01 * Math.min(share, 1 - share);
    if (unpaid > most) {
      most = unpaid;
      best = s;
    }
  }
  return best;
}

function solveNode(frame: Frame, { from, next, on, settled }: Node): Solved {
  if (next === null) return frame.root;
  const tableau = copyOf(from);
  if (from !== frame.root.tableau) settle(tableau, next, on);
  else
    for (const s of frame.switches) {
      const state = settled.get(s.id);
      if (state !== undefined) settle(tableau, s, state);
    }
  return solved(frame, tableau);
}

/**
 * Solves a programme; deterministic (no clock). Every binary must switch something on (`opens`) and
 * appear, but for its own rows, only in rows it makes harder to keep. Never throws: an unsolvable
 * programme has status `infeasible` or `failed`.
 */
export const solveProgram = (program: Program, options: SolveOptions = {}): Solution =>
  solveFrame(frameOf(program), options);

/** As `solveProgram`, of a programme taken apart before. */
export function solveFrame(frame: Frame, options: SolveOptions = {}): Solution {
  const { root } = frame;
  if (root.outcome !== 'optimal') return unsolved(root.outcome);
  if (options.relax) return solutionOf(frame, root.tableau.level);
  const gap = Math.max(options.gap ?? 0, 1e-9);
  let best: Solution | null = null;
  let failed = false;
  const better = (solution: Solution): void => {
    if (solution.status !== 'optimal') return;
    if (best === null || solution.objective < best.objective) best = solution;
  };
  const cutoff = (): number => (best === null ? Number.POSITIVE_INFINITY : best.objective - gap);
  for (const on of options.tries ?? []) better(settledAt(frame, on));
  const first: Node = {
    from: root.tableau,
    next: null,
    on: true,
    settled: new Map(),
    bound: Number.NEGATIVE_INFINITY,
  };
  const nodes = [first];
  for (let count = 0; count < MOST_NODES; count++) {
    const node = pop(nodes);
    if (!node || node.bound >= cutoff()) break;
    const { tableau, outcome } = solveNode(frame, node);
    if (outcome === 'failed') failed = true;
    if (outcome !== 'optimal') continue;
    const { level } = tableau;
    const bound = objectiveOf(frame, level);
    if (bound >= cutoff()) continue;
    const whole = rounded(frame, level);
    if (whole) better(solutionOf(frame, whole));
    const next = toBranch(frame, node.settled, level);
    if (next === null) {
      const used = frame.switches.filter(
        (s) => shareOf(s, level) > EPS || node.settled.get(s.id) === true,
      );
      better(settledAt(frame, new Set(used.map(({ id }) => id))));
      continue;
    }
    if (count === 0) better(settledAt(frame, usedTogether(frame, level)));
    const from = nodes.length < MOST_KEPT ? tableau : root.tableau;
    for (const on of [true, false])
      nodes.push({ from, next, on, settled: new Map([...node.settled, [next.id, on]]), bound });
  }
  return best ?? (failed ? FAILED : INFEASIBLE);
}

/** Whether rows of nothing but switches, and of what follows from them, let these be on together. */
function together({ packs, follows }: Frame, on: readonly Switch[]): boolean {
  const whole = new Set<number>();
  for (const { at } of on) {
    whole.add(at);
    for (const food of follows.get(at) ?? []) whole.add(food);
  }
  return packs.every(({ at, by, max }) => {
    let sum = 0;
    for (let n = 0; n < at.length; n++) if (whole.has(at[n] as number)) sum += by[n] as number;
    return sum <= max + EPS;
  });
}

/** Switches in use, the most used first, as far as they may be on together. */
function usedTogether(frame: Frame, level: Float64Array): Set<string> {
  const on: Switch[] = [];
  for (const s of usedBy(frame, level)) if (together(frame, [...on, s])) on.push(s);
  return new Set(on.map(({ id }) => id));
}

/** Settles the most used switch, looks again, and so on until every one in use is on; null when it ends nowhere. */
function dive(frame: Frame): Solution | null {
  if (frame.root.outcome !== 'optimal') return null;
  let tableau = copyOf(frame.root.tableau);
  const settled = new Set<Switch>();
  const on: Switch[] = [];
  for (let step = 0; step <= frame.switches.length; step++) {
    const next = usedBy(frame, tableau.level).find((s) => !settled.has(s));
    if (next === undefined) return settledAt(frame, new Set(on.map(({ id }) => id)));
    on.push(next);
    settled.add(next);
    settle(tableau, next, true);
    for (const s of frame.switches)
      if (!settled.has(s) && !together(frame, [...on, s])) {
        settled.add(s);
        settle(tableau, s, false);
      }
    const now = solved(frame, tableau);
    if (now.outcome !== 'optimal') return null;
    tableau = now.tableau;
  }
  return null;
}

/**
 * A good solution with whole-number choices, quickly: what the relaxed programme uses most, as far as
 * it may be used together. Never better than the optimum; `infeasible` when none was found.
 */
export const nearlySolve = (program: Program): Solution => near(frameOf(program));

function near(frame: Frame): Solution {
  if (frame.root.outcome !== 'optimal') return unsolved(frame.root.outcome);
  const found = settledAt(frame, usedTogether(frame, frame.root.tableau.level));
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
