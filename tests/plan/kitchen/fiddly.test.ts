/** Amounts that a cook would not bother to change, and water that a part misses. Invented recipes. */
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../engine/model.ts';
import { plan, type Sample } from '../build.ts';

const gramsOf = ({ items }: Plan, key: string, foodId: string): number =>
  items.filter((i) => i.key === key && i.foodId === foodId).reduce((sum, i) => sum + i.grams, 0);

describe('a pot, a fruit and a spoon of milk', () => {
  const loaf: Sample = {
    title: 'Yogurt loaf',
    family: 'quick-bread',
    servings: 10,
    parts: [
      ['all-purpose-flour', 250],
      ['sugar', 200],
      ['vegetable-oil', 100],
      ['yogurt-plain', 125],
      ['egg', 150],
      ['baking-powder', 14],
    ],
  };

  it('goes in whole', () => {
    const reworked = plan(loaf, { budgetG: 15 });
    expect(gramsOf(reworked, '0', 'almond-flour')).toBeGreaterThan(40);
    expect(gramsOf(reworked, '3', 'yogurt-plain')).toBe(125);
  });

  it('so does the juice of one lemon in a cheesecake', () => {
    const cheesecake: Sample = {
      title: 'Chilled lemon cheesecake',
      family: 'custard',
      servings: 8,
      steps: ['Beat the cream cheese with the icing sugar and the lemon juice, and chill.'],
      parts: [
        ['cream-cheese', 500],
        ['powdered-sugar', 150],
        ['lemon-juice', 48, 'Juice of 1 lemon'],
        ['cream-heavy', 250],
      ],
    };
    const reworked = plan(cheesecake, { budgetG: 8 });
    expect(gramsOf(reworked, '1', 'powdered-sugar')).toBeLessThan(100);
    expect(gramsOf(reworked, '2', 'lemon-juice')).toBe(48);
  });

  it('no other berry is mixed with the one of the title for a gram', () => {
    const muffins: Sample = {
      title: 'Blueberry muffins',
      family: 'quick-bread',
      servings: 12,
      parts: [
        ['all-purpose-flour', 250],
        ['sugar', 150],
        ['butter', 100],
        ['egg', 100],
        ['milk-whole', 180],
        ['blueberries', 250],
        ['baking-powder', 12],
      ],
    };
    for (const budgetG of [12, 15, 18]) {
      const berries = plan(muffins, { budgetG }).items.filter(({ key }) => key === '5');
      expect(berries.map(({ foodId }) => foodId)).toEqual(['blueberries']);
    }
  });
});

describe('water', () => {
  it('of a syrup that gives way to a dry sweetener is made up for', () => {
    const cake: Sample = {
      title: 'Oat tea cake',
      family: 'cake',
      servings: 8,
      parts: [
        ['oat-flour', 90],
        ['maple-syrup', 230],
        ['egg', 150],
        ['yogurt-greek', 120],
        ['butter', 60],
        ['baking-powder', 8],
      ],
    };
    const reworked = plan(cake, { budgetG: 15, excludedFoods: ['allulose-syrup'] });
    const syrup = 230 - gramsOf(reworked, '1', 'maple-syrup');
    expect(syrup).toBeGreaterThan(80);
    const water = reworked.items.filter(({ foodId }) => foodId === 'water');
    expect(water.reduce((sum, { grams }) => sum + grams, 0)).toBeGreaterThanOrEqual(0.2 * syrup);
  });

  it('is cut beside the flour that changed, not where a filling is boiled', () => {
    const pie: Sample = {
      title: 'Squash pie',
      family: 'pie-crust',
      servings: 16,
      parts: [
        ['all-purpose-flour', 200],
        ['butter', 100],
        ['water', 50],
        ['sugar', 50],
        ['pumpkin-canned', 500],
        ['water', 120],
        ['brown-sugar', 120],
        ['egg', 100],
      ],
    };
    const reworked = plan(pie, { budgetG: 10 });
    expect(gramsOf(reworked, '0', 'almond-flour')).toBeGreaterThan(30);
    expect(gramsOf(reworked, '5', 'water')).toBe(120);
  });
});
