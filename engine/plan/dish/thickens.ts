/** Whether a flour or starch is there to thicken a sauce, by what liquid there is for it. */
import { hasTag } from '../../foods/tags.ts';
import type { Food } from '../../model.ts';
import type { Dish, Part } from './dish.ts';
import { water } from './food-figures.ts';

/** Times a thickener's mass that its liquid weighs at least; a stiff white sauce has eight (common practice, no source). */
const LEAST_LIQUID = 5;
/** Less flour than this, g, thickens what the pan gives, such as the juices of a roast. Own choice. */
const LITTLE = 40;

const TOMATOES = /^(?:tomatoes-|tomato-(?:sauce|puree|juice)|passata|fire-roasted)/;

const isLiquid = (food: Food): boolean =>
  water(food) > 0.5 && (hasTag(food, 'pourable') || TOMATOES.test(food.id));

/** Meal that swells to grains: what is cooked of it is eaten by the spoon. */
const SWELLS: ReadonlySet<string> = new Set(['semolina']);

/** Whether a flour is the body of a porridge, or more of it than its liquid could take, as in a crumble or dumplings: no gum can be that. */
export function isBodyOfItsOwn(part: Part, { parts }: Dish): boolean {
  if (SWELLS.has(part.food.id) && part.grams >= LITTLE) return true;
  if (part.grams < LITTLE) return false;
  const liquid = parts
    .filter((one) => one.section === part.section && isLiquid(one.food))
    .reduce((sum, one) => sum + one.grams, 0);
  return liquid > 0 && liquid < LEAST_LIQUID * part.grams;
}
