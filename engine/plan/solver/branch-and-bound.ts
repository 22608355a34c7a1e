/** Branch and bound over the binaries of a programme that switch other variables on. */
import { FAILED, INFEASIBLE, type Program, type Solution, UNFINISHED } from './programme.ts';
import {
  copied,
  type Frame,
  fits,
  frameOf,
  type Solved,
  type Switch,
  solved,
} from './search-frame.ts';
import { type Outcome, setBounds, type Tableau } from './simplex.ts';
import type { Work } from './work.ts';

/** A share closer to 0 or 1 than this is as good as there. */
const SHARE_TOLERANCE = 1e-7;
/** Levels below this are none at all. */
const NEGLIGIBLE = 1e-9;
/** Share of the most it opens from which a switch counts as used. */
const LEAST_USED = 1e-6;

/** Objective of levels; the programme's own costs, whatever the simplex did to break ties. */
function objectiveOf({ matrix }: Frame, level: Float64Array): number {
  let sum = 0;
  for (let v = 0; v < matrix.columns; v++) sum += (matrix.cost[v] as number) * (level[v] as number);
  return sum;
}

function solutionOf(frame: Frame, level: Float64Array): Solution {
  const values = new Map<string, number>();
  frame.program.variables.forEach(({ id }, at) => {
    const value = level[at] ?? 0;
    if (value > NEGLIGIBLE) values.set(id, value);
  });
  return { status: 'optimal', objective: objectiveOf(frame, level), values };
}

function unsolved(outcome: Outcome): Solution {
  if (outcome === 'unfinished') return UNFINISHED;
  return outcome === 'failed' ? FAILED : INFEASIBLE;
}

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
    .filter(({ share }) => share > LEAST_USED)
    .sort((a, b) => b.share - a.share)
    .map(({ s }) => s);
}

/** Levels with every used switch wholly on and what follows from it; null when that breaks a row. */
function rounded(frame: Frame, level: Float64Array): Float64Array | null {
  const whole = level.slice();
  for (const s of frame.switches) {
    if (shareOf(s, level) > SHARE_TOLERANCE) whole[s.at] = 1;
    else if ((whole[s.at] as number) < 1 - SHARE_TOLERANCE) whole[s.at] = 0;
    if (whole[s.at] === 1)
      for (const follower of frame.followers.get(s.at) ?? []) whole[follower] = 1;
  }
  return fits(frame, whole, SHARE_TOLERANCE) ? whole : null;
}

/** Solves a frame with its switches settled: those in `on` are 1, the others 0. */
export function solveSettled(frame: Frame, on: ReadonlySet<string>): Solution {
  if (frame.root.outcome !== 'optimal') return unsolved(frame.root.outcome);
  const tableau = copied(frame, frame.root.tableau);
  for (const s of frame.switches) settle(tableau, s, on.has(s.id));
  const { tableau: end, outcome } = solved(frame, tableau);
  return outcome === 'optimal' ? solutionOf(frame, end.level) : unsolved(outcome);
}

/** Switches that a solution uses, the most used first. */
export function openedBy(program: Program, values: ReadonlyMap<string, number>): string[] {
  return program.variables
    .flatMap(({ id, opens }) => {
      if (!opens) return [];
      const sum = opens.reduce((all, o) => all + (values.get(o.id) ?? 0) / o.most, 0);
      return [{ id, share: sum / opens.length }];
    })
    .filter(({ share }) => share > LEAST_USED)
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

/** Share of the work left that one search may use, so that later ones are not left with nothing. Own choice. */
const SHARE_OF_WORK = 0.5;

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
    if (share <= SHARE_TOLERANCE || share >= 1 - 1e-6) continue;
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
  const tableau = copied(frame, from);
  if (from !== frame.root.tableau) settle(tableau, next, on);
  else
    for (const s of frame.switches) {
      const state = settled.get(s.id);
      if (state !== undefined) settle(tableau, s, state);
    }
  return solved(frame, tableau);
}

/**
 * Solves a programme that keeps the search's conditions (`conditionFaults`); deterministic (no clock).
 * Never throws: a programme that cannot be solved has status `infeasible` or `failed`, one whose work
 * ran out before a solution was found `unfinished`.
 */
export const solveProgram = (program: Program, options: SolveOptions = {}, work?: Work): Solution =>
  solveFrame(frameOf(program, work), options);

/** The best solution so far, and what a node must promise to be looked at. */
class Incumbent {
  best: Solution | null = null;
  readonly #gap: number;

  constructor(gap: number) {
    this.#gap = Math.max(gap, 1e-9);
  }

  offer(solution: Solution): void {
    if (solution.status !== 'optimal') return;
    if (this.best === null || solution.objective < this.best.objective) this.best = solution;
  }

  get cutoff(): number {
    return this.best === null ? Number.POSITIVE_INFINITY : this.best.objective - this.#gap;
  }
}

/** Looks at a solved node: offers what it gives, and returns the nodes it leaves to search. */
function branches(
  frame: Frame,
  node: Node,
  tableau: Tableau,
  incumbent: Incumbent,
  keep: boolean,
): Node[] {
  const { level } = tableau;
  const bound = objectiveOf(frame, level);
  if (bound >= incumbent.cutoff) return [];
  const whole = rounded(frame, level);
  if (whole) incumbent.offer(solutionOf(frame, whole));
  const next = toBranch(frame, node.settled, level);
  if (next === null) {
    const used = frame.switches.filter(
      (s) => shareOf(s, level) > SHARE_TOLERANCE || node.settled.get(s.id) === true,
    );
    incumbent.offer(solveSettled(frame, new Set(used.map(({ id }) => id))));
    return [];
  }
  if (node.next === null) incumbent.offer(solveSettled(frame, usedTogether(frame, level)));
  const from = keep ? tableau : frame.root.tableau;
  return [true, false].map((on) => ({
    from,
    next,
    on,
    settled: new Map([...node.settled, [next.id, on]]),
    bound,
  }));
}

/** As `solveProgram`, of a programme taken apart before. */
export function solveFrame(frame: Frame, options: SolveOptions = {}): Solution {
  const { root, work } = frame;
  if (root.outcome !== 'optimal') return unsolved(root.outcome);
  if (options.relax) return solutionOf(frame, root.tableau.level);
  const incumbent = new Incumbent(options.gap ?? 0);
  for (const on of options.tries ?? []) incumbent.offer(solveSettled(frame, on));
  const nodes: Node[] = [
    {
      from: root.tableau,
      next: null,
      on: true,
      settled: new Map(),
      bound: Number.NEGATIVE_INFINITY,
    },
  ];
  const floor = Number.isFinite(work.left) ? (1 - SHARE_OF_WORK) * work.left : 0;
  let failed = false;
  for (let count = 0; nodes.length > 0; count++) {
    if (count >= MOST_NODES || work.left <= floor) {
      work.ranOut = true;
      return incumbent.best ?? (failed ? FAILED : UNFINISHED);
    }
    const node = pop(nodes);
    if (!node || node.bound >= incumbent.cutoff) break;
    const { tableau, outcome } = solveNode(frame, node);
    if (outcome === 'failed') failed = true;
    if (outcome === 'optimal')
      nodes.push(...branches(frame, node, tableau, incumbent, nodes.length < MOST_KEPT));
  }
  return incumbent.best ?? (failed ? FAILED : INFEASIBLE);
}

/** Whether rows that count switches, and what follows from them, let these be on together. */
function together({ countRows, followers }: Frame, on: readonly Switch[]): boolean {
  const whole = new Set<number>();
  for (const { at } of on) {
    whole.add(at);
    for (const follower of followers.get(at) ?? []) whole.add(follower);
  }
  return countRows.every(({ at, by, max }) => {
    let sum = 0;
    for (let n = 0; n < at.length; n++) if (whole.has(at[n] as number)) sum += by[n] as number;
    return sum <= max + SHARE_TOLERANCE;
  });
}

/** Switches in use, the most used first, as far as they may be on together. */
function usedTogether(frame: Frame, level: Float64Array): Set<string> {
  const on: Switch[] = [];
  for (const s of usedBy(frame, level)) if (together(frame, [...on, s])) on.push(s);
  return new Set(on.map(({ id }) => id));
}
