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

  it('is tablespoons and teaspoons from three teaspoons on', () => {
    expect(written('sugar', 8.4)).toBe('8.4 g (2 tsp)');
    expect(written('sugar', 13.6)).toBe('13.6 g (1 tbsp + ¼ tsp)');
    expect(written('sugar', 23)).toBe('23 g (1 tbsp + 2½ tsp)');
    expect(written('sugar', 18.9)).toBe('18.9 g (1½ tbsp)');
    expect(amountText(foods.byId('sugar') as never, 23, 'au')).toBe('23 g (5½ tsp)');
  });

  it('is a cup with spoons where no one measure is near', () => {
    expect(written('sugar', 125)).toBe('125 g (½ cup + 2 tbsp)');
    expect(written('sugar', 100)).toBe('100 g (½ cup)');
    expect(amountText(foods.byId('sugar') as never, 125, 'uk')).toBe('125 g');
  });

  it('is grams where it is no spoon at all', () => {
    expect(written('cinnamon', 0.1)).toBe('0.1 g');
  });
});
