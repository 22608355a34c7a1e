import { afterEach, describe, expect, it } from 'vitest';
import { foodTable } from '../../../engine/index.ts';
import type { ToBuy } from '../../../extension/ui/buy/buy-list.ts';
import { shopAmount } from '../../../extension/ui/buy/shop-amount.ts';
import { speak } from '../../../extension/ui/words/say.ts';

afterEach(() => speak('en'));

const table = foodTable();
const amountOf = (foodId: string, grams: number, poured = false): string => {
  const one: ToBuy = { foodId, food: foodId, grams, poured, aisle: 'grocer' };
  return shopAmount(one, table.byId(foodId));
};

describe('an amount in a shop', () => {
  it('is a number of eggs, the rest of one not bought for', () => {
    expect(amountOf('egg', 50)).toBe('one large');
    expect(amountOf('egg', 152)).toBe('3 large');
    expect(amountOf('egg', 80)).toBe('2 large');
    speak('de');
    expect(amountOf('egg', 100)).toBe('2 große');
  });

  it('is in millilitres for what is poured, and by weight for all else', () => {
    // By hand: 244 g of milk fill a US cup of 236.6 ml.
    expect(amountOf('milk-whole', 244, true)).toBe('235 ml');
    expect(amountOf('milk-whole', 244)).toBe('244 g');
    expect(amountOf('bread-flour', 250)).toBe('250 g');
    expect(amountOf('no-such-food', 30)).toBe('30 g');
  });
});
