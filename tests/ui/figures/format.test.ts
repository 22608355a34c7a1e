import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foodTable } from '../../../engine/index.ts';
import { fileName } from '../../../extension/ui/controls/download.ts';
import { searchFoods } from '../../../extension/ui/controls/food-search.ts';
import {
  amount,
  figureRange,
  figureText,
  nutrientRows,
  rangeText,
  webAddress,
} from '../../../extension/ui/figures/format.ts';

describe('figures', () => {
  it('have one decimal where it can matter', () => {
    expect([0, 0.03, 0.05, 9.96, 29.24, 99.96, 151.4].map(amount)).toEqual([
      '0',
      '<0.1',
      '0.1',
      '10.0',
      '29.2',
      '100',
      '151',
    ]);
  });

  it('have ranges that never leave the true one out', () => {
    const sorted = fc
      .tuple(
        fc.double({ min: 0, max: 400, noNaN: true }),
        fc.double({ min: 0.2, max: 90, noNaN: true }),
      )
      .map(([low, width]) => ({ low, best: low + width / 2, high: low + width }));
    fc.assert(
      fc.property(sorted, (value) => {
        const [low, high] = rangeText(value).replace(' g', '').split('–').map(Number);
        const slack = value.high < 10 ? 0.0501 : 0;
        expect(low).toBeLessThanOrEqual(value.low + slack);
        expect(high).toBeGreaterThanOrEqual(value.high - slack);
      }),
    );
  });

  it('keep unknown apart from zero', () => {
    for (const row of nutrientRows({ energy: 'kcal', sodium: 'sodium' })) {
      expect(figureText(null, row)).toBe('–');
      expect(figureRange(null, row)).toBe('');
      expect(figureText({ low: 0, best: 0, high: 0 }, row)).toMatch(/^0/);
    }
  });

  it('change to kJ and salt: 100 kcal are 418 kJ, 400 mg sodium are 1 g salt', () => {
    const rows = nutrientRows({ energy: 'kJ', sodium: 'salt' });
    const figure = (nutrient: string, best: number) => {
      const row = rows.find((one) => one.nutrient === nutrient);
      return row ? `${figureText({ low: best, best, high: best }, row)} ${row.unit}` : '';
    };
    expect(figure('energyKcal', 100)).toBe('418 kJ');
    expect(figure('sodiumMg', 400)).toBe('1.00 g');
  });
});

describe('addresses', () => {
  it('become links only on the web', () => {
    expect(webAddress('https://kitchen.example/loaf')).toBe('https://kitchen.example/loaf');
    for (const address of ['javascript:alert(1)', 'data:text/html,x', 'file:///x', 'x', '', null]) {
      expect(webAddress(address)).toBeNull();
    }
  });
});

describe('file names', () => {
  it('hold letters, digits and dashes only', () => {
    expect(fileName('Crème & "Brot" /../ №1', 'txt')).toBe('Crème-Brot-No1.txt');
    expect(fileName('///', 'md')).toBe('recipe.md');
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 90 }), (title) => {
        expect(fileName(title, 'txt')).toMatch(/^[\p{L}\p{N}-]+\.txt$/u);
      }),
    );
  });
});

describe('search in the food table', () => {
  const { foods } = foodTable();
  const names = (query: string) => searchFoods(foods, query).map(({ name }) => name);

  it('puts names before other names for the same food', () => {
    expect(names('bread flour')[0]).toBe('bread flour');
    expect(names('flour').every((name) => name.includes('flour'))).toBe(true);
  });

  it('finds by another name, whatever the case', () => {
    expect(searchFoods(foods, 'PLAIN FLOUR').map(({ id }) => id)).toContain('all-purpose-flour');
  });

  it('gives nothing for a single letter or a word that is not there', () => {
    expect(names('f')).toEqual([]);
    expect(names('zibbelwort')).toEqual([]);
  });
});
