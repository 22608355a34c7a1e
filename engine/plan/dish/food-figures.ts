/** Per-gram figures of foods that the planner reckons with. */
import type { Food, FoodFunction, NetCarbRule } from '../../model.ts';
import { foodNumbers } from '../../tally/composition.ts';

/**
 * Net carbs, g per g of the food, by the tally's own rule; null when its carbohydrate is unknown.
 * Polyols under a per-serving threshold rule are counted in full: the cautious reading.
 */
export function netPerGram(food: Food, rule: NetCarbRule): number | null {
  const known = nets.get(food) ?? new Map<string, number | null>();
  nets.set(food, known);
  const name = `${rule.region} ${rule.polyols}`;
  const net = known.get(name);
  if (net !== undefined) return net;
  const reckoned = reckonNet(food, rule);
  known.set(name, reckoned);
  return reckoned;
}

/** Reckoned once for each food and rule; foods never change. */
const nets = new WeakMap<Food, Map<string, number | null>>();

function reckonNet(food: Food, rule: NetCarbRule): number | null {
  const polyolsPerServingG = rule.polyols === 'half_over_5g' ? 0 : Number.POSITIVE_INFINITY;
  const { figures } = foodNumbers(food, rule, { polyolsPerServingG, alcoholRetained: 1 });
  return figures.netCarbsG === null ? null : figures.netCarbsG.best / 100;
}

const INERT: FoodFunction = {
  absorption: null,
  glutenProtein: 0,
  digestibleStarch: null,
  insolubleFibre: 0,
  sweetness: 0,
  bulk: 0,
  browning: 'none',
  freezing: null,
  doseCapG: null,
  maxShare: {},
  flavour: 0,
  colour: 0,
  source: 'no function figures',
};

export const functionOf = (food: Food): FoodFunction => food.function ?? INERT;

/** Water (g) a gram of flour or fibre holds; 0.6, a white flour's, when it is not known (common practice, no source). */
export const absorption = (food: Food): number => functionOf(food).absorption?.best ?? 0.6;

/** Digestible starch per gram; the available carbohydrate without sugars when it is not known. */
export function starch(food: Food): number {
  const { digestibleStarch } = functionOf(food);
  if (digestibleStarch !== null) return digestibleStarch / 100;
  const c = food.per100g;
  const rest = (c.carbohydrateG ?? 0) - (c.fiberG ?? 0) - (c.sugarsG ?? 0);
  return Math.max(0, rest) / 100;
}

export const gluten = (food: Food): number => functionOf(food).glutenProtein / 100;
export const fat = (food: Food): number => (food.per100g.fatG ?? 0) / 100;
export const water = (food: Food): number => (food.per100g.waterG ?? 0) / 100;

/** Sweetness against sucrose; of foods without the figure, their sugars. */
export const sweetness = (food: Food): number =>
  food.function ? food.function.sweetness : (food.per100g.sugarsG ?? 0) / 100;

/** Bulk against sucrose; of foods without the figure, their sugars. */
export const bulk = (food: Food): number =>
  food.function ? food.function.bulk : (food.per100g.sugarsG ?? 0) / 100;

/** Carbohydrate yeast can use: free sugars, and what enzymes free from starch (8 %: common practice, no source). */
export const yeastFood = (food: Food): number =>
  (food.per100g.sugarsG ?? 0) / 100 + 0.08 * starch(food);

/** Fibre, g per g. */
export const fibreIn = (food: Food): number => (food.per100g.fiberG ?? 0) / 100;

/** g in a gram of a food of what draws water in the gut: allulose, sugar alcohols and polydextrose. */
export function stomachSweetenersIn(food: Food): number {
  if (food.id === 'polydextrose') return 1;
  const polyols = Object.values(food.per100g.polyolsG ?? {}).reduce((sum, g) => sum + g, 0);
  return ((food.per100g.alluloseG ?? 0) + polyols) / 100;
}
