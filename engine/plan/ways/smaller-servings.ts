/** The ways that serve smaller pieces: of light changes, or of the dish as it is. */
import { isSavoury } from '../../foods/savoury.ts';
import type { Note, Plan } from '../../model.ts';
import { notesOf, unchangedAnswer } from '../answer.ts';
import type { Dish } from '../dish/dish.ts';
import { piecesServed } from '../dish/served-pieces.ts';
import { plainModel } from '../model/plan-model.ts';
import { dishNotes } from '../plan-notes.ts';
import { PLAN_WORK, type PlanOptions, type Request } from '../request.ts';
import {
  fedPortions,
  isServedOnPlates,
  type Portions,
  portionsOf,
  type Served,
} from '../serving-size.ts';
import { type Work, workOf } from '../solver/work.ts';
import { lighterWay, smallerWay, type WayFound } from '../ways.ts';
import { lightAnswer } from './light-answer.ts';

/** What decides how small a serving of a dish may be. */
function servedOf({ main, title, method, servings, parts }: Dish): Served {
  const mass = parts.reduce((sum, { grams, eaten }) => sum + grams * eaten, 0);
  const flourShare = main.flourBase / Math.max(mass, 1);
  const savoury = parts.some(({ food, role }) => role === 'starch-bulk' || isSavoury(food.id));
  return { family: main.family, title, method, servings, flourShare, savoury };
}

/** The portions of a dish; plates whose number is a guess are not made more, as they may be fewer already. */
function portionsIn(dish: Dish, { before, servingsGuessed, made }: PlanOptions): Portions {
  const found = portionsOf(servedOf(dish), before, piecesServed(dish), made);
  if (!servingsGuessed || !isServedOnPlates(dish.main.family)) return found;
  return { ...found, most: found.servings, doses: found.servings };
}

/** A plate that stays above the budget is not changed further than this closeness for it. Own choice. */
const STILL_THE_DISH = 0.6;

export function lightWay(request: Request, within: Plan): WayFound | null {
  const { ingredients, read, options } = request;
  const { goals } = options;
  const work: Work = workOf(PLAN_WORK);
  const dish = read(goals);
  const kept = portionsIn(dish, options);
  // Where the plates stay as many as they are, the changes are still those that let a smaller one fit.
  const cut = portionsOf(servedOf(dish), options.before, null, options.made);
  const stays = kept.most < cut.most;
  const portions = stays ? { ...cut, doses: kept.doses } : kept;
  const light = lightAnswer(request, portions, dish, work);
  const notes = notesOf(ingredients, light.found, work);
  const way = lighterWay(light.found, within, stays ? kept : light.portions, notes, work);
  const isOther = way !== null && !way.plan.met && way.plan.closeness < STILL_THE_DISH;
  return stays && isOther ? null : way;
}

export function smallWay({ ingredients, read, options }: Request): WayFound | null {
  const dish = read(options.goals, true);
  const { before } = options;
  const whole = portionsIn(dish, options);
  const portions = fedPortions(whole, before.perServing.energyKcal?.best ?? 0);
  const notes: Note[] = dishNotes(ingredients, dish, []);
  return smallerWay(unchangedAnswer(plainModel(dish)), portions, notes, workOf(PLAN_WORK));
}
