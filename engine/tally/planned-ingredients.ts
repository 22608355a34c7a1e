/** The plan's masses as ingredients again, so that one tally counts before and after. */
import type { Ingredient, Interval, Line, Plan, PlannedItem, Weight } from '../model.ts';

/** Weighed grams of a planned food: a kitchen scale's two percent. Common practice, no source. */
const SCALE_ERROR = 0.02;

/** Key of a planned food in the tally after: the line's own key while the food is the line's own. */
function plannedKey(item: PlannedItem, original: Ingredient | undefined): string {
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

/** What is eaten after the plan: its items as weighed ingredients, then the lines nobody could count. */
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
