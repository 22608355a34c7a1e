/**
 * From the click to what Chromium's own popup shows: anything at all, what a serving of the page has, and what
 * can be done about it.
 */
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
  /** Until it shows what a serving has as the page has it, ms; looked for every 10 ms. */
  standing: number;
  /** Until it shows a serving before and after, ms; looked for every 10 ms. */
  figures: number;
}

const ROUNDS = 5;
const LOOK = `if (document.querySelector('.as-it-is, .verdict')) globalThis.standing ??= performance.now();`;
const TIMES = `JSON.stringify([performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0, globalThis.standing, performance.now()])`;

/** The quickest of some clicks: what else the machine does only adds. */
export async function clickTimes(): Promise<Click> {
  buildChromium();
  const folder = mkdtempSync(join(tmpdir(), 'crumbshift-click-'));
  const pages = await serveDemo();
  const run = await openChromium({ profile: join(folder, 'profile') });
  try {
    const never = Number.POSITIVE_INFINITY;
    const best: Click = { empty: never, standing: never, figures: never };
    for (let round = 0; round < ROUNDS; round += 1) {
      const page = await run.context.newPage();
      await page.goto(`${pages.origin}/${LOAF}`);
      const [empty = 0, standing = never, figures = never] = JSON.parse(
        await run.inRealPopup<string>(page, TIMES, LOOK),
      );
      if (empty > 0) best.empty = Math.min(best.empty, empty);
      best.standing = Math.min(best.standing, standing);
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
