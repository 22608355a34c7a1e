/** Sweeteners of which a dish takes less than a fine scale shows. */
import { mayAdd } from '../../dish/candidates.ts';
import type { Dish, Section } from '../../dish/dish.ts';
import { sweetness } from '../../dish/food-figures.ts';
import { type Amount, originalOf, total } from '../planned-masses.ts';
import { SWEET_SCRAP } from './remnants.ts';

/** Pure intense sweeteners below this are not weighed on a fine scale, g. Own choice. */
const FINE_SCALE_G = 0.1;

/** Sweeteners sold with an intense one in them, as sweet as sugar. */
const BLENDS: Readonly<Record<string, string>> = {
  allulose: 'sweetener-blend-allulose',
  erythritol: 'sweetener-blend-erythritol',
};

/** A blend may come out this much sweeter or less sweet than what it stands for, share of the original's sweetness. Own choice. */
const NEAR_ENOUGH = 0.15;

/**
 * An intense sweetener too little to weigh goes: into a blend in place of its plain sweetener when
 * that comes near enough, or away when no one would taste it.
 */
export function measurable(amounts: Amount[], section: Section, dish: Dish): Amount[] {
  const sweet = total(originalOf(dish, section), (a) =>
    a.role === 'sweetness' ? sweetness(a.food) : 0,
  );
  let list = amounts;
  for (const a of amounts) {
    const strength = sweetness(a.food);
    if (a.origin === 'kept' || strength <= 10 || a.grams >= FINE_SCALE_G) continue;
    const worth = a.grams * strength;
    const without = list.filter((b) => b !== a);
    const host = without.find((b) => b.origin === 'swap' && b.food.id in BLENDS);
    const blend = host ? dish.foods.byId(BLENDS[host.food.id] ?? '') : null;
    if (worth < SWEET_SCRAP * sweet) list = without;
    else if (host && blend && mayAdd(blend, dish)) {
      const gain = host.grams * (sweetness(blend) - sweetness(host.food));
      if (Math.abs(gain - worth) <= NEAR_ENOUGH * sweet)
        list = without.map((b) => (b === host ? { ...b, food: blend } : b));
    }
  }
  return list;
}
