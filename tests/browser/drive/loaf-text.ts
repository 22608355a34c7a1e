/** An invented loaf to paste, and what the tests of the full view do with it. */
import type { Page } from 'playwright-core';
import type { ChromiumRun } from './chromium.ts';

export const LOAF_TEXT = `Plain loaf

Ingredients
500 g bread flour
10 g salt
2 g dry yeast
370 g water

Method
1. Mix the flour, salt and yeast with the water.
2. Let the dough rise for 10 hours.
3. Bake at 240 °C for 45 minutes.

Makes 12 slices`;

/** The full view with a pasted recipe. */
export async function benchWith(run: ChromiumRun, text: string): Promise<Page> {
  const bench = await run.open('bench.html?paste');
  await bench.getByRole('textbox', { name: 'Paste a recipe' }).fill(text);
  await bench.getByRole('button', { name: 'Rework this recipe' }).click();
  await bench.locator('.recipe-rows').waitFor();
  return bench;
}

/** Saves what is on the screen and waits until it is on disk. */
export async function saveHere(bench: Page): Promise<void> {
  await bench.getByRole('button', { name: /^Save( this version)?$/ }).click();
  await bench.locator('.save-state', { hasText: /^Saved$/ }).waitFor();
}

/** The reworked ingredient lines, one text a row. */
export const rowsOf = (bench: Page): Promise<string[]> =>
  bench
    .locator('.recipe-rows td[data-label="Reworked"]')
    .evaluateAll((cells) => cells.map((cell) => cell.firstChild?.textContent ?? ''));
