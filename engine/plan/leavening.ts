/** More lift for heavier flours (common practice, no source). */
import { type Amount, total } from './amounts.ts';
import { type Dish, mayAdd } from './dish.ts';

/** Flours that cannot hold gas: ground nuts, seeds and coconut. */
const HEAVY = /almond|coconut|flaxseed|sunflower|sesame|hazelnut|peanut|lupin/;
/**
 * Extra powder (share of the dose) at a flour base all of heavy flours, and the largest dose in
 * percent of the flour base, above which it is tasted. Common practice, no source.
 */
const EXTRA = 0.3;
const CAP_PCT = 6;

/** Baking powder in self-raising flour, share of its mass (from memory). */
const POWDER_IN_SELF_RAISING = 0.045;

const halfGrams = (grams: number): number => Math.floor(grams * 2 + 1e-9) / 2;

/** Powder that went with self-raising flour, g. */
const lostPowder = (amounts: readonly Amount[]): number =>
  amounts.reduce(
    (sum, a) =>
      a.origin === 'kept' && a.food.id === 'self-raising-flour'
        ? sum + POWDER_IN_SELF_RAISING * (a.original - a.grams)
        : sum,
    0,
  );

/** Share of the flour base in new flours that cannot hold gas, 0 in doughs that do not rise by powder. */
function heavyShare(amounts: readonly Amount[], dish: Dish): number {
  const { share } = dish.limits;
  if (share !== 'QB' && share !== 'CK') return 0;
  const base = total(amounts, (a) => (a.base ? 1 : 0));
  const heavy = total(amounts, (a) =>
    a.base && a.origin === 'swap' && HEAVY.test(a.food.id) ? 1 : 0,
  );
  return base > 0 && heavy / base >= 0.3 ? heavy / base : 0;
}

/** Smaller rises of the powder than this are within a level spoon's error. Own choice. */
const WORTH_RAISING = 1.1;

/** Baking powder for what went with self-raising flour, and more for heavy flours; in half grams. */
export function withLift(amounts: Amount[], dish: Dish): Amount[] {
  const base = total(amounts, (a) => (a.base ? 1 : 0));
  const lost = lostPowder(amounts);
  const powder = amounts.find(
    (a) => a.food.id === 'baking-powder' && !dish.goals.pinned.includes(a.key ?? ''),
  );
  if (powder) {
    const most = Math.max(powder.grams, (CAP_PCT * base) / 100);
    const wanted = (powder.grams + lost) * (1 + EXTRA * heavyShare(amounts, dish));
    const grams = Math.max(powder.grams, halfGrams(Math.min(most, wanted)));
    if (grams < WORTH_RAISING * powder.grams) return amounts;
    return amounts.map((a) => (a === powder ? { ...a, grams } : a));
  }
  const food = dish.foods.byId('baking-powder');
  if (!food || halfGrams(lost) <= 0 || !mayAdd(food, dish.goals)) return amounts;
  const added: Amount = {
    key: null,
    food,
    grams: halfGrams(lost),
    eaten: 1,
    base: false,
    role: 'leavening',
    origin: 'add',
    choice: null,
    original: 0,
  };
  return [...amounts, added];
}
