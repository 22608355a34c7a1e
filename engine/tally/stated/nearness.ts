/** How far a page's figure may be from ours. */
import type { Nutrient } from '../../model.ts';

/** Figures of one column: g, kcal for energy, mg for sodium. */
export type Column = Partial<Record<Nutrient, number>>;

export type Nearness = 'close' | 'somewhat' | 'differs';

/** Apart by this much or this share of the larger: common practice, no source. Energy and sodium: own choice. */
const CLOSE_SHARE = 0.15;
const SOMEWHAT_SHARE = 0.3;
const CLOSE_BY: Partial<Record<Nutrient, number>> = { energyKcal: 25, sodiumMg: 75 };
const CLOSE_BY_G = 3;

/** `theirs` and `ours` in the nutrient's own unit. */
export function nearnessOf(nutrient: Nutrient, theirs: number, ours: number): Nearness {
  const apart = Math.abs(theirs - ours);
  const share = apart === 0 ? 0 : apart / Math.max(theirs, ours);
  if (apart <= (CLOSE_BY[nutrient] ?? CLOSE_BY_G) || share <= CLOSE_SHARE) return 'close';
  return share <= SOMEWHAT_SHARE ? 'somewhat' : 'differs';
}
