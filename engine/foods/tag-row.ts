/** The shape of one row of `data/tags.json`. Only the tests run it: the file is trusted in the browser. */
import * as z from 'zod';

/** What the foods have in common, the foods, and tags whose foods belong to it as well. */
export const TagRow = z.strictObject({
  means: z.string().min(1),
  foods: z.array(z.string()).default([]),
  includes: z.array(z.string()).default([]),
});
/** A row as it stands in the file, where defaults may be left out. */
export type WrittenTag = z.input<typeof TagRow>;
