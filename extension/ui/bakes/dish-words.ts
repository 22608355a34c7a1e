/** Baking has its own words; other dishes are made and are done. */
import type { Family } from '../../../engine/model.ts';
import { say } from '../words/say.ts';

const NOT_BAKED: readonly Family[] = [
  'tortilla',
  'pancake',
  'fresh-pasta',
  'pasta-dish',
  'rice-dish',
  'potato-dish',
  'breaded-food',
  'thickened-sauce',
  'sweet-sauce',
  'custard',
  'candy',
  'frozen-dessert',
  'other',
];

export interface CookWords {
  /** 'I baked this' */
  did: string;
  /** 'after baking' */
  after: string;
}

export function cookWords(family: Family): CookWords {
  return NOT_BAKED.includes(family)
    ? { did: say('didMake'), after: say('whenDone') }
    : { did: say('didBake'), after: say('afterBaking') };
}
