import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { withStatedWeights } from '../../../engine/rewrite/wording/stated-weights.ts';
import { foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

describe('weights that a page states of its dough', () => {
  it.each([
    [
      'Divide the dough in two (about 500 g each).',
      1.1,
      'Divide the dough in two (about 550 g each).',
    ],
    ['That is 640 grams per pan of batter.', 0.9, 'That is 575 grams per pan of batter.'],
    ['Divide the dough in two (500 g each).', 1.03, 'Divide the dough in two (500 g each).'],
    ['Take two chicken breasts, 180 g each.', 1.5, 'Take two chicken breasts, 180 g each.'],
  ])('%s times %d', (text, factor, now) => {
    expect(withStatedWeights(text, factor)).toBe(now);
  });

  it('go by the mass of the plan', () => {
    const loaf = makeRecipe(
      'Two loaves',
      ['600 g bread flour', '400 g water'],
      ['Mix the flour and water.', 'Divide the dough in two, 500 g each.'],
    );
    const read = understand(loaf);
    const plan = makePlan('lean-yeast-bread', read, [
      { key: '0', kept: 300, to: [['vital-wheat-gluten', 300]] },
      { key: '1', kept: 500, to: [] },
    ]);
    const { steps } = rewriteRecipe(loaf, read, plan, { foods, region: 'eu' });
    expect(steps.map(({ after }) => after).join(' ')).toMatch(/in two, 550 g each/);
  });
});
