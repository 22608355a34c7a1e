/**
 * How long a plan takes, without its frontier, over the invented recipes of the planner's tests and the
 * demo pages, after warm-up: median, 95th of a hundred and worst, in ms of processor time, so that what
 * else the machine does is left out.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { JSDOM, VirtualConsole } from 'jsdom';
import { foodTable } from '../../engine/foods/index.ts';
import { DEFAULT_GOALS, readPage, readText, tallyRecipe } from '../../engine/index.ts';
import type { Recipe } from '../../engine/model.ts';
import { planRecipe } from '../../engine/plan/index.ts';
import { PASTED, textOf } from '../plan/pasted.ts';

const PAGES = new URL('../pages/demo/', import.meta.url);
const BUDGETS = [15, 10];

/** Bounds of a plan, ms of processor time. */
export const PLAN_BOUNDS = { median: 10, high: 30 } as const;

export interface PlanTimes {
  plans: number;
  median: number;
  high: number;
  worst: number;
  slowest: string;
}

function recipes(): Recipe[] {
  const pasted = PASTED.flatMap((recipe) => {
    const read = readText(textOf(recipe));
    return read.ok ? read.recipes : [];
  });
  const pages = readdirSync(PAGES)
    .filter((name) => name.endsWith('.html'))
    .flatMap((name) => {
      const html = readFileSync(new URL(name, PAGES), 'utf8');
      const dom = new JSDOM(html, { virtualConsole: new VirtualConsole() });
      const read = readPage(dom.window.document);
      return read.ok ? read.recipes : [];
    });
  return [...pasted, ...pages];
}

const at = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;

/** Processor time of this process so far, ms; its collector and compiler threads count as well. */
function processorMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Times planning alone: lines are read, matched, weighed and tallied beforehand. */
export function planTimes(rounds = 3): PlanTimes {
  const foods = foodTable();
  const jobs = recipes().flatMap((recipe) => {
    const { ingredients, servings, tally } = tallyRecipe(recipe, DEFAULT_GOALS);
    const words = { title: recipe.title, steps: recipe.steps.map(({ text }) => text) };
    return BUDGETS.map((budgetG) => ({
      title: recipe.title,
      run: () =>
        planRecipe(ingredients, words, {
          goals: { ...DEFAULT_GOALS, budgetG },
          servings,
          foods,
          before: tally,
        }),
    }));
  });
  for (const { run } of jobs) run();
  const times = jobs.map(({ title, run }) => {
    const taken = Array.from({ length: rounds }, () => {
      const start = processorMs();
      run();
      return processorMs() - start;
    }).sort((a, b) => a - b);
    return { title, ms: at(taken, 0.5) };
  });
  const sorted = times.map(({ ms }) => ms).sort((a, b) => a - b);
  const slowest = times.reduce((a, b) => (b.ms > a.ms ? b : a));
  return {
    plans: sorted.length,
    median: at(sorted, 0.5),
    high: at(sorted, 0.95),
    worst: slowest.ms,
    slowest: slowest.title,
  };
}
