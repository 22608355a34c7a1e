/** What must not be lost or hang when storage is full, a window closes or a file is damaged: in Chromium. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keepHere } from './drive/bench.ts';
import { buildChromium } from './drive/build.ts';
import { type ChromiumRun, openChromium } from './drive/chromium.ts';
import { LOAF } from './drive/places.ts';
import { type Served, serveDemo } from './drive/server.ts';

/** What the browser holds for a session, and what its storage is asked to do here. */
interface SessionArea {
  set(values: object): Promise<void>;
  get(key: null): Promise<object>;
  clear(): Promise<void>;
}
type Chrome = { chrome: { storage: { session: SessionArea } } };

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

const worker = () => {
  const [found] = run.context.serviceWorkers();
  if (!found) throw new Error('no background');
  return found;
};

/** Leaves no room for a recipe in what the session holds. */
const fillSession = () =>
  worker().evaluate(async () => {
    const area = (globalThis as unknown as Chrome).chrome.storage.session;
    await area.clear();
    for (let size = 4_000_000; size > 100; size /= 2) {
      for (let round = 0; round < 40; round += 1) {
        try {
          await area.set({ [`junk.${size}.${round}`]: 'x'.repeat(size) });
        } catch {
          break;
        }
      }
    }
  });

const emptySession = () =>
  worker().evaluate(() => (globalThis as unknown as Chrome).chrome.storage.session.clear());

const savedTitles = async (): Promise<string[]> => {
  const bench = await run.open('bench.html#kept');
  await bench.getByText('Kept in this browser only').waitFor();
  const titles = await bench.locator('.kept-title').allTextContents();
  await bench.close();
  return titles;
};

beforeAll(async () => {
  buildChromium();
  folder = mkdtempSync(join(tmpdir(), 'crumbshift-robust-'));
  pages = await serveDemo();
  run = await openChromium({ profile: join(folder, 'profile') });
  await run.inWorker(`chrome.storage.local.set({ preferences: { welcomed: true } })`);
});

afterAll(async () => {
  await run?.close();
  await pages?.close();
  if (folder) rmSync(folder, { recursive: true, force: true });
});

describe('the popup', () => {
  it('that closes in the middle of a save loses nothing', async () => {
    const popup = await popupOn('lemon-cake.html');
    const title = await popup.locator('.popup-head .dish').textContent();
    await popup.evaluate(() => {
      const save = [...document.querySelectorAll('button')].find(
        (one) => one.textContent === 'Keep',
      );
      save?.click();
    });
    await popup.close();
    await expect.poll(savedTitles, { timeout: 10_000 }).toContain(title);
    expect(await savedTitles()).toHaveLength(1);
  });

  it('shows the numbers and saves when there is no room to hand the recipe over', async () => {
    await fillSession();
    try {
      const popup = await popupOn(LOAF);
      await popup.getByText('no room to hand this recipe over').waitFor();
      const full = popup.getByRole('button', { name: 'Whole recipe' });
      expect(await full.isDisabled()).toBe(true);
      await keepHere(popup);
      const opening = run.context.waitForEvent('page');
      await full.click();
      const bench = await opening;
      await bench.locator('.recipe .verdict').waitFor();
      expect(await bench.locator('.recipe h1').textContent()).toBe('Hearth Loaf');
    } finally {
      await emptySession();
    }
  });
});

describe('the full page', () => {
  it('opens without a recipe when the session holds a damaged one', async () => {
    await worker().evaluate(() =>
      (globalThis as unknown as Chrome).chrome.storage.session.set({ current: { recipe: 7 } }),
    );
    const bench = await run.open('bench.html');
    await bench.locator('.kept-title').nth(1).waitFor();
    expect(await bench.locator('.recipe').count()).toBe(0);
    expect(await bench.locator('.kept-title').count()).toBe(2);
    await bench.close();
  });

  it('leads back to a recipe that was left unsaved for a saved one', async () => {
    const popup = await popupOn('porch-cookies.html');
    const left = (await popup.locator('.popup-head .dish').textContent()) ?? '';
    const bench = await run.open('bench.html#kept');
    await bench.locator('.kept-title').first().click();
    await bench.locator('.recipe .verdict').waitFor();
    expect(await bench.locator('.unsaved').textContent()).toContain(`“${left}” was not kept`);
    await bench.getByRole('link', { name: 'Go back to it' }).click();
    await expect.poll(() => bench.locator('.recipe h1').textContent()).toBe(left);
    expect(await bench.locator('.unsaved').count()).toBe(0);
    await bench.close();
  });

  it('says that a saved recipe is gone and shows the rest', async () => {
    const bench = await run.open('bench.html?id=never-there');
    await bench.getByRole('alert').getByText('not here any more').waitFor();
    await bench.locator('.kept-title').nth(1).waitFor();
    expect(await bench.locator('.kept-title').count()).toBe(2);
    await bench.close();
  });

  it.each([
    ['cut off', '{"format":"crumbshift-backup","version":2,"recip', 'not complete JSON'],
    [
      'from a newer build',
      '{"format":"crumbshift-backup","version":99,"exportedAt":"","recipes":[]}',
      'newer Crumbshift',
    ],
  ])('refuses a backup that is %s and changes nothing', async (_, text, words) => {
    const file = join(folder, 'damaged.json');
    writeFileSync(file, text);
    const bench = await run.open('bench.html#kept');
    await bench.getByLabel('Read a file in').setInputFiles(file);
    const alert = bench.locator('main').getByRole('alert');
    await alert.waitFor();
    expect(await alert.textContent()).toContain(words);
    expect(await alert.textContent()).toContain('Nothing was changed');
    await bench.locator('.kept-title').nth(1).waitFor();
    expect(await bench.locator('.kept-title').count()).toBe(2);
    await bench.close();
  });

  it('counts a damaged row, shows the others, and exports all of them', async () => {
    const bench = await run.open('bench.html#kept');
    await bench.getByText('Kept in this browser only').waitFor();
    await bench.evaluate(
      () =>
        new Promise<void>((done, failed) => {
          const opening = indexedDB.open('crumbshift');
          opening.onerror = () => failed(opening.error);
          opening.onsuccess = () => {
            const change = opening.result.transaction('recipes', 'readwrite');
            change.objectStore('recipes').put({ id: 'broken', updatedAt: 1, url: '' });
            change.oncomplete = () => {
              opening.result.close();
              done();
            };
          };
        }),
    );
    await bench.reload();
    await bench.getByText('One kept recipe cannot be read').waitFor();
    await bench.locator('.kept-title').nth(1).waitFor();
    expect(await bench.locator('.kept-title').count()).toBe(2);
    const waiting = bench.waitForEvent('download');
    await bench.getByRole('button', { name: 'Put all in a file' }).click();
    const stream = await (await waiting).createReadStream();
    let text = '';
    for await (const part of stream) text += String(part);
    expect(JSON.parse(text).recipes).toHaveLength(3);
  });
});
