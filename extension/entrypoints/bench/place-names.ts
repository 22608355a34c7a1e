/** The places of the full page and their addresses: `bench.html#stove`. */
import type { IconName } from '../../ui/controls/icon.tsx';
import type { MessageKey } from '../../ui/words/say.ts';

export const PLACES = [
  'recipe',
  'stove',
  'buy',
  'bakes',
  'cupboard',
  'kept',
  'settings',
  'paste',
  'figures-made',
  'privacy',
] as const;
export type Place = (typeof PLACES)[number];

/** Where the full page begins while no recipe is open. */
export const START: Place = 'kept';

/** Places of the rail; a recipe is pasted from Kept, and two are linked at the end of every screen. */
export type RailPlace = Exclude<Place, 'paste' | 'figures-made' | 'privacy'>;

export const WORDS: Record<Place, MessageKey> = {
  recipe: 'placeRecipe',
  stove: 'placeStove',
  buy: 'placeBuy',
  bakes: 'placeBakes',
  cupboard: 'placeCupboard',
  kept: 'placeKept',
  settings: 'placeSettings',
  paste: 'placePaste',
  'figures-made': 'figuresMade',
  privacy: 'whatIsKeptWhere',
};

export const ICONS: Record<RailPlace, IconName> = {
  recipe: 'recipe',
  stove: 'stove',
  buy: 'buy',
  bakes: 'bakes',
  cupboard: 'cupboard',
  kept: 'kept',
  settings: 'settings',
};

/** The place an address names, or null. */
export function placeOf(hash: string): Place | null {
  const name = hash.replace(/^#/, '');
  return PLACES.find((place) => place === name) ?? null;
}
