import { describe, expect, it } from 'vitest';
import { adaptRecipe, DEFAULT_GOALS } from '../../../engine/index.ts';
import { carbBlocks } from '../../../extension/ui/figures/carb-blocks.ts';
import { doubtsOf } from '../../../extension/ui/recipe/lines/doubtful-lines.ts';
import { adaptedPage as adapted } from '../adapted.ts';

describe.each(['hearth-loaf.html', 'blueberry-muffins.html', 'weeknight-pasta.html'])(
  'what brings the carbs of %s',
  (page) => {
    const adaptation = adapted(page);
    const blocks = carbBlocks(adaptation);

    it.each(['before', 'after'] as const)('has blocks that add up to a serving %s', (which) => {
      const sum = blocks.reduce((total, block) => total + block[which], 0);
      expect(sum).toBeCloseTo(adaptation[which].perServing.netCarbsG?.best ?? Number.NaN, 1);
    });

    it('stands for every counted line once', () => {
      const counted = ['before', 'after'] as const;
      const keys = counted.flatMap((which) =>
        adaptation[which].contributions
          .filter(({ netCarbsG }) => (netCarbsG?.best ?? 0) > 0)
          .map(({ key }) => key),
      );
      const shown = blocks.flatMap((block) => block.keys);
      expect(new Set(shown)).toEqual(new Set(keys));
      expect(new Set(shown).size).toBe(shown.length);
    });

    it('names every block in words, the largest first', () => {
      for (const { name } of blocks) expect(name).not.toMatch(/^\d|>|^new\./);
      const sizes = blocks
        .filter(({ key }) => key !== 'small')
        .map((one) => Math.max(one.before, one.after));
      expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
    });
  },
);

describe('the least certain lines', () => {
  it('come uncounted first, then by share of the carbs', () => {
    const shares = doubtsOf(adapted('weeknight-pasta.html')).map(({ share }) => share ?? 2);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
  });

  it('keep a line that was put right', () => {
    const { recipe } = adapted('hearth-loaf.html');
    const corrections = { '0': { grams: 480 } };
    const adaptation = adaptRecipe(recipe, DEFAULT_GOALS, { corrections });
    expect(doubtsOf(adaptation).map(({ ingredient }) => ingredient.key)).toContain('0');
  });
});
