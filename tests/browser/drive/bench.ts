/** An invented loaf to paste, and what the tests of the full page do with it. */
import type { Locator, Page } from 'playwright-core';
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

/** Waits until the recipe on the screen answers what was asked last. */
export async function settled(page: Page): Promise<void> {
  await page.locator('[aria-busy=false] .verdict, .recipe[aria-busy=false]').first().waitFor();
}

/** The full page with a pasted recipe. */
export async function benchWith(run: ChromiumRun, text: string): Promise<Page> {
  const bench = await run.open('bench.html#paste');
  await bench.getByRole('textbox').fill(text);
  await bench.getByRole('button', { name: 'Rework this recipe' }).click();
  await bench.locator('.recipe .verdict').waitFor();
  await settled(bench);
  return bench;
}

/** Goes to a place by its link in the rail. */
export async function goTo(bench: Page, place: string): Promise<void> {
  await bench.locator(`.rail a[href="#${place}"]`).click();
}

/** Opens a fold of the recipe place, when it is closed, and gives its inside. */
export async function fold(page: Page, name: string): Promise<Locator> {
  const part = page.locator(`details[data-fold="${name}"]`);
  if ((await part.getAttribute('open')) === null) await part.locator('> summary').click();
  return part;
}

/** Keeps what is on the screen and waits until it is on disk. */
export async function keepHere(page: Page): Promise<void> {
  await page.locator('button.keep').click();
  await page.locator('.keep-state', { hasText: /^Kept$/ }).waitFor({ state: 'attached' });
}

/** The reworked ingredient lines, one text a row: amount and food, without what they were. */
export const rowsOf = (bench: Page): Promise<string[]> =>
  bench.locator('.line').evaluateAll((lines) =>
    lines.map((line) => {
      const copy = line.cloneNode(true) as Element;
      for (const old of copy.querySelectorAll('s')) old.remove();
      return (copy.textContent ?? '').replace(/\s+/g, ' ').trim();
    }),
  );

/** Opens a line of the ingredient list and gives what it holds. */
export async function openLine(bench: Page, text: string | RegExp): Promise<Locator> {
  const row = bench.locator('.lines > li', { hasText: text }).first();
  const button = row.locator('.line');
  if ((await button.getAttribute('aria-expanded')) === 'false') await button.click();
  await row.locator('.line-panel').waitFor();
  return row;
}

/** Net carbs of a serving as the screen says them, g. */
export async function figuresOn(page: Page): Promise<{ now: number; was: number }> {
  const read = async (part: string) =>
    Number.parseFloat((await page.locator(part).first().textContent()) ?? '');
  return { now: await read('.verdict-figure'), was: await read('.verdict-was') };
}
