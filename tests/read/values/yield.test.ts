import { describe, expect, it } from 'vitest';
import { isServingsLine, statedServings } from '../../../engine/read/values/stated-servings.ts';
import { chooseYield } from '../../../engine/read/values/stated-yields.ts';
import { readYield } from '../../../engine/read/values/yield.ts';

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

describe('sizes of servings and counts in brackets', () => {
  it.each([
    ['8 (~2-Tbsp servings)', people(8), null],
    ['8 (1/2-cup) servings', people(8), null],
    ['5 (small) servings', people(5), null],
    ['4 (12-16 tortillas)', people(4), { count: 12, noun: 'tortillas' }],
    ['1 (12 slices)', null, { count: 12, noun: 'slices' }],
    ['4 meal-size servings or 8 side servings', people(4), null],
    ['Servings per recipe: 6', people(6), null],
    ['0.75 servings', null, null],
    ['23.33 servings', null, null],
    ['2.5 servings', people(2.5), null],
  ])('%s', (text, servings, pieces) => {
    const made = readYield([text]);
    expect(made.servings).toEqual(servings);
    if (pieces) expect(made.pieces).toEqual(pieces);
  });
});

describe('isServingsLine', () => {
  it.each([
    '6 port',
    '4 servings',
    'Serves 4',
    'Nombre de personnes 12',
    'Para 4',
    '6 dose/s',
    '4人分',
  ])('%s says how much it makes', (line) => {
    expect(isServingsLine(line)).toBe(true);
  });

  it.each([
    '4 eggs',
    '2 portions of rice',
    '1 serving spoon of oil',
    '12',
    'Salt',
    'For 4 buns: 200 g flour',
  ])('%s does not', (line) => {
    expect(isServingsLine(line)).toBe(false);
  });
});

describe('chooseYield', () => {
  const markup = (...texts: string[]) => texts.map((text) => ({ text, from: 'markup' as const }));
  const page = (...texts: string[]) => texts.map((text) => ({ text, from: 'page' as const }));

  it('keeps every count with its words and place', () => {
    const made = chooseYield(markup('12 cookies'), page('Serves 4', 'Serves 4'));
    expect(made.servings).toEqual(people(4));
    expect(made.pieces).toEqual({ count: 12, noun: 'cookies' });
    expect(made.text).toBe('12 cookies; Serves 4');
    expect(made.stated).toEqual([
      { text: '12 cookies', low: 12, high: 12, noun: 'cookies', from: 'markup' },
      { text: 'Serves 4', low: 4, high: 4, noun: null, from: 'page' },
    ]);
  });

  it('takes a bare number for the count of the pieces that the page names', () => {
    const made = chooseYield(markup('24'), page('Makes 24 rolls'));
    expect(made.servings).toBeNull();
    expect(made.pieces).toEqual({ count: 24, noun: 'rolls' });
  });

  it('lets the markup speak first', () => {
    const made = chooseYield(markup('4'), page('Serves 6'));
    expect(made.servings).toEqual(people(4));
    expect(made.stated?.map(({ low }) => low)).toEqual([4, 6]);
  });

  it('says nothing where nothing is said', () => {
    expect(chooseYield([], [])).toEqual({ text: null, servings: null, pieces: null, stated: [] });
  });
});
