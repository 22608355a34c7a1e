/** The food files as they are bundled: sound by their schema, and small. */
import { readdirSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { BUILT_IN_FOODS, FOOD_FILES } from '../../engine/foods/built-in.ts';
import functions from '../../engine/foods/data/function.json' with { type: 'json' };
import { foodFromRow } from '../../engine/foods/food-of-row.ts';
import { FoodFile } from '../../engine/foods/food-row.ts';
import { FoodFunction } from '../../engine/model.ts';

const DATA = new URL('../../engine/foods/data/', import.meta.url);

const functionOf = (id: string): FoodFunction | null => {
  const written = (functions as Record<string, unknown>)[id];
  return written === undefined ? null : FoodFunction.parse(written);
};

describe('the bundled food files', () => {
  it('keep to their schema, which fills in the same defaults', () => {
    const checked = FOOD_FILES.flatMap((file) => {
      const { group, foods } = FoodFile.parse(file);
      return foods.map((row) => foodFromRow(row, group, functionOf(row.id)));
    });
    expect(BUILT_IN_FOODS).toEqual(checked);
  });

  it('are all in the table', () => {
    const names = readdirSync(DATA);
    expect(names).toEqual(expect.arrayContaining(['function.json', 'tags.json']));
    expect(FOOD_FILES.length).toBe(names.length - 2);
  });

  it('take at most 150 KB gzipped', () => {
    const text = readdirSync(DATA)
      .map((name) => JSON.stringify(JSON.parse(readFileSync(new URL(name, DATA), 'utf8'))))
      .join('\n');
    expect(gzipSync(text, { level: 9 }).length).toBeLessThanOrEqual(150_000);
  });
});
