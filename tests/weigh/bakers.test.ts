/** Lines as British, Australian and American bakers write them, each worked out by hand beforehand. */
import { describe, expect, test } from 'vitest';
import { foodTable } from '../../engine/foods/index.ts';
import { matchItem } from '../../engine/match/index.ts';
import { parseLine } from '../../engine/parse/index.ts';
import { type Region, weighItem } from '../../engine/weigh/index.ts';
import lines from './bakers-lines.json' with { type: 'json' };

const foods = foodTable();

/** Measures of one source differ from those of another by no more than this. */
const TOLERANCE = 0.08;

describe('bakers lines', () => {
  test('there are enough of them', () => {
    expect(lines.length).toBeGreaterThanOrEqual(150);
  });

  test.each(lines as [string, Region, string, number, string][])(
    '%s (%s): %s, %d g',
    (text, region, foodId, grams) => {
      const line = parseLine(text);
      const [item] = line.items;
      if (!item) throw new Error('the line names no food');
      const match = matchItem(item, line, { foods });
      expect(match?.foodId).toBe(foodId);
      const food = foods.byId(match?.foodId ?? '');
      const recipe = { title: '', steps: [], lines: [line] };
      const weight = weighItem(item, line, food, { region, recipe });
      expect(Math.abs((weight?.grams.best ?? 0) / grams - 1)).toBeLessThan(TOLERANCE);
    },
  );
});
