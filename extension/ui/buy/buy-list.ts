/** What one or several reworked recipes need, each food once, by where it is sold. */
import { hasTag } from '../../../engine/index.ts';
import type { Plan } from '../../../engine/model.ts';

export interface Dish {
  title: string;
  plan: Pick<Plan, 'items'>;
  /** How much of it is made. */
  factor: number;
}

/** `seldom`: to be ordered; `grocer`: in most shops; `usual`: in nearly every kitchen. */
export type Aisle = 'seldom' | 'grocer' | 'usual';
export const AISLES: readonly Aisle[] = ['seldom', 'grocer', 'usual'];

export interface ToBuy {
  foodId: string;
  food: string;
  grams: number;
  /** Sold by what it fills rather than by weight. */
  poured: boolean;
  aisle: Aisle;
}

/** Comes from the tap. */
const NEVER_BOUGHT = new Set(['water', 'ice']);

function aisleOf(foodId: string): Aisle {
  if (hasTag(foodId, 'speciality')) return 'seldom';
  return hasTag(foodId, 'cupboard') ? 'usual' : 'grocer';
}

/** Largest amount first. Foods that take part with nothing are left out. */
export function buyList(dishes: readonly Dish[]): ToBuy[] {
  const foods = new Map<string, ToBuy>();
  for (const { plan, factor } of dishes) {
    for (const { foodId, foodName, grams, role } of plan.items) {
      if (NEVER_BOUGHT.has(foodId) || grams <= 0) continue;
      const before = foods.get(foodId)?.grams ?? 0;
      foods.set(foodId, {
        foodId,
        food: foodName,
        grams: before + grams * factor,
        poured: role === 'liquid' || (foods.get(foodId)?.poured ?? false),
        aisle: aisleOf(foodId),
      });
    }
  }
  return [...foods.values()].sort((a, b) => b.grams - a.grams);
}
