/** Salt that goes where new foods bring sodium of their own. */
import type { Dish, Section } from '../../dish/dish.ts';
import { down, SAME_SCOOP } from '../kitchen-steps.ts';
import { type Amount, originalOf, total } from '../planned-masses.ts';

const sodium = (amounts: readonly Amount[]): number =>
  total(amounts, (a) => ((a.food.per100g.sodiumMg ?? 0) / 100) * a.eaten);

/** Step in which salt is taken off, g. Own choice. */
const HALF_GRAM = 0.5;

const saltOf = (amounts: readonly Amount[]): number =>
  total(amounts, (a) => (a.role === 'salt' ? 1 : 0));

/** Half grams of salt less while a yeast dough has more sodium than before, down to the family's least salt. */
function lowered(amounts: Amount[], section: Section, dish: Dish): Amount[] {
  const floor = section.limits.yeast ? (section.limits.saltPct?.min ?? 0) : 0;
  const before = sodium(originalOf(dish, section));
  let now = amounts;
  while (floor > 0 && sodium(now) > before) {
    const salt = now.find(
      (a) => a.role === 'salt' && a.origin === 'kept' && !dish.goals.pinned.includes(a.key ?? ''),
    );
    // A spoon's mass is no half gram, what is weighed is one.
    const less = salt ? down(salt.grams - HALF_GRAM, HALF_GRAM) : 0;
    if (!salt || less < (floor * section.flourBase) / 100) return now;
    now = now.map((a) => (a === salt ? { ...a, grams: less } : a));
  }
  return now;
}

/** The same, where it is more than a pinch; a lean loaf, of which much is eaten, counts each half gram. */
export function withSalt(amounts: Amount[], section: Section, dish: Dish): Amount[] {
  const now = lowered(amounts, section, dish);
  const slight = section.family === 'lean-yeast-bread' ? 0 : SAME_SCOOP * saltOf(amounts);
  return saltOf(amounts) - saltOf(now) < slight ? amounts : now;
}
