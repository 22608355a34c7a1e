/** Pan sizes: how much more or less of a recipe another pan takes. */
import * as z from 'zod';
import { CM_PER_INCH } from '../../units.ts';

const Length = z.number().positive();
const Common = {
  unit: z.enum(['cm', 'in']),
  /** Height of the walls; compared only when both pans state it. */
  depth: Length.nullable().default(null),
  /** How many such pans. */
  count: z.number().positive().default(1),
};

/** A baking pan, measured inside at the top. */
export const Pan = z.discriminatedUnion('shape', [
  z.object({ shape: z.literal('round'), across: Length, ...Common }),
  z.object({ shape: z.literal('square'), side: Length, ...Common }),
  z.object({ shape: z.literal('rectangular'), length: Length, width: Length, ...Common }),
  z.object({ shape: z.literal('loaf'), length: Length, width: Length, ...Common }),
]);
export type Pan = z.input<typeof Pan>;

function floorOf(pan: z.infer<typeof Pan>): number {
  switch (pan.shape) {
    case 'round':
      return (Math.PI / 4) * pan.across ** 2;
    case 'square':
      return pan.side ** 2;
    default:
      return pan.length * pan.width;
  }
}

const squareCm = (pan: z.infer<typeof Pan>): number =>
  floorOf(pan) * pan.count * (pan.unit === 'in' ? CM_PER_INCH ** 2 : 1);

const depthCm = (pan: z.infer<typeof Pan>): number | null =>
  pan.depth === null ? null : pan.depth * (pan.unit === 'in' ? CM_PER_INCH : 1);

/**
 * Times the recipe for another pan: the ratio of their floors (geometry), so that the batter stands as
 * high as before; of their volumes when both state a depth. Null when a length is missing or not
 * above 0.
 */
export function panFactor(from: Pan, to: Pan): number | null {
  const [a, b] = [Pan.safeParse(from), Pan.safeParse(to)];
  if (!a.success || !b.success) return null;
  const floors = squareCm(b.data) / squareCm(a.data);
  const [was, is] = [depthCm(a.data), depthCm(b.data)];
  return was === null || is === null ? floors : (floors * is) / was;
}
