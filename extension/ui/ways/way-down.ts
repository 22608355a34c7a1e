/** How a dish that is too much could fit, where no other way of making it does. */
import type { Adaptation } from '../../../engine/model.ts';
import { portionNoun } from '../words/portion.ts';
import { say } from '../words/say.ts';
import { betterWays } from './way-switch.tsx';

/** More servings than this, as a multiple of the page's, are no servings any more. Own choice. */
const MOST_TIMES = 2;

/** The servings at which one is within the budget, or null where that is no sensible number. */
export function servingsToFit({ before, after, verdict }: Adaptation): number | null {
  if (verdict.state !== 'tooMuch' || verdict.missing.length > 0 || verdict.budgetG <= 0)
    return null;
  const needed = Math.ceil((verdict.netCarbsG.best * after.servings) / verdict.budgetG - 1e-9);
  return needed <= MOST_TIMES * before.servings ? needed : null;
}

/** 'As 9 servings it fits.'; undefined where nothing of the kind can be said. */
export function wayDown(adaptation: Adaptation): string | undefined {
  const servings = servingsToFit(adaptation);
  if (servings === null || betterWays(adaptation).length > 0) return undefined;
  return say('tooMuchHow', servings, portionNoun(adaptation, servings));
}
