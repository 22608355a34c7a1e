/** Tortillas and wraps that stay are whole ones: a cook warms one of two, not a third more. */
import { hasTag } from '../../foods/tags.ts';
import type { Dish } from '../dish/dish.ts';
import { tidy } from './kitchen-steps.ts';
import type { Amount } from './planned-masses.ts';

const COUNTED =
  /^\s*(\d{1,2})\b(?!\s*(?:x|×|[-–]|to\b|or\b|g\b|kg\b|oz\b|ounce|lb|pound|cup|pack))[^,\d]{0,30}?(?:\([^)]*\))?[^,\d]{0,30}?\b(?:tortillas?|wraps?|taco shells?)\b/i;

/** Share of them that stays at least. Own choice. */
const LEAST = 0.5;

/** Whole pieces in place of the grams that are left of counted ones. */
export function wholePieces(amount: Amount, { parts }: Dish): Amount {
  const { food, origin, key, grams, original } = amount;
  if (origin !== 'kept' || grams <= 0 || grams >= original || !hasTag(food, 'wrap-kind'))
    return amount;
  const text = parts.find((part) => part.key === key)?.text ?? '';
  const count = Number(COUNTED.exec(text)?.[1] ?? 0);
  if (count < 2) return amount;
  const least = Math.ceil(LEAST * count);
  const left = Math.max(least, Math.floor((count * grams) / original + 1e-9));
  return { ...amount, grams: tidy((original * left) / count) };
}
