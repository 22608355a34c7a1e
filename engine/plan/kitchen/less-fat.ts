/** Less of a dough's own fat beside flour of nuts or seeds, which lets go of its own. */
import { hasTag } from '../../foods/tags.ts';
import data from '../data/partners.json' with { type: 'json' };
import type { Dish, Part, Section } from '../dish/dish.ts';
import { absorption, fat } from '../dish/food-figures.ts';
import { near, stepFor, tidy } from './kitchen-steps.ts';
import { fatOf } from './own-fat.ts';
import type { Amount } from './planned-masses.ts';

const { perGramOfFat, leastShare, leastGrams, dough, crumbs } = data.lessFat;

/** Where butter in pieces makes layers or flakes. */
const LAYERED: ReadonlySet<string> = new Set(data.lessFat.unless);

/** A flour with less fat than this brings none that counts, share; one that holds more water keeps its fat in a gel. Own choice. */
const FATTY = 0.3;
const MOST_ABSORPTION = 0.6;

const isNutFlour = ({ origin, food }: Amount): boolean =>
  origin === 'swap' &&
  hasTag(food, 'heavy-flour') &&
  fat(food) >= FATTY &&
  absorption(food) <= MOST_ABSORPTION;

/** Fat that the stand-ins of a line bring beyond what went, g. */
function broughtBy(part: Part, own: readonly Amount[]): number {
  const gone = own.reduce((left, a) => (a.origin === 'kept' ? left - a.grams : left), part.grams);
  const come = own.filter(isNutFlour).reduce((sum, { grams, food }) => sum + grams * fat(food), 0);
  return come - gone * fat(part.food);
}

/** Grams of a fat that stay beside so much more of it in the flour; all of it when less would not be noticed. */
function leftOf(line: Part, now: number, flour: Part, own: readonly Amount[]): number {
  const { most, keeps } = flour.base ? dough : crumbs;
  const mass = own.reduce((sum, a) => sum + a.grams, 0);
  const exact = Math.max(
    line.grams - perGramOfFat * broughtBy(flour, own),
    (1 - most) * line.grams,
    keeps * mass,
  );
  const grams = tidy(near(exact, stepFor('fat', exact)));
  const less = now - grams;
  return less < Math.max(leastGrams, leastShare * line.grams) ? now : grams;
}

/** The amounts of a part with the fat its new flours are worked with in step. */
export function withLessFat(amounts: readonly Amount[], section: Section, dish: Dish): Amount[] {
  if (LAYERED.has(section.family) && section.dough) return [...amounts];
  const flours = dish.parts.filter(({ key }) =>
    amounts.some((a) => a.key === key && isNutFlour(a)),
  );
  const [flour] = flours.sort((a, b) => b.grams - a.grams);
  const line = flour === undefined ? null : fatOf(flour, dish);
  if (flour === undefined || line === null || line.fixed) return [...amounts];
  const own = amounts.filter(({ key }) => key === flour.key);
  return amounts.map((a) =>
    a.key === line.key && a.origin === 'kept'
      ? { ...a, grams: leftOf(line, a.grams, flour, own) }
      : a,
  );
}
