/** Which dishes are plates that want filling once they are served smaller: less of a meal is a meal no longer. */
import { isSavoury } from '../../foods/savoury.ts';
import type { Family, Plan } from '../../model.ts';

/** A plate of more than this share of the page's is no smaller meal. Own choice. */
const SMALLER = 0.8;

/** Families whose servings are plates, not pieces. */
const PLATES: ReadonlySet<Family> = new Set<Family>([
  'pasta-dish',
  'rice-dish',
  'potato-dish',
  'thickened-sauce',
  'breaded-food',
  'other',
]);

/** Whether a plan is served on plates that leaves go with: savoury, and no dough. */
export const isSavouryPlate = ({ family, dough, items }: Plan): boolean =>
  PLATES.has(family.id) && dough === null && items.some(({ foodId }) => isSavoury(foodId));

/** Whether so many servings make of each a smaller meal. */
export const isSmallerMeal = ({ page, now }: { page: number; now: number }): boolean =>
  page / now <= SMALLER + 1e-9;
