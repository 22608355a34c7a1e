/** How large a recipe may be that a file brings in. */
import type { Recipe } from '../../../engine/model.ts';

/** Lines and steps of a recipe, and its characters in all. Own choices, far beyond any recipe of a kitchen. */
const LINES = 5000;
const STEPS = 5000;
const CHARACTERS = 1_000_000;

export function isRecipeSize(recipe: Recipe): boolean {
  const lines = recipe.groups.reduce((sum, group) => sum + group.lines.length, 0);
  return (
    lines <= LINES && recipe.steps.length <= STEPS && JSON.stringify(recipe).length <= CHARACTERS
  );
}
