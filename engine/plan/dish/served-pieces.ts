/** What a plate gets by the piece: a fillet, a bun, a slice under its topping. Such plates cannot be made more. */
import { hasTag } from '../../foods/tags.ts';
import type { Dish, Part } from './dish.ts';

const OF_MEAT =
  /^\s*(\d{1,2})\b(?! ?(?:x|×|-|–|to\b|or\b|g\b|kg\b|oz\b|ounce|lb|pound|cup|tbsp|tsp))[^,\d]{0,40}?(?:\([^)]*\))?[^,\d]{0,40}?\b(?:fillets?|filets?|steaks?|chops?|cutlets?|breasts?|escalopes?|schnitzel|filetti|filete|fette)\b/i;
const OF_BREAD =
  /^\s*(\d{1,2})\b(?! ?(?:x|×|-|–|to\b|or\b|g\b|kg\b|oz\b|ounce|lb|pound|cup|tbsp|tsp))[^,\d]{0,40}?\b(?:rolls?|buns?|bagels?|muffins?|slices?|brioches|pitas?|baguettes|brötchen|broodjes|scheiben|sneetjes|tranches|rebanadas|fette|fatias)\b/i;

/** Meat that is cut up in the pot is no piece on the plate. */
const CUT_UP =
  /\b(?:slic|cut (?:it|them|the|into|in)|cub(?:e|ed|es|ing)\b|dic(?:e|ed|ing)\b|shred|chop(?:ped|ping)?\b(?! s)|strips|pull|flaked|würfel|stücke|blok)/i;
/** Bread that goes into crumbs, cubes or a soak. */
const TORN = /\b(?:crumb|cub(?:e|ed|es)\b|torn|tear|soak|processor|croutons?)/i;

function countOf({ food, text, steps }: Part): number | null {
  const bread = hasTag(food, 'bread-kind') || hasTag(food, 'wrap-kind');
  const meat = /^(?:meat|fish)/.test(food.group);
  const found = bread ? OF_BREAD.exec(text) : meat ? OF_MEAT.exec(text) : null;
  const parted = bread ? TORN : CUT_UP;
  if (found?.[1] === undefined || parted.test(`${text}\n${steps}`)) return null;
  return Number(found[1]);
}

/** How many pieces the plates share evenly; null when no line is served by the piece. */
export function piecesServed({ parts, servings }: Pick<Dish, 'parts' | 'servings'>): number | null {
  const counts = parts.flatMap((part) => countOf(part) ?? []);
  return counts.find((count) => count >= servings && count % servings === 0) ?? null;
}
