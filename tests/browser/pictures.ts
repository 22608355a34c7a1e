/**
 * `npm run pictures [word]`: writes a picture of every place and state to `.output/pictures`, light and
 * dark, narrow and wide, English and German. A word takes only the pictures whose name holds it.
 */
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { buildChromium } from './drive/build.ts';
import { type ChromiumRun, openChromium } from './drive/chromium.ts';
import { EXTRA_PAGES } from './drive/extra-pages.ts';
import { ROOT } from './drive/places.ts';
import { type Served, serveDemo } from './drive/server.ts';

const FOLDER = join(ROOT, '.output/pictures');
const only = process.argv[2] ?? '';

interface Shot {
  name: string;
  /** Opens the page of the extension in the state to be shown. */
  open(run: ChromiumRun, pages: Served): Promise<Page>;
  width?: number;
  height?: number;
  dark?: boolean;
  /** As it comes out of a printer. */
  paper?: boolean;
  whole?: boolean;
}

const popupOn =
  (path: string, then: (popup: Page) => Promise<unknown> = async () => {}) =>
  async (run: ChromiumRun, pages: Served): Promise<Page> => {
    const page = await run.context.newPage();
    await page.goto(`${pages.origin}/${path}`);
    const popup = await run.click(page);
    await popup.locator('.verdict, .message:not(.working)').first().waitFor();
    await then(popup);
    await page.close();
    return popup;
  };

const benchOn =
  (path: string, place: string, then: (bench: Page) => Promise<unknown> = async () => {}) =>
  async (run: ChromiumRun, pages: Served): Promise<Page> => {
    const popup = await popupOn(path)(run, pages);
    await popup.close();
    const bench = await run.open(`bench.html#${place}`);
    await bench.locator('.recipe, .place, .stove').first().waitFor();
    await then(bench);
    return bench;
  };

const openLine = (text: string) => async (bench: Page) => {
  await bench.locator('.line', { hasText: text }).first().click();
  await bench.locator('.line-panel').waitFor();
};

const openAll = (page: Page) =>
  page.evaluate(() => {
    for (const part of document.querySelectorAll('details')) part.open = true;
  });

/** The full page with the first questions, as they are asked for in Settings. */
async function withQuestions(run: ChromiumRun): Promise<Page> {
  const bench = await run.open('bench.html#settings');
  await bench.locator('.settings > button').first().click();
  await bench.locator('.first-run').waitFor();
  return bench;
}

const POPUP = { width: 480, height: 600 };
const PHONE = { width: 390, height: 844 };

const SHOTS: readonly Shot[] = [
  { name: 'popup-rolls', open: popupOn('milk-rolls.html'), ...POPUP },
  { name: 'popup-rolls-whole', open: popupOn('milk-rolls.html'), ...POPUP, whole: true },
  { name: 'popup-cake-dark', open: popupOn('lemon-cake.html'), ...POPUP, dark: true },
  { name: 'popup-loaf', open: popupOn('hearth-loaf.html'), ...POPUP },
  { name: 'popup-pasta', open: popupOn('weeknight-pasta.html'), ...POPUP },
  { name: 'popup-several', open: popupOn('chicken-and-sauce.html'), ...POPUP },
  { name: 'popup-none', open: popupOn('none.html'), ...POPUP },
  { name: 'popup-long', open: popupOn('long.html'), ...POPUP },
  {
    name: 'popup-tight',
    open: popupOn('rice-pudding.html', (p) => p.getByLabel(/^Budget/).fill('2')),
    ...POPUP,
  },
  {
    name: 'recipe-wide',
    open: benchOn('milk-rolls.html', 'recipe', openLine('flour')),
    whole: true,
  },
  {
    name: 'recipe-dark',
    open: benchOn('milk-rolls.html', 'recipe', openLine('flour')),
    dark: true,
  },
  {
    name: 'recipe-phone',
    open: benchOn('milk-rolls.html', 'recipe', openLine('flour')),
    ...PHONE,
    whole: true,
  },
  { name: 'recipe-320', open: benchOn('lemon-cake.html', 'recipe'), width: 320, height: 700 },
  { name: 'recipe-forty', open: benchOn('forty.html', 'recipe'), whole: true },
  { name: 'recipe-folds', open: benchOn('lemon-cake.html', 'recipe', openAll), whole: true },
  {
    name: 'recipe-paper',
    open: benchOn('milk-rolls.html', 'recipe'),
    width: 794,
    height: 1123,
    paper: true,
    whole: true,
  },
  { name: 'recipe-gone', open: (run) => run.open('bench.html?id=never-there') },
  { name: 'first-run', open: withQuestions },
  { name: 'first-run-phone', open: withQuestions, ...PHONE },
  ...(['stove', 'buy', 'bakes', 'cupboard', 'kept', 'settings', 'paste'] as const).flatMap(
    (place): Shot[] => [
      { name: `${place}-wide`, open: benchOn('milk-rolls.html', place) },
      { name: `${place}-dark`, open: benchOn('milk-rolls.html', place), dark: true },
      { name: `${place}-phone`, open: benchOn('milk-rolls.html', place), ...PHONE },
    ],
  ),
];

async function german(run: ChromiumRun): Promise<void> {
  await run.inWorker(
    `chrome.storage.local.set({ preferences: { language: 'de', welcomed: true, rule: { region: 'eu', polyols: 'half' } } })`,
  );
}

async function shoot(run: ChromiumRun, pages: Served, shot: Shot, suffix: string): Promise<void> {
  const page = await shot.open(run, pages);
  await page.setViewportSize({ width: shot.width ?? 1280, height: shot.height ?? 800 });
  await page.emulateMedia({
    colorScheme: shot.dark ? 'dark' : 'light',
    media: shot.paper ? 'print' : 'screen',
  });
  await page.waitForTimeout(150);
  await page.screenshot({
    path: join(FOLDER, `${shot.name}${suffix}.png`),
    fullPage: shot.whole ?? false,
  });
  await page.close();
  console.log(`${shot.name}${suffix}`);
}

async function shootAll(): Promise<void> {
  buildChromium();
  mkdirSync(FOLDER, { recursive: true });
  const profile = mkdtempSync(join(tmpdir(), 'crumbshift-pictures-'));
  const pages = await serveDemo(EXTRA_PAGES);
  const run = await openChromium({ profile });
  const asked = SHOTS.filter(({ name }) => name.includes(only.replace(/-de$/, '')));
  try {
    await run.inWorker(`chrome.storage.local.set({ preferences: { welcomed: true } })`);
    if (!only.endsWith('-de')) for (const shot of asked) await shoot(run, pages, shot, '');
    await german(run);
    if (only === '' || only.endsWith('-de'))
      for (const shot of asked) await shoot(run, pages, shot, '-de');
  } finally {
    await run.close();
    await pages.close();
    rmSync(profile, { recursive: true, force: true });
  }
}

await shootAll();
