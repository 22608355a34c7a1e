/** The recipe being worked on, as pages of the extension hand it to each other. */
import * as z from 'zod';
import { Work } from '../records.ts';

export const Current = Work.extend({
  /** Id of the saved recipe this is a state of, else null. */
  savedId: z.string().nullable(),
});
export type Current = z.infer<typeof Current>;

/** True when both are the same recipe as read from its page. */
export function sameRecipe(a: Work['recipe'], b: Work['recipe']): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
