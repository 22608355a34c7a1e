/**
 * One recipe's way through the stages: parse, match, weigh, tally, plan, tally again, rewrite.
 * Only this file knows the order; no stage calls another one's stage.
 */
import { type FoodTable, foodTable } from './foods/index.ts';
import { exact } from './interval.ts';
import { matchItem } from './match/index.ts';
import type {
  Adaptation,
  Corrections,
  Food,
  FrontierPoint,
  Goals,
  Ingredient,
  Interval,
  Line,
  Note,
  Plan,
  PlannedItem,
  Recipe,
  Tally,
  Weight,
} from './model.ts';
import { parseLine } from './parse/index.ts';
import { recogniseFamily } from './plan/dish/dish-family.ts';
import { planFrontier, planRecipe } from './plan/index.ts';
import { rewriteRecipe } from './rewrite/index.ts';
import { allergenChange, cautionsFor } from './tally/cautions.ts';
import { tally } from './tally/index.ts';
import { proposeServings } from './tally/servings.ts';
import { stillContains } from './tally/still-contains.ts';
import { verdictOf } from './tally/verdict.ts';
import { measureRegion, weighItem } from './weigh/index.ts';

export interface WalkOptions {
  /** The user's own foods, which take part in matching and planning. */
  ownFoods?: readonly Food[];
  corrections?: Corrections;
  /** The user's own names for foods: name -> food id. */
  aliases?: Record<string, string>;
  /** Weighed mass of the finished dish as the page has it, g; replaces the estimate. */
  cookedGrams?: number | null;
  /** Weighed mass of the finished reworked dish, g; replaces the estimate. */
  reworkedGrams?: number | null;
}

/** What a recipe costs as it stands. */
export interface RecipeTally {
  ingredients: Ingredient[];
  family: Plan['family'];
  servings: number;
  tally: Tally;
  /** What to ask before the figures are believed; empty as a rule. */
  questions: Note[];
  notes: Note[];
}

/** Weighed grams of a planned food: a kitchen scale's two percent. Common practice, no source. */
const SCALE_ERROR = 0.02;

const stepTexts = (recipe: Recipe): string[] => recipe.steps.map((step) => step.text);

/** Every ingredient line of the recipe, understood, in page order. */
export function parseLines(recipe: Recipe): Line[] {
  return recipe.groups.flatMap((group) =>
    group.lines.map((text) => parseLine(text, { language: recipe.language, group: group.title })),
  );
}

const foodOf = (id: string | undefined, foods: FoodTable): Food | null =>
  id === undefined ? null : foods.byId(id);

function corrected(ingredient: Ingredient, corrections: Corrections, foods: FoodTable): Ingredient {
  const correction = corrections[ingredient.key];
  if (correction === undefined) return ingredient;
  const { grams } = correction;
  const food = foodOf(correction.foodId, foods);
  return {
    ...ingredient,
    match: food
      ? {
          foodId: food.id,
          foodName: food.name,
          confidence: 1,
          reason: 'chosen by you',
          others: ingredient.match?.others ?? [],
        }
      : ingredient.match,
    weight:
      grams === undefined
        ? ingredient.weight
        : {
            grams: exact(grams),
            eaten: ingredient.weight?.eaten ?? exact(1),
            basis: 'corrected',
            assumptions: ['grams set by you'],
            disagreement: null,
          },
  };
}

/** Lines matched to foods and weighed; a correction of the user's wins over our reading. */
export function weighRecipe(recipe: Recipe, options: WalkOptions = {}): Ingredient[] {
  const foods = foodTable(options.ownFoods);
  const corrections = options.corrections ?? {};
  const lines = parseLines(recipe);
  const region = measureRegion(recipe);
  const context = { title: recipe.title, steps: stepTexts(recipe), lines };
  const matchOptions = { foods, aliases: options.aliases ?? {}, language: recipe.language };
  return lines.flatMap((line, at) =>
    line.kind === 'heading'
      ? []
      : line.items.map((item, n): Ingredient => {
          const key = n === 0 ? `${at}` : `${at}.${n}`;
          const match = line.kind === 'reference' ? null : matchItem(item, line, matchOptions);
          const food = foodOf(corrections[key]?.foodId, foods) ?? foodOf(match?.foodId, foods);
          const weight = weighItem(item, line, food, { region, recipe: context });
          return corrected({ key, line, item, match, weight }, corrections, foods);
        }),
  );
}

/** The recipe as it stands: ingredients, family, servings and totals. */
export function tallyRecipe(
  recipe: Recipe,
  goals: Pick<Goals, 'servings' | 'rule' | 'family'>,
  options: WalkOptions = {},
): RecipeTally {
  const foods = foodTable(options.ownFoods);
  const ingredients = weighRecipe(recipe, options);
  const guess = recogniseFamily(
    ingredients,
    { title: recipe.title, steps: stepTexts(recipe) },
    foods,
  );
  const family = goals.family ? { id: goals.family, confidence: 1, why: 'chosen by you' } : guess;
  const proposal = proposeServings(recipe, totalGrams(ingredients), family.id);
  const servings = goals.servings ?? proposal.servings;
  const notes: Note[] = [...recipe.notes];
  if (goals.servings === null && !proposal.stated) {
    notes.push({ code: 'SERVINGS_ESTIMATED', text: proposal.text, key: null });
  }
  const before = tally(ingredients, {
    foods,
    servings,
    rule: goals.rule,
    family: family.id,
    title: recipe.title,
    minutes: recipe.minutes.cook,
    cookedGrams: options.cookedGrams ?? null,
  });
  return { ingredients, family, servings, tally: before, questions: [], notes };
}

const totalGrams = (ingredients: readonly Ingredient[]): number | null => {
  const weighed = ingredients.flatMap((i) =>
    i.weight ? [i.weight.grams.best * i.weight.eaten.best] : [],
  );
  return weighed.length === 0 ? null : weighed.reduce((sum, grams) => sum + grams, 0);
};

/** Key of a planned food in the tally after: the line's own key while the food is the line's own. */
export function plannedKey(item: PlannedItem, original: Ingredient | undefined): string {
  return original?.match?.foodId === item.foodId ? item.key : `${item.key}>${item.foodId}`;
}

const weighed = (grams: number): Interval => ({
  low: grams * (1 - SCALE_ERROR),
  best: grams,
  high: grams * (1 + SCALE_ERROR),
});

const weighedLine = (item: PlannedItem, group: string | null): Line => ({
  text: `${item.grams} g ${item.foodName}`,
  group,
  kind: 'ingredient',
  items: [
    {
      amounts: [{ quantity: item.grams, max: null, unit: 'g', kind: 'stated', approximate: false }],
      size: null,
      name: item.foodName,
      preparation: null,
      alternatives: [],
    },
  ],
  name: item.foodName,
  note: null,
  purpose: null,
  optional: false,
});

/** A food the plan brings in: weighed on a scale, so only the scale's error is left. */
function newIngredient(item: PlannedItem, original: Ingredient | undefined): Ingredient[] {
  const line = weighedLine(item, original?.line.group ?? null);
  return line.items.map((parsed) => ({
    key: plannedKey(item, original),
    line,
    item: parsed,
    match: {
      foodId: item.foodId,
      foodName: item.foodName,
      confidence: 1,
      reason: 'chosen by the plan',
      others: [],
    },
    weight: {
      grams: weighed(item.grams),
      eaten: item.eaten,
      basis: 'mass',
      assumptions: ['weighed on a kitchen scale'],
      disagreement: null,
    },
  }));
}

/** A line's own food: untouched it keeps its doubt, with a new amount it is weighed. */
function keptIngredient(item: PlannedItem, original: Ingredient, weight: Weight): Ingredient {
  if (Math.abs(weight.grams.best - item.grams) < 1e-9) return original;
  return {
    ...original,
    weight: {
      ...weight,
      grams: weighed(item.grams),
      eaten: item.eaten,
      basis: 'mass',
      assumptions: ['weighed on a kitchen scale'],
      disagreement: null,
    },
  };
}

/** Planned masses as ingredients again, so that the same tally counts before and after. */
export function plannedIngredients(plan: Plan, ingredients: readonly Ingredient[]): Ingredient[] {
  const byKey = new Map(ingredients.map((ingredient) => [ingredient.key, ingredient]));
  const planned = plan.items.flatMap((item) => {
    const original = byKey.get(item.key);
    return original?.weight && original.match?.foodId === item.foodId
      ? [keptIngredient(item, original, original.weight)]
      : newIngredient(item, original);
  });
  const uncountable = ingredients.filter((i) => i.match === null || i.weight === null);
  return [...planned, ...uncountable];
}

/**
 * The main job: the recipe as it stands, the plan that keeps one serving within the budget, the
 * recipe after it, and the new lines and method. Deterministic; never throws on a readable recipe.
 */
export function adaptRecipe(recipe: Recipe, goals: Goals, options: WalkOptions = {}): Adaptation {
  const foods = foodTable(options.ownFoods);
  const {
    ingredients,
    family,
    servings,
    tally: before,
    questions,
    notes,
  } = tallyRecipe(recipe, goals, options);
  const words = { title: recipe.title, steps: stepTexts(recipe) };
  const plan = planRecipe(ingredients, words, {
    goals,
    servings,
    foods,
    before,
  });
  const afterIngredients = plannedIngredients(plan, ingredients);
  const afterOptions = {
    foods,
    servings,
    rule: goals.rule,
    family: family.id,
    title: recipe.title,
    minutes: recipe.minutes.cook,
    cookedGrams: options.reworkedGrams ?? null,
  };
  const after = tally(afterIngredients, afterOptions);
  const { lines, steps } = rewriteRecipe(recipe, ingredients, plan, {
    foods,
    region: measureRegion(recipe),
    adjustments: goals.adjustments,
  });
  const foodsOf = (list: readonly Ingredient[]): Food[] =>
    list.flatMap((i) => (i.match ? [foods.byId(i.match.foodId)] : [])).filter((f) => f !== null);
  const allergens = allergenChange(foodsOf(ingredients), foodsOf(afterIngredients));
  return {
    recipe,
    goals,
    corrections: options.corrections ?? {},
    ingredients,
    before,
    plan,
    after,
    verdict: verdictOf(after, afterIngredients, goals.budgetG, afterOptions),
    questions,
    lines,
    steps,
    allergensAdded: allergens.added,
    allergensRemoved: allergens.removed,
    stillContains: stillContains(afterIngredients, goals.avoid, foods),
    cautions: cautionsFor({
      before,
      after,
      plan,
      foods,
      words: [recipe.title, ...stepTexts(recipe)].join('\n'),
    }),
    notes: [...notes, ...plan.notes],
  };
}

/**
 * The curve of an adaptation: closeness to the original against net carbs of a serving, from the least
 * in reach to the original; one point when nothing can change. `options` are those it was made with.
 */
export function frontierOf(adaptation: Adaptation, options: WalkOptions = {}): FrontierPoint[] {
  const { recipe, goals, ingredients, before } = adaptation;
  return planFrontier(
    ingredients,
    { title: recipe.title, steps: stepTexts(recipe) },
    { goals, servings: before.servings, foods: foodTable(options.ownFoods), before },
  );
}
