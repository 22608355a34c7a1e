/** Which part of a dish an ingredient or an addition belongs to. */
import type { Plan, PlannedItem } from '../../model.ts';

export const isAddition = ({ key }: PlannedItem): boolean => key.startsWith('new.');

/** The place of an ingredient's part among the plan's; null when the dish is one, or no part has it. */
export function partOfKey(plan: Plan, key: string): number | null {
  if (plan.parts.length < 2) return null;
  const at = plan.parts.findIndex(({ keys }) => keys.includes(key));
  return at < 0 ? null : at;
}

/** The place of a planned food's part among the plan's; null when the dish is one. */
export const partOfItem = (plan: Plan, item: PlannedItem): number | null =>
  plan.parts.length < 2 ? null : isAddition(item) ? (item.part ?? null) : partOfKey(plan, item.key);
