import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withoutAccents } from '../engine/accents.ts';
import { lineOfKey, splitKey } from '../engine/ingredient-keys.ts';
import { fractionValue, numberValue } from '../engine/numerals.ts';

describe('numbers as kitchens write them', () => {
  it.each([
    ['2', 2],
    ['2.5', 2.5],
    ['2,5', 2.5],
    ['.5', 0.5],
    ['1/2', 0.5],
    ['1 1/2', 1.5],
    ['1½', 1.5],
    ['1 ½', 1.5],
    ['⅛', 0.125],
    ['3⁄4', 0.75],
  ])('%s is %d', (text, value) => {
    expect(numberValue(text)).toBeCloseTo(value, 10);
  });

  it.each(['', 'two', '1/0', '1/2/3', '2 g', '1 2', '½½'])('%j is no single number', (text) => {
    expect(numberValue(text)).toBeNull();
  });

  it('knows every fraction sign', () => {
    for (const sign of '¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞') {
      expect(fractionValue(sign), sign).toBeGreaterThan(0);
      expect(fractionValue(sign), sign).toBeLessThan(1);
    }
    expect(fractionValue('⅔')).toBeCloseTo(2 / 3, 10);
  });

  it('reads back what is written', () => {
    fc.assert(
      fc.property(fc.nat(999), fc.integer({ min: 1, max: 15 }), (whole, sixteenths) => {
        expect(numberValue(`${whole} ${sixteenths}/16`)).toBeCloseTo(whole + sixteenths / 16, 10);
      }),
    );
  });
});

describe('accents', () => {
  it.each([
    ['PREPARACIÓN', 'PREPARACION'],
    ['Zutaten für 4', 'Zutaten fur 4'],
    ['υλικά', 'υλικα'],
    ['재료', '재료'],
    ['smør', 'smør'],
    ['½ dl', '½ dl'],
  ])('%s becomes %s', (text, plain) => {
    expect(withoutAccents(text)).toBe(plain);
  });
});

describe('keys', () => {
  it('tell the line', () => {
    expect(['3', '3.1', '3>spelt', '3.1>spelt', 'new.egg'].map(lineOfKey)).toEqual([
      '3',
      '3',
      '3',
      '3',
      'new',
    ]);
  });

  it('tell the food in its place', () => {
    expect(splitKey('3.1>spelt')).toEqual({ ingredient: '3.1', foodId: 'spelt' });
    expect(splitKey('3.1')).toEqual({ ingredient: '3.1', foodId: null });
  });
});
