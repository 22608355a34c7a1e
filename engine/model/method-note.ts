/** Where each food of a reworked recipe goes in. */
import * as z from 'zod';

/** One food of the result, or one that has left it, and the step that puts it in. */
export const MethodNote = z.object({
  /** Key as in the plan's items; of a food that left, its ingredient's. */
  key: z.string(),
  foodId: z.string(),
  food: z.string(),
  /** Heading of its part, when the dish has several; else null. */
  part: z.string().nullable(),
  /** g on its line; 0 of a food that has left. */
  grams: z.number().nonnegative(),
  /** Index of the step that puts it in; null when none does, or none can be told. */
  step: z.number().int().nonnegative().nullable(),
  /**
   * `named`: by its name or that of what it stands in for; `together`: with words such as 'all
   * ingredients'; `unnamed`: in no step; `gone`: it has left, and no step puts it in.
   */
  told: z.enum(['named', 'together', 'unnamed', 'gone']),
  /** What the cook should know, since the method does not say it; null when all is well. */
  text: z.string().nullable(),
});
export type MethodNote = z.infer<typeof MethodNote>;
