/** What each stage takes over the invented recipes, in processor time a recipe, and how it grows. */
import { readdirSync, readFileSync } from 'node:fs';
import { parsePage } from '../../engine/cli/light-document/parse-page.ts';
import { FOOD_FILES } from '../../engine/foods/built-in.ts';
import { foodFromRow } from '../../engine/foods/food-of-row.ts';
import type { WrittenRow } from '../../engine/foods/food-row.ts';
import { foodTable } from '../../engine/foods/index.ts';
import {
  adaptRecipe,
  DEFAULT_GOALS,
  frontierOf,
  parseLines,
  type Recipe,
  readPage,
  tallyRecipe,
  toText,
  weighRecipe,
} from '../../engine/index.ts';
import { matchItem } from '../../engine/match/index.ts';
import { planRecipe } from '../../engine/plan/index.ts';
import { PASTED } from '../plan/pasted.ts';
import { sampleRecipe } from '../store/sample.ts';

export interface Row {
  what: string;
  ms: number;
}

const PAGES = new URL('../pages/demo/', import.meta.url);
const pages = readdirSync(PAGES)
  .filter((name) => name.endsWith('.html'))
  .map((name) => readFileSync(new URL(name, PAGES), 'utf8'));

/** Recipes of their own each time, so that nothing is remembered from the round before. */
const recipes = (): Recipe[] =>
  PASTED.slice(0, 20).map(({ title, lines, steps }) =>
    sampleRecipe({
      title,
      groups: [{ title: null, lines: [...lines] }],
      steps: steps.map((text) => ({ section: null, text })),
    }),
  );

/** Processor time of some work, ms; the least of several rounds, after one to warm up. */
export function leastTime(work: () => unknown, rounds = 3): number {
  const times = Array.from({ length: rounds + 1 }, () => {
    const start = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  });
  return Math.min(...times.slice(1));
}

/** Work made ready outside the clock, then done for each of a list; the time is of one. */
function each<T>(what: string, made: () => readonly T[], work: (one: T) => unknown): Row {
  const rounds = Array.from({ length: 4 }, made);
  let round = 0;
  const ms = leastTime(() => {
    for (const one of rounds[round] ?? []) work(one);
    round += 1;
  });
  return { what, ms: ms / (rounds[0]?.length ?? 1) };
}

function planInputs() {
  return recipes().map((recipe) => {
    const { ingredients, servings, tally } = tallyRecipe(recipe, DEFAULT_GOALS);
    const words = { title: recipe.title, steps: recipe.steps.map(({ text }) => text) };
    return { ingredients, servings, before: tally, words };
  });
}

function matches(recipe: Recipe): void {
  const foods = foodTable();
  for (const line of parseLines(recipe))
    for (const item of line.items) matchItem(item, line, { foods, language: 'en' });
}

/** One recipe of this many lines, read and counted. */
function counted(lines: number): Row {
  const own = PASTED.flatMap((recipe) => recipe.lines);
  const made = () => [
    sampleRecipe({
      groups: [
        { title: null, lines: Array.from({ length: lines }, (_, n) => own[n % own.length] ?? '') },
      ],
    }),
  ];
  return each(`${lines} lines read, matched, weighed and counted`, made, (recipe) =>
    tallyRecipe(recipe, DEFAULT_GOALS),
  );
}

/** A batch in one process; `ms` is of one page. */
function batch(count: number): Row {
  let at = 0;
  const one = () => {
    const read = readPage(parsePage(pages[at % pages.length] ?? ''));
    at += 1;
    if (read.ok && read.recipes[0]) tallyRecipe(read.recipes[0], DEFAULT_GOALS);
  };
  const ms = leastTime(() => {
    for (let done = 0; done < count; done += 1) one();
  }, 1);
  return { what: `a page, opened, read and counted, in a batch of ${count}`, ms: ms / count };
}

export const FILES_PARSED = 'the food files parsed as JSON';
export const TABLE_MADE = 'the food table made of them';

function foodRows(): Row[] {
  const text = JSON.stringify(FOOD_FILES);
  const made = () =>
    FOOD_FILES.flatMap(({ group, foods }) =>
      (foods as WrittenRow[]).map((row) => foodFromRow(row, group, null)),
    );
  return [
    { what: FILES_PARSED, ms: leastTime(() => JSON.parse(text), 15) },
    { what: TABLE_MADE, ms: leastTime(made, 15) },
  ];
}

export function stageRows(): Row[] {
  const foods = foodTable();
  const goals = DEFAULT_GOALS;
  return [
    ...foodRows(),
    each(
      'a page read',
      () => pages.map((html) => parsePage(html)),
      (page) => readPage(page),
    ),
    each('lines of a recipe read', recipes, parseLines),
    each('… and matched', recipes, matches),
    each('… and weighed', recipes, (recipe) => weighRecipe(recipe)),
    each('… and counted', recipes, (recipe) => tallyRecipe(recipe, goals)),
    each('planned', planInputs, ({ ingredients, words, ...input }) =>
      planRecipe(ingredients, words, { ...input, goals, foods }),
    ),
    each('all of it: the ways, and the lines and method of one', recipes, (recipe) =>
      adaptRecipe(recipe, goals),
    ),
    each('solved again after an edit', recipes, (recipe) =>
      adaptRecipe(recipe, { ...goals, budgetG: 11 }),
    ),
    each(
      'the curve of closeness',
      () => recipes().map((recipe) => adaptRecipe(recipe, goals)),
      (adaptation) => frontierOf(adaptation),
    ),
    ...[10, 100, 1000].map(counted),
    ...[1, 10, 100, 1000].map(batch),
  ];
}

/** Growth of the heap over 500 conversions, MB, after some to warm up. */
export function heapGrowth(): number {
  const convert = (times: number) => {
    const own = recipes();
    for (let n = 0; n < times; n += 1) {
      const recipe = own[n % own.length];
      if (recipe) toText(adaptRecipe(structuredClone(recipe), DEFAULT_GOALS));
    }
  };
  const settled = () => {
    globalThis.gc?.();
    return process.memoryUsage().heapUsed / 2 ** 20;
  };
  convert(100);
  const before = settled();
  convert(500);
  return settled() - before;
}
