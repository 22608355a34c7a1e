import type { Adaptation, RewrittenLine } from '../../../../engine/model.ts';

/** A line of the original that only heads others: it was read as no ingredient. */
export function isHeading(
  { key, before }: Pick<RewrittenLine, 'key' | 'before'>,
  { ingredients }: Pick<Adaptation, 'ingredients'>,
): boolean {
  return before !== null && ingredients.every((ingredient) => ingredient.key !== key);
}
