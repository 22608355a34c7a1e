/** A loaf cake is cut into slices across: how many there are at most, whatever is served with it. */

import type { Family, Recipe } from '../../model.ts';
import { plainWords } from '../../plain-words.ts';
import racc from '../data/racc.json' with { type: 'json' };

const { families, words, several, most } = racc.loaf;

/** The most slices of a cake that is baked in one loaf tin; null for others. */
export function mostSlices(
  { title, steps, yield: { text } }: Recipe,
  family: Family,
): number | null {
  const said = plainWords([title, text ?? '', ...steps.map((step) => step.text)].join('\n'));
  const says = (list: readonly string[]): boolean => list.some((word) => said.includes(word));
  const isLoaf = families.includes(family) && says(words) && !says(several);
  return isLoaf ? most : null;
}
