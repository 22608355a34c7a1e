/** Figures that cannot be believed without asking: what is absurd about a tally, and which line causes it. */
import type { FoodTable } from '../../foods/index.ts';
import type { Food, Ingredient, Note, Tally } from '../../model.ts';
import { type CountedLine, selectCounted } from '../counted.ts';

type Limited = 'energyKcal' | 'proteinG' | 'netCarbsG' | 'sodiumMg';

/** Most that one serving of ordinary food holds; above it the user is asked. Own choice. */
const LIMITS: readonly { nutrient: Limited; most: number; words: (value: number) => string }[] = [
  { nutrient: 'energyKcal', most: 1500, words: (kcal) => `${rounded(kcal, 50)} kcal` },
  { nutrient: 'proteinG', most: 120, words: (g) => `${rounded(g, 5)} g of protein` },
  { nutrient: 'netCarbsG', most: 250, words: (g) => `${rounded(g, 5)} g of net carbs` },
  { nutrient: 'sodiumMg', most: 5000, words: (mg) => `${rounded(mg / 400, 1)} g of salt` },
];

/** A line that weighs more is asked about, g. Own choice. */
const MOST_OF_A_LINE_G = 5000;
/** The line to ask about brings more than this share of what is too much. Own choice. */
const CAUSES_FROM = 0.5;

const rounded = (value: number, step: number): string =>
  (Math.round(value / step) * step).toLocaleString('en-US');

/** The line that brings more than half of a nutrient, by its food's own figures. */
function causeOf(nutrient: Limited, counted: readonly CountedLine[]): Ingredient | null {
  const rows = counted.map(({ ingredient, food, grams }) => ({
    ingredient,
    value: grams * (ofFood(food, nutrient) ?? 0),
  }));
  const total = rows.reduce((sum, { value }) => sum + value, 0);
  return rows.find(({ value }) => value > CAUSES_FROM * total)?.ingredient ?? null;
}

/** Per 100 g; carbohydrate stands in for net carbs, which are to be blamed on one line only roughly. */
function ofFood({ per100g }: Food, nutrient: Limited): number | null {
  return nutrient === 'netCarbsG' ? per100g.carbohydrateG : per100g[nutrient];
}

const kilos = (grams: number): string =>
  grams >= 1000 ? `${(grams / 1000).toFixed(1)} kg` : `${Math.round(grams)} g`;

function lineQuestion({ key, line, weight }: Ingredient): Note {
  const grams = kilos(weight?.grams.best ?? 0);
  return {
    code: 'LINE_IMPLAUSIBLE',
    text: `Is “${line.text.trim().slice(0, 80)}” really about ${grams}? Please check its amount.`,
    key,
  };
}

/** Grams of a line from which its own amount is asked about first. Own choice. */
const LARGE_LINE_G = 1000;

/** Salt is asked about by the line, other lines when they are large: else the servings are likelier wrong. */
const asksForLine = (nutrient: Limited, { weight }: Ingredient): boolean =>
  nutrient === 'sodiumMg' || (weight?.grams.best ?? 0) >= LARGE_LINE_G;

function servingQuestion(tally: Tally, found: readonly string[], cause: Ingredient | null): Note {
  const most = cause ? `, most of it from “${cause.line.text.trim().slice(0, 80)}”` : '';
  const of = tally.servings === 1 ? 'The whole recipe, taken as one serving,' : 'One serving';
  return {
    code: 'SERVING_IMPLAUSIBLE',
    text: `${of} would have about ${found.join(' and ')}${most}. Does the recipe make ${tally.servings} ${tally.servings === 1 ? 'serving' : 'servings'}?`,
    key: cause?.key ?? null,
  };
}

/**
 * Questions about a tally, the line's first; empty when a serving keeps below 1,500 kcal, 120 g
 * protein, 250 g net carbs and 5 g sodium, and no line is eaten by more than 5 kg. A
 * line whose grams the user set is not asked about, nor are servings that the user set.
 */
export function implausible(
  tally: Tally,
  ingredients: readonly Ingredient[],
  foods: FoodTable,
  servingsConfirmed = false,
): Note[] {
  const { counted } = selectCounted(ingredients, foods);
  const servingOf = (nutrient: Limited): number => tally.perServing[nutrient]?.best ?? 0;
  const over = LIMITS.filter(({ nutrient, most }) => servingOf(nutrient) > most).map((limit) => ({
    ...limit,
    cause: causeOf(limit.nutrient, counted),
  }));
  const heavy = counted.filter(({ grams }) => grams > MOST_OF_A_LINE_G);
  const byLine = over.filter(({ cause, nutrient }) => cause && asksForLine(nutrient, cause));
  const causes = [
    ...heavy.map(({ ingredient }) => ingredient),
    ...byLine.flatMap(({ cause }) => cause ?? []),
  ];
  const open = causes.filter(({ weight }) => weight?.basis !== 'corrected');
  const lines = [...new Set(open)].map(lineQuestion);
  const others = over.filter((found) => !byLine.includes(found));
  if (others.length === 0 || servingsConfirmed) return lines;
  const words = others.map(({ nutrient, words }) => words(servingOf(nutrient)));
  const cause = others.find((found) => found.cause !== null)?.cause ?? null;
  return [...lines, servingQuestion(tally, words, cause)];
}
