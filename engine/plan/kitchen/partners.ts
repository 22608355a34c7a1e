/** What goes with a food in step with it: the dressing of a smaller salad, the vinegar beside less honey. */
import { hasTag } from '../../foods/tags.ts';
import data from '../data/partners.json' with { type: 'json' };
import type { Dish, Part } from '../dish/dish.ts';
import { sweetness } from '../dish/food-figures.ts';
import { mentionsAny } from '../dish/word-search.ts';
import { withRouxFat } from './fats/roux-fat.ts';
import { near, stepFor, tidy } from './kitchen-steps.ts';
import { type Amount, total } from './planned-masses.ts';

const DRESSINGS: ReadonlySet<string> = new Set(data.dressings);

/** A change below this share is not worth asking for, and no partner falls below that share. Own choice. */
const UNNOTICED = 0.2;
const LEAST = 0.6;

/** Nor is less than this, g: half a tablespoon. Own choice. */
const SPOON_G = 7;

const SOUR_LESS = 'There is less sweet for it to balance.';
const DRESSING_LESS = 'There is less of the salad to dress.';

const isSour = ({ food }: Pick<Amount, 'food'>): boolean => hasTag(food, 'acid');

/** Oil, and what is sour or sold as a dressing. */
const dresses = (amount: Amount): boolean =>
  amount.role === 'fat' || isSour(amount) || DRESSINGS.has(amount.food.id);

const isKept = ({ origin, key }: Amount): boolean => origin === 'kept' && key !== null;

function lessened(amount: Amount, share: number, because: string): Amount {
  const exact = amount.grams * Math.max(LEAST, share);
  const grams = tidy(near(exact, stepFor('liquid', exact)));
  const noticed = amount.grams - grams >= Math.max(SPOON_G, UNNOTICED * amount.grams);
  return !noticed ? amount : { ...amount, grams, because };
}

/** Lines whose amount the user has set, or wants as it is. */
const isFree = ({ goals }: Dish, { key }: Amount): boolean =>
  key !== null && !goals.pinned.includes(key) && !goals.setAmounts.some((set) => set.key === key);

/** Share of a sum that is left now. */
const shareLeft = (now: number, was: number): number => (was <= 0 ? 1 : Math.min(1, now / was));

/** What is in the pan dresses nothing. */
const HOT = /\b(?:fr(?:y|ied)|saut|heat|roast|brown|grill|bake|skillet|brat|bak|pan\b)/i;

/** Whether a sentence that names a line heats it. */
function isHeated({ name, steps }: Part): boolean {
  const word =
    name
      .toLowerCase()
      .split(/\P{L}+/u)
      .findLast((one) => one.length > 2) ?? '';
  return steps
    .split(/[.;!\n]/)
    .some((sentence) => sentence.toLowerCase().includes(word) && HOT.test(sentence));
}

/** Of a salad with less in it: as much less of its dressing. */
function dressedLess(amounts: readonly Amount[], dish: Dish): Amount[] {
  if (!mentionsAny(data.salads, dish.title)) return [...amounts];
  const solid = (a: Amount): number => (dresses(a) ? 0 : a.eaten);
  const was = amounts.filter(isKept).reduce((sum, a) => sum + a.original * solid(a), 0);
  const share = shareLeft(total(amounts, solid), was);
  if (share > 1 - UNNOTICED) return [...amounts];
  const hot = new Set(dish.parts.flatMap((part) => (isHeated(part) ? [part.key] : [])));
  const isDressing = (a: Amount): boolean => isKept(a) && dresses(a) && !hot.has(a.key ?? '');
  return amounts.map((a) =>
    isDressing(a) && isFree(dish, a) ? lessened(a, share, DRESSING_LESS) : a,
  );
}

/** More sour than this share of the sweet was is what the dish is, not what balances it. Own choice. */
const MOST_SOUR = 1;

/** The juice of one fruit is squeezed into a sweet whole. */
const ONE_FRUIT =
  /(?:^|\D)(?:1|½|1\/2|one|a|half an?|eine[rs]?|einer halben|un[ea]?|een|en)\s+(?:large |small |medium |whole |unwaxed |grosse[rn]? |kleine[rn]? |bio-?)?(?:lemon|lime|orange|zitrone|limette|citron|citroen|limoen|lim[oó]n|limone)/i;
const SWEETS: ReadonlySet<string> = new Set(['custard', 'frozen-dessert', 'candy', 'sweet-sauce']);

const isOneFruit = (sour: Part | undefined, { sections }: Dish): boolean =>
  sour !== undefined &&
  SWEETS.has(sections[sour.section]?.family ?? '') &&
  ONE_FRUIT.test(sour.text);

/** The sweet lines that stand beside a sour one in some step. */
const besides = (sour: Part | undefined, sweet: Part): boolean =>
  sour !== undefined &&
  sour.section === sweet.section &&
  sour.steps.split('\n').some((step) => step !== '' && sweet.steps.includes(step));

/** Beside less that is sweet, in a dish: as much less of what is sour. */
function souredLess(amounts: readonly Amount[], dish: Dish): Amount[] {
  const partOf = new Map(dish.parts.map((part) => [part.key, part]));
  const sweets = dish.parts.filter(({ role, food }) => role === 'sweetness' && !isSour({ food }));
  return amounts.map((sour) => {
    if (!isKept(sour) || !isSour(sour) || !isFree(dish, sour)) return sour;
    if (isOneFruit(partOf.get(sour.key ?? ''), dish)) return sour;
    const own = sweets.filter((sweet) => besides(partOf.get(sour.key ?? ''), sweet));
    const keys = new Set(own.map(({ key }) => key));
    const was = own.reduce((sum, { written, food }) => sum + written * sweetness(food), 0);
    const mass = own.reduce((sum, { written }) => sum + written, 0);
    if (was <= 0 || sour.grams > MOST_SOUR * mass) return sour;
    const now = total(amounts, (a) => (a.key !== null && keys.has(a.key) ? sweetness(a.food) : 0));
    return lessened(sour, shareLeft(now, was), SOUR_LESS);
  });
}

/** The amounts of a dish with partners in step, a roux's butter too; a bake's balance is in its own rows. */
export const withPartners = (amounts: readonly Amount[], dish: Dish): Amount[] =>
  dish.main.dough ? [...amounts] : withRouxFat(souredLess(dressedLess(amounts, dish), dish), dish);
