/**
 * Keys of ingredients: '3' is the fourth line over all groups, '3.1' a second food on it; in the tally after
 * the rework '3>spelt' is a food that stands in for that of line 3, and 'new.egg>egg' an addition.
 */

/** The line that a key belongs to: '3.1', '3>spelt' and '3.1>spelt' belong to '3'. */
export function lineOfKey(key: string): string {
  return /^[^.>]*/.exec(key)?.[0] ?? key;
}

/** The ingredient of a key and the food that stands in for it, null when none does. */
export function splitKey(key: string): { ingredient: string; foodId: string | null } {
  const at = key.indexOf('>');
  return at < 0
    ? { ingredient: key, foodId: null }
    : { ingredient: key.slice(0, at), foodId: key.slice(at + 1) };
}
