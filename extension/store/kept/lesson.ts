/** Keeping what repeated water corrections say of a package, and taking the corrections off its recipes. */
import { adaptRecipe, type LearnedWater, type WalkOptions } from '../../../engine/index.ts';
import type { Adjustment } from '../../../engine/model.ts';
import type { Store } from '../db.ts';
import type { OwnFood, SavedRecipe } from '../records.ts';
import { listOwnFoods, saveOwnFood } from './kept-packages.ts';
import { listRecipes, saveRecipe } from './saved.ts';

/** Corrections without those that the flour itself makes from now on. */
export const withoutLearned = (
  adjustments: readonly Adjustment[],
  { adjustmentIds }: Pick<LearnedWater, 'adjustmentIds'>,
): Adjustment[] =>
  adjustments.filter(({ id, lever }) => lever !== 'water' || !adjustmentIds.includes(id));

const rests = ({ adaptation, goals }: SavedRecipe, lesson: LearnedWater): boolean =>
  withoutLearned(goals.adjustments, lesson).length < goals.adjustments.length &&
  (adaptation?.plan.items ?? []).some(({ foodId }) => foodId === lesson.food.id);

/**
 * Keeps the package with its learned water, and saves every other recipe that was corrected for it as
 * a new version without the corrections; the old one stays among its versions. `except` is the saved
 * recipe on the screen, whose corrections the screen takes off itself. Returns how many were changed.
 * @throws the storage layer's error; what was kept by then stays whole.
 */
export async function keepLesson(
  store: Store,
  lesson: LearnedWater,
  label: OwnFood['label'],
  except: string | null,
  options: Pick<WalkOptions, 'aliases'>,
  now: number,
): Promise<number> {
  await saveOwnFood(store, { ...lesson.food, label });
  const { foods: ownFoods } = await listOwnFoods(store);
  const { recipes } = await listRecipes(store);
  const corrected = recipes.filter((saved) => saved.id !== except && rests(saved, lesson));
  for (const saved of corrected) {
    const { recipe, corrections, id } = saved;
    const goals = { ...saved.goals, adjustments: withoutLearned(saved.goals.adjustments, lesson) };
    const adaptation = adaptRecipe(recipe, goals, { ...options, ownFoods, corrections });
    await saveRecipe(store, { recipe, goals, corrections, adaptation }, id, now);
  }
  return corrected.length;
}
