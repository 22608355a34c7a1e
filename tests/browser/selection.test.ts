/** Text selected on a page is reworked from the context menu or by a key. */
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildBoth } from './drive/build.ts';
import { type ChromiumRun, openChromium } from './drive/chromium.ts';
import { type FirefoxRun, openFirefox } from './drive/firefox.ts';
import { CHROMIUM_BUILD, FIREFOX_BUILD } from './drive/places.ts';
import { removeFolder } from './drive/remove-folder.ts';
import { type Served, serveDemo } from './drive/server.ts';

const LINES = ['300 g bread flour', '200 g water', '6 g salt'];
const NAMES = ['bread flour', 'water', 'salt'];
const STEPS = ['Mix everything and let it rest for an hour.', 'Bake at 220 °C for 40 minutes.'];
const entries = (texts: readonly string[]) => texts.map((text) => `<li>${text}</li>`).join('');
/** An invented dish told of in passing: the list bears no heading, and its title stands elsewhere. */
const PAGE = `<!doctype html><html lang="en"><title>Letters</title><h1>Pan loaf</h1>
<p id="before">She wrote on a Tuesday.</p>
<div id="recipe"><p>Serves 4</p><ul>${entries(LINES)}</ul><ol>${entries(STEPS)}</ol></div>
<p id="words">We walked along the river and talked about the weather.</p>`;

/** Selects an element's content, or nothing. */
const select = (id: string | null) =>
  id === null
    ? 'getSelection().removeAllRanges()'
    : `getSelection().selectAllChildren(document.getElementById('${id}'))`;

let folder: string;
let pages: Served;

beforeAll(async () => {
  buildBoth();
  folder = mkdtempSync(join(tmpdir(), 'crumbshift-selection-'));
  pages = await serveDemo({ '/letter.html': PAGE });
});

afterAll(async () => {
  await pages?.close();
  removeFolder(folder);
});

describe.each([
  ['Chromium', CHROMIUM_BUILD],
  ['Firefox', FIREFOX_BUILD],
])('the %s build', (_, build) => {
  it('holds a light script for it, and keys with their words', () => {
    expect(readFileSync(join(build, 'selection.js')).length).toBeLessThan(6_000);
    const { commands } = JSON.parse(readFileSync(join(build, 'manifest.json'), 'utf8'));
    expect(Object.keys(commands).sort()).toEqual(['_execute_action', 'rework-selection']);
    expect(new Set(Object.values(commands).map((one) => JSON.stringify(one))).size).toBe(2);
  });
});

describe('in Chromium', () => {
  let run: ChromiumRun;

  beforeAll(async () => {
    run = await openChromium({ profile: join(folder, 'chromium') });
  });

  afterAll(() => run?.close());

  /**
   * Without a screen neither the menu nor a key can be pressed. The toolbar button grants the tab in
   * their place, and the browser's own event is sent to the worker.
   */
  async function rework(id: string | null, event: 'menu' | 'key'): Promise<Page> {
    const page = await run.context.newPage();
    await page.goto(`${pages.origin}/letter.html`);
    const popup = await run.click(page);
    await popup.close();
    await page.bringToFront();
    await page.evaluate(select(id));
    const opened = run.context.waitForEvent('page');
    await run.inWorker(
      event === 'menu'
        ? `chrome.tabs.query({ active: true }).then(([tab]) =>
             chrome.contextMenus.onClicked.dispatch({ menuItemId: 'rework-selection' }, tab))`
        : `chrome.tabs.query({ active: true }).then(([tab]) =>
             chrome.commands.onCommand.dispatch('rework-selection', tab))`,
    );
    const bench = await opened;
    await bench.waitForLoadState();
    return bench;
  }

  it('knows both keys', async () => {
    const keys = await run.inWorker<{ name: string; shortcut: string }[]>(
      'chrome.commands.getAll()',
    );
    const given = Object.fromEntries(keys.map(({ name, shortcut }) => [name, shortcut]));
    expect(given).toEqual({ _execute_action: 'Alt+Shift+Y', 'rework-selection': 'Alt+Shift+U' });
  });

  it.each(['menu', 'key'] as const)('opens the selected recipe in full by %s', async (event) => {
    const bench = await rework('recipe', event);
    await bench.locator('.recipe .verdict').waitFor();
    for (const name of NAMES) await bench.locator('.line', { hasText: name }).first().waitFor();
    expect(await bench.title()).toContain('Pan loaf');
    // A changed step may differ; the first one stays.
    expect(await bench.locator('body').textContent()).toContain('Mix everything');
    await bench.close();
  });

  it('puts words that are no recipe in the paste box and says so', async () => {
    const bench = await rework('words', 'menu');
    await bench.getByText('The selection holds no recipe').waitFor();
    expect(await bench.locator('.paste textarea').inputValue()).toBe(
      'We walked along the river and talked about the weather.',
    );
    await bench.reload();
    await bench.locator('.paste textarea').waitFor();
    expect(await bench.locator('.paste textarea').inputValue()).toBe('');
    await bench.close();
  });

  it('says so when nothing is selected', async () => {
    const bench = await rework(null, 'key');
    await bench.getByText('Nothing was selected').waitFor();
    await bench.close();
  });
});

describe('in Firefox', () => {
  let run: FirefoxRun;

  beforeAll(async () => {
    run = await openFirefox({ profile: mkdtempSync(join(folder, 'firefox-')) });
  });

  afterAll(() => run?.close());

  it.each(['menu', 'key'] as const)(
    'a real %s grants the tab and opens the recipe',
    async (way) => {
      await run.newTab(`${pages.origin}/letter.html`);
      await run.evaluate(select('recipe'));
      await run.pressForSelection(way);
      await run.waitFor(`return document.querySelector('.recipe .verdict') !== null`);
      const words = String(await run.evaluate('return document.body.innerText'));
      for (const name of NAMES) expect(words).toContain(name);
      expect(words).toContain('Mix everything');
    },
  );
});
