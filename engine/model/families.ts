/** Families of dishes by name. Apart from the shapes, so that what works recipes out needs no checking library. */

/** What is made of flour and bound by it. */
export const DOUGHS = [
  'lean-yeast-bread',
  'enriched-yeast-bread',
  'flatbread',
  'tortilla',
  'quick-bread',
  'pancake',
  'biscuit',
  'cookie',
  'cake',
  'brownie',
  'pie-crust',
  'choux',
  'cracker',
  'fresh-pasta',
] as const;
/** What is cooked, or set, of other things. */
export const DISHES = [
  'pasta-dish',
  'rice-dish',
  'potato-dish',
  'breaded-food',
  'thickened-sauce',
  'sweet-sauce',
  'frozen-dessert',
  'custard',
  'candy',
  'other',
] as const;
export const FAMILIES = [...DOUGHS, ...DISHES] as const;

const doughs: ReadonlySet<string> = new Set(DOUGHS);
/** Whether a family is one of doughs and batters. */
export const isDough = (family: string): boolean => doughs.has(family);
