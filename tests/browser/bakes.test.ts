/** The bake log in the full view: a bake told, kept over a restart, and what is learned from it. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { violations } from './drive/axe.ts';
import { buildBoth } from './drive/build.ts';
import { type ChromiumRun, openChromium } from './drive/chromium.ts';
import { benchWith, LOAF_TEXT, rowsOf, saveHere } from './drive/loaf-text.ts';

let folder: string;
let run: ChromiumRun;
let bench: Page;
/** Reworked lines as they were baked. */
let baked: string[];

const log = () => bench.locator('#bakes');
const figure = async (text: string | null): Promise<number> =>
  Number.parseFloat(text?.replace(/[^\d.]*/, '') ?? '');

async function openSaved(): Promise<void> {
  bench = await run.open('bench.html?paste');
  await bench.locator('#saved .saved > li > a').first().click();
  await bench.locator('.bakes > li').first().waitFor();
}

beforeAll(async () => {
  buildBoth();
  folder = mkdtempSync(join(tmpdir(), 'crumbshift-bakes-'));
  run = await openChromium({ profile: join(folder, 'profile') });
  bench = await benchWith(run, LOAF_TEXT);
  baked = await rowsOf(bench);
});

afterAll(async () => {
  await run?.close();
  if (folder) rmSync(folder, { recursive: true, force: true });
});

describe('the bake log', () => {
  it('asks for the recipe to be saved first', async () => {
    expect(await log().textContent()).toContain('Save the recipe');
    expect(await log().getByText('I baked this').count()).toBe(0);
    await saveHere(bench);
    await log().getByText('I baked this').waitFor();
  });

  it('takes a bake by keyboard alone', async () => {
    await log().locator('summary').focus();
    await bench.keyboard.press('Enter');
    const fields = ['Whole dish after baking', 'Servings cut', 'One of them weighed'];
    const typed = ['780', '10', '76'];
    await log().getByLabel('Day').focus();
    for (const [at, label] of fields.entries()) {
      const field = log().getByLabel(label);
      for (let presses = 0; presses < 8; presses += 1) {
        if (await field.evaluate((input) => input === document.activeElement)) break;
        await bench.keyboard.press('Tab');
      }
      await bench.keyboard.type(typed[at] ?? '');
      expect(await field.inputValue()).toBe(typed[at]);
    }
    await log().getByLabel('Gummy crumb').focus();
    await bench.keyboard.press('Space');
    await log().getByLabel('Your own words').focus();
    await bench.keyboard.type('Sticky near the base.');
    await bench.keyboard.press('Tab');
    await bench.keyboard.press('Enter');
    await log().getByText('is kept').waitFor();
    const entry = (await log().locator('.bakes > li').textContent()) ?? '';
    expect(entry).toContain('780 g after baking');
    expect(entry).toContain('A slice of 76 g');
    expect(entry).toContain('Gummy crumb');
    expect(entry).toContain('Sticky near the base.');
  });

  it('makes the weighed dish count for a slice', async () => {
    const weigh = bench.locator('.weigh');
    expect(await weigh.getByLabel('Whole dish').inputValue()).toBe('780');
    await weigh.getByLabel('Your slice').fill('65');
    const serving = await figure(await bench.locator('.big-figure').nth(1).textContent());
    const slice = await figure(await weigh.locator('.slice-figure').textContent());
    // Twelve servings weigh 780 g, so one of 65 g has the net carbs of a serving.
    expect(Math.abs(slice - serving)).toBeLessThanOrEqual(0.11);
    await weigh.getByLabel('Your slice').fill('130');
    expect(
      Math.abs((await figure(await weigh.locator('.slice-figure').textContent())) - 2 * serving),
    ).toBeLessThanOrEqual(0.16);
  });

  it('proposes changes with their reasons, and an accepted one reworks the recipe at once', async () => {
    const proposals = log().locator('.proposals > .swaps > li');
    await proposals.first().waitFor();
    for (const text of await proposals.allTextContents()) expect(text).toContain('Source:');
    const water = proposals.filter({ hasText: /Less water/ });
    await water.getByRole('button', { name: 'Take it up' }).click();
    await expect.poll(() => rowsOf(bench)).not.toEqual(baked);
    await log().getByText('Changed after your bakes').waitFor();
    await saveHere(bench);
    await expect.poll(() => bench.getByRole('button', { name: 'Take up again' }).count()).toBe(1);
  });

  it('is still there after the browser was started again, and a change can be withdrawn', async () => {
    const changed = await rowsOf(bench);
    await run.close();
    run = await openChromium({ profile: join(folder, 'profile') });
    await openSaved();
    expect(await log().locator('.bakes > li').textContent()).toContain('Sticky near the base.');
    expect(await rowsOf(bench)).toEqual(changed);
    await log().getByRole('button', { name: 'Withdraw' }).click();
    await expect.poll(() => rowsOf(bench)).toEqual(baked);
  });

  it('names a version and says that it worked', async () => {
    const versions = bench.locator('section', { hasText: 'The version saved last' });
    await versions.getByLabel('Name of the version saved last').fill('Less water');
    await versions.getByLabel('this one worked: the version saved last').check();
    await bench.locator('#saved', { hasText: '“Less water”, this one worked' }).waitFor();
    await versions.getByRole('button', { name: 'Compare' }).first().click();
    const rows = await versions.locator('.compared tr').allTextContents();
    expect(rows.some((text) => text.includes('Net carbs a serving'))).toBe(true);
  });

  it('gives a removed bake back', async () => {
    await log().getByRole('button', { name: 'Remove' }).click();
    await log().getByText('is removed').waitFor();
    expect(await log().locator('.bakes > li').count()).toBe(0);
    expect(await bench.evaluate('document.activeElement.textContent')).toBe('Undo');
    await bench.keyboard.press('Enter');
    await log().locator('.bakes > li').waitFor();
  });
});

describe('the full view with everything open', () => {
  beforeAll(async () => {
    await bench.evaluate(() => {
      for (const part of document.querySelectorAll('details')) part.open = true;
    });
    await bench.locator('.nutrients .figure-button').first().click();
  });

  it.each([
    ['light', 'none'],
    ['dark', 'none'],
    ['light', 'active'],
  ] as const)('passes WCAG AA rules, %s, forced colours %s', async (colorScheme, forcedColors) => {
    await bench.emulateMedia({ colorScheme, forcedColors });
    expect(await violations(bench)).toEqual([]);
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

  it('is reached by keyboard in the order of the page, the focus always in sight', async () => {
    await bench.setViewportSize({ width: 1100, height: 800 });
    // Of radio buttons only the chosen one is a stop.
    const controls = await bench.evaluate(() => {
      const all = 'a[href], button:enabled, input, select, textarea, summary';
      const stops = [...document.querySelectorAll<HTMLElement>(all)].filter(
        (one) => one.offsetParent !== null && !one.matches('input[type=radio]:not(:checked)'),
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
        const box = at.getBoundingClientRect();
        const x = Math.min(Math.max(box.x + box.width / 2, 0), innerWidth - 1);
        const y = Math.min(Math.max(box.y + box.height / 2, 0), innerHeight - 1);
        const top = document.elementFromPoint(x, y);
        return {
          at: Number(at.dataset.stop),
          words: `${at.tagName} ${at.textContent}`,
          clear: at.contains(top) || at.closest('label')?.contains(top) === true,
          ring: getComputedStyle(at).outlineStyle !== 'none',
        };
      });
      if (!stop) break;
      expect(stop, stop.words).toMatchObject({ clear: true, ring: true });
      seen.push(stop.at);
      await bench.keyboard.press('Tab');
    }
    const order = seen.filter((at, index) => at !== seen[index - 1]);
    expect(order).toEqual(Array.from({ length: controls }, (_, at) => at));
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
