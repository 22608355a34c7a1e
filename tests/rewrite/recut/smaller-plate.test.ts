import { describe, expect, it } from 'vitest';
import type { Family, Plan } from '../../../engine/model.ts';
import { isSavouryPlate, isSmallerMeal } from '../../../engine/rewrite/recut/smaller-plate.ts';

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
