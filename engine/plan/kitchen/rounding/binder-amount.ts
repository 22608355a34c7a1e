/** How much binder the rounded masses want. */
import { hasTag } from '../../../foods/tags.ts';
import { mayAdd } from '../../dish/candidates.ts';
import type { Dish, Section } from '../../dish/dish.ts';
import { gluten } from '../../dish/food-figures.ts';
import { binderDose, isHeldByEgg } from '../binder-dose.ts';
import { down, quarterTsp, tidy, up } from '../kitchen-steps.ts';
import { type Amount, added, originalOf, total } from '../planned-masses.ts';

/** Whether the user, or a bake of theirs, may have asked for the gum that there is. */
const isAskedFor = ({ goals, taught }: Dish): boolean =>
  goals.adjustments.length + goals.setAmounts.length + taught.length > 0;

/** Binder from the rounded masses, at least the rule's dose, in quarter teaspoons. */
export function withBinder(amounts: Amount[], section: Section, dish: Dish): Amount[] {
  const base = total(amounts, (a) => (a.base ? 1 : 0));
  if (base <= 0 || !amounts.some((a) => a.base && a.origin === 'swap')) return amounts;
  if (isHeldByEgg(dish, section)) return amounts;
  // What has gluten of its own leaves nothing for a gum to do.
  const own = (a: Amount): boolean =>
    a.origin === 'kept' || (!section.limits.binderAlways && hasTag(a.food, 'gluten'));
  const replaced = 1 - total(amounts, (a) => (a.base && own(a) ? 1 : 0)) / base;
  const state = {
    gluten: (100 * total(amounts, (a) => (a.base ? gluten(a.food) : 0))) / base,
    replaced,
    was: (100 * total(originalOf(dish, section), (a) => (a.base ? gluten(a.food) : 0))) / base,
  };
  const present = amounts.find((a) => a.role === 'binder');
  const id =
    present?.food.id ??
    Object.keys(section.limits.binder).find((name) => {
      const food = dish.foods.byId(name);
      return food !== null && mayAdd(food, dish);
    });
  const food = id === undefined ? null : dish.foods.byId(id);
  if (id === undefined || !food) return amounts;
  const { least, most } = binderDose(section.limits, id, state);
  if (present?.origin === 'add' && least <= 0 && !isAskedFor(dish))
    return amounts.filter((a) => a !== present);
  const spoon = quarterTsp(food);
  const cap = tidy(Math.max(spoon, down((most * base) / 100, spoon)));
  const grams = tidy(Math.min(cap, up((least * base) / 100, spoon)));
  if (present)
    return amounts.map((a) =>
      a === present && a.origin === 'add'
        ? { ...a, grams: Math.min(cap, Math.max(a.grams, grams)) }
        : a,
    );
  return grams <= 0 ? amounts : [...amounts, added(food, grams, 'binder', section.id)];
}
