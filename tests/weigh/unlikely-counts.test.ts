import { describe, expect, it } from 'vitest';
import { lineRecord } from '../../engine/cli/answers.ts';

const grams = (line: string): number | undefined => lineRecord(line).grams?.best;

describe('counts that would make a mountain of food', () => {
  it.each([
    ['450 potatoes, peeled', 450],
    ['600 vegetable stock', 600],
    ['3 to 4 (2 pound) chicken breasts', 907],
    ['10 medium (120 g, about 1½ cups) mushrooms', 116],
    ['5 (3 pounds) beef short ribs', 993],
  ])('%s is %d g', (line, best) => {
    expect(grams(line)).toBeGreaterThan(best * 0.97);
    expect(grams(line)).toBeLessThan(best * 1.03);
  });

  it.each([
    ['48 eggs', 2400],
    ['2 (1 pound) pork tenderloins', 907],
    ['4 (9 oz) trout', 1021],
    ['60 almonds', 72],
    ['3 (2 pound) chicken breasts, each tied', 2722],
  ])('%s is %d g as it says', (line, best) => {
    expect(grams(line)).toBeGreaterThan(best * 0.97);
    expect(grams(line)).toBeLessThan(best * 1.03);
  });

  it('says how the number was read', () => {
    expect(lineRecord('450 potatoes, peeled').notes.join()).toContain('taken as grams');
  });
});
