/** Selected text that could not be read as a recipe, in `storage.session`, until the paste box shows it. */
import * as z from 'zod';
import type { Area } from '../prefs.ts';

const KEY = 'unread';

export const Unread = z.object({
  text: z.string(),
  /** What the user can do about it. */
  why: z.string(),
});
export type Unread = z.infer<typeof Unread>;

export async function keepUnread(area: Area, unread: Unread | null): Promise<void> {
  await area.set({ [KEY]: unread });
}

/** The text to show, or null; it is handed out once. */
export async function takeUnread(area: Area): Promise<Unread | null> {
  const read = Unread.safeParse((await area.get(KEY))[KEY]);
  if (!read.success) return null;
  await keepUnread(area, null);
  return read.data;
}
