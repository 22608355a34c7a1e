/** Every place for every reader: rules, sizes, keyboard, narrow screens, in Chromium. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PLACES } from '../../extension/entrypoints/bench/place-names.ts';
import { violations } from './drive/axe.ts';
import { benchWith, goTo, keepHere, LOAF_TEXT, openLine, settled } from './drive/bench.ts';
import { buildChromium } from './drive/build.ts';
import { type ChromiumRun, openChromium } from './drive/chromium.ts';
import { EXTRA_PAGES } from './drive/extra-pages.ts';
import { LOAF } from './drive/places.ts';
import { removeFolder } from './drive/remove-folder.ts';
import { type Served, serveDemo } from './drive/server.ts';
import { smallTargets, smallText } from './drive/sizes.ts';

let folder: string;
let pages: Served;
let run: ChromiumRun;

async function popupOn(path: string): Promise<Page> {
  const page = await run.context.newPage();
  await page.goto(`${pages.origin}/${path}`);
  const popup = await run.click(page);
  await popup.locator('.verdict').waitFor();
  return popup;
}

/** What must be there for a place to be looked at as one that is in use. */
const FURNISHED: Record<string, string> = {
  bakes: '.bakes > li + li, svg.meter',
  kept: '.kept-row',
};

/** A place with the loaf on the bench, everything in it open. */
async function placeWithAllOpen(place: string): Promise<Page> {
  const bench = await run.open(`bench.html#${place}`);
  await bench.locator('h1').first().waitFor();
  if (place === 'recipe') {
    await settled(bench);
    await openLine(bench, 'bread flour');
  }
  await bench.evaluate(() => {
    for (const part of document.querySelectorAll<HTMLDetailsElement>('main details'))
      part.open = true;
  });
  await bench
    .locator(FURNISHED[place] ?? 'h1')
    .first()
    .waitFor();
  await bench.waitForTimeout(300);
  return bench;
}

/** Opens a fold, when it is closed. */
async function open(fold: Locator): Promise<void> {
  if ((await fold.getAttribute('open')) === null) await fold.locator('> summary').click();
}

/** The loaf kept, told of twice with readings, a fault that asks for a change, and a food that is never used. */
async function furnish(bench: Page): Promise<void> {
  await keepHere(bench);
  await goTo(bench, 'bakes');
  const log = bench.locator('.bake-log');
  for (const weight of ['780', '760']) {
    await open(log.locator('details').first());
    await log.getByRole('button', { name: 'good', exact: true }).click();
    await log.getByLabel('Whole dish after baking').fill(weight);
    await open(log.locator('details', { hasText: 'Crumb and looks' }).last());
    await log.getByLabel('Gummy crumb').check();
    await open(log.locator('details', { hasText: 'What the meter showed' }).last());
    await log.getByLabel('before').fill('104');
    await log.getByLabel('1 hour').fill('131');
    await log.getByLabel('Piece you ate').fill('65');
    await log.getByRole('button', { name: 'Keep this bake' }).click();
    await log.getByText('is kept').waitFor();
  }
  await goTo(bench, 'kept');
  await bench.locator('.row-menu').waitFor();
}

beforeAll(async () => {
  buildChromium();
  folder = mkdtempSync(join(tmpdir(), 'crumbshift-access-'));
  pages = await serveDemo(EXTRA_PAGES);
  run = await openChromium({ profile: join(folder, 'profile') });
  await run.inWorker(`chrome.storage.local.set({ preferences: { welcomed: true } })`);
  const bench = await benchWith(run, LOAF_TEXT);
  await furnish(bench);
  await bench.close();
});

afterAll(async () => {
  await run?.close();
  await pages?.close();
  removeFolder(folder);
});

describe.each(PLACES)('the place %s with everything open', (place) => {
  let bench: Page;

  beforeAll(async () => {
    bench = await placeWithAllOpen(place);
  });

  afterAll(() => bench?.close());

  it.each([
    ['light', 'none', 'no-preference'],
    ['dark', 'none', 'no-preference'],
    ['light', 'active', 'no-preference'],
    ['light', 'none', 'more'],
    ['dark', 'none', 'more'],
  ] as const)(
    'passes WCAG AA rules, %s, forced colours %s, contrast %s',
    async (colorScheme, forcedColors, contrast) => {
      await bench.emulateMedia({ colorScheme, forcedColors, contrast });
      expect(await violations(bench)).toEqual([]);
    },
  );

  it('has no text under 14 px and no target under 44 px at 390 px', async () => {
    await bench.emulateMedia({
      colorScheme: 'light',
      forcedColors: 'none',
      contrast: 'no-preference',
    });
    await bench.setViewportSize({ width: 390, height: 844 });
    expect(await bench.evaluate(smallText)).toEqual([]);
    expect(await bench.evaluate(smallTargets)).toEqual([]);
  });

  it.each([
    ['320 px', 320],
    ['twice the size on a screen of 1280 px', 640],
  ])('needs no sideways scrolling at %s', async (_, width) => {
    await bench.setViewportSize({ width, height: 700 });
    expect(await bench.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      width,
    );
  });

  it('ends with the ways to how figures are made and to what is kept where', async () => {
    const links = bench.locator('main > .foot a');
    expect(await links.evaluateAll((all) => all.map((one) => one.getAttribute('href')))).toEqual([
      '/bench.html#figures-made',
      '/bench.html#privacy',
    ]);
  });

  it('moves nothing for those who ask for it', async () => {
    await bench.emulateMedia({ reducedMotion: 'reduce' });
    const moving = await bench.evaluate(() =>
      [...document.querySelectorAll('*')]
        .filter((part) => {
          const { animationName, transitionDuration } = getComputedStyle(part);
          return animationName !== 'none' || !/^(0s(, )?)+$/.test(transitionDuration);
        })
        .map((part) => part.className),
    );
    expect(moving).toEqual([]);
  });
});

describe('the full page by keyboard', () => {
  it('comes to the place itself with two presses, and to anything with forty', async () => {
    const bench = await run.open('bench.html#recipe');
    await settled(bench);
    await bench.keyboard.press('Tab');
    expect(await bench.evaluate('document.activeElement.className')).toBe('skip');
    await bench.keyboard.press('Enter');
    expect(await bench.evaluate('document.activeElement.tagName')).toBe('MAIN');
    // How many presses each stop is away: counted on from the start of the place, or from the part that
    // one of its jumps leads to.
    const furthest = await bench.evaluate(() => {
      const all = 'main a[href], main button:enabled, main input, main select, main summary';
      const seen = [...document.querySelectorAll<HTMLElement>(all)].filter((one) =>
        one.checkVisibility(),
      );
      const starts = ['ingredients-title', 'method-title', 'folds'].map((id, at) => ({
        part: document.getElementById(id),
        presses: 2 + at + 1,
      }));
      let away = 2;
      let most = 0;
      for (const stop of seen) {
        const here = starts.filter(
          ({ part }) =>
            part && part.compareDocumentPosition(stop) & Node.DOCUMENT_POSITION_FOLLOWING,
        );
        const first = here.at(-1);
        const before = first
          ? seen.filter(
              (one) =>
                first.part &&
                first.part.compareDocumentPosition(one) & Node.DOCUMENT_POSITION_FOLLOWING,
            )
          : [];
        away = first ? first.presses + before.indexOf(stop) + 1 : away + 1;
        most = Math.max(most, away);
      }
      return most;
    });
    expect(furthest).toBeGreaterThan(10);
    expect(furthest).toBeLessThanOrEqual(40);
    await bench.keyboard.press('Tab');
    await bench.keyboard.press('Tab');
    await bench.keyboard.press('Enter');
    expect(await bench.evaluate('document.activeElement.id')).toBe('method-title');
  });

  /** Presses a key until what has the focus fits; resolves to how often. */
  async function pressUntil(bench: Page, key: string, selector: string): Promise<number> {
    for (let presses = 1; presses <= 60; presses += 1) {
      await bench.keyboard.press(key);
      const there = await bench.evaluate(
        (wanted) => document.activeElement?.matches(wanted) ?? false,
        selector,
      );
      if (there) return presses;
    }
    return Number.POSITIVE_INFINITY;
  }

  const focusAt = (bench: Page, rows: string) =>
    bench.evaluate(
      (wanted) => [...document.querySelectorAll(wanted)].indexOf(document.activeElement as Element),
      rows,
    );

  it.each(PLACES)(
    'reaches all of the place %s in its order, the focus always in sight',
    async (place) => {
      const bench = await run.open(`bench.html#${place}`);
      await bench.locator('h1').first().waitFor();
      if (place === 'recipe') await settled(bench);
      await bench
        .locator(FURNISHED[place] ?? 'h1')
        .first()
        .waitFor();
      await bench.setViewportSize({ width: 1100, height: 800 });
      await bench.waitForTimeout(300);
      const controls = await bench.evaluate(() => {
        const all = 'a[href], button:enabled, input, select, textarea, summary';
        const stops = [...document.querySelectorAll<HTMLElement>(all)].filter(
          (one) => one.checkVisibility() && !one.matches('input[type=radio]:not(:checked)'),
        );
        for (const [at, stop] of stops.entries()) stop.dataset.stop = String(at);
        stops[0]?.focus();
        return stops.length;
      });
      // From here on by keys, so that the browser draws its rings.
      await bench.keyboard.press('Tab');
      await bench.keyboard.press('Shift+Tab');
      const seen: number[] = [];
      for (let presses = 0; presses < controls + 60; presses += 1) {
        const stop = await bench.evaluate(() => {
          const at = document.activeElement;
          if (!(at instanceof HTMLElement) || at === document.body) return null;
          // A field for files is drawn as its label, and a typed figure has its ring round the field, which is its label.
          const label = at instanceof HTMLInputElement ? (at.labels?.[0] ?? null) : null;
          const seenAs = at.matches('.hidden') && label ? label : at;
          const box = seenAs.getBoundingClientRect();
          const x = Math.min(Math.max(box.x + box.width / 2, 0), innerWidth - 1);
          const y = Math.min(Math.max(box.y + box.height / 2, 0), innerHeight - 1);
          const top = document.elementFromPoint(x, y);
          return {
            at: Number(at.dataset.stop),
            words: `${at.tagName} ${at.textContent}`,
            clear: seenAs.contains(top) || label?.contains(top) === true,
            ring: [seenAs, label].some(
              (one) => one && getComputedStyle(one).outlineStyle !== 'none',
            ),
          };
        });
        if (!stop) break;
        expect(stop, stop.words).toMatchObject({ clear: true, ring: true });
        seen.push(stop.at);
        await bench.keyboard.press('Tab');
      }
      const order = seen.filter((at, index) => at !== seen[index - 1]);
      expect(order).toEqual(Array.from({ length: controls }, (_, at) => at));
    },
  );

  it('comes to any of forty lines and to all behind them with forty keys, pressed one by one', async () => {
    await (await popupOn('forty.html')).close();
    const bench = await run.open('bench.html#recipe');
    await settled(bench);
    const lines = await bench.locator('button.line').count();
    expect(lines).toBeGreaterThanOrEqual(40);
    // Past the rail, to the list by the first of the jumps, to its first line.
    let keys = await pressUntil(bench, 'Tab', '.skip');
    await bench.keyboard.press('Enter');
    keys += 1 + (await pressUntil(bench, 'Tab', '.jumps .skip'));
    await bench.keyboard.press('Enter');
    keys += 1 + (await pressUntil(bench, 'Tab', 'button.line'));
    expect(keys).toBeLessThanOrEqual(10);
    expect(await focusAt(bench, 'button.line')).toBe(0);
    await bench.keyboard.press('End');
    expect(await focusAt(bench, 'button.line')).toBe(lines - 1);
    for (let up = 1; up <= 20; up += 1) await bench.keyboard.press('ArrowUp');
    expect(await focusAt(bench, 'button.line')).toBe(lines - 21);
    await bench.keyboard.press('Home');
    for (let down = 1; down <= 3; down += 1) await bench.keyboard.press('ArrowDown');
    expect(await focusAt(bench, 'button.line')).toBe(3);
    // From the last line to the last fold.
    await bench.keyboard.press('End');
    keys += 1 + (await pressUntil(bench, 'Tab', 'main .foot a'));
    expect(keys).toBeLessThanOrEqual(40);
    await bench.close();
  });

  it('comes to any of forty kept dishes with forty keys', async () => {
    const bench = await run.open('bench.html#kept');
    await bench.locator('.kept-link').first().waitFor();
    const file = await bench.evaluate(async () => {
      const opening = indexedDB.open('crumbshift');
      const db = await new Promise<IDBDatabase>((done) => {
        opening.onsuccess = () => done(opening.result);
      });
      const asked = db.transaction('recipes').objectStore('recipes').getAll();
      const [row] = await new Promise<object[]>((done) => {
        asked.onsuccess = () => done(asked.result);
      });
      db.close();
      const recipes = Array.from({ length: 45 }, (_, n) => ({ ...row, id: `copy-${n}` }));
      return JSON.stringify({ format: 'crumbshift-backup', version: 2, exportedAt: '', recipes });
    });
    await bench
      .locator('input[type=file]')
      .first()
      .setInputFiles({
        name: 'many.json',
        mimeType: 'application/json',
        buffer: Buffer.from(file),
      });
    await bench.getByRole('button', { name: /^Bring these in/ }).click();
    await expect.poll(() => bench.locator('.kept-link').count()).toBe(40);
    await bench.reload();
    await bench.locator('.kept-link').nth(39).waitFor();
    let keys = await pressUntil(bench, 'Tab', '.skip');
    await bench.keyboard.press('Enter');
    keys += 1 + (await pressUntil(bench, 'Tab', '.kept-link'));
    for (let down = 1; down <= 20; down += 1) await bench.keyboard.press('ArrowDown');
    keys += 20;
    expect(await focusAt(bench, '.kept-link')).toBe(20);
    expect(keys).toBeLessThanOrEqual(40);
    await bench.keyboard.press('End');
    expect(await focusAt(bench, '.kept-link')).toBe(39);
    await bench.close();
  });
});

describe('the popup', () => {
  it.each(['light', 'dark'] as const)('passes WCAG AA rules, %s', async (colorScheme) => {
    const popup = await popupOn('long.html');
    await popup.emulateMedia({ colorScheme });
    await popup.evaluate(() => {
      for (const part of document.querySelectorAll('details')) part.open = true;
    });
    await popup.waitForTimeout(200);
    expect(await violations(popup)).toEqual([]);
  });

  it.each([
    'milk-rolls.html',
    'lemon-cake.html',
    'griddle-pancakes.html',
    'weeknight-pasta.html',
    'long.html',
  ])('has the verdict, what to do and what to mind in its first 500 px: %s', async (page) => {
    const popup = await popupOn(page);
    await popup.setViewportSize({ width: 480, height: 600 });
    const ends = await popup.evaluate(() =>
      ['.verdict', '.goal-steppers', '.what-you-do', '.missing', '.concerns'].map((part) =>
        Math.round(document.querySelector(part)?.getBoundingClientRect().bottom ?? 0),
      ),
    );
    expect(Math.max(...ends)).toBeGreaterThan(300);
    expect(Math.max(...ends)).toBeLessThanOrEqual(500);
    await popup.close();
  });

  it('has no text under 14 px and no target under 44 px', async () => {
    const popup = await popupOn(LOAF);
    await popup.setViewportSize({ width: 390, height: 700 });
    expect(await popup.evaluate(smallText)).toEqual([]);
    expect(await popup.evaluate(smallTargets)).toEqual([]);
    expect(await popup.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      390,
    );
  });

  it('is reached by keyboard, the focus always in sight', async () => {
    const popup = await popupOn(LOAF);
    await popup.setViewportSize({ width: 480, height: 600 });
    const controls = await popup.evaluate(
      () =>
        [...document.querySelectorAll('button:enabled, input, select, summary')].filter((one) =>
          one.checkVisibility(),
        ).length,
    );
    const reached = new Set<string>();
    for (let presses = 0; presses < controls + 2; presses += 1) {
      await popup.keyboard.press('Tab');
      const seen = await popup.evaluate(() => {
        const at = document.activeElement;
        if (!at || at === document.body) return null;
        const box = at.getBoundingClientRect();
        const top = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2);
        return {
          name: `${at.tagName}.${at.id}.${at.textContent}${at.getAttribute('aria-label') ?? ''}`,
          clear: at.contains(top) || at.closest('label')?.contains(top) === true,
        };
      });
      if (!seen) continue;
      expect(seen, seen.name).toMatchObject({ clear: true });
      reached.add(seen.name);
    }
    expect(reached.size).toBeGreaterThanOrEqual(controls - 2);
  });
});
