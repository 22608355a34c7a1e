import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { beforeAll, expect, it } from 'vitest';
import { buildBoth } from './drive/build.ts';
import { CHROMIUM_BUILD, FIREFOX_BUILD } from './drive/places.ts';

/** What the script that runs in pages may weigh, compressed, bytes: a sixth of it is words of many languages. */
const MOST = 30_000;

beforeAll(buildBoth);

it.each([
  ['Chromium', CHROMIUM_BUILD],
  ['Firefox', FIREFOX_BUILD],
])('the reader of the %s build is a light script', (_, folder) => {
  const reader = readFileSync(join(folder, 'reader.js'));
  expect(reader.length).toBeGreaterThan(10_000);
  expect(gzipSync(reader, { level: 9 }).length).toBeLessThanOrEqual(MOST);
});
