/** Everything that holds or misses in an answer, as the plan tells it. */
import type { Goals, Plan } from '../model.ts';
import type { Answer } from './answer.ts';
import { bindingLimits, unmetLimits } from './binding-limits.ts';
import { loosenings } from './loosen.ts';
import { cautiousLimit, missedAmounts, missedChanges, missedWishes } from './missed-wishes.ts';
import { evaluate } from './model/expressions.ts';
import type { PlanModel } from './model/plan-model.ts';
import type { Work } from './solver/work.ts';

/** Wishes and accepted changes that an answer misses, and how it is judged. */
export function wishLimits({ model, solved }: Answer, work: Work): Plan['limits'] {
  const { amounts } = solved.kitchen;
  return [
    ...missedAmounts(model, amounts),
    ...missedWishes(model, amounts, work),
    ...missedChanges(model, solved.solution.values, amounts),
    ...cautiousLimit(model, amounts),
  ];
}

/**
 * Limits of an answer that may change all it likes, and of what is served of it, with `net` g a serving; `build`
 * makes the dish's model under other goals.
 */
export function limitsOf(
  found: Answer,
  { met, net, unchanged = false }: { met: boolean; net: number; unchanged?: boolean },
  build: (goals: Goals) => PlanModel,
  work: Work,
): Plan['limits'] {
  const { model, solved, idle } = found;
  const { values } = solved.solution;
  const { goals, notReworked } = model.dish;
  if (notReworked !== null) return [{ code: 'NOT_REWORKED', text: notReworked }];
  const wishes = wishLimits(found, work);
  if (!met) {
    // Judged by the upper end, the least is known only of the plan itself.
    const least = goals.cautious ? solved.net : Math.min(solved.net, solved.least ?? solved.net);
    const loosened = loosenings(build, goals, least, work);
    return [...unmetLimits(model, { least, net, unchanged }, loosened, work), ...wishes];
  }
  if (idle) return wishes;
  const binding = bindingLimits(model, values, evaluate(model.net, values), work).filter(
    ({ code }) => code !== 'SWEETNESS-LEAST',
  );
  return [...wishes, ...binding];
}
