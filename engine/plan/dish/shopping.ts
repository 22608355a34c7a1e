/** Where a cook gets a food, and what is not sold where the user lives. */
import { hasTag } from '../../foods/tags.ts';
import type { Availability, Food, Goals, NetCarbRule } from '../../model.ts';

/** The user's own cupboard when it is known, else what nearly every kitchen has. */
export function availabilityOf(food: Food, { pantry }: Pick<Goals, 'pantry'>): Availability {
  if (pantry?.includes(food.id) || hasTag(food, 'cupboard')) return 'cupboard';
  return hasTag(food, 'speciality') ? 'speciality' : 'common';
}

/** Whether a food may be sold as one in the region whose labels the user reads. */
export const soldIn = (food: Food, { region }: Pick<NetCarbRule, 'region'>): boolean =>
  region !== 'eu' || !hasTag(food, 'not-in-eu');

/** Times as sweet as sugar from which a spoonful of sugar is less than a kitchen scale shows. Own choice. */
const PURE = 30;

/** An intense sweetener without a carrier: a fraction of a gram sweetens a dish. */
export const isPureSweetener = (food: Food): boolean => (food.function?.sweetness ?? 0) >= PURE;
