/** Wraps that no line counts get something in their place; what is merely missing does not. */
import { describe, expect, it } from 'vitest';
import type { MissingLine, Verdict } from '../../../engine/model.ts';
import { replaceable } from '../../../engine/tally/verdict/replaceable.ts';

const missing = (kind: string, low: number, beside = false): MissingLine => ({
  key: '4',
  text: kind,
  why: 'no amount given',
  kind,
  netCarbsG: { low, best: 28, high: 47 },
  beside,
});

const verdict = (state: 'tooMuch' | 'fitsAsCounted', ...lines: MissingLine[]): Verdict => ({
  state,
  netCarbsG: { low: 12, best: 14, high: 16 },
  budgetG: 15,
  missing: lines,
});

describe('what something else is served in place of', () => {
  it('is the tortillas of tacos, whatever kind of them', () => {
    const found = replaceable(verdict('tooMuch', missing('flour tortilla', 9)));
    expect(found.map(({ kind }) => kind)).toEqual(['tortillas or wraps']);
  });

  it('is no flatbread beside a curry', () => {
    const naan = { ...missing('pita bread', 16), text: 'your choice of flatbreads' };
    expect(replaceable(verdict('tooMuch', naan))).toEqual([]);
  });

  it('is nothing else of a dish that is too much', () => {
    expect(replaceable(verdict('tooMuch', missing('avocado', 1), missing('flour', 20)))).toEqual(
      [],
    );
  });

  it('is the rice and the bread beside a dish that is too much, and no part of it', () => {
    const rice = { ...missing('cooked rice', 7, true), text: 'steamed basmati rice' };
    const naan = { ...missing('naan bread', 9, true), text: 'naan' };
    const inIt = { ...missing('cooked rice', 7), text: 'rice' };
    const found = replaceable(verdict('tooMuch', rice, naan, inIt));
    expect(found.map(({ kind }) => kind)).toEqual(['rice or grain', 'naan bread']);
  });

  it('is the rice beside a dish that fits by itself', () => {
    const rice = missing('rice or grain', 20, true);
    expect(replaceable(verdict('fitsAsCounted', rice))).toEqual([rice]);
  });
});
