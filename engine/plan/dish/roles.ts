/** What each ingredient does in the dish: structure, sweetness, liquid, thickener, coating ... */
import type { Family, Food, Ingredient, Role } from '../../model.ts';
import { isDoughFamily } from './family/family-limits.ts';
import { classOf } from './food-classes.ts';

export interface FoodRole {
  /** Class of the knowledge table, or '' when it has none. */
  class: string;
  role: Role;
}

/** Class and usual role of a food, before the dish is looked at. */
export function usualRole(food: Food): FoodRole {
  const known = classOf(food);
  if (known) return { class: known.class, role: known.role };
  return { class: '', role: (food.per100g.proteinG ?? 0) > 12 ? 'protein' : 'other' };
}

const isFlour = (cls: string): boolean =>
  cls === 'wheat-flours' || cls === 'other-flours' || cls === 'low-carb-flours';
const isMeal = (cls: string): boolean => cls === 'cornmeals' || cls === 'oats';

/** The role of an ingredient in this dish; flour is structure in a dough, a coating on fried food, else a thickener. */
export function roleIn(food: Food, ingredient: Ingredient, family: Family): FoodRole {
  const usual = usualRole(food);
  const dough = isDoughFamily(family);
  const filling = /fill|sauce|gravy|topping|glaze|custard/i.test(ingredient.line.group ?? '');
  if (dough) {
    if (filling && usual.class === 'starches') return { ...usual, role: 'thickener' };
    if (isFlour(usual.class) || isMeal(usual.class)) return { ...usual, role: 'structure' };
    if (usual.class === 'starches') {
      return { ...usual, role: family === 'pie-crust' ? 'thickener' : 'structure' };
    }
    return usual;
  }
  if (isFlour(usual.class) || usual.class === 'starches') {
    const words = `${ingredient.line.text} ${ingredient.line.group ?? ''}`;
    const coats = /dredg|dust|coat|dip|bread/i.test(words) || family === 'breaded-food';
    return { ...usual, role: coats ? 'coating' : 'thickener' };
  }
  return usual;
}

const COATS =
  /\b(toss|coat|dredge|dust|roll|dip)(?:e?d|ing)?\b[^.;]*\b(flour|corn ?flour|corn ?starch|starch)\b/i;

const FRIES =
  /\b(?:fry|fried|fries|frying|sear|sears|seared|saut[eé]\w*|browned|brown (?:the|it|them|in|on|all)|heat (?:[\w-]+ ){0,6}oil|wok)\b/i;

/**
 * True when a thickening flour or starch also coats food before frying, by the method's words: gum in
 * its place would neither coat nor brown.
 */
export function alsoCoats(role: FoodRole, family: Family, steps: readonly string[]): boolean {
  const dough = isDoughFamily(family);
  const coats = !dough && role.role === 'thickener' && steps.some((step) => COATS.test(step));
  return coats && steps.some((step) => FRIES.test(step));
}
