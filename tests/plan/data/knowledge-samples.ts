/** A made-up dish for every swap: a food it replaces, in a family it is for, under a title it needs. */
import { DEFAULT_GOALS, FAMILIES, type Family } from '../../../engine/model.ts';
import classes from '../../../engine/plan/data/classes.json' with { type: 'json' };
import { isDoughFamily, limitsOf } from '../../../engine/plan/dish/family/family-limits.ts';
import { netPerGram } from '../../../engine/plan/dish/food-figures.ts';
import { usualRole } from '../../../engine/plan/dish/roles.ts';
import { type SwapRule, suits } from '../../../engine/plan/dish/swap-rules.ts';
import { mentionsAny, wordsOf } from '../../../engine/plan/dish/word-search.ts';
import { foods, type Part, type Sample } from '../build.ts';

const net = (id: string): number => {
  const food = foods.byId(id);
  return (food && netPerGram(food, DEFAULT_GOALS.rule)) ?? Number.NaN;
};

/** Net carbs that a swap brings in place of one gram; NaN when one of its foods has none known. */
export const netBrought = (rule: SwapRule): number =>
  rule.to.reduce((sum, { food, ratio }) => sum + ratio * net(food), 0);

/** Foods a swap is for. */
export const foodsOf = (rule: SwapRule): string[] =>
  classes
    .filter((row) => rule.replaces.includes(row.class))
    .flatMap((row) => row.foods)
    .filter((id) => rule.only === undefined || rule.only.includes(id));

/** Those of them whose net carbs it lowers by a tenth or more, most first. */
export const helped = (rule: SwapRule): string[] =>
  foodsOf(rule)
    .filter((id) => netBrought(rule) < 0.9 * net(id) && !rule.to.some(({ food }) => food === id))
    .sort((a, b) => net(b) - net(a));

/** Every title that a swap's words allow and its exceptions do not forbid. */
export function titlesFor(rule: SwapRule): string[] {
  const needed = rule.titled ?? rule.when;
  const words = needed === undefined ? ['Supper for friends'] : wordsOf(needed);
  return words.map((word) => word.trim()).filter((title) => !mentionsAny(rule.unless, title));
}

const familiesOf = (rule: SwapRule): Family[] =>
  FAMILIES.filter((family) => suits(rule, family) && family !== 'choux');

/** What a dough is usually made of: some swaps bring wheat, and none does so into a dough without it. */
const USUAL = 'all-purpose-flour';

const FLOURS = /^(wheat|other)-flours$/;

/** A dough round a flour and the swap's food, by family. */
function dough(family: Family, flour: string, extra: Part[], grams = 400): Part[] {
  const yeast = limitsOf(family).yeast;
  const plainDough = yeast || ['tortilla', 'cracker', 'pie-crust'].includes(family);
  const sweet = ['cookie', 'cake', 'brownie', 'quick-bread'].includes(family);
  return [
    [flour, grams],
    ['water', family === 'fresh-pasta' ? 40 : 200],
    ...(plainDough ? [] : ([['egg', 150]] as Part[])),
    ['butter', 120],
    ['salt', 7],
    ...(yeast ? ([['dry-yeast', 7]] as Part[]) : []),
    ...(sweet ? ([['sugar', 150]] as Part[]) : []),
    ...extra,
  ];
}

/** Grams of a food in the made-up dish: much of a starch or liquid, less of what flavours or sweetens. */
function massOf(id: string): number {
  const food = foods.byId(id);
  const role = food === null ? 'other' : usualRole(food).role;
  return role === 'starch-bulk' || role === 'liquid' ? 300 : 100;
}

/** What goes into the made-up dish besides the food that is replaced. */
function partsFor(rule: SwapRule, family: Family, food: string): Part[] {
  const isDough = isDoughFamily(family);
  const flour = rule.replaces.some((name) => FLOURS.test(name));
  const held = (limitsOf(family).gluten?.hard ?? 0) > 0;
  const lesser = rule.role === 'structure' || (flour && held && !helped(rule).includes(USUAL));
  // A starch, or a flour that does not rise by itself, stands beside as much of the usual flour.
  if (isDough && lesser && food !== USUAL) return dough(family, USUAL, [[food, 200]], 200);
  if (isDough && flour) return dough(family, food, []);
  if (isDough) return dough(family, 'all-purpose-flour', [[food, massOf(food)]]);
  if (rule.role === 'coating')
    return [
      [food, 100, `100 g ${food} to coat`],
      ['chicken-breast', 600],
    ];
  if (rule.role === 'thickener')
    return [
      [food, 40],
      ['butter', 40],
      ['water', 800],
    ];
  return [
    [food, massOf(food)],
    ['chicken-breast', 500],
    ['olive-oil', 30],
    ['spinach', 300],
  ];
}

/** Two foods to try a swap on: the richest in carbohydrate, and the usual flour or the next. */
function triedFoods(rule: SwapRule): string[] {
  const [first, second] = helped(rule);
  return [first, helped(rule).includes(USUAL) ? USUAL : second].filter((id) => id !== undefined);
}

/** The words of a swap in the method, where a title would name the food: 'over rice' keeps some of the rice. */
function onlyInSteps(rule: SwapRule): Pick<Sample, 'title' | 'steps'>[] {
  const names = triedFoods(rule).flatMap((id) => foods.byId(id)?.name.split(' ') ?? []);
  const [words = ''] = rule.when === undefined ? [] : titlesFor(rule);
  return rule.titled === undefined && words.split(' ').some((word) => names.includes(word))
    ? [{ title: 'Supper for friends', steps: [`Serve ${words}.`] }]
    : [];
}

/** Dishes to try a swap on, the likeliest first. */
export function samplesFor(rule: SwapRule): Sample[] {
  const ids = triedFoods(rule);
  const titles = titlesFor(rule).slice(0, 2);
  const families = familiesOf(rule);
  const dishes = families.filter((f) => limitsOf(f).kind === 'dish');
  const first =
    rule.role === 'structure' ? families : [...dishes.slice(-1), ...dishes, ...families];
  return [...new Set(first)].flatMap((family) =>
    [...titles.map((title) => ({ title })), ...onlyInSteps(rule)].flatMap((told) =>
      ids.map((food) => ({
        ...told,
        family,
        servings: 10,
        parts: partsFor(rule, family, food),
      })),
    ),
  );
}
