/** What foods do in a dough: every record belongs to a food and is physically possible. */
import { describe, expect, it } from 'vitest';
import functions from '../../engine/foods/data/function.json' with { type: 'json' };
import { foodTable } from '../../engine/foods/index.ts';
import { FoodFunction } from '../../engine/model.ts';

const { byId, foods } = foodTable();
const records = Object.entries(functions as Record<string, unknown>).map(
  ([id, value]) => [id, FoodFunction.parse(value)] as const,
);

describe('food functions', () => {
  it('covers at least 180 foods, all of them in the table', () => {
    expect(records.length).toBeGreaterThanOrEqual(180);
    expect(records.map(([id]) => id).filter((id) => byId(id) === null)).toEqual([]);
    expect(foods.filter((food) => food.function !== null)).toHaveLength(records.length);
  });

  it('knows alternative flours, fibres, gums and sweeteners, and what most of them do', () => {
    const alternative = foods.filter(({ group }) => group === 'alternative baking and sweetening');
    expect(alternative.length).toBeGreaterThanOrEqual(130);
    const idle = alternative.filter((food) => food.function === null);
    expect(idle.length / alternative.length).toBeLessThan(0.2);
  });

  it.each(records)('%s is possible', (id, fn) => {
    const food = byId(id);
    const { proteinG, carbohydrateG, fiberG, sugarsG } = food?.per100g ?? {};
    if (fn.absorption) {
      expect(fn.absorption.low).toBeLessThanOrEqual(fn.absorption.best);
      expect(fn.absorption.best).toBeLessThanOrEqual(fn.absorption.high);
    }
    expect(fn.glutenProtein).toBeLessThanOrEqual((proteinG ?? 100) + 0.5);
    if (fn.digestibleStarch !== null && carbohydrateG != null) {
      // Measured starch may pass carbohydrate by difference by the error of both.
      expect(fn.digestibleStarch).toBeLessThanOrEqual(carbohydrateG - (fiberG ?? 0) + 1);
    }
    expect(fn.insolubleFibre).toBeGreaterThanOrEqual(0);
    expect(fn.insolubleFibre).toBeLessThanOrEqual(1);
    expect(fn.bulk).toBeGreaterThanOrEqual(0);
    expect(fn.bulk).toBeLessThanOrEqual(1);
    for (const share of Object.values(fn.maxShare)) {
      expect(share).toBeGreaterThanOrEqual(0);
      expect(share).toBeLessThanOrEqual(100);
    }
    for (const cost of [fn.flavour, fn.colour]) {
      expect(cost).toBeGreaterThanOrEqual(0);
      expect(cost).toBeLessThanOrEqual(3);
    }
    expect(fn.source.length).toBeGreaterThan(5);
    // Only what is sweet may be a bulk sweetener; sugars bear their own sweetness.
    if (fn.sweetness > 10) expect(fn.bulk).toBe(0);
    if ((sugarsG ?? 0) > 60) expect(fn.sweetness).toBeGreaterThan(0.3);
  });

  it('gives gluten-forming protein only to foods that carry the wheat or gluten allergen', () => {
    const without = records.filter(
      ([id, fn]) => fn.glutenProtein > 0 && !byId(id)?.allergens.includes('gluten'),
    );
    expect(without.map(([id]) => id)).toEqual([]);
  });

  it('caps the dose of every sugar replacer that upsets the stomach', () => {
    const uncapped = records.filter(([id, fn]) => {
      const { polyolsG, alluloseG } = byId(id)?.per100g ?? {};
      const amount = Object.values(polyolsG ?? {}).reduce((a, b) => a + b, 0) + (alluloseG ?? 0);
      return amount > 50 && fn.doseCapG === null;
    });
    expect(uncapped.map(([id]) => id)).toEqual([]);
  });
});
