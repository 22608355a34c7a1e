/** Batters and short doughs as a baker would rework them: few changes, ordinary products, nothing for show. */
import { describe, expect, it } from 'vitest';
import type { Family } from '../../engine/model.ts';
import { foods, type Part, plan, type Sample } from './build.ts';

const bake = (title: string, family: Family, servings: number, parts: Part[]): Sample => ({
  title,
  family,
  servings,
  parts,
});

const MUFFINS = bake('Walnut muffins', 'quick-bread', 12, [
  ['all-purpose-flour', 280],
  ['sugar', 160],
  ['butter', 110],
  ['egg', 100],
  ['milk-whole', 200],
  ['walnuts', 60],
  ['baking-powder', 10],
]);

describe('a line of flour', () => {
  it.each([18, 15, 12, 8])('of a batter has one stand-in at a budget of %i g', (budgetG) => {
    const stand = plan(MUFFINS, { budgetG }).swaps.filter(({ key, to }) => key === '0' && to[0]);
    expect(stand.length).toBeLessThanOrEqual(1);
  });

  it('is replaced by what is easily bought, or by what is at home', () => {
    const rare = [
      'almond-flour-defatted',
      'resistant-wheat-starch',
      'oat-fibre',
      'egg-white-powder',
    ];
    const bought = plan(MUFFINS, { budgetG: 12 }).items.map(({ foodId }) => foodId);
    expect(bought).toContain('almond-flour');
    expect(bought.filter((id) => rare.includes(id))).toEqual([]);
    const pantry = ['resistant-wheat-starch'];
    const home = plan(MUFFINS, { budgetG: 12, pantry }).items.map(({ foodId }) => foodId);
    expect(home).toContain('resistant-wheat-starch');
  });

  it('of a dish without wheat is not replaced by wheat', () => {
    const breads = bake('Corn flatbreads', 'tortilla', 4, [
      ['masa-harina', 230],
      ['water', 350],
      ['salt', 3],
    ]);
    for (const budgetG of [30, 20, 15])
      for (const { foodId } of plan(breads, { budgetG }).items)
        expect(foods.byId(foodId)?.allergens ?? []).not.toContain('wheat');
  });
});

describe('what is left and what follows', () => {
  it('a crumb base without its last spoon of sugar', () => {
    const { items } = plan(
      bake('Berry cream slice', 'custard', 12, [
        ['graham-cracker', 200],
        ['butter', 100],
        ['sugar', 50],
        ['cream-cheese', 400],
        ['powdered-sugar', 150],
      ]),
      { budgetG: 12 },
    );
    for (const id of ['sugar', 'powdered-sugar']) {
      const left = items.find(({ foodId }) => foodId === id)?.grams ?? 0;
      expect(left === 0 || left >= 15, `${left} g ${id}`).toBe(true);
    }
  });

  it('milk of a batter is not exchanged for cream and water', () => {
    const { items } = plan(MUFFINS, { budgetG: 12 });
    expect(items.filter(({ key }) => key === '4').map(({ foodId }) => foodId)).toEqual([
      'milk-whole',
    ]);
  });

  it('no gum for a third of the flour, when gluten is left', () => {
    const { items } = plan(MUFFINS, { budgetG: 15 });
    expect(items.map(({ foodId }) => foodId)).not.toContain('xanthan-gum');
  });

  it('hard candy keeps the syrup that lets it set', () => {
    const brittle: Sample = {
      ...bake('Peanut brittle', 'candy', 20, [
        ['sugar', 200],
        ['corn-syrup', 170],
        ['peanuts', 290],
        ['butter', 10],
      ]),
      steps: ['Boil sugar and corn syrup to the hard crack stage, stir in the peanuts and butter.'],
    };
    expect(plan(brittle, { budgetG: 14 }).swaps).toEqual([]);
  });
});
