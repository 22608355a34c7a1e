/** A programme as CPLEX LP text, for a second solver. */
import type { Program } from '../../../engine/plan/solver/programme.ts';

const number = (value: number): string => value.toFixed(12);

/** LP text of a programme; `relax` leaves the whole-number demand out. Variables are renamed x0, x1 ... */
export function lpText(program: Program, relax: boolean): string {
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
