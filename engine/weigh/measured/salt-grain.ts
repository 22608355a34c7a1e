/** Salt by the spoon depends on its grain: what was taken, and what the other grains would give. */

import { massInterval } from '../../interval.ts';
import type { Food } from '../../model.ts';
import type { Weighed } from './volume.ts';

/** Grams of a US tablespoon. Fine: USDA SR 173468; coarse grains: common practice, no source. */
const TABLESPOON = { fine: 18, dense: 14.4, light: 9.6 };

const grainOf = (food: Food): keyof typeof TABLESPOON | null => {
  if (food.id === 'salt' || food.id === 'sea-salt-fine') return 'fine';
  if (food.id === 'coarse-salt-dense') return 'dense';
  return food.id === 'coarse-salt-light' ? 'light' : null;
};

const gramsText = (grams: number): string => (grams >= 10 ? grams.toFixed(0) : grams.toFixed(1));

/** The same weight with the doubt of the grain added and named; anything else unchanged. */
export function withGrain(weighed: Weighed, food: Food | null, text: string): Weighed {
  const grain = food && weighed.basis === 'volume' ? grainOf(food) : null;
  if (grain === null) return weighed;
  const { low, best, high } = weighed.grams;
  const ratio = (other: keyof typeof TABLESPOON): number => TABLESPOON[other] / TABLESPOON[grain];
  const grams = (other: keyof typeof TABLESPOON): string => gramsText(best * ratio(other));
  if (grain === 'fine') {
    const open = /\bsea salt|flak/.test(text) && !/\bfine/.test(text);
    const assumption = `assumed fine salt; dense coarse salt would be ${grams('dense')} g, light coarse salt ${grams('light')} g`;
    return {
      ...weighed,
      grams: massInterval(open ? low * ratio('light') : low, best, high),
      assumptions: [...weighed.assumptions, assumption],
    };
  }
  const other = grain === 'dense' ? 'light' : 'dense';
  const assumption = `assumed ${grain} coarse salt; ${other} coarse salt would be ${grams(other)} g, fine salt ${grams('fine')} g`;
  return {
    ...weighed,
    grams: massInterval(
      Math.min(low, low * ratio('light')),
      best,
      Math.max(high, best * ratio('dense') * 1.05),
    ),
    assumptions: [...weighed.assumptions, assumption],
  };
}
