import { describe, expect, test } from 'vitest';
import { foodTable } from '../../../engine/foods/index.ts';
import { matchItem } from '../../../engine/match/index.ts';
import { parseLine } from '../../../engine/parse/index.ts';

const foods = foodTable();

function foodOf(text: string): string | undefined {
  const line = parseLine(text);
  const [item] = line.items;
  return item && matchItem(item, line, { foods })?.foodId;
}

describe('what a food was seasoned with', () => {
  test.each([
    ['1/3 cup sunflower seeds toasted with salt', 'sunflower-seeds'],
    ['1/3 cup Mill Lane pepitas roasted with sea salt', 'pumpkin-seeds'],
    ['2 cups broth simmered with salt', 'chicken-stock'],
    ['60 g pecans toasted with black pepper', 'pecans'],
  ])('is not the food: %s', (text, id) => {
    expect(foodOf(text)).toBe(id);
  });

  test('is kept in names of their own', () => {
    expect(foodOf('2 tbsp peanut butter with salt')).toBe('peanut-butter');
    expect(foodOf('1 cup Millbrook measure for measure gluten-free flour (sifted)')).toBe(
      'gluten-free-flour-blend',
    );
    expect(foodOf('1 cup cup-for-cup gluten free flour')).toBe('gluten-free-flour-blend');
    expect(foodOf('1 tsp salt')).toBe('salt');
  });
});

test('a citrus fruit for juicing is its juice', () => {
  expect(foodOf('1 lemon for juicing')).toBe('lemon-juice');
  expect(foodOf('2 limes, for juice and zest')).toBe('lime-juice');
  expect(foodOf('1 lemon, for serving')).toBe('lemon');
});
