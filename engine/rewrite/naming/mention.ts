/** One ingredient as the method speaks of it. */
import type { Ingredient, PlannedItem, Role } from '../../model.ts';

/** What became of one ingredient, for the words of the method. */
export interface Mention {
  ingredient: Ingredient;
  items: PlannedItem[];
  /** Words that stand for it in the method, longest first. */
  names: string[];
  /** Its last word, when other ingredients end in it too ('sugar' of two sugars); null when none does. */
  sharedHead: string | null;
  /** What it is called now; null when nothing of it is left, or it is the same food still. */
  newName: string | null;
  changed: boolean;
  /** What it does in the dish, to tell two of one name apart. */
  role: Role | null;
  /** The place of its part among the plan's; null when the dish is one. */
  part: number | null;
  /** Additions that go in with it, where it is first named. */
  goesInWith: PlannedItem[];
  /** Ids of foods that stand in for another ingredient too, so that their amounts must be told apart. */
  alsoElsewhere: ReadonlySet<string>;
}

/** Grams of everything that an ingredient is now. */
export const massOf = ({ items }: Mention): number =>
  items.reduce((sum, { grams }) => sum + grams, 0);

/** One item a food: what a swap brings and what is added of the same food go in together. */
export function mergedByFood(items: readonly PlannedItem[]): PlannedItem[] {
  const byFood = new Map<string, PlannedItem>();
  for (const item of items) {
    const same = byFood.get(item.foodId);
    byFood.set(item.foodId, same ? { ...same, grams: same.grams + item.grams } : item);
  }
  return [...byFood.values()];
}
