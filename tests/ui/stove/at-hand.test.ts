import { describe, expect, it } from 'vitest';
import type { IngredientRow } from '../../../extension/ui/recipe/lines/ingredient-rows.ts';
import { atHand } from '../../../extension/ui/stove/at-hand.ts';

const row = (key: string, name: string, group: string | null): IngredientRow => ({
  line: { key, before: name, after: name, change: 'kept', group, why: null },
  heading: false,
  now: { amount: '10 g', kind: '', name, extra: '', rest: '' },
  was: null,
  joined: false,
  ingredient: null,
  swap: null,
  foodId: null,
  why: null,
});

const ROWS = [
  row('0', 'strong flour', 'For the dough'),
  row('1', 'white sugar', 'For the dough'),
  row('2', 'dark sugar', 'For the filling'),
  row('3', 'cinnamon', 'For the filling'),
  row('4', 'icing sugar', 'For the glaze'),
  row('5', 'seed and bran blend', 'For the dough'),
];

const keysFor = (section: string | null, after: string): string[] =>
  atHand(ROWS, { section, before: null, after, change: 'kept', why: null }).map(
    ({ line }) => line.key,
  );

describe('what a step takes', () => {
  it('is of its own part where several parts have a food of that name', () => {
    expect(keysFor('Dough', 'Mix the flour and the sugar.')).toEqual(['0', '1']);
    expect(keysFor('Fill and shape', 'Scatter the sugar and cinnamon.')).toEqual(['2', '3']);
    expect(keysFor('Bake and glaze', 'Stir the sugar smooth.')).toEqual(['4']);
  });

  it('is no blend of something else', () => {
    expect(keysFor('Dough', 'The nut blend browns early.')).toEqual([]);
    expect(keysFor('Dough', 'Add the bran blend.')).toEqual(['5']);
  });

  it('may be of another part where its own has none', () => {
    expect(keysFor('Bake and glaze', 'Dust with flour.')).toEqual(['0']);
  });

  it('is all of that name where the method has no parts', () => {
    expect(keysFor(null, 'Stir in the sugar.')).toEqual(['1', '2', '4']);
  });
});
