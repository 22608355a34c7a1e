/** Where water that a dough wants goes in, and which liquid less of it comes from. */
import type { Dish, Section } from '../../dish/dish.ts';
import { water } from '../../dish/food-figures.ts';
import { down, near, SAME_SCOOP } from '../kitchen-steps.ts';
import { type Amount, added, originalOf, total } from '../planned-masses.ts';
import { hydrating, type WaterChange } from '../water.ts';

const largestOf = (amounts: readonly Amount[]): Amount | undefined =>
  [...amounts].sort((a, b) => b.grams - a.grams)[0];

/** Of several waters the one listed nearest to the flour that changed: another may boil a filling. */
function besideFlour(
  waters: readonly Amount[],
  amounts: readonly Amount[],
  { parts }: Dish,
): Amount | undefined {
  const placeOf = ({ key }: Amount): number => parts.findIndex((part) => part.key === key);
  const flours = amounts.filter(({ origin, base }) => origin === 'swap' && base).map(placeOf);
  const far = (water: Amount): number =>
    Math.min(...flours.map((at) => Math.abs(at - placeOf(water))));
  if (flours.length === 0) return largestOf(waters);
  return [...waters].sort((a, b) => far(a) - far(b))[0];
}

/** Added water below this share of the flour, or of the dough's liquid, is not felt. Own choice. */
const UNFELT = 0.025;

/** Share of the liquid below which a change is not felt: a yeast dough is felt sooner than a batter. Own choice. */
const sameFeel = ({ limits }: Section): number => (limits.yeast ? SAME_SCOOP / 2 : SAME_SCOOP);

const unfelt = (amounts: readonly Amount[], base: number, section: Section): number =>
  Math.max(UNFELT * base, sameFeel(section) * total(amounts, hydrating));

/** Share of milk or buttermilk that need not be left out for the sake of balance. Own choice. */
const UNNOTICED = 0.08;

/** Share of a liquid that stays at least: of milk and the like, and where the dough is too wet or it is water. Own choice. */
const LEAST_LIQUID = { milk: 0.75, water: 0.5 };

/** Liquid that is not poured off to the gram, g: of milk and the like a tablespoon (common practice, no source). */
const LEAST_POURED_G = { milk: 15, water: 10 };

/** What is bought by the pot goes in whole. */
const isPot = ({ food }: Amount): boolean => /yogurt|quark|skyr/.test(food.id);

const hydrationPct = (amounts: readonly Amount[]): number =>
  (100 * total(amounts, hydrating)) /
  Math.max(
    total(amounts, (a) => (a.base ? 1 : 0)),
    1e-9,
  );

/** Wetter than its kind may be, and than the page's own was by more than a spoon. */
export const tooWet = (amounts: readonly Amount[], section: Section, dish: Dish): boolean =>
  hydrationPct(amounts) >
  Math.max(
    section.limits.hydration?.max ?? Number.POSITIVE_INFINITY,
    (1 + SAME_SCOOP) * hydrationPct(originalOf(dish, section)),
  );

/** Water in a gram from which a liquid is poured: soured cream and the like are there for their fat and acid. Own choice. */
const POURED = 0.84;

/** Water into the recipe's own water, or a new line; less comes from the largest liquid that is poured. */
export function withWater(
  amounts: Amount[],
  change: WaterChange,
  section: Section,
  dish: Dish,
): Amount[] {
  const shift = change.mixing > 0 ? down(change.mixing, 5) : near(change.mixing, 5);
  const base = total(amounts, (a) => (a.base ? 1 : 0));
  if (shift === 0 || (shift > 0 && shift < unfelt(amounts, base, section))) return amounts;
  const loose = amounts.filter(
    (a) => a.role === 'liquid' && a.grams > 0 && !dish.goals.pinned.includes(a.key ?? ''),
  );
  const plain =
    besideFlour(
      loose.filter((a) => a.food.id === 'water' && a.origin === 'kept'),
      amounts,
      dish,
    ) ?? largestOf(loose.filter((a) => a.food.id === 'water'));
  if (shift < 0) {
    const target = plain ?? largestOf(loose.filter((a) => water(a.food) >= POURED && !isPot(a)));
    // A change of a liquid other than water that no one would notice is not asked for.
    if (!target) return amounts;
    const wet = tooWet(amounts, section, dish);
    const stays = plain || wet ? LEAST_LIQUID.water : LEAST_LIQUID.milk;
    const grams = near(Math.max(stays * target.grams, target.grams + shift), 5);
    const less = Math.min(-shift, target.grams - grams);
    const slight = plain || wet ? sameFeel(section) : UNNOTICED;
    const least = plain ? LEAST_POURED_G.water : LEAST_POURED_G.milk;
    if (less < Math.max(least, slight * target.grams)) return amounts;
    return amounts.map((a) => (a === target ? { ...a, grams } : a));
  }
  if (plain)
    return amounts.map((a) => (a === plain ? { ...a, grams: near(plain.grams + shift, 5) } : a));
  const food = dish.foods.byId('water');
  return food ? [...amounts, added(food, shift, 'liquid', section.id)] : amounts;
}
