/** The recipe being worked on, in `storage.session`: outlives the popup, not the browser. */
import * as z from 'zod';
import type { Area } from './prefs.ts';
import { Work } from './records.ts';

const KEY = 'current';

export const Current = Work.extend({
  /** Id of the saved recipe this is a state of, else null. */
  savedId: z.string().nullable(),
});
export type Current = z.infer<typeof Current>;

/** What was being worked on, or null. */
export async function loadCurrent(area: Area): Promise<Current | null> {
  const read = Current.safeParse((await area.get(KEY))[KEY]);
  return read.success ? read.data : null;
}

export async function storeCurrent(area: Area, current: Current): Promise<void> {
  await area.set({ [KEY]: current });
}

/** True when both are the same recipe as read from its page. */
export function sameRecipe(a: Work['recipe'], b: Work['recipe']): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
