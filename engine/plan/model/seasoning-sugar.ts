/** Sugar that seasons a savoury dish, and dried fruit strewn in one: a cook takes less of it before the starch goes. */
import { isSaltySauce, isSavoury } from '../../foods/savoury.ts';
import type { Family } from '../../model.ts';
import type { Dish, Part, Section } from '../dish/dish.ts';

const SAVOURY_FAMILIES: ReadonlySet<Family> = new Set([
  'pasta-dish',
  'rice-dish',
  'potato-dish',
  'breaded-food',
  'thickened-sauce',
  'other',
]);

/** More sweetener than this a serving is a glaze that the dish lives by, g. Own choice: a tablespoon and a half of honey. */
const MOST_G = 30;

/** A spoon that rounds a sauce off, g a serving. Own choice. */
const SPOON_G = 12;

export const isSavourySection = ({ family }: Section): boolean => SAVOURY_FAMILIES.has(family);

const isSweet = ({ role, class: kind }: Part): boolean =>
  role === 'sweetness' || kind === 'dried-fruit';

/** Sweet foods of a section, g a serving; endless where it is no savoury one. */
function sweetGrams(section: Section, { main, parts, servings }: Dish): number {
  const savoury = parts.some(({ food }) => isSavoury(food.id) || isSaltySauce(food.id));
  if (main.dough || !isSavourySection(section) || !savoury) return Number.POSITIVE_INFINITY;
  const sweet = parts.filter((part) => part.section === section.id && isSweet(part));
  return sweet.reduce((sum, part) => sum + part.grams * part.eaten, 0) / servings;
}

/** Whether the sweet foods of a section season or glaze a savoury dish, and are not what it is. */
export const isSeasonedSweet = (section: Section, dish: Dish): boolean =>
  sweetGrams(section, dish) <= MOST_G;

/** Whether they are so little that half of them is hardly told from all. */
export const isHardlySweet = (section: Section, dish: Dish): boolean =>
  sweetGrams(section, dish) <= SPOON_G;

/** Whether a line is sweet seasoning of which there may simply be less. */
export function isSweetSeasoning(part: Part, dish: Dish): boolean {
  const section = dish.sections[part.section] ?? dish.main;
  return isSweet(part) && isSeasonedSweet(section, dish);
}

/** Whether a line is so little of it that less costs next to nothing. */
export function isSpoonOfSweet(part: Part, dish: Dish): boolean {
  const section = dish.sections[part.section] ?? dish.main;
  return isSweet(part) && isHardlySweet(section, dish);
}
