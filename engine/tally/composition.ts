/** What 100 g of a food brings, under a net-carb rule, with the scatter of its composition. */

import { settledBasis } from '../foods/carbohydrate-basis.ts';
import { exact } from '../interval.ts';
import type { Food, Interval, NetCarbRule, Nutrient } from '../model.ts';
import { netCarbs } from './net-carbs.ts';

/** Figures per 100 g; null is unknown. */
export type FoodFigures = Record<Nutrient, Interval | null>;

export interface FoodNumbers {
  figures: FoodFigures;
  flags: string[];
}

const RAW_STARCH = /^(?!.*lea(?:f|ves)).*(?:potato|cassava|yuca|\byam\b|plantain|green banana)/;

const maybe = (value: number | null): Interval | null => (value === null ? null : exact(value));

function polyolSum(food: Food): number | null {
  const { polyolsG } = food.per100g;
  return polyolsG === null ? null : Object.values(polyolsG).reduce((sum, g) => sum + g, 0);
}

/** Carbohydrate as the region prints it: with fibre and polyols in the US, without fibre in the EU. */
function regionalCarbohydrate(food: Food, region: NetCarbRule['region']): Interval | null {
  const { carbohydrateG, fiberG } = food.per100g;
  if (carbohydrateG === null) return null;
  const outside = food.polyolsInCarbohydrate
    ? 0
    : (polyolSum(food) ?? 0) + (food.per100g.alluloseG ?? 0);
  const basis = settledBasis(food.carbohydrateBasis, food.per100g);
  const withFiber = basis === 'total';
  const stated = basis === 'available_mse' ? carbohydrateG / 1.08 : carbohydrateG;
  const base = stated + outside;
  if (region === 'us') return exact(withFiber ? base : base + (fiberG ?? 0));
  if (!withFiber) return exact(base);
  return fiberG === null ? exact(base) : exact(Math.max(0, base - fiberG));
}

/** Widens a figure to the published scatter of the food, where the table has one. */
function spread(value: Interval | null, range: [number, number] | undefined): Interval | null {
  if (value === null || range === undefined) return value;
  return {
    low: Math.min(value.low, range[0]),
    best: value.best,
    high: Math.max(value.high, range[1]),
  };
}

/** Without polyols and allulose, carbohydrate less fibre scatters as net carbs do. */
const availableSpread = (food: Food): [number, number] | undefined =>
  (polyolSum(food) ?? 0) + (food.per100g.alluloseG ?? 0) === 0 ? food.spread.netCarbsG : undefined;

/** Scatter of the carbohydrate as the region prints it; the table's is of the figure as stated. */
function carbohydrateSpread(
  food: Food,
  region: NetCarbRule['region'],
): [number, number] | undefined {
  const withFiber = settledBasis(food.carbohydrateBasis, food.per100g) === 'total';
  const { carbohydrateG: stated, fiberG: fiber } = food.spread;
  if (withFiber === (region === 'us')) return stated;
  if (withFiber) return availableSpread(food);
  return stated && fiber ? [stated[0] + fiber[0], stated[1] + fiber[1]] : undefined;
}

/**
 * Figures of 100 g of a food under the rule. `polyolsPerServingG` decides the `half_over_5g` policy;
 * `alcoholRetained` (0..1) lowers the energy by the alcohol that cooks off, 7 kcal/g.
 */
export function foodNumbers(
  food: Food,
  rule: NetCarbRule,
  dish: { polyolsPerServingG: number; alcoholRetained: number },
): FoodNumbers {
  const { per100g } = food;
  const { net, flags } = netCarbs({
    carbohydrate: maybe(per100g.carbohydrateG),
    fiber: maybe(per100g.fiberG),
    basis: settledBasis(food.carbohydrateBasis, per100g),
    polyolsInCarbohydrate: food.polyolsInCarbohydrate,
    policy: rule.polyols,
    polyols: Object.entries(per100g.polyolsG ?? {}).map(([kind, g]) => ({ kind, grams: exact(g) })),
    allulose: maybe(per100g.alluloseG),
    sugars: maybe(per100g.sugarsG),
    polyolsPerServingG: dish.polyolsPerServingG,
    rawStarchWillBeCooked: food.state === 'raw' && RAW_STARCH.test(food.name.toLowerCase()),
  });
  const lostAlcohol = (per100g.alcoholG ?? 0) * (1 - dish.alcoholRetained);
  const energy =
    per100g.energyKcal === null ? null : Math.max(0, per100g.energyKcal - 7 * lostAlcohol);
  const figures: FoodFigures = {
    energyKcal: spread(maybe(energy), food.spread.energyKcal),
    fatG: maybe(per100g.fatG),
    saturatedG: maybe(per100g.saturatedG),
    carbohydrateG: spread(
      regionalCarbohydrate(food, rule.region),
      carbohydrateSpread(food, rule.region),
    ),
    fiberG: spread(maybe(per100g.fiberG), food.spread.fiberG),
    sugarsG: maybe(per100g.sugarsG),
    polyolsG: maybe(polyolSum(food)),
    alluloseG: maybe(per100g.alluloseG),
    netCarbsG: spread(net, food.spread.netCarbsG),
    proteinG: spread(maybe(per100g.proteinG), food.spread.proteinG),
    sodiumMg: maybe(per100g.sodiumMg),
  };
  return { figures, flags };
}
