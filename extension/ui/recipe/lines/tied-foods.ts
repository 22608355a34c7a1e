/** What a line may be instead, and what that would change. */
import { type FoodTable, tallyRecipe, type WalkOptions } from '../../../../engine/index.ts';
import type { Adaptation, Ingredient } from '../../../../engine/model.ts';
import { digitsOf } from '../../figures/format.ts';
import { say } from '../../words/say.ts';

export interface Tie {
  foodId: string;
  foodName: string;
  /** Net carbs of a serving of the original with this food less those with the present one, g. */
  differenceG: number | null;
}

/** More than these would be a list to search, not a choice. */
const MOST = 4;

/** The other foods of a line's match, likeliest first. */
export function tiesOf(
  adaptation: Adaptation,
  { key, match }: Ingredient,
  options: WalkOptions,
  table: FoodTable,
): Tie[] {
  const { recipe, goals, before, corrections } = adaptation;
  const now = before.perServing.netCarbsG?.best ?? null;
  const others = (match?.others ?? []).filter(({ foodId }) => foodId !== match?.foodId);
  return others.slice(0, MOST).flatMap(({ foodId, foodName }) => {
    if (table.byId(foodId) === null) return [];
    const changed = { ...corrections, [key]: { ...corrections[key], foodId } };
    const then = tallyRecipe(
      recipe,
      { ...goals, servings: before.servings },
      { ...options, corrections: changed },
    ).tally.perServing.netCarbsG;
    const differenceG = then && now !== null ? then.best - now : null;
    return [{ foodId, foodName, differenceG }];
  });
}

/** '+3.1 g', '−0.4 g', 'no difference', or 'difference not known'. */
export function differenceText(differenceG: number | null): string {
  if (differenceG === null) return say('differenceUnknown');
  if (Math.abs(differenceG) < 0.05) return say('noDifference');
  return `${differenceG > 0 ? '+' : '−'}${digitsOf(Math.abs(differenceG), 1)} g`;
}
