/** Ingredient lines for another number of servings, another pan or another kitchen's measures. */
import { type FoodTable, foodTable } from '../../foods/index.ts';
import { lineOfKey } from '../../ingredient-keys.ts';
import type { Adaptation, Food, Ingredient, PlannedItem, Role } from '../../model.ts';
import { decimals } from '../languages/language-tags.ts';
import {
  isForeign,
  localFoodName,
  type MethodWords,
  methodWords,
} from '../languages/method-words.ts';
import { lineRows } from './ingredient-lines.ts';
import { edibleTail, foodName, type LineWords, ownName, tailOf } from './line-wording.ts';
import { amountTimes, type Portion, portionText, type System } from './scaled-amounts.ts';
import { kitchenGrams } from './written-amounts.ts';

export interface ScaledLine {
  /** Key of the line it came from. */
  key: string;
  group: string | null;
  text: string;
  /** The grams that the text states; null when it states none. */
  grams: number | null;
}

export interface ScaleOptions {
  /** The user's own foods, as the recipe was worked with. */
  ownFoods?: readonly Food[];
  /** BCP 47 tag of lines given without their recipe; English when absent. */
  language?: string | null;
}

function unweighedText({ item, line }: Ingredient, factor: number, alone: boolean): string {
  const [amount] = item.amounts;
  if (amount === undefined || factor === 1)
    return alone ? line.text : [item.name, item.preparation].filter(Boolean).join(', ');
  const tail = item.preparation === null ? '' : `, ${item.preparation}`;
  const words = [amountTimes(amount, factor), item.size, item.name].filter(Boolean);
  return `${words.join(' ')}${tail}`;
}

/** What was counted on a line, when grams rest on the count. */
function countOf({ item, weight }: Ingredient, factor: number): Portion['count'] {
  const [amount] = item.amounts;
  if (weight?.basis !== 'count' || amount === undefined || amount.max !== null) return null;
  if (item.amounts.length > 1) return null;
  return { quantity: amount.quantity * factor, unit: amount.unit, size: item.size };
}

interface Scale {
  factor: number;
  system: System;
  foods: FoodTable;
  /** Lines of another language: grams alone, since its measures have words of their own. */
  foreign: boolean;
  /** Words of the language, where it is another than English and has some. */
  local: MethodWords | null;
}

/** Units that tell what the food is: 'a tin of tomatoes', 'six leaves of gelatine', 'a packet of yeast'. */
const TELLING: ReadonlySet<string | null> = new Set(
  'can tin jar leaf sheet cube packet sachet envelope'.split(' '),
);

/**
 * What stands behind the amount on a line, word for word; null when that cannot be told, or when words
 * before it say what the food is ('the juice of 1 lemon').
 */
function behindAmount({ line, item }: Ingredient): string | null {
  const starts = [item.preparation, line.name, item.name].flatMap((part) => {
    const at = part === null || part === '' ? -1 : line.text.indexOf(part);
    return at < 0 ? [] : [at];
  });
  if (starts.length === 0) return null;
  const at = Math.min(...starts);
  const rest = line.text.slice(at);
  const unit = item.amounts[0]?.unit ?? null;
  // '1 lemon' with 'the juice of' before it, or the amount in the middle of the name.
  const namedBefore = unit === null && /\p{L}{3}/u.test(line.text.slice(0, at));
  const amountInName = /\d/.test(line.text.slice(at, Math.max(...starts)));
  if (namedBefore || amountInName || TELLING.has(unit)) return null;
  return /\d\s*(?:k?g|ml|cl|dl|l|oz)\b/i.test(rest) ? null : rest;
}

/** A line of another language, in grams. */
function foreignText(
  ingredient: Ingredient,
  { food, grams: exact, role, name, tail }: Portion,
  local: MethodWords | null,
): { text: string; grams: number } {
  const grams = kitchenGrams(food, exact, role);
  const named = local === null ? null : localFoodName(food.id, local);
  const called = named === null ? `${food.name} (${name}${tail})` : `${named}${tail}`;
  const rest = behindAmount(ingredient) ?? called;
  return { text: `${decimals(String(grams))} g ${rest}${edibleTail(food, rest, local)}`, grams };
}

function scaledIngredient(
  ingredient: Ingredient,
  role: Role,
  alone: boolean,
  { factor, system, foods, foreign, local }: Scale,
): { text: string; grams: number | null } {
  const { match, weight, item } = ingredient;
  const food = match === null ? null : foods.byId(match.foodId);
  const stated = item.amounts.length > 0 || weight?.basis === 'corrected';
  if (food === null || weight === null || !stated || weight.grams.best <= 0)
    return { text: unweighedText(ingredient, factor, alone), grams: null };
  const portion: Portion = {
    food,
    grams: weight.grams.best * factor,
    role,
    name: ownName(ingredient, food),
    tail: tailOf(ingredient, local),
    count: countOf(ingredient, factor),
  };
  return foreign ? foreignText(ingredient, portion, local) : portionText(portion, system);
}

function scaledItem(
  item: PlannedItem,
  { name, tail, count = null }: LineWords,
  { factor, system, foods, foreign, local }: Scale,
): { text: string; grams: number | null } {
  const food = foods.byId(item.foodId);
  const grams = item.grams * factor;
  if (food === null) return { text: `${Math.round(grams * 10) / 10} g ${name}${tail}`, grams };
  if (foreign) {
    const printed = kitchenGrams(food, grams, item.role);
    const edible = edibleTail(food, name + tail, local);
    return { text: `${decimals(String(printed))} g ${name}${tail}${edible}`, grams: printed };
  }
  const counted = count === null ? null : { ...count, quantity: count.quantity * factor };
  const portion = { food, grams, role: item.role, name, tail, count: counted, standIn: true };
  return portionText(portion, system);
}

function scaledAdaptation(adaptation: Adaptation, scale: Scale): ScaledLine[] {
  const { recipe, ingredients, plan } = adaptation;
  const rows = lineRows(recipe, ingredients, {
    plan,
    foods: scale.foods,
    region: 'us',
    local: methodWords(recipe.language),
  });
  const roleOf = (key: string): Role => plan.roles[key]?.[0] ?? 'other';
  return rows.flatMap(({ line, item, words, ingredient }): ScaledLine[] => {
    const { key, group, after } = line;
    if (after === null) return [];
    if (item !== null) {
      const local = methodWords(recipe.language);
      const wording = words ?? { name: foodName(item, local), tail: '' };
      return [{ key, group, ...scaledItem(item, wording, scale) }];
    }
    if (ingredient === null) return [{ key, group, text: after, grams: null }];
    const own = ingredients.filter((one) => lineOfKey(one.key) === lineOfKey(key));
    const meant = after === ingredient.line.text ? own : [ingredient];
    return scaledOwn(meant, own.length === 1, after, roleOf, scale).map((row) => ({
      ...row,
      group,
    }));
  });
}

/** Lines of the original's own: one line while none of its foods is weighed, else one a food. */
function scaledOwn(
  ingredients: readonly Ingredient[],
  alone: boolean,
  text: string,
  roleOf: (key: string) => Role,
  scale: Scale,
): Omit<ScaledLine, 'group'>[] {
  const rows = ingredients.map((one) => ({
    key: one.key,
    ...scaledIngredient(one, roleOf(one.key), alone, scale),
  }));
  const bare = rows.every(({ grams }) => grams === null);
  const amounts = ingredients.some(({ item }) => item.amounts.length > 0);
  if (!bare || (amounts && scale.factor !== 1) || rows.length === 0) return rows;
  return [{ key: ingredients[0]?.key ?? '', text, grams: null }];
}

function scaledIngredients(ingredients: readonly Ingredient[], scale: Scale): ScaledLine[] {
  const lines = new Map<string, Ingredient[]>();
  for (const one of ingredients) {
    const own = lines.get(lineOfKey(one.key));
    if (own) own.push(one);
    else lines.set(lineOfKey(one.key), [one]);
  }
  return [...lines.values()].flatMap((own) => {
    const [first] = own;
    if (first === undefined) return [];
    const { text, group } = first.line;
    return scaledOwn(own, own.length === 1, text, () => 'other', scale).map((row) => ({
      ...row,
      group,
    }));
  });
}

/**
 * The lines of a reworked recipe, or of a recipe as it stands, times `factor` (servings wanted over
 * servings had, or {@link panFactor}), in metric or US measures. A line that states grams says the
 * same grams when it is read again; they are the exact ones within a half of the last printed digit
 * (1 g from 20 g, 0.1 g from 1 g, 0.01 g below), or, for gums and husk, within an eighth of a
 * teaspoon, for eggs within a twentieth. What has no weight keeps its own unit, and 'to taste' its
 * words. Lines of another language than English are in grams alone. A factor that is not above 0 counts
 * as 1.
 */
export function scaledLines(
  source: Adaptation | readonly Ingredient[],
  factor: number,
  system: System,
  options: ScaleOptions = {},
): ScaledLine[] {
  const language = 'plan' in source ? source.recipe.language : (options.language ?? null);
  const scale: Scale = {
    factor: Number.isFinite(factor) && factor > 0 ? factor : 1,
    system,
    foods: foodTable(options.ownFoods),
    foreign: isForeign(language),
    local: methodWords(language),
  };
  return 'plan' in source ? scaledAdaptation(source, scale) : scaledIngredients(source, scale);
}
