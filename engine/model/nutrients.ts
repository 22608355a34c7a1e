/** What is counted of a recipe, in the order of the tables. Apart from the shapes, as `families.ts` is. */
export const NUTRIENTS = [
  'energyKcal',
  'fatG',
  'saturatedG',
  'carbohydrateG',
  'fiberG',
  'sugarsG',
  'polyolsG',
  'alluloseG',
  'netCarbsG',
  'proteinG',
  'sodiumMg',
] as const;
