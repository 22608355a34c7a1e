/** Less liquid in the pot where less of what drinks it cooks there. */
import table from '../data/pot-liquid.json' with { type: 'json' };
import type { Dish, Part } from '../dish/dish.ts';
import { mentionsAny } from '../dish/word-search.ts';
import { near, tidy } from './kitchen-steps.ts';
import type { Amount } from './planned-masses.ts';

const CLASSES = new Map(table.takes.map((row) => [row.class, row.ml]));
const FOODS = new Map<string, number>(Object.entries(table.foods));
const POT = new Set(table.pot);
/** What oats swell in besides, in a porridge. */
const PORRIDGE = new Set(table.porridge);

/** Boiled in water of its own that is poured off. */
const POURED_OFF =
  /\b(?:drain|colander|strain|abgie|abtropf|abseih|afgiet|uitlek|escurr|escorr|scola|colino|colador|passoire|häll av|hæld|hell av)|goutt/i;
/** What stays soup whatever it is boiled with. */
const SOUPS = [
  ...['soup', 'chowder', 'broth', 'gumbo', 'ramen', 'pho ', 'minestr', 'congee'],
  ...['suppe ', 'suppen', 'soep', 'soupe', 'sopa ', 'zuppa', 'soppa', 'brodo', 'bouillon'],
];
/** What is eaten with much liquid. */
const IN_LIQUID = [...SOUPS, 'stew', 'eintopf', 'goulash', 'gulasch', 'chili', 'curry'];

/** Whether a dish has its liquid on the plate: water that a vegetable gives off is none too much there. */
export const isEatenWithLiquid = ({ title }: Dish): boolean => mentionsAny(IN_LIQUID, title);

/** Cooked in much, of which what swells in it takes a part. */
const STEWS = ['stew'];
const MOST_PER_GRAM_IN_STEW = 15;
const PORRIDGES = ['porridge', 'oatmeal', 'overnight', 'oats ', 'bircher'];
const BAKED = ['bake', 'cookie', 'muffin', 'bars'];
const RISOTTO = ['risotto', 'orzotto', 'farrotto'];
/** g of liquid a gram of risotto rice is stirred with, as the pan stands open (common practice, no source). */
const STIRRED = 3.2;

/** More liquid than this for a gram of what drinks it is a soup or a pot to boil in. Own choice. */
const MOST_PER_GRAM = 6;
/** Soft polenta, grits and porridge are stirred with more (common practice, no source). */
const OPEN_PAN: ReadonlySet<string> = new Set(['cornmeals', 'oats']);
const MOST_PER_GRAM_IN_OPEN_PAN = 8;
/** What stays of the liquid at least, share and g: meat and vegetables cook in it too. Own choice. */
const LEAST = { share: 0.2, grams: 100 };
/** A change below this share is not worth asking for. Own choice. */
const UNNOTICED = 0.1;

const BECAUSE = 'There is less in the pot that takes it up.';

function drunkBy({ food, key }: Amount, part: Part | undefined, dish: Dish): number {
  const own = FOODS.get(food.id);
  const kind = part !== undefined && key !== null && part.food.id === food.id ? part.class : '';
  if (kind === 'rice-dry' && mentionsAny(RISOTTO, dish.title)) return STIRRED;
  return own ?? CLASSES.get(kind) ?? 0;
}

const shares = (a: string, b: string): boolean =>
  a !== '' && a.split('\n').some((step) => b.includes(step));

/** The step that follows the last one of a part, so that 'stir in the rice. / Pour in the stock.' belong together. */
function stepsAround({ steps }: Part, { method }: Dish): string {
  const all = method.split('\n');
  const own = new Set(steps.split('\n'));
  return all.filter((step, at) => own.has(step) || own.has(all[at - 1] ?? '')).join('\n');
}

/** Whether a food is what the part swells in. */
function isLiquidOf(part: Part, { food }: Part, { title }: Dish): boolean {
  if (part.class !== 'oats') return POT.has(food.id);
  if (!mentionsAny(PORRIDGES, title) || mentionsAny(BAKED, title)) return false;
  return POT.has(food.id) || PORRIDGE.has(food.id);
}

/** Spoons of water stir a starch smooth or thin a sauce; nothing cooks in them, g. Own choice. */
const SPOONS_G = 60;

/** The lines of liquid that a part cooks in; none when it is boiled apart or in much of it. */
function potOf(part: Part, dish: Dish): Part[] {
  // The method may call it by another word; then it is looked for among the lines of its own group.
  const unnamed = part.steps === '';
  if (!CLASSES.has(part.class) || POURED_OFF.test(unnamed ? dish.method : part.steps)) return [];
  const around = stepsAround(part, dish);
  // A risotto has one pan, in however many steps it is told.
  const isOnePan = part.class === 'rice-dry' && mentionsAny(RISOTTO, dish.title);
  const pot = dish.parts.filter(
    (one) =>
      isLiquidOf(part, one, dish) &&
      one.grams > SPOONS_G &&
      one.section === part.section &&
      !dish.goals.pinned.includes(one.key) &&
      (isOnePan || (unnamed ? one.group === part.group : shares(one.steps, around))),
  );
  // What a part has of its own stands in its own list, whatever else the words fit.
  const listed = part.group === null ? [] : pot.filter((one) => one.group === part.group);
  const found = listed.length > 0 ? listed : pot;
  const grams = found.reduce((sum, one) => sum + one.grams, 0);
  return grams <= mostFor(part, dish) * part.grams ? found : [];
}

/** The most liquid that a gram of a part still drinks from, g. */
function mostFor(part: Part, { title }: Dish): number {
  if (mentionsAny(STEWS, title)) return MOST_PER_GRAM_IN_STEW;
  return OPEN_PAN.has(part.class) ? MOST_PER_GRAM_IN_OPEN_PAN : MOST_PER_GRAM;
}

/** What a part's line takes up of its liquid, before and now, g. */
function takenUp(part: Part, amounts: readonly Amount[], dish: Dish): { was: number; now: number } {
  const now = amounts
    .filter(({ key }) => key === part.key)
    .reduce((sum, a) => sum + a.grams * drunkBy(a, part, dish), 0);
  const before = amounts.find(({ key, origin }) => key === part.key && origin === 'kept');
  return { was: before === undefined ? now : part.grams * drunkBy(before, part, dish), now };
}

/** More water than this for a gram of grain is poured off, or cooks something else. Own choice. */
const MOST_OF_ITS_OWN = 3.2;

/** Whether a grain is boiled in plain water of its own, of which it takes all. */
const hasOwnWater = (part: Part, pot: readonly Amount[], whole: number): boolean =>
  (part.class === 'rice-dry' || part.class === 'grains-dry') &&
  pot.every(({ food }) => food.id === 'water') &&
  whole <= MOST_OF_ITS_OWN * part.grams;

/** Share of a part that stays: it wants as much for each gram as it had. */
const leftOf = ({ key, food, grams }: Part, amounts: readonly Amount[]): number =>
  amounts.reduce((sum, a) => sum + (a.key === key && a.food.id === food.id ? a.grams : 0), 0) /
  Math.max(grams, 1e-9);

const stepOf = (grams: number): number => (grams >= 200 ? 25 : 10);

function lessened(amount: Amount, share: number): Amount {
  const grams = tidy(near(amount.grams * share, stepOf(amount.grams)));
  return { ...amount, grams, because: BECAUSE };
}

/** Liquid of the pot that stands in for a line. */
const isWater = ({ origin, food }: Amount): boolean => origin === 'swap' && POT.has(food.id);

/** The same of what a part cooks in: of a porridge milk as well. */
const isPoured = (amount: Amount, part: Part): boolean =>
  isWater(amount) ||
  (amount.origin === 'swap' && part.class === 'oats' && PORRIDGE.has(amount.food.id));

/** The amounts with the pot's liquid in step with what drinks it. */
export function withPotLiquid(amounts: readonly Amount[], dish: Dish): Amount[] {
  if (mentionsAny(SOUPS, dish.title)) return [...amounts];
  let now = [...amounts];
  for (const part of dish.parts) {
    const { was, now: takes } = takenUp(part, amounts, dish);
    if (takes >= was) continue;
    const keys = new Set(potOf(part, dish).map(({ key }) => key));
    // Of juice that has given way to water, what is left is for its taste.
    const watered = new Set(now.flatMap((a) => (isWater(a) && a.key !== null ? [a.key] : [])));
    const pot = now.filter(
      (a) =>
        a.key !== null &&
        keys.has(a.key) &&
        (isPoured(a, part) || (a.origin === 'kept' && !watered.has(a.key))),
    );
    const whole = pot.reduce((sum, a) => sum + a.grams, 0);
    const least = Math.max(
      Math.max(LEAST.share, part.class === 'rice-dry' ? leftOf(part, amounts) : 0) * whole,
      Math.min(LEAST.grams, whole),
    );
    const wants = hasOwnWater(part, pot, whole) ? (whole * takes) / was : whole + takes - was;
    const share = Math.max(least, wants) / Math.max(whole, 1e-9);
    if (whole <= 0 || share > 1 - UNNOTICED) continue;
    now = now.map((a) => (pot.includes(a) ? lessened(a, share) : a));
  }
  return now;
}
