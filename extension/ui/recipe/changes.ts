/** What the cook does differently, grouped by the original ingredient. */
import type { Adaptation, Ingredient, PlannedItem } from '../../../engine/model.ts';

export interface NewFood {
  foodId: string;
  food: string;
  grams: number;
}

export interface Change {
  /** The original ingredient's key, or 'new.food-id' for an addition. */
  key: string;
  /** The original food; null for an addition. */
  from: NewFood | null;
  /** Grams of the original food that stay. */
  keptG: number;
  /** What comes in its place, largest first. */
  to: NewFood[];
  /** Net carbs a serving that the change takes off, g. */
  savedG: number;
}

/** Less than this share of a line's grams is rounding, not a change: own choice. */
const SAME = 0.005;

const newFood = ({ foodId, foodName, grams }: PlannedItem): NewFood => ({
  foodId,
  food: foodName,
  grams,
});

const netOf = (side: Adaptation['before'], key: string): number =>
  side.contributions
    .filter((one) => one.key === key || one.key.startsWith(`${key}>`))
    .reduce((sum, { netCarbsG }) => sum + (netCarbsG?.best ?? 0), 0);

function changeOf(adaptation: Adaptation, { key, match, weight }: Ingredient): Change[] {
  if (!match || !weight) return [];
  const items = adaptation.plan.items.filter((item) => item.key === key);
  const was = weight.grams.best;
  const keptG = items
    .filter(({ foodId }) => foodId === match.foodId)
    .reduce((sum, { grams }) => sum + grams, 0);
  const to = items.filter(({ foodId }) => foodId !== match.foodId).map(newFood);
  if (to.length === 0 && Math.abs(keptG - was) <= SAME * was) return [];
  return [
    {
      key,
      from: { foodId: match.foodId, food: match.foodName, grams: was },
      keptG,
      to: to.sort((a, b) => b.grams - a.grams),
      savedG: netOf(adaptation.before, key) - netOf(adaptation.after, key),
    },
  ];
}

/** Largest effect on a serving first; additions after what they serve. */
export function changesOf(adaptation: Adaptation): Change[] {
  const changed = adaptation.ingredients.flatMap((one) => changeOf(adaptation, one));
  const added = adaptation.plan.items
    .filter(({ key }) => key.startsWith('new.'))
    .map((item) => ({ key: item.key, from: null, keptG: 0, to: [newFood(item)], savedG: 0 }));
  changed.sort((a, b) => b.savedG - a.savedG);
  return [...changed, ...added];
}

/** More lines than these are folded, as are changes that take off less than this (g). Own choice. */
const MOST = 4;
const SMALL_G = 0.3;

/** The changes to be seen at once, at most four, and the small ones. */
export function partedChanges(changes: readonly Change[]): { main: Change[]; small: Change[] } {
  const worth = changes.filter(({ savedG }) => savedG >= SMALL_G).slice(0, MOST);
  const main = worth.length > 0 ? worth : changes.slice(0, MOST);
  const rest = changes.filter((change) => !main.includes(change));
  // A fold that hides one line hides nothing worth folding.
  return rest.length === 1 && main.length < MOST
    ? { main: [...main, ...rest], small: [] }
    : { main, small: rest };
}
