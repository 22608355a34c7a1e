/** What of a plan belongs to which ingredient line. */
import type { Ingredient, Plan, PlannedItem, Swap } from '../../model.ts';
import { isAddition, partOfItem, partOfKey } from '../parts/part-of.ts';

/** Grams closer than this share are the same amount. */
const SAME = 0.005;

/** True when a plan's item is the ingredient's own food in the same amount. */
export function isSame(item: PlannedItem, ingredient: Ingredient): boolean {
  const grams = ingredient.weight?.grams.best ?? null;
  if (grams === null || item.foodId !== ingredient.match?.foodId) return false;
  return Math.abs(item.grams - grams) <= Math.max(0.05, SAME * grams);
}

/** Items of the plan that stand for an ingredient, its own food first. */
export function itemsFor(plan: Plan, ingredient: Ingredient): PlannedItem[] {
  const own = plan.items.filter(({ key, grams }) => key === ingredient.key && grams > 0);
  const isOwn = (item: PlannedItem): number => (item.foodId === ingredient.match?.foodId ? 0 : 1);
  return own.sort((a, b) => isOwn(a) - isOwn(b));
}

/** Additions that a swap of this ingredient brings. */
export function additionsFor(plan: Plan, key: string): PlannedItem[] {
  const foods = plan.swaps
    .filter((swap) => swap.key === key)
    .flatMap((swap) => swap.to.map(({ foodId }) => foodId));
  return plan.items.filter(
    (item) =>
      isAddition(item) &&
      item.grams > 0 &&
      foods.includes(item.foodId) &&
      partOfItem(plan, item) === partOfKey(plan, key),
  );
}

/** True when the plan speaks of this ingredient and leaves nothing of it. */
export function isDropped(plan: Plan, ingredient: Ingredient): boolean {
  const { key } = ingredient;
  const zeroed = plan.items.some((item) => item.key === key && item.grams <= 0);
  return zeroed || plan.swaps.some((swap) => swap.key === key && swap.keptGrams <= 0);
}

/** The reason for what a line has become, in the plan's words; null when it has none. */
export function whyOf(plan: Plan, key: string, foodId: string | null): string | null {
  const swaps = plan.swaps.filter((swap) => swap.key === key);
  const brings = (swap: Swap): boolean => swap.to.some((to) => to.foodId === foodId);
  const raised = plan.swaps.find((swap) => swap.key === null && brings(swap));
  return (swaps.find(brings) ?? swaps[0] ?? raised)?.why ?? null;
}
