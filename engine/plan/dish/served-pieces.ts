/** What a plate gets by the piece: a fillet, a bun, a slice under its topping. Such plates cannot be made more. */
import { hasTag } from '../../foods/tags.ts';
import type { Dish, Part } from './dish.ts';

const OF_MEAT =
  /^\s*(\d{1,2})\b(?! ?(?:x|×|-|–|to\b|or\b|g\b|kg\b|oz\b|ounce|lb|pound|cup|tbsp|tsp))[^,\d]{0,40}?(?:\([^)]*\))?[^,\d]{0,40}?\b(?:fillets?|filets?|steaks?|chops?|cutlets?|breasts?|escalopes?|schnitzel|filetti|filete|fette)\b/i;
const OF_BREAD =
  /^\s*(\d{1,2})\b(?! ?(?:x|×|-|–|to\b|or\b|g\b|kg\b|oz\b|ounce|lb|pound|cup|tbsp|tsp))[^,\d]{0,40}?\b(?:rolls?|buns?|bagels?|muffins?|slices?|tortillas?|wraps?|tacos?|taco shells?|tostadas?|gorditas?|flatbreads?|brioches|pitas?|baguettes|brötchen|broodjes|scheiben|sneetjes|tranches|rebanadas|fette|fatias)\b/i;

/** Meat that is cut up in the pot is no piece on the plate. */
const CUT_UP =
  /\b(?:slic|cut (?:it|them|the|into|in)|cub(?:e(?! steak)|ed|es|ing)\b|dic(?:e|ed|ing)\b|shred|chop(?:ped|ping)?\b(?! s)|strips|pull|flaked|würfel|stücke|blok)/i;
const OF_VEGETABLE =
  /^\s*(\d{1,2})\b(?! ?(?:x|×|-|–|to\b|or\b|g\b|kg\b|oz\b|ounce|lb|pound|cup|tbsp|tsp))[^,\d]{0,40}?\b(?:peppers?|capsicums?|tomato(?:es)?|aubergines?|eggplants?|courgettes?|zucchinis?|mushrooms?|potato(?:es)?|paprikas?|paprikaschoten|paprika's|pimientos|pimentos|poivrons?|peperoni|tomates?|tomaten)\b/i;
/** A vegetable that is a shell for something. */
const FILLED =
  /\b(?:stuff(?:ed|ing)?|fill(?:ed|ing)?|gefüllt\w*|füllen|gevuld\w*|vul(?:len)?|farcis?|farcir|rellen\w+|recheia\w*|ripien\w+)\b/i;

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

/** How many whole vegetables are filled, of all kinds together; none where the title names no filled dish. */
function filledOf({ parts, method }: Pick<Dish, 'parts' | 'method'>): number[] {
  if (!FILLED.test(method)) return [];
  const counts = parts.flatMap(({ food, text, steps }) => {
    const found =
      food.group.startsWith('vegetable') && FILLED.test(steps) ? OF_VEGETABLE.exec(text) : null;
    return found?.[1] === undefined || CUT_UP.test(text) ? [] : [Number(found[1])];
  });
  return [counts.reduce((sum, count) => sum + count, 0), ...counts];
}

/** How many pieces the plates share evenly; null when no line is served by the piece. */
export function piecesServed(dish: Pick<Dish, 'parts' | 'servings' | 'method'>): number | null {
  const { parts, servings } = dish;
  const counts = [...parts.flatMap((part) => countOf(part) ?? []), ...filledOf(dish)];
  return counts.find((count) => count >= servings && count % servings === 0) ?? null;
}
