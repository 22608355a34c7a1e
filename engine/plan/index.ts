/** The plan: the least change that brings a serving within its net-carb budget while the dish still works. */
import type { FoodTable } from '../foods/index.ts';
import { keptFor } from '../kept-results.ts';
import type {
  Adjustment,
  FrontierPoint,
  Goals,
  Ingredient,
  Note,
  Plan,
  Tally,
  Way,
} from '../model.ts';
import {
  type Answer,
  isMet,
  notesOf,
  planOf,
  type Question,
  solveDish,
  unchangedAnswer,
} from './answer.ts';
import type { Dish } from './dish/dish.ts';
import { readDish } from './dish/read-dish.ts';
import { piecesServed } from './dish/served-pieces.ts';
import { frontierOf } from './frontier.ts';
import { limitsOf } from './limits.ts';
import { closenessOf, lossOf } from './model/closeness.ts';
import { evaluate } from './model/expressions.ts';
import { type Extent, plainModel } from './model/plan-model.ts';
import { asksForMore } from './model/trouble.ts';
import { dishNotes } from './plan-notes.ts';
import {
  isServedOnPlates,
  isWorthCutting,
  mostServings,
  type Portions,
  portionsOf,
  type Served,
  servingsThatFit,
} from './serving-size.ts';
import { type Work, workOf } from './solver/work.ts';
import { lighterWay, NEARLY, recommendedWay, smallerWay, type WayFound } from './ways.ts';

export { recogniseFamily } from './dish/family/dish-family.ts';

/** What a plan is made for: goals, servings, foods, and the recipe's totals as it stands. */
export interface PlanOptions {
  goals: Goals;
  servings: number;
  foods: FoodTable;
  before: Tally;
  /** Changes that earlier bakes taught. */
  taught?: readonly Adjustment[];
}

type Words = { title: string; steps: string[] };

/** Every way there is to plan a dish, `within` first, and the one we would take. */
export interface Ways {
  plans: [Plan, ...Plan[]];
  recommended: Way;
}

/** Work the plan of one way may take, cells of tableaux: a third of a second of a small laptop. Own choice. */
const PLAN_WORK = 2e8;

/**
 * Less than this share of the net carbs saved by all changes together is not worth any of them: where the
 * budget stays out of reach, unless they save so much of what is above it; and of a light plan, whose smaller
 * piece does the rest. Own choice.
 */
const WORTHWHILE = { far: 0.2, ofExcess: 0.4, light: 0.15, lightOrSmaller: 0.2 } as const;

/** Whether changes that leave `net` of `start` g bring almost nothing. */
const isLittle = (net: number, start: number, budgetG: number): boolean =>
  start - net < Math.min(WORTHWHILE.far * start, WORTHWHILE.ofExcess * (start - budgetG));

/**
 * A plate that still has this many times the budget, or one cut smaller that has this many, where a serving of the
 * page's size saves less than this share of its net carbs, is neither the dish nor within reach: the recipe stays as
 * it is, and its figures are told. Own choice.
 */
const HOPELESS = { timesBudget: 2, cut: 1.35, saves: 0.5 } as const;

/** Whether changes that leave `net` of `start` g are a plate nobody wants, in so many servings; a bake is cut smaller. */
function isHopeless({ main, goals, servings }: Dish, net: number, start: number, now: number) {
  const most = now > servings ? HOPELESS.cut : HOPELESS.timesBudget;
  const each = (net * servings) / now;
  const isFar = each > most * goals.budgetG && net > (1 - HOPELESS.saves) * start;
  return isFar && !main.dough && isServedOnPlates(main.family);
}

/** One request: the recipe, and what is asked of it. */
interface Request {
  ingredients: readonly Ingredient[];
  read: (goals: Goals, whole?: boolean) => Dish;
  options: PlanOptions;
  /** Net carbs of a serving as it stands, as the budget judges them, g. */
  start: number;
}

function requestOf(
  ingredients: readonly Ingredient[],
  recipe: Words,
  options: PlanOptions,
): Request {
  const { goals, before, servings, foods, taught = [] } = options;
  const { title, steps } = recipe;
  const counted = before.perServing.netCarbsG;
  const dishOf = (wishes: Goals, whole: boolean): Dish =>
    readDish(ingredients, {
      whole,
      family: wishes.family,
      servings,
      goals: wishes,
      taught,
      foods,
      title,
      steps,
    });
  // The ways of one plan ask for the same dish.
  const parted = keptFor((wishes: Goals) => dishOf(wishes, false));
  const entire = keptFor((wishes: Goals) => dishOf(wishes, true));
  return {
    ingredients,
    read: (wishes, whole = false) => (whole ? entire(wishes) : parted(wishes)),
    options,
    start: counted === null ? 0 : goals.cautious ? counted.high : counted.best,
  };
}

/** The best of a dish whose budget is out of reach, with the least that it could come to. */
function servable(far: Answer, dish: Dish, start: number, work: Work): Answer {
  const { budgetG } = dish.goals;
  const question: Question = { start, budgetG, extent: 'servable' };
  const pays = dish.main.dough ? {} : { atMost: Number.POSITIVE_INFINITY };
  const near = solveDish(dish, { ...question, ...pays }, work);
  return { ...near, solved: { ...near.solved, least: far.solved.least ?? far.solved.net } };
}

/** Why a recipe stays as it is though it is above the budget. */
const stays = (net: number, start: number, { budgetG }: Goals): string =>
  isLittle(net, start, budgetG)
    ? 'All changes together would bring almost nothing, so the recipe stays as it is.'
    : `All changes together would still leave ${net.toFixed(0)} g net carbs a serving, so the recipe stays as it is.`;

/** The closest plan within the budget; the dish as it is when all changes together bring too little. */
function withinWay({ ingredients, read, options, start }: Request): {
  found: Answer;
  way: WayFound;
} {
  const { goals } = options;
  const work = workOf(PLAN_WORK);
  const dish = read(goals);
  const { servings } = dish;
  const far = solveDish(dish, { start, budgetG: goals.budgetG, extent: 'within' }, work);
  // Out of reach all the same: then no further than a dish one would still serve.
  const found = isMet(far.solved.net, goals) ? far : servable(far, dish, start, work);
  const { net } = found.solved;
  const still = unchangedAnswer(plainModel(read(goals, true)));
  const asked =
    goals.adjustments.length + goals.setAmounts.length > 0 || asksForMore(found.model.dish);
  const left = found.model.dish.notReworked !== null;
  const was = still.solved.net;
  // Who rules foods out wants to see what the others bring.
  const steered = goals.excludedFoods.length > 0;
  const isFutile =
    isLittle(net, was, goals.budgetG) || (!steered && isHopeless(dish, net, was, servings));
  const idle = left || (!isMet(net, goals) && !asked && isFutile);
  const taken = idle ? still : found;
  const met = isMet(taken.solved.net, goals);
  const served = { met, net: taken.solved.net };
  const limits = limitsOf(found, served, (wishes) => plainModel(read(wishes)), work);
  if (idle && !left) limits.push({ code: 'NOT_WORTHWHILE', text: stays(net, was, goals) });
  const notes = notesOf(ingredients, taken, work);
  const plan = planOf(taken, { way: 'within', servings, met }, limits, notes);
  return { found: taken, way: { plan, net: taken.solved.net } };
}

/** Share by which kitchen rounding may miss what the smallest serving allows. Own choice. */
const CRUMB = 0.03;

type Ask = (extent: Extent, atMost?: number) => Answer;

/** Net carbs, share of those of two changes, from which a third is worth making. Own choice. */
const THIRD_CHANGE = 0.9;

/** Where two changes leave the smallest serving well above the budget: three, if they let it fit or bring much. */
function fuller(smallest: number, ask: Ask): Answer {
  const two = ask('lightest', Number.POSITIVE_INFINITY);
  if (two.solved.net <= NEARLY * smallest) return two;
  const fitting = ask('fuller', smallest);
  if (fitting.solved.net <= smallest) return fitting;
  const three = ask('fullest', Number.POSITIVE_INFINITY);
  return three.solved.net <= THIRD_CHANGE * two.solved.net ? three : two;
}

/**
 * The light changes that pay for themselves and let the smallest sensible serving fit; when none does,
 * those that pay, no further than a dish one would still serve.
 */
function paying(low: Answer, smallest: number, whole: boolean, ask: Ask): Answer {
  const fits = ({ solved }: Answer): boolean => solved.net <= smallest;
  if (low.solved.net > (1 + CRUMB) * smallest)
    return whole ? ask('lightest', Number.POSITIVE_INFINITY) : fuller(smallest, ask);
  const cheap = ask('lighter', smallest);
  if (fits(cheap)) return cheap;
  if (fits(low)) return low;
  // Kitchen rounding may put the lowest a crumb above what the smallest serving allows.
  const tight = ask('lighter', (1 - CRUMB) * smallest);
  return fits(tight) ? tight : ask('lightest', Number.POSITIVE_INFINITY);
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

/**
 * The light changes, with the sweetener that a stomach bears in a piece of the size they are served in: first
 * as many pieces as are sensible, then as few as those changes ask for.
 */
function lightAnswer(request: Request, portions: Portions, dish: Dish, work: Work): Answer {
  const { options, start } = request;
  const { budgetG } = options.goals;
  const smallest = (budgetG * portions.most) / portions.servings;
  // Of bites two are eaten at once, so that each may bring half as much.
  const eatenIn = (pieces: number): number =>
    Math.max(portions.servings, (pieces * portions.doses) / portions.most);
  const planned = (count: number): Answer => {
    const pieces = eatenIn(count);
    const ask = (extent: Extent, atMost?: number): Answer => {
      const question: Question = { start, budgetG, extent, pieces };
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

/** What decides how small a serving of a dish may be. */
function servedOf({ main, title, servings, parts }: Dish): Served {
  const mass = parts.reduce((sum, { grams, eaten }) => sum + grams * eaten, 0);
  return { family: main.family, title, servings, flourShare: main.flourBase / Math.max(mass, 1) };
}

function lightWay(request: Request, within: Plan): WayFound | null {
  const { ingredients, read, options } = request;
  const { goals, before } = options;
  const work: Work = workOf(PLAN_WORK);
  const dish = read(goals);
  const portions = portionsOf(servedOf(dish), before, piecesServed(dish));
  const found = lightAnswer(request, portions, dish, work);
  return lighterWay(found, within, portions, notesOf(ingredients, found, work), work);
}

function smallWay({ ingredients, read, options }: Request): WayFound | null {
  const dish = read(options.goals, true);
  const portions = portionsOf(servedOf(dish), options.before, piecesServed(dish));
  const notes: Note[] = dishNotes(ingredients, dish, []);
  return smallerWay(unchangedAnswer(plainModel(dish)), portions, notes, workOf(PLAN_WORK));
}

/**
 * Whether a light plan's changes are worth making: not where a smaller piece of the original fits as well for
 * little more, nor where all of them leave far too much.
 */
function paysOff(
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

/**
 * Plans a recipe every way there is. Masses in grams, net carbs in grams a serving by the goals' rule.
 * Lines without food or weight are left alone and noted. When the budget is out of reach, the plan
 * within it is the one with the least net carbs, `met` is false and `limits` says what holds it; a wish
 * that cannot be met is missed by as little as possible, and `limits` says so. A recipe that fits as it
 * is has one way. Deterministic; never throws.
 */
export function planWays(
  ingredients: readonly Ingredient[],
  recipe: Words,
  options: PlanOptions,
): Ways {
  const request = requestOf(ingredients, recipe, options);
  const { found, way } = withinWay(request);
  if (found.idle && (way.plan.met || way.plan.notReworked !== null))
    return { plans: [way.plan], recommended: 'within' };
  const smaller = smallWay(request);
  const light = lightWay(request, way.plan);
  const lighter =
    light !== null && paysOff(light, { within: way.plan, smaller }, request) ? light : null;
  const others = [lighter, smaller].filter((w) => w !== null);
  return {
    plans: [way.plan, ...others.map(({ plan }) => plan)],
    recommended: recommendedWay(way, others, found.model.dish.servings),
  };
}

/** The plan that keeps a serving of the page's size within the budget; as {@link planWays}, of one way. */
export const planRecipe = (
  ingredients: readonly Ingredient[],
  recipe: Words,
  options: PlanOptions,
): Plan => withinWay(requestOf(ingredients, recipe, options)).way.plan;

/**
 * The curve of closeness against net carbs of a serving, from the least in reach to the original, with
 * a point at the net carbs of the plan. Worked out by itself, as it takes longer than the plan.
 */
export function planFrontier(
  ingredients: readonly Ingredient[],
  recipe: Words,
  options: PlanOptions,
): FrontierPoint[] {
  const { read, start } = requestOf(ingredients, recipe, options);
  const work = workOf(PLAN_WORK);
  const { budgetG } = options.goals;
  const question = { start, budgetG, extent: 'within' } as const;
  const { model, solved } = solveDish(read(options.goals), question, work);
  return frontierOf(model, [evaluate(model.net, solved.solution.values)], work);
}
