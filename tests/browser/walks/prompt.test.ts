/** How soon the screens answer, in Chromium: figures after the click, letters while recipes are worked out. */
import { mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { benchWith, keepHere, LOAF_TEXT, openLine } from '../drive/bench.ts';
import { buildChromium } from '../drive/build.ts';
import { type ChromiumRun, openChromium } from '../drive/chromium.ts';
import { DEMO_PAGES } from '../drive/places.ts';
import { removeFolder } from '../drive/remove-folder.ts';
import { type Served, serveDemo } from '../drive/server.ts';

/** Figures should stand this long after the popup was opened, ms; told in the record of the run. */
const FIGURES_MS = 1000;
/**
 * And in as many pieces of the yardstick's work at most, whatever the machine: a second where a piece takes
 * 2.5 ms. Own choice.
 */
const MOST_PIECES = 400;
/** A letter is on the screen this long after its key, ms. */
const LETTER_MS = 50;

let folder: string;
let pages: Served;
let run: ChromiumRun;

/** Notes when the page's own serving is first told, and when the verdict is there, ms since the page was opened. */
const WATCH_VERDICT = `
  new MutationObserver((_, watcher) => {
    const told = document.querySelector('.as-it-is');
    if (told) globalThis.asItIs ??= { at: performance.now(), text: told.textContent };
    if (!document.querySelector('.verdict, .choices')) return;
    globalThis.figuresAt = performance.now();
    watcher.disconnect();
  }).observe(document, { childList: true, subtree: true });
`;

/** Notes of each key how long it took from the press to the picture that shows it, ms. */
const WATCH_KEYS = `
  globalThis.keys = [];
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) if (entry.name === 'keydown') globalThis.keys.push(entry.duration);
  }).observe({ type: 'event', durationThreshold: 16, buffered: false });
`;

/** Many short pieces of work, each of the same size: the quickest of them and their mean, ms. */
const YARDSTICK = `(() => {
  const times = [];
  let sum = 0;
  while (times.length < 200) {
    const start = performance.now();
    for (let at = 0; at < 400_000; at += 1) sum = (sum + at * at) % 1_000_003;
    times.push(performance.now() - start);
  }
  globalThis.yardstick = sum;
  times.splice(0, 20);
  return { quickest: Math.min(...times), mean: times.reduce((a, b) => a + b, 0) / times.length };
})()`;

interface Opening {
  /** As the clock has it. */
  ms: number;
  /** As it would be on this machine by itself. */
  aloneMs: number;
  /** In pieces of the yardstick's work. */
  pieces: number;
  /** When a serving as the page has it was told, by the clock; null where the verdict was there before it was drawn. */
  asItIsMs: number | null;
}

async function figuresAfter(path: string): Promise<Opening> {
  const page = await run.context.newPage();
  await page.goto(`${pages.origin}/${path}`);
  const popup = await run.click(page);
  await popup.locator('.verdict, .choices').first().waitFor();
  const ms = Number(await popup.evaluate('globalThis.figuresAt'));
  const asItIs = (await popup.evaluate('globalThis.asItIs ?? null')) as { at: number } | null;
  const { quickest, mean } = (await popup.evaluate(YARDSTICK)) as {
    quickest: number;
    mean: number;
  };
  await popup.close();
  await page.close();
  // Every page is read and worked out anew.
  await run.inWorker('chrome.storage.session.clear()');
  return {
    ms,
    aloneMs: ms / Math.max(1, mean / quickest),
    pieces: ms / mean,
    asItIsMs: asItIs?.at ?? null,
  };
}

/** Types as a quick user does; the slowest letter, ms. Keys under 16 ms are not noted by the browser. */
async function slowest(page: Page, text: string): Promise<number> {
  await page.evaluate(WATCH_KEYS);
  await page.keyboard.type(text, { delay: 60 });
  await page.waitForTimeout(200);
  const keys = (await page.evaluate('globalThis.keys')) as number[];
  return Math.max(0, ...keys);
}

/** The least of some tries: other work of the machine only ever adds to a time. */
async function leastOf(
  tries: number,
  time: () => Promise<number>,
  enough: number,
): Promise<number> {
  let least = Number.POSITIVE_INFINITY;
  for (let at = 0; at < tries && least > enough; at += 1) least = Math.min(least, await time());
  return Math.round(least);
}

beforeAll(async () => {
  buildChromium();
  folder = mkdtempSync(join(tmpdir(), 'crumbshift-prompt-'));
  pages = await serveDemo();
  run = await openChromium({ profile: join(folder, 'profile') });
  await run.context.addInitScript(WATCH_VERDICT);
  await run.inWorker(`chrome.storage.local.set({ preferences: { welcomed: true } })`);
});

afterAll(async () => {
  await run?.close();
  await pages?.close();
  removeFolder(folder);
});

describe('figures in the popup', () => {
  const demo = readdirSync(DEMO_PAGES).filter((name) => name.endsWith('.html'));
  it.each(demo)('of %s are there within a second of a quick machine', async (path) => {
    const openings: Opening[] = [];
    while (openings.length < 3 && !openings.some(({ aloneMs }) => aloneMs <= FIGURES_MS))
      openings.push(await figuresAfter(path));
    const took = Math.min(...openings.map(({ aloneMs }) => aloneMs));
    const clock = Math.min(...openings.map(({ ms }) => ms));
    const pieces = Math.min(...openings.map((one) => one.pieces));
    const early = Math.min(...openings.map(({ ms, asItIsMs }) => asItIsMs ?? ms));
    console.log(
      `${path}: ${Math.round(took)} ms, by the clock ${Math.round(clock)} ms (a serving as it is: ${Math.round(early)} ms), ${Math.round(pieces)} pieces`,
    );
    expect(pieces).toBeGreaterThan(0);
    expect(pieces).toBeLessThanOrEqual(MOST_PIECES);
  });
});

describe('letters', () => {
  it('of a budget stand at once, while every one of them is worked out', async () => {
    const bench = await benchWith(run, LOAF_TEXT);
    // The page's policy let its worker run: without it recipes would be worked out between the letters.
    expect(bench.workers().map((worker) => worker.url())).toEqual([
      expect.stringContaining('/chunks/solver-'),
    ]);
    const budget = bench.locator('.strip-wide .stepper input').first();
    const took = await leastOf(
      5,
      async () => {
        await budget.fill('');
        await budget.focus();
        return slowest(bench, '12.5');
      },
      LETTER_MS,
    );
    console.log(`budget: ${took} ms`);
    expect(took).toBeLessThanOrEqual(LETTER_MS);
  });

  it('of a food and of a kept dish stand at once', async () => {
    const bench = await benchWith(run, LOAF_TEXT);
    await keepHere(bench);
    const line = await openLine(bench, 'bread flour');
    await line.getByRole('button', { name: 'Another food' }).click();
    const food = line.locator('.food-picker input');
    const kept = bench.locator('.search-form input, input[type=search]').first();
    const took = await leastOf(
      5,
      async () => {
        await food.fill('');
        await food.focus();
        return slowest(bench, 'whole wheat flour');
      },
      LETTER_MS,
    );
    console.log(`food: ${took} ms`);
    expect(took).toBeLessThanOrEqual(LETTER_MS);
    await bench.locator('.rail a[href="#kept"]').click();
    await kept.waitFor();
    const inKept = await leastOf(
      5,
      async () => {
        await kept.fill('');
        await kept.focus();
        return slowest(bench, 'plain loaf');
      },
      LETTER_MS,
    );
    console.log(`kept: ${inKept} ms`);
    expect(inKept).toBeLessThanOrEqual(LETTER_MS);
  });
});
