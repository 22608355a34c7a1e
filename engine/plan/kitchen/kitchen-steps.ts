/** Steps that a kitchen scale and spoons allow. */
import type { Food, Role } from '../../model.ts';

/** A quarter teaspoon of gum when the table has no teaspoon: 0.7 g (common practice, no source). */
const QUARTER_TSP_G = 0.7;

export const down = (value: number, step: number): number => Math.floor(value / step + 1e-9) * step;
export const near = (value: number, step: number): number => Math.round(value / step) * step;
export const up = (value: number, step: number): number => Math.ceil(value / step - 1e-9) * step;
export const tidy = (value: number): number => Math.round(value * 1000) / 1000;

/** Grain of a kitchen amount, g. */
export function stepFor(role: Role, grams: number): number {
  if (role === 'salt' || role === 'yeast' || role === 'leavening') return 0.5;
  if (grams >= 50) return 5;
  return grams >= 10 ? 1 : grams >= 2 ? 0.5 : 0.1;
}

/** g of a quarter teaspoon of a gum, husk or powder. */
export const quarterTsp = (food: Food): number => {
  const tsp = food.measures.find((m) => m.unit === 'tsp')?.grams;
  return tsp === undefined ? QUARTER_TSP_G : tsp / 4;
};

/** A change of fat, salt, powder or water by under this share is not worth asking for. Own choice. */
export const SAME_SCOOP = 0.1;
