/** Counts that would make a mountain of food are read as what the line most likely means. */
import type { Amount, Food } from '../model.ts';
import { gramsOf } from '../units.ts';
import type { Weighed } from './measured/volume.ts';
import type { Part, Reading } from './readings.ts';

export interface LikelyReading {
  reading: Reading;
  assumption: string;
}

/** From here on a bare number is rather grams than pieces, when it makes kilograms. Own choice. */
const FEWEST = 40;
const MOUNTAIN_G = 3000;
/** How much heavier than usual one piece must be, less where the count is a range. Own choice. */
const TOO_HEAVY = { counted: 4, ranged: 2.3 };
/** How near the usual weight of a piece its share of the whole must be. Own choice. */
const NEAR = { from: 0.4, to: 2.2 };

const middle = ({ quantity, max }: Amount): number => (quantity + (max ?? quantity)) / 2;

/** '500 potatoes' of a page that leaves its grams out. */
function asGrams({ amount, size }: Part, weighed: Weighed | null): LikelyReading | null {
  if (size !== null || amount.quantity < FEWEST) return null;
  if (weighed && weighed.grams.best < MOUNTAIN_G) return null;
  return {
    reading: [{ amount: { ...amount, unit: 'g' }, size: null }],
    assumption: `${amount.quantity} without a unit is taken as grams`,
  };
}

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
 * Another reading of a bare count that would weigh far more than the food does, or null. `text` is the
 * line in lower case; a line that says 'each' means it.
 */
export function likelyMeant(
  reading: Reading,
  weighed: Weighed | null,
  food: Food | null,
  text: string,
  weigh: (reading: Reading) => Weighed | null,
): LikelyReading | null {
  const [part, ...more] = reading;
  if (!part || more.length > 0 || part.amount.unit !== null || !food) return null;
  if (/\beach\b|\bapiece\b|\d\s*[x×]\s*\d/.test(text)) return null;
  return asGrams(part, weighed) ?? asTotal(part, weigh);
}
