/** Builds the programme of a dish: choices, limits as rows, closeness to the original as the objective. */
import { hasTag } from '../../foods/tags.ts';
import { keptFor } from '../../kept-results.ts';
import type { ClosenessPart, Food } from '../../model.ts';
import type { Dish } from '../dish/dish.ts';
import * as figure from '../dish/food-figures.ts';
import { icingLoss } from '../dish/sugars/icing.ts';
import type { Program, Row } from '../solver/programme.ts';
import { lossPerUnit } from './closeness.ts';
import { type Choice, choicesFor } from './decisions.ts';
import type { Linear } from './expressions.ts';
import { type ChoiceSet, fewChoices } from './many-lines.ts';
import { Builder, type Meaning, type PlanVariable } from './row-builder.ts';
import { countRows } from './rows/count-rows.ts';
import { depthRows } from './rows/depth-rows.ts';
import { identityRows } from './rows/identity-rows.ts';
import { askedFor, type LeverTarget, leverRows } from './rows/lever-rows.ts';
import { FEW, FULLER, type Light } from './rows/light-rows.ts';
import { setRows } from './rows/set-rows.ts';
import { shoppingRows } from './rows/shopping-rows.ts';
import { stomachRows } from './rows/stomach-rows.ts';
import { structureRows, waterAndFatRows } from './rows/structure-rows.ts';
import { sugarFirstRows } from './rows/sugar-first-rows.ts';
import { dishRows, freezingRows, sweetRows, tasteRows } from './rows/taste-rows.ts';
import { wishRows } from './rows/wish-rows.ts';
import { isSeasonedSweet, isSweetSeasoning } from './seasoning-sugar.ts';
import { idIn } from './variable-ids.ts';

export interface PlanModel extends Pick<ChoiceSet, 'members' | 'leftOut'> {
  dish: Dish;
  /** Every choice, line by line. */
  choices: Choice[];
  variables: PlanVariable[];
  rows: Row[];
  meaning: Map<string, Meaning>;
  /** Part of closeness that each costed variable belongs to. */
  partOf: Map<string, ClosenessPart>;
  /** Net carbs of a serving, g, as an expression. */
  net: Linear;
}

function wholeRows(b: Builder): void {
  for (const part of b.dish.parts) {
    const own = b.choices.filter((c) => c.kind === 'swap' && c.candidate?.part === part);
    if (own.length < 2) continue;
    // Of a sugar what no stand-in may replace alone, several do not replace together.
    const max = part.role === 'sweetness' ? Math.max(...own.map((c) => c.max)) : 1;
    const terms = own.map((c): [string, number] => [c.id, 1]);
    b.row({ id: `whole ${part.key}`, max, terms }, null);
  }
}

/**
 * How far a plan may go: as far as the budget asks; no further than a dish one would still serve; two
 * changes and two foods to buy; those, and no further than one would serve; three of each; those, and no
 * further than one would serve.
 */
export type Extent = 'within' | 'servable' | 'lighter' | 'lightest' | 'fuller' | 'fullest';

/** Closeness a plan may lose at most: beyond it, it would be another dish, or no light change. Own choice. */
const MOST_LOSS: Record<Extent, number> = {
  within: 0.9,
  servable: 0.39,
  lighter: 0.45,
  lightest: 0.39,
  fuller: 0.445,
  fullest: 0.395,
};

/** How many changes a plan may make; any number where it need not be light. */
const CHANGES: Record<Extent, Light | null> = {
  within: null,
  servable: null,
  lighter: FEW,
  lightest: FEW,
  fuller: FULLER,
  fullest: FULLER,
};

/** Where two changes are not enough. */
const LAST_SUGAR_GOES: ReadonlySet<Extent> = new Set(['fuller', 'fullest']);

/** What stands for less of a sweet seasoning, or for a sweetener in its place: no dish is another for it. */
function seasonings({ dish, choices }: Builder): Set<string> {
  const less = choices.filter(
    ({ candidate }) =>
      candidate &&
      isSweetSeasoning(candidate.part, dish) &&
      candidate.to.every(({ food }) => hasTag(food, 'sweetener')),
  );
  const sections = dish.sections.filter((section) => isSeasonedSweet(section, dish));
  return new Set([
    ...less.flatMap(({ id }) => [id, `use ${id}`]),
    ...sections.flatMap((section) => [
      idIn(section, 'less-sweet'),
      idIn(section, 'little-less-sweet'),
    ]),
  ]);
}

/** The dish stays itself: all that is lost together has a limit. */
function itselfRow(b: Builder, extent: Extent): void {
  const free = seasonings(b);
  const terms = b.variables.flatMap((v): [string, number][] =>
    lossPerUnit(v) > 0 && !free.has(v.id) ? [[v.id, lossPerUnit(v)]] : [],
  );
  b.row(
    { id: 'itself', max: MOST_LOSS[extent] - icingLoss(b.dish), terms },
    'Beyond this it would no longer be the dish it is.',
  );
}

/**
 * The programme of a dish without its budget; every row admits the original recipe. `targets` are
 * the composition that accepted changes after a bake ask for, `extent` how far the plan may go, and
 * `pieces` how many servings it is eaten in, which decides what a stomach bears.
 */
export function buildModel(
  dish: Dish,
  targets: readonly LeverTarget[] = [],
  extent: Extent = 'within',
  pieces: number = dish.servings,
): PlanModel {
  const lines = choicesFor(dish);
  const { choices, members, leftOut } = fewChoices(lines, dish, pieces);
  const b = new Builder(dish, choices);
  for (const { id, cost, part, max } of choices) b.variable(id, cost, part, max);
  wholeRows(b);
  if (choices.length > 0) {
    for (const section of dish.sections) {
      const moves = choices.some((c) => c.section === section.id && c.candidate?.part.base);
      if (section.dough && moves) {
        structureRows(b, section);
        waterAndFatRows(b, section);
      }
      sweetRows(b, section);
      freezingRows(b, section);
      if (section.dough) tasteRows(b, section);
    }
    stomachRows(b, pieces);
    dishRows(b);
    identityRows(b);
    depthRows(b, LAST_SUGAR_GOES.has(extent));
    sugarFirstRows(b);
    wishRows(b);
    setRows(b);
    leverRows(b, targets);
    const asked = (food: Food): boolean => askedFor(targets, food);
    const light = CHANGES[extent];
    shoppingRows(b, countRows(b, asked, light !== null, pieces), asked, light);
    itselfRow(b, extent);
  }
  const rule = dish.goals.rule;
  const nets = new Map<string, number>();
  const net = b.sum((c) => {
    const known = nets.get(c.food.id) ?? figure.netPerGram(c.food, rule) ?? 0;
    nets.set(c.food.id, known);
    return known * c.eaten;
  }, dish.servings);
  return {
    dish,
    choices: lines,
    members,
    leftOut,
    variables: b.variables,
    rows: b.rows,
    meaning: b.meaning,
    partOf: b.partOf,
    net,
  };
}

const plainModels = keptFor((_: Dish) => new Map<string, PlanModel>());

/** The programme of a dish without changes after a bake, as {@link buildModel}: made once, as the ways of one plan ask for it again. */
export function plainModel(
  dish: Dish,
  extent: Extent = 'within',
  pieces: number = dish.servings,
): PlanModel {
  const known = plainModels(dish);
  const key = `${extent} ${pieces}`;
  const model = known.get(key) ?? buildModel(dish, [], extent, pieces);
  known.set(key, model);
  return model;
}

/** The programme with net carbs of a serving at most `budget`; distance from the original is minimised. */
export function withBudget(model: PlanModel, budget: number): Program<PlanVariable> {
  const row: Row = { id: 'budget', max: budget - model.net.constant, terms: model.net.terms };
  return {
    variables: model.variables,
    rows: [...model.rows, row],
  };
}

/**
 * The programme that lowers net carbs as far as the limits allow, whatever it costs; only missing a
 * wish by all of it weighs as much as all of the carbohydrate.
 */
export function leastCarbs(model: PlanModel): Program<PlanVariable> {
  const slope = new Map(model.net.terms);
  const cost = ({ id, cost, penalty }: PlanVariable): number =>
    (slope.get(id) ?? 0) + (penalty ? model.net.constant : 1e-5 * cost);
  return { variables: model.variables.map((v) => ({ ...v, cost: cost(v) })), rows: model.rows };
}
