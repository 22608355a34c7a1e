/** What the user has said of themselves. */
import * as z from 'zod';

/** Only what decides whether a caution is shown; never a dose, and no goal or plan hangs on it. */
export const Person = z.object({
  /** Takes tablets of the SGLT2 kind. */
  sglt2: z.boolean().catch(false),
  kidneyDisease: z.boolean().catch(false),
  /** Pregnancy, breastfeeding, a child, or an eating disorder that was. */
  needsCarePlan: z.boolean().catch(false),
});
export type Person = z.infer<typeof Person>;
