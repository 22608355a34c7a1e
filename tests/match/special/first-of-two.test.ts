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

describe('the first of two foods that share their last word', () => {
  test.each([
    ['1 graham cracker or cookie crust', 'pie-crust-graham'],
    ['2 6-serving graham cracker or shortbread crusts', 'pie-crust-graham'],
    ['1 10-slice graham cracker or biscuit crust', 'pie-crust-graham'],
  ])('takes it along, however many one is for: %s', (text, id) => {
    expect(foodOf(text)).toBe(id);
  });

  test('is left alone where it is eaten by itself', () => {
    expect(foodOf('12 graham crackers or cookies')).toBe('graham-cracker');
  });
});
