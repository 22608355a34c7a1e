/** Recipes far longer than any kitchen's: the plan still ends, at the same place every time, and says when it was cut short. */
import { describe, expect, it } from 'vitest';
import { growthOf, MOST_GROWTH } from '../faults/growth.ts';
import { type Part, plan, type Sample, tallyAfter, tallyOf } from './build.ts';

/** Foods with carbohydrate that have stand-ins, in turn. */
const FOODS = [
  'rice-white-dry',
  'potato',
  'all-purpose-flour',
  'sugar',
  'pasta-dry',
  'cornstarch',
  'breadcrumbs-dry',
  'honey',
  'bread-flour',
  'rolled-oats',
  'brown-sugar',
  'couscous-dry',
];

const longRecipe = (lines: number): Sample => ({
  title: 'Everything bake',
  servings: lines,
  family: 'other',
  parts: Array.from(
    { length: lines },
    (_, at): Part => [FOODS[at % FOODS.length] as string, 40 + ((at * 7) % 60)],
  ),
});

it('the time of a plan grows no faster than its lines', () => {
  const growth = growthOf({ made: longRecipe, run: plan, from: 50, doublings: 3 });
  expect(growth).toBeLessThan(MOST_GROWTH);
});

describe.each([20, 40, 150, 400])('%i carbohydrate lines', (lines) => {
  const sample = longRecipe(lines);

  it('lower the net carbs and come out the same twice', () => {
    const result = plan(sample);
    expect(result.items.length).toBeGreaterThan(0);
    const before = tallyOf(sample).perServing.netCarbsG?.best ?? 0;
    const after = tallyAfter(sample, result).perServing.netCarbsG?.best ?? 0;
    expect(after).toBeLessThan(0.8 * before);
    expect(plan(sample)).toEqual(result);
  });
});
