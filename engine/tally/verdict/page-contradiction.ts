/** Questions where the page's own figures and ours cannot both be right. */
import type { FoodTable } from '../../foods/index.ts';
import type { Ingredient, MissingLine, Note, Nutrient, Recipe, Tally } from '../../model.ts';
import { selectCounted } from '../counted.ts';
import type { TallyOptions } from '../index.ts';
import { isPer100, readStated } from '../stated/stated-figures.ts';
import { missingLines } from './missing-lines.ts';

/** Figures that all move together when only the servings differ. */
const SCALED: readonly Nutrient[] = ['energyKcal', 'carbohydrateG', 'proteinG', 'fatG'];
/** Figures below this say nothing of a ratio, in their own unit. */
const LEAST = 3;
const LEAST_FIGURES = 3;
/** All figures apart by one ratio, from 1.67 on: the servings. Own choices. */
const OTHER_SERVINGS = 1.67;
const SAME_RATIO = 1.35;
/** Energy apart from 2.5 on: some amount, or the page, is wrong. Own choice. */
const OTHER_AMOUNTS = 2.5;
/** Energy this near is no matter, kcal. Own choice. */
const NEAR_KCAL = 60;
/**
 * Apart by 40 %: asked about where a reason is in sight, a line that is not counted or one whose two
 * amounts differ. Without one the page is wrong as a rule: of 212 pages 43 are so far apart in energy,
 * and on 30 of them the page's own figures do not follow from its lines.
 */
const APART = 1.4;
/** Carbohydrate this near is no matter, g. Own choice. */
const NEAR_CARB_G = 8;
/** The page gives its figures for the whole recipe when they fit one serving. */
const WHOLE_RECIPE = 1.25;

/** Ours over theirs, for each figure that both know. */
function ratiosOf(recipe: Recipe, tally: Tally): Map<Nutrient, number> {
  const stated = recipe.statedNutrition;
  const ratios = new Map<Nutrient, number>();
  if (stated === null || isPer100(stated)) return ratios;
  const figures = readStated(stated);
  for (const nutrient of SCALED) {
    const theirs = figures[nutrient]?.value ?? 0;
    const ours = tally.perServing[nutrient]?.best ?? 0;
    if (theirs >= LEAST && ours >= LEAST) ratios.set(nutrient, ours / theirs);
  }
  return ratios;
}

const apart = (ratio: number): number => Math.max(ratio, 1 / ratio);

function energyFirst(ingredients: readonly Ingredient[], foods: FoodTable): Ingredient | null {
  const rows = selectCounted(ingredients, foods).counted.map(({ ingredient, food, grams }) => ({
    ingredient,
    kcal: grams * (food.per100g.energyKcal ?? 0),
  }));
  const [first] = rows.sort((a, b) => b.kcal - a.kcal);
  return first?.ingredient ?? null;
}

function servingsQuestion(ratio: number, servings: number): Note {
  const others = Math.max(1, Math.round(ratio * servings));
  return {
    code: 'PAGE_OTHER_SERVINGS',
    text: `The page’s own figures fit ${others} ${others === 1 ? 'serving' : 'servings'}, ours are for ${servings}. How many does the recipe make?`,
    key: null,
  };
}

function amountsQuestion(theirs: number, ours: number, first: Ingredient | null): Note {
  const line = first ? `, first “${first.line.text.trim().slice(0, 80)}”` : '';
  return {
    code: 'PAGE_OTHER_FIGURES',
    text: `The page says that a serving has ${Math.round(theirs)} kcal; we count about ${Math.round(ours)}. Please check the amounts${line}.`,
    key: first?.key ?? null,
  };
}

/** The line that ours lacks, where ours are well below the page's. */
function missingBelow(
  ratios: ReadonlyMap<Nutrient, number>,
  tally: Tally,
  missing: () => readonly MissingLine[],
): MissingLine | null {
  const below = (nutrient: Nutrient, near: number): boolean => {
    const ratio = ratios.get(nutrient) ?? 1;
    const ours = tally.perServing[nutrient]?.best ?? 0;
    return ratio <= 1 / APART && ours / ratio - ours >= near;
  };
  if (!below('energyKcal', NEAR_KCAL) && !below('carbohydrateG', NEAR_CARB_G)) return null;
  return missing()[0] ?? null;
}

/** What is missing in a few words; a food of the method is told with the sentence that names it. */
const nameOfMissing = ({ text }: MissingLine): string =>
  text.trim().split(': “', 1)[0]?.slice(0, 80) ?? '';

function missingQuestion(
  ratios: ReadonlyMap<Nutrient, number>,
  tally: Tally,
  line: MissingLine,
): Note {
  const figure = (nutrient: Nutrient): [ours: number, theirs: number] => {
    const ours = tally.perServing[nutrient]?.best ?? 0;
    return [Math.round(ours), Math.round(ours / (ratios.get(nutrient) ?? 1))];
  };
  const [kcal, theirKcal] = figure('energyKcal');
  const [carbs, theirCarbs] = figure('carbohydrateG');
  const both = ratios.has('carbohydrateG');
  const theirs = `${theirKcal} kcal${both ? ` and ${theirCarbs} g of carbohydrate` : ''}`;
  const ours = `${kcal}${both ? ` and ${carbs}` : ''}`;
  const ask = line.why.includes('amount')
    ? 'How much of it goes in?'
    : 'Please choose a food for it.';
  return {
    code: 'PAGE_MISSES_LINE',
    text: `The page says that a serving has ${theirs}; we count about ${ours}, without “${nameOfMissing(line)}”. ${ask}`,
    key: line.key,
  };
}

/** The line whose other amount would bring ours near the page's; null when none does. */
function otherAmount(
  ingredients: readonly Ingredient[],
  foods: FoodTable,
  tally: Tally,
  ratio: number,
): Ingredient | null {
  if (apart(ratio) < APART) return null;
  const ours = tally.perServing.energyKcal?.best ?? 0;
  const nearer = (ingredient: Ingredient): boolean => {
    const { weight, match } = ingredient;
    const kcal = foods.byId(match?.foodId ?? '')?.per100g.energyKcal ?? 0;
    if (!weight?.disagreement || weight.basis === 'corrected') return false;
    const change = weight.disagreement.other - weight.disagreement.stated;
    const other = ours + (change * weight.eaten.best * kcal) / 100 / tally.servings;
    return other > 0 && apart((other * ratio) / ours) < APART;
  };
  return ingredients.find((one) => !one.line.optional && nearer(one)) ?? null;
}

const otherAmountQuestion = (theirs: number, ours: number, { key, line }: Ingredient): Note => ({
  code: 'PAGE_OTHER_AMOUNT',
  text: `The page says that a serving has ${Math.round(theirs)} kcal; we count about ${Math.round(ours)}. Which of the two amounts of “${line.text.trim().slice(0, 80)}” is right?`,
  key,
});

/** What is missing, without optional lines and what the method serves the dish with. */
function notByChoice(ingredients: readonly Ingredient[], options: TallyOptions): MissingLine[] {
  const lines = new Map(ingredients.map(({ key, line }) => [key, line]));
  return missingLines(ingredients, options).filter(({ key, beside }) => {
    const line = lines.get(key ?? '');
    return line === undefined ? !beside : !line.optional;
  });
}

/**
 * At most one question: for the servings where all figures of the page are 1.67 times ours or more
 * (or as much less), by one ratio; for a line that is not counted, or one of two amounts, where the
 * page is 40 % apart and that would explain it; for the amounts where its energy is 2.5 times ours or
 * more. Figures that fit the whole recipe are the page's way of stating them and no question. Empty
 * where the page states nothing, or where the user set the servings. Never throws.
 */
export function contradicted(
  recipe: Recipe,
  tally: Tally,
  ingredients: readonly Ingredient[],
  options: TallyOptions,
  servingsConfirmed = false,
): Note[] {
  const ratios = ratiosOf(recipe, tally);
  const energy = ratios.get('energyKcal');
  if (energy === undefined || servingsConfirmed) return [];
  if (apart(energy * tally.servings) < WHOLE_RECIPE) return [];
  const all = [...ratios.values()];
  const together = Math.max(...all) / Math.min(...all) <= SAME_RATIO;
  const missing = missingBelow(ratios, tally, () => notByChoice(ingredients, options));
  if (missing) return [missingQuestion(ratios, tally, missing)];
  if (all.length >= LEAST_FIGURES && together && apart(energy) >= OTHER_SERVINGS)
    return [servingsQuestion(energy, tally.servings)];
  const ours = tally.perServing.energyKcal?.best ?? 0;
  const line = otherAmount(ingredients, options.foods, tally, energy);
  if (line) return [otherAmountQuestion(ours / energy, ours, line)];
  if (apart(energy) < OTHER_AMOUNTS || Math.abs(ours - ours / energy) < NEAR_KCAL) return [];
  return [amountsQuestion(ours / energy, ours, energyFirst(ingredients, options.foods))];
}
