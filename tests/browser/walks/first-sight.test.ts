/** What is seen before anything is pressed, in English and German: the popup's first 500 px, the strip in one row. */
import { mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { settled } from '../drive/bench.ts';
import { type Driven, openDriven } from '../drive/both.ts';
import { buildBoth } from '../drive/build.ts';
import { type ChromiumRun, openChromium } from '../drive/chromium.ts';
import { DEMO_PAGES } from '../drive/places.ts';
import { removeFolder } from '../drive/remove-folder.ts';
import { type Served, serveDemo } from '../drive/server.ts';

/** Demo pages with one recipe. */
const PAGES = readdirSync(DEMO_PAGES).filter(
  (name) => name.endsWith('.html') && name !== 'chicken-and-sauce.html',
);
const AT_ONCE = ['.verdict', '.goal-steppers', '.what-you-do', '.missing', '.concerns'];
const MOST_PX = 500;

let folder: string;
let pages: Served;
let run: ChromiumRun;

async function popupOn(path: string): Promise<Page> {
  const page = await run.context.newPage();
  await page.goto(`${pages.origin}/${path}`);
  const popup = await run.click(page);
  await popup.locator('.verdict').waitFor();
  await settled(popup);
  await page.close();
  return popup;
}

beforeAll(async () => {
  buildBoth();
  folder = mkdtempSync(join(tmpdir(), 'crumbshift-sight-'));
  pages = await serveDemo();
  run = await openChromium({ profile: join(folder, 'profile') });
});

afterAll(async () => {
  await run?.close();
  await pages?.close();
  removeFolder(folder);
});

const LANGUAGES = [
  ['English', 'en', 'us'],
  ['German', 'de', 'eu'],
] as const;

/** A body that forgets all but how the user wants it. */
const preferring = (language: string, region: string, more = {}): string => {
  const preferences = { welcomed: true, language, rule: { region, polyols: 'half' }, ...more };
  return `chrome.storage.local.clear().then(() => chrome.storage.local.set({ preferences: ${JSON.stringify(preferences)} }))`;
};

/** Where each part ends that must be seen at once, px. */
const ENDS = `${JSON.stringify(AT_ONCE)}.map((one) => document.querySelector(one)?.getBoundingClientRect().bottom ?? 0)`;

describe.each(LANGUAGES)('in %s', (_, language, region) => {
  const prefer = (more = {}) => run.inWorker(preferring(language, region, more));

  it('the popup has the verdict, what to do and what to mind in its first 500 px', async () => {
    await prefer();
    const over: string[] = [];
    for (const path of PAGES) {
      const popup = await popupOn(path);
      await popup.setViewportSize({ width: 480, height: 600 });
      const ends: number[] = await popup.evaluate(ENDS);
      expect(Math.max(...ends), path).toBeGreaterThan(300);
      if (Math.max(...ends) > MOST_PX) over.push(`${path}: ${ends.map(Math.round).join(' ')}`);
      await popup.close();
    }
    expect(over).toEqual([]);
  });

  it.each([1024, 1280])('the strip is one row of %i px with three ways', async (width) => {
    await prefer({ budgetG: 25 });
    await (await popupOn('griddle-pancakes.html')).close();
    const bench = await run.open('bench.html#recipe');
    await settled(bench);
    await bench.setViewportSize({ width, height: 760 });
    expect(await bench.locator('.strip .strip-choices .ways button').count()).toBe(3);
    const { middles, right, room } = await bench.evaluate(() => {
      const seen = [...document.querySelectorAll('.strip > *, .strip-choices > *')].filter(
        (one) => one.checkVisibility() && one.getBoundingClientRect().height > 0,
      );
      const boxes = seen.map((one) => one.getBoundingClientRect());
      return {
        middles: boxes.map(({ top, height }) => top + height / 2),
        right: Math.max(...boxes.map((box) => box.right)),
        room: document.documentElement.clientWidth,
      };
    });
    expect(middles.length).toBeGreaterThan(4);
    expect(Math.max(...middles) - Math.min(...middles)).toBeLessThan(12);
    expect(right).toBeLessThanOrEqual(room);
    // One row of it, not of its parts alone: a verdict of four lines would be as high as two rows.
    expect((await bench.locator('.strip').boundingBox())?.height ?? 0).toBeLessThan(96);
    await bench.close();
  });
});

describe('in Firefox', () => {
  let driven: Driven;

  beforeAll(async () => {
    driven = await openDriven('firefox', { profile: mkdtempSync(join(folder, 'firefox-')) });
  });

  afterAll(() => driven?.close());

  it.each(LANGUAGES)(
    'the popup has the same in its first 500 px, in %s',
    async (_, language, region) => {
      await driven.open('options.html');
      await driven.evaluate(`await ${preferring(language, region)}; return true;`);
      await driven.closeTab();
      const over: string[] = [];
      for (const path of PAGES) {
        await driven.visit(`${pages.origin}/${path}`);
        const back = driven.here();
        await driven.click();
        await driven.waitFor(
          `return document.querySelector('[aria-busy=false] .verdict') !== null;`,
        );
        await driven.resize(480, 600);
        const size = `return getComputedStyle(document.querySelector('.verdict')).fontSize;`;
        expect(Number.parseFloat(String(await driven.evaluate(size)))).toBeGreaterThanOrEqual(16);
        const ends: number[] = JSON.parse(
          String(await driven.evaluate(`return JSON.stringify(${ENDS});`)),
        );
        expect(Math.max(...ends), path).toBeGreaterThan(300);
        if (Math.max(...ends) > MOST_PX) over.push(`${path}: ${ends.map(Math.round).join(' ')}`);
        await driven.closeTab();
        back();
        await driven.closeTab();
      }
      expect(over).toEqual([]);
    },
  );
});
