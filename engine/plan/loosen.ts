/** What the user could allow to bring an unreachable budget nearer, tried out rather than guessed. */
import type { Goals, Plan } from '../model.ts';
import type { PlanModel } from './model/plan-model.ts';
import { lowest } from './solve.ts';
import type { Work } from './solver/work.ts';

type Limit = Plan['limits'][number];

/** Smaller gains than this, g a serving, are not worth a line. */
const WORTH_SAYING = 0.3;
/** Sweetness that many still like, share of the original. Own choice. */
const LESS_SWEET = 0.7;

/** How exactly the least is known here, g: half of what is worth saying. */
const GAP_G = 0.15;

/** Wishes that hold the budget back, each with what lifting it alone would reach. */
export function loosenings(
  build: (goals: Goals) => PlanModel,
  goals: Goals,
  least: number,
  work: Work,
): Limit[] {
  const leastOf = (model: PlanModel): number => lowest(model, work, GAP_G).net;
  const found: Limit[] = [];
  // Like against like: the programme reaches a little more or less than a plan in kitchen amounts.
  const asAsked = leastOf(build(goals));
  const tryOut = (code: string, changed: Partial<Goals>, words: string): void => {
    const gain = asAsked - leastOf(build({ ...goals, ...changed }));
    if (gain < WORTH_SAYING) return;
    const net = Math.max(0, least - gain);
    found.push({
      code,
      text: `${words}, about ${net.toFixed(1)} g a serving would be in reach: ${gain.toFixed(1)} g less.`,
    });
  };
  if (goals.pinned.length > 0)
    tryOut('PINNED', { pinned: [] }, 'With the lines you keep free to change');
  if (goals.setAmounts.length > 0)
    tryOut('SET_AMOUNTS', { setAmounts: [] }, 'With the amounts you set free to change');
  if (goals.excludedSwaps.length + goals.excludedFoods.length > 0) {
    tryOut(
      'EXCLUDED',
      { excludedSwaps: [], excludedFoods: [] },
      'With what you excluded allowed again',
    );
  }
  if (goals.avoid.length > 0) {
    tryOut('AVOIDED', { avoid: [] }, `Without avoiding ${goals.avoid.join(', ')}`);
  }
  if (goals.sweetness > LESS_SWEET) {
    tryOut('LESS_SWEET', { sweetness: LESS_SWEET }, 'At 70 % of the sweetness');
  }
  if (goals.flourKept > 0)
    tryOut('FLOUR_KEPT', { flourKept: 0 }, 'With all of the flour free to change');
  if (goals.pantry !== null) tryOut('PANTRY', { pantry: null }, 'With foods you do not have yet');
  if (goals.adjustments.some(({ lever }) => lever !== 'method'))
    tryOut('CHANGES', { adjustments: [] }, 'Without the changes you accepted after a bake');
  return found;
}
