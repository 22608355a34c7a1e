import { describe, expect, it } from 'vitest';
import {
  isUnsure,
  showEnergy,
  showGrams,
  showGramsRange,
  showSalt,
  showSodium,
} from '../../engine/tally/displayed-figures.ts';

describe('display', () => {
  it('rounds grams on the grid', () => {
    expect(showGrams(0)).toBe('0 g');
    expect(showGrams(0.3)).toBe('<0.5 g');
    expect(showGrams(6.26)).toBe('6.3 g');
    expect(showGrams(1.045)).toBe('1.0 g');
    expect(showGrams(9.97)).toBe('10 g');
    expect(showGrams(29.2447)).toBe('29 g');
    expect(showGrams(null)).toBe('–');
  });

  it('rounds energy, sodium and salt', () => {
    expect(showEnergy(47)).toBe('45 kcal');
    expect(showEnergy(150.9583)).toBe('150 kcal');
    expect(showSodium(323.9)).toBe('320 mg');
    expect(showSalt(400)).toBe('1.0 g');
  });

  it('shows the range when it is wide, or when the budget lies in it', () => {
    expect(showGramsRange({ low: 25, best: 29, high: 33 })).toBe('29 g (25-33)');
    const narrow = { low: 27, best: 29, high: 31 };
    expect(showGramsRange(narrow)).toBe('29 g');
    expect(showGramsRange(narrow, { range: 'always' })).toBe('29 g (27-31)');
    expect(showGramsRange(narrow, { budgetG: 30 })).toBe('29 g (27-31)');
    expect(showGramsRange(narrow, { budgetG: 40 })).toBe('29 g');
    expect(showGramsRange({ low: 20, best: 29, high: 40 }, { range: 'never' })).toBe('29 g');
  });

  it('marks a lower bound', () => {
    expect(showGramsRange({ low: 12, best: 12, high: 12 }, { lacking: 1 })).toBe('≥ 12 g');
  });

  it('warns above 20 %', () => {
    expect(isUnsure({ low: 25, best: 30, high: 35 })).toBe(false);
    expect(isUnsure({ low: 20, best: 30, high: 40 })).toBe(true);
  });
});
