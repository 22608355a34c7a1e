/** Sugar that seasons a savoury dish, and dried fruit strewn in one: a cook takes less of it before the starch goes. */
import { isSaltySauce, isSavoury } from '../../foods/savoury.ts';
import type { Family } from '../../model.ts';
import type { Dish, Part, Section } from './dish.ts';

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

export const isSavourySection = ({ family }: Section): boolean => SAVOURY_FAMILIES.has(family);

const isSweet = ({ role, class: kind }: Part): boolean =>
  role === 'sweetness' || kind === 'dried-fruit';

/** Whether the sweet foods of a section only season a savoury dish. */
export function isSeasonedSweet(section: Section, { main, parts, servings }: Dish): boolean {
  if (main.dough || !isSavourySection(section)) return false;
  if (!parts.some(({ food }) => isSavoury(food.id) || isSaltySauce(food.id))) return false;
  const sweet = parts.filter((part) => part.section === section.id && isSweet(part));
  return sweet.reduce((sum, part) => sum + part.grams * part.eaten, 0) <= MOST_G * servings;
}

/** Whether a line is sweet seasoning of which there may simply be less. */
export function isSweetSeasoning(part: Part, dish: Dish): boolean {
  const section = dish.sections[part.section] ?? dish.main;
  return isSweet(part) && isSeasonedSweet(section, dish);
}
