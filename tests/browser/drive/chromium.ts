/** Drives Chromium with the built extension loaded and nothing granted but the toolbar click. */
import { type BrowserContext, type CDPSession, chromium, type Page } from 'playwright-core';
import { isRoot, needBrowser } from './browsers.ts';
import { CHROMIUM_BUILD } from './places.ts';

export interface ChromiumRun {
  context: BrowserContext;
  extensionId: string;
  /** Address of every request of every page, frame and worker so far. */
  requests: string[];
  /** Presses the toolbar button on a page and opens the same popup as an ordinary page. */
  click(page: Page): Promise<Page>;
  /**
   * Presses the button and evaluates an expression in the toolbar's own popup once it shows figures;
   * `meanwhile` is evaluated every 10 ms until then.
   */
  inRealPopup<T>(page: Page, expression: string, meanwhile?: string): Promise<T>;
  /** Evaluates an expression in the extension's worker. */
  inWorker<T>(expression: string): Promise<T>;
  /** Id of the tab in front; the extension may know that much of any tab. */
  activeTab(): Promise<number>;
  /** Opens a page of the extension. */
  open(path: string): Promise<Page>;
  close(): Promise<void>;
}

interface Options {
  profile: string;
  /** File to write the browser's network log to; complete once it is closed. */
  netLog?: string;
  headless?: boolean;
  /** Folder of the build to load in place of the usual one. */
  build?: string;
}

function argumentsFor({ netLog, headless = true, build = CHROMIUM_BUILD }: Options): string[] {
  return [
    ...(headless ? ['--headless=new'] : []),
    // No other host can be found, so a test never leaves this machine.
    ...(headless ? ['--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1'] : []),
    `--disable-extensions-except=${build}`,
    `--load-extension=${build}`,
    '--no-first-run',
    '--disable-component-update',
    '--disable-background-networking',
    ...(isRoot() ? ['--no-sandbox'] : []),
    ...(netLog ? [`--log-net-log=${netLog}`] : []),
  ];
}

/** The extension's worker; with a broken build it never comes. */
async function workerOf(context: BrowserContext) {
  const [here] = context.serviceWorkers();
  return here ?? context.waitForEvent('serviceworker', { timeout: 15_000 });
}

/** @throws {Error} when there is no Chromium or the extension does not load. */
export async function openChromium(options: Options): Promise<ChromiumRun> {
  const context = await chromium.launchPersistentContext(options.profile, {
    executablePath: needBrowser('chromium'),
    headless: false,
    ignoreDefaultArgs: ['--disable-extensions'],
    args: argumentsFor(options),
    viewport: options.headless === false ? null : { width: 1100, height: 800 },
    acceptDownloads: true,
  });
  const requests: string[] = [];
  context.on('request', (request) => requests.push(request.url()));
  const first = await workerOf(context).catch(async (error: unknown) => {
    await context.close();
    throw error;
  });
  // The browser ends and starts it as it likes, and the tests do.
  const worker = async () => (first === context.serviceWorkers()[0] ? first : workerOf(context));
  const extensionId = new URL(first.url()).host;
  const open = async (path: string) => {
    const page = await context.newPage();
    await page.goto(`chrome-extension://${extensionId}/${path}`);
    return page;
  };
  return {
    context,
    extensionId,
    requests,
    open,
    click: async (page) => {
      await page.bringToFront();
      await trigger(context, extensionId, page.url());
      // Without the grant this address would be hidden from the extension.
      const tab = await (await worker()).evaluate(async (url) => {
        const { tabs } = (globalThis as unknown as { chrome: { tabs: Tabs } }).chrome;
        return (await tabs.query({})).find((one) => one.url === url)?.id ?? null;
      }, page.url());
      if (tab === null) throw new Error('the toolbar button granted nothing');
      return open(`popup.html?tab=${tab}`);
    },
    inRealPopup: async <T>(page: Page, expression: string, meanwhile = '') => {
      await page.bringToFront();
      await trigger(context, extensionId, page.url());
      return (await evaluateInPopup(context, extensionId, expression, meanwhile)) as T;
    },
    inWorker: async <T>(expression: string) => (await worker()).evaluate(expression) as Promise<T>,
    activeTab: async () =>
      (await worker()).evaluate(async () => {
        const { tabs } = (globalThis as unknown as { chrome: { tabs: Tabs } }).chrome;
        const [tab] = await tabs.query({ active: true, lastFocusedWindow: true });
        return tab?.id ?? -1;
      }),
    close: () => context.close(),
  };
}

interface Tabs {
  query(filter: object): Promise<{ id?: number; url?: string }[]>;
}

/** A real press of the toolbar button: the browser grants `activeTab` for this tab only. */
async function trigger(context: BrowserContext, id: string, url: string): Promise<void> {
  const browser = context.browser();
  if (!browser) throw new Error('no browser to speak to');
  const cdp = await browser.newBrowserCDPSession();
  try {
    const { targetInfos } = await cdp.send('Target.getTargets', { filter: [{}] });
    const target = targetInfos.find((info) => info.type === 'tab' && info.url === url);
    if (!target) throw new Error(`no tab shows ${url}`);
    const send = cdp.send as (method: string, parameters: object) => Promise<unknown>;
    await send.call(cdp, 'Extensions.triggerAction', { id, targetId: target.targetId });
  } finally {
    await cdp.detach();
  }
}

async function popupTarget(cdp: CDPSession, address: string): Promise<string> {
  for (let tries = 0; tries < 100; tries += 1) {
    const { targetInfos } = await cdp.send('Target.getTargets', { filter: [{}] });
    const target = targetInfos.find(({ url }) => url === address);
    if (target) return target.targetId;
    await new Promise((done) => setTimeout(done, 50));
  }
  throw new Error('the popup did not open');
}

/** The toolbar's popup is not among the pages: it is spoken to through its target. */
async function evaluateInPopup(
  context: BrowserContext,
  id: string,
  expression: string,
  meanwhile: string,
): Promise<unknown> {
  const browser = context.browser();
  if (!browser) throw new Error('no browser to speak to');
  const cdp = await browser.newBrowserCDPSession();
  const targetId = await popupTarget(cdp, `chrome-extension://${id}/popup.html`);
  const { sessionId } = await cdp.send('Target.attachToTarget', { targetId, flatten: false });
  const ready = `new Promise((done) => { const look = () => { ${meanwhile}
    document.querySelector('main[aria-busy=false] .verdict') ? done(${expression}) : setTimeout(look, 10); }; look(); })`;
  const answer = new Promise<unknown>((done) => {
    cdp.on('Target.receivedMessageFromTarget', ({ message }) => {
      const { id: number, result } = JSON.parse(message);
      if (number === 1) done(result?.result?.value);
    });
  });
  const message = JSON.stringify({
    id: 1,
    method: 'Runtime.evaluate',
    params: { expression: ready, awaitPromise: true, returnByValue: true },
  });
  await cdp.send('Target.sendMessageToTarget', { sessionId, message });
  const value = await answer;
  await cdp.detach();
  return value;
}
