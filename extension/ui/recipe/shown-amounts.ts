/** Amounts as the user wants to read them: the recipe's own way, metric or US, more or less of it. */
import { type System, scaledLines } from '../../../engine/index.ts';
import type { Adaptation, Food } from '../../../engine/model.ts';
import { digitsOf } from '../figures/format.ts';

export interface AmountWish {
  /** `page` leaves the lines as they were written. */
  system: System | 'page';
  factor: number;
}

/** The reworked line of each row by its key; null where the line stands as it is. */
export function wishedTexts(
  adaptation: Adaptation,
  { system, factor }: AmountWish,
  ownFoods: readonly Food[],
): Map<string, string> | null {
  if (system === 'page' && factor === 1) return null;
  const lines = scaledLines(adaptation, factor, system === 'page' ? 'metric' : system, {
    ownFoods,
  });
  return new Map(lines.map(({ key, text }) => [key, text]));
}

/** '×2', '×½', '×1.4'; '×1,4' where the language writes it so. */
export function factorText(factor: number): string {
  if (factor === 0.5) return '×½';
  return `×${digitsOf(factor, 0, 2)}`;
}
