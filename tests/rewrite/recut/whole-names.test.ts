import { describe, expect, it } from 'vitest';
import { wholeIn } from '../../../engine/rewrite/recut/recut-words.ts';

describe('what is cut into pieces', () => {
  it.each([
    ['Plum cheesecake with nut sauce', 'cheesecake'],
    ['Chocolate pudding cake', 'cake'],
    ['Sticky gingerbread', 'gingerbread'],
    ['Cake mix blondies', 'blondies'],
    ['Cloud (an airy loaf)', 'loaf'],
    ['Berry cobbler', undefined],
  ])('%s', (title, whole) => {
    expect(wholeIn(title)).toBe(whole);
  });
});
