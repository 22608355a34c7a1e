/** Tells from a record's own energy whether its carbohydrate includes fibre. */
import type { CarbohydrateBasis, Composition } from '../model.ts';

/**
 * `total` or `available` when exactly one of them explains the stated energy within 5 kcal or 5 %
 * (factors of Reg. (EU) 1169/2011 Annex XIV), else null. Needs at least 5 g fibre per 100 g.
 */
export function basisByEnergy(per100g: Composition): 'total' | 'available' | null {
  const { energyKcal, proteinG, fatG, carbohydrateG, fiberG } = per100g;
  if (energyKcal === null || proteinG === null || fatG === null) return null;
  if (carbohydrateG === null || fiberG === null || fiberG < 5) return null;
  const rest = 4 * proteinG + 9 * fatG + 2 * fiberG;
  const near = (kcal: number): boolean =>
    Math.abs(kcal - energyKcal) <= Math.max(5, 0.05 * energyKcal);
  const total = near(rest + 4 * (carbohydrateG - fiberG));
  const available = near(rest + 4 * carbohydrateG);
  if (total === available) return null;
  return total ? 'total' : 'available';
}

/** The stated basis, or the one the energy tells, or `unknown`. */
export function settledBasis(basis: CarbohydrateBasis, per100g: Composition): CarbohydrateBasis {
  return basis === 'unknown' ? (basisByEnergy(per100g) ?? 'unknown') : basis;
}
