import { describe, expect, it } from 'vitest';
import { amountText } from '../../../engine/rewrite/lines/written-amounts.ts';
import { foods } from '../fixtures.ts';

const written = (id: string, grams: number): string => {
  const food = foods.byId(id);
  return food === null ? '' : amountText(food, grams, 'us');
};

describe('an amount as it is written', () => {
  it('is the smallest spoon where a scale shows nothing', () => {
    expect(written('cinnamon', 0.3)).toBe('⅛ tsp (0.3 g)');
    expect(written('cinnamon', 0.35)).toBe('⅛ tsp (0.35 g)');
  });

  it('is grams where it is no spoon at all', () => {
    expect(written('cinnamon', 0.1)).toBe('0.1 g');
  });
});
