/** How large a recipe may be printed so that it stays on one sheet. */
import type { Adaptation } from '../../../engine/model.ts';

export type PaperSize = 'large' | 'middle' | 'small';

/** Letters of a step's text that take as much of the sheet as one ingredient, and as the gap behind a step. */
const LINE_LETTERS = 60;
const GAP_LETTERS = 30;

/** Letters up to which a recipe fits one A4 or Letter sheet in each size of print: tried on paper. */
const MOST: readonly [size: PaperSize, letters: number][] = [
  ['large', 1900],
  ['middle', 2500],
];

export function paperSize({ lines, steps }: Pick<Adaptation, 'lines' | 'steps'>): PaperSize {
  const letters =
    LINE_LETTERS * lines.length +
    steps.reduce((sum, { after }) => sum + after.length + GAP_LETTERS, 0);
  return MOST.find(([, most]) => letters <= most)?.[0] ?? 'small';
}
