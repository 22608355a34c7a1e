/** Recipes for the planner's tests, from food ids and grams, without parser or matcher. */
import { foodTable } from '../../engine/foods/index.ts';
import {
  DEFAULT_GOALS,
  type Family,
  type FrontierPoint,
  type Goals,
  type Ingredient,
  type Plan,
} from '../../engine/model.ts';
import { planFrontier, planRecipe, planWays, type Ways } from '../../engine/plan/index.ts';
import type { PlanOptions } from '../../engine/plan/request.ts';
import { tally } from '../../engine/tally/index.ts';

export const foods = foodTable();

export type Part = readonly [foodId: string, grams: number, text?: string];

export interface Sample {
  title: string;
  servings: number;
  parts: readonly Part[];
  steps?: string[];
  family: Family;
}

/** An ingredient of a known food and mass. */
export function ingredient(key: string, foodId: string, grams: number, text?: string): Ingredient {
  const food = foods.byId(foodId);
  if (!food) throw new Error(`no such food: ${foodId}`);
  const item = { amounts: [], size: null, name: food.name, preparation: null, alternatives: [] };
  return {
    key,
    line: {
      text: text ?? `${grams} g ${food.name}`,
      group: null,
      kind: 'ingredient',
      items: [item],
      name: food.name,
      note: null,
      purpose: null,
      optional: false,
    },
    item,
    match: { foodId, foodName: food.name, confidence: 1, reason: 'test', others: [] },
    weight: {
      grams: { low: grams, best: grams, high: grams },
      eaten: { low: 1, best: 1, high: 1 },
      basis: 'mass',
      assumptions: [],
      disagreement: null,
    },
  };
}

export const ingredientsOf = (sample: Sample): Ingredient[] =>
  sample.parts.map(([id, grams, text], at) => ingredient(`${at}`, id, grams, text));

const recipeOf = (sample: Sample) => ({ title: sample.title, steps: sample.steps ?? [] });

export function tallyOf(
  sample: Sample,
  ingredients = ingredientsOf(sample),
  rule = DEFAULT_GOALS.rule,
) {
  return tally(ingredients, {
    foods,
    servings: sample.servings,
    rule,
    family: sample.family,
    title: sample.title,
  });
}

function optionsOf(sample: Sample, goals: Partial<Goals>): PlanOptions {
  const all = { ...DEFAULT_GOALS, ...goals };
  const before = tallyOf(sample, ingredientsOf(sample), all.rule);
  return { goals: all, servings: sample.servings, foods, before };
}

/** Plans a sample with some goals changed. */
export const plan = (sample: Sample, goals: Partial<Goals> = {}): Plan =>
  planRecipe(ingredientsOf(sample), recipeOf(sample), optionsOf(sample, goals));

/** Every way to plan a sample. */
export const ways = (sample: Sample, goals: Partial<Goals> = {}): Ways =>
  planWays(ingredientsOf(sample), recipeOf(sample), optionsOf(sample, goals));

/** The curve of a sample's plan. */
export const frontier = (sample: Sample, goals: Partial<Goals> = {}): FrontierPoint[] =>
  planFrontier(ingredientsOf(sample), recipeOf(sample), optionsOf(sample, goals));

/** The plan's items, counted by the tally. */
export function tallyAfter(sample: Sample, result: Plan, rule = DEFAULT_GOALS.rule) {
  const items = result.items.map((item, at) => ingredient(`${at}`, item.foodId, item.grams));
  return tallyOf(sample, items, rule);
}
