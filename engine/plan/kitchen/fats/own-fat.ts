/** Which line of fat a flour is worked with. */
import type { Dish, Part } from '../../dish/dish.ts';
import { fat } from '../../dish/food-figures.ts';

/** Butter, oil and the like; a fresh cheese is no fat of a dough. */
export const PLAIN_FAT = 0.5;

/** A fat that is less than this share of the flour greases a tin or a pan. Own choice. */
const LEAST_OF_FLOUR = 0.05;

/** The line of fat that a line of flour is worked with: of its own group the nearest, as a frosting is listed apart. */
export function fatOf(flour: Part, { parts }: Pick<Dish, 'parts'>): Part | null {
  const at = parts.indexOf(flour);
  const far = (part: Part): number => Math.abs(parts.indexOf(part) - at);
  const own = parts.filter(
    ({ role, food, eaten, group, section, grams }) =>
      role === 'fat' &&
      fat(food) > PLAIN_FAT &&
      eaten > 0.9 &&
      group === flour.group &&
      section === flour.section &&
      grams >= LEAST_OF_FLOUR * flour.grams,
  );
  return own.sort((a, b) => far(a) - far(b))[0] ?? null;
}
