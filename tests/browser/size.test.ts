/** What the extension may weigh, compressed as it is handed out. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, it } from 'vitest';
import { buildBoth } from './drive/build.ts';
import { CHROMIUM_BUILD, FIREFOX_BUILD } from './drive/places.ts';

/** What runs in pages, bytes: a sixth of it is words of many languages. */
const MOST_READER = 30_000;
/** What the popup loads before it shows anything, bytes. */
const MOST_FIRST = 120_000;
/** All of it, bytes. */
const MOST_WHOLE = 2_000_000;

const weight = (file: string): number => gzipSync(readFileSync(file), { level: 9 }).length;

beforeAll(buildBoth);

describe.each([
  ['Chromium', CHROMIUM_BUILD],
  ['Firefox', FIREFOX_BUILD],
])('the %s build', (_, folder) => {
  it('has a light reader', () => {
    const reader = join(folder, 'reader.js');
    expect(readFileSync(reader).length).toBeGreaterThan(10_000);
    expect(weight(reader)).toBeLessThanOrEqual(MOST_READER);
  });

  it('opens its popup with little', () => {
    const html = readFileSync(join(folder, 'popup.html'), 'utf8');
    const scripts = [...html.matchAll(/(?:src|href)="(\/[^"]+\.js)"/g)].map(([, path]) => path);
    expect(scripts.length).toBeGreaterThan(2);
    const first = scripts.reduce((sum, path) => sum + weight(join(folder, path ?? '')), 0);
    expect(first).toBeGreaterThan(20_000);
    expect(first).toBeLessThanOrEqual(MOST_FIRST);
  });

  it('is no large thing to fetch', () => {
    const files = readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name));
    const whole = files.reduce((sum, file) => sum + weight(file), 0);
    expect(whole).toBeGreaterThan(500_000);
    expect(whole).toBeLessThanOrEqual(MOST_WHOLE);
  });
});
