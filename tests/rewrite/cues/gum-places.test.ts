/** Gum for flour: mixed dry or into fat before anything is hot, and judged once it has thickened. */
import { describe, expect, it } from 'vitest';
import { isInFat, thickenedAt } from '../../../engine/rewrite/cues/stove/gum-places.ts';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

function told(steps: string[], kept: number): string {
  const recipe = makeRecipe('Cheese sauce', ['40 g flour', '50 g butter', '500 ml milk'], steps);
  const read = understand(recipe);
  const plan = makePlan('thickened-sauce', read, [
    { key: '0', kept, to: [['xanthan-gum', 2, 'thickener']] },
  ]);
  return rewriteRecipe(recipe, read, plan, { foods, region: 'us' })
    .steps.map(({ after }) => after)
    .join('\n');
}

describe('gum beside the butter', () => {
  it('is waited for once the sauce is thick, not while the butter melts', () => {
    const text = told(
      ['Melt the butter. Sprinkle in the flour. Pour in the milk and simmer until thick. Season.'],
      0,
    );
    expect(text).toMatch(
      /simmer until thick\. It needs no cooking out, and thickens fully only after 5-10 minutes\. Season/,
    );
  });

  it('is stirred into fat first where the page has none before it', () => {
    const text = told(['Sprinkle the flour over the milk, whisk and simmer until thick.'], 0);
    expect(text).toMatch(/^Stir .*xanthan gum into the fat/);
  });
});

describe('gum in place of all flour', () => {
  it('is not told into fat where the page puts it there', () => {
    const text = told(['Melt the butter, whisk in the flour.', 'Pour in the milk.'], 0);
    expect(text).toMatch(/^Melt the butter/);
    expect(isInFat('Melt the butter. Whisk in the flour.', { id: 'gum-into-fat' })).toBe(true);
    expect(isInFat('Whisk in the flour. Add the butter.', { id: 'gum-into-fat' })).toBe(false);
  });

  it('is judged behind the sentence that thickens, soon after', () => {
    expect(thickenedAt(['Add the flour. Stir.', 'Simmer until thick. Serve.'], 0)).toEqual({
      at: 1,
      behind: 0,
    });
    expect(thickenedAt(['Add the flour. Stir.', 'Serve.'], 0)).toEqual({ at: 0, behind: 1 });
  });
});

it('both kinds of a food are all of them', () => {
  const recipe = makeRecipe(
    'Chili',
    ['400 g canned kidney beans', '400 g canned pinto beans', '500 g beef'],
    ['Add the beef and both kinds of beans.'],
  );
  const read = understand(recipe);
  const plan = makePlan('other', read, [
    { key: '0', kept: 250, to: [] },
    { key: '1', kept: 120, to: [] },
  ]);
  const [step] = rewriteRecipe(recipe, read, plan, { foods, region: 'us' }).steps;
  expect(step?.after).not.toMatch(/both kinds of beans, /);
});
