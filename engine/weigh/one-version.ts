/** A list of a base and many ways to finish it: nobody makes all of them at once. */
import type { Line } from '../model.ts';
import { plain } from './line-words.ts';

const SAYS_WAYS =
  /\b(\d{1,2}|two|three|four|five|six|seven|eight|nine|ten) (?:(?:(?:easy|delicious|healthy|different|tasty|new) )*(?:ways|flavou?rs|variations|versions|arten|varianten|facons|maneras|modi|manieren)|(?:[a-z]+ ){0,5}recipes)\b/;
const COUNTS = ['two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
/** Lines of what all ways share, at least; and of what one adds, at most. Own choice. */
const BASE_FROM = 3;
const WAY_TO = 8;
/** How far the ways listed may be from the number in the title: one may be the plain base. */
const APART = 1;

function waysSaid(title: string): number | null {
  const said = SAYS_WAYS.exec(plain(title))?.[1];
  if (said === undefined) return null;
  return Number.isNaN(Number(said)) ? COUNTS.indexOf(said) + 2 : Number(said);
}

/** The titled parts of the list in their order, with the number of their lines. */
function partsOf(lines: readonly Line[]): Map<string, number> {
  const parts = new Map<string, number>();
  for (const { group } of lines) if (group !== null) parts.set(group, (parts.get(group) ?? 0) + 1);
  return parts;
}

/**
 * The lines; where the title promises so many ways ('Oat bars, 6 ways') and as many parts follow the
 * base, those of all ways but the first are told to be of another version.
 */
export function linesOfOneVersion(lines: readonly Line[], title: string): Line[] {
  const said = waysSaid(title);
  if (said === null) return [...lines];
  const untitled = lines.filter(({ group }) => group === null).length;
  const parts = [...partsOf(lines)];
  const base = untitled >= BASE_FROM ? untitled : (parts.shift()?.[1] ?? 0);
  const fits = base >= BASE_FROM && Math.abs(parts.length - said) <= APART && parts.length > 1;
  if (!fits || parts.some(([, count]) => count > WAY_TO)) return [...lines];
  const others = new Set(parts.slice(1).map(([group]) => group));
  return lines.map((line) =>
    line.group !== null && others.has(line.group) ? { ...line, kind: 'other-version' } : line,
  );
}
