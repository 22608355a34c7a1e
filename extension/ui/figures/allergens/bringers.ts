/** Which foods bring what the user avoids, for the alert above the verdict. */
import type { Adaptation, Allergen } from '../../../../engine/model.ts';

export interface Bringer {
  /** The ingredient's key, or 'new.food-id'. */
  key: string;
  /** Null for a line whose food is not known. */
  foodId: string | null;
  food: string;
  /** The page has this food too. */
  original: boolean;
}

export interface StillContained {
  allergen: Allergen;
  by: Bringer[];
  /** Only the words of unknown lines name it. */
  likely: boolean;
}

const named = (adaptation: Adaptation, key: string): Bringer => ({
  key,
  foodId: null,
  food: adaptation.ingredients.find((one) => one.key === key)?.item.name ?? key,
  original: true,
});

/** The planned foods under a key that have the allergen by the engine's own judgement. */
function bringersOf(
  adaptation: Adaptation,
  key: string,
  holds: (foodId: string) => boolean,
): Bringer[] {
  const match = adaptation.ingredients.find((one) => one.key === key)?.match;
  const items = adaptation.plan.items.filter((item) => item.key === key && item.grams > 0);
  const found = items
    .filter(({ foodId }) => holds(foodId))
    .map(({ foodId, foodName }) => ({
      key,
      foodId,
      food: foodName,
      original: match?.foodId === foodId,
    }));
  return found.length > 0 ? found : [named(adaptation, key)];
}

/** In the order the engine tells them; none when nothing avoided is left. */
export function stillContained(
  adaptation: Adaptation,
  allergensOf: (foodId: string) => readonly Allergen[],
): StillContained[] {
  return adaptation.stillContains.map(({ allergen, keys, likelyKeys }) => ({
    allergen,
    by: [
      ...keys.flatMap((key) =>
        bringersOf(adaptation, key, (foodId) => allergensOf(foodId).includes(allergen)),
      ),
      ...likelyKeys.map((key) => named(adaptation, key)),
    ],
    likely: keys.length === 0,
  }));
}
