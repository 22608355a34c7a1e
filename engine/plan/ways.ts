/** The ways a dish can be brought within the budget, and which of them we would take. */
import type { Note, Plan, Way } from '../model.ts';
import { type Answer, isMet, planOf } from './answer.ts';
import { shownGrams } from './binding-limits.ts';
import { wishLimits } from './limits.ts';
import { LINE_TROUBLE } from './model/trouble.ts';
import { NEARLY, type Portions, servingsFor, servingsThatFit } from './serving-size.ts';
import type { Work } from './solver/work.ts';

/** A heavier rework than this is better food as a smaller piece of a lighter one: bakers and cooks graded 104 plans. */
const LEAST_CLOSENESS = 0.55;

/** A rework further from the original than this is another dish, whatever its carbohydrate. Own choice. */
const HEAVY_CLOSENESS = { meal: 0.45, sweet: 0.48 } as const;

/** Sweets that are no dough: half a dozen stand-ins for one of them are a recipe of their own. */
const SWEETS: ReadonlySet<string> = new Set(['custard', 'frozen-dessert', 'sweet-sauce', 'candy']);

const leastOfHeavy = ({ family }: Plan): number =>
  HEAVY_CLOSENESS[SWEETS.has(family.id) ? 'sweet' : 'meal'];

/** Most foods of a special shop in a plan we recommend. Own choice. */
const MOST_SPECIALITIES = 4;

/** A plan, and the net carbs of a serving of the page's size, g. */
export interface WayFound {
  plan: Plan;
  net: number;
}

/** Words for a serving that is smaller, and for one that is too much all the same. */
function servedLimits(net: number, from: number, to: number, budgetG: number): Plan['limits'] {
  const each = (net * from) / to;
  const limits: Plan['limits'] = [];
  if (each > budgetG + 1e-9)
    limits.push({
      code: 'BUDGET_NOT_MET',
      text: `This way a serving has ${shownGrams(each)} g net carbs; the budget is ${shownGrams(budgetG)} g.`,
    });
  if (to !== from)
    limits.push({
      code: 'SMALLER_SERVING',
      text: `Cut into ${shownGrams(to)} servings instead of ${shownGrams(from)}, each has ${shownGrams(each)} g net carbs.`,
    });
  return limits;
}

/** An answer served in as many servings as bring it within the budget, or as many as are sensible. */
function served(way: Way, found: Answer, portions: Portions, notes: Note[], work: Work): WayFound {
  const { goals } = found.model.dish;
  const { net } = found.solved;
  const { servings } = portions;
  const count = servingsFor(net, goals.budgetG, portions);
  const limits = [...servedLimits(net, servings, count, goals.budgetG), ...wishLimits(found, work)];
  const met = isMet((net * servings) / count, goals);
  return { plan: planOf(found, { way, servings: count, met }, limits, notes), net };
}

const sameDish = (a: Plan, b: Plan): boolean =>
  a.servings === b.servings && JSON.stringify(a.items) === JSON.stringify(b.items);

/** A light answer as a way; null when it changes nothing, or is the same as `within`. */
export function lighterWay(
  found: Answer,
  within: Plan,
  portions: Portions,
  notes: Note[],
  work: Work,
): WayFound | null {
  const way = served('lighter', found, portions, notes, work);
  return way.plan.swaps.length === 0 || sameDish(way.plan, within) ? null : way;
}

/** The original, cut so that a serving fits; null when it fits as it is, or a serving would be too small. */
export function smallerWay(
  found: Answer,
  portions: Portions,
  notes: Note[],
  work: Work,
): WayFound | null {
  const { budgetG } = found.model.dish.goals;
  const count = servingsThatFit(found.solved.net, budgetG, portions);
  if (count === null || count === portions.servings) return null;
  return served('smaller', found, portions, notes, work);
}

/** How much a smaller serving counts against a plan: two thirds of a meal are missed by more than a third. Own choice. */
const SIZE_POWER = 1.25;

/** How near a plan is to the meal it was: its closeness, the size of its serving, and how far that is above the budget. */
function nearness({ plan, net }: WayFound, servings: number): number {
  const size = servings / plan.servings;
  const over = plan.met ? 1 : plan.budgetG / Math.max(net * size, 1e-9);
  return plan.closeness * size ** SIZE_POWER * over ** 2;
}

const isNearlyMet = ({ plan, net }: WayFound, servings: number): boolean =>
  plan.met || (net * servings) / plan.servings <= NEARLY * plan.budgetG;

const specialities = ({ shopping }: Plan): number =>
  shopping.filter(({ availability }) => availability === 'speciality').length;

const isBuyable = (plan: Plan): boolean => specialities(plan) <= MOST_SPECIALITIES;

/** Whether fewer changes bring a serving of the same size within the budget, and no further than they spare trouble. */
function isNoFurther(lighter: Plan, within: Plan, servings: number): boolean {
  const spared = within.swaps.length - lighter.swaps.length;
  const isSame = lighter.met && lighter.servings === servings && spared > 0;
  return isSame && lighter.closeness + spared * LINE_TROUBLE >= within.closeness;
}

/** A plate smaller than this share of the page's is a meal no longer. Own choice. */
const SMALL_SERVING = 0.7;

/** Whether a heavy `within` is better all the same: the nearest is too much, or small where one bought product does. */
function beatsNearest(within: Plan, nearest: WayFound | undefined, servings: number): boolean {
  if (!within.met || within.closeness < leastOfHeavy(within) || !isBuyable(within)) return false;
  if (nearest === undefined || !isNearlyMet(nearest, servings)) return true;
  return servings / nearest.plan.servings < SMALL_SERVING && specialities(within) <= 1;
}

/**
 * The way we would take: `within` when it is close to the original and easily bought, else the nearest of
 * all. Where that is a small part of the meal, or not within the budget, a heavier rework that is is better.
 */
export function recommendedWay(
  within: WayFound,
  others: readonly WayFound[],
  servings: number,
): Way {
  const { plan } = within;
  if (plan.met && plan.closeness >= LEAST_CLOSENESS && isBuyable(plan)) {
    const lighter = others.find((other) => other.plan.way === 'lighter');
    return lighter !== undefined && isNoFurther(lighter.plan, plan, servings)
      ? 'lighter'
      : 'within';
  }
  // A smaller plate of the original is no reason against a little less of something on the whole plate.
  const rivals = plan.swaps.length > 0 ? others.filter((o) => o.plan.way === 'lighter') : others;
  const missed = !plan.met && isBuyable(plan) && !rivals.some((o) => o.plan.met);
  const near = missed ? [...others, within] : others;
  const close = near.filter((other) => other.plan.closeness >= LEAST_CLOSENESS);
  const [nearest] = (close.length > 0 ? close : [...others]).sort(
    (a, b) => nearness(b, servings) - nearness(a, servings),
  );
  if (beatsNearest(plan, nearest, servings)) return 'within';
  return nearest?.plan.way ?? 'within';
}
