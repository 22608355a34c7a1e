/** What a page asks its worker, and what it gets back. */
import { adaptRecipe, type RecipeTally, type WalkOptions } from '../../../engine/index.ts';
import type { Adaptation, Goals, Interval, Recipe } from '../../../engine/model.ts';

export interface Question {
  recipe: Recipe;
  goals: Goals;
  options: WalkOptions;
}

/** Null when the recipe cannot be worked out. */
export type Answer = Adaptation | null;

/** A serving as the page has it: known well before what can be done about it. */
export interface AsItIs {
  servings: number;
  /** Of one serving, g. */
  netCarbsG: Interval;
}

/** What a worker says of one question: the page's own serving once it is counted, and the answer at last. */
export type Told = { kind: 'asItIs'; asItIs: AsItIs } | { kind: 'answer'; answer: Answer };

/** Null for figures that are asked about before they are believed. */
function asItIsOf({ servings, tally, questions }: RecipeTally): AsItIs | null {
  const { netCarbsG } = tally.perServing;
  return netCarbsG && questions.length === 0 ? { servings, netCarbsG } : null;
}

/** Works a question out, here and now; never throws. */
export function answerTo(
  { recipe, goals, options }: Question,
  tell: (asItIs: AsItIs) => void = () => {},
): Answer {
  const onTallied = (standing: RecipeTally) => {
    const asItIs = asItIsOf(standing);
    if (asItIs) tell(asItIs);
  };
  try {
    return adaptRecipe(recipe, goals, options, onTallied);
  } catch (error) {
    console.error(error);
    return null;
  }
}
