/** Two other solvers that ours is held to: one reads a programme as CPLEX LP text, the other as columns. */
import loadHighs from 'highs';
import { solve } from 'yalps';
import type { Program } from '../../../engine/plan/solver/programme.ts';

const number = (value: number): string => value.toFixed(12);

/** LP text of a programme; `relax` leaves the whole-number demand out. Variables are renamed x0, x1 ... */
function lpText(program: Program, relax: boolean): string {
  const names = new Map(program.variables.map((v, at) => [v.id, `x${at}`]));
  const sum = (terms: readonly (readonly [string, number])[]): string =>
    terms
      .map(([id, c]) => `${c < 0 ? '-' : '+'} ${number(Math.abs(c))} ${names.get(id)}`)
      .join(' ');
  const rows: string[] = [];
  program.rows.forEach((row, at) => {
    if (row.min !== undefined) rows.push(` l${at}: ${sum(row.terms)} >= ${number(row.min)}`);
    if (row.max !== undefined) rows.push(` u${at}: ${sum(row.terms)} <= ${number(row.max)}`);
  });
  const bounds = program.variables.flatMap((v) => {
    const max = v.binary ? 1 : v.max;
    return max === undefined ? [] : [` 0 <= ${names.get(v.id)} <= ${number(max)}`];
  });
  const binaries = program.variables.flatMap((v) =>
    v.binary && !relax ? [` ${names.get(v.id)}`] : [],
  );
  return [
    'Minimize',
    ` cost: ${sum(program.variables.map((v) => [v.id, v.cost]))}`,
    'Subject To',
    ...rows,
    'Bounds',
    ...bounds,
    ...(binaries.length > 0 ? ['Binary', ...binaries] : []),
    'End',
    '',
  ].join('\n');
}

const highs = await loadHighs();

export interface SolveOptions {
  /** Leaves the whole-number demand out. */
  relax?: boolean;
  /** Looks at the programme as written, without simplifying it first. */
  asWritten?: boolean;
}

/** The least objective by the first other solver; null when there is no solution. */
export function highsLeast(program: Program, options: SolveOptions = {}): number | null {
  const answer = highs.solve(lpText(program, options.relax === true), {
    mip_rel_gap: 0,
    ...(options.asWritten ? { presolve: 'off' } : {}),
  });
  return answer.Status === 'Optimal' ? answer.ObjectiveValue : null;
}

/** The least objective by the second other solver; null when there is no solution. */
export function yalpsLeast(program: Program, { relax = false }: SolveOptions = {}): number | null {
  const { variables, rows } = program;
  const columns = new Map(variables.map(({ id, cost }) => [id, new Map([['cost', cost]])]));
  const constraints = new Map<string, { min?: number; max?: number }>();
  rows.forEach(({ terms, min, max }, at) => {
    const name = `row ${at}`;
    constraints.set(name, {
      ...(min === undefined ? {} : { min }),
      ...(max === undefined ? {} : { max }),
    });
    for (const [id, c] of terms) {
      const column = columns.get(id);
      column?.set(name, (column.get(name) ?? 0) + c);
    }
  });
  for (const { id, max, binary } of variables) {
    const most = binary ? 1 : max;
    if (most === undefined) continue;
    columns.get(id)?.set(`most ${id}`, 1);
    constraints.set(`most ${id}`, { max: most });
  }
  const binaries = relax ? [] : variables.flatMap(({ id, binary }) => (binary ? [id] : []));
  const answer = solve(
    { direction: 'minimize', objective: 'cost', constraints, variables: columns, binaries },
    { tolerance: 0, maxIterations: 100_000 },
  );
  return answer.status === 'optimal' ? answer.result : null;
}
