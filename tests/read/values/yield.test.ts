import { describe, expect, it } from 'vitest';
import { readYield, statedServings } from '../../../engine/read/values/yield.ts';

const people = (low: number, high = low) => ({ low, high });

describe('readYield', () => {
  it.each([
    [['4'], people(4), null],
    [['4 servings'], people(4), null],
    [['Serves 4'], people(4), null],
    [['Serves: about 4 to 6'], people(4, 6), null],
    [['4-6 people'], people(4, 6), null],
    [['für 4 Personen'], people(4), null],
    [['Voor 4'], people(4), null],
    [['4 porties'], people(4), null],
    [['6 à 8 personnes'], people(6, 8), null],
    [['4人分'], people(4), null],
    [['Servings 12'], people(12), null],
    [['12', '12 servings'], people(12), null],
    [['12', '12 cookies'], null, { count: 12, noun: 'cookies' }],
    [['1 loaf'], null, { count: 1, noun: 'loaf' }],
    [['One loaf of 12 slices'], null, { count: 12, noun: 'slices' }],
    [['Makes 24 small cookies'], null, { count: 24, noun: 'cookies' }],
    [['14 rolls (7 servings)'], people(7), { count: 14, noun: 'rolls' }],
    [['half a dozen'], null, { count: 6, noun: 'pieces' }],
    [['Makes 12'], null, { count: 12, noun: 'pieces' }],
    [['0.5 cup'], null, { count: 0.5, noun: 'cup' }],
    [['1 (9-inch) pie'], null, { count: 1, noun: 'pie' }],
    [['one 23 cm cake'], null, { count: 1, noun: 'cake' }],
    [['2 9x5-inch loaves'], null, { count: 2, noun: 'loaves' }],
    [['24 2-inch cookies'], null, { count: 24, noun: 'cookies' }],
    [['undefined', '0', ''], null, null],
  ])('%j', (statements, servings, pieces) => {
    const made = readYield(statements);
    expect(made.servings).toEqual(servings);
    expect(made.pieces).toEqual(pieces);
  });

  it('keeps the entry with words as the text', () => {
    expect(readYield(['9', '9 squares']).text).toBe('9 squares');
    expect(readYield([]).text).toBeNull();
  });
});

describe('statedServings', () => {
  it.each(['Bake for 30 minutes', 'Heat to 180', 'per 100 g', 'für 30 Minuten', '2 cups flour'])(
    'sees none in %j',
    (text) => {
      expect(statedServings(text)).toBeNull();
    },
  );
});
