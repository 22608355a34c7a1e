/** A package's label typed into the full view: checked, kept, used by the plan, taken back. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AXE_RUN, AXE_SOURCE } from './drive/axe.ts';
import { benchWith, goTo, LOAF_TEXT, rowsOf, settled } from './drive/bench.ts';
import { buildChromium } from './drive/build.ts';
import { type ChromiumRun, openChromium } from './drive/chromium.ts';
import { removeFolder } from './drive/remove-folder.ts';

/** An invented package, for a serving of 30 g. */
const FIGURES: readonly [label: RegExp, text: string][] = [
  [/^Serving size/, '30'],
  [/^Calories/, '80'],
  [/^Total fat/, '0.5'],
  [/^Total carbohydrate/, '14'],
  [/^Dietary fibre/, '8'],
  [/^Protein/, '11'],
];

let folder: string;
let run: ChromiumRun;
let bench: Page;
let section: Locator;

/** The reworked lines as another tab shows them: the form in this one stays as it is. */
async function swap(): Promise<string> {
  const other = await run.open('bench.html#recipe');
  await other.locator('.recipe .verdict').waitFor();
  await settled(other);
  const rows = await rowsOf(other);
  await other.close();
  await bench.bringToFront();
  return rows.join(', ');
}

beforeAll(async () => {
  buildChromium();
  folder = mkdtempSync(join(tmpdir(), 'crumbshift-packages-'));
  run = await openChromium({ profile: join(folder, 'profile') });
  bench = await benchWith(run, LOAF_TEXT);
  section = bench.locator('#packages');
  await goTo(bench, 'cupboard');
});

afterAll(async () => {
  await run?.close();
  removeFolder(folder);
});

describe('a package label in the cupboard', () => {
  it('is refused with every missing field named, and the summary has the focus', async () => {
    await section.getByText('Add a package').click();
    await section.getByRole('button', { name: 'Check and keep' }).click();
    const summary = section.getByRole('alert');
    expect(await summary.getByRole('link').count()).toBe(7);
    const focused = await bench.evaluate('document.activeElement.textContent');
    expect(focused).toContain('Give the package a name');
    await bench.evaluate(AXE_SOURCE);
    expect(await bench.evaluate(AXE_RUN)).toEqual([]);
  });

  it('is kept once what looks wrong was shown, and the plan goes by it', async () => {
    expect(await swap()).toContain('wheat flour blend');
    await section.getByLabel('Name of the package').fill('Soft Mill package');
    await section.getByLabel('Stands in for').selectOption('low-carb-wheat-flour-blend');
    for (const [label, text] of FIGURES) await section.getByLabel(label).fill(text);
    await section.getByLabel('wheat gluten is among').check();
    await section.getByRole('button', { name: 'Check and keep' }).click();
    await section.getByText('Tick it unless the package is free of it').waitFor();
    expect(await swap()).not.toContain('Soft Mill package');
    await section.getByRole('button', { name: 'keep it as typed' }).click();
    await section.getByText('Soft Mill package is kept').waitFor();
    expect(await swap()).toContain('Soft Mill package');
  });

  it('fits a narrow screen', async () => {
    await bench.setViewportSize({ width: 320, height: 700 });
    expect(await bench.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(320);
    await bench.setViewportSize({ width: 1100, height: 800 });
  });

  it('can be removed and brought back, and is there after a reload', async () => {
    await section.getByRole('button', { name: /^Remove.*Soft Mill package/ }).click();
    await section.getByText('is removed').waitFor();
    expect(await swap()).not.toContain('Soft Mill package');
    expect(await bench.evaluate('document.activeElement.textContent')).toBe('Undo');
    await bench.keyboard.press('Enter');
    await section.getByText('Soft Mill package is kept').waitFor();
    await bench.reload();
    await section.locator('.packages').waitFor();
    expect(await section.locator('.packages').textContent()).toContain('16.4 to 23.7 g net carbs');
  });

  it('can be changed in the form it was typed into', async () => {
    const row = section.locator('.packages > li', { hasText: 'Soft Mill package' });
    await row.getByRole('button', { name: /^Change.*Soft Mill package/ }).click();
    expect(await row.getByLabel(/^Dietary fibre/).inputValue()).toBe('8');
    expect(await row.getByLabel('wheat gluten is among').isChecked()).toBe(true);
    await row.getByLabel(/^Dietary fibre/).fill('10');
    await row.getByRole('button', { name: 'Check and keep' }).click();
    await row.getByRole('button', { name: 'keep it as typed' }).click();
    await section.getByText('Soft Mill package is kept').waitFor();
    // 14 g less 10 g in 30 g are 13.3 g in 100 g, where it was 14 less 8.
    expect(await section.locator('.packages').textContent()).not.toContain('16.4 to 23.7');
    await bench.reload();
    await section.locator('.packages').waitFor();
    await row.getByRole('button', { name: /^Change.*Soft Mill package/ }).click();
    expect(await row.getByLabel(/^Dietary fibre/).inputValue()).toBe('10');
  });
});
