/** 'A walnut-size ball of tamarind': a piece whose size is compared with another thing. */

import { massAround } from '../../interval.ts';
import type { Item } from '../../model.ts';
import likened from '../data/likened.json' with { type: 'json' };
import { plain } from '../line-words.ts';
import type { Weighed } from './volume.ts';

/** Grams of a compact lump that large; it weighs about as much as water. Common practice, no source. */
const GRAMS = new Map(Object.entries(likened));
const SCATTER = 0.5;

const THINGS = [...GRAMS.keys()].map((thing) => thing.replace(' ', '[ -]?')).join('|');
const AS_SIZE = new RegExp(`\\b(${THINGS})[- ]siz`);
const THE_SIZE_OF = new RegExp(`\\bsize of an? (?:small |large )?(${THINGS})\\b`);

/** Units that say a lump and no weight. */
const LUMPS: ReadonlySet<string | null> = new Set([null, 'ball', 'knob', 'piece', 'chunk', 'lump']);

/** `count` lumps of the size that the item's own words liken to a thing; null when they do not. */
export function weighLikened(count: number, unit: string | null, item: Item): Weighed | null {
  if (!LUMPS.has(unit)) return null;
  const words = plain(`${item.size ?? ''} ${item.name}`);
  const thing = (AS_SIZE.exec(words) ?? THE_SIZE_OF.exec(words))?.[1]?.replace(
    /[ -]?ball$/,
    ' ball',
  );
  const grams = GRAMS.get(thing ?? '');
  if (thing === undefined || grams === undefined) return null;
  return {
    grams: massAround(count * grams, SCATTER),
    basis: 'count',
    assumptions: [`size of a ${thing}: about ${grams} g (common practice, no source)`],
  };
}
