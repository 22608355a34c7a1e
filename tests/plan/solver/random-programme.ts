/** Random recipes for property tests, drawn from the samples and varied. */
import * as fc from 'fast-check';
import type { Goals } from '../../../engine/model.ts';
import { DEFAULT_GOALS } from '../../../engine/model.ts';
import { readDish } from '../../../engine/plan/dish/read-dish.ts';
import { buildModel, type PlanModel } from '../../../engine/plan/model/plan-model.ts';
import { foods, ingredientsOf, type Part, type Sample } from '../build.ts';
import { SAMPLES } from '../samples.ts';

/** A sample with every mass stretched by 0.6 to 1.6 and another number of servings. */
export const randomSample: fc.Arbitrary<Sample> = fc
  .tuple(
    fc.nat(SAMPLES.length - 1),
    fc.array(fc.double({ min: 0.6, max: 1.6, noNaN: true }), { minLength: 12, maxLength: 12 }),
    fc.integer({ min: 2, max: 24 }),
  )
  .map(([at, factors, servings]) => {
    const sample = SAMPLES[at] as Sample;
    const parts = sample.parts.map(([id, grams, text], n): Part => {
      const mass = Math.max(0.5, Math.round(grams * (factors[n % factors.length] ?? 1) * 10) / 10);
      return text === undefined ? [id, mass] : [id, mass, text];
    });
    return { ...sample, parts, servings };
  });

/** The programme of a sample, in its own family, before any budget. */
export function modelOf(sample: Sample, goals: Partial<Goals> = {}): PlanModel {
  const dish = readDish(ingredientsOf(sample), {
    family: sample.family,
    servings: sample.servings,
    goals: { ...DEFAULT_GOALS, ...goals },
    foods,
  });
  return buildModel(dish);
}
