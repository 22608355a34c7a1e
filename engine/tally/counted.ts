/** Which ingredients are in the totals, and why the others are not. */
import type { FoodTable } from '../foods/index.ts';
import type { Food, Ingredient, Interval, Tally } from '../model.ts';

/** An ingredient in the totals. `grams` is what is eaten; `amount` and `share` are its two causes of scatter. */
export interface CountedLine {
  ingredient: Ingredient;
  food: Food;
  grams: number;
  amount: Interval;
  share: Interval;
  /** Half-width of the composition relative to its value, from how sure the match is. */
  matchWidth: number;
}

export interface Selection {
  counted: CountedLine[];
  /** Optional or served beside: among the uncounted, but their figures are known. */
  aside: CountedLine[];
  uncounted: Tally['uncounted'];
}

/** Match exact, same food in another state, nearest category: common practice, no source. */
const MATCH_WIDTHS = [
  { from: 0.9, width: 0.05 },
  { from: 0.6, width: 0.15 },
  { from: 0, width: 0.3 },
] as const;

/** Relative half-width (0.05, 0.15 or 0.3) of a match of the given confidence (0..1). */
export function matchWidth(confidence: number): number {
  return MATCH_WIDTHS.find(({ from }) => confidence >= from)?.width ?? 0.3;
}

const ASIDE = /\b(to serve|for serving|to garnish|for garnish|garnish|to decorate)\b/i;

function whyAside(ingredient: Ingredient): string | null {
  const { line, weight } = ingredient;
  if (line.optional) return 'optional, so not in the totals';
  const eaten = weight !== null && weight.eaten.best > 0;
  if (!eaten && line.purpose !== null && ASIDE.test(line.purpose))
    return `${line.purpose}: not in the totals`;
  return null;
}

const KEPT_BACK =
  /^(?:the )?reserved\b|\breserved (?:from|for)\b|\((?:from )?(?:above|the recipe above)\)$/i;

/** 'Reserved bread crumbs from the sauce': kept back of another line, and without an amount of its own. */
export const isKeptBack = ({ line, weight }: Ingredient): boolean =>
  weight === null && KEPT_BACK.test(line.text.trim());

/** Why lines of other kinds than a food are in no sum. */
const NO_FOOD: Partial<Record<Ingredient['line']['kind'], string>> = {
  reference: 'another recipe, whose figures are not known here',
  'made-here': 'made on this page: in the totals through the lines that make it',
  'other-version': 'of another version of the dish: not in the totals',
  tool: 'to cook with, not to eat: not in the totals',
};

function whyUncounted(ingredient: Ingredient, food: Food | null): string | null {
  const noFood = NO_FOOD[ingredient.line.kind];
  if (noFood !== undefined) return noFood;
  if (isKeptBack(ingredient)) return 'kept back of what other lines hold';
  if (ingredient.match === null) return 'no food in the table matches';
  if (food === null) return `the food '${ingredient.match.foodId}' is not in the table`;
  if (ingredient.weight === null && food.id !== 'water') return 'no amount given';
  return null;
}

function textOf(ingredient: Ingredient): string {
  return ingredient.line.items.length > 1 ? ingredient.item.name : ingredient.line.text;
}

/** Splits ingredients into those counted and those shown beside the totals. Headings are neither. */
export function selectCounted(ingredients: readonly Ingredient[], foods: FoodTable): Selection {
  const counted: CountedLine[] = [];
  const aside: CountedLine[] = [];
  const uncounted: Tally['uncounted'] = [];
  for (const ingredient of ingredients) {
    if (ingredient.line.kind === 'heading') continue;
    const food = ingredient.match === null ? null : foods.byId(ingredient.match.foodId);
    const why = whyUncounted(ingredient, food);
    const beside = whyAside(ingredient);
    const line = food === null ? null : countedLine(ingredient, food);
    const reason = why ?? beside;
    if (reason !== null)
      uncounted.push({ key: ingredient.key, text: textOf(ingredient), why: reason });
    if (line !== null && why === null) {
      if (beside === null) counted.push(line);
      else aside.push(wholly(line));
    }
  }
  return { counted, aside, uncounted };
}

/** What is served beside has no share in the dish, so its figures are for all of it. */
const wholly = (line: CountedLine): CountedLine => ({
  ...line,
  grams: line.amount.best,
  share: { low: 1, best: 1, high: 1 },
});

function countedLine(ingredient: Ingredient, food: Food): CountedLine | null {
  const { match, weight } = ingredient;
  if (match === null || weight === null) return null;
  return {
    ingredient,
    food,
    grams: weight.grams.best * weight.eaten.best,
    amount: weight.grams,
    share: weight.eaten,
    matchWidth: matchWidth(match.confidence),
  };
}

/** Energy of all that is counted, kcal; null when no counted food knows its own. */
export function wholeEnergy(ingredients: readonly Ingredient[], foods: FoodTable): number | null {
  const known = selectCounted(ingredients, foods).counted.flatMap(({ food, grams }) =>
    food.per100g.energyKcal === null ? [] : [(food.per100g.energyKcal * grams) / 100],
  );
  return known.length === 0 ? null : known.reduce((sum, kcal) => sum + kcal, 0);
}
