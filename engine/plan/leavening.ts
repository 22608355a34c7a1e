/** More lift for heavier flours (common practice, no source). */
import { type Amount, total } from './amounts.ts';
import type { Dish } from './dish.ts';

/** Flours that cannot hold gas: ground nuts, seeds and coconut. */
const HEAVY = /almond|coconut|flaxseed|sunflower|sesame|hazelnut|peanut|lupin/;
/** Extra powder at a flour base all of heavy flours; doses above the cap taste of it. */
const EXTRA = 0.3;
const CAP_PCT = 6;

/** Baking powder raised in batters by the share of heavy flours, in half grams. */
export function withLift(amounts: Amount[], dish: Dish): Amount[] {
  const { share } = dish.limits;
  if (share !== 'QB' && share !== 'CK') return amounts;
  const base = total(amounts, (a) => (a.base ? 1 : 0));
  const heavy = total(amounts, (a) =>
    a.base && a.origin === 'swap' && HEAVY.test(a.food.id) ? 1 : 0,
  );
  if (base <= 0 || heavy / base < 0.3) return amounts;
  return amounts.map((a) => {
    if (a.food.id !== 'baking-powder' || dish.goals.pinned.includes(a.key ?? '')) return a;
    const most = Math.max(a.grams, (CAP_PCT * base) / 100);
    const grams = Math.min(most, a.grams * (1 + (EXTRA * heavy) / base));
    return { ...a, grams: Math.max(a.grams, Math.floor(grams * 2) / 2) };
  });
}
