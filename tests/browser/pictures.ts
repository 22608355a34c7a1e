/**
 * `npm run pictures [word]`: writes a picture of every place and state to `.output/pictures`, light and
 * dark, narrow and wide, English and German. A word takes only the pictures whose name holds it; several are parted by commas.
 */
import { mkdirSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { goTo, keepHere, settled } from './drive/bench.ts';
import { buildChromium } from './drive/build.ts';
import { type ChromiumRun, openChromium } from './drive/chromium.ts';
import { EXTRA_PAGES } from './drive/extra-pages.ts';
import { ROOT } from './drive/places.ts';
import { removeFolder } from './drive/remove-folder.ts';
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
    // The strip and the lists come with the answer.
    if (place === 'recipe') await settled(bench);
    await then(bench);
    return bench;
  };

/** A place while no recipe is open and nothing is kept. */
const emptyPlace = (place: string) => async (run: ChromiumRun) => {
  await run.inWorker(`chrome.storage.session.clear()`);
  const bench = await run.open(`bench.html?paste#${place}`);
  await bench.locator('.place, .message').first().waitFor();
  return bench;
};

/** Keeps some dishes, tells of two bakes and puts two goods in the cupboard. */
async function furnish(run: ChromiumRun, pages: Served): Promise<void> {
  for (const path of ['lemon-cake.html', 'griddle-pancakes.html', 'weeknight-pasta.html']) {
    const popup = await popupOn(path)(run, pages);
    await keepHere(popup);
    await popup.close();
  }
  const bench = await benchOn('milk-rolls.html', 'recipe')(run, pages);
  await keepHere(bench);
  await goTo(bench, 'bakes');
  for (const [grams, words] of [
    ['905', 'Gone in a day.'],
    ['880', 'A little dry at the edge.'],
  ] as const) {
    const log = bench.locator('.bake-log');
    await log
      .locator('details')
      .first()
      .evaluate((part) => {
        (part as HTMLDetailsElement).open = true;
      });
    await log.getByLabel('Whole dish after baking').fill(grams);
    await log.getByLabel('Your own words').fill(words);
    await log.getByRole('button', { name: 'Keep this bake' }).click();
    await log.locator('.bakes > li', { hasText: words }).waitFor();
  }
  await goTo(bench, 'cupboard');
  for (let press = 0; press < 2; press += 1)
    await bench
      .getByRole('button', { name: /^I have it/ })
      .first()
      .click();
  await bench.close();
}

const openLine = (text: string) => async (bench: Page) => {
  await bench.locator('.line', { hasText: text }).first().click();
  await bench.locator('.line-panel').waitFor();
};

async function setFlour(bench: Page): Promise<void> {
  await openLine('flour')(bench);
  await bench.locator('.line-panel .stepper button').nth(1).click();
  await settled(bench);
}

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

/** A page of the extension that needs no recipe. */
const place = (name: string) => async (run: ChromiumRun) => {
  const bench = await run.open(`bench.html#${name}`);
  await bench.locator('main h1').first().waitFor();
  return bench;
};

/** Egg and milk are never eaten: what still has them is told above the verdict. */
async function withAlarm(run: ChromiumRun, pages: Served): Promise<Page> {
  await run.inWorker(
    `chrome.storage.local.set({ preferences: { welcomed: true, avoid: ['egg', 'milk'] } })`,
  );
  const bench = await benchOn('porch-cookies.html', 'recipe')(run, pages);
  await run.inWorker(`chrome.storage.local.set({ preferences: { welcomed: true } })`);
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
  { name: 'recipe-1024', open: benchOn('milk-rolls.html', 'recipe'), width: 1024, height: 760 },
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
  {
    name: 'recipe-set',
    open: benchOn('milk-rolls.html', 'recipe', setFlour),
    ...PHONE,
    whole: true,
  },
  { name: 'recipe-alarm', open: withAlarm },
  { name: 'recipe-alarm-dark', open: withAlarm, dark: true },
  { name: 'popup-none-dark', open: popupOn('none.html'), ...POPUP, dark: true },
  ...(['figures-made', 'privacy'] as const).flatMap((name): Shot[] => [
    { name, open: place(name), whole: true },
    { name: `${name}-phone`, open: place(name), ...PHONE, dark: true },
  ]),
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

/** What is seen before anything is kept. */
const EMPTY: readonly Shot[] = [
  {
    name: 'start',
    open: async (run) => {
      await run.inWorker('chrome.storage.local.clear()');
      const bench = await run.open('bench.html');
      await bench.locator('.first-run').waitFor();
      return bench;
    },
  },
  { name: 'popup-first', open: popupOn('milk-rolls.html'), ...POPUP, whole: true },
  ...['recipe', 'buy', 'bakes', 'kept', 'cupboard'].flatMap((place): Shot[] => [
    { name: `empty-${place}`, open: emptyPlace(place) },
    { name: `empty-${place}-phone`, open: emptyPlace(place), ...PHONE },
  ]),
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
  const words = only.replace(/-de$/, '').split(',');
  const wanted = ({ name }: Shot) => words.some((word) => name.includes(word));
  const asked = SHOTS.filter(wanted);
  try {
    for (const shot of EMPTY.filter(wanted)) await shoot(run, pages, shot, '');
    await run.inWorker(`chrome.storage.local.set({ preferences: { welcomed: true } })`);
    await furnish(run, pages);
    if (!only.endsWith('-de')) for (const shot of asked) await shoot(run, pages, shot, '');
    await german(run);
    if (only === '' || only.endsWith('-de'))
      for (const shot of asked) await shoot(run, pages, shot, '-de');
  } finally {
    await run.close();
    await pages.close();
    removeFolder(profile);
  }
}

await shootAll();
