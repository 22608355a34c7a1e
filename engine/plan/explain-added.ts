/** Says why something is added or there is less of it, how the dose came about and what else was possible. */
import type { Swap } from '../model.ts';
import { forbidden } from './dish/candidates.ts';
import type { Dish, Section } from './dish/dish.ts';
import { gluten } from './dish/food-figures.ts';
import { type Amount, originalAmounts, total } from './kitchen/planned-masses.ts';

const one = (value: number): string => (Math.round(value * 10) / 10).toFixed(1);

const ofSection = (amounts: readonly Amount[], section: Section): Amount[] =>
  amounts.filter((a) => a.section === section.id);

const baseOf = (amounts: readonly Amount[]): number => total(amounts, (a) => (a.base ? 1 : 0));

const glutenPct = (amounts: readonly Amount[]): number =>
  (100 * total(amounts, (a) => (a.base ? gluten(a.food) : 0))) / Math.max(baseOf(amounts), 1e-9);

/** Most gum that loaves of such flours are baked with, percent of the flour (common practice, no source). */
const GUM_IN_PRACTICE = 3.6;

/** The dose in percent of the flour, and what of it makes up for gluten and what for starch. */
function whyBinder(
  amount: Amount,
  section: Section,
  amounts: readonly Amount[],
  dish: Dish,
): string {
  const now = ofSection(amounts, section);
  const base = baseOf(now);
  const ideal = section.limits.gluten?.min ?? 0;
  const reason =
    'Holds gas and water in place of the gluten and starch that went; the dose follows how much is missing.';
  if (base <= 0) return reason;
  const has = glutenPct(now);
  const needs = Math.min(ideal, glutenPct(ofSection(originalAmounts(dish), section)));
  const why =
    needs <= 0
      ? 'this dough needs no gluten, so little is enough'
      : has >= needs
        ? `with ${one(has)} g of gluten in 100 g of flour none is missing, so it only makes up for starch`
        : `gluten is ${one(has)} g in 100 g of flour where ${one(needs)} g would hold it`;
  const practice =
    amount.food.id === 'xanthan-gum' && section.limits.yeast
      ? ` Up to ${GUM_IN_PRACTICE} % is common in such loaves; more than this plan takes would turn gummy.`
      : '';
  return `${reason} ${one((100 * amount.grams) / base)} % of the flour: ${why}.${practice}`;
}

function whyAdded(amount: Amount, amounts: readonly Amount[], dish: Dish): string {
  if (amount.asked) return amount.asked;
  if (amount.because) return amount.because;
  const section = dish.sections[amount.section] ?? dish.main;
  switch (amount.role) {
    case 'binder':
      return whyBinder(amount, section, amounts, dish);
    case 'egg':
      return 'Sets the crumb in place of the flour that went.';
    case 'yeast-food':
      return 'Food for the yeast, because less starch is left for it.';
    case 'leavening':
      return 'Makes up for the lift that went with the flour.';
    case 'liquid':
      return 'The new flours hold more water than the old ones.';
    default:
      return 'Brings the sweetness back to the original.';
  }
}

const EFFECT: Partial<Record<Amount['role'], string>> = {
  binder: 'Softer, more elastic crumb; too much turns gummy.',
  egg: 'Firmer and richer.',
  leavening: 'Lighter crumb.',
  yeast: 'Rises in about the time it did.',
  fat: 'Softer and richer.',
  salt: 'Rounder taste, firmer dough.',
  acid: 'Slightly sour; firms the crumb.',
  thickener: 'Thicker.',
  'yeast-food': 'Mostly used up by the yeast during a long proof.',
  liquid: 'Dough should feel slightly wetter than usual at first.',
  sweetness: 'Strong: weigh it on a fine scale. A little aftertaste is possible.',
};

/** Foods that could do the same, with the reason they were passed over. */
function considered(amount: Amount, dish: Dish): string[] {
  const section = dish.sections[amount.section] ?? dish.main;
  const others: readonly (readonly [string, string])[] =
    amount.role === 'binder'
      ? Object.keys(section.limits.binder).map((id) => [id, 'one binder is enough'] as const)
      : amount.role === 'yeast-food'
        ? [['honey', 'sugar does the same without a taste']]
        : amount.role === 'sweetness'
          ? [['steviol-glycosides', 'leaves more aftertaste']]
          : amount.role === 'egg'
            ? [['egg-white-powder', 'fresh egg needs no more than a whisk']]
            : [];
  return others.flatMap(([id, why]) => {
    const food = dish.foods.byId(id);
    if (!food || id === amount.food.id) return [];
    return [`${food.name}: ${forbidden(food, dish) ?? why}`];
  });
}

/** A change that adds `grams` of a food. */
export const addedSwap = (
  amount: Amount,
  grams: number,
  amounts: readonly Amount[],
  dish: Dish,
): Swap => ({
  id: `add-${amount.food.id}`,
  key: null,
  from: null,
  keptGrams: 0,
  to: [{ foodId: amount.food.id, food: amount.food.name, grams }],
  why: whyAdded(amount, amounts, dish),
  effect: EFFECT[amount.role] ?? 'Brings the dish back towards the original.',
  considered: considered(amount, dish),
  allergens: [...new Set(amount.food.allergens)].sort(),
  cautions: [],
  source: amount.food.function?.source ?? 'common practice, no source',
});

function whyLess(amount: Amount): string {
  if (amount.asked) return amount.asked;
  if (amount.because) return amount.because;
  if (amount.role === 'fat') return 'The nuts or seeds bring fat of their own.';
  if (amount.role === 'salt')
    return 'Other ingredients bring sodium; a serving should not have more than before.';
  return 'The new ingredients need less of it.';
}

/** A change that leaves out some of a line. */
export const lessSwap = (amount: Amount): Swap => ({
  id: `less-${amount.food.id}`,
  key: amount.key,
  from: { foodId: amount.food.id, food: amount.food.name, grams: amount.original },
  keptGrams: amount.grams,
  to: [],
  why: whyLess(amount),
  effect: 'Keeps the balance of the original.',
  considered: [],
  allergens: [],
  cautions: [],
  source: 'common practice, no source',
});
