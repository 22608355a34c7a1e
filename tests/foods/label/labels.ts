/** Invented package labels. */
import type { PackageLabel } from '../../../engine/foods/label/package-label.ts';

/** A US label with nothing optional on it. */
export const label = (change: Partial<PackageLabel> = {}): PackageLabel => ({
  name: 'Invented package',
  form: 'us',
  servingG: 30,
  energyKcal: 0,
  fatG: 0,
  saturatedG: null,
  carbohydrateG: 0,
  fiberG: null,
  sugarsG: null,
  polyolsG: null,
  alluloseG: null,
  proteinG: 0,
  sodiumMg: null,
  saltG: null,
  allergens: [],
  standsInFor: null,
  glutenAmongFirst: false,
  otherProteins: false,
  ...change,
});

const blend: Partial<PackageLabel> = {
  name: 'Soft Mill bread blend',
  allergens: ['wheat', 'gluten', 'soy'],
  standsInFor: 'low-carb-wheat-flour-blend',
  glutenAmongFirst: true,
  otherProteins: true,
};

/** A wheat blend as a US label prints it, per 30 g: 80 kcal are 4 x 11 + 9 x 0.5 + 4 x 6 + 8. */
export const blendUs = (change: Partial<PackageLabel> = {}): PackageLabel =>
  label({
    ...blend,
    energyKcal: 80,
    fatG: 0.5,
    saturatedG: 0,
    carbohydrateG: 14,
    fiberG: 8,
    sugarsG: 0,
    proteinG: 11,
    sodiumMg: 10,
    ...change,
  });

/** The like as an EU label prints it, per 100 g: 299 kcal are 4 x 38 + 9 x 1.2 + 4 x 21 + 2 x 26. */
export const blendEu = (change: Partial<PackageLabel> = {}): PackageLabel =>
  label({
    ...blend,
    form: 'eu',
    servingG: null,
    energyKcal: 299,
    fatG: 1.2,
    saturatedG: 0.3,
    carbohydrateG: 21,
    fiberG: 26,
    sugarsG: 1,
    proteinG: 38,
    saltG: 0.1,
    ...change,
  });
