/** The word for a verdict: one choice for every screen, export and the command line. */
import type { Interval, MissingLine, Verdict, VerdictWord } from '../../model.ts';

/** What comes to no more than this in all is within the scatter of the figures, g. Own choice. */
const SLIGHT_G = 2;

/**
 * What is missing may take a serving past the budget, or nothing is known of it. What is eaten beside
 * the dish by choice is named, and so is a spoon of garnish; neither makes the answer unknown.
 */
function mayGoPast(counted: Interval, budgetG: number, missing: readonly MissingLine[]): boolean {
  const inDish = missing.filter(({ beside }) => !beside);
  const most = inDish.reduce((sum, { netCarbsG }) => sum + (netCarbsG?.high ?? 0), 0);
  return (
    inDish.some(({ netCarbsG }) => netCarbsG === null) ||
    (most > SLIGHT_G && counted.best + most > budgetG)
  );
}

/** What is eaten beside a dish that fits by itself, where the least of it takes a serving past the budget. */
export function pastWith(verdict: Verdict): MissingLine[] {
  if (verdict.state !== 'fitsAsCounted' || verdict.netCarbsG === null) return [];
  const beside = verdict.missing.filter((one) => one.beside);
  const least = beside.reduce((sum, { netCarbsG }) => sum + (netCarbsG?.low ?? 0), 0);
  return least > 0 && verdict.netCarbsG.best + least > verdict.budgetG ? beside : [];
}

/** Whether a dish that fits by itself is past the budget with the least of what is eaten beside it. */
export const goesPastWithIt = (verdict: Verdict): boolean => pastWith(verdict).length > 0;

/** The verdict's state, but no plain 'fits' where what is missing, or eaten with it, changes the answer. */
export function verdictWord(verdict: Verdict): VerdictWord {
  if (verdict.state !== 'fitsAsCounted') return verdict.state;
  const { netCarbsG, budgetG, missing } = verdict;
  if (netCarbsG === null || mayGoPast(netCarbsG, budgetG, missing)) return 'cannotBeTold';
  return goesPastWithIt(verdict) ? 'fitsAlone' : 'fitsAsCounted';
}
