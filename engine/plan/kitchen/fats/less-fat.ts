/** Less of a dough's own fat beside flour of nuts or seeds, which lets go of its own. */
import { hasTag } from '../../../foods/tags.ts';
import type { Family } from '../../../model.ts';
import data from '../../data/partners.json' with { type: 'json' };
import type { Dish, Part, Section } from '../../dish/dish.ts';
import { absorption, fat } from '../../dish/food-figures.ts';
import { near, stepFor, tidy } from '../kitchen-steps.ts';
import type { Amount } from '../planned-masses.ts';
import { crumbFat, isCrumbs } from './crumb-crust.ts';
import { fatOf } from './own-fat.ts';

const { perGramOfFat, leastShare, leastGrams } = data.lessFat;

/** Shares of the fat that may go, and of the flour's mass that stays as fat. */
interface Bounds {
  most: number;
  keeps: number;
}

const MOST: Partial<Record<Family, number>> = data.lessFat.most;
const KEEPS: Partial<Record<Family, number>> = data.lessFat.keeps;

/** What a part of a dish gives of its fat; null where it needs all of it. */
function boundsOf({ dough, family }: Section): Bounds | null {
  if (!dough) return data.lessFat.coats;
  const most = MOST[family];
  return most === undefined ? null : { most, keeps: KEEPS[family] ?? 0 };
}

/** A flour with less fat than this brings none that counts, share; one that holds more water keeps its fat in a gel. Own choice. */
const FATTY = 0.3;
const MOST_ABSORPTION = 0.6;

/** What only sticks to a cutlet, in part, is worked with no fat. Own choice. */
const STICKS = 0.9;

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

/** The least grams of a line of fat that stay beside the stand-ins of a flour. */
const leastOf = (line: Part, own: readonly Amount[], { most, keeps }: Bounds): number =>
  Math.max((1 - most) * line.grams, keeps * own.reduce((sum, a) => sum + a.grams, 0));

/** Grams of the fat beside a flour, before it is weighed out; null where it needs all of it. */
function fatBeside(
  flour: Part,
  line: Part,
  own: readonly Amount[],
  section: Section,
): number | null {
  if (isCrumbs(flour)) return crumbFat(line, own);
  const bounds = boundsOf(section);
  if (bounds === null) return null;
  return Math.max(line.grams - perGramOfFat * broughtBy(flour, own), leastOf(line, own, bounds));
}

/** Grams of a fat that stay where there are `now`; as many when less would not be noticed. */
function leftOf(line: Part, now: number, exact: number): number {
  const grams = tidy(near(exact, stepFor('fat', exact)));
  return now - grams < Math.max(leastGrams, leastShare * line.grams) ? now : grams;
}

/** Whether steps that name a fat and a flour work them together; a dough is one whole. */
const isWorkedWith = (line: Part, flour: Part, { dough }: Section): boolean =>
  dough || line.steps === '' || flour.steps.split('\n').some((step) => line.steps.includes(step));

/** The amounts of a part with the fat its new flours are worked with in step. */
export function withLessFat(amounts: readonly Amount[], section: Section, dish: Dish): Amount[] {
  const flours = dish.parts.filter(
    ({ key, eaten }) => eaten >= STICKS && amounts.some((a) => a.key === key && isNutFlour(a)),
  );
  const [flour] = flours.sort((a, b) => b.grams - a.grams);
  const line = flour === undefined ? null : fatOf(flour, dish);
  if (flour === undefined || line === null || line.fixed || !isWorkedWith(line, flour, section))
    return [...amounts];
  const own = amounts.filter(({ key }) => key === flour.key);
  const exact = fatBeside(flour, line, own, section);
  if (exact === null) return [...amounts];
  return amounts.map((a) =>
    a.key === line.key && a.origin === 'kept' ? { ...a, grams: leftOf(line, a.grams, exact) } : a,
  );
}
