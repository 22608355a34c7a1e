/**
 * How long Kept takes with 2,000 recipes and 5,000 bakes on disk, in Chromium: from asking for the page
 * until its first rows are drawn, and from pressing its place until they are there again.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { adaptRecipe, DEFAULT_GOALS, readText } from '../../engine/index.ts';
import { buildChromium } from '../browser/drive/build.ts';
import { openChromium } from '../browser/drive/chromium.ts';
import { PASTED, textOf } from '../plan/pasted.ts';

const RECIPES = 2000;
const BAKES = 5000;
const ROUNDS = 5;
/** Kept is there within this, ms. */
const BOUND_MS = 300;

/** A score of the planner's invented recipes, each with its result, as they are kept. */
function samples(): unknown[] {
  return PASTED.slice(0, 20).flatMap((one) => {
    const read = readText(textOf(one));
    const recipe = read.ok ? read.recipes[0] : undefined;
    if (!recipe) return [];
    const adaptation = { ...adaptRecipe(recipe, DEFAULT_GOALS), ways: [] };
    return [{ recipe, goals: DEFAULT_GOALS, corrections: {}, adaptation }];
  });
}

/** Writes the kitchen into the page's database; invented days and figures. */
const FILL = `async ({ samples, recipes, bakes }) => {
  const db = await new Promise((done, failed) => {
    const opening = indexedDB.open('crumbshift');
    opening.onsuccess = () => done(opening.result);
    opening.onerror = () => failed(opening.error);
  });
  const write = (table, rows) => new Promise((done, failed) => {
    const change = db.transaction(table, 'readwrite');
    for (const row of rows) change.objectStore(table).put(row);
    change.oncomplete = () => done();
    change.onerror = () => failed(change.error);
  });
  for (let from = 0; from < recipes; from += 100) {
    await write('recipes', Array.from({ length: 100 }, (_, n) => {
      const at = from + n;
      const { recipe, ...work } = samples[at % samples.length];
      return { ...work, recipe: { ...recipe, title: recipe.title + ' ' + at, url: null }, id: 'r' + at,
        savedAt: at, updatedAt: at, deletedAt: null, url: '', name: '', worked: false, auto: false,
        tags: at % 7 ? [] : ['bread'], note: '' };
    }));
  }
  for (let from = 0; from < bakes; from += 500) {
    await write('bakes', Array.from({ length: 500 }, (_, n) => {
      const at = from + n;
      const { recipe, goals, corrections } = samples[at % samples.length];
      return { id: 'b' + at, recipeId: 'r' + (at % recipes), day: '2026-0' + (1 + at % 9) + '-11', addedAt: at,
        baked: { recipe, goals, corrections }, servings: 12, rawGrams: 900, netCarbsG: null, factor: 1,
        dishGrams: 780 - at % 40, pieces: null, sliceGrams: null, innerC: null, cooledHours: null,
        extraWaterG: at % 30, ovenSetC: 220, ovenReadC: 228, minutes: 40, how: 'good', readings: null,
        symptoms: [], notes: '', plan: { family: 'lean-yeast-bread', flours: { 'bread-flour': 500 }, taughtWaterG: 0 } };
    }));
  }
  db.close();
}`;

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** From the navigation's start until the first row was drawn, by the page's own clock. */
const opened = (page: Page, what = '.kept-link'): Promise<number> =>
  page.evaluate(`new Promise((done) => {
    const look = () => document.querySelector('${what}')
      ? requestAnimationFrame(() => done(performance.now()))
      : setTimeout(look, 4);
    look();
  })`);

const pressed = (page: Page): Promise<number> =>
  page.evaluate(`new Promise((done) => {
    const start = performance.now();
    document.querySelector('.rail a[href="#kept"]').click();
    const look = () => document.querySelector('.kept-link')
      ? requestAnimationFrame(() => done(performance.now() - start))
      : setTimeout(look, 4);
    setTimeout(look, 0);
  })`);

buildChromium();
const folder = mkdtempSync(join(tmpdir(), 'crumbshift-speed-'));
const run = await openChromium({ profile: join(folder, 'profile') });
try {
  const page = await run.open('bench.html#kept');
  await page.locator('.place.kept').waitFor();
  const empty: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    await page.reload();
    empty.push(await opened(page, '.place.kept .transfer'));
  }
  const kitchen = { samples: samples(), recipes: RECIPES, bakes: BAKES };
  await page.evaluate(`(${FILL})(${JSON.stringify(kitchen)})`);
  // The first time rows are made anew from the recipes; that is told apart.
  await page.reload();
  const first = await opened(page);
  const loads: number[] = [];
  const presses: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    await page.reload();
    loads.push(await opened(page));
    await page.locator('.rail a[href="#settings"]').click();
    await page.locator('.place:not(.kept)').waitFor();
    presses.push(await pressed(page));
  }
  console.table([
    {
      recipes: RECIPES,
      bakes: BAKES,
      'with nothing kept, ms': Math.round(median(empty)),
      'rows made anew, ms': Math.round(first),
      'page asked for until drawn, ms': Math.round(median(loads)),
      'place pressed until drawn, ms': Math.round(median(presses)),
      'bound, ms': BOUND_MS,
    },
  ]);
  process.exitCode = Math.max(median(loads), median(presses)) <= BOUND_MS ? 0 : 1;
} finally {
  await run.close();
  rmSync(folder, { recursive: true, force: true });
}
