/** Foods that tell a savoury dish from a sweet one. */
import { hasTag } from './tags.ts';

/** What a savoury hand seasons with. */
const SEASONINGS: ReadonlySet<string> = new Set([
  'garlic',
  'garlic-powder',
  'onion-powder',
  'black-pepper',
  'cumin-seed',
]);

/** Whether a food is one of those that only a savoury dish has. */
export const isSavoury = (id: string): boolean =>
  SEASONINGS.has(id) ||
  (['onion', 'of-slaughter', 'pulse'] as const).some((tag) => hasTag(id, tag));

/** Sauces that no sweet dish is seasoned with. */
const SALTY_SAUCES: ReadonlySet<string> = new Set([
  'soy-sauce',
  'soy-sauce-dark',
  'soy-sauce-low-sodium',
  'tamari',
  'fish-sauce',
  'oyster-sauce',
  'worcestershire-sauce',
  'sriracha',
  'anchovy',
]);

export const isSaltySauce = (id: string): boolean => SALTY_SAUCES.has(id);
