/** Which limits hold a plan, in plain words, what each costs, and what would loosen them. */
import type { Lever, Plan } from '../model.ts';
import { netRange, widest } from './judge-masses.ts';
import { isPlanned } from './kitchen/lever-amounts.ts';
import { type Amount, total } from './kitchen/planned-masses.ts';
import { evaluate } from './model/expressions.ts';
import { COUNTED, WISHES, type Wish } from './model/goal-rows.ts';
import { missedChange } from './model/lever-rows.ts';
import { leastCarbs, type PlanModel, withBudget } from './model/plan-model.ts';
import { solveProgram } from './solver/branch-and-bound.ts';
import type { Program, Row, Solution } from './solver/programme.ts';
import type { Work } from './solver/work.ts';

type Limit = Plan['limits'][number];

/** Room for kitchen rounding in the servings proposed. */
const ROUNDING_ROOM = 1.01;

const TIGHT = 1e-4;

/** Limits named at most, so that the list is read. Own choice. */
const MOST_NAMED = 4;

interface Binding extends Limit {
  row: Row;
}

/** Limits that are met with nothing to spare at these values, in the order of the model. */
function bindingRows(model: PlanModel, values: ReadonlyMap<string, number>): Binding[] {
  const found: Binding[] = [];
  for (const row of model.rows) {
    const meaning = model.meaning.get(row.id);
    if (!meaning) continue;
    const at = row.terms.reduce((sum, [id, c]) => sum + c * (values.get(id) ?? 0), 0);
    // A row no used choice touches does not hold anything back.
    const touched = row.terms.some(([id, c]) => Math.abs(c * (values.get(id) ?? 0)) > TIGHT);
    if (!touched) continue;
    const tight =
      (row.min !== undefined && at - row.min < TIGHT * (1 + Math.abs(row.min))) ||
      (row.max !== undefined && row.max - at < TIGHT * (1 + Math.abs(row.max)));
    if (tight) found.push({ ...meaning, row });
  }
  return found;
}

const without = (program: Program, row: Row): Program => ({
  variables: program.variables,
  rows: program.rows.filter((r) => r.id !== row.id),
});

/** Points of a hundred and grams below which a price is not worth a word. Own choice. */
const WORTH = { points: 1, grams: 0.2 } as const;

const relaxed = (program: Program, work: Work): Solution =>
  solveProgram(program, { relax: true }, work);

/** Limits that bind a plan within its budget, each with the closeness it costs. */
export function bindingLimits(
  model: PlanModel,
  values: ReadonlyMap<string, number>,
  budget: number,
  work: Work,
): Limit[] {
  const program = withBudget(model, budget);
  const as = relaxed(program, work);
  return bindingRows(model, values)
    .slice(0, MOST_NAMED)
    .map(({ code, text, row }) => {
      const free = relaxed(without(program, row), work);
      const points = 100 * (as.objective - free.objective);
      const said =
        as.status === 'optimal' && free.status === 'optimal' && points >= WORTH.points
          ? ` Without this limit the plan would be ${Math.round(points) === 1 ? '1 point' : `${Math.round(points)} points`} of 100 closer to the original.`
          : '';
      return { code, text: `${text}${said}` };
    });
}

/** Limits that keep the net carbs from falling further, each with the grams a serving it costs. */
function holdingLimits(model: PlanModel, values: ReadonlyMap<string, number>, work: Work): Limit[] {
  const program = leastCarbs(model);
  const netOf = (solution: Solution): number | null =>
    solution.status === 'optimal' ? evaluate(model.net, solution.values) : null;
  const as = netOf(relaxed(program, work));
  return bindingRows(model, values)
    .slice(0, MOST_NAMED)
    .map(({ code, text, row }) => {
      const free = netOf(relaxed(without(program, row), work));
      const gain = as === null || free === null ? 0 : as - Math.max(0, free);
      const said =
        gain >= WORTH.grams
          ? ` Without this limit a serving would have ${gain.toFixed(1)} g less net carbs.`
          : '';
      return { code, text: `${text}${said}` };
    });
}

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

/** Whether masses meet every wish besides the budget. */
export const wishesMet = (model: PlanModel, amounts: readonly Amount[]): boolean =>
  WISHES.every((wish) => meets(model, wish, amounts));

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

/**
 * Words for a budget that cannot be met: what holds it, and how many servings would meet it. `least` is
 * the least net carbs in reach, `net` what the plan comes to in kitchen amounts, both g a serving.
 */
export function unmetLimits(
  model: PlanModel,
  { least, net }: { least: number; net: number },
  values: ReadonlyMap<string, number>,
  loosened: readonly Limit[],
  work: Work,
): Limit[] {
  const { dish } = model;
  const { budgetG } = dish.goals;
  const upper = dish.goals.cautious ? ' by the upper end' : '';
  const limits: Limit[] = [
    {
      code: 'BUDGET_NOT_MET',
      text: `The least this dish can reach is ${least.toFixed(1)} g net carbs a serving${upper}; the budget is ${budgetG} g.`,
    },
  ];
  if (budgetG > 0) {
    const servings = Math.ceil((ROUNDING_ROOM * net * dish.servings) / budgetG - 1e-9);
    limits.push({
      code: 'MORE_SERVINGS',
      text: `Cut into ${servings} servings instead of ${dish.servings}, a serving would be within the budget.`,
    });
  }
  limits.push(...loosened);
  limits.push(...holdingLimits(model, values, work));
  const movable = new Set(dish.candidates.map((c) => c.part.key));
  const stuck = dish.parts
    .filter(
      (p) =>
        !movable.has(p.key) && !p.fixed && p.net * p.grams * p.eaten > 0.1 * net * dish.servings,
    )
    .sort((a, b) => b.net * b.grams * b.eaten - a.net * a.grams * a.eaten);
  for (const part of stuck.slice(0, 2)) {
    limits.push({
      code: 'NO_SWAP',
      text: `There is no good stand-in for the ${part.food.name} here; use less of it.`,
    });
  }
  return limits;
}
