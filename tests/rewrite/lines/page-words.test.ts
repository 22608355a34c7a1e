/** What of the page's words stays behind a line's new amount. Invented lines. */
import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { type Change, foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

function written(line: string, change: Omit<Change, 'key'>): string[] {
  const recipe = makeRecipe('Supper', [line], []);
  const read = understand(recipe);
  const plan = makePlan('other', read, [{ key: '0', ...change }]);
  return rewriteRecipe(recipe, read, plan, { foods, region: 'us' }).lines.map(
    ({ after }) => after ?? '',
  );
}

describe('a line in a new amount', () => {
  it('is of the juice where only that is weighed', () => {
    expect(written('1 lemon, juiced', { kept: 30, to: [] })).toEqual([
      expect.stringMatching(/^30 g \([^)]*\) lemon juice$/),
    ]);
    expect(written('1 lemon, zest and juiced', { kept: 30, to: [] })).toEqual([
      expect.stringMatching(/^30 g \([^)]*\) lemon juice, and the zest$/),
    ]);
  });

  it('has no words on another season, and none that send to the page’s notes', () => {
    const [beans = ''] = written('60 g baby lima beans, fresh (frozen if not in season)', {
      kept: 24,
      to: [],
    });
    expect(beans).not.toMatch(/season|frozen/);
    const [sugar = ''] = written('80 g coconut sugar, see notes for swaps', { kept: 40, to: [] });
    expect(sugar).toMatch(/coconut sugar$/);
  });

  it('keeps the order of the words in its name', () => {
    const [fries = ''] = written('570 g Quick Cook Straight Cut French Fries', {
      kept: 100,
      to: [],
    });
    expect(fries).toContain('Straight Cut French Fries');
  });

  it('has tablespoons and a rest of teaspoons where no single spoon is near', () => {
    expect(written('35 g cornstarch', { kept: 18, to: [] })).toEqual([
      '18 g (2 tbsp + ¾ tsp) cornstarch',
    ]);
    expect(written('60 g sugar', { kept: 41, to: [] })).toEqual([
      expect.stringMatching(/^41 g \((?:about )?3 tbsp \+ ¾ tsp\) sugar$/),
    ]);
  });
});
