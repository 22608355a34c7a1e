/** Reasons of the ingredient rows, without repeating what a row above says of the same line. */
import type { RewrittenLine } from '../../../../engine/model.ts';

/** Rows that a line's stand-ins take are keyed 'line>food'. */
const lineOf = ({ key }: RewrittenLine): string => key.split('>')[0] ?? key;

const partsOf = (why: string | null): string[] => (why ?? '').replace(/\.$/, '').split('; ');

/** Why a row changed, less the parts that earlier rows of its line have said; null when nothing is left. */
export function reasonOf(line: RewrittenLine, rows: readonly RewrittenLine[]): string | null {
  if (line.why === null) return null;
  const above = rows.slice(0, rows.indexOf(line)).filter((row) => lineOf(row) === lineOf(line));
  const said = new Set(above.flatMap(({ why }) => partsOf(why)));
  if (said.size === 0) return line.why;
  const fresh = partsOf(line.why).filter((part) => !said.has(part));
  return fresh.length === 0 ? null : `${fresh.join('; ')}.`;
}
