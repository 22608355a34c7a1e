/** Recipes far longer than any kitchen's: the plan still ends, at the same place every time, and says when it was cut short. */
import { describe, expect, it } from 'vitest';
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

describe.each([20, 40, 150, 400])('%i carbohydrate lines', (lines) => {
  const sample = longRecipe(lines);

  it('end within a second', () => {
    plan(sample);
    const start = process.cpuUsage();
    const result = plan(sample);
    const { user, system } = process.cpuUsage(start);
    expect((user + system) / 1000).toBeLessThan(1000);
    expect(result.items.length).toBeGreaterThan(0);
  });

  it('lower the net carbs and come out the same twice', () => {
    const result = plan(sample);
    const before = tallyOf(sample).perServing.netCarbsG?.best ?? 0;
    const after = tallyAfter(sample, result).perServing.netCarbsG?.best ?? 0;
    expect(after).toBeLessThan(0.8 * before);
    expect(plan(sample)).toEqual(result);
  });
});
