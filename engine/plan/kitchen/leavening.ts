/** Lift that heavier flours need, and soda that loses its acid (common practice, no source, unless said). */
import { hasTag } from '../../foods/tags.ts';
import type { Food } from '../../model.ts';
import { mayAdd } from '../dish/candidates.ts';
import type { Dish, Section } from '../dish/dish.ts';
import { down, near, quarterTsp, tidy } from './kitchen-steps.ts';
import { type Amount, added, originalAmounts, total } from './planned-masses.ts';
import { acidity } from './soda-acids.ts';

/**
 * Extra powder (share of the dose) at a flour base all of heavy flours, and the largest dose in
 * percent of the flour base, above which it is tasted. Common practice, no source.
 */
const EXTRA = 0.3;
const CAP_PCT = 6;

/** Baking powder in self-raising flour, share of its mass (from memory). */
const POWDER_IN_SELF_RAISING = 0.045;

/** Level quarter teaspoons of a powder in tenths of a gram, as scales show them; no more than `most` g. */
function level(grams: number, powder: Food, most = Number.POSITIVE_INFINITY): number {
  const spoon = quarterTsp(powder);
  const nearest = near(grams, spoon);
  return tidy(near(nearest > most ? down(grams, spoon) : nearest, 0.1));
}

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
function heavyShare(amounts: readonly Amount[], section: Section): number {
  const { share } = section.limits;
  if (share !== 'QB' && share !== 'CK') return 0;
  const base = total(amounts, (a) => (a.base ? 1 : 0));
  const heavy = total(amounts, (a) =>
    a.base && a.origin === 'swap' && hasTag(a.food, 'heavy-flour') ? 1 : 0,
  );
  return base > 0 && heavy / base >= 0.3 ? heavy / base : 0;
}

/** Soda without acid that is not tasted, percent of the flour base (common practice, no source). */
const UNTASTED_PCT = 0.2;
/** Powder that lifts like a gram of soda with its acid, g (12 % gas by US standard; common practice, no source). */
const POWDER_FOR_SODA = 3.5;

/** Soda, g, that has no acid left to meet after the change, beyond what the original had. */
function looseSoda(amounts: readonly Amount[], before: readonly Amount[], base: number): number {
  const soda = total(amounts, (a) => (a.food.id === 'baking-soda' ? 1 : 0));
  if (soda <= 0) return 0;
  // Its green with soda is harmless, but no one would eat it.
  if (amounts.some((a) => a.origin === 'swap' && hasTag(a.food, 'green-with-soda'))) return soda;
  const was = soda - total(before, acidity);
  const now = soda - total(amounts, acidity);
  return Math.max(0, Math.min(soda, now - Math.max(was, (UNTASTED_PCT * base) / 100)));
}

/** Smaller falls of powder or soda than this share are within it as well. Own choice. */
const WORTH_LOWERING = 0.25;

/** Smaller rises of the powder than this are within a level spoon's error. Own choice. */
const WORTH_RAISING = 1.1;

/** Flour base after the change as a share of that before, at most 1. */
function lessFlour(amounts: readonly Amount[], before: readonly Amount[]): number {
  const mass = (list: readonly Amount[]): number => total(list, (a) => (a.base ? 1 : 0));
  const was = mass(before);
  return was > 0 ? Math.min(1, mass(amounts) / was) : 1;
}

/** Baking powder for what went with self-raising flour or lost soda, more for heavy flours and less for less flour; in quarter teaspoons. */
export function withLift(amounts: Amount[], section: Section, dish: Dish): Amount[] {
  const base = total(amounts, (a) => (a.base ? 1 : 0));
  const food = dish.foods.byId('baking-powder');
  const pinned = (a: Amount): boolean => dish.goals.pinned.includes(a.key ?? '');
  const powder = amounts.find((a) => a.food.id === 'baking-powder' && !pinned(a));
  const soda = amounts.find((a) => a.food.id === 'baking-soda' && !pinned(a));
  const before = originalAmounts(dish).filter((a) => a.section === section.id);
  const may = powder !== undefined || (food !== null && mayAdd(food, dish));
  const excess = soda && may ? looseSoda(amounts, before, base) : 0;
  const left = soda ? Math.ceil(2 * (soda.grams - excess) - 1e-9) / 2 : 0;
  // Less than a level spoon's error is no change to ask for.
  const loose = soda && excess >= WORTH_LOWERING * soda.grams ? Math.max(0, soda.grams - left) : 0;
  const lost = lostPowder(amounts) + POWDER_FOR_SODA * loose;
  const settled = amounts.map((a) =>
    a === soda && loose > 0 ? { ...a, grams: left, because: LESS_ACID } : a,
  );
  if (powder) {
    const most = Math.max(powder.grams, (CAP_PCT * base) / 100);
    const wanted =
      (powder.grams * lessFlour(amounts, before) + lost) *
      (1 + EXTRA * heavyShare(amounts, section));
    if (loose === 0 && wanted <= (1 - WORTH_LOWERING) * powder.grams) {
      const grams = level(wanted, powder.food);
      return settled.map((a) => (a === powder ? { ...a, grams, because: LESS_FLOUR } : a));
    }
    const grams = Math.max(powder.grams, level(Math.min(most, wanted), powder.food, most));
    if (grams < WORTH_RAISING * powder.grams && loose === 0) return amounts;
    return settled.map((a) => (a === powder ? { ...a, grams } : a));
  }
  // Less than a gram cannot be measured by the spoon.
  if (!food || level(lost, food) < 1 || !may) return amounts;
  return [...settled, added(food, level(lost, food), 'leavening', section.id)];
}

const LESS_FLOUR = 'There is less flour for it to lift; more of it is tasted.';
const LESS_ACID = 'Its acid went with what was replaced; loose soda tastes soapy.';
