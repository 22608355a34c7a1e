/** Water that the new flour base holds, against the old: 70 % of the change at mixing, 30 % kept back to add by feel (common practice, no source). */

import type { FamilyLimits } from '../data/schemas.ts';
import { absorption, water } from '../dish/food-figures.ts';
import { lessLiquid } from './eggless-batter.ts';
import type { Amount } from './planned-masses.ts';
import { total } from './planned-masses.ts';

export interface WaterChange {
  /** g to add at mixing; negative to take away. */
  mixing: number;
  /** g to hold back and add by feel. */
  reserve: number;
}

/** Share of the changed water that goes in at mixing, the rest by feel (common practice, no source). */
const AT_MIXING = 0.7;
/** Largest change of water in doughs that bake dry, share of the flour base (common practice, no source). */
const DRY_DOUGH_SHIFT = 0.08;

const held = (a: Amount): number => (a.base || a.role === 'binder' ? absorption(a.food) : 0);
const free = (a: Amount): number => (a.base ? 0 : water(a.food));
const isBase = (a: Amount): number => (a.base ? 1 : 0);
/** Water of liquids and eggs, which makes up the hydration. */
export const hydrating = (a: Amount): number =>
  a.role === 'liquid' || a.role === 'egg' ? water(a.food) : 0;

/**
 * Change of water from before to after, clamped to the family's hydration. Zero outside doughs.
 */
export function waterChange(
  before: readonly Amount[],
  after: readonly Amount[],
  limits: FamilyLimits,
): WaterChange {
  const base = total(after, isBase);
  if (base <= 0) return { mixing: 0, reserve: 0 };
  const rise = total(after, held) - total(before, held);
  const brought = total(after, free) - total(before, free);
  const dry = limits.share === 'CO' || limits.share === 'CK';
  let mixing = (rise > 0 ? AT_MIXING * rise : rise) - brought;
  let reserve = rise > 0 && !dry ? (1 - AT_MIXING) * rise : 0;
  const less = lessLiquid(before, after);
  if (less > 0) mixing = Math.min(mixing, -less);
  else if (limits.share === 'CO') {
    const most = DRY_DOUGH_SHIFT * base;
    mixing = Math.max(-most, Math.min(most, mixing));
  }
  if (limits.hydration) {
    const now = total(after, hydrating);
    const was = total(before, hydrating);
    const low = Math.min(limits.hydration.min, (100 * was) / Math.max(total(before, isBase), 1e-9));
    const room = (limits.hydration.max / 100) * base - now;
    const least = (low / 100) * base - now;
    // The water of a syrup that went was the dough's own as well.
    mixing = Math.max(Math.min(mixing, Math.max(room, was - now, -brought)), Math.min(least, 0));
    reserve = Math.max(0, Math.min(reserve, room - mixing));
  }
  return { mixing, reserve };
}
