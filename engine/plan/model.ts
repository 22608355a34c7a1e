/** Builds the programme of a dish: choices, limits as rows, closeness to the original as the objective. */
import type { ClosenessPart } from '../model.ts';
import { Builder, type Meaning } from './builder.ts';
import { type Choice, choicesFor, fixedCost, LEAST_USE } from './decisions.ts';
import type { Dish } from './dish.ts';
import * as figure from './figures.ts';
import type { Program, Row, Variable } from './program.ts';
import type { Linear } from './state.ts';
import { structureRows, waterAndFatRows } from './structure-rows.ts';
import { doseRows, freezingRows, sweetRows, tasteRows } from './taste-rows.ts';

export interface PlanModel {
  dish: Dish;
  choices: Choice[];
  variables: Variable[];
  rows: Row[];
  meaning: Map<string, Meaning>;
  /** Part of closeness that each costed variable belongs to. */
  partOf: Map<string, ClosenessPart>;
  /** Net carbs of a serving, g, as an expression. */
  net: Linear;
}

const leastUse = ({ candidate, max }: Choice): number =>
  candidate?.rule.whole ? max : Math.min(LEAST_USE, max / 2);

/** The programme of a dish without its budget; every row admits the original recipe. */
export function buildModel(dish: Dish): PlanModel {
  const choices = choicesFor(dish);
  const b = new Builder(dish, choices);
  for (const choice of choices) {
    b.variable(choice.id, choice.cost, choice.part, choice.max);
    if (!choice.candidate) continue;
    const used = `use ${choice.id}`;
    b.variables.push({ id: used, cost: fixedCost(dish, choice.candidate), binary: true });
    b.partOf.set(used, choice.part);
    b.row(
      {
        id: `link ${choice.id}`,
        max: 0,
        terms: [
          [choice.id, 1],
          [used, -choice.max],
        ],
      },
      null,
    );
    b.row(
      {
        id: `least ${choice.id}`,
        min: 0,
        terms: [
          [choice.id, 1],
          [used, -leastUse(choice)],
        ],
      },
      null,
    );
  }
  for (const part of dish.parts) {
    const terms = choices.flatMap((c): [string, number][] =>
      c.kind === 'swap' && c.candidate?.part === part ? [[c.id, 1]] : [],
    );
    if (terms.length > 1) b.row({ id: `whole ${part.key}`, max: 1, terms }, null);
  }
  if (choices.length > 0) {
    if (dish.dough && choices.some((c) => c.candidate?.part.base)) {
      structureRows(b);
      waterAndFatRows(b);
    }
    sweetRows(b);
    freezingRows(b);
    doseRows(b);
    tasteRows(b);
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
    choices,
    variables: b.variables,
    rows: b.rows,
    meaning: b.meaning,
    partOf: b.partOf,
    net,
  };
}

/** The programme with net carbs of a serving at most `budget`; distance from the original is minimised. */
export function withBudget(model: PlanModel, budget: number): Program {
  const row: Row = { id: 'budget', max: budget - model.net.constant, terms: model.net.terms };
  return {
    variables: model.variables,
    rows: [...model.rows, row],
  };
}

/** The programme that lowers net carbs as far as the limits allow, whatever it costs. */
export function leastCarbs(model: PlanModel): Program {
  const slope = new Map(model.net.terms);
  return {
    variables: model.variables.map((v) => ({ ...v, cost: (slope.get(v.id) ?? 0) + 1e-5 * v.cost })),
    rows: model.rows,
  };
}
