/** What the reader of a plan should know besides its masses. */
import type { Ingredient, Note } from '../model.ts';
import type { Dish } from './dish/dish.ts';
import type { Amount } from './kitchen/planned-masses.ts';
import { isEatenWithLiquid } from './kitchen/pot-liquid.ts';

/** Lines whose food other lines hold, or that hold none. */
const HELD_ELSEWHERE: ReadonlySet<string> = new Set(['made-here', 'other-version', 'tool']);

/** A line of several foods is said once. */
const onceEach = (notes: readonly Note[]): Note[] =>
  notes.filter(({ text }, at) => notes.findIndex((other) => other.text === text) === at);

function unplanned(ingredients: readonly Ingredient[], dish: Dish): Note[] {
  const notes = ingredients.flatMap(({ key, line, match, weight }): Note[] =>
    HELD_ELSEWHERE.has(line.kind) || (match && weight && dish.foods.byId(match.foodId))
      ? []
      : [
          {
            code: 'NOT_PLANNED',
            text: `Left as it is, because ${match ? 'its weight' : 'the food'} is not known: ${line.text}`,
            key,
          },
        ],
  );
  return onceEach(notes);
}

function wateryNotes(amounts: readonly Amount[]): Note[] {
  const used = new Set(amounts.flatMap((a) => (a.choice?.candidate ? [a.choice.candidate] : [])));
  return [...used].flatMap((swap): Note[] =>
    // What is cooked already was drained, and gives off nothing.
    swap.rule.water <= -0.1 && swap.to[0]?.food.state !== 'cooked'
      ? [
          {
            code: 'GIVES_OFF_WATER',
            text: `Expect water from the ${swap.to[0]?.food.name ?? 'replacement'}: dry it first, or use less liquid.`,
            key: swap.part.key,
          },
        ]
      : [],
  );
}

/** More yeast instead of more time; the method need not be stretched as well. */
function yeastNotes(amounts: readonly Amount[]): Note[] {
  const raised = amounts.find((a) => a.role === 'yeast' && a.grams > a.original && a.because);
  return raised
    ? [
        {
          code: 'YEAST_RAISED',
          text: `The yeast is raised to ${raised.grams} g, so the dough needs about the time it had.`,
          key: raised.key,
        },
      ]
    : [];
}

/** Says that the search was cut short, so a closer plan may exist. */
export const workNote = (ranOut: boolean): Note[] =>
  ranOut
    ? [
        {
          code: 'SEARCH_CUT_SHORT',
          text: 'This recipe has more ways to change than could all be tried; a closer one may exist.',
          key: null,
        },
      ]
    : [];

/** Lines left alone, stand-ins that give off water, and yeast that was raised. */
export const dishNotes = (
  ingredients: readonly Ingredient[],
  dish: Dish,
  amounts: readonly Amount[],
): Note[] => [
  ...unplanned(ingredients, dish),
  ...(isEatenWithLiquid(dish) ? [] : wateryNotes(amounts)),
  ...yeastNotes(amounts),
];
