import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AXE_RUN, AXE_SOURCE } from './drive/axe.ts';
import { buildBoth } from './drive/build.ts';
import { type FirefoxRun, openFirefox } from './drive/firefox.ts';
import { LOAF } from './drive/places.ts';
import { removeFolder } from './drive/remove-folder.ts';
import { recordingProxy, type Served, serveDemo } from './drive/server.ts';
import {
  adaptByCommandLine,
  type CommandLineResult,
  expectInTerminal,
  shownBefore,
  shownGrams,
} from './drive/shown/expected.ts';
import { POPUP_WORDS } from './drive/shown/popup-words.ts';

/** Services the browser itself calls; the extension has no way to be heard there. */
const BROWSER_ERRANDS = /(^|[/.])(mozilla\.(com|net|org)|firefox\.com)(:\d+)?(\/|$)/;

const FIGURES = `return ['.verdict-was', '.verdict-figure'].map((part) => document.querySelector(part)?.textContent).join('|')`;

let folder: string;
let pages: Served;
let proxy: Served;
let run: FirefoxRun;
let said: CommandLineResult;

const start = () => openFirefox({ profile: folder, proxy: proxy.origin });

const press = (name: string) =>
  run.evaluate(`
    const button = [...document.querySelectorAll('button')].find((b) => b.textContent === ${JSON.stringify(name)});
    button.click();
    return true;
  `);

/** Pages the test itself asked for; the server must have been asked for no more. */
const visited: string[] = [];

async function visit(path: string): Promise<void> {
  visited.push(`/${path}`);
  await run.goto(`${pages.origin}/${path}`);
}

async function popupOn(path: string): Promise<void> {
  await visit(path);
  await run.click();
  await run.waitFor(`return document.querySelector('.verdict') !== null`);
}

beforeAll(async () => {
  buildBoth();
  said = adaptByCommandLine(LOAF);
  folder = mkdtempSync(join(tmpdir(), 'crumbshift-firefox-'));
  pages = await serveDemo();
  proxy = await recordingProxy();
  run = await start();
});

afterAll(async () => {
  await run?.close();
  await pages?.close();
  await proxy?.close();
  removeFolder(folder);
});

describe('the main path in Firefox', () => {
  it('can read no page before the click', async () => {
    await visit(LOAF);
    await run.open('popup.html?tab=999999999');
    await run.waitFor(`return document.querySelector('[role=alert]') !== null`);
    expect(await run.evaluate('return document.body.textContent')).toContain('cannot be read');
    const answers = await run.evaluate(`
      const read = async ({ id }) => {
        try {
          const [first] = await browser.scripting.executeScript({ target: { tabId: id }, files: ['/reader.js'] });
          return first?.result?.ok === true ? 'read' : 'empty';
        } catch {
          return 'refused';
        }
      };
      return (await Promise.all((await browser.tabs.query({})).map(read))).join(' ');
    `);
    expect(answers).toContain('refused');
    expect(answers).not.toContain('read');
  });

  it('shows what the command line says after one click with activeTab only', async () => {
    await popupOn(LOAF);
    expect(await run.evaluate(FIGURES)).toBe(
      `${shownBefore(said.before.netCarbsG)}|${shownGrams(said.after.netCarbsG)}`,
    );
    // Recipes are worked out beside the page, not in it.
    expect(await run.workers()).toHaveLength(1);
    expectInTerminal(JSON.parse(String(await run.evaluate(`return ${POPUP_WORDS}`))), said);
  });

  it('passes WCAG AA rules in the popup', async () => {
    await run.evaluate(AXE_SOURCE);
    const found = await run.evaluate(`return JSON.stringify(await ${AXE_RUN.trim()})`);
    expect(JSON.parse(String(found))).toEqual([]);
  });

  it('keeps, and still has it after the browser was started again', async () => {
    await popupOn(LOAF);
    await press('Keep');
    await run.waitFor(`return document.querySelector('.keep-state')?.textContent === 'Kept'`);
    await run.close();
    run = await start();
    await run.open('bench.html#kept');
    await run.waitFor(`return document.querySelector('.kept-title') !== null`);
    expect(await run.evaluate(`return document.querySelector('.kept-title').textContent`)).toBe(
      said.title,
    );
    await run.evaluate(`document.querySelector('.kept-title').click()`);
    await run.waitFor(`return document.querySelector('.recipe .verdict') !== null`);
    expect(await run.evaluate(FIGURES)).toBe(
      `${shownBefore(said.before.netCarbsG)}|${shownGrams(said.after.netCarbsG)}`,
    );
  });

  it('opens what a figure rests on', async () => {
    await run.evaluate(`document.querySelector('.verdict-was').closest('button').click()`);
    await run.waitFor(`return document.querySelector('.verdict .sources') !== null`);
    expect(
      await run.evaluate(`return document.querySelector('.verdict .sources').textContent`),
    ).toContain('USDA SR Legacy 168896');
  });

  it('logs a bake, and still has it after a reload', async () => {
    await run.evaluate(`location.hash = 'bakes'`);
    await run.waitFor(`return document.querySelector('.bake-log details') !== null`);
    await run.evaluate(`document.querySelector('.bake-log details').open = true`);
    await run.evaluate(`
      const field = document.querySelector('.bake-measures input');
      field.value = '780';
      field.dispatchEvent(new Event('input', { bubbles: true }));
    `);
    await press('Keep this bake');
    const logged = `return (document.querySelector('.bakes > li')?.textContent ?? '').includes('780 g after baking')`;
    await run.waitFor(logged);
    await run.evaluate('location.reload()');
    await run.waitFor(logged);
  });

  it('passes WCAG AA rules in the full view', async () => {
    await run.evaluate(AXE_SOURCE);
    const found = await run.evaluate(`return JSON.stringify(await ${AXE_RUN.trim()})`);
    expect(JSON.parse(String(found))).toEqual([]);
  });

  it('sent nothing anywhere but to the demo pages', () => {
    expect(visited).toHaveLength(3);
    expect(pages.hits.filter((path) => path !== '/favicon.ico')).toEqual(visited);
    const web = run.requests.filter((url) => /^(https?|wss?):/.test(url));
    expect(web.filter((url) => !url.startsWith(pages.origin))).toEqual([]);
    expect(proxy.hits.filter((host) => !BROWSER_ERRANDS.test(host))).toEqual([]);
  });
});
