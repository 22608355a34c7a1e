/** Rounds a plan to amounts that a kitchen scale and whole eggs allow; lines that did not change stay as written. */
import type { Dish, Section } from '../dish/dish.ts';
import { setFor } from '../model/rows/set-rows.ts';
import { withOneSweetener } from './fats/crumb-crust.ts';
import { withLessFat } from './fats/less-fat.ts';
import { near, tidy } from './kitchen-steps.ts';
import { withLift } from './leavening.ts';
import { withAdjustments } from './lever-amounts.ts';
import { withPartners } from './partners.ts';
import { type Amount, originalOf } from './planned-masses.ts';
import { withPotLiquid } from './pot-liquid.ts';
import { withBinder } from './rounding/binder-amount.ts';
import { measurable } from './rounding/intense-sweeteners.ts';
import { withoutRemnants } from './rounding/remnants.ts';
import { withSalt } from './rounding/salt-amount.ts';
import { tooWet, withWater } from './rounding/water-amount.ts';
import { keepBase, roundedGrams, withoutTraces } from './rounding/weighable-grams.ts';
import { waterChange } from './water.ts';
import { wholePieces } from './whole-pieces.ts';
import { sensibleFood, withYeast } from './yeast.ts';

export interface KitchenPlan {
  amounts: Amount[];
  /** g of water to hold back, in steps of 5; null when none. */
  reserve: number | null;
}

function sectionAmounts(
  exact: readonly Amount[],
  section: Section,
  dish: Dish,
  cautious: boolean,
): KitchenPlan {
  const whole = measurable(withoutRemnants(exact, section, dish), section, dish);
  const rounded = whole.map((amount) => {
    const grams = roundedGrams(amount, cautious, dish.goals.flourKept > 0);
    if (grams === amount.grams) return amount;
    return wholePieces({ ...amount, grams: grams === amount.original ? grams : tidy(grams) }, dish);
  });
  const settled = withoutTraces(keepBase(rounded, whole));
  const based = withLessFat(
    withOneSweetener(settled, dish).filter((a) => a.grams > 0 || a.origin === 'kept'),
    section,
    dish,
  );
  if (!section.dough) return { amounts: based, reserve: null };
  const before = originalOf(dish, section);
  const lifted = withLift(withBinder(sensibleFood(based, section), section, dish), section, dish);
  const risen = withYeast(lifted, before, section, dish.goals.pinned);
  const bound = withSalt(risen, section, dish);
  const change = waterChange(before, bound, section.limits);
  const reserve = near(change.reserve, 5);
  return {
    amounts: withWater(bound, change, section, dish),
    reserve: reserve >= 5 ? reserve : null,
  };
}

/** An addition the kitchen works out may be set to this many times as much, unless it gets too wet. Own choice. */
const MOST_TIMES = 2;

/** Whether an addition that the programme did not choose may be what the user has set. */
function mayBeSet(
  amounts: readonly Amount[],
  amount: Amount,
  grams: number,
  { section, dish }: { section: Section | undefined; dish: Dish },
): boolean {
  if (amount.origin !== 'add' || !section || grams > MOST_TIMES * amount.grams) return false;
  const own = amounts.filter((a) => a.section === section.id);
  return !tooWet(
    own.map((a) => (a === amount ? { ...a, grams } : a)),
    section,
    dish,
  );
}

/** What the user has set is as it was solved for, however the kitchen would round it. */
function asSet(amounts: readonly Amount[], exact: readonly Amount[], dish: Dish): Amount[] {
  return amounts.map((amount) => {
    const set = setFor(dish.goals, amount);
    if (!set) return amount;
    const solved = exact.find(
      (a) => a.key === amount.key && a.food === amount.food && a.section === amount.section,
    );
    const section = dish.sections.find(({ id }) => id === amount.section);
    const taken = solved
      ? Math.abs(solved.grams - set.grams) < 0.01
      : mayBeSet(amounts, amount, set.grams, { section, dish });
    return taken ? { ...amount, grams: set.grams } : amount;
  });
}

const ORDER = { kept: 0, swap: 1, add: 2 } as const;

/**
 * Kitchen amounts for exact ones, part by part, with water and binder settled on the rounded masses
 * and the changes accepted after a bake made last. `cautious` rounds what stays of a line down, so
 * that net carbs cannot rise; else to the nearest step. What stays comes first, in the dish's order.
 */
export function kitchenAmounts(
  exact: readonly Amount[],
  dish: Dish,
  cautious: boolean,
): KitchenPlan {
  const place = new Map(dish.parts.map((part, at) => [part.key, at]));
  const plans = dish.sections.map((section) => {
    const own = exact.filter((a) => a.section === section.id);
    const plan = sectionAmounts(own, section, dish, cautious);
    return section.id === 0
      ? { ...plan, amounts: withAdjustments(plan.amounts, section, dish) }
      : plan;
  });
  const potted = withPotLiquid(
    plans.flatMap((plan) => plan.amounts),
    dish,
  );
  const settled = withPartners(potted, dish);
  const amounts = asSet(settled, exact, dish);
  if (plans.length > 1) {
    const at = (a: Amount): number => (a.origin === 'kept' ? (place.get(a.key ?? '') ?? 0) : 0);
    amounts.sort((a, b) => ORDER[a.origin] - ORDER[b.origin] || at(a) - at(b));
  }
  return { amounts, reserve: plans[0]?.reserve ?? null };
}
