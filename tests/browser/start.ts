/** `npm start`: builds the extension and shows its main job in the best way this machine allows. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { type Engine, findBrowser, installHint, needBrowser } from './drive/browsers.ts';
import { buildBoth } from './drive/build.ts';
import { openChromium } from './drive/chromium.ts';
import { openFirefox } from './drive/firefox.ts';
import { CHROMIUM_BUILD, DEMO_PAGES, FIREFOX_BUILD, LOAF, ROOT } from './drive/places.ts';
import { removeFolder } from './drive/remove-folder.ts';
import { serveDemo } from './drive/server.ts';
import { POPUP_WORDS, terminalText } from './drive/shown/popup-words.ts';

const PICTURES = join(ROOT, '.output/demo');
const shown = (path: string): string => relative(process.cwd(), path) || '.';

const hasDisplay = (): boolean =>
  process.platform === 'darwin' ||
  process.platform === 'win32' ||
  Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);

/** An installed browser; Chromium first. Installs it where that can be done. */
function anyBrowser(): Engine | null {
  for (const engine of ['chromium', 'firefox'] as const) if (findBrowser(engine)) return engine;
  try {
    needBrowser('chromium');
    return 'chromium';
  } catch {
    return null;
  }
}

const HOW_TO_CLICK =
  'Press the Crumbshift button in the toolbar (it may be in the menu of extensions). Close the browser to end.';

async function showChromium(profile: string, url: string): Promise<void> {
  const run = await openChromium({ profile, headless: false });
  const page = run.context.pages()[0] ?? (await run.context.newPage());
  await page.goto(url);
  console.log(HOW_TO_CLICK);
  await new Promise<void>((done) => run.context.once('close', () => done()));
}

async function showFirefox(profile: string, url: string): Promise<void> {
  const run = await openFirefox({ profile, headless: false });
  await run.goto(url);
  console.log(HOW_TO_CLICK);
  await run.ended;
}

async function driveChromium(profile: string, url: string): Promise<void> {
  const run = await openChromium({ profile });
  try {
    const page = await run.context.newPage();
    await page.goto(url);
    const popup = await run.click(page);
    await popup.locator('.verdict').waitFor();
    console.log(terminalText(JSON.parse(await popup.evaluate(POPUP_WORDS))));
    await popup.setViewportSize({ width: 480, height: 2200 });
    await popup.locator('body').screenshot({ path: join(PICTURES, 'popup.png') });
    const bench = await run.open('bench.html');
    await bench.locator('.recipe .verdict').waitFor();
    await bench.screenshot({ path: join(PICTURES, 'bench.png'), fullPage: true });
  } finally {
    await run.close();
  }
}

async function driveFirefox(profile: string, url: string): Promise<void> {
  const run = await openFirefox({ profile });
  try {
    await run.goto(url);
    await run.click();
    await run.waitFor(`return document.querySelector('.verdict') !== null`);
    console.log(terminalText(JSON.parse(String(await run.evaluate(`return ${POPUP_WORDS}`)))));
    writeFileSync(join(PICTURES, 'popup.png'), await run.screenshot());
    await run.open('bench.html');
    await run.waitFor(`return document.querySelector('.recipe .verdict') !== null`);
    writeFileSync(join(PICTURES, 'bench.png'), await run.screenshot());
  } finally {
    await run.close();
  }
}

function withoutBrowser(): void {
  console.log(installHint('chromium'));
  console.log(`Or load the build by hand: ${shown(CHROMIUM_BUILD)} in Chromium (extensions page,`);
  console.log('developer mode, "Load unpacked"), or in Firefox (about:debugging, "This Firefox",');
  console.log(`"Load Temporary Add-on") ${shown(join(FIREFOX_BUILD, 'manifest.json'))}.`);
  console.log('The same result from the engine:\n');
  const args = ['--import', 'tsx', 'engine/cli.ts', 'adapt', join(DEMO_PAGES, LOAF)];
  const { status } = spawnSync(process.execPath, args, { cwd: ROOT, stdio: 'inherit' });
  process.exitCode = status ?? 1;
}

async function main(): Promise<void> {
  console.log('Building …');
  buildBoth();
  const browser = anyBrowser();
  if (!browser) {
    withoutBrowser();
    return;
  }
  const pages = await serveDemo();
  const profile = mkdtempSync(join(tmpdir(), 'crumbshift-demo-'));
  const url = `${pages.origin}/${LOAF}`;
  try {
    console.log(`Demo recipe, invented: ${url}`);
    if (hasDisplay()) {
      await (browser === 'chromium' ? showChromium : showFirefox)(profile, url);
    } else {
      mkdirSync(PICTURES, { recursive: true });
      await (browser === 'chromium' ? driveChromium : driveFirefox)(profile, url);
      console.log(`\nScreenshots: ${shown(PICTURES)}/popup.png and bench.png`);
    }
  } finally {
    await pages.close();
    removeFolder(profile);
  }
}

await main();
