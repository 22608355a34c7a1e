/** The figures of a kept recipe for its loaf in a list. */
import type { SavedRecipe } from '../../store/records.ts';
import type { RowFigures } from '../figures/loaf/row-loaf.tsx';

/** Null when its result has to be worked out again, or nothing of it could be counted. */
export function rowFiguresOf({ adaptation }: Pick<SavedRecipe, 'adaptation'>): RowFigures | null {
  const before = adaptation?.before.perServing.netCarbsG;
  const after = adaptation?.after.perServing.netCarbsG;
  if (!adaptation || !before || !after) return null;
  return {
    beforeG: Math.max(0, before.best),
    afterG: Math.max(0, after.best),
    highG: after.high,
    budgetG: adaptation.goals.budgetG,
  };
}
