/** The parts of a dish, such as crust and filling: by the page's own headings, else by what pies and pizzas are made of. */

import type { FoodTable } from '../../foods/index.ts';
import { hasTag } from '../../foods/tags.ts';
import type { Family, Ingredient } from '../../model.ts';
import abroad from '../data/part-headings.json' with { type: 'json' };
import { isDoughFamily } from './family/family-limits.ts';
import { type FamilyGuess, guessFamily } from './family/recognise-family.ts';
import { usualRole } from './roles.ts';
import { mentionsAny } from './word-search.ts';

export interface DishSection extends FamilyGuess {
  /** Heading as on the page, or the usual name of the part; null when the dish is one part. */
  title: string | null;
  keys: string[];
  /** The part that gives the dish its name and family; exactly one is. */
  main: boolean;
}

interface Words {
  title: string;
  steps: readonly string[];
}

/** Headings of a dish's own parts. */
const PART =
  /crust|pastry|pickl|\bbase\b|filling|topping|frosting|icing|glaze|meringue|sauce|gravy|coating|breading|crumb|dressing|marinade|meat|patt(?:y|ies)|streusel|crumble|syrup|custard|\bcream\b|\bdip\b|salsa|slaw|ragu|ragù|bechamel|béchamel|ganache|buttercream|compote|curd|caramel|dumpling|stew|soup|chicken|beef|pork|lamb|fish|vegetable|batter|pasta|potato|mash|mousse|jam\b|swirl|butter\b|wash\b|decorat|garnish|serve|biscuit layer|cheesecake|shortbread|posset|\bcross(?:es)?\b/i;

/** Headings of steps of one dough, whatever else they say. */
const SAME =
  /\b(dry|wet|liquid|starter|levain|leaven|poolish|biga|sponge ferment|pre-?ferment|soaker|scald|tangzhong|main|final)\b/i;

/** Whether a heading names a part of the dish, and not a step of its one dough. */
const isPart = (heading: string): boolean =>
  (PART.test(heading) || mentionsAny(abroad.words, heading)) && !SAME.test(heading);

const known = (ingredient: Ingredient, foods: FoodTable): boolean =>
  ingredient.match !== null &&
  ingredient.weight !== null &&
  foods.byId(ingredient.match.foodId) !== null;

const massOf = (list: readonly Ingredient[]): number =>
  list.reduce((sum, { weight }) => sum + (weight ? weight.grams.best * weight.eaten.best : 0), 0);

interface Bucket {
  title: string | null;
  ingredients: Ingredient[];
}

/** Lines by heading; headings of one dough's steps share a bucket with the lines under none. */
function byHeading(ingredients: readonly Ingredient[]): Bucket[] {
  const buckets: Bucket[] = [];
  for (const ingredient of ingredients) {
    const { group } = ingredient.line;
    const own = group !== null && isPart(group);
    const same = buckets.find((b) => (own ? b.title === group : b.title === null));
    if (same) same.ingredients.push(ingredient);
    else buckets.push({ title: own ? group : null, ingredients: [ingredient] });
  }
  return buckets;
}

/** Least share of the dish's mass a part without a heading must have to be told apart. Own choice. */
const WORTH_PARTING = 0.25;
/** Sugar above this share of a crust's flour sweetens the filling (common practice, no source). */
const CRUST_SUGAR = 0.3;

/** Roles that make up a plain dough. */
const DOUGH_ROLES = new Set([
  'structure',
  'fat',
  'salt',
  'leavening',
  'yeast',
  'yeast-food',
  'acid',
]);

/** Lines of a pie or pizza without headings: the dough's own, and what lies in or on it. */
function byUse(ingredients: readonly Ingredient[], family: Family, foods: FoodTable): Bucket[] {
  const dough: Ingredient[] = [];
  const rest: Ingredient[] = [];
  const foodOf = (i: Ingredient) => (i.match ? foods.byId(i.match.foodId) : null);
  const flour = massOf(
    ingredients.filter((i) => {
      const food = foodOf(i);
      return food !== null && usualRole(food).role === 'structure';
    }),
  );
  const crust = family === 'pie-crust';
  const dairy = massOf(
    ingredients.filter((i) => {
      const food = foodOf(i);
      return food !== null && usualRole(food).role === 'liquid' && food.id !== 'water';
    }),
  );
  for (const ingredient of ingredients) {
    const food = foodOf(ingredient);
    const grams = ingredient.weight?.grams.best ?? 0;
    if (!food) {
      rest.push(ingredient);
      continue;
    }
    const { role, class: cls } = usualRole(food);
    const water = food.id === 'water' || food.id === 'ice';
    const cheesy = hasTag(food, 'filling-fat');
    const own =
      (DOUGH_ROLES.has(role) && cls !== 'starches' && !cheesy) ||
      water ||
      (role === 'sweetness' && (crust ? grams <= CRUST_SUGAR * flour : true)) ||
      (role === 'liquid' && !crust) ||
      (role === 'egg' && !(crust && dairy > 0.5 * flour));
    (own ? dough : rest).push(ingredient);
  }
  const all = massOf(ingredients);
  if (flour <= 0 || massOf(rest) < WORTH_PARTING * all)
    return [{ title: null, ingredients: [...ingredients] }];
  return [
    { title: crust ? 'Crust' : 'Dough', ingredients: dough },
    { title: crust ? 'Filling' : 'Topping', ingredients: rest },
  ];
}

const SPLIT_BY_USE: ReadonlySet<Family> = new Set(['pie-crust', 'flatbread']);

/** Steps that name a food of these lines by its last word. */
function stepsOf(list: readonly Ingredient[], steps: readonly string[]): string[] {
  const words = list.flatMap(
    ({ item }) => /([a-z]{4,}?)(?:e?s)?$/i.exec(item.name.trim())?.[1] ?? [],
  );
  return steps.filter((step) =>
    words.some((word) => step.toLowerCase().includes(word.toLowerCase())),
  );
}

/** A dough lighter than this share of the dish is its side, unless the title names it. Own choice. */
const SIDE = 0.22;
/** The same when the title names it, such as the crust of a deep pie. Own choice. */
const TITLED_SIDE = 0.15;

/** g of carbohydrate besides fibre. */
const carbsOf = (list: readonly Ingredient[], foods: FoodTable): number =>
  list.reduce((sum, { match, weight }) => {
    const food = match ? foods.byId(match.foodId) : null;
    const { carbohydrateG = null, fiberG = null } = food?.per100g ?? {};
    return sum + (((carbohydrateG ?? 0) - (fiberG ?? 0)) / 100) * (weight?.grams.best ?? 0);
  }, 0);

/**
 * Parts of a dish with family, confidence and reason for each. Lines of unknown food or weight go
 * with their heading. `main` is the dough that the title names or that weighs enough, else the
 * part with most of the carbohydrate. Never throws; empty only for no ingredients.
 */
export function sectionsOf(
  ingredients: readonly Ingredient[],
  recipe: Words,
  foods: FoodTable,
): DishSection[] {
  const whole = guessFamily(ingredients, recipe, foods);
  const headed = byHeading(ingredients);
  const parted = headed.filter((b) => b.ingredients.some((i) => known(i, foods)));
  const one: DishSection[] = [
    { ...whole, title: null, keys: ingredients.map(({ key }) => key), main: true },
  ];
  let buckets = headed;
  if (parted.length < 2) {
    if (!SPLIT_BY_USE.has(whole.id)) return one;
    buckets = byUse(ingredients, whole.id, foods);
    if (buckets.length < 2) return one;
  }
  const total = Math.max(massOf(ingredients), 1e-9);
  const carbs = Math.max(carbsOf(ingredients, foods), 1e-9);
  const rated = buckets.map((bucket) => {
    const own = guessFamily(
      bucket.ingredients,
      { title: bucket.title ?? recipe.title, steps: stepsOf(bucket.ingredients, recipe.steps) },
      foods,
    );
    const named = guessFamily(
      bucket.ingredients,
      { title: `${bucket.title ?? ''} ${recipe.title}`, steps: recipe.steps },
      foods,
    );
    const dough = isDoughFamily(named.id);
    const share = massOf(bucket.ingredients) / total;
    const titled = named.confidence >= 0.9 && named.id === whole.id && share >= TITLED_SIDE;
    const serves = dough && (share >= SIDE || titled);
    // A dough that gives the dish its name, else what most of the carbohydrate is in.
    const rank = serves ? 2 + share : dough ? -1 : carbsOf(bucket.ingredients, foods) / carbs;
    return { bucket, own, named, rank };
  });
  const best = [...rated].sort((a, b) => b.rank - a.rank)[0];
  return rated.map((r): DishSection => {
    const main = r === best;
    const guess = main ? r.named : r.own;
    return {
      ...guess,
      title: r.bucket.title,
      keys: r.bucket.ingredients.map(({ key }) => key),
      main,
    };
  });
}
