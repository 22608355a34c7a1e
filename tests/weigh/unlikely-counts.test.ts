import { describe, expect, it } from 'vitest';
import { lineRecord } from '../../engine/cli/answers.ts';

const grams = (line: string): number | undefined => lineRecord(line).grams?.best;

describe('a weight in brackets behind a count', () => {
  it.each([
    ['3 to 4 (2 pound) chicken breasts', 907],
    ['10 medium (120 g, about 1½ cups) mushrooms', 116],
    ['5 (3 pounds) beef short ribs', 993],
  ])('%s is %d g', (line, best) => {
    expect(grams(line)).toBeGreaterThan(best * 0.97);
    expect(grams(line)).toBeLessThan(best * 1.03);
  });

  it.each([
    ['2 (1 pound) pork tenderloins', 907],
    ['4 (9 oz) trout', 1021],
    ['3 (2 pound) chicken breasts, each tied', 2722],
  ])('%s is %d g as it says', (line, best) => {
    expect(grams(line)).toBeGreaterThan(best * 0.97);
    expect(grams(line)).toBeLessThan(best * 1.03);
  });
});
