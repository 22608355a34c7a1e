/** The main path in Chromium: click, understand, keep, come back. */
import { mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { figuresOn, fold, goTo, keepHere, openLine, rowsOf, settled } from './drive/bench.ts';
import { buildChromium } from './drive/build.ts';
import { type ChromiumRun, openChromium } from './drive/chromium.ts';
import { EXTRA_PAGES, LONG_NAME } from './drive/extra-pages.ts';
import { requestsIn } from './drive/netlog.ts';
import { DEMO_PAGES, LOAF } from './drive/places.ts';
import { removeFolder } from './drive/remove-folder.ts';
import { type Served, serveDemo } from './drive/server.ts';
import {
  adaptByCommandLine,
  type CommandLineResult,
  expectInTerminal,
  shownBefore,
  shownGrams,
} from './drive/shown/expected.ts';
import { POPUP_WORDS, type PopupWords } from './drive/shown/popup-words.ts';
import { sheetsOf } from './drive/shown/sheets.ts';

/** Demo pages with one recipe; of the page with two the user takes one first. */
const ONE_RECIPE = readdirSync(DEMO_PAGES).filter(
  (name) => name.endsWith('.html') && name !== 'chicken-and-sauce.html',
);

let folder: string;
let pages: Served;
let run: ChromiumRun;
let said: CommandLineResult;

const profile = () => join(folder, 'profile');
const netLog = (n: number) => join(folder, `net-${n}.json`);

async function popupOn(path: string): Promise<Page> {
  const page = await run.context.newPage();
  await page.goto(`${pages.origin}/${path}`);
  const popup = await run.click(page);
  await popup.locator('.verdict, .message:not(.working)').first().waitFor();
  return popup;
}

const words = async (part: Locator): Promise<string> => (await part.textContent()) ?? '';
const field = (page: Page, name: RegExp) => page.getByRole('textbox', { name }).first();
const kept = (bench: Page) => bench.locator('.kept-title');

async function openFirstKept(): Promise<Page> {
  const bench = await run.open('bench.html#kept');
  await kept(bench).first().click();
  await bench.locator('.recipe .verdict').waitFor();
  await settled(bench);
  return bench;
}

beforeAll(async () => {
  buildChromium();
  said = adaptByCommandLine(LOAF);
  folder = mkdtempSync(join(tmpdir(), 'crumbshift-chromium-'));
  pages = await serveDemo(EXTRA_PAGES);
  run = await openChromium({ profile: profile(), netLog: netLog(1) });
  await run.inWorker(`chrome.storage.local.set({ preferences: { welcomed: true } })`);
});

afterAll(async () => {
  await run?.close();
  await pages?.close();
  removeFolder(folder);
});

describe('the main path in Chromium', () => {
  it('shows what the command line says after one click with activeTab only', async () => {
    const popup = await popupOn(LOAF);
    expect(await words(popup.locator('.verdict-figure'))).toBe(shownGrams(said.after.netCarbsG));
    expect(await words(popup.locator('.verdict-was'))).toBe(shownBefore(said.before.netCarbsG));
    expect(await words(popup.locator('.popup-head .dish'))).toBe(said.title);
    const more = popup.locator('.more-lines');
    if (await more.count()) await more.click();
    const told: PopupWords = JSON.parse(await popup.evaluate(POPUP_WORDS));
    const foods = said.swaps.flatMap(({ to }) => to.map(({ food }) => food));
    expect(foods.length).toBeGreaterThan(0);
    for (const food of foods) expect(told.changes.join('\n')).toContain(food);
    expectInTerminal(told, said);
  });

  it('says what to do in the first 500 px, with nothing to scroll for', async () => {
    const popup = await popupOn(LOAF);
    await popup.setViewportSize({ width: 480, height: 600 });
    const lowest = await popup
      .locator('.what-you-do .do')
      .first()
      .evaluate((part) =>
        Math.max(
          ...[...part.querySelectorAll('li')].map((line) => line.getBoundingClientRect().bottom),
        ),
      );
    expect(lowest).toBeLessThanOrEqual(500);
    expect(await popup.locator('.popup-bar .first').isVisible()).toBe(true);
  });

  it('solves again at once for another budget and other servings', async () => {
    const popup = await popupOn(LOAF);
    const now = async () => (await figuresOn(popup)).now;
    await field(popup, /^Budget/).fill('20');
    await settled(popup);
    await expect.poll(now).toBeGreaterThan(15);
    expect(await now()).toBeLessThanOrEqual(20);
    await field(popup, /^Servings/).fill(String(said.servings * 2));
    const half = (said.before.netCarbsG ?? 0) / 2;
    await expect
      .poll(async () => Math.abs((await figuresOn(popup)).was - half))
      .toBeLessThanOrEqual(0.06);
    await field(popup, /^Budget/).fill('15');
    await field(popup, /^Servings/).fill(String(said.servings));
    await expect
      .poll(() => words(popup.locator('.verdict-figure')))
      .toBe(shownGrams(said.after.netCarbsG));
    await popup.getByRole('button', { name: /^Less: Budget/ }).click();
    expect(await field(popup, /^Budget/).inputValue()).toBe('14');
    await expect.poll(now).toBeLessThanOrEqual(14);
  });

  it('shows the same in the real popup, without sideways scrolling', async () => {
    const page = await run.context.newPage();
    await page.goto(`${pages.origin}/${LOAF}`);
    const { shown, wide, room } = await run.inRealPopup<{
      shown: string;
      wide: number;
      room: number;
    }>(
      page,
      `({ shown: document.querySelector('.verdict-was')?.innerText ?? '',
          wide: document.documentElement.scrollWidth, room: innerWidth })`,
    );
    expect(shown).toBe(shownBefore(said.before.netCarbsG));
    expect(wide).toBeLessThanOrEqual(room);
  });

  it('keeps, and still has it after the browser was started again', async () => {
    const popup = await popupOn(LOAF);
    // What an earlier test asked of this page is still asked: back to the page's own.
    await field(popup, /^Budget/).fill('15');
    await settled(popup);
    await keepHere(popup);
    await run.close();
    run = await openChromium({ profile: profile(), netLog: netLog(2) });
    const bench = await openFirstKept();
    expect(await words(bench.locator('.recipe h1'))).toBe(said.title);
    await expect
      .poll(() => words(bench.locator('.verdict-figure')))
      .toBe(shownGrams(said.after.netCarbsG));
  });

  it('takes something else, leaves a line as it is, and keeps the try before', async () => {
    const bench = await openFirstKept();
    const first = await rowsOf(bench);
    const came = said.swaps[0]?.to[0]?.food ?? '';
    const panel = await openLine(bench, came);
    await panel.getByRole('button', { name: 'Something else instead' }).click();
    await expect.poll(() => rowsOf(bench)).not.toEqual(first);
    const flour = await openLine(bench, /bread flour/);
    await flour.getByRole('button', { name: 'Leave as it was' }).click();
    await bench.locator('.lines [data-change=kept]', { hasText: 'bread flour' }).waitFor();
    await keepHere(bench);
    const tries = await fold(bench, 'tries');
    await tries.getByRole('button', { name: 'Use this version' }).click();
    await expect.poll(() => rowsOf(bench)).toEqual(first);
    await keepHere(bench);
    await expect
      .poll(() => tries.getByRole('button', { name: 'Use this version' }).count())
      .toBe(2);
  });

  it('undoes and redoes ten changes, one by one', async () => {
    const bench = await openFirstKept();
    const budget = field(bench, /^Budget/);
    const start = await budget.inputValue();
    for (let press = 0; press < 10; press += 1)
      await bench
        .getByRole('button', { name: /^More: Budget/ })
        .first()
        .click();
    await expect.poll(() => budget.inputValue()).toBe(String(Number(start) + 10));
    const undo = bench.getByRole('button', { name: 'Undo', exact: true });
    const redo = bench.getByRole('button', { name: 'Redo', exact: true });
    for (let press = 0; press < 10; press += 1) await undo.click();
    await expect.poll(() => budget.inputValue()).toBe(start);
    await expect.poll(() => undo.isDisabled()).toBe(true);
    for (let press = 0; press < 10; press += 1) await redo.click();
    await expect.poll(() => budget.inputValue()).toBe(String(Number(start) + 10));
    for (let press = 0; press < 10; press += 1) await bench.keyboard.press('Control+z');
    await expect.poll(() => budget.inputValue()).toBe(start);
  });
});

describe('files and paper in Chromium', () => {
  it('gives the reworked recipe as text', async () => {
    const bench = await openFirstKept();
    const files = await fold(bench, 'files');
    const waiting = bench.waitForEvent('download');
    await files.getByRole('button', { name: 'Save as plain text' }).click();
    const download = await waiting;
    expect(download.suggestedFilename()).toBe('Hearth-Loaf.txt');
    const file = join(folder, 'recipe.txt');
    await download.saveAs(file);
    expect(readFileSync(file, 'utf8')).toContain(said.title);
  });

  it('prints the recipe without controls', async () => {
    const bench = await openFirstKept();
    await bench.emulateMedia({ media: 'print' });
    for (const part of ['.ingredients', '.method', '.print-figures', '.print-cautions'])
      expect(await bench.locator(part).isVisible(), part).toBe(true);
    // Lines and figures are buttons on the screen and plain words on paper.
    const controls = 'button:not(.figure-button, .line), input, select, textarea, summary, nav';
    for (const control of await bench.locator(controls).all())
      expect(await control.isVisible(), await control.innerHTML()).toBe(false);
    expect(await words(bench.locator('.credit'))).toContain('millrace-kitchen.example');
  });

  it.each([...ONE_RECIPE.map((page) => [page, 1] as const), ['forty.html', 2] as const])(
    'prints %s on %i sheet at most',
    async (path, most) => {
      const popup = await popupOn(path);
      await popup.close();
      const bench = await run.open('bench.html#recipe');
      await bench.locator('.recipe .verdict').waitFor();
      const cdp = await run.context.newCDPSession(bench);
      // A4 and Letter in inches.
      for (const [paperWidth, paperHeight] of [
        [8.27, 11.69],
        [8.5, 11],
      ] as const) {
        const paper = { preferCSSPageSize: true, paperWidth, paperHeight };
        const { data } = await cdp.send('Page.printToPDF', paper);
        expect(sheetsOf(Buffer.from(data, 'base64'))).toBeLessThanOrEqual(most);
      }
    },
  );
});

describe('other pages in Chromium', () => {
  it('says what to do where there is no recipe', async () => {
    const popup = await popupOn('none.html');
    expect(await words(popup.locator('.message'))).toMatch(/No recipe on this page.*Paste/is);
  });

  it('lets the user choose among several recipes, and go back to the choice', async () => {
    const popup = await popupOn('chicken-and-sauce.html');
    const choices = popup.locator('.choices button');
    expect(await choices.count()).toBeGreaterThan(1);
    const name = await words(choices.nth(1));
    await choices.nth(1).click();
    await popup.locator('.verdict').waitFor();
    expect(await words(popup.locator('.popup-head .dish'))).toBe(name);
    await popup.getByRole('button', { name: 'Other recipes here' }).click();
    await choices.first().waitFor();
  });

  it('reads no page without the click, and says so', async () => {
    const page = await run.context.newPage();
    // An address that no test before it has opened: a tab once granted stays granted, and is found by it.
    await page.goto(`${pages.origin}/griddle-pancakes.html?new`);
    await page.bringToFront();
    const tab = await run.activeTab();
    const popup = await run.open(`popup.html?tab=${tab}`);
    await popup.getByRole('alert').waitFor();
    expect(await words(popup.getByRole('alert'))).toContain('cannot be read');
    expect(await popup.locator('.verdict').count()).toBe(0);
    const granted = await run.click(page);
    expect(new URL(granted.url()).searchParams.get('tab')).toBe(String(tab));
    await granted.locator('.verdict').waitFor();
  });

  it('shows hostile and long text as text, without sideways scrolling', async () => {
    const popup = await popupOn('long.html');
    expect(await popup.locator('main img').count()).toBe(0);
    expect(await words(popup.locator('.popup-head .dish'))).toBe(LONG_NAME);
    const [wide, room] = await popup.evaluate(() => [
      document.documentElement.scrollWidth,
      innerWidth,
    ]);
    expect(wide).toBeLessThanOrEqual(room ?? 0);
  });

  it('puts an unknown line right, with the figure in sight, and any sure line too', async () => {
    const popup = await popupOn('long.html');
    await popup.close();
    const bench = await run.open('bench.html#recipe');
    await bench.locator('.recipe .verdict').waitFor();
    const unknown = await openLine(bench, 'zibbelwort');
    await unknown.getByLabel(/^Which food/).fill('bread flour');
    await unknown.locator('.found button').first().click();
    await unknown.getByRole('textbox', { name: /^Grams of/ }).fill('100');
    await unknown.getByRole('button', { name: 'Take my correction back' }).waitFor();
    await expect.poll(() => bench.locator('.missing').count(), { timeout: 15_000 }).toBe(0);
    const was = (await figuresOn(bench)).was;
    const sure = await openLine(bench, 'sugar');
    await sure.getByRole('textbox', { name: /^Grams of/ }).fill('300');
    await expect
      .poll(async () => (await figuresOn(bench)).was, { timeout: 15_000 })
      .toBeGreaterThan(was);
    expect(await bench.locator('.strip-figure').isVisible()).toBe(true);
  });

  it('reworks pasted text in the full page', async () => {
    const bench = await run.open('bench.html?paste');
    await bench
      .getByRole('textbox')
      .fill(
        'Plain loaf\n\n500 g bread flour\n350 g water\n10 g salt\n7 g dry yeast\n\nMix and bake.',
      );
    await bench.getByRole('button', { name: 'Rework this recipe' }).click();
    await bench.locator('.recipe .verdict').waitFor();
    expect(await bench.locator('.line').count()).toBeGreaterThanOrEqual(4);
    expect(new URL(bench.url()).hash).toBe('#recipe');
    await goTo(bench, 'kept');
    await expect.poll(() => bench.locator('h1').first().textContent()).toBe('Kept');
    await bench.goBack();
    await bench.locator('.recipe .verdict').waitFor();
  });
});

describe('the network in Chromium', () => {
  it('carried nothing but the demo pages over both runs', async () => {
    await run.close();
    const asked = [...requestsIn(netLog(1)), ...requestsIn(netLog(2))];
    // The log does see requests: the pages' own icon is one.
    expect(asked.some(({ url }) => url.startsWith(pages.origin))).toBe(true);
    const elsewhere = asked.filter(
      ({ url }) => !url.startsWith(pages.origin) && !url.startsWith('chrome-extension://'),
    );
    expect(elsewhere).toEqual([]);
    expect(
      asked.filter(
        ({ url, initiator }) => initiator.startsWith('chrome-extension:') && url.startsWith('http'),
      ),
    ).toEqual([]);
  });
});
