/** The light changes, and the pieces they are cut into. */
import { type Answer, isMet, type Question, solveDish } from '../answer.ts';
import type { Dish } from '../dish/dish.ts';
import { availabilityOf } from '../dish/shopping.ts';
import { total } from '../kitchen/planned-masses.ts';
import { closenessOf, lossOf } from '../model/closeness.ts';
import type { Extent } from '../model/plan-model.ts';
import type { Request } from '../request.ts';
import {
  fedPortions,
  isWorthCutting,
  mostServings,
  NEARLY,
  type Portions,
  servingsThatFit,
} from '../serving-size.ts';
import type { Rest } from '../solve.ts';
import type { Work } from '../solver/work.ts';

/** Share by which kitchen rounding may miss what the smallest serving allows. Own choice. */
const CRUMB = 0.03;

type Ask = (extent: Extent, atMost?: number, rest?: Rest) => Answer;

/** Net carbs, share of those of two changes, from which a third is worth making. Own choice. */
const THIRD_CHANGE = 0.9;

/** A rest above the budget, share of it, up to which all three changes are worth making. Own choice. */
const WITHIN_REACH = 1.75;

/**
 * What an easy sugar saves that is left where the budget stays out of reach: share of the net carbs there are, or of
 * what is above the smallest serving. It is what a cook would take next, before any more flour. Own choice.
 */
const EASY_SUGAR = { ofAll: 0.05, ofExcess: 0.4, flourKept: 0.97 } as const;

const flourOf = ({ solved }: Answer): number =>
  total(solved.kitchen.amounts, ({ base, origin, grams }) =>
    base && origin === 'kept' ? grams : 0,
  );

/** Whether `more` takes enough else than flour beyond what `found` does. */
function takesEasySugar(more: Answer, found: Answer, smallest: number): boolean {
  const { net } = found.solved;
  const least = Math.min(EASY_SUGAR.ofAll * net, EASY_SUGAR.ofExcess * (net - smallest));
  return net - more.solved.net >= least && flourOf(more) >= EASY_SUGAR.flourKept * flourOf(found);
}

/** How many foods an answer brings that the dish did not have and no cupboard holds. */
export function productsOf({ model: { dish }, solved }: Answer): number {
  const had = new Set(dish.parts.map(({ food }) => food.id));
  const brought = solved.kitchen.amounts.filter(
    ({ food, grams }) =>
      grams > 0 && !had.has(food.id) && availabilityOf(food, dish.goals) !== 'cupboard',
  );
  return new Set(brought.map(({ food }) => food.id)).size;
}

/** Where two changes leave the smallest serving above the budget: three, if they let it fit or bring much. */
function fuller(smallest: number, ask: Ask): Answer {
  const two = ask('lightest', Number.POSITIVE_INFINITY);
  if (two.solved.net <= smallest) return two;
  const near = two.solved.net <= NEARLY * smallest;
  const fitting = ask('fuller', smallest);
  const fits = fitting.solved.net <= smallest;
  if (fits && (!near || productsOf(fitting) <= productsOf(two))) return fitting;
  if (near) return two;
  const three = ask('fullest', Number.POSITIVE_INFINITY);
  const found = three.solved.net <= THIRD_CHANGE * two.solved.net ? three : two;
  const dear = ask('fullest', Number.POSITIVE_INFINITY, 'dear');
  const closes = dear.solved.net <= WITHIN_REACH * smallest;
  const best = closes && dear.solved.net <= THIRD_CHANGE * found.solved.net ? dear : found;
  const dearest = ask('fullest', Number.POSITIVE_INFINITY, 'dearest');
  return takesEasySugar(dearest, best, smallest) ? dearest : best;
}

/**
 * The light changes that pay for themselves and let the smallest sensible serving fit; when none does,
 * those that pay, no further than a dish one would still serve.
 */
function paying(low: Answer, smallest: number, whole: boolean, ask: Ask): Answer {
  const fits = ({ solved }: Answer): boolean => solved.net <= smallest;
  const pays = (): Answer =>
    whole ? ask('lightest', Number.POSITIVE_INFINITY) : fuller(smallest, ask);
  if (low.solved.net > (1 + CRUMB) * smallest) return pays();
  const cheap = ask('lighter', smallest);
  if (fits(cheap)) return cheap;
  if (fits(low)) return low;
  // Kitchen rounding may put the lowest a crumb above what the smallest serving allows.
  const tight = ask('lighter', (1 - CRUMB) * smallest);
  return fits(tight) ? tight : pays();
}

/**
 * Shares of the budget that a piece may come to when an easy number of pieces leaves some of it, as figures are
 * estimates; and the closeness that using up the rest must gain. Own choice.
 */
const ROOM = [
  { share: 0.96, gain: 0 },
  { share: 1, gain: 0.05 },
] as const;

/** Times the light changes are planned again for the pieces they are then cut into. */
const RECUTS = 3;

/** Light changes, and the portions that they leave a meal. */
export interface LightAnswer {
  found: Answer;
  portions: Portions;
}

/** Energy of a serving of the page's size, kcal. */
const kcalOf = ({ model, solved }: Answer): number =>
  total(solved.kitchen.amounts, ({ food, eaten }) => eaten * (food.per100g.energyKcal ?? 0)) /
  (100 * model.dish.servings);

/** Times the light changes are planned again where they would leave less than a meal. */
const LESS_CUT = 2;

/** The light changes, cut no further than a plate of them is still a meal. */
export function lightAnswer(
  request: Request,
  portions: Portions,
  dish: Dish,
  work: Work,
): LightAnswer {
  let most = portions;
  let found = cutAnswer(request, most, dish, work);
  for (let round = 0; round < LESS_CUT; round++) {
    const fed = fedPortions(most, kcalOf(found));
    if (fed.most === most.most) break;
    most = fed;
    found = cutAnswer(request, most, dish, work);
  }
  return { found, portions: fedPortions(most, kcalOf(found)) };
}

/**
 * The light changes, with the sweetener that a stomach bears in a piece of the size they are served in: first
 * as many pieces as are sensible, then as few as those changes ask for.
 */
function cutAnswer(request: Request, portions: Portions, dish: Dish, work: Work): Answer {
  const { options, start } = request;
  const { budgetG } = options.goals;
  const smallest = (budgetG * portions.most) / portions.servings;
  // Of bites two are eaten at once, so that each may bring half as much.
  const eatenIn = (pieces: number): number =>
    Math.max(portions.servings, (pieces * portions.doses) / portions.most);
  const planned = (count: number): Answer => {
    const pieces = eatenIn(count);
    const ask = (extent: Extent, atMost?: number, rest: Rest = 'plain'): Answer => {
      const question: Question = { start, budgetG, extent, pieces, rest };
      return solveDish(dish, atMost === undefined ? question : { ...question, atMost }, work);
    };
    const low = ask('lighter');
    return isMet(low.solved.net, options.goals) ? low : paying(low, smallest, portions.plate, ask);
  };
  const countFor = ({ solved }: Answer): number | null =>
    servingsThatFit(solved.net, budgetG, portions);
  const closeness = ({ model, solved }: Answer): number =>
    closenessOf(lossOf(model, solved.solution.values));
  // An easy number of pieces may leave room for less of a change.
  const closestFor = (pieces: number, found: Answer): Answer => {
    let best = found;
    for (const { share, gain } of ROOM) {
      const room = (share * budgetG * pieces) / portions.servings;
      const eaten = eatenIn(pieces);
      const question: Question = { start, budgetG: room, extent: 'lighter', pieces: eaten };
      const closest = solveDish(dish, question, work);
      const fits = !closest.idle && countFor(closest) === pieces;
      if (fits && closeness(closest) > closeness(best) + (best === found ? 0 : gain))
        best = closest;
    }
    return best;
  };
  let pieces = mostServings(portions);
  let fitting: { found: Answer; pieces: number } | null = null;
  for (let round = 0; round < RECUTS; round++) {
    const found = planned(pieces);
    const count = countFor(found);
    if (count !== null && count >= pieces) return closestFor(count, found);
    // Fewer pieces bear less sweetener each than the changes that asked for so few.
    if (count === null && fitting !== null) return closestFor(fitting.pieces, fitting.found);
    if (count === null && !isWorthCutting(found.solved.net, budgetG, portions)) break;
    if (count === null) return found;
    fitting = { found, pieces };
    pieces = count;
  }
  return planned(portions.servings);
}
