/** Whether changes are worth making: not where they bring almost nothing, nor where they leave a plate nobody wants. */
import type { Goals, Plan } from '../../model.ts';
import type { Dish } from '../dish/dish.ts';
import { asksForMore } from '../model/trouble.ts';
import type { Request } from '../request.ts';
import { isServedOnPlates } from '../serving-size.ts';
import type { WayFound } from '../ways.ts';

/**
 * Less than this share of the net carbs saved by all changes together is not worth any of them: where the
 * budget stays out of reach, unless they save so much of what is above it; and of a light plan, whose smaller
 * piece does the rest. Own choice.
 */
const WORTHWHILE = { far: 0.2, ofExcess: 0.4, light: 0.15, lightOrSmaller: 0.2 } as const;

/** Whether changes that leave `net` of `start` g bring almost nothing. */
export const isLittle = (net: number, start: number, budgetG: number): boolean =>
  start - net < Math.min(WORTHWHILE.far * start, WORTHWHILE.ofExcess * (start - budgetG));

/**
 * A plate that still has this many times the budget, or one cut smaller that has this many, where a serving of the
 * page's size saves less than this share of its net carbs, is neither the dish nor within reach: the recipe stays as
 * it is, and its figures are told. Of one further off it must save more. Own choice.
 */
const HOPELESS = { timesBudget: 2, cut: 1.35, saves: 0.4 } as const;
const FAR_OFF = { timesBudget: 2.6, saves: 0.5 } as const;

/** Whether changes that leave `net` of `start` g are a plate nobody wants, in so many servings; a bake is cut smaller. */
export function isHopeless(
  { main, goals, servings }: Dish,
  net: number,
  start: number,
  now: number,
) {
  if (main.dough || !isServedOnPlates(main.family)) return false;
  const times = (net * servings) / now / goals.budgetG;
  const { saves } = now > servings || times > FAR_OFF.timesBudget ? FAR_OFF : HOPELESS;
  return (
    times > (now > servings ? HOPELESS.cut : HOPELESS.timesBudget) && net > (1 - saves) * start
  );
}

/** Why a recipe stays as it is though it is above the budget. */
export const whyItStays = (net: number, start: number, { budgetG }: Goals): string =>
  isLittle(net, start, budgetG)
    ? 'All changes together would bring almost nothing, so the recipe stays as it is.'
    : `All changes together would still leave ${net.toFixed(0)} g net carbs a serving, so the recipe stays as it is.`;

/**
 * Whether a light plan's changes are worth making: not where a smaller piece of the original fits as well for
 * little more, nor where all of them leave far too much.
 */
export function paysOff(
  { plan, net }: WayFound,
  { within, smaller }: { within: Plan; smaller: WayFound | null },
  { options: { goals }, read, start }: Request,
): boolean {
  const asked = goals.adjustments.length + goals.setAmounts.length > 0 || asksForMore({ goals });
  if (asked) return true;
  if (!within.met && isHopeless(read(goals), net, start, plan.servings)) return false;
  const share = smaller === null ? WORTHWHILE.light : WORTHWHILE.lightOrSmaller;
  return net <= (1 - share) * start || (plan.met && smaller === null);
}
