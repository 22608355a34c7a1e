/** Remarks that hold of what the page had. */
import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { type Change, foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

function told(lines: string[], steps: string[], changes: Change[], family = 'other'): string {
  const recipe = makeRecipe('A dish', lines, steps);
  const read = understand(recipe);
  const plan = makePlan(family as 'other', read, changes);
  return rewriteRecipe(recipe, read, plan, { foods, region: 'us' })
    .steps.map(({ after }) => after)
    .join('\n');
}

describe('a remark of the page', () => {
  it('on how its sheets lie goes with their number', () => {
    const steps = [
      'Place 5 lasagna noodles on top laying 4 vertically and 1 horizontally. Add cheese.',
    ];
    const sheets: Change[] = [{ key: '0', kept: 100, to: [['zucchini', 200]] }];
    const lines = ['10 lasagna noodles', '200 g cheddar cheese'];
    expect(told(lines, steps, sheets, 'pasta-dish')).not.toMatch(/vertically/);
    expect(told(lines, steps, [], 'pasta-dish')).toMatch(/laying 4 vertically and 1 horizontally/);
  });

  it('on a spoonful of flour more stays as the page has it', () => {
    const steps = [
      'Mix half of the flour with 200 g water, then the rest of the flour.',
      'If it sticks, add additional flour by the spoon.',
    ];
    const text = told(
      ['500 g flour', '350 g water'],
      steps,
      [
        {
          key: '0',
          kept: 250,
          to: [
            ['wheat-fibre-flour', 0],
            ['oat-fibre', 50],
            ['vital-wheat-gluten', 200],
          ],
        },
      ],
      'lean-yeast-bread',
    );
    expect(text).toMatch(/add additional flour by the spoon/);
  });
});
