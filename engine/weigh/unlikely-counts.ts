/** A weight in brackets behind a count that is of all the pieces together. */
import type { Amount, Food } from '../model.ts';
import { gramsOf } from '../units.ts';
import type { Weighed } from './measured/volume.ts';
import type { Part, Reading } from './readings.ts';

export interface LikelyReading {
  reading: Reading;
  assumption: string;
}

/** How much heavier than usual one piece must be, less where the count is a range. Own choice. */
const TOO_HEAVY = { counted: 4, ranged: 2.3 };
/** How near the usual weight of a piece its share of the whole must be. Own choice. */
const NEAR = { from: 0.4, to: 2.2 };

const middle = ({ quantity, max }: Amount): number => (quantity + (max ?? quantity)) / 2;

/** '2 to 3 (1 pound) chicken breasts', '12 (100 g) mushrooms': the size is of all of them together. */
function asTotal(
  { amount, size }: Part,
  weigh: (reading: Reading) => Weighed | null,
): LikelyReading | null {
  const one = size && gramsOf(size.unit);
  const count = middle(amount);
  if (!size || one === null || count < 2) return null;
  const usual = weigh([{ amount: { ...amount, quantity: 1, max: null }, size: null }])?.grams.best;
  const stated = (one ?? 0) * middle(size);
  const heavy = amount.max === null ? TOO_HEAVY.counted : TOO_HEAVY.ranged;
  if (!usual || stated / usual < heavy) return null;
  const share = stated / count / usual;
  if (share < NEAR.from || share > NEAR.to) return null;
  return {
    reading: [{ amount: { ...size, kind: 'stated' }, size: null }],
    assumption: 'the stated weight is taken as that of all pieces together',
  };
}

/**
 * Another reading of a bare count with a size that no such piece has, or null. `text` is the
 * line in lower case; a line that says 'each' means it.
 */
export function likelyMeant(
  reading: Reading,
  food: Food | null,
  text: string,
  weigh: (reading: Reading) => Weighed | null,
): LikelyReading | null {
  const [part, ...more] = reading;
  if (!part || more.length > 0 || part.amount.unit !== null || !food) return null;
  if (/\beach\b|\bapiece\b|\d\s*[x×]\s*\d/.test(text)) return null;
  return asTotal(part, weigh);
}
