/** The way that keeps the page's servings: the closest plan within the budget. */
import {
  type Answer,
  isMet,
  notesOf,
  planOf,
  type Question,
  solveDish,
  unchangedAnswer,
} from '../answer.ts';
import type { Dish } from '../dish/dish.ts';
import { limitsOf } from '../limits.ts';
import { lossOf } from '../model/closeness.ts';
import { plainModel } from '../model/plan-model.ts';
import { asksForMore } from '../model/trouble.ts';
import { PLAN_WORK, type Request } from '../request.ts';
import type { Rest } from '../solve.ts';
import { type Work, workOf } from '../solver/work.ts';
import type { WayFound } from '../ways.ts';
import { productsOf } from './light-answer.ts';
import { isHopeless, isLittle, whyItStays } from './worthwhile.ts';

/**
 * Net carbs, share of those of the changes that pay, down to which more changes must bring a plate to be made: such
 * that need nothing bought, and others. Own choice.
 */
const MORE_CHANGES = { atHome: 0.9, bought: 0.85 } as const;

/** A rest above the budget, share of it, up to which a dish is near enough for more changes. Own choice. */
const WITHIN_REACH = 1.75;

/** Times the budget down to which more changes must bring a plate that would else be left as it is. Own choice. */
const WITHOUT_GIVING_UP = 2;

/** Share of the net carbs of the changes that pay down to which more are made wherever the budget is. Own choice. */
const BRINGS_MUCH = 0.75;

const staysAsItIs = ({ model, solved }: Answer): boolean =>
  lossOf(model, solved.solution.values) <= 0;

/**
 * The changes to a plate that pay; more of them where those bring it near its budget or save much more, or where with
 * fewer it would be left as it is. A dish of which none pays stays.
 */
function payingChanges(dish: Dish, question: Question, work: Work): Answer {
  const ask = (rest: Rest): Answer =>
    solveDish(dish, { ...question, atMost: Number.POSITIVE_INFINITY, rest }, work);
  const plain = ask('plain');
  if (staysAsItIs(plain)) return plain;
  const dear = ask('dear');
  const stays = isHopeless(dish, plain.solved.net, question.start, dish.servings);
  if (stays && dear.solved.net <= WITHOUT_GIVING_UP * question.budgetG) return dear;
  const least = MORE_CHANGES[productsOf(dear) > productsOf(plain) ? 'bought' : 'atHome'];
  const share = dear.solved.net / plain.solved.net;
  const isNear = dear.solved.net <= WITHIN_REACH * question.budgetG;
  return share <= (isNear ? least : BRINGS_MUCH) ? dear : plain;
}

/** The best of a dish whose budget is out of reach, with the least that it could come to. */
function servable(far: Answer, dish: Dish, start: number, work: Work): Answer {
  const question: Question = { start, budgetG: dish.goals.budgetG, extent: 'servable' };
  const near = dish.main.dough
    ? solveDish(dish, question, work)
    : payingChanges(dish, question, work);
  return { ...near, solved: { ...near.solved, least: far.solved.least ?? far.solved.net } };
}

/** The closest plan within the budget; the dish as it is when all changes together bring too little. */
export function withinWay({ ingredients, read, options, start }: Request): {
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
  const served = { met, net: taken.solved.net, unchanged: idle };
  const limits = limitsOf(found, served, (wishes) => plainModel(read(wishes)), work);
  if (idle && !left) limits.push({ code: 'NOT_WORTHWHILE', text: whyItStays(net, was, goals) });
  const notes = notesOf(ingredients, taken, work);
  const plan = planOf(taken, { way: 'within', servings, met }, limits, notes);
  return { found: taken, way: { plan, net: taken.solved.net } };
}
