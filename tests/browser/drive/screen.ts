/** The full page in either browser, driven by what stands on it, so that one walk serves both. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll } from 'vitest';
import { buildBoth } from './build.ts';
import { openChromium } from './chromium.ts';
import { openFirefox } from './firefox.ts';
import { removeFolder } from './remove-folder.ts';

export interface Screen {
  /** Runs a function body in the page; its value must be a string, number or boolean. */
  evaluate(body: string): Promise<unknown>;
  /** Waits until a function body gives something true. */
  waitFor(body: string): Promise<unknown>;
  /** Opens a page of the extension. */
  open(path: string): Promise<void>;
  reload(): Promise<void>;
  /** The page on A4 paper, as a PDF. */
  paper(): Promise<Buffer>;
  close(): Promise<void>;
}

async function inChromium(profile: string): Promise<Screen> {
  const run = await openChromium({ profile });
  let page = await run.open('options.html');
  const asCall = (body: string): string => `(async () => { ${body} })()`;
  return {
    evaluate: (body) => page.evaluate(asCall(body)),
    waitFor: async (body) => {
      for (let tries = 0; tries < 150; tries += 1) {
        const found: unknown = await page.evaluate(asCall(body));
        if (found) return found;
        await new Promise((done) => setTimeout(done, 100));
      }
      throw new Error(`waited in vain for: ${body}\n${await page.locator('body').textContent()}`);
    },
    open: async (path) => {
      await page.close();
      page = await run.open(path);
    },
    reload: async () => {
      await page.reload();
    },
    paper: async () => page.pdf({ format: 'A4', preferCSSPageSize: true }),
    close: run.close,
  };
}

async function inFirefox(profile: string): Promise<Screen> {
  const run = await openFirefox({ profile });
  await run.open('options.html');
  const { evaluate, waitFor, open, paper, close } = run;
  return {
    evaluate,
    waitFor,
    open,
    paper,
    close,
    reload: async () => {
      await evaluate('setTimeout(() => location.reload()); return true;');
      await waitFor(`return performance.getEntriesByType('navigation')[0]?.type === 'reload'`);
    },
  };
}

const OPEN = { Chromium: inChromium, Firefox: inFirefox } as const;

/** Both browsers, for `describe.each`. */
export const BROWSERS = ['Chromium', 'Firefox'] as const;

/** A browser with a profile of its own for the tests of a block, ended after them; the screen is there once they run. */
export function screenIn(browser: (typeof BROWSERS)[number]): () => Screen {
  let folder: string;
  let screen: Screen;
  beforeAll(async () => {
    buildBoth();
    folder = mkdtempSync(join(tmpdir(), 'crumbshift-screen-'));
    screen = await OPEN[browser](folder);
  }, 400_000);
  afterAll(async () => {
    await screen?.close();
    removeFolder(folder);
  });
  return () => screen;
}

/** What the bodies below share: an element's words without those for readers only, and elements by words. */
const SHARED = `
  const words = (part) => {
    const copy = part.cloneNode(true);
    for (const word of copy.querySelectorAll('.hidden, svg, s')) word.remove();
    return copy.textContent.replace(/\\s+/g, ' ').trim();
  };
  const found = (selector, name) =>
    [...document.querySelectorAll(selector)].filter((one) => new RegExp(name, 'u').test(words(one)));
`;

const quoted = (text: string): string => JSON.stringify(text);

/** Presses the first element of these words, once it is there and can be pressed. */
export async function press(screen: Screen, selector: string, name = ''): Promise<void> {
  await screen.waitFor(`${SHARED}
    const one = found(${quoted(selector)}, ${quoted(name)})[0];
    if (!one || one.disabled) return false;
    one.click();
    return true;`);
}

/** Puts text into a field at once, as pasting does. */
export async function fill(screen: Screen, selector: string, text: string): Promise<void> {
  await screen.waitFor(`
    const field = document.querySelector(${quoted(selector)});
    if (!field) return false;
    field.value = ${quoted(text)};
    field.dispatchEvent(new Event('input', { bubbles: true }));
    return true;`);
}

/** The words of every such element, one a line. */
export const wordsOf = async (screen: Screen, selector: string): Promise<string[]> =>
  JSON.parse(
    String(
      await screen.evaluate(
        `${SHARED} return JSON.stringify(found(${quoted(selector)}, '').map(words));`,
      ),
    ),
  );

/** Waits until there are so many such elements with these words. */
export const count = (screen: Screen, selector: string, name: string, many: number) =>
  screen.waitFor(
    `${SHARED} return found(${quoted(selector)}, ${quoted(name)}).length === ${many};`,
  );

/** Waits until the recipe on the screen answers what was asked last. */
export const answered = (screen: Screen) =>
  screen.waitFor(`return document.querySelector('.recipe[aria-busy=false] .verdict') !== null;`);

/** Goes to a place as its link does. */
export const place = (screen: Screen, name: string) =>
  screen.evaluate(`location.hash = ${quoted(name)}; return true;`);

/** The full page with a pasted recipe, under preferences. */
export async function pasted(screen: Screen, text: string, preferences = {}): Promise<void> {
  await screen.open('options.html');
  const all = JSON.stringify({ welcomed: true, ...preferences });
  await screen.evaluate(`await chrome.storage.local.set({ preferences: ${all} }); return true;`);
  await screen.open('bench.html?paste#paste');
  await fill(screen, 'textarea', text);
  await press(screen, '.paste button.first');
  await answered(screen);
}
