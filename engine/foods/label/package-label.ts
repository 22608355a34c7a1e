/** What is printed on a package, as its owner types it in. */
import * as z from 'zod';
import { Allergen } from '../../model.ts';

/** A figure as printed: a number, or '<1' for 'less than 1'. */
export const Printed = z.union([
  z.number().nonnegative().max(100_000),
  z.string().regex(/^< ?\d{1,3}([.,]\d+)?$/),
]);
export type Printed = z.infer<typeof Printed>;

/**
 * What a label says. `us`: figures of one serving of `servingG` grams (0.1 or more), carbohydrate with its
 * fibre, sodium in mg. `eu`: figures of 100 g, carbohydrate without fibre, salt in g. Energy is kcal.
 * A figure the label does not give is null, never 0.
 */
export const PackageLabel = z.object({
  name: z.string().max(80),
  form: z.enum(['us', 'eu']),
  servingG: z.number().min(0.1).max(2000).nullable(),
  energyKcal: Printed,
  fatG: Printed,
  saturatedG: Printed.nullable(),
  carbohydrateG: Printed,
  fiberG: Printed.nullable(),
  sugarsG: Printed.nullable(),
  polyolsG: Printed.nullable(),
  alluloseG: Printed.nullable(),
  proteinG: Printed,
  sodiumMg: Printed.nullable(),
  saltG: Printed.nullable(),
  allergens: z.array(Allergen),
  /** Id of the built-in food the package is used as, or null for a food of its own. */
  standsInFor: z.string().nullable(),
  /** Wheat gluten is among the first three ingredients. */
  glutenAmongFirst: z.boolean(),
  /** Soy, pea, faba bean or lupin protein is listed. */
  otherProteins: z.boolean(),
});
export type PackageLabel = z.infer<typeof PackageLabel>;
