/**
 * Drives Firefox with the built extension loaded. The toolbar button is pressed by a privileged
 * script: it uses browser internals, which may change with a new ESR, and only here.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Bidi, connectBidi } from './bidi.ts';
import { needBrowser } from './browsers.ts';
import { FIREFOX_BUILD } from './places.ts';

export const GECKO_ID = 'crumbshift@crumbshift.invalid';
/** A fixed address for the extension, so that its storage outlives a restart. */
const UUID = '3f6c1b52-9d0e-4a71-8c55-7be1a4d0c9e2';

export interface FirefoxRun {
  /** Address of every request of every tab so far. */
  requests: string[];
  /** Opens an address in the current tab and waits until it is loaded. */
  goto(url: string): Promise<void>;
  /** Runs a function body in the current tab; its value must be a string, number or boolean. */
  evaluate(body: string): Promise<unknown>;
  /** Waits until a function body gives something true in the current tab. */
  waitFor(body: string): Promise<unknown>;
  /** Presses the toolbar button on the current tab, then shows the same popup in a tab of its own. */
  click(): Promise<void>;
  open(path: string): Promise<void>;
  /** Opens an address in a new tab. */
  newTab(url: string): Promise<void>;
  /**
   * Chooses the entry for selected text in the context menu, or presses its key, and goes on in the tab
   * that this opens.
   */
  pressForSelection(way: 'menu' | 'key'): Promise<void>;
  /** Clicks an element of the current tab as a user does. */
  press(selector: string): Promise<void>;
  /** Presses a key in the current tab as a user does: 'Tab', 'Shift+Tab', 'Enter'. */
  key(name: string): Promise<void>;
  /** Gives the current tab this much room, px. */
  resize(width: number, height: number): Promise<void>;
  /** Goes on in the tab that shows a page of the extension and is not the current one, once it is there. */
  goToOther(path: string): Promise<void>;
  /** Closes the current tab; another one has to be made current. */
  closeTab(): Promise<void>;
  /** The current tab, to go back to it later. */
  here(): string;
  goBackTo(tab: string): void;
  /** Runs a function body in the browser's own window. */
  inBrowser(body: string): Promise<unknown>;
  /** Addresses of the origins of the current tab's workers, one for each. */
  workers(): Promise<string[]>;
  /** The current page on A4 paper, as a PDF. */
  paper(): Promise<Buffer>;
  /** The whole current page as a PNG. */
  screenshot(): Promise<Buffer>;
  /** Resolves when the browser has ended. */
  ended: Promise<void>;
  close(): Promise<void>;
}

interface Options {
  profile: string;
  /** 'http://127.0.0.1:PORT' for everything that is not loopback. */
  proxy?: string;
  headless?: boolean;
  /** Further settings of the browser. */
  settings?: Record<string, string | number | boolean>;
}

function preferences({ proxy, settings }: Options): string {
  const values: Record<string, string | number | boolean> = {
    'extensions.webextensions.uuids': JSON.stringify({ [GECKO_ID]: UUID }),
    // A temporary install is removed at the end; these keep its storage as an update would.
    'extensions.webextensions.keepStorageOnUninstall': true,
    'extensions.webextensions.keepUuidOnUninstall': true,
    'browser.shell.checkDefaultBrowser': false,
    'datareporting.policy.dataSubmissionEnabled': false,
    'app.normandy.enabled': false,
    // The browser's own errands, so that the proxy sees only what the pages and the extension do.
    'services.settings.server': 'data:,#none/v1',
    'browser.safebrowsing.provider.mozilla.updateURL': '',
    'extensions.update.enabled': false,
    'app.update.disabledForTesting': true,
    'browser.region.network.url': '',
    'browser.newtabpage.enabled': false,
    'browser.startup.homepage': 'about:blank',
    'browser.startup.page': 0,
    'media.gmp-manager.updateEnabled': false,
    'media.gmp-manager.url': '',
    'network.captive-portal-service.enabled': false,
    'network.connectivity-service.enabled': false,
    ...settings,
    ...(proxy
      ? {
          'network.proxy.type': 1,
          'network.proxy.http': '127.0.0.1',
          'network.proxy.http_port': Number(new URL(proxy).port),
          'network.proxy.ssl': '127.0.0.1',
          'network.proxy.ssl_port': Number(new URL(proxy).port),
        }
      : {}),
  };
  return Object.entries(values)
    .map(([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)});\n`)
    .join('');
}

/** Address of the BiDi socket, from the browser's own words. */
function socketAddress(child: ChildProcess): Promise<string> {
  return new Promise((done, failed) => {
    let words = '';
    const timer = setTimeout(() => failed(new Error(`Firefox did not start: ${words}`)), 60_000);
    child.stderr?.on('data', (data) => {
      words += String(data);
      const found = /WebDriver BiDi listening on (ws:\/\/\S+)/.exec(words);
      if (!found?.[1]) return;
      clearTimeout(timer);
      done(found[1]);
    });
    child.once('exit', (code) => failed(new Error(`Firefox ended (${code}): ${words}`)));
  });
}

interface Remote {
  type: string;
  result?: { type: string; value?: unknown };
  exceptionDetails?: { text: string };
}

function value(answer: Record<string, unknown>): unknown {
  const { type, result, exceptionDetails } = answer as unknown as Remote;
  if (type === 'exception') throw new Error(exceptionDetails?.text ?? 'script failed');
  return result?.value;
}

async function evaluateIn(bidi: Bidi, context: string, body: string): Promise<unknown> {
  return value(
    await bidi.send('script.evaluate', {
      expression: `(async () => { ${body} })()`,
      target: { context },
      awaitPromise: true,
    }),
  );
}

/** Context of the browser window itself. */
async function chromeContext(bidi: Bidi): Promise<string> {
  const { contexts } = (await bidi.send('browsingContext.getTree', {
    'moz:scope': 'chrome',
  })) as unknown as { contexts: { context: string; url: string }[] };
  const window = contexts.find(({ url }) => url.endsWith('/browser.xhtml'));
  if (!window) throw new Error('no browser window');
  return window.context;
}

/** Presses the button, which grants the selected tab, and gives the tab's id. An open popup would only be toggled. */
const PRESS = `
  for (const panel of document.querySelectorAll('panel')) panel.hidePopup();
  await new Promise((done) => setTimeout(done, 100));
  const { ExtensionParent } = ChromeUtils.importESModule('resource://gre/modules/ExtensionParent.sys.mjs');
  const { extension } = WebExtensionPolicy.getByID('${GECKO_ID}');
  const { apiManager } = ExtensionParent;
  await apiManager.global.browserActionFor(extension).triggerAction(window);
  return apiManager.global.tabTracker.getId(window.gBrowser.selectedTab);
`;

async function start(options: Options) {
  const { profile, headless = true } = options;
  writeFileSync(join(profile, 'user.js'), preferences(options));
  const child = spawn(
    needBrowser('firefox'),
    [
      ...(headless ? ['--headless'] : []),
      '--no-remote',
      '--remote-debugging-port=0',
      '--remote-allow-system-access',
      '--profile',
      profile,
    ],
    {
      stdio: ['ignore', 'ignore', 'pipe'],
      env: { ...process.env, MOZ_DISABLE_AUTO_SAFE_MODE: '1' },
    },
  );
  try {
    const bidi = await connectBidi(`${await socketAddress(child)}/session`);
    await bidi.send('session.new', { capabilities: {} });
    return { child, bidi };
  } catch (error) {
    child.kill();
    throw error;
  }
}

/** Chooses an entry of the open context menu; the browser then grants the tab, as for a user. */
const CHOOSE = `
  const menu = document.getElementById('contentAreaContextMenu');
  for (let tries = 0; menu.state !== 'open' && tries < 50; tries += 1)
    await new Promise((done) => setTimeout(done, 100));
  const item = menu.querySelector('[label="Rework the selected recipe"]');
  if (!item) throw new Error('no such entry');
  menu.activateItem(item);
  return true;
`;

/** Carries out the key of the extension's command. */
const KEY = `
  const keys = [...document.querySelectorAll('keyset[id^="ext-keyset"] key')];
  const key = keys.find((one) => one.getAttribute('key')?.toUpperCase() === 'U');
  if (!key) throw new Error('no such key');
  key.doCommand();
  return true;
`;

/** Where to click to hit an element, in pixels from the page's corner. */
const MIDDLE = (selector: string) => `
  const box = document.querySelector(${JSON.stringify(selector)}).getBoundingClientRect();
  return Math.round(box.left + Math.min(box.width / 2, 40)) + ',' + Math.round(box.top + box.height / 2);
`;

async function clickAt(bidi: Bidi, context: string, place: string, button: number): Promise<void> {
  const [x, y] = place.split(',').map(Number);
  await bidi.send('input.performActions', {
    context,
    actions: [
      {
        type: 'pointer',
        id: 'mouse',
        actions: [
          { type: 'pointerMove', x, y },
          { type: 'pointerDown', button },
          { type: 'pointerUp', button },
        ],
      },
    ],
  });
}

/** Keys without a letter, as the protocol writes them. */
const KEYS: Readonly<Record<string, string>> = {
  Tab: '\uE004',
  Enter: '\uE007',
  Shift: '\uE008',
  End: '\uE010',
  ArrowUp: '\uE013',
  ArrowDown: '\uE015',
};

async function pressKey(bidi: Bidi, context: string, name: string): Promise<void> {
  const keys = name.split('+').map((key) => KEYS[key] ?? key);
  const down = keys.map((value) => ({ type: 'keyDown', value }));
  const up = keys.toReversed().map((value) => ({ type: 'keyUp', value }));
  await bidi.send('input.performActions', {
    context,
    actions: [{ type: 'key', id: 'keys', actions: [...down, ...up] }],
  });
}

async function tabs(bidi: Bidi): Promise<{ context: string; url: string }[]> {
  const { contexts } = await bidi.send('browsingContext.getTree', {});
  return contexts as { context: string; url: string }[];
}

/** A tab that shows a page of the extension and was not there before, once it is open. */
async function newTabShowing(bidi: Bidi, path: string, before: readonly string[]): Promise<string> {
  for (let tries = 0; tries < 100; tries += 1) {
    const found = (await tabs(bidi)).find(
      ({ context, url }) =>
        !before.includes(context) && url.startsWith(`moz-extension://${UUID}/${path}`),
    );
    if (found) return found.context;
    await new Promise((done) => setTimeout(done, 100));
  }
  throw new Error(`no new tab shows ${path}`);
}

const exitOf = (child: ChildProcess): Promise<void> =>
  child.exitCode === null
    ? new Promise((done) => child.once('exit', () => done()))
    : Promise.resolve();

async function stop(child: ChildProcess, bidi: Bidi): Promise<void> {
  const ended = exitOf(child);
  await bidi.send('browser.close', {}).catch(() => child.kill());
  const timer = setTimeout(() => child.kill('SIGKILL'), 15_000);
  await ended;
  clearTimeout(timer);
  bidi.close();
}

/** @throws {Error} when there is no Firefox or the extension does not load. */
export async function openFirefox(options: Options): Promise<FirefoxRun> {
  const { child, bidi } = await start(options);
  const requests: string[] = [];
  bidi.onEvent('network.beforeRequestSent', (params) => {
    requests.push((params as { request: { url: string } }).request.url);
  });
  await bidi.send('session.subscribe', { events: ['network.beforeRequestSent'] });
  await bidi.send('webExtension.install', {
    extensionData: { type: 'path', path: FIREFOX_BUILD },
  });
  const newTab = async () =>
    String((await bidi.send('browsingContext.create', { type: 'tab' })).context);
  let context = await newTab();
  const evaluate = (body: string) => evaluateIn(bidi, context, body);
  const goto = async (url: string) => {
    await bidi.send('browsingContext.navigate', { context, url, wait: 'complete' });
  };
  const open = async (path: string) => {
    context = await newTab();
    await goto(`moz-extension://${UUID}/${path}`);
  };
  return {
    requests,
    goto,
    evaluate,
    open,
    waitFor: async (body) => {
      for (let tries = 0; tries < 150; tries += 1) {
        const found = await evaluate(body);
        if (found) return found;
        await new Promise((done) => setTimeout(done, 100));
      }
      throw new Error(
        `waited in vain for: ${body}\n${await evaluate('return document.body.innerText')}`,
      );
    },
    click: async () => {
      await bidi.send('browsingContext.activate', { context });
      const tab = await evaluateIn(bidi, await chromeContext(bidi), PRESS);
      await open(`popup.html?tab=${tab}`);
    },
    newTab: async (url) => {
      context = await newTab();
      await goto(url);
    },
    pressForSelection: async (way) => {
      await bidi.send('browsingContext.activate', { context });
      const before = (await tabs(bidi)).map((tab) => tab.context);
      const browser = await chromeContext(bidi);
      if (way === 'menu') {
        await clickAt(bidi, context, String(await evaluate(MIDDLE('li'))), 2);
        await evaluateIn(bidi, browser, CHOOSE);
      } else await evaluateIn(bidi, browser, KEY);
      context = await newTabShowing(bidi, 'bench.html', before);
    },
    press: async (selector) => {
      await bidi.send('browsingContext.activate', { context });
      await clickAt(bidi, context, String(await evaluate(MIDDLE(selector))), 0);
    },
    key: (name) => pressKey(bidi, context, name),
    resize: async (width, height) => {
      await bidi.send('browsingContext.setViewport', { context, viewport: { width, height } });
    },
    goToOther: async (path) => {
      context = await newTabShowing(bidi, path, [context]);
    },
    closeTab: async () => {
      await bidi.send('browsingContext.close', { context });
    },
    here: () => context,
    goBackTo: (tab) => {
      context = tab;
    },
    workers: async () => {
      const { realms } = await bidi.send('script.getRealms', { type: 'dedicated-worker' });
      const all = realms as { origin: string; owners: string[] }[];
      const { realms: pages } = await bidi.send('script.getRealms', { context });
      const here = (pages as { realm: string }[]).map(({ realm }) => realm);
      return all
        .filter(({ owners }) => owners.some((owner) => here.includes(owner)))
        .map(({ origin }) => origin);
    },
    inBrowser: async (body) => evaluateIn(bidi, await chromeContext(bidi), body),
    paper: async () => {
      // Centimetres.
      const page = { width: 21, height: 29.7 };
      const { data } = await bidi.send('browsingContext.print', { context, page });
      return Buffer.from(String(data), 'base64');
    },
    screenshot: async () => {
      const { data } = await bidi.send('browsingContext.captureScreenshot', {
        context,
        origin: 'document',
      });
      return Buffer.from(String(data), 'base64');
    },
    ended: exitOf(child),
    close: () => stop(child, bidi),
  };
}
