/** What figures rest on, what lines may be instead, limits, amounts: on the screen, in Chromium. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { violations } from './drive/axe.ts';
import {
  benchWith,
  figuresOn,
  fold,
  goTo,
  LOAF_TEXT,
  openLine,
  rowsOf,
  settled,
} from './drive/bench.ts';
import { buildChromium } from './drive/build.ts';
import { type ChromiumRun, openChromium } from './drive/chromium.ts';
import { LOAF } from './drive/places.ts';
import { removeFolder } from './drive/remove-folder.ts';
import { type Served, serveDemo } from './drive/server.ts';
import { adaptByCommandLine, type CommandLineResult } from './drive/shown/expected.ts';

const UNSURE_PAGE = `<!doctype html><title>Cake</title><script type="application/ld+json">${JSON.stringify(
  {
    '@context': 'https://schema.org',
    '@type': 'Recipe',
    name: 'Cupboard cake',
    recipeYield: '10 servings',
    recipeIngredient: ['300 g household flour', '200 g sugar', '3 eggs', '100 g butter'],
    recipeInstructions: 'Mix everything and bake.',
    nutrition: {
      '@type': 'NutritionInformation',
      calories: '310 kcal',
      carbohydrateContent: '44 g',
    },
  },
)}</script>`;

let folder: string;
let pages: Served;
let run: ChromiumRun;
let said: CommandLineResult;

const number = (text: string | null): number =>
  Number.parseFloat((text ?? '').replace(/^[^\d]*/, ''));

async function popupOn(path: string): Promise<Page> {
  const page = await run.context.newPage();
  await page.goto(`${pages.origin}/${path}`);
  const popup = await run.click(page);
  await popup.locator('.verdict').waitFor();
  await settled(popup);
  return popup;
}

async function benchOn(path: string): Promise<Page> {
  const popup = await popupOn(path);
  await popup.close();
  const bench = await run.open('bench.html#recipe');
  await bench.locator('.recipe .verdict').waitFor();
  await settled(bench);
  return bench;
}

beforeAll(async () => {
  buildChromium();
  said = adaptByCommandLine(LOAF);
  folder = mkdtempSync(join(tmpdir(), 'crumbshift-sources-'));
  pages = await serveDemo({ '/unsure.html': UNSURE_PAGE });
  run = await openChromium({ profile: join(folder, 'profile') });
});

afterAll(async () => {
  await run?.close();
  await pages?.close();
  removeFolder(folder);
});

describe('a figure in the popup', () => {
  it('opens what it rests on by keyboard, and Escape closes it', async () => {
    const popup = await popupOn(LOAF);
    const button = popup.locator('.verdict .figure-button').last();
    await button.focus();
    await popup.keyboard.press('Enter');
    const panel = popup.locator('.verdict .sources');
    const text = (await panel.textContent()) ?? '';
    expect(text).toContain('USDA SR Legacy 168896');
    expect(text).toContain('72.53 g carbohydrate, 2.4 g fibre');
    const parts = await panel.locator('.trace-head .figure').allTextContents();
    const sum = parts.reduce((total, part) => total + number(part), 0);
    const shown = said.before.netCarbsG ?? 0;
    expect(Math.abs(sum - shown)).toBeLessThanOrEqual(0.051 * (parts.length + 1));
    expect(await violations(popup)).toEqual([]);
    await popup.keyboard.press('Escape');
    expect(await panel.count()).toBe(0);
    expect(await button.evaluate((one) => one === document.activeElement)).toBe(true);
    await popup.keyboard.press('Enter');
    await panel.getByRole('button', { name: 'Close' }).click();
    expect(await panel.count()).toBe(0);
    expect(await button.evaluate((one) => one === document.activeElement)).toBe(true);
  });

  it('opens wherever it stands: each one of what a serving gives and of what brings the carbs', async () => {
    const popup = await popupOn(LOAF);
    await fold(popup, 'sources');
    for (const place of ['.nutrition', '.carb-sources']) {
      const buttons: Locator[] = await popup.locator(`${place} .figure-button`).all();
      expect(buttons.length).toBeGreaterThan(3);
      for (const button of buttons) {
        await button.click();
        await popup.locator(`${place} .sources`).waitFor();
      }
    }
  });
});

describe('an uncertain line', () => {
  it('shows what else it may be with the difference, and one press chooses', async () => {
    const bench = await benchOn('unsure.html');
    const line = await openLine(bench, 'household flour');
    await line.getByRole('button', { name: 'Another food' }).click();
    const tie = line.locator('.ties button', { hasText: 'bread flour' });
    const difference = /([+−])(\d+\.\d) g/.exec((await tie.textContent()) ?? '');
    if (!difference) throw new Error('no difference shown');
    const nutrition = (await fold(bench, 'gives')).locator('.nutrition .strong .before');
    const before = nutrition.locator('.figure-button');
    const figure = async () => number(await before.textContent());
    const was = await figure();
    await tie.click();
    const change = Number(difference[2]) * (difference[1] === '+' ? 1 : -1);
    await expect
      .poll(async () => Math.abs((await figure()) - was - change))
      .toBeLessThanOrEqual(0.11);
  });

  it('can have its name remembered, for other recipes too, and forgotten', async () => {
    const first = await benchOn('unsure.html');
    const line = await openLine(first, 'household flour');
    await line.getByRole('button', { name: /^Remember/ }).click();
    await line.getByText('Next time “household flour” means bread flour.').waitFor();
    const bench = await benchWith(run, LOAF_TEXT.replace('bread flour', 'household flour'));
    const read = async () => (await openLine(bench, 'household flour')).textContent();
    expect(await read()).toContain('Read as bread flour');
    await goTo(bench, 'cupboard');
    const names = bench.locator('#names');
    expect(await names.textContent()).toContain('“household flour” means bread flour');
    await names.getByRole('button', { name: 'Forget' }).click();
    await expect.poll(() => names.textContent()).toContain('None remembered');
    await goTo(bench, 'recipe');
    await settled(bench);
    await expect.poll(read).toContain('Read as all-purpose flour');
  });
});

describe('the recipe place', () => {
  let bench: Page;

  beforeAll(async () => {
    bench = await benchWith(run, LOAF_TEXT);
    await fold(bench, 'wishes');
    await fold(bench, 'gives');
  });

  it('works a limit in at once and takes it out again', async () => {
    const free = await figuresOn(bench);
    const range = bench.locator('.nutrition .strong .range');
    const upper = async () =>
      Number(/–(\d+(\.\d+)?)$/.exec((await range.textContent()) ?? '')?.[1]);
    expect(await upper()).toBeGreaterThan(15);
    await bench.getByLabel('Be cautious').check();
    await expect.poll(upper, { timeout: 5000 }).toBeLessThanOrEqual(15);
    expect((await figuresOn(bench)).now).toBeLessThan(15);
    await bench.getByLabel('Be cautious').uncheck();
    await expect.poll(() => figuresOn(bench), { timeout: 5000 }).toEqual(free);
  });

  it('keeps a limit while its field holds no number, and lifts it when the field is empty', async () => {
    const free = await rowsOf(bench);
    const fibre = bench.getByLabel('At least this much fibre');
    await fibre.fill('12');
    await expect.poll(() => rowsOf(bench)).not.toEqual(free);
    const limited = await rowsOf(bench);
    await fibre.press('End');
    await fibre.pressSequentially('e');
    await bench.getByText('A number from 0 to 100.').waitFor();
    expect(await rowsOf(bench)).toEqual(limited);
    await fibre.fill('');
    await expect.poll(() => rowsOf(bench)).toEqual(free);
  });

  it('adds only what is at home, and keeps the list', async () => {
    const free = await rowsOf(bench);
    const pantry = bench.locator('.pantry');
    await pantry.locator('summary').click();
    await pantry.getByLabel('Something else I have').fill('vital wheat gluten');
    await pantry.locator('.found button').first().click();
    await pantry.locator('.chips li', { hasText: 'vital wheat gluten' }).waitFor();
    await bench.getByLabel('Add only what I have').check();
    await expect.poll(() => rowsOf(bench)).not.toEqual(free);
    const text = (await rowsOf(bench)).join(' ');
    expect(text).not.toContain('wheat flour blend');
    await bench.getByLabel('Add only what I have').uncheck();
    await expect.poll(() => rowsOf(bench)).toEqual(free);
    await bench.reload();
    await bench.locator('.recipe .verdict').waitFor();
    await fold(bench, 'wishes');
    expect(await pantry.textContent()).toContain('1 listed');
  });

  it('shows amounts for another number and in cups', async () => {
    const amounts = await fold(bench, 'amounts');
    const single = (await rowsOf(bench)).find((row) => row.includes('bread flour')) ?? '';
    const grams = number(single);
    const cut = Number(
      await bench
        .getByRole('textbox', { name: /^Servings/ })
        .first()
        .inputValue(),
    );
    await amounts.getByLabel('×2').check();
    await expect
      .poll(async () => (await rowsOf(bench)).join(' '))
      .toContain(`${2 * grams} g bread flour`);
    await amounts.locator('.factor-note', { hasText: `makes ${2 * cut} servings` }).waitFor();
    await amounts.getByLabel('Amounts').selectOption('us');
    await expect
      .poll(async () => (await rowsOf(bench)).join(' '))
      .toMatch(/cups? bread flour \(\d+ g\)/);
    await amounts.getByText('By the size of your pan').click();
    await amounts.getByLabel('Across').nth(1).fill('18');
    await amounts.getByRole('button', { name: 'Take ×4' }).click();
    await amounts.locator('.factor-note', { hasText: `makes ${4 * cut} servings` }).waitFor();
    await amounts.getByLabel('Amounts').selectOption('page');
    await amounts.getByLabel('×1').check();
  });

  it('sets the page’s own figures beside ours, word for word', async () => {
    const popup = await popupOn('unsure.html');
    await popup.close();
    const full = await run.open('bench.html#recipe');
    await full.locator('.recipe .verdict').waitFor();
    await fold(full, 'sources');
    const stated = full.locator('.stated');
    await stated.waitFor();
    const text = (await stated.textContent()) ?? '';
    expect(text).toContain('310 kcal');
    expect(text).toContain('44 g');
    expect(text).toMatch(/close to ours|somewhat apart|far from ours/);
  });
});
