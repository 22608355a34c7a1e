import { describe, expect, it } from 'vitest';
import type { SavedRecipe } from '../../../extension/store/records.ts';
import { replanAll, replanned } from '../../../extension/ui/kept/replan.ts';
import { adaptedText } from '../adapted.ts';

const LOAF =
  'Loaf\n\n500 g bread flour\n370 g water\n10 g salt\n7 g dry yeast\n\nMix.\nBake.\n\nServes 12';
const adaptation = adaptedText(LOAF);
const { recipe, goals, corrections } = adaptation;
const saved: SavedRecipe = {
  recipe,
  goals,
  corrections,
  adaptation,
  id: 'loaf',
  name: '',
  worked: false,
  note: '',
  tags: [],
  savedAt: 1,
  updatedAt: 1,
  auto: false,
  deletedAt: null,
  url: '',
};

describe('a kept recipe at another budget', () => {
  it('is told in words before anything is written', () => {
    const { next, text } = replanned(saved, 10, {});
    expect(text).toContain('budget 10 g, it was 15 g');
    expect(text).toMatch(/g (more|less) /);
    expect(next?.work.goals.budgetG).toBe(10);
    expect(next?.work.adaptation.after.perServing.netCarbsG?.best).toBeLessThanOrEqual(10.05);
    expect(saved.goals.budgetG).toBe(15);
  });

  it('that has it already stays', () => {
    expect(replanned(saved, 15, {})).toMatchObject({ next: null });
  });

  it('comes one after the other', async () => {
    const counts: number[] = [];
    const all = await replanAll(
      [saved, saved],
      12,
      () => ({}),
      (done) => counts.push(done),
    );
    expect(all).toHaveLength(2);
    expect(counts).toEqual([1, 2]);
  });
});
