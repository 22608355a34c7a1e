/** Dose of gum or husk from the gluten deficit: rule B0 + (B1 - B0) x D, with B0 the least worth adding. */
import type { FamilyLimits } from '../data/schemas.ts';

/**
 * Least and largest dose of a binder, percent of the flour base. `gluten` is g per 100 g flour base,
 * `was` the same before the change: what the original lacked already, it did without.
 * `replaced` the share (0..1) of the flour replaced. Zero when nothing is replaced or the family
 * takes no such binder. Doses: Encina-Zelada 2018, Torres-Perez 2024; rest common practice, no source.
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
  const gel = limits.binderLift * state.replaced;
  return { least: Math.min(cap, low + gel + (high - low) * deficit), most: cap };
}
