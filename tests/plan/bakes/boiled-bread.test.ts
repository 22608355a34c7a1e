/** The bath that bread is boiled in is no part of its dough: rings and pretzels are reworked as rolls are. Invented recipes. */
import { describe, expect, it } from 'vitest';
import type { Tally } from '../../../engine/model.ts';
import { adapted, broughtBy, type Pasted } from '../pasted.ts';

const RINGS: Pasted = {
  title: 'Boiled bread rings',
  serves: 'Serves 8',
  lines: [
    '300 g water',
    '7 g instant yeast',
    '500 g bread flour',
    '10 g salt',
    'For boiling: 2 litres water + 80 g honey',
  ],
  steps: [
    'Knead water, yeast, flour and salt for 8 minutes. Let rise for an hour.',
    'Shape eight rings. Bring the 2 litres of water with the honey to a boil in a wide pot.',
    'Boil the bagels for a minute on each side, then bake at 220 °C for 20 minutes.',
  ],
  family: ['lean-yeast-bread'],
};

const PRETZELS: Pasted = {
  title: 'Soft pretzels',
  serves: 'Serves 8',
  lines: [
    '300 g water',
    '7 g instant yeast',
    '500 g bread flour',
    '10 g salt',
    '2 litres water',
    '120 g baking soda',
  ],
  steps: [
    'Knead the first water, yeast, flour and salt for 8 minutes. Let rise for an hour.',
    'Bring the 2 litres of water and the baking soda to a boil in a pot.',
    'Shape eight pretzels, dip each in the bath for 30 seconds, then bake at 220 °C for 14 minutes.',
  ],
  family: ['lean-yeast-bread'],
};

const netOf = (tally: Tally): number => tally.perServing.netCarbsG?.best ?? Number.NaN;

describe.each([RINGS, PRETZELS])('$title', (page) => {
  const result = adapted(page);

  it('are reworked as other rolls are', () => {
    expect(broughtBy(result, /bread flour/)).not.toEqual([]);
    expect(netOf(result.after)).toBeLessThan(0.7 * netOf(result.before));
  });

  it('keep their bath as it is', () => {
    const bath = result.lines.filter(({ before }) => /boiling|soda|litres/.test(before ?? ''));
    expect(bath.length).toBeGreaterThan(0);
    for (const { before, after } of bath) expect(after).toBe(before);
  });
});
