/** Drives Chromium with the built extension loaded and nothing granted but the toolbar click. */
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { isRoot, needBrowser } from './browsers.ts';
import { CHROMIUM_BUILD } from './places.ts';

export interface ChromiumRun {
  context: BrowserContext;
  extensionId: string;
  /** Address of every request of every page, frame and worker so far. */
  requests: string[];
  /** Presses the toolbar button on a page and opens the same popup as an ordinary page. */
  click(page: Page): Promise<Page>;
  /** Opens a page of the extension. */
  open(path: string): Promise<Page>;
  close(): Promise<void>;
}

interface Options {
  profile: string;
  /** 'http://127.0.0.1:PORT' for everything that is not loopback. */
  proxy?: string;
  headless?: boolean;
}

function argumentsFor({ proxy, headless = true }: Options): string[] {
  return [
    ...(headless ? ['--headless=new'] : []),
    `--disable-extensions-except=${CHROMIUM_BUILD}`,
    `--load-extension=${CHROMIUM_BUILD}`,
    '--no-first-run',
    // The browser's own errands, so that the proxy sees only what the pages and the extension do.
    '--disable-component-update',
    '--disable-background-networking',
    '--disable-sync',
    '--allow-browser-signin=false',
    '--disable-features=AutofillServerCommunication,OptimizationHints,Translate,MediaRouter',
    ...(isRoot() ? ['--no-sandbox'] : []),
    ...(proxy ? [`--proxy-server=${proxy}`] : []),
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
  const worker = await workerOf(context).catch(async (error: unknown) => {
    await context.close();
    throw error;
  });
  const extensionId = new URL(worker.url()).host;
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
      const tab = await worker.evaluate(async (url) => {
        const { tabs } = (globalThis as unknown as { chrome: { tabs: Tabs } }).chrome;
        return (await tabs.query({})).find((one) => one.url === url)?.id ?? null;
      }, page.url());
      if (tab === null) throw new Error('the toolbar button granted nothing');
      return open(`popup.html?tab=${tab}`);
    },
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
