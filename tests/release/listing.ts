/**
 * `npm run listing`: five pictures for the stores in each language to `.output/listing`, 1280 by 800, from the
 * built extension on the demo pages; two of them, made small, are the README's and go to `.github/`.
 */
import { mkdirSync, mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { buildChromium } from '../browser/drive/build.ts';
import { type ChromiumRun, openChromium } from '../browser/drive/chromium.ts';
import { ROOT } from '../browser/drive/places.ts';
import { type Served, serveDemo } from '../browser/drive/server.ts';

const FOLDER = join(ROOT, '.output/listing');
const SIZE = { width: 1280, height: 800 };
/** Bytes of a picture that lies in the tree, at most. */
const MOST = 150_000;
const DISHES = ['milk-rolls.html', 'lemon-cake.html', 'hearth-loaf.html', 'porch-cookies.html'];
/** Pictures that the README shows. */
const SHOWN = ['1-popup', '2-recipe'];

async function popupOn(run: ChromiumRun, pages: Served, path: string): Promise<Page> {
  const page = await run.context.newPage();
  await page.goto(`${pages.origin}/${path}`);
  const popup = await run.click(page);
  await popup.locator('[aria-busy=false] .verdict').first().waitFor();
  await page.close();
  return popup;
}

async function place(run: ChromiumRun, name: string, ready: string): Promise<Page> {
  const bench = await run.open(`bench.html#${name}`);
  await bench.setViewportSize(SIZE);
  await bench.locator(ready).first().waitFor();
  return bench;
}

async function keepAll(run: ChromiumRun, pages: Served): Promise<void> {
  for (const dish of DISHES) {
    const popup = await popupOn(run, pages, dish);
    await popup.locator('button.keep').click();
    await popup.locator('.keep-state', { hasText: /\S/ }).waitFor({ state: 'attached' });
    await popup.close();
  }
}

/** The pages in the order of their pictures; the rolls are the last dish that was opened. */
const SHOTS: Record<string, (run: ChromiumRun, pages: Served) => Promise<Page>> = {
  '1-popup': async (run, pages) => {
    const popup = await popupOn(run, pages, 'milk-rolls.html');
    await popup.setViewportSize({ width: 480, height: 600 });
    return popup;
  },
  '2-recipe': (run) => place(run, 'recipe', '.recipe[aria-busy=false], [aria-busy=false] .verdict'),
  '3-stove': (run) => place(run, 'stove', '.stove'),
  '4-kept': (run) => place(run, 'kept', '.kept-title'),
  '5-privacy': (run) => place(run, 'privacy', '.kept-where'),
};

/** The popup, which is smaller than what stores ask for, on a plain board of that size. */
async function onBoard(run: ChromiumRun, popup: Page): Promise<Page> {
  const picture = (await popup.screenshot()).toString('base64');
  const board = await run.context.newPage();
  await board.setViewportSize(SIZE);
  await board.setContent(
    `<body style="margin:0;display:grid;place-items:center;height:100vh;background:#e9dcc8">
      <img src="data:image/png;base64,${picture}" style="box-shadow:0 8px 40px #0006" alt="">`,
  );
  return board;
}

async function shoot(run: ChromiumRun, pages: Served, language: string): Promise<void> {
  for (const [name, open] of Object.entries(SHOTS)) {
    const page = await open(run, pages);
    await page.waitForTimeout(200);
    const whole = page.viewportSize()?.width === SIZE.width ? page : await onBoard(run, page);
    await whole.screenshot({ path: join(FOLDER, `${name}-${language}.png`) });
    if (whole !== page) await whole.close();
    if (language === 'en' && SHOWN.includes(name)) {
      const file = join(ROOT, '.github', `${name.slice(2)}.jpg`);
      await page.screenshot({ path: file, type: 'jpeg', quality: 70 });
      const { size } = statSync(file);
      if (size > MOST) throw new Error(`${file} has ${size} bytes`);
    }
    await page.close();
    console.log(`${name}-${language}`);
  }
}

buildChromium();
mkdirSync(FOLDER, { recursive: true });
const profile = mkdtempSync(join(tmpdir(), 'crumbshift-listing-'));
const pages = await serveDemo();
const run = await openChromium({ profile });
try {
  await run.inWorker(`chrome.storage.local.set({ preferences: { welcomed: true } })`);
  await keepAll(run, pages);
  for (const language of ['en', 'de']) {
    await run.inWorker(
      `chrome.storage.local.set({ preferences: { language: '${language}', welcomed: true } })`,
    );
    await shoot(run, pages, language);
  }
} finally {
  await run.close();
  await pages.close();
  rmSync(profile, { recursive: true, force: true });
}
