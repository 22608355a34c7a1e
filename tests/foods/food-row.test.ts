import { describe, expect, it } from 'vitest';
import { foodFromRow, readSource } from '../../engine/foods/food-of-row.ts';
import { FoodFile, FoodRow } from '../../engine/foods/food-row.ts';

describe('readSource', () => {
  it('reads survey ids with and without a remark', () => {
    expect(readSource('SR 168896')).toEqual({ kind: 'SR', id: '168896', note: null });
    expect(readSource('FF 2261420 blanched')).toEqual({
      kind: 'FF',
      id: '2261420',
      note: 'blanched',
    });
  });

  it('reads the other kinds with their words', () => {
    expect(readSource('memory typical label')).toEqual({
      kind: 'memory',
      id: null,
      note: 'typical label',
    });
    expect(readSource('calculated')).toEqual({ kind: 'calculated', id: null, note: null });
  });

  it.each(['', 'SR', 'sr 168896', 'SR abc', 'guess 1'])('refuses %j', (src) => {
    expect(() => readSource(src)).toThrow('unknown source form');
  });
});

describe('FoodRow', () => {
  const row = { id: 'test-food', name: 'test food', src: 'SR 1' };

  it.each([
    { ...row, id: 'Test Food' },
    { ...row, carb: -1 },
    { ...row, kcals: 10 },
    { ...row, measures: { cup: 0 } },
    { ...row, allergens: ['nuts'] },
    { ...row, refuse: 1.2 },
  ])('refuses %j', (bad) => {
    expect(FoodRow.safeParse(bad).success).toBe(false);
  });

  it('refuses a file with a stray key', () => {
    expect(FoodFile.safeParse({ group: 'x', foods: [row], more: 1 }).success).toBe(false);
  });
});

describe('foodFromRow', () => {
  const parsed = FoodRow.parse({
    id: 'test-food',
    name: 'test food',
    src: 'FF 12',
    carb: 10,
    measures: { cup: 100 },
    measuresFrom: { 'SR 34': { tbsp: 6 } },
    practice: { tsp: 2 },
  });
  const food = foodFromRow(parsed, 'tests', null);

  it('leaves what was not measured unknown, but polyols, allulose and alcohol none', () => {
    expect(food.per100g.carbohydrateG).toBe(10);
    expect(food.per100g.fiberG).toBeNull();
    expect(food.per100g.energyKcal).toBeNull();
    expect(food.per100g.polyolsG).toEqual({});
    expect(food.per100g.alluloseG).toBe(0);
    expect(food.per100g.alcoholG).toBe(0);
  });

  it('names the source of each measure', () => {
    expect(food.measures.map(({ unit, source }) => [unit, source.kind, source.id])).toEqual([
      ['cup', 'FF', '12'],
      ['tbsp', 'SR', '34'],
      ['tsp', 'practice', null],
    ]);
  });
});
