/** What the plan would be without one of its swaps. */
import { adaptRecipe, type WalkOptions } from '../../../engine/index.ts';
import { type Adaptation, ClosenessPart, type Interval, type Swap } from '../../../engine/model.ts';
import { foodWord } from '../words/food-words.ts';

export interface PartChange {
  part: ClosenessPart;
  /** How far the part is from the original, percent. */
  now: number;
  without: number;
}

export interface WithoutSwap {
  netCarbsG: Interval | null;
  met: boolean;
  /** Parts that would be nearer or further from the original by a percent or more. */
  parts: PartChange[];
  /** Foods that would come in, or come in more of, in its place, with grams. */
  instead: { food: string; grams: number }[];
}

const away = (closeness: number | undefined): number => Math.round((1 - (closeness ?? 1)) * 100);

const gramsByFood = ({ plan }: Adaptation): Map<string, { food: string; grams: number }> => {
  const sums = new Map<string, { food: string; grams: number }>();
  for (const { foodId, foodName, grams } of plan.items) {
    const food = foodWord(foodId, foodName);
    sums.set(foodId, { food, grams: (sums.get(foodId)?.grams ?? 0) + grams });
  }
  return sums;
};

/** A change of less than this many grams is rounding, not another plan: own choice. */
const LEAST_GRAMS = 5;

/** Works the recipe out again with the swap ruled out. Null when that cannot be done. */
export function withoutSwap(
  adaptation: Adaptation,
  swap: Swap,
  options: WalkOptions,
): WithoutSwap | null {
  const { recipe, goals, plan } = adaptation;
  const excludedSwaps = [...goals.excludedSwaps, swap.id];
  let then: Adaptation;
  try {
    then = adaptRecipe(recipe, { ...goals, excludedSwaps }, options);
  } catch (error) {
    console.error(error);
    return null;
  }
  const before = gramsByFood(adaptation);
  return {
    netCarbsG: then.after.perServing.netCarbsG,
    met: then.plan.met,
    parts: ClosenessPart.options
      .map((part) => ({
        part,
        now: away(plan.closenessParts[part]),
        without: away(then.plan.closenessParts[part]),
      }))
      .filter((one) => one.now !== one.without),
    instead: [...gramsByFood(then)].flatMap(([id, { food, grams }]) => {
      const more = grams - (before.get(id)?.grams ?? 0);
      return more >= LEAST_GRAMS ? [{ food, grams: more }] : [];
    }),
  };
}
