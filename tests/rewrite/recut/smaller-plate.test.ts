import { describe, expect, it } from 'vitest';
import type { Family, Ingredient, Plan, Tally } from '../../../engine/model.ts';
import {
  hasProtein,
  isSavouryPlate,
  isSmallerMeal,
  lightMeal,
} from '../../../engine/rewrite/recut/smaller-plate.ts';

const plan = (family: Family, ...foods: string[]): Plan =>
  ({
    family: { id: family },
    dough: null,
    items: foods.map((foodId) => ({ foodId })),
  }) as unknown as Plan;

describe('a plate that wants filling', () => {
  it('is one of a savoury dish', () => {
    expect(isSavouryPlate(plan('rice-dish', 'rice-white-dry', 'onion'))).toBe(true);
    expect(isSavouryPlate(plan('other', 'chicken-breast', 'honey'))).toBe(true);
    expect(isSavouryPlate(plan('rice-dish', 'rice-white-dry', 'black-beans-canned'))).toBe(true);
    expect(isSavouryPlate(plan('other', 'banana', 'milk-whole'))).toBe(false);
    expect(isSavouryPlate(plan('flatbread', 'bread-flour', 'garlic'))).toBe(false);
  });

  it('is smaller by a fifth or more', () => {
    expect(isSmallerMeal({ page: 4, now: 5 })).toBe(true);
    expect(isSmallerMeal({ page: 8, now: 9 })).toBe(false);
  });
});

describe('protein of a plate', () => {
  const tallied = (best: number): Tally =>
    ({ perServing: { proteinG: { low: best, best, high: best } } }) as unknown as Tally;
  const line = (match: object | null): Ingredient => ({ match }) as unknown as Ingredient;

  it('is enough from 20 g, and may be where a line is not known', () => {
    expect(hasProtein(tallied(28), [line({})])).toBe(true);
    expect(hasProtein(tallied(6), [line({})])).toBe(false);
    expect(hasProtein(tallied(6), [line({}), line(null)])).toBe(true);
  });
});

describe('a lighter meal', () => {
  it('is one below 350 kcal that has lost a quarter of what it had', () => {
    expect(lightMeal(503, 71)).toBe(70);
    expect(lightMeal(480, 344)).toBe(340);
    expect(lightMeal(400, 340)).toBeNull();
    expect(lightMeal(320, 120)).toBeNull();
    expect(lightMeal(800, 460)).toBeNull();
    expect(lightMeal(null, 200)).toBeNull();
  });
});
