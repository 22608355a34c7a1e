/** The built reader in a real page: it reads a long one and leaves the page as it was. */
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { LINES, longPage } from '../speed/long-page.ts';
import { buildBoth } from './drive/build.ts';
import { type ChromiumRun, openChromium } from './drive/chromium.ts';
import { CHROMIUM_BUILD } from './drive/places.ts';
import { removeFolder } from './drive/remove-folder.ts';
import { type Served, serveDemo } from './drive/server.ts';

/** A page that changes while it is read, and counts what others change in it. */
const RESTLESS = `<!doctype html><title>Restless</title><h1>Pan loaf</h1>
<pan-loaf></pan-loaf><div id="late"></div>
<script>
  customElements.define('pan-loaf', class extends HTMLElement {
    constructor() {
      super();
      this.attachShadow({ mode: 'open' }).innerHTML =
        '<h2>Ingredients</h2><ul><li>300 g flour</li><li>200 g water</li></ul><h2>Method</h2><p>Mix both and bake.</p>';
    }
  });
  // Every look at an attribute of this element changes the page under the reader's feet.
  const late = document.getElementById('late');
  const own = late.getAttribute;
  late.getAttribute = function (name) {
    globalThis.looked = true;
    return own.call(this, name);
  };
  globalThis.seen = 0;
  new MutationObserver((records) => { globalThis.seen += records.length; })
    .observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
</script>`;

let folder: string;
let pages: Served;
let run: ChromiumRun;
let reader: string;

beforeAll(async () => {
  buildBoth();
  reader = readFileSync(join(CHROMIUM_BUILD, 'reader.js'), 'utf8');
  folder = mkdtempSync(join(tmpdir(), 'crumbshift-reading-'));
  pages = await serveDemo({
    '/marked.html': longPage(true),
    '/plain.html': longPage(false),
    '/restless.html': RESTLESS,
  });
  run = await openChromium({ profile: join(folder, 'profile') });
});

afterAll(async () => {
  await run?.close();
  await pages?.close();
  removeFolder(folder);
});

async function shown(path: string): Promise<Page> {
  const page = await run.context.newPage();
  await page.goto(`${pages.origin}/${path}`);
  return page;
}

describe('the reader in Chromium', () => {
  it.each([
    ['with JSON-LD', 'marked.html'],
    ['without markup', 'plain.html'],
  ])('reads a page of 400 KB %s', async (_, path) => {
    expect(longPage(path === 'marked.html').length).toBeGreaterThan(380_000);
    const page = await shown(path);
    const lines = await page.evaluate(
      `(() => { ${reader}; return reader.recipes[0].groups.flatMap((group) => group.lines); })()`,
    );
    expect(lines).toEqual(LINES);
    await page.close();
  });

  it('changes nothing on a page of custom elements that watches itself', async () => {
    const page = await shown('restless.html');
    await page.evaluate('globalThis.seen = 0');
    const lines = await page.evaluate(
      `(() => { ${reader}; return reader.recipes[0].groups.flatMap((group) => group.lines); })()`,
    );
    expect(lines).toEqual(['300 g flour', '200 g water']);
    await page.waitForTimeout(200);
    expect(await page.evaluate('globalThis.looked')).toBe(true);
    expect(await page.evaluate('globalThis.seen')).toBe(0);
    await page.close();
  });

  it('ends well when the page is changed while it is read', async () => {
    const page = await shown('restless.html');
    const answer = await page.evaluate(`(() => {
      const late = document.getElementById('late');
      late.getAttribute = () => { document.body.replaceChildren(); return null; };
      late.getAttributeNames = () => { document.querySelector('h1')?.remove(); return ['class']; };
      ${reader};
      return typeof reader.ok;
    })()`);
    expect(answer).toBe('boolean');
    await page.close();
  });
});
