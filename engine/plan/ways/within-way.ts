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
import { plainModel } from '../model/plan-model.ts';
import { asksForMore } from '../model/trouble.ts';
import { PLAN_WORK, type Request } from '../request.ts';
import { type Work, workOf } from '../solver/work.ts';
import type { WayFound } from '../ways.ts';
import { isHopeless, isLittle, whyItStays } from './worthwhile.ts';

/** The best of a dish whose budget is out of reach, with the least that it could come to. */
function servable(far: Answer, dish: Dish, start: number, work: Work): Answer {
  const { budgetG } = dish.goals;
  const question: Question = { start, budgetG, extent: 'servable' };
  const pays = dish.main.dough ? {} : { atMost: Number.POSITIVE_INFINITY };
  const near = solveDish(dish, { ...question, ...pays }, work);
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
  const served = { met, net: taken.solved.net };
  const limits = limitsOf(found, served, (wishes) => plainModel(read(wishes)), work);
  if (idle && !left) limits.push({ code: 'NOT_WORTHWHILE', text: whyItStays(net, was, goals) });
  const notes = notesOf(ingredients, taken, work);
  const plan = planOf(taken, { way: 'within', servings, met }, limits, notes);
  return { found: taken, way: { plan, net: taken.solved.net } };
}
