/** What a plan costs its cook besides closeness: lines to change, foods to buy, and what is not worth doing. */
import { hasTag } from '../../foods/tags.ts';
import type { Availability, Family, Food } from '../../model.ts';
import type { Dish } from '../dish/dish.ts';
import { netPerGram } from '../dish/food-figures.ts';
import { availabilityOf } from '../dish/shopping.ts';
import type { Choice } from './decisions.ts';

/** Points of closeness that one changed line less is worth. Own choice. */
export const LINE_TROUBLE = 0.02;

/** Points of closeness that one food less to buy is worth, by where it is had. Own choice. */
const PURCHASE_TROUBLE: Record<Availability, number> = {
  cupboard: 0,
  common: 0.01,
  speciality: 0.04,
};

/** Trouble of a special product that few shops sell, on top. Own choice. */
const RARE_TROUBLE = 0.05;

/** Points of closeness that one kind of bulk sweetener instead of two is worth. Own choice. */
export const TWO_KINDS_TROUBLE = 0.06;

/** Trouble of a sweetener the user does not name, and of each place further down the user's list. Own choice. */
const NOT_LIKED = 0.04;
const PLACE_IN_LIST = 0.01;

/**
 * Net carbs a swap saves at least, g a serving, and share of what is above the budget; that share of an easy
 * change: of simply less of something, which needs no shopping, or of one more sugar of a sweet beside others.
 * Of a bake cut smaller the share asks for no more than this share of its piece's budget of its flour, as the
 * sugar goes first and takes most of the excess, and for no more than a gram a piece of an easy change. Own choice.
 */
const LEAST_SAVING_G = 1.5;
const LEAST_SAVING_OF_EASY_G = 1;
const LEAST_SAVING_SHARE = 0.1;
const LEAST_SAVING_OF_EASY = 0.05;
const LEAST_SAVING_OF_FLOUR = 0.125;

/** Sweets whose sugars are as easily changed one beside another as a dough's. */
const SWEETS: ReadonlySet<Family> = new Set([
  'custard',
  'frozen-dessert',
  'sweet-sauce',
  'pie-crust',
  'candy',
]);

/** Where the user's own order puts a sweetener; nothing for other foods, or without an order. */
function likingTrouble(food: Food, order: readonly string[]): number {
  if (order.length === 0 || !hasTag(food, 'sweetener')) return 0;
  const at = order.indexOf(food.id);
  return at < 0 ? NOT_LIKED : at * PLACE_IN_LIST;
}

/** What buying a food costs, in points of closeness. */
export function purchaseTrouble(food: Food, { goals }: Dish): number {
  const where = availabilityOf(food, goals);
  const rare = where === 'speciality' && hasTag(food, 'rare') ? RARE_TROUBLE : 0;
  return PURCHASE_TROUBLE[where] + rare + likingTrouble(food, goals.sweeteners);
}

/** Whether the user asks for more than a budget of net carbs, so that small changes may be worth it. */
export const asksForMore = ({ goals }: Pick<Dish, 'goals'>): boolean =>
  goals.fibreFloorG !== null || goals.sodiumLimitMg !== null || goals.energyLimitKcal !== null;

/** Whether a choice leaves some of a line out and puts nothing in its place. */
export const isLess = ({ candidate }: Pick<Choice, 'candidate'>): boolean =>
  candidate?.rule.to.length === 0;

/** Whether a change is easy on the cook: less of something, or of a sweet one of its sugars. */
const isEasy = (choices: readonly Pick<Choice, 'candidate'>[], { main }: Dish): boolean =>
  choices.every(isLess) ||
  ((main.dough || SWEETS.has(main.family)) &&
    choices.every(({ candidate }) => candidate?.part.role === 'sweetness'));

/** Whether all of it is flour of a dough or batter. */
const isFlourOfDough = (choices: readonly Pick<Choice, 'candidate'>[]): boolean =>
  choices.every(({ candidate }) => candidate?.part.base === true);

/** What the share of the excess asks for at most, g a serving of the page's size. */
function mostAsked(
  dish: Dish,
  choices: readonly Pick<Choice, 'candidate'>[],
  pieces: number,
): number {
  const { goals, main, servings } = dish;
  if (!main.dough || pieces <= servings) return Number.POSITIVE_INFINITY;
  if (isEasy(choices, dish)) return (LEAST_SAVING_OF_EASY_G * pieces) / servings;
  if (!isFlourOfDough(choices)) return Number.POSITIVE_INFINITY;
  return (LEAST_SAVING_OF_FLOUR * goals.budgetG * pieces) / servings;
}

/**
 * Net carbs of a serving that choices made together must save to be proposed, g; 0 when other wishes count as well. Of
 * a bake eaten in more `pieces` than the page's servings, a smaller piece does the rest, and one piece must save it.
 */
export function leastSaving(
  dish: Dish,
  choices: readonly Pick<Choice, 'candidate'>[],
  pieces: number,
): number {
  if (asksForMore(dish)) return 0;
  const { goals, main, parts, servings } = dish;
  const easy = isEasy(choices, dish);
  const now = parts.reduce((sum, p) => sum + p.net * p.grams * p.eaten, 0) / servings;
  const share = easy ? LEAST_SAVING_OF_EASY : LEAST_SAVING_SHARE;
  const held = main.dough ? (goals.budgetG * pieces) / servings : goals.budgetG;
  const eaten = easy || !main.dough ? 1 : pieces / servings;
  const ofExcess = Math.min(share * (now - held), mostAsked(dish, choices, pieces));
  return Math.max((easy ? LEAST_SAVING_OF_EASY_G : LEAST_SAVING_G) * eaten, ofExcess);
}

/** Net carbs of a serving that a unit of a choice saves, g. */
export const savingOf = ({ changes }: Choice, { goals, servings }: Dish): number =>
  changes.reduce((sum, c) => sum - c.grams * c.eaten * (netPerGram(c.food, goals.rule) ?? 0), 0) /
  servings;
