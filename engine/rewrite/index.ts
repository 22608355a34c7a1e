/** A plan, told as ingredient lines and a method. */
import type { FoodTable } from '../foods/index.ts';
import type {
  Adjustment,
  Ingredient,
  MethodNote,
  MissingLine,
  Plan,
  Recipe,
  RewrittenLine,
  RewrittenStep,
  Tally,
} from '../model.ts';
import type { Region } from '../units.ts';
import { isForeign, keyed, methodWords } from './languages/method-words.ts';
import { rewriteLines } from './lines/ingredient-lines.ts';
import { listedFlours } from './naming/flour-places.ts';
import { mentionsOf } from './naming/mentions.ts';
import { withSummedBakes } from './oven/summed-bake.ts';
import { withRecut } from './recut/recut-step.ts';
import { wholeIn } from './recut/recut-words.ts';
import {
  isAbove,
  isServedBeside,
  type Room,
  replacedOf,
  withServedBeside,
} from './recut/served-beside.ts';
import {
  energyBefore,
  hasProtein,
  isSavouryPlate,
  lightMeal,
  shareOfPlate,
} from './recut/smaller-plate.ts';
import { withLeftOff } from './steps/left-off.ts';
import { rewriteSteps } from './steps/method-steps.ts';
import { autolyses } from './steps/rested-flour.ts';

export interface RewriteOptions {
  foods: FoodTable;
  /** Decides which cups and spoons stand beside the grams. */
  region: Region;
  /** Servings of the page; the plan may make more of them. */
  pageServings?: number;
  /** Changes accepted after earlier bakes; those in words become steps. */
  adjustments?: readonly Adjustment[];
  /** What the page serves with the dish, in no figure, that takes a serving past the budget. */
  besides?: readonly MissingLine[];
  /** The dish as the plan has it, counted. */
  after?: Tally;
}

function roomIn({ budgetG }: Plan, after: Tally | undefined): Room | null {
  const counted = after?.perServing.netCarbsG?.best;
  return counted === undefined ? null : { counted, budget: budgetG };
}

/**
 * Lines and steps of the reworked recipe. Every original line has its entry, `kept` ones verbatim;
 * every step is marked kept, changed or inserted, and notes tell where every food goes in. Masses in lines are those of the plan, rounded as
 * a kitchen scale reads them. Pure and total.
 */
export function rewriteRecipe(
  recipe: Recipe,
  ingredients: readonly Ingredient[],
  plan: Plan,
  options: RewriteOptions,
): { lines: RewrittenLine[]; steps: RewrittenStep[]; methodNotes: MethodNote[] } {
  const { foods, region, adjustments = [], besides = [], after } = options;
  const { pageServings = plan.servings } = options;
  const texts = recipe.steps.map(({ text }) => text);
  const words = methodWords(recipe.language);
  const all = mentionsOf(ingredients, plan);
  const isLean = plan.family.id === 'lean-yeast-bread';
  const rests = words === null && isLean && autolyses(texts, all);
  const mentions = rests ? all : listedFlours(all, plan, texts);
  const method = rewriteSteps(recipe, {
    partTitle: null,
    plan,
    ingredients,
    mentions,
    foods,
    region,
    method: (words === null ? texts : texts.map((text) => keyed(text, words))).join('\n'),
    title: words === null ? recipe.title : keyed(recipe.title, words),
    words,
    autolyses: rests,
    adjustments,
  });
  const servings = {
    page: pageServings,
    now: plan.servings,
    plates: isSavouryPlate(plan) && !isServedBeside(besides, recipe.language),
    filling: after !== undefined && hasProtein(after, ingredients),
    left: shareOfPlate(ingredients, plan),
    lightKcal: lightMeal(
      energyBefore(ingredients, foods, pageServings),
      after?.perServing.energyKcal?.best ?? null,
    ),
    unstated: recipe.yield.servings === null && recipe.yield.pieces === null,
    whole: wholeIn(recipe.title),
    made: recipe.yield.servings === null ? null : recipe.yield.pieces,
  };
  const recut = withRecut(method, servings, recipe.language, plan.family.id);
  const room = roomIn(plan, after);
  const served = withServedBeside(recut.steps, besides, recipe.language, room);
  const replaced = isAbove(room) ? replacedOf(besides, recipe.language, room) : null;
  const others = besides.filter((line) => line !== replaced);
  return {
    lines: rewriteLines(recipe, ingredients, {
      plan,
      foods,
      region,
      local: words,
      unworded: words === null && isForeign(recipe.language),
    }),
    ...recut,
    steps: withSummedBakes(withLeftOff(served, others, all, recipe.language, isAbove(room)), words),
  };
}
