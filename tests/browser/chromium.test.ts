import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { violations } from './drive/axe.ts';
import { buildBoth } from './drive/build.ts';
import { type ChromiumRun, openChromium } from './drive/chromium.ts';
import { adaptByCommandLine, type CommandLineResult, shownGrams } from './drive/expected.ts';
import { requestsIn } from './drive/netlog.ts';
import { LOAF } from './drive/places.ts';
import { type Served, serveDemo } from './drive/server.ts';

const LONG_NAME = 'Grandmother’s-Sunday-'.repeat(12);
const NO_RECIPE = '<!doctype html><title>Notes</title><p>We met on Tuesday and talked.</p>';
const LONG_PAGE = `<!doctype html><title>Long</title><script type="application/ld+json">${JSON.stringify(
  {
    '@context': 'https://schema.org',
    '@type': 'Recipe',
    name: LONG_NAME,
    recipeYield: '8 servings',
    recipeIngredient: [
      `300 g ${'unbleached-stone-ground-'.repeat(8)}bread flour`,
      '200 g sugar',
      '<img src=x onerror=alert(1)> 100 g butter',
      'a handful of zibbelwort',
    ],
    recipeInstructions: '<b>Mix</b> everything and bake.',
  },
)}</script>`;

let folder: string;
let pages: Served;
let run: ChromiumRun;
let said: CommandLineResult;

const profile = () => join(folder, 'profile');
const netLog = (n: number) => join(folder, `net-${n}.json`);

async function popupOn(path: string): Promise<Page> {
  const page = await run.context.newPage();
  await page.goto(`${pages.origin}/${path}`);
  const popup = await run.click(page);
  await popup.waitForSelector('.headline, .message h2:not(:text("Reading"))');
  return popup;
}

const words = async (part: Locator): Promise<string> => (await part.textContent()) ?? '';

beforeAll(async () => {
  buildBoth();
  said = adaptByCommandLine(LOAF);
  folder = mkdtempSync(join(tmpdir(), 'crumbshift-chromium-'));
  pages = await serveDemo({ '/nothing.html': NO_RECIPE, '/long.html': LONG_PAGE });
  run = await openChromium({ profile: profile(), netLog: netLog(1) });
});

afterAll(async () => {
  await run?.close();
  await pages?.close();
  if (folder) rmSync(folder, { recursive: true, force: true });
});

describe('the main path in Chromium', () => {
  it('shows what the command line says after one click with activeTab only', async () => {
    const popup = await popupOn(LOAF);
    const figures = await popup.locator('.big-figure').allInnerTexts();
    expect(figures).toEqual([shownGrams(said.before.netCarbsG), shownGrams(said.after.netCarbsG)]);
    expect(await words(popup.locator('.dish'))).toBe(said.title);
    const swaps = await popup.locator('.swaps > li').count();
    expect(swaps).toBe(said.swaps.length);
  });

  it('solves again at once for another budget and other servings', async () => {
    const popup = await popupOn(LOAF);
    const after = popup.locator('.big-figure').nth(1);
    const before = popup.locator('.big-figure').nth(0);
    await popup.getByLabel('Budget a serving').fill('20');
    expect(Number.parseFloat(await words(after))).toBeGreaterThan(15);
    expect(Number.parseFloat(await words(after))).toBeLessThanOrEqual(20);
    await popup.getByLabel('Servings', { exact: true }).fill(String(said.servings * 2));
    const half = (said.before.netCarbsG ?? 0) / 2;
    expect(Math.abs(Number.parseFloat(await words(before)) - half)).toBeLessThanOrEqual(0.06);
    await popup.getByLabel('Budget a serving').fill('15');
    await popup.getByLabel('Servings', { exact: true }).fill(String(said.servings));
    expect(await words(after)).toBe(shownGrams(said.after.netCarbsG));
  });

  it('shows the same in the real popup, without sideways scrolling', async () => {
    const page = await run.context.newPage();
    await page.goto(`${pages.origin}/${LOAF}`);
    const { shown, wide, room } = await run.inRealPopup<{
      shown: string;
      wide: number;
      room: number;
    }>(
      page,
      `({ shown: document.querySelector('.big-figure')?.innerText ?? '',
          wide: document.documentElement.scrollWidth, room: innerWidth })`,
    );
    expect(shown).toBe(shownGrams(said.before.netCarbsG));
    expect(wide).toBeLessThanOrEqual(room);
  });

  it('saves, and still has it after the browser was started again', async () => {
    const popup = await popupOn(LOAF);
    await popup.getByRole('button', { name: 'Save', exact: true }).click();
    await popup.getByText('Saved', { exact: true }).waitFor();
    await run.close();
    run = await openChromium({ profile: profile(), netLog: netLog(2) });
    const bench = await run.open('bench.html');
    const link = bench.getByRole('link', { name: said.title });
    await link.click();
    await bench.locator('.recipe-rows').waitFor();
    expect(await words(bench.locator('.big-figure').nth(1))).toBe(shownGrams(said.after.netCarbsG));
  });

  it('rules a swap out, leaves a line as it is, and keeps the version before', async () => {
    const bench = await run.open('bench.html');
    await bench.locator('#saved .saved > li > a').first().click();
    await bench.locator('.recipe-rows').waitFor();
    const swaps = bench.locator('.swaps > li');
    const first = await words(swaps.first().locator('.swap-amounts'));
    await swaps.first().getByRole('button', { name: 'Do without this swap' }).click();
    await expect.poll(() => words(swaps.first().locator('.swap-amounts'))).not.toBe(first);
    const flour = bench.locator('.recipe-rows tr', { hasText: 'bread flour' }).first();
    await flour.getByRole('checkbox').check();
    const kept = bench.locator('.recipe-rows .row-kept', { hasText: 'bread flour' });
    await kept.first().waitFor();
    await bench.getByRole('button', { name: 'Save this version' }).click();
    await bench.locator('.save-state', { hasText: /^Saved$/ }).waitFor();
    await bench.getByRole('button', { name: 'Take up again' }).click();
    await expect.poll(() => words(swaps.first().locator('.swap-amounts'))).toBe(first);
    await bench.getByRole('button', { name: 'Save this version' }).click();
    await bench.locator('.save-state', { hasText: /^Saved$/ }).waitFor();
    await expect.poll(() => bench.getByRole('button', { name: 'Take up again' }).count()).toBe(2);
  });

  it('deletes with undo', async () => {
    const bench = await run.open('bench.html');
    const links = bench.locator('#saved .saved > li > a');
    await links.first().waitFor();
    const count = await links.count();
    await bench
      .getByRole('button', { name: `Delete ${said.title}` })
      .first()
      .click();
    await bench.getByText('is deleted.').waitFor();
    expect(await links.count()).toBe(count - 1);
    await bench.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => links.count()).toBe(count);
  });

  it('exports to a file and imports it without doubling', async () => {
    const bench = await run.open('bench.html');
    const links = bench.locator('#saved .saved > li > a');
    await links.first().waitFor();
    const count = await links.count();
    const waiting = bench.waitForEvent('download');
    await bench.getByRole('button', { name: 'Export all to a file' }).click();
    const file = join(folder, 'backup.json');
    await (await waiting).saveAs(file);
    await bench.getByLabel('Import a file').setInputFiles(file);
    await bench.getByText('here already').waitFor();
    expect(await links.count()).toBe(count);
  });
});

describe('files and paper in Chromium', () => {
  it('gives the reworked recipe as text', async () => {
    const bench = await run.open('bench.html');
    await bench.locator('#saved .saved > li > a').first().click();
    await bench.locator('.recipe-rows').waitFor();
    const waiting = bench.waitForEvent('download');
    await bench.getByRole('button', { name: 'Text file of the reworked recipe' }).click();
    const download = await waiting;
    expect(download.suggestedFilename()).toBe('Hearth-Loaf.txt');
    const file = join(folder, 'recipe.txt');
    await download.saveAs(file);
    expect(readFileSync(file, 'utf8')).toContain(said.title);
  });

  it('prints the recipe without controls', async () => {
    const bench = await run.open('bench.html');
    await bench.locator('.recipe-rows').waitFor();
    await bench.emulateMedia({ media: 'print' });
    expect(await bench.locator('.recipe-rows').isVisible()).toBe(true);
    expect(await bench.locator('.uncounted, .nutrients').first().isVisible()).toBe(true);
    // Figures are buttons on the screen and plain figures on paper.
    const controls = 'button:not(.figure-button), input, select, textarea, summary, nav';
    for (const control of await bench.locator(controls).all()) {
      expect(await control.isVisible()).toBe(false);
    }
    expect(await bench.locator('.credit').textContent()).toContain('millrace-kitchen.example');
    expect(await bench.locator('.cautions').isVisible()).toBe(true);
  });

  it('prints on two sheets at most', async () => {
    const bench = await run.open('bench.html');
    await bench.locator('.recipe-rows').waitFor();
    const cdp = await run.context.newCDPSession(bench);
    // A4 in inches.
    const paper = { preferCSSPageSize: true, paperWidth: 8.27, paperHeight: 11.69 };
    const { data } = await cdp.send('Page.printToPDF', paper);
    const pages = Buffer.from(data, 'base64')
      .toString('latin1')
      .match(/\/Type\s*\/Page\b/g);
    expect(pages?.length).toBeGreaterThanOrEqual(1);
    expect(pages?.length).toBeLessThanOrEqual(2);
  });
});

describe('other pages in Chromium', () => {
  it('says what to do where there is no recipe', async () => {
    const popup = await popupOn('nothing.html');
    expect(await words(popup.locator('.message'))).toMatch(/No recipe found.*paste/is);
  });

  it('lets the user choose among several recipes', async () => {
    const popup = await popupOn('chicken-and-sauce.html');
    const choices = popup.locator('.choices button');
    expect(await choices.count()).toBeGreaterThan(1);
    const name = await words(choices.nth(1));
    await choices.nth(1).click();
    await popup.locator('.headline').waitFor();
    expect(await words(popup.locator('.dish'))).toBe(name);
  });

  it('reads no page without the click, and says so', async () => {
    const page = await run.context.newPage();
    await page.goto(`${pages.origin}/${LOAF}`);
    const tab = await run.activeTab();
    const popup = await run.open(`popup.html?tab=${tab}`);
    await popup.getByRole('alert').waitFor();
    expect(await words(popup.getByRole('alert'))).toContain('cannot be read');
    expect(await popup.locator('.headline').count()).toBe(0);
    const granted = await run.click(page);
    expect(new URL(granted.url()).searchParams.get('tab')).toBe(String(tab));
    await granted.locator('.headline').waitFor();
  });

  it('shows hostile and long text as text, without sideways scrolling', async () => {
    const popup = await popupOn('long.html');
    expect(await popup.locator('main img').count()).toBe(0);
    expect(await words(popup.locator('.dish'))).toBe(LONG_NAME);
    const [wide, room] = await popup.evaluate(() => [
      document.documentElement.scrollWidth,
      innerWidth,
    ]);
    expect(wide).toBeLessThanOrEqual(room ?? 0);
    const uncertain = popup.locator('.doubts > li', { hasText: 'zibbelwort' });
    await uncertain.locator('summary').click();
    await uncertain.getByLabel('Another food for').fill('bread flour');
    await uncertain.locator('.found button').first().click();
    await uncertain.getByLabel('Grams').fill('100');
    await popup.getByText('corrected by you').waitFor();
  });

  it('reworks pasted text in the full view', async () => {
    const bench = await run.open('bench.html?paste');
    await bench
      .getByRole('textbox', { name: /Paste a recipe/ })
      .fill(
        'Plain loaf\n\n500 g bread flour\n350 g water\n10 g salt\n7 g dry yeast\n\nMix and bake.',
      );
    await bench.getByRole('button', { name: 'Rework this recipe' }).click();
    await bench.locator('.recipe-rows').waitFor();
    expect(await bench.locator('.recipe-rows tbody tr').count()).toBeGreaterThanOrEqual(4);
  });
});

describe('accessibility in Chromium', () => {
  it.each(['light', 'dark'] as const)(
    'popup and full view pass WCAG AA rules, %s',
    async (scheme) => {
      const popup = await popupOn('long.html');
      await popup.emulateMedia({ colorScheme: scheme });
      await popup.evaluate(() => {
        for (const part of document.querySelectorAll('details')) part.open = true;
      });
      expect(await violations(popup)).toEqual([]);
      for (const path of ['bench.html', 'options.html']) {
        const page = await run.open(path);
        await page.emulateMedia({ colorScheme: scheme });
        await page.locator('main h2').first().waitFor();
        await page.evaluate(() => {
          for (const part of document.querySelectorAll('details')) part.open = true;
        });
        expect(await violations(page)).toEqual([]);
      }
    },
  );

  it.each(['bench.html', 'options.html'])(
    '%s needs no sideways scrolling at 320 px',
    async (path) => {
      const page = await run.open(path);
      await page.setViewportSize({ width: 320, height: 640 });
      await page.locator('main h2').first().waitFor();
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
        320,
      );
    },
  );

  it('reaches every control of the popup by keyboard, focus always in sight', async () => {
    const popup = await popupOn(LOAF);
    await popup.setViewportSize({ width: 480, height: 600 });
    const controls = await popup.evaluate(
      () => document.querySelectorAll('main button, main input, main select, main summary').length,
    );
    const reached = new Set<string>();
    for (let presses = 0; presses < controls + 2; presses += 1) {
      await popup.keyboard.press('Tab');
      const seen = await popup.evaluate(() => {
        const at = document.activeElement;
        if (!at || at === document.body) return null;
        const box = at.getBoundingClientRect();
        const top = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2);
        return { name: `${at.tagName}.${at.id}.${at.textContent}`, clear: at.contains(top) };
      });
      if (!seen) continue;
      expect(seen, seen.name).toMatchObject({ clear: true });
      reached.add(seen.name);
    }
    expect(reached.size).toBeGreaterThanOrEqual(4);
  });
});

describe('the network in Chromium', () => {
  it('carried nothing but the demo pages over both runs', async () => {
    await run.close();
    const asked = [...requestsIn(netLog(1)), ...requestsIn(netLog(2))];
    // The log does see requests: the pages' own icon is one.
    expect(asked.some(({ url }) => url.startsWith(pages.origin))).toBe(true);
    const elsewhere = asked.filter(
      ({ url }) => !url.startsWith(pages.origin) && !url.startsWith('chrome-extension://'),
    );
    expect(elsewhere).toEqual([]);
    expect(
      asked.filter(
        ({ url, initiator }) => initiator.startsWith('chrome-extension:') && url.startsWith('http'),
      ),
    ).toEqual([]);
  });
});
