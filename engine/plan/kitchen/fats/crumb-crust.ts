/** A crust of ground nuts in place of biscuit crumbs: how much butter binds it, and one sweetener in it. */
import { hasTag } from '../../../foods/tags.ts';
import data from '../../data/partners.json' with { type: 'json' };
import type { Dish, Part } from '../../dish/dish.ts';
import { fat } from '../../dish/food-figures.ts';
import { near, stepFor, tidy } from '../kitchen-steps.ts';
import { type Amount, total } from '../planned-masses.ts';
import { PLAIN_FAT } from './own-fat.ts';

const { classes, fatPerGram, sweetPerGram, mostFatGone } = data.crumbCrust;

/** Whether a line is biscuits for a base. */
export const isCrumbs = (part: Part): boolean => classes.includes(part.class);

const isSweet = ({ role, food }: Pick<Amount, 'role' | 'food'>): boolean =>
  role === 'sweetness' || hasTag(food, 'sweetener');

/** g of what the crumbs are made of now, without what sweetens them. */
const bodyOf = (own: readonly Amount[]): number => total(own, (a) => (isSweet(a) ? 0 : 1));

/** Grams of fat that bind the stand-ins of a line of biscuits. */
export const crumbFat = ({ grams }: Part, own: readonly Amount[]): number =>
  Math.max(Math.min(grams, fatPerGram * bodyOf(own)), (1 - mostFatGone) * grams);

/** Lines listed with a base: its butter, sugar, salt and spice, before what goes on it. */
const GOES_IN: ReadonlySet<string> = new Set(['sweetness', 'salt', 'flavour']);
const goesIn = ({ role, food }: Part): boolean =>
  GOES_IN.has(role) || (role === 'fat' && fat(food) > PLAIN_FAT);

/** More sugar than this beside a gram of crumbs is not the crust's. Own choice. */
const MOST_SUGAR = 0.45;

/** The dry sugars that are pressed into the base with a line of biscuits. */
function sugarsOf(crumbs: Part, { parts }: Pick<Dish, 'parts'>): Part[] {
  const at = parts.indexOf(crumbs);
  const isNear = (part: Part): boolean =>
    part.section === crumbs.section && part.group === crumbs.group && goesIn(part);
  const reach = (list: readonly Part[]): Part[] => {
    const end = list.findIndex((part) => !isNear(part));
    return end < 0 ? [...list] : list.slice(0, end);
  };
  const beside = [...reach(parts.slice(0, at).reverse()), ...reach(parts.slice(at + 1))];
  return beside.filter(
    ({ role, class: cls, grams }) =>
      role === 'sweetness' && cls === 'dry-sugars' && grams <= MOST_SUGAR * crumbs.grams,
  );
}

/** A stand-in for sugar in a crust, no more of it than sweetens ground nuts. */
function lessSweet(amount: Amount, share: number): Amount {
  const exact = amount.grams * share;
  return share >= 1 ? amount : { ...amount, grams: tidy(near(exact, stepFor('sweetness', exact))) };
}

/** The amounts of a dish in which a crust that has sugar of its own is not sweetened once more. */
export function withOneSweetener(amounts: readonly Amount[], dish: Dish): Amount[] {
  return dish.parts.filter(isCrumbs).reduce<Amount[]>(
    (list, crumbs) => {
      const own = list.filter(({ key, origin }) => key === crumbs.key && origin === 'swap');
      const sugars = sugarsOf(crumbs, dish);
      if (!own.some(isSweet) || sugars.length === 0) return list;
      const keys = new Set(sugars.map(({ key }) => key));
      const isStandIn = ({ key, origin }: Amount): boolean =>
        origin === 'swap' && key !== null && keys.has(key);
      const kept = total(list, ({ key, origin }) =>
        origin === 'kept' && key !== null && keys.has(key) ? 1 : 0,
      );
      const come = total(list, (a) => (isStandIn(a) ? 1 : 0));
      const share = come > 0 ? Math.max(0, sweetPerGram * bodyOf(own) - kept) / come : 1;
      return list
        .filter((a) => !(own.includes(a) && isSweet(a)))
        .map((a) => (isStandIn(a) ? lessSweet(a, share) : a));
    },
    [...amounts],
  );
}
