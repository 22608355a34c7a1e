/** The way back to work that was left, and a file of all with what is damaged in it: in Chromium. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keepHere } from './drive/bench.ts';
import { buildChromium } from './drive/build.ts';
import { type ChromiumRun, openChromium } from './drive/chromium.ts';
import { LOAF } from './drive/places.ts';
import { removeFolder } from './drive/remove-folder.ts';
import { type Served, serveDemo } from './drive/server.ts';

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
  removeFolder(folder);
});

describe('the full page', () => {
  it('leads back to a recipe that was left unsaved for a saved one', async () => {
    for (const path of [LOAF, 'lemon-cake.html']) await keepHere(await popupOn(path));
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
