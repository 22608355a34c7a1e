/** What foods are called to those who read another language: what they are, never what they are good for. */
import { describe, expect, it } from 'vitest';
import { foodTable } from '../../../engine/foods/index.ts';
import { foodNameIn } from '../../../engine/match/languages/display-names.ts';

const LANGUAGES = ['de', 'en', 'es', 'fr', 'it', 'nl', 'pt', 'sv'];

/** Claims of few carbohydrates in these languages (the annex of Regulation (EC) No 1924/2006 knows none; from memory). */
const FEW_CARBS =
  /low[- ]?carb|\bketo|kohlenhydratarm|pauvres? en glucides|baj[oa]s? en (?:hidratos|carb)|poc(?:hi|os) (?:carboidrati|hidratos)|koolhydraatarm|kolhydratreducera|kulhydratreducere|karbohydratreduser/i;

describe('names in other languages', () => {
  it.each(LANGUAGES)('claim in no food that it has few carbohydrates: %s', (language) => {
    const names = foodTable().foods.flatMap(({ id }) => foodNameIn(language, id) ?? []);
    expect(names.length).toBeGreaterThan(500);
    expect(names.filter((name) => FEW_CARBS.test(name))).toEqual([]);
  });
});
