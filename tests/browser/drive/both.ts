/** One way to drive either browser, for what must hold in both: bodies of functions run in the current tab. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import type { Engine } from './browsers.ts';
import { type ChromiumRun, openChromium } from './chromium.ts';
import { type FirefoxRun, GECKO_ID, openFirefox } from './firefox.ts';

export interface Driven {
  /** Opens an address in a new tab, which becomes the current one. */
  visit(url: string): Promise<void>;
  /** Presses the toolbar button on the current tab; the popup becomes the current tab. */
  click(): Promise<void>;
  /** Opens a page of the extension in a new tab, which becomes the current one. */
  open(path: string): Promise<void>;
  evaluate(body: string): Promise<unknown>;
  /** Waits until a body gives something true; half a minute, or as long as is said. */
  waitFor(body: string, seconds?: number): Promise<unknown>;
  /** Presses a key as a user does: 'Tab', 'Shift+Tab', 'Enter'. */
  key(name: string): Promise<void>;
  /** Gives the current tab this much room, px. */
  resize(width: number, height: number): Promise<void>;
  /** Goes on in the tab that shows a page of the extension and is not the current one, once it is there. */
  goToOther(path: string): Promise<void>;
  closeTab(): Promise<void>;
  /** The current tab, and the way back to it. */
  here(): () => void;
  /** Ends the browser and starts it again as it was left. */
  restart(): Promise<void>;
  /** What the browser's own page of extensions does with its button to reload one. */
  reloadExtension(): Promise<void>;
  /** Ends the background as the browser does when it is idle. */
  endBackground(): Promise<void>;
  /** Whether the extension runs in a private window that is open. */
  runsInPrivate(): Promise<boolean>;
  close(): Promise<void>;
}

interface Options {
  profile: string;
  /** Further settings of Firefox. */
  settings?: Record<string, string | number | boolean>;
}

const SECONDS = 30;

async function until<T>(
  seconds: number,
  look: () => Promise<T>,
  tell: () => Promise<unknown>,
): Promise<NonNullable<T>> {
  for (const end = Date.now() + seconds * 1000; Date.now() < end; ) {
    const found = await look();
    if (found) return found;
    await new Promise((done) => setTimeout(done, 100));
  }
  throw new Error(`waited in vain: ${await tell()}`);
}

async function endWorker({ context }: ChromiumRun): Promise<void> {
  const cdp = await context.browser()?.newBrowserCDPSession();
  if (!cdp) throw new Error('no browser to speak to');
  const { targetInfos } = await cdp.send('Target.getTargets', { filter: [{}] });
  for (const { type, targetId } of targetInfos)
    if (type === 'service_worker') await cdp.send('Target.closeTarget', { targetId });
  await cdp.detach();
}

/** What the browser's own page of extensions knows of one. */
interface ExtensionPage {
  chrome: {
    developerPrivate: {
      updateExtensionConfiguration(change: {
        extensionId: string;
        incognitoAccess: boolean;
      }): Promise<void>;
      getExtensionInfo(id: string): Promise<{
        incognitoAccess: { isEnabled: boolean; isActive: boolean };
      }>;
    };
  };
}

/** Whether private windows may be switched on for it on the browser's page of extensions, or are on once that was tried. */
async function allowedInPrivate({ context, extensionId }: ChromiumRun): Promise<boolean> {
  const page = await context.newPage();
  await page.goto('chrome://extensions');
  const allowed = await page.evaluate(async (id) => {
    const { developerPrivate } = (globalThis as unknown as ExtensionPage).chrome;
    await developerPrivate
      .updateExtensionConfiguration({ extensionId: id, incognitoAccess: true })
      .catch(() => {});
    const { incognitoAccess } = await developerPrivate.getExtensionInfo(id);
    return incognitoAccess.isEnabled || incognitoAccess.isActive;
  }, extensionId);
  await page.close();
  return allowed;
}

/** Without it Chromium does not load an unpacked extension a second time. */
function inDeveloperMode(profile: string): void {
  const folder = join(profile, 'Default');
  const file = join(folder, 'Preferences');
  mkdirSync(folder, { recursive: true });
  writeFileSync(file, JSON.stringify({ extensions: { ui: { developer_mode: true } } }));
}

async function chromiumDriven({ profile }: Options): Promise<Driven> {
  inDeveloperMode(profile);
  let run = await openChromium({ profile });
  let page: Page = await run.context.newPage();
  const inPage = (body: string) => page.evaluate(`(async () => { ${body} })()`);
  return {
    visit: async (url) => {
      page = await run.context.newPage();
      await page.goto(url);
    },
    click: async () => {
      page = await run.click(page);
    },
    open: async (path) => {
      page = await run.open(path);
    },
    evaluate: inPage,
    waitFor: (body, seconds = SECONDS) =>
      until(
        seconds,
        () => inPage(body).catch(() => null),
        () => inPage('return document.body.innerText'),
      ),
    key: (name) => page.keyboard.press(name),
    resize: (width, height) => page.setViewportSize({ width, height }),
    goToOther: async (path) => {
      const root = `chrome-extension://${run.extensionId}/${path}`;
      const others = () => run.context.pages().filter((one) => one !== page);
      const shown = async () => others().find((one) => one.url().startsWith(root)) ?? null;
      page = await until(SECONDS, shown, async () => run.context.pages().map((one) => one.url()));
    },
    closeTab: () => page.close(),
    here: () => {
      const now = page;
      return () => {
        page = now;
      };
    },
    restart: async () => {
      await run.close();
      run = await openChromium({ profile });
      page = await run.context.newPage();
    },
    reloadExtension: async () => {
      const next = run.context.waitForEvent('serviceworker');
      await run.inWorker('void setTimeout(() => chrome.runtime.reload(), 50)');
      await next;
    },
    endBackground: () => endWorker(run),
    runsInPrivate: () => allowedInPrivate(run),
    close: () => run.close(),
  };
}

const RELOAD = `
  const { AddonManager } = ChromeUtils.importESModule('resource://gre/modules/AddonManager.sys.mjs');
  await (await AddonManager.getAddonByID('${GECKO_ID}')).reload();
  return true;
`;

const END_BACKGROUND = `
  await WebExtensionPolicy.getByID('${GECKO_ID}').extension.terminateBackground();
  return true;
`;

/** Opens a private window, looks whether the extension has a button or any way into it, and closes it. */
const IN_PRIVATE = `
  const opened = OpenBrowserWindow({ private: true });
  await new Promise((done) => opened.addEventListener('load', done, { once: true }));
  await new Promise((done) => setTimeout(done, 1000));
  const policy = WebExtensionPolicy.getByID('${GECKO_ID}');
  const button = [...opened.document.querySelectorAll('[data-extensionid]')]
    .some((one) => one.getAttribute('data-extensionid') === '${GECKO_ID}');
  const runs = policy.canAccessWindow(opened) || button;
  opened.close();
  return runs;
`;

async function firefoxDriven({ profile, settings = {} }: Options): Promise<Driven> {
  const start = () => openFirefox({ profile, settings });
  let run: FirefoxRun = await start();
  return {
    visit: (url) => run.newTab(url),
    click: () => run.click(),
    open: (path) => run.open(path),
    evaluate: (body) => run.evaluate(body),
    waitFor: (body, seconds = SECONDS) =>
      until(
        seconds,
        () => run.evaluate(body).catch(() => null),
        () => run.evaluate('return document.body.innerText'),
      ),
    key: (name) => run.key(name),
    resize: (width, height) => run.resize(width, height),
    goToOther: (path) => run.goToOther(path),
    closeTab: () => run.closeTab(),
    here: () => {
      const now = run.here();
      return () => run.goBackTo(now);
    },
    restart: async () => {
      await run.close();
      run = await start();
    },
    reloadExtension: async () => {
      await run.inBrowser(RELOAD);
    },
    endBackground: async () => {
      await run.inBrowser(END_BACKGROUND);
    },
    runsInPrivate: async () => (await run.inBrowser(IN_PRIVATE)) === true,
    close: () => run.close(),
  };
}

/** @throws {Error} when there is no such browser or the extension does not load. */
export const openDriven = (engine: Engine, options: Options): Promise<Driven> =>
  engine === 'chromium' ? chromiumDriven(options) : firefoxDriven(options);
