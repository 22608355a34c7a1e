/** Pages that are never reworked, such as food for babies or jars for the shelf: only their figures are shown. */
import rows from '../data/left-alone.json' with { type: 'json' };
import { mentionsAny } from './word-search.ts';

interface LeftAloneRow {
  kind: string;
  title?: readonly string[];
  method?: readonly string[];
  both?: boolean;
  why: string;
}

/** Why a page of this title and method is not reworked, in a sentence, or null when it may be. */
export function whyLeftAlone(title: string, steps: readonly string[]): string | null {
  const method = steps.join('\n');
  const row = (rows as readonly LeftAloneRow[]).find((one) => {
    const titled = mentionsAny(one.title, title);
    const done = mentionsAny(one.method, method);
    return one.both === true ? titled && done : titled || done;
  });
  return row?.why ?? null;
}
