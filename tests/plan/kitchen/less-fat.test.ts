/** Flour of nuts lets go of fat and drinks little: what a baker takes out with it. Invented recipes. */
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../engine/model.ts';
import { type Part, plan, type Sample } from '../build.ts';

const bake = (over: Partial<Sample> & { parts: readonly Part[] }): Sample => ({
  title: 'Plain sheet cake',
  family: 'cake',
  servings: 12,
  ...over,
});

const gramsOf = ({ items }: Plan, key: string, foodId: string): number =>
  items.filter((i) => i.key === key && i.foodId === foodId).reduce((sum, i) => sum + i.grams, 0);

const CAKE: readonly Part[] = [
  ['all-purpose-flour', 250],
  ['sugar', 180],
  ['butter', 180],
  ['egg', 150],
  ['milk-whole', 180],
  ['baking-powder', 10],
];

describe('beside flour of nuts', () => {
  const reworked = plan(bake({ parts: CAKE }), { budgetG: 14 });
  const almond = gramsOf(reworked, '0', 'almond-flour');

  it('a cake has 3 g less butter for 10 g of it, to the next 5 g', () => {
    expect(almond).toBeGreaterThan(30);
    const less = 180 - gramsOf(reworked, '2', 'butter');
    expect(less).toBeGreaterThanOrEqual(0.3 * almond - 4);
    expect(less).toBeLessThanOrEqual(0.3 * almond + 4);
    const told = reworked.swaps.find(({ key }) => key === '2');
    expect(told?.why).toContain('nuts');
  });

  it('never loses more than a seventh of its butter, nor falls below 3 parts to 10 of flour', () => {
    const lean = plan(bake({ parts: CAKE.map((p) => (p[0] === 'butter' ? ['butter', 80] : p)) }), {
      budgetG: 14,
    });
    expect(gramsOf(lean, '2', 'butter')).toBeGreaterThanOrEqual(75);
  });

  it('keeps the butter where wheat stays, and the one that the user wants as it is', () => {
    const plain = plan(bake({ parts: CAKE }), { budgetG: 24 });
    expect(gramsOf(plain, '2', 'butter')).toBe(180);
    const pinned = plan(bake({ parts: CAKE }), { budgetG: 14, pinned: ['2'] });
    expect(gramsOf(pinned, '0', 'almond-flour')).toBeGreaterThan(30);
    expect(gramsOf(pinned, '2', 'butter')).toBe(180);
  });

  it('leaves a filling or frosting listed with it alone', () => {
    const filled = plan(bake({ parts: [...CAKE, ['butter', 200], ['powdered-sugar', 60]] }), {
      budgetG: 16,
    });
    expect(gramsOf(filled, '0', 'almond-flour')).toBeGreaterThan(30);
    expect(gramsOf(filled, '6', 'butter')).toBe(200);
    expect(gramsOf(filled, '2', 'butter')).toBeLessThan(180);
  });

  it('an unbaked base of almonds is bound with less butter than one of crumbs', () => {
    const cheesecake = bake({
      title: 'Chilled cheesecake',
      family: 'custard',
      servings: 8,
      steps: ['Crush the biscuits, mix with the butter and press into a tin for the base.'],
      parts: [
        ['graham-cracker', 150],
        ['butter', 90],
        ['cream-cheese', 500],
        ['sugar', 60],
        ['cream-heavy', 200],
      ],
    });
    const cold = plan(cheesecake, { budgetG: 9 });
    const nuts = gramsOf(cold, '0', 'almond-flour');
    expect(nuts).toBeGreaterThan(100);
    expect(gramsOf(cold, '1', 'butter')).toBeLessThanOrEqual(0.4 * nuts + 2.5);
    expect(gramsOf(cold, '1', 'butter')).toBeGreaterThanOrEqual(0.35 * nuts - 2.5);
  });

  it('a rich base loses as much of its butter as the almonds do not need', () => {
    const rich = bake({
      title: 'Chilled lime cheesecake',
      family: 'custard',
      servings: 10,
      steps: ['Mix the crumbs with the butter and press into a tin for the base.'],
      parts: [
        ['graham-cracker', 160],
        ['butter', 120],
        ['cream-cheese', 600],
        ['powdered-sugar', 70],
        ['cream-heavy', 250],
      ],
    });
    const cold = plan(rich, { budgetG: 8 });
    const nuts = gramsOf(cold, '0', 'almond-flour');
    expect(nuts).toBeGreaterThan(100);
    expect(gramsOf(cold, '1', 'butter')).toBeLessThanOrEqual(0.4 * nuts + 2.5);
  });

  it('a base that is sugared by itself is not sweetened twice', () => {
    const sugared = bake({
      title: 'Chilled berry cheesecake',
      family: 'custard',
      servings: 12,
      steps: ['Stir the crumbs with the sugar and the butter and press into a tin for the crust.'],
      parts: [
        ['graham-cracker', 170],
        ['sugar', 50],
        ['butter', 90],
        ['cream-cheese', 680],
        ['powdered-sugar', 75],
        ['cream-heavy', 250],
      ],
    });
    const cold = plan(sugared, { budgetG: 7 });
    const nuts = gramsOf(cold, '0', 'almond-flour');
    expect(nuts).toBeGreaterThan(100);
    const own = cold.items.filter(({ key, foodId }) => key === '0' && foodId !== 'almond-flour');
    expect(own.reduce((sum, { grams }) => sum + grams, 0)).toBe(0);
    const sweet = cold.items.filter(({ key }) => key === '1');
    expect(sweet.reduce((sum, { grams }) => sum + grams, 0)).toBeLessThanOrEqual(0.2 * nuts + 3);
    const filling = cold.items.filter(({ key }) => key === '4');
    expect(filling.reduce((sum, { grams }) => sum + grams, 0)).toBeGreaterThan(50);
  });

  it('a shaped dough is mixed with less milk', () => {
    const scones = bake({
      title: 'Tea scones',
      family: 'biscuit',
      servings: 8,
      parts: [
        ['all-purpose-flour', 260],
        ['butter', 100],
        ['milk-whole', 170],
        ['sugar', 25],
        ['baking-powder', 12],
      ],
    });
    const softer = plan(scones, { budgetG: 19 });
    const nuts = gramsOf(softer, '0', 'almond-flour');
    expect(nuts).toBeGreaterThan(45);
    const less = 170 - gramsOf(softer, '2', 'milk-whole');
    expect(less).toBeGreaterThanOrEqual(10);
    expect(less).toBeLessThanOrEqual(0.4 * nuts);
  });
});
