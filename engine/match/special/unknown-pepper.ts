/** Peppers of a kind that no name tells. */
import type { Candidate, Lookup } from '../lookup.ts';
import { matchName } from '../search.ts';

/** Peppers of an unknown kind are no spice. */
export function vegetablePeppers(
  name: string,
  found: readonly Candidate[],
  lookup: Lookup,
): readonly Candidate[] {
  const [first] = found;
  const isNearest = first?.food.id === 'black-pepper' && first.reason.startsWith('nearest');
  if (!isNearest || !/\bpeppers$/i.test(name)) return found;
  return matchName('bell pepper', lookup, null).map((c) => ({
    ...c,
    score: c.score * 0.65,
    reason: 'a pepper of a kind not known, taken as bell pepper',
  }));
}
