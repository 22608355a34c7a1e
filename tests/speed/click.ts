/** From the click to the figures in Chromium's own popup, and to the first thing an empty popup shows. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildChromium } from '../browser/drive/build.ts';
import { openChromium } from '../browser/drive/chromium.ts';
import { LOAF } from '../browser/drive/places.ts';
import { serveDemo } from '../browser/drive/server.ts';

export interface Click {
  /** Until the popup first shows something, ms. */
  empty: number;
  /** Until it shows figures, ms; looked for every 50 ms. */
  figures: number;
}

const ROUNDS = 5;
const TIMES = `JSON.stringify([performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0, performance.now()])`;

/** The quickest of some clicks: what else the machine does only adds. */
export async function clickTimes(): Promise<Click> {
  buildChromium();
  const folder = mkdtempSync(join(tmpdir(), 'crumbshift-click-'));
  const pages = await serveDemo();
  const run = await openChromium({ profile: join(folder, 'profile') });
  try {
    const best: Click = { empty: Number.POSITIVE_INFINITY, figures: Number.POSITIVE_INFINITY };
    for (let round = 0; round < ROUNDS; round += 1) {
      const page = await run.context.newPage();
      await page.goto(`${pages.origin}/${LOAF}`);
      const [empty = 0, figures = 0] = JSON.parse(await run.inRealPopup<string>(page, TIMES));
      if (empty > 0) best.empty = Math.min(best.empty, empty);
      best.figures = Math.min(best.figures, figures);
      await page.close();
    }
    return best;
  } finally {
    await run.close();
    await pages.close();
    rmSync(folder, { recursive: true, force: true });
  }
}
