/** Lists of foods as cues name them: tags of the food table, and ids of single foods. */
import { hasTag, isTag } from '../../foods/tags.ts';

/** Whether a list names a food, by itself or by a tag that it has. */
export const isListed = (foodId: string, list: readonly string[]): boolean =>
  list.some((entry) => (isTag(entry) ? hasTag(foodId, entry) : entry === foodId));

/** Whether a list names one of the foods. */
export const listsOneOf = (foodIds: readonly string[], list: readonly string[]): boolean =>
  foodIds.some((id) => isListed(id, list));
