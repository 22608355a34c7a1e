/** Icings: half of one is enough on top of a cake, before anyone buys a stand-in for its sugar. */
import type { Family } from '../../../model.ts';
import type { Dish, Part } from '../dish.ts';
import { titleFoods } from '../title-foods.ts';

/** Excluding this id keeps every icing whole. */
const HALF_ICING = 'half-icing';

const HEADING =
  /frosting|icing|glaze|buttercream|glasur|zuckerguss|gla[cç]age|glassa|glaseado|cobertura|glazuur|glasyr/i;

const BAKES: ReadonlySet<Family> = new Set([
  'cake',
  'cookie',
  'brownie',
  'quick-bread',
  'enriched-yeast-bread',
  'biscuit',
  'choux',
]);

/** Least share of an icing that is sugar, and of the dish's net carbs that are the icing's. Own choice. */
const SUGARY = 0.35;
const WORTH_HALVING = 0.15;

/** Share of an icing from which a food of the title makes it a part of the dish in its own right. Own choice. */
const FILLING = 0.25;

/** Share of an icing from which its sugar makes it a glaze, whatever of the title flavours it. Own choice. */
const GLAZE = 0.6;

/** g of one white of a large egg (SR 172183). */
const WHITE_G = 33;

/** Whites of which half is a whole number again. */
const evenWhites = ({ food, grams }: Part): boolean =>
  food.id === 'egg-white' && Math.round(grams / WHITE_G) % 2 === 0;

/** A dish above its budget by less than this share needs no such cut. Own choice. */
const ABOVE = 1.15;

/** Share of an icing that is made (common practice, no source: 10-15 g on a small cake instead of 30). */
const MADE = 0.5;

/** Closeness lost by a thinner icing. Own choice. */
const ICING_LOSS = 0.04;

/** Less than this of a line, g, is a pinch or a drop that is not halved. Own choice. */
const PINCH_G = 1.5;

const carbs = (parts: readonly Part[]): number =>
  parts.reduce((sum, part) => sum + part.net * part.grams * part.eaten, 0);

const mass = (parts: readonly Part[]): number => parts.reduce((sum, part) => sum + part.grams, 0);

function isHalved(own: readonly Part[], dish: Dish): boolean {
  const { parts, goals } = dish;
  const sugar = mass(own.filter(({ role }) => role === 'sweetness'));
  const free = own.every(
    (part) =>
      (part.role !== 'egg' || evenWhites(part)) &&
      !goals.pinned.includes(part.key) &&
      !goals.setAmounts.some((one) => one.key === part.key),
  );
  const named = [...titleFoods(dish).values()].flat().filter((part) => own.includes(part));
  const filling =
    sugar < GLAZE * mass(own) &&
    mass(named.filter(({ role }) => role !== 'sweetness')) >= FILLING * mass(own);
  return (
    free && !filling && sugar >= SUGARY * mass(own) && carbs(own) >= WORTH_HALVING * carbs(parts)
  );
}

/** What is strewn over an icing stays as it is; what is cooked or stirred into it goes with its sugar. */
const STREWN: ReadonlySet<string> = new Set(['nuts and seeds', 'fruit', 'vegetables']);
const STREWN_FOODS: ReadonlySet<string> = new Set(['cacao-nib']);
const STIRRED_IN =
  /\b(?:blend|blitz|pur[eé]e|cook|simmer|soften|mash|melt|whisk|beat|stir|mix|grate|zest|juice|squeeze)/i;
const LAID_ON = /\b(?:garnish|decorat|scatter|sprinkl|to serve|for serving|for topping|to top)/i;

/** Juice of a fruit thins an icing, and goes with its sugar. */
function isStrewn({ food, steps, text }: Part): boolean {
  if (STREWN_FOODS.has(food.id)) return true;
  if (!STREWN.has(food.group) || /juice|zest|peel/.test(food.id)) return false;
  const isNuts = food.group === 'nuts and seeds';
  return isNuts || LAID_ON.test(text) || !STIRRED_IN.test(steps);
}

const halved = (part: Part): Part =>
  part.grams < PINCH_G || isStrewn(part)
    ? part
    : {
        ...part,
        grams: MADE * part.grams,
        gramsRange: {
          low: MADE * part.gramsRange.low,
          best: MADE * part.gramsRange.best,
          high: MADE * part.gramsRange.high,
        },
      };

/** The parts of a dish with half of each icing that carries much of the sugar, or as they are. */
export function withThinIcing(dish: Dish): Part[] {
  const { parts, main, goals, servings } = dish;
  const far = carbs(parts) / servings > ABOVE * goals.budgetG;
  if (!BAKES.has(main.family) || !far || goals.excludedSwaps.includes(HALF_ICING)) return parts;
  const headings = new Set(parts.flatMap(({ group }) => (group === null ? [] : [group])));
  const thin = [...headings].filter(
    (group) =>
      HEADING.test(group) &&
      isHalved(
        parts.filter((p) => p.group === group),
        dish,
      ),
  );
  return parts.map((part) => (thin.includes(part.group ?? '') ? halved(part) : part));
}

/** Closeness that a dish has lost by its thinner icing before anything else is changed. */
export const icingLoss = ({ parts }: Pick<Dish, 'parts'>): number =>
  parts.some(({ grams, written }) => grams < written) ? ICING_LOSS : 0;
