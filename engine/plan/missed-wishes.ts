/** What the user asked for besides the budget, and which of it the plan could not do. */
import type { Lever, SetAmount } from '../model.ts';
import { type Limit, relaxed, WORTH } from './binding-limits.ts';
import { netRange, widest } from './judge-masses.ts';
import { isPlanned } from './kitchen/lever-amounts.ts';
import { type Amount, total } from './kitchen/planned-masses.ts';
import { evaluate } from './model/expressions.ts';
import { leastCarbs, type PlanModel } from './model/plan-model.ts';
import { missedChange } from './model/rows/lever-rows.ts';
import { isMeantBy } from './model/rows/set-rows.ts';
import { COUNTED, WISHES, type Wish } from './model/rows/wish-rows.ts';
import type { Program } from './solver/programme.ts';
import type { Work } from './solver/work.ts';

const WISH: Record<Wish, { code: string; unit: string; name: string; least: boolean }> = {
  'fibre-floor': { code: 'FIBRE_FLOOR', unit: 'g', name: 'fibre', least: true },
  'sodium-limit': { code: 'SODIUM_LIMIT', unit: 'mg', name: 'sodium', least: false },
  'energy-limit': { code: 'ENERGY_LIMIT', unit: 'kcal', name: 'energy', least: false },
};

const boundOf = ({ dish }: PlanModel, wish: Wish): number | null => {
  const { goals } = dish;
  if (wish === 'fibre-floor') return goals.fibreFloorG;
  return wish === 'sodium-limit' ? goals.sodiumLimitMg : goals.energyLimitKcal;
};

const shown = (value: number, unit: string): string =>
  `${unit === 'g' ? value.toFixed(1) : Math.round(value)} ${unit}`;

/** Net carbs of a serving at which a wish could be met, g; null when it never can. */
function budgetFor(model: PlanModel, wish: Wish, work: Work): number | null {
  const program = leastCarbs(model);
  const hard: Program = {
    variables: program.variables,
    rows: [...program.rows, { id: 'no miss', max: 0, terms: [[`missed ${wish}`, 1]] }],
  };
  const solution = relaxed(hard, work);
  return solution.status === 'optimal' ? Math.max(0, evaluate(model.net, solution.values)) : null;
}

/** Whether masses meet a wish for a serving. */
function meets(model: PlanModel, wish: Wish, amounts: readonly Amount[]): boolean {
  const bound = boundOf(model, wish);
  if (bound === null) return true;
  const now = total(amounts, COUNTED[wish]) / model.dish.servings;
  return WISH[wish].least ? now >= bound - 1e-9 : now <= bound + 1e-9;
}

/** Whether a food has the grams that the user has set for it. */
const isAsSet = (set: SetAmount, amounts: readonly Amount[]): boolean => {
  const now = total(amounts, (amount) => (isMeantBy(set, amount) ? 1 : 0));
  return Math.abs(now - set.grams) < 0.05;
};

/** Whether masses meet every wish besides the budget. */
export const wishesMet = (model: PlanModel, amounts: readonly Amount[]): boolean =>
  WISHES.every((wish) => meets(model, wish, amounts)) &&
  model.dish.goals.setAmounts.every((set) => isAsSet(set, amounts));

/** Amounts the user has set that the plan could not take, as the dish would not work with them. */
export const missedAmounts = ({ dish }: PlanModel, amounts: readonly Amount[]): Limit[] =>
  dish.goals.setAmounts.flatMap((set): Limit[] => {
    if (isAsSet(set, amounts)) return [];
    const name = dish.foods.byId(set.foodId)?.name ?? set.foodId;
    const text = `${Math.round(set.grams * 10) / 10} g ${name}, as you set it, is not taken here: the dish would not hold together, or has no such line this way.`;
    return [{ code: 'SET_AMOUNT', text }];
  });

/** Wishes that the plan could not meet, with what it reaches and what would help. */
export function missedWishes(model: PlanModel, amounts: readonly Amount[], work: Work): Limit[] {
  const { dish } = model;
  return WISHES.flatMap((wish): Limit[] => {
    const bound = boundOf(model, wish);
    if (bound === null || meets(model, wish, amounts)) return [];
    const { code, unit, name, least } = WISH[wish];
    const now = total(amounts, COUNTED[wish]) / dish.servings;
    const needed = budgetFor(model, wish, work);
    const help =
      needed !== null && needed > dish.goals.budgetG + WORTH.grams
        ? ` A budget of ${needed.toFixed(1)} g would leave room for it.`
        : '';
    const asked = least
      ? `you ask for ${shown(bound, unit)}`
      : `the limit is ${shown(bound, unit)}`;
    return [
      {
        code,
        text: `A serving has ${shown(now, unit)} ${name}; ${asked}, which this dish does not reach here.${help}`,
      },
    ];
  });
}

const FOLLOWED = 0.02;

/** Accepted changes after a bake that the plan could follow only in part, or not at all. */
export function missedChanges(
  model: PlanModel,
  values: ReadonlyMap<string, number>,
  amounts: readonly Amount[],
): Limit[] {
  const missed = (lever: Lever): boolean => (values.get(missedChange(lever)) ?? 0) > FOLLOWED;
  return model.dish.goals.adjustments.flatMap((change): Limit[] => {
    if (change.lever === 'method') return [];
    const rows = model.variables.some(({ id }) => id === missedChange(change.lever));
    const done = rows
      ? !missed(change.lever)
      : amounts.some((a) => a.asked?.includes(change.text) === true);
    if (done || !isPlanned(change.lever)) return [];
    const why = rows
      ? 'the limits of the dish allow only a part of it'
      : 'the plan has nothing it could act on, or too little to weigh';
    return [{ code: 'CHANGE_IN_PART', text: `${change.text} Not wholly followed: ${why}.` }];
  });
}

/** How the budget is judged when the user is cautious. */
export function cautiousLimit(model: PlanModel, amounts: readonly Amount[]): Limit[] {
  const { dish } = model;
  if (!dish.goals.cautious) return [];
  const range = netRange(amounts, dish);
  const food = widest(amounts, dish)?.food;
  const most =
    food === undefined
      ? ''
      : ` The ${food.name} is the least sure${food.source.kind === 'user' ? '' : '; its package label would narrow it'}.`;
  return [
    {
      code: 'CAUTIOUS',
      text: `Judged by the upper end, ${range.high.toFixed(1)} g a serving; the best estimate is ${range.best.toFixed(1)} g.${most}`,
    },
  ];
}
