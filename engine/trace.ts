/** What every figure of an adaptation rests on: figure -> lines -> food -> source. */
import { foodTable } from './foods/index.ts';
import { product, scale } from './interval.ts';
import type {
  Adaptation,
  Food,
  Ingredient,
  Interval,
  Match,
  Nutrient,
  Nutrients,
  Tally,
  Weight,
} from './model.ts';
import { NUTRIENTS } from './model.ts';
import { lineNutrient, type NumberedLine, numberedLines } from './tally/index.ts';
import { plannedIngredients } from './tally/planned-ingredients.ts';

/** One counted line and what it brings to a serving. */
export interface TracedLine {
  /** Key as in the tally's contributions. */
  key: string;
  /** The line as the recipe has it; of a food that the plan brings in, amount and name. */
  text: string;
  food: Food;
  match: Match;
  weight: Weight;
  /** Grams eaten in the whole dish. */
  grams: Interval;
  per100g: Nutrients;
  /** The line's part of one serving, g (energy kcal, sodium mg), with bounds. */
  perServing: Nutrients;
}

export interface Trace {
  before: TracedLine[];
  after: TracedLine[];
}

function perServingOf(line: NumberedLine, nutrient: Nutrient, servings: number): Interval | null {
  const whole = lineNutrient(line, nutrient);
  return whole && scale(whole, 1 / servings);
}

function traced(line: NumberedLine, servings: number): TracedLine[] {
  const { ingredient, food, numbers } = line;
  const { match, weight } = ingredient;
  if (!match || !weight) return [];
  const perServing = Object.fromEntries(
    NUTRIENTS.map((nutrient) => [nutrient, perServingOf(line, nutrient, servings)]),
  ) as Nutrients;
  return [
    {
      key: ingredient.key,
      text: ingredient.line.text,
      food,
      match,
      weight,
      grams: product(weight.grams, weight.eaten),
      per100g: numbers.figures,
      perServing,
    },
  ];
}

/**
 * The counted lines behind the figures of a serving, before and after, in recipe order. Their best
 * figures add up to the tally's. `ownFoods` must be those the adaptation was made with.
 */
export function traceFigures(adaptation: Adaptation, ownFoods: readonly Food[] = []): Trace {
  const { plan, recipe, ingredients } = adaptation;
  const lines = (list: readonly Ingredient[], { servings, rule }: Tally): TracedLine[] =>
    numberedLines(list, {
      foods: foodTable(ownFoods),
      servings,
      rule,
      family: plan.family.id,
      minutes: recipe.minutes.cook,
    }).lines.flatMap((line) => traced(line, servings));
  return {
    before: lines(ingredients, adaptation.before),
    after: lines(plannedIngredients(plan, ingredients), adaptation.after),
  };
}
