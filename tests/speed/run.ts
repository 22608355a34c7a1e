/**
 * How long one page takes from its document to a reworked recipe, after warm-up, beside the time
 * that JSON.parse needs for the same page's JSON-LD; and how many ingredient lines are read in a
 * second, beside a general line parser. Exits 1 when the median page takes longer than the bound, or
 * when lines are read slower than theirs: the general parser on recipes' lines, a fixed count on all.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { JSDOM, VirtualConsole } from 'jsdom';
import { parseIngredient } from 'parse-ingredient';
import { adaptRecipe, DEFAULT_GOALS, readPage } from '../../engine/index.ts';
import { parseLine } from '../../engine/parse/index.ts';
import { PLAN_BOUNDS, planTimes } from './plan.ts';

const PAGES = new URL('../pages/demo/', import.meta.url);
const WARM_UP = 30;
const ROUNDS = 60;
/** Reading and planning one page, milliseconds, median. */
const BOUND_MS = 50;
/** Ingredient lines read in a second, at least. */
const BOUND_LINES = 30_000;

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

function timed(work: () => unknown, rounds: number): number {
  const times: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    const start = performance.now();
    work();
    times.push(performance.now() - start);
  }
  return median(times);
}

/** Parsing some thousand bytes of JSON is below the clock's grain, so many go into one reading. */
function parseTime(jsonLd: readonly string[]): number {
  const times = 200;
  const parseAll = () => {
    for (let n = 0; n < times; n += 1) for (const text of jsonLd) JSON.parse(text);
  };
  parseAll();
  return timed(parseAll, 5) / times;
}

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

function measure(file: string) {
  const html = readFileSync(new URL(file, PAGES), 'utf8');
  const open = () => new JSDOM(html, { virtualConsole: new VirtualConsole() }).window.document;
  const document = open();
  const work = () => {
    const result = readPage(document);
    return result.ok ? result.recipes.map((recipe) => adaptRecipe(recipe, DEFAULT_GOALS)) : [];
  };
  timed(work, WARM_UP);
  const page = timed(work, ROUNDS);
  const blocks = [...document.querySelectorAll('script[type="application/ld+json"]')];
  const jsonLd = blocks.map((block) => block.textContent ?? '').filter(isJson);
  return {
    file,
    'read and plan, ms': Number(page.toFixed(2)),
    'parse HTML (jsdom), ms': Number(timed(open, 10).toFixed(2)),
    'times JSON.parse of its JSON-LD':
      jsonLd.length > 0 ? Math.round(page / parseTime(jsonLd)) : null,
  };
}

const readJson = (path: string): unknown =>
  JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8'));

/** Lines of the planner's invented recipes, and the harder ones that the line reader's tests check by hand. */
function ingredientLines(): Record<string, string[]> {
  const { recipes } = readJson('../plan/recipes.json') as { recipes: { lines: string[] }[] };
  const hard = readJson('../parse/lines/en.json') as string[][];
  return {
    recipes: recipes.flatMap((recipe) => recipe.lines),
    'hard lines': hard.map(([line = '']) => line),
  };
}

/** Ingredient lines a second of a reader, median of several rounds. */
function linesPerSecond(lines: readonly string[], read: (line: string) => unknown): number {
  const readAll = () => lines.forEach((line) => void read(line));
  timed(readAll, WARM_UP);
  return Math.round((lines.length * 1000) / timed(readAll, ROUNDS));
}

/** Both readers over the same lines in the same run; true when ours keeps to the bounds. */
function compareReaders(): boolean {
  const table = Object.entries(ingredientLines()).map(([kind, lines]) => {
    const ours = linesPerSecond(lines, (line) => parseLine(line, { language: 'en' }));
    const theirs = linesPerSecond(lines, (line) => parseIngredient(line));
    return {
      kind,
      lines: lines.length,
      'ours, lines a second': ours,
      'parse-ingredient, lines a second': theirs,
      ratio: Number((ours / theirs).toFixed(2)),
    };
  });
  console.table(table);
  const [recipes] = table;
  return (
    table.every((row) => row['ours, lines a second'] >= BOUND_LINES) && (recipes?.ratio ?? 0) >= 1
  );
}

const rows = readdirSync(PAGES)
  .filter((name) => name.endsWith('.html'))
  .sort()
  .map(measure);
console.table(rows);
const overall = median(rows.map((row) => row['read and plan, ms']));
console.log(`median page: ${overall.toFixed(2)} ms (bound ${BOUND_MS} ms)`);
const quick = compareReaders();
const plans = planTimes();
console.log(
  `${plans.plans} plans: median ${plans.median.toFixed(1)} ms (bound ${PLAN_BOUNDS.median}), ` +
    `95 of 100 within ${plans.high.toFixed(1)} ms (bound ${PLAN_BOUNDS.high}), worst ${plans.worst.toFixed(1)} ms (${plans.slowest})`,
);
const inTime = plans.median <= PLAN_BOUNDS.median && plans.high <= PLAN_BOUNDS.high;
process.exitCode = overall <= BOUND_MS && quick && inTime ? 0 : 1;
