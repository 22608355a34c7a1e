/** What every other noun is made of. */
import * as z from 'zod';

// Extension pages forbid building code from strings, so zod must not probe for it.
z.config({ jitless: true });

/** A quantity with its bounds: `low <= best <= high`. */
export const Interval = z.object({ low: z.number(), best: z.number(), high: z.number() });
export type Interval = z.infer<typeof Interval>;

/** Something a reader of the result should know; `code` is stable, `text` is for the screen. */
export const Note = z.object({
  code: z.string(),
  text: z.string(),
  /** Key of the ingredient it is about, when it is about one. */
  key: z.string().nullable().default(null),
  /** What the text's words in braces stand for, so that it can be said again in another language. */
  figures: z.record(z.string(), z.string()).optional(),
});
export type Note = z.infer<typeof Note>;
