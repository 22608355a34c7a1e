/** Salt without an amount: one allowance a recipe, less what salt and salty foods already bring. */
import type { FoodTable } from '../foods/index.ts';
import { hasTag } from '../foods/tags.ts';
import { massInterval, scaleMass } from '../interval.ts';
import type { Ingredient, Interval } from '../model.ts';

/**
 * Salt of a dish that is seasoned 'to taste', share of what is eaten. High: well seasoned, common
 * practice, no source. Best: between the 0.6 g a 100 g that ready meals are aimed at in the UK (from
 * memory) and the little that people add at home on average, 0.2 g of sodium a day in the USA
 * (Harnack 2017, Circulation 135:1775, from memory).
 */
const SEASONED = { low: 0, best: 0.004, high: 0.01 };
/** Salt of a gram of sodium: Reg. (EU) 1169/2011 Annex I. */
const SALT_PER_SODIUM = 2.5;
/** A pinch, g: the least that a line naming salt is taken for. */
const PINCH_G = 0.3;

/** Salt on a line without an amount, all of it eaten; salt of cooking water is counted by what is taken up. */
const isUnstatedSalt = ({ match, weight }: Ingredient): boolean =>
  match !== null &&
  hasTag(match.foodId, 'salt') &&
  weight?.basis === 'assumed' &&
  weight.eaten.best === 1;

interface Dish {
  grams: number;
  saltG: number;
}

/** Eaten grams of the other lines and the salt in them; what is optional is left out. */
function dishOf(others: readonly Ingredient[], foods: FoodTable): Dish {
  let grams = 0;
  let saltG = 0;
  for (const { line, match, weight } of others) {
    if (weight === null || line.optional) continue;
    const eaten = weight.grams.best * weight.eaten.best;
    const sodiumMg = (match ? foods.byId(match.foodId) : null)?.per100g.sodiumMg ?? 0;
    grams += eaten;
    saltG += (eaten / 100) * (sodiumMg / 1000) * SALT_PER_SODIUM;
  }
  return { grams, saltG };
}

function allowanceFor({ grams, saltG }: Dish): Interval {
  const lacking = (share: number): number => Math.max(0, share * grams - saltG);
  return massInterval(
    lacking(SEASONED.low),
    Math.max(PINCH_G, lacking(SEASONED.best)),
    Math.max(PINCH_G * 3, lacking(SEASONED.high)),
  );
}

const text = ({ low, best, high }: Interval): string => {
  const shown = (grams: number): string => grams.toFixed(grams < 10 ? 1 : 0);
  return `no amount of salt: ${shown(best)} g assumed (${shown(low)}-${shown(high)}), what the dish lacks to be seasoned`;
};

/**
 * The ingredients with their salt of no amount set to one allowance for the whole recipe, shared by
 * the lines that name it: what the dish lacks to be seasoned, a pinch at least. A recipe that states
 * all its salt is returned as it is.
 */
export function withSaltAllowance(
  ingredients: readonly Ingredient[],
  foods: FoodTable,
): Ingredient[] {
  const unstated = ingredients.filter(isUnstatedSalt);
  if (unstated.length === 0) return [...ingredients];
  const others = ingredients.filter((one) => !isUnstatedSalt(one));
  const share = scaleMass(allowanceFor(dishOf(others, foods)), 1 / unstated.length);
  return ingredients.map((one) =>
    one.weight !== null && isUnstatedSalt(one)
      ? { ...one, weight: { ...one.weight, grams: share, assumptions: [text(share)] } }
      : one,
  );
}
