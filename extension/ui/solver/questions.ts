/** What a page asks its worker, and what it gets back. */
import { adaptRecipe, type WalkOptions } from '../../../engine/index.ts';
import type { Adaptation, Goals, Recipe } from '../../../engine/model.ts';

export interface Question {
  recipe: Recipe;
  goals: Goals;
  options: WalkOptions;
}

/** Null when the recipe cannot be worked out. */
export type Answer = Adaptation | null;

/** Works a question out, here and now; never throws. */
export function answerTo({ recipe, goals, options }: Question): Answer {
  try {
    return adaptRecipe(recipe, goals, options);
  } catch (error) {
    console.error(error);
    return null;
  }
}
