/** The bake log in the full view: a bake told, kept over a restart, and what is learned from it. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  benchWith,
  figuresOn,
  fold,
  goTo,
  keepHere,
  LOAF_TEXT,
  rowsOf,
  settled,
} from './drive/bench.ts';
import { buildChromium } from './drive/build.ts';
import { type ChromiumRun, openChromium } from './drive/chromium.ts';
import { removeFolder } from './drive/remove-folder.ts';

let folder: string;
let run: ChromiumRun;
let bench: Page;
/** Reworked lines as they were baked. */
let baked: string[];

const log = () => bench.locator('.bake-log');
/** 'A slice of 65 g has 14.9 g net carbs' says 14.9. */
const sliceOn = (text: string | null): number =>
  Number(/has (\d+(\.\d+)?) g/.exec(text ?? '')?.[1]);

/** The reworked lines, looked at in the recipe place; goes back to the bakes. */
async function rowsThere(): Promise<string[]> {
  await goTo(bench, 'recipe');
  await settled(bench);
  const rows = await rowsOf(bench);
  await goTo(bench, 'bakes');
  await log().waitFor();
  return rows;
}

async function keepThere(): Promise<void> {
  await goTo(bench, 'recipe');
  await settled(bench);
  await keepHere(bench);
  await goTo(bench, 'bakes');
  await log().waitFor();
}

async function openKept(): Promise<void> {
  bench = await run.open('bench.html#kept');
  await bench.locator('.kept-title').first().click();
  await bench.locator('.recipe .verdict').waitFor();
  await settled(bench);
  await goTo(bench, 'bakes');
  await bench.locator('.bakes > li').first().waitFor();
}

beforeAll(async () => {
  buildChromium();
  folder = mkdtempSync(join(tmpdir(), 'crumbshift-bakes-'));
  run = await openChromium({ profile: join(folder, 'profile') });
  bench = await benchWith(run, LOAF_TEXT);
  baked = await rowsOf(bench);
  await goTo(bench, 'bakes');
});

afterAll(async () => {
  await run?.close();
  removeFolder(folder);
});

describe('the bake log', () => {
  it('asks for the recipe to be kept first', async () => {
    expect(await log().textContent()).toContain('Keep the recipe');
    expect(await log().getByText('I baked this').count()).toBe(0);
    await keepThere();
    await log().getByText('I baked this').waitFor();
  });

  it('takes a bake by keyboard alone', async () => {
    await log().locator('summary').first().focus();
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
    await log().locator('summary', { hasText: 'Crumb and looks' }).focus();
    await bench.keyboard.press('Enter');
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
    await goTo(bench, 'recipe');
    await settled(bench);
    const weigh = (await fold(bench, 'slice')).locator('.weigh');
    expect(await weigh.getByLabel('Whole dish').inputValue()).toBe('780');
    await weigh.getByLabel('Your slice').fill('65');
    const serving = (await figuresOn(bench)).now;
    const slice = sliceOn(await weigh.locator('.slice-figure').textContent());
    // Twelve servings weigh 780 g, so one of 65 g has the net carbs of a serving.
    expect(Math.abs(slice - serving)).toBeLessThanOrEqual(0.11);
    await weigh.getByLabel('Your slice').fill('130');
    expect(
      Math.abs(sliceOn(await weigh.locator('.slice-figure').textContent()) - 2 * serving),
    ).toBeLessThanOrEqual(0.16);
    await goTo(bench, 'bakes');
  });

  it('proposes changes with their reasons, and an accepted one reworks the recipe at once', async () => {
    const proposals = log().locator('.proposals > .swaps > li');
    await proposals.first().waitFor();
    for (const text of await proposals.allTextContents()) expect(text).toContain('Source:');
    const water = proposals.filter({ hasText: /Less water/ });
    await water.getByRole('button', { name: 'Take it up' }).click();
    await bench.locator('.taught', { hasText: /Less water/ }).waitFor();
    expect(await rowsThere()).not.toEqual(baked);
    await keepThere();
    await goTo(bench, 'recipe');
    const tries = await fold(bench, 'tries');
    await expect
      .poll(() => tries.getByRole('button', { name: 'Use this version' }).count())
      .toBe(1);
    await tries.getByRole('button', { name: 'What differs' }).click();
    const words = (await tries.locator('.differences').textContent()) ?? '';
    expect(words).toMatch(/^Since then: .*g less water/i);
  });

  it('is still there after the browser was started again, and a change can be withdrawn', async () => {
    const changed = await rowsThere();
    await run.close();
    run = await openChromium({ profile: join(folder, 'profile') });
    await openKept();
    expect(await log().locator('.bakes > li').textContent()).toContain('Sticky near the base.');
    expect(await rowsThere()).toEqual(changed);
    await bench.locator('.taught').getByRole('button', { name: 'Withdraw' }).click();
    expect(await rowsThere()).toEqual(baked);
  });

  it('names a version and says that it worked', async () => {
    await goTo(bench, 'recipe');
    const tries = await fold(bench, 'tries');
    await tries.getByLabel('Name: The one kept last').fill('Less water');
    await tries.getByLabel('this one worked: The one kept last').check();
    await tries.getByRole('button', { name: 'What differs' }).first().click();
    // The change was withdrawn again.
    expect(await tries.locator('.differences').textContent()).toContain('the same as now');
    await goTo(bench, 'kept');
    await bench.getByText('“Less water”').waitFor();
    await goTo(bench, 'bakes');
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
