/** The last of a cake's sugar goes only where the budget is not met otherwise. Invented recipes. */
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../engine/model.ts';
import { type Sample, ways } from '../build.ts';

/** A loaf of much sugar for so many. */
const loaf = (servings: number): Sample => ({
  title: 'Courgette tea loaf',
  family: 'quick-bread',
  servings,
  steps: [
    'Beat the sugar, oil and eggs, fold in the flour and courgette.',
    'Bake in a loaf tin for an hour.',
  ],
  parts: [
    ['all-purpose-flour', 240],
    ['sugar', 220],
    ['vegetable-oil', 110],
    ['egg', 150],
    ['zucchini', 250],
    ['baking-powder', 9],
  ],
});

const chosen = (servings: number, budgetG: number): Plan => {
  const { plans, recommended } = ways(loaf(servings), { budgetG });
  const found = plans.find(({ way }) => way === recommended);
  if (!found) throw new Error(recommended);
  return found;
};

const sugarIn = ({ items }: Plan): number =>
  items.filter(({ foodId }) => foodId === 'sugar').reduce((sum, { grams }) => sum + grams, 0);

describe('the sugar of a loaf or cake', () => {
  it('keeps about a third where that is enough', () => {
    const plan = chosen(12, 21);
    expect(plan.met).toBe(true);
    expect(sugarIn(plan)).toBeGreaterThanOrEqual(0.25 * 220);
  });

  it('goes further where a slice would be too much', () => {
    const plan = chosen(6, 13);
    expect(plan.met).toBe(true);
    expect(sugarIn(plan)).toBeLessThan(0.2 * 220);
    const sweet = plan.items.filter(({ foodId }) => foodId.includes('allulose'));
    expect(sweet.reduce((sum, { grams }) => sum + grams, 0)).toBeGreaterThan(0.6 * 220);
  });
});
