/** How much of the alcohol put into a dish is still there when it is eaten. */
import type { Family } from '../model.ts';
import data from './data/alcohol.json' with { type: 'json' };

/** A word that begins with one of these. */
const begun = (words: readonly string[]): RegExp =>
  new RegExp(`(?<!\\p{L})(?:${words.join('|')})`, 'iu');
const HEATS = begun(data.heats);
const CHILLS = begun(data.chills);

/**
 * Minutes that a dish is on the heat: what its page states for cooking, null where its steps chill it and
 * none of them heats anything, whatever the page calls the time in between.
 */
export function minutesOnHeat(steps: readonly string[], stated: number | null): number | null {
  const method = steps.join(' ');
  return CHILLS.test(method) && !HEATS.test(method) ? null : stated;
}

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
