/** Dose of gum or husk from the gluten deficit: rule B0 + (B1 - B0) x D, with B0 the least worth adding. */
import type { FamilyLimits } from '../data/schemas.ts';
import type { Dish, Section } from '../dish/dish.ts';

/** Share of the flour that may be replaced before a dough with enough gluten misses any (common practice, no source). */
export const UNMISSED = 0.4;

/** Egg, percent of the flour, that holds a batter by itself: one to 150 g (common practice, no source). */
const EGG_HOLDS = 33;

/** Egg of a section's original dough, percent of the flour. */
export const eggPct = (dish: Dish, section: Section): number =>
  dish.parts.reduce(
    (sum, p) =>
      sum +
      (p.section === section.id && p.role === 'egg' ? (100 * p.grams) / section.flourBase : 0),
    0,
  );

/** Whether egg holds a batter or short dough, so that no gum is missed in it. */
export const isHeldByEgg = (dish: Dish, section: Section): boolean =>
  ['QB', 'CK', 'CO'].includes(section.limits.share ?? '') && eggPct(dish, section) >= EGG_HOLDS;

/**
 * Least and largest dose of a binder, percent of the flour base. `gluten` is g per 100 g flour base,
 * `was` the same before the change: what the original lacked already, it did without.
 * `replaced` the share (0..1) of the flour replaced. Zero when nothing is replaced or the family
 * takes no such binder, or so little that nothing is missing. Doses: Encina-Zelada 2018, Torres-Perez 2024; rest common practice, no source.
 */
export function binderDose(
  limits: FamilyLimits,
  binder: string,
  state: { gluten: number; replaced: number; was?: number },
): { least: number; most: number } {
  const doses = limits.binder[binder];
  if (!doses || state.replaced <= 0) return { least: 0, most: doses?.cap ?? 0 };
  const { least: low, most: high, cap } = doses;
  const ideal = limits.gluten?.min ?? 0;
  const deficit =
    ideal > 0
      ? Math.min(1, Math.max(0, (Math.min(ideal, state.was ?? ideal) - state.gluten) / ideal))
      : 0;
  const isSure = !limits.binderAlways || state.gluten >= ideal;
  if (isSure && deficit === 0 && state.replaced <= UNMISSED) return { least: 0, most: cap };
  const gel = limits.binderLift * state.replaced;
  return { least: Math.min(cap, low + gel + (high - low) * deficit), most: cap };
}
