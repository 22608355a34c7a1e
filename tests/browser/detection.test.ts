/** The option to mark pages that hold a recipe: asked for by a click, quiet, quick, and gone when off. */
import { cpSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AXE_RUN, AXE_SOURCE } from './drive/axe.ts';
import { buildBoth } from './drive/build.ts';
import { type ChromiumRun, openChromium } from './drive/chromium.ts';
import { type FirefoxRun, openFirefox } from './drive/firefox.ts';
import { CHROMIUM_BUILD, LOAF, ROOT } from './drive/places.ts';
import { removeFolder } from './drive/remove-folder.ts';
import { type Served, serveDemo } from './drive/server.ts';

const NONE = '<!doctype html><title>Notes</title><h2>Tuesday</h2><p>We met and talked.</p>';
/** A page that draws other content without loading: first none, then a recipe, then none again. */
const CHANGING = `<!doctype html><title>Changing</title><main><h2>Welcome</h2></main><script>
  const show = (path, html) => { history.pushState(null, '', path); document.querySelector('main').innerHTML = html; };
</script>`;
const SETTLED = 4_000;

let folder: string;
let pages: Served;

beforeAll(async () => {
  buildBoth();
  folder = mkdtempSync(join(tmpdir(), 'crumbshift-detection-'));
  pages = await serveDemo({ '/none.html': NONE, '/changing.html': CHANGING });
});

afterAll(async () => {
  await pages?.close();
  removeFolder(folder);
});

it('is a script of its own and a light one', () => {
  const script = readFileSync(join(CHROMIUM_BUILD, 'detect.js'));
  expect(script.length).toBeGreaterThan(1_000);
  expect(gzipSync(script, { level: 9 }).length).toBeLessThan(4_500);
});

const badge = (run: ChromiumRun, path: string) =>
  run.inWorker<string>(
    `chrome.tabs.query({}).then(async (tabs) => {
       const tab = tabs.find(({ url }) => url?.endsWith(${JSON.stringify(path)}));
       return tab ? chrome.action.getBadgeText({ tabId: tab.id }) : 'no tab'; })`,
  );
const registered = (run: ChromiumRun) =>
  run.inWorker<number>(
    'chrome.scripting.getRegisteredContentScripts().then((scripts) => scripts.length)',
  );

describe('in Chromium, as built', () => {
  let run: ChromiumRun;
  beforeAll(async () => {
    run = await openChromium({ profile: join(folder, 'off') });
  });
  afterAll(() => run?.close());

  it('is off: no script, no permission, no look at a page', async () => {
    const options = await run.open('options.html');
    const box = options.getByLabel('Put a dot on the toolbar button');
    expect(await box.isChecked()).toBe(false);
    expect(await registered(run)).toBe(0);
    const origins = await run.inWorker<string[]>(
      'chrome.permissions.getAll().then(({ origins }) => origins)',
    );
    expect(origins).toEqual([]);
    await options.evaluate(AXE_SOURCE);
    expect(await options.evaluate(AXE_RUN)).toEqual([]);
    await options.close();
  });

  it('looks at a page without a recipe for less than a millisecond', async () => {
    const out = join(folder, 'look');
    await build({
      root: ROOT,
      configFile: false,
      logLevel: 'error',
      build: {
        outDir: out,
        lib: {
          entry: join(ROOT, 'engine/read/document/recipe-signs.ts'),
          name: 'look',
          formats: ['iife'],
        },
      },
    });
    const file = readdirSync(out).find((name) => name.endsWith('.js')) ?? '';
    const page = await run.context.newPage();
    await page.goto(`${pages.origin}/none.html`);
    const article =
      `<h2>Part of it</h2><p>${'Some words about a town and its bridges. '.repeat(60)}</p>
        <ul>${'<li><a href="/x"><b>More</b> to read</a></li>'.repeat(12)}</ul>`.repeat(100);
    expect(article.length).toBeGreaterThan(300_000);
    await page.evaluate(`document.body.innerHTML = ${JSON.stringify(article)}`);
    await page.evaluate(
      readFileSync(join(out, file), 'utf8').replace(/^var look/, 'globalThis.look'),
    );
    const median = await page.evaluate(`(() => {
        const times = [];
        for (let n = 0; n < 51; n += 1) {
          const start = performance.now();
          if (look.mayHoldRecipe(document)) return NaN;
          times.push(performance.now() - start);
        }
        return times.sort((a, b) => a - b)[25];
      })()`);
    console.log(`a look at ${article.length} characters without a recipe: ${median} ms, median`);
    expect(median).toBeLessThan(1);
    await page.close();
  });
});

describe('in Chromium, with the permission given', () => {
  let run: ChromiumRun;
  beforeAll(async () => {
    // The browser's own dialog cannot be answered without a screen: this copy has the answer in its manifest.
    const copy = join(folder, 'allowed');
    cpSync(CHROMIUM_BUILD, copy, { recursive: true });
    const manifest = JSON.parse(readFileSync(join(copy, 'manifest.json'), 'utf8'));
    manifest.host_permissions = manifest.optional_host_permissions;
    delete manifest.optional_host_permissions;
    writeFileSync(join(copy, 'manifest.json'), JSON.stringify(manifest));
    run = await openChromium({ profile: join(folder, 'on'), build: copy });
  });
  afterAll(() => run?.close());

  it('has its script registered', async () => {
    await expect.poll(() => registered(run), { timeout: 10_000 }).toBe(1);
  });

  it('marks a recipe page quietly and leaves others alone', async () => {
    const page = await run.context.newPage();
    await page.goto(`${pages.origin}/${LOAF}`);
    await expect.poll(() => badge(run, LOAF), { timeout: 10_000 }).toBe('•');
    const title = await run.inWorker<string>(
      `chrome.tabs.query({}).then((tabs) => chrome.action.getTitle({ tabId: tabs.find(({ url }) => url?.endsWith('${LOAF}')).id }))`,
    );
    expect(title).toContain('recipe on this page');
    await page.goto(`${pages.origin}/none.html`);
    await page.waitForTimeout(SETTLED);
    expect(await badge(run, 'none.html')).toBe('');
    await page.close();
  });

  it('follows a page that changes without loading', async () => {
    const page = await run.context.newPage();
    await page.goto(`${pages.origin}/changing.html`);
    await page.waitForTimeout(SETTLED);
    expect(await badge(run, 'changing.html')).toBe('');
    await page.evaluate(`show('/soup.html', '<h2>Ingredients</h2><ul><li>1 onion</li></ul>')`);
    await expect.poll(() => badge(run, 'soup.html'), { timeout: 10_000 }).toBe('•');
    await page.evaluate(`show('/about.html', '<h2>About us</h2>')`);
    await expect.poll(() => badge(run, 'about.html'), { timeout: 10_000 }).toBe('');
    await page.close();
  });

  it('changes nothing on the page', async () => {
    const page = await run.context.newPage();
    await page.addInitScript(`new MutationObserver((records) => {
      globalThis.changes = (globalThis.changes ?? 0) + records.length;
    }).observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
    addEventListener('load', () => { globalThis.changes = 0; });`);
    await page.goto(`${pages.origin}/${LOAF}`);
    await expect.poll(() => badge(run, LOAF), { timeout: 10_000 }).toBe('•');
    expect(await page.evaluate('globalThis.changes')).toBe(0);
    await page.close();
  });
});

describe('in Firefox', () => {
  let run: FirefoxRun;
  beforeAll(async () => {
    run = await openFirefox({ profile: mkdtempSync(join(folder, 'firefox-')) });
    // The browser's question is answered with yes by this preference; the click before it is a real one.
    await run.inBrowser(
      `Services.prefs.setBoolPref('extensions.webextOptionalPermissionPrompts', false); return true;`,
    );
  });
  afterAll(() => run?.close());

  const BOX = 'fieldset input[aria-describedby]';
  const scripts = () =>
    run.evaluate('return (await browser.scripting.getRegisteredContentScripts()).length');

  it('is switched on by a click, marks a recipe page, and is switched off', async () => {
    await run.open('options.html');
    await run.waitFor(`return document.querySelector('${BOX}') !== null`);
    expect(await run.evaluate(`return document.querySelector('${BOX}').checked`)).toBe(false);
    await run.evaluate(`document.querySelector('${BOX}').scrollIntoView({ block: 'center' })`);
    await run.press(BOX);
    await run.waitFor(
      'return (await browser.scripting.getRegisteredContentScripts()).length === 1',
    );
    const options = run.here();
    await run.newTab(`${pages.origin}/${LOAF}`);
    const mark = () =>
      run.inBrowser(`
        const { ExtensionParent } = ChromeUtils.importESModule('resource://gre/modules/ExtensionParent.sys.mjs');
        const { extension } = WebExtensionPolicy.getByID('crumbshift@crumbshift.invalid');
        const action = ExtensionParent.apiManager.global.browserActionFor(extension);
        return action.action.getProperty(window.gBrowser.selectedTab, 'badgeText') ?? '';`);
    await expect.poll(mark, { timeout: 15_000 }).toBe('•');
    await run.goto(`${pages.origin}/none.html`);
    await new Promise((done) => setTimeout(done, SETTLED));
    expect(await mark()).toBe('');
    run.goBackTo(options);
    await run.press(BOX);
    await run.waitFor(
      'return (await browser.scripting.getRegisteredContentScripts()).length === 0',
    );
    expect(await scripts()).toBe(0);
    expect(
      await run.evaluate(
        `return (await browser.permissions.getAll()).origins.filter((one) => one.startsWith('*')).length`,
      ),
    ).toBe(0);
  });
});
