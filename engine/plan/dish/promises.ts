/** What the page itself promises, such as vegan or gluten-free: its rework keeps to it unless the user lifts it. */
import { hasTag, type Tag } from '../../foods/tags.ts';
import type { Allergen, Food, Ingredient, KeptPromise, PromiseName } from '../../model.ts';
import promiseRows from '../data/promises.json' with { type: 'json' };
import { mentionsAny } from './word-search.ts';

interface PromiseRow {
  promise: PromiseName;
  says: readonly string[];
  allergens: readonly Allergen[];
  tag?: Tag;
  means: string;
}

const ROWS = promiseRows as readonly PromiseRow[];

/** Lines that offer a choice or a remark promise nothing. */
const NO_PROMISE = [
  ' or ',
  ' if ',
  'optional',
  'option ',
  'options',
  ' note ',
  ' notes ',
  'substitut',
  'for gluten',
];

const rules = (food: Food, { allergens, tag }: PromiseRow): boolean =>
  food.allergens.some((one) => allergens.includes(one)) || (tag !== undefined && hasTag(food, tag));

/** Where the page makes a promise: in its title, or in a line when no other line breaks it. */
function saidIn(
  row: PromiseRow,
  title: string,
  ingredients: readonly Ingredient[],
  foods: readonly Food[],
): string | null {
  if (mentionsAny(row.says, title)) return title;
  const line = ingredients.find(
    ({ line: { text } }) => mentionsAny(row.says, text) && !mentionsAny(NO_PROMISE, text),
  );
  if (line === undefined || foods.some((food) => rules(food, row))) return null;
  return line.line.text;
}

/**
 * The promises of a page, with the words that make them. `foods` are those of its lines but for the
 * ones that promise themselves; `lifted` are those the user does not care for.
 */
export function promisesOf(
  title: string,
  ingredients: readonly Ingredient[],
  foodOf: (ingredient: Ingredient) => Food | null,
  lifted: readonly PromiseName[],
): KeptPromise[] {
  return ROWS.flatMap((row): KeptPromise[] => {
    const others = ingredients.filter(({ line }) => !mentionsAny(row.says, line.text));
    const said = saidIn(
      row,
      title,
      ingredients,
      others.flatMap((one) => foodOf(one) ?? []),
    );
    if (said === null) return [];
    return [{ promise: row.promise, said, lifted: lifted.includes(row.promise) }];
  });
}

/** Why a food would break one of the promises, or null when it would not. */
export function brokenPromise(food: Food, promises: readonly KeptPromise[]): string | null {
  for (const { promise, lifted } of promises) {
    const row = ROWS.find((one) => one.promise === promise);
    if (!lifted && row && rules(food, row)) return `the page says ${promise}: ${row.means}`;
  }
  return null;
}
