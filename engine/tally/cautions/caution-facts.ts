/** What cautions are decided by: the foods of a serving, how figures moved, the page's words, the person. */
import type { FoodTable } from '../../foods/index.ts';
import type { Family, Food, Nutrient, Person, Plan, Tally } from '../../model.ts';

/** A food of the reworked recipe and the grams of it that are eaten with one serving. */
interface ServedFood {
  food: Food;
  gramsPerServing: number;
  /** True when the plan brought it. */
  added: boolean;
}

export interface CautionInput {
  before: Tally;
  after: Tally;
  plan: Plan;
  foods: FoodTable;
  /** Title and method, to see frying, slow cooking, baby food and the like. */
  words?: string;
  /** BCP 47 tag of the recipe's language; English when unknown. */
  language?: string | null;
  /** What the user has stated about themselves; left out when unknown. */
  person?: Partial<Person>;
}

export interface CautionFacts extends CautionInput {
  served: ServedFood[];
  family: Family;
  words: string;
  /** Figure of a serving after the rework, in the nutrient's unit; 0 when unknown. */
  now: (nutrient: Nutrient) => number;
  /** After less before. */
  change: (nutrient: Nutrient) => number;
  /** Is such a food eaten? */
  eats: (test: (food: Food) => boolean) => boolean;
  /** Is such a food eaten that the plan brought? */
  adds: (test: (food: Food) => boolean) => boolean;
}

const bestOf = (tally: Tally, nutrient: Nutrient): number => tally.perServing[nutrient]?.best ?? 0;

function servedFoods({ plan, foods, after }: CautionInput): ServedFood[] {
  return plan.items.flatMap(({ key, foodId, grams, eaten }) => {
    const food = foods.byId(foodId);
    if (food === null || grams <= 0) return [];
    const brings = plan.swaps.some(
      (swap) => swap.key === key && swap.to.some((to) => to.foodId === foodId),
    );
    const gramsPerServing = (grams * eaten.best) / after.servings;
    return [{ food, gramsPerServing, added: brings || key.startsWith('new.') }];
  });
}

export function cautionFacts(input: CautionInput): CautionFacts {
  const { before, after } = input;
  const served = servedFoods(input);
  const eaten = served.filter(({ gramsPerServing }) => gramsPerServing > 0);
  return {
    ...input,
    served,
    family: input.plan.family.id,
    words: input.words ?? '',
    now: (nutrient) => bestOf(after, nutrient),
    change: (nutrient) => bestOf(after, nutrient) - bestOf(before, nutrient),
    eats: (test) => eaten.some(({ food }) => test(food)),
    adds: (test) => eaten.some(({ food, added }) => added && test(food)),
  };
}
