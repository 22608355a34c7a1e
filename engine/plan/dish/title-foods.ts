/** Foods that the title promises: which lines they are, and what may stand in for them without breaking the promise. */
import { hasTag, type Tag } from '../../foods/tags.ts';
import type { Food } from '../../model.ts';
import type { Dish, Part } from './dish.ts';

/** Kinds within which one food may stand in for another under the same title. */
const KINDS: readonly Tag[] = [
  'flour-like',
  'pasta',
  'rice',
  'bread-kind',
  'wrap-kind',
  'chocolate',
  'sweetener',
  'cream-or-milk',
  'pulse',
  'yogurt',
  'nut',
  'mushroom',
  'onion',
];

/** Sweeteners whose own taste a title promises, with what tastes like them. */
const OF_OWN_TASTE: Readonly<Record<string, readonly string[]>> = {
  honey: ['allulose-honey-style'],
  'maple-syrup': ['sugar-free-syrup', 'maple-flavoured-syrup'],
  molasses: [],
  'pomegranate-molasses': [],
  'caramel-sauce': ['caramel-sauce-sugar-free', 'allulose'],
};

/** Whether a stand-in is of the kind of what it replaces: flour for flour, pasta for pasta. */
export function sameKind(original: Food, standIn: Food): boolean {
  if (standIn.id === original.id) return true;
  const alike = OF_OWN_TASTE[original.id];
  if (alike !== undefined) return alike.includes(standIn.id);
  return KINDS.some((kind) => hasTag(original, kind) && hasTag(standIn, kind));
}

/** Words that say how a food is, or belong to many foods, so that a title with them names none. */
const GENERAL = new Set(
  'free best easy style fresh dried ground whole sweet sour white brown black green yellow golden baked roasted roast plain powder sauce juice paste extract baking water salt spice seasoning mini large small soft hard cold warm quick homemade instant light dark powdered granulated virgin heavy unsalted salted boneless skinless crushed chopped sliced shredded frozen canned cooked'.split(
    ' ',
  ),
);

/**
 * Names of a way of making as much as of a food: filled and rolled crêpes, dumplings of ricotta, shells of cheese, a bake
 * in layers of vegetables bear them as well.
 */
const MADE_ALIKE = new Set([
  'manicotti',
  'cannelloni',
  'canneloni',
  'lasagne',
  'lasagna',
  'gnocchi',
  'gnocco',
  'taco',
  'tostada',
]);

const stem = (word: string): string =>
  word
    .replace(/ies$/, 'y')
    .replace(/oes$/, 'o')
    .replace(/(?<=[^s])s$/, '');

const wordsOf = (text: string): string[] =>
  (text.toLowerCase().match(/\p{L}{4,}/gu) ?? [])
    .map(stem)
    .filter((word) => !GENERAL.has(word) && !MADE_ALIKE.has(word));

/** What stands before a word in a title and makes another food of it: 'sweet potato', 'coconut flour'. */
const OTHER_FOOD =
  /\b(?:coconut|almond|condensed|ice|peanut|cauliflower|zucchini|mock|no|without|free)[ -]$/i;

function isNamed(word: string, title: string): boolean {
  for (const found of title.matchAll(/\p{L}{4,}/gu)) {
    if (stem(found[0].toLowerCase()) !== word) continue;
    if (!OTHER_FOOD.test(title.slice(0, found.index))) return true;
  }
  return false;
}

/** Letters that the rest of a compound has at least: 'Kartoffelpfanne'. */
const REST = 4;

/** Whether a title's compound begins or ends with the name: 'aardappelschotel', 'Bratkartoffeln'. */
function isInCompound(word: string, title: string): boolean {
  const base = word.replace(/(?:en|n|er|s)$/, '');
  if (base.length < 5) return false;
  return (title.toLowerCase().match(/\p{L}{9,}/gu) ?? []).some((long) => {
    const rest = long.length - base.length;
    return rest >= REST && (long.startsWith(base) || long.endsWith(word));
  });
}

/** 'Mac and cheese' is named for its macaroni, whatever the shape on the line. */
const MAC = /\bmac\b[^\p{L}]*(?:\p{L}{1,3}[^\p{L}]*)?cheese\b/iu;

/** Lines by the word of the title that names their food. */
export function titleFoods(dish: Dish): Map<string, Part[]> {
  const named = new Map<string, Part[]>();
  for (const part of dish.parts) {
    if (part.net < 0.02 || part.eaten <= 0) continue;
    const names = [...wordsOf(part.name), ...wordsOf(part.food.name.replace(/[,(].*/, ''))];
    const bulk = part.role === 'starch-bulk';
    const word = names.find(
      (one) => isNamed(one, dish.title) || (bulk && isInCompound(one, dish.title)),
    );
    const mac = hasTag(part.food, 'pasta') && MAC.test(dish.title) ? 'mac' : undefined;
    const key = word ?? mac;
    if (key !== undefined) named.set(key, [...(named.get(key) ?? []), part]);
  }
  return named;
}
