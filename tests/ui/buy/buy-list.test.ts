import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foodTable } from '../../../engine/index.ts';
import { buyList, type Dish } from '../../../extension/ui/buy/buy-list.ts';
import { buyText } from '../../../extension/ui/buy/buy-text.ts';
import { foodWord } from '../../../extension/ui/words/food-words.ts';

type Items = Dish['plan']['items'];

const WHOLE = { low: 1, best: 1, high: 1 };
const item = (foodId: string, grams: number): Items[number] => ({
  key: foodId,
  foodId,
  foodName: foodId.replaceAll('-', ' '),
  grams,
  eaten: WHOLE,
  role: 'other',
});

const rolls: Dish = {
  title: 'Milk rolls',
  factor: 1,
  plan: {
    items: [
      item('bread-flour', 175),
      item('vital-wheat-gluten', 95),
      item('water', 200),
      item('salt', 8),
      item('butter', 60),
    ],
  },
};
const tart: Dish = {
  title: 'Onion tart',
  factor: 2,
  plan: { items: [item('vital-wheat-gluten', 20), item('gruyere', 100), item('xanthan-gum', 0)] },
};

describe('what is to buy', () => {
  const list = buyList([rolls, tart]);
  const grams = (id: string) => list.find(({ foodId }) => foodId === id)?.grams;

  it('holds each food once, for all dishes and as much as is made', () => {
    expect(grams('vital-wheat-gluten')).toBe(95 + 2 * 20);
    expect(grams('gruyere')).toBe(200);
    expect(new Set(list.map(({ foodId }) => foodId)).size).toBe(list.length);
  });

  it('leaves out water and what takes no part', () => {
    expect(grams('water')).toBeUndefined();
    expect(grams('xanthan-gum')).toBeUndefined();
  });

  it('says where it is sold', () => {
    const aisle = (id: string) => list.find(({ foodId }) => foodId === id)?.aisle;
    expect(aisle('vital-wheat-gluten')).toBe('seldom');
    expect(aisle('bread-flour')).toBe('grocer');
    expect(aisle('salt')).toBe('usual');
  });

  it('is told as lines under their shop, with every food on it', () => {
    const text = buyText(['Milk rolls', 'Onion tart'], list, foodTable());
    expect(text.split('\n')[0]).toBe('Milk rolls, Onion tart');
    expect(text).toContain('Seldom in shops\n• vital wheat gluten, 135 g');
    for (const { foodId, food } of list) expect(text).toContain(`• ${foodWord(foodId, food)}, `);
    expect(buyText(['=1+1'], list, foodTable()).split('\n')[0]).toBe("'=1+1");
  });

  it('weighs the same in whatever order the dishes come', () => {
    const any = fc.array(
      fc.record({
        title: fc.constant('Dish'),
        factor: fc.integer({ min: 1, max: 4 }),
        plan: fc.record({
          items: fc.array(
            fc
              .tuple(fc.constantFrom('butter', 'salt', 'gruyere'), fc.integer({ min: 1, max: 500 }))
              .map(([id, g]) => item(id, g)),
          ),
        }),
      }),
    );
    fc.assert(
      fc.property(any, (dishes) => {
        const total = dishes.reduce(
          (sum, { plan, factor }) =>
            sum + plan.items.reduce((s, { grams: g }) => s + g, 0) * factor,
          0,
        );
        expect(buyList(dishes).reduce((sum, one) => sum + one.grams, 0)).toBe(total);
        expect(buyList([...dishes].reverse()).map(({ grams: g }) => g)).toEqual(
          buyList(dishes).map(({ grams: g }) => g),
        );
      }),
    );
  });
});
