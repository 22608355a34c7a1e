/** Walks that a user takes: first questions, what is never eaten or used, the ways, German, in Chromium. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { LANGUAGES } from '../../../extension/ui/words/say.ts';
import {
  benchWith,
  figuresOn,
  goTo,
  LOAF_TEXT,
  openLine,
  rowsOf,
  settled,
} from '../drive/bench.ts';
import { buildChromium } from '../drive/build.ts';
import { type ChromiumRun, openChromium } from '../drive/chromium.ts';
import { EXTRA_PAGES } from '../drive/extra-pages.ts';
import { removeFolder } from '../drive/remove-folder.ts';
import { type Served, serveDemo } from '../drive/server.ts';

let folder: string;
let pages: Served;
let run: ChromiumRun;

const prefer = (preferences: object) =>
  run.inWorker(
    `chrome.storage.local.clear().then(() => chrome.storage.local.set({ preferences: ${JSON.stringify({ welcomed: true, ...preferences })} }))`,
  );

const forgetAll = () =>
  run.inWorker('Promise.all([chrome.storage.local.clear(), chrome.storage.session.clear()])');

async function popupOn(path: string): Promise<Page> {
  const page = await run.context.newPage();
  await page.goto(`${pages.origin}/${path}`);
  const popup = await run.click(page);
  await popup.locator('.verdict').waitFor();
  await settled(popup);
  return popup;
}

beforeAll(async () => {
  buildChromium();
  folder = mkdtempSync(join(tmpdir(), 'crumbshift-walks-'));
  pages = await serveDemo(EXTRA_PAGES);
  run = await openChromium({ profile: join(folder, 'profile') });
});

afterAll(async () => {
  await run?.close();
  await pages?.close();
  removeFolder(folder);
});

describe('the first run', () => {
  it('asks three questions, each with a way past, and goes by the answers', async () => {
    const bench = await run.open('bench.html');
    const card = bench.locator('.first-run');
    await card.getByRole('button', { name: 'Germany, Austria, Switzerland' }).click();
    await card.getByRole('button', { name: 'Next' }).click();
    await card.getByRole('textbox', { name: /^Budget/ }).fill('20');
    await card.getByRole('button', { name: 'Next' }).click();
    await card.getByLabel('egg', { exact: true }).check();
    await card.getByRole('button', { name: 'Done' }).click();
    await expect.poll(() => card.count()).toBe(0);
    await bench.reload();
    await bench.locator('h1').first().waitFor();
    expect(await card.count()).toBe(0);
    const popup = await popupOn('lemon-cake.html');
    expect(await popup.getByRole('textbox', { name: /^Budget/ }).inputValue()).toBe('20');
    expect(await popup.locator('.nutrition').textContent()).toContain('EU rule');
    expect(await popup.getByRole('alert').first().textContent()).toContain('egg');
  });

  it('can be skipped whole, stand over no other place, and are asked for again in Settings', async () => {
    await forgetAll();
    const bench = await run.open('bench.html');
    const card = bench.locator('.first-run');
    await card.waitFor();
    for (const place of ['cupboard', 'buy', 'settings', 'paste']) {
      await bench.evaluate((name) => {
        location.hash = name;
      }, place);
      await bench.locator('.place h1, .message').first().waitFor();
      expect(await card.count(), place).toBe(0);
    }
    await goTo(bench, 'kept');
    await card.getByRole('button', { name: 'Skip the questions' }).click();
    await expect.poll(() => card.count()).toBe(0);
    await goTo(bench, 'settings');
    await bench.getByRole('button', { name: 'Ask me the first questions again' }).click();
    await card.getByRole('button', { name: 'Skip the questions' }).click();
    await expect.poll(() => card.count()).toBe(0);
  });

  it('are offered in the popup, where an answer reaches the figures at once', async () => {
    await forgetAll();
    const popup = await popupOn('lemon-cake.html');
    await popup.getByRole('button', { name: /^Three questions/ }).click();
    const card = popup.locator('.first-run');
    await card.getByRole('button', { name: 'Germany, Austria, Switzerland' }).click();
    await expect.poll(() => popup.locator('.nutrition').textContent()).toContain('EU rule');
    await card.getByRole('button', { name: 'Skip the questions' }).click();
    await popup.close();
    const later = await popupOn('lemon-cake.html');
    expect(await later.getByRole('button', { name: /^Three questions/ }).count()).toBe(0);
  });
});

describe('what the user never eats', () => {
  it('is told of in the result, above the verdict, with a way out', async () => {
    await prefer({ avoid: ['egg', 'milk'] });
    const popup = await popupOn('milk-rolls.html');
    const alert = popup.locator('.alert');
    expect(await alert.textContent()).toMatch(/Still contains (egg and milk|milk and egg)/);
    const [above, below] = await Promise.all([
      alert.boundingBox(),
      popup.locator('.verdict').boundingBox(),
    ]);
    expect((above?.y ?? 0) + (above?.height ?? 0)).toBeLessThanOrEqual(below?.y ?? 0);
    await popup.close();
    const bench = await run.open('bench.html#recipe');
    await bench.locator('.recipe .verdict').waitFor();
    await bench
      .locator('.alert')
      .getByRole('button', { name: /^Look at/ })
      .first()
      .click();
    await bench.locator('.line-panel').waitFor();
  });
});

describe('what the user never uses', () => {
  it('goes from this recipe and from later ones, until it is allowed again', async () => {
    await prefer({});
    const bench = await benchWith(run, LOAF_TEXT);
    const first = await rowsOf(bench);
    const came = await bench
      .locator('.lines [data-change=added] .line-name, .lines [data-change=replaced] .line-name')
      .first()
      .textContent();
    const food = came?.trim() ?? '';
    const panel = await openLine(bench, food);
    await panel.getByRole('button', { name: `Never use ${food}` }).click();
    await settled(bench);
    await expect.poll(async () => (await rowsOf(bench)).join()).not.toContain(food);
    await goTo(bench, 'cupboard');
    await bench.getByText(food, { exact: true }).first().waitFor();
    const later = await benchWith(run, LOAF_TEXT.replace('Plain', 'Another'));
    expect((await rowsOf(later)).join()).not.toContain(food);
    await goTo(later, 'cupboard');
    await later
      .getByRole('button', { name: /^Allow again/ })
      .first()
      .click();
    const again = await benchWith(run, LOAF_TEXT.replace('Plain', 'Third'));
    expect(await rowsOf(again)).toEqual(first);
  });
});

describe('an amount the user sets', () => {
  it('is taken to the gram, its figure follows, and it is given back', async () => {
    await prefer({});
    const bench = await benchWith(run, LOAF_TEXT);
    const first = await rowsOf(bench);
    const was = (await figuresOn(bench)).now;
    const line = await openLine(bench, /^\s*\d+ g\s+bread flour/);
    const take = line.getByRole('textbox', { name: /to take, grams$/ });
    const wished = Number(await take.inputValue()) + 37;
    await take.fill(String(wished));
    await settled(bench);
    await expect.poll(async () => (await rowsOf(bench))[0]).toContain(`${wished} g bread flour`);
    await expect.poll(async () => (await figuresOn(bench)).now).not.toBe(was);
    await line.getByRole('button', { name: 'Work it out again' }).click();
    await expect.poll(() => rowsOf(bench)).toEqual(first);
  });
});

describe('the ways', () => {
  it('are one switch: another way shows other figures at once', async () => {
    await prefer({});
    const popup = await popupOn('lemon-cake.html');
    const ways = popup.locator('.ways button');
    expect(await ways.count()).toBeGreaterThan(1);
    const chosen = popup.locator('.ways [aria-pressed=true]');
    const was = await figuresOn(popup);
    const other = popup.locator('.ways [aria-pressed=false]').first();
    const name = await other.textContent();
    await other.click();
    await expect.poll(() => chosen.textContent()).toBe(name);
    await settled(popup);
    expect((await figuresOn(popup)).now).not.toBe(was.now);
  });
});

describe('German', () => {
  /** Words that names and sources of the engine, which are English, hold as well. */
  const ENGINE_SAYS_TOO = ['sourcePractice', 'promiseGlutenFree'];
  const german = Object.values(LANGUAGES.de).map(({ message }) => message);
  /** English messages that a German screen must not show: whole sentences and words of their own. */
  const english = Object.entries(LANGUAGES.en)
    .filter(([key, { message }]) => {
      if (ENGINE_SAYS_TOO.includes(key)) return false;
      const quoted = german.some((other) => other.includes(message));
      return !/[$|]/.test(message) && message.length > 9 && !quoted;
    })
    .map(([, { message }]) => message);

  const seen = async (page: Page): Promise<string> =>
    ((await page.locator('body').textContent()) ?? '').replace(/\s+/g, ' ');

  beforeAll(() => prefer({ language: 'de', rule: { region: 'eu', polyols: 'half' } }));

  it('goes from end to end in the popup', async () => {
    const popup = await popupOn('lemon-cake.html');
    const text = await seen(popup);
    expect(text).toMatch(/Eins von \d+: etwa/);
    expect(text).toMatch(/\d,\d g/);
    expect(english.filter((message) => text.includes(message))).toEqual([]);
    expect(await popup.evaluate('document.documentElement.lang')).toMatch(/^de/);
  });

  it.each(['recipe', 'stove', 'buy', 'bakes', 'cupboard', 'kept', 'settings', 'paste'])(
    'goes from end to end in the place %s',
    async (place) => {
      const bench = await run.open(`bench.html#${place}`);
      await bench.locator('h1').first().waitFor();
      await bench.evaluate(() => {
        for (const part of document.querySelectorAll('details')) part.open = true;
      });
      await bench.waitForTimeout(300);
      const text = await seen(bench);
      expect(english.filter((message) => text.includes(message))).toEqual([]);
      await bench.close();
    },
  );
});
