/** How much of the alcohol put into a dish is still there when it is eaten. */
import type { Family } from '../model.ts';
import data from './data/alcohol.json' with { type: 'json' };

/**
 * Share (0..1) of alcohol retained, USDA Table of Nutrient Retention Factors, Release 6. Without
 * cooking minutes the family decides; where nothing says the dish is heated, all of it stays.
 */
export function alcoholRetained(family: Family, minutes: number | null): number {
  if (data.uncookedFamilies.includes(family) && minutes === null) return 1;
  if (data.bakedFamilies.includes(family)) return data.bakedUnstirred25Min;
  const cooked = minutes ?? 15;
  let retained = data.offHeat;
  for (const row of data.simmered) if (cooked >= row.minutes) retained = row.retained;
  return retained;
}
