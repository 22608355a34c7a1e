/**
 * No room left, by the browsers' own errors: a full disk under Chromium where one can be made, and a small quota
 * set in Firefox. What was kept stays, and the user is told that the rest was not.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { openDriven } from '../drive/both.ts';
import { isRoot } from '../drive/browsers.ts';
import { buildBoth } from '../drive/build.ts';
import { removeFolder } from '../drive/remove-folder.ts';
import { type Served, serveDemo } from '../drive/server.ts';
import { emptied, keep, keepAndWait, keptTitles, popupOn, told, type World } from './acts.ts';

let folder: string;
let pages: Served;
let world: World | null = null;

const mounted = (): boolean =>
  spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=80m', 'tmpfs', folder]).status === 0;

beforeAll(buildBoth);

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'crumbshift-full-'));
  pages = await serveDemo();
});

afterEach(async () => {
  await world?.driven.close();
  world = null;
  await pages.close();
  spawnSync('umount', ['-l', folder], { stdio: 'ignore' });
  removeFolder(folder);
});

async function withOneKept(
  engine: 'chromium' | 'firefox',
  settings: Record<string, number> = {},
): Promise<World> {
  const driven = await openDriven(engine, { profile: folder, settings });
  world = { driven, origin: pages.origin };
  await emptied(world);
  await popupOn(world, 'lemon-cake.html');
  await keepAndWait(world);
  return world;
}

async function refusesAnother(now: World): Promise<void> {
  await keep(now);
  await told(now, 'no room left');
}

it('a full disk under Chromium', async (context) => {
  if (!isRoot() || process.platform !== 'linux' || !mounted()) return context.skip();
  const now = await withOneKept('chromium');
  await popupOn(now, 'porch-cookies.html');
  try {
    writeFileSync(join(folder, 'filler'), Buffer.alloc(200_000_000, 1));
  } catch (error) {
    expect((error as { code: string }).code).toBe('ENOSPC');
  }
  await refusesAnother(now);
  rmSync(join(folder, 'filler'));
  expect(await keptTitles(now, 1)).toHaveLength(1);
  await keepAndWait(now);
  expect(await keptTitles(now, 2)).toHaveLength(2);
});

/** Fills what the quota leaves, down to pieces smaller than any recipe; gives the last refusal's name. */
const FILL = `
  const opened = () => new Promise((done, failed) => {
    const opening = indexedDB.open('filler', 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore('filler', { autoIncrement: true });
    opening.onsuccess = () => done(opening.result);
    opening.onerror = () => failed(opening.error);
  });
  const put = (db, size) => new Promise((done) => {
    const change = db.transaction('filler', 'readwrite');
    const bytes = new Uint8Array(size);
    for (let at = 0; at < size; at += 65536) crypto.getRandomValues(bytes.subarray(at, at + 65536));
    change.objectStore('filler').put(bytes);
    change.oncomplete = () => done('');
    change.onabort = () => done(change.error?.name ?? 'aborted');
  });
  let last = '';
  for (let size = 4_000_000; size > 500; size = Math.round(size / 4))
    for (let round = 0; round < 40; round += 1) {
      // A refusal may close the database as well.
      const db = await opened();
      last = await put(db, size);
      db.close();
      if (last !== '') break;
    }
  return last;
`;

it('a quota used up in Firefox', async () => {
  const now = await withOneKept('firefox', {
    'dom.quotaManager.temporaryStorage.fixedLimit': 20_480,
  });
  await popupOn(now, 'porch-cookies.html');
  expect(await now.driven.evaluate(FILL)).toBe('QuotaExceededError');
  await refusesAnother(now);
  expect(await keptTitles(now, 1)).toHaveLength(1);
});
