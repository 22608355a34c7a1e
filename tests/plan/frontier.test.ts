/** The frontier and the least, recipe by recipe, beside a second solver; and its shape on random recipes. */
import { readdirSync, readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { JSDOM, VirtualConsole } from 'jsdom';
import { describe, expect, it } from 'vitest';
import { DEFAULT_GOALS, readPage, readText, tallyRecipe } from '../../engine/index.ts';
import type { Recipe } from '../../engine/model.ts';
import { readDish } from '../../engine/plan/dish/read-dish.ts';
import { frontierOf } from '../../engine/plan/frontier.ts';
import { closenessOf, lossOf } from '../../engine/plan/model/closeness.ts';
import {
  buildModel,
  leastCarbs,
  type PlanModel,
  withBudget,
} from '../../engine/plan/model/plan-model.ts';
import { lowest } from '../../engine/plan/solve.ts';
import { solveProgram } from '../../engine/plan/solver/branch-and-bound.ts';
import { unlimited } from '../../engine/plan/solver/work.ts';
import { foods, frontier, plan } from './build.ts';
import { PASTED, textOf } from './pasted.ts';
import { highsLeast } from './solver/other-solvers.ts';
import { randomSample } from './solver/random-programme.ts';

const PAGES = new URL('../pages/demo/', import.meta.url);

function recipes(): Recipe[] {
  const pasted = PASTED.map((recipe) => readText(textOf(recipe)));
  const pages = readdirSync(PAGES)
    .filter((name) => name.endsWith('.html'))
    .map((name) => {
      const html = readFileSync(new URL(name, PAGES), 'utf8');
      return readPage(new JSDOM(html, { virtualConsole: new VirtualConsole() }).window.document);
    });
  return [...pasted, ...pages].flatMap((read) => (read.ok ? read.recipes : []));
}

function modelOfRecipe(recipe: Recipe): PlanModel {
  const { ingredients, servings } = tallyRecipe(recipe, DEFAULT_GOALS);
  return buildModel(
    readDish(ingredients, {
      family: null,
      servings,
      goals: DEFAULT_GOALS,
      foods,
      title: recipe.title,
      steps: recipe.steps.map(({ text }) => text),
    }),
  );
}

/** Points are rounded to thousandths, and two solvers keep rows to within their own precision. */
const SLACK = 0.001;
/** What a few lines and products less are worth: a plan further left may be that much closer, with more trouble. */
const TROUBLE = 0.15;
/** Every fifth point is solved again, and the first and last; the second solver takes its time. */
const EVERY = 5;

describe.each(recipes().map((recipe) => [recipe.title, recipe] as const))('%s', (_, recipe) => {
  const model = modelOfRecipe(recipe);

  it('reaches the least that a second solver finds, within 0.1 g', () => {
    if (leastCarbs(model).rows.length === 0) {
      expect(lowest(model, unlimited()).net).toBe(model.net.constant);
      return;
    }
    const theirs = highsLeast(leastCarbs(model));
    // The second solver's objective also holds a hair of what the changes cost.
    const net = model.net.constant + (theirs ?? Number.NaN);
    expect(Math.abs(lowest(model, unlimited()).net - Math.max(0, net))).toBeLessThan(0.1);
  });

  it('draws points within one percent of the closest plans there are', () => {
    const points = frontierOf(model, [], unlimited());
    const looked = points.filter((_, at) => at % EVERY === 0 || at === points.length - 1);
    const first = points[0]?.netCarbsG ?? Number.NaN;
    expect(first).toBeLessThan(lowest(model, unlimited()).net + 0.11);
    for (const { netCarbsG, closeness } of looked) {
      const program = withBudget(model, netCarbsG);
      const theirs = highsLeast(program);
      if (theirs === null) {
        expect(closeness).toBe(1);
        continue;
      }
      // The objective holds the cook's trouble besides closeness, so it is what two solvers share.
      const ours = solveProgram(program);
      expect(ours.objective, `${netCarbsG} g`).toBeLessThan(
        theirs + 0.01 * Math.max(0, 1 - theirs) + SLACK,
      );
      const own = closenessOf(lossOf(model, ours.values));
      expect(closeness, `${netCarbsG} g`).toBeGreaterThanOrEqual(0.99 * own - SLACK);
    }
  }, 60_000);
});

describe('frontier', () => {
  it('only rises, from the least to the original', () => {
    fc.assert(
      fc.property(randomSample, (sample) => {
        const points = frontier(sample);
        const first = points[0];
        const last = points.at(-1);
        expect(last?.closeness).toBe(1);
        points.forEach((point, at) => {
          const before = points[at - 1];
          if (!before) return;
          expect(point.netCarbsG).toBeGreaterThan(before.netCarbsG);
          expect(point.closeness).toBeGreaterThanOrEqual(before.closeness);
        });
        // A swap that saves too little is no plan, so a curve may have gaps of that size.
        if (first && last && last.netCarbsG - first.netCarbsG > 4)
          expect(points.length).toBeGreaterThanOrEqual(5);
      }),
      { numRuns: 60, seed: 27 },
    );
  });

  it('has no point above the plan at its net carbs', () => {
    fc.assert(
      fc.property(randomSample, fc.integer({ min: 5, max: 25 }), (sample, budgetG) => {
        // Out of reach, a plan stops at a dish one would still serve; the curve goes on.
        const { closeness, met } = plan(sample, { budgetG });
        const points = frontier(sample, { budgetG });
        if (points.length < 2 || closeness === 1 || !met) return;
        const own = points.find((p) => Math.abs(p.closeness - closeness) < 0.0015);
        expect(own, `${closeness}`).toBeDefined();
        for (const point of points)
          if (own && point.netCarbsG < own.netCarbsG - 0.01)
            expect(point.closeness).toBeLessThanOrEqual(closeness + TROUBLE);
      }),
      { numRuns: 50, seed: 30 },
    );
  });
});
