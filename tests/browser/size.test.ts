/** What the extension may weigh, compressed as it is handed out. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, it } from 'vitest';
import { foodTable } from '../../engine/foods/index.ts';
import { keysOf } from '../../engine/match/name-keys.ts';
import { buildBoth } from './drive/build.ts';
import { CHROMIUM_BUILD, FIREFOX_BUILD } from './drive/places.ts';

/** What runs in pages, bytes: a sixth of it is words of many languages. */
const MOST_READER = 30_000;
/** What the popup loads before it shows anything, bytes. */
const MOST_FIRST = 120_000;
/** What the popup's figures and the full page's list are drawn with, bytes. */
const MOST_DRAWN = 220_000;
/** All of it, bytes. */
const MOST_WHOLE = 2_000_000;

const weight = (file: string): number => gzipSync(readFileSync(file), { level: 9 }).length;

/** Scripts that a page of the build names. */
const scriptsOf = (folder: string, page: string): string[] =>
  [...readFileSync(join(folder, page), 'utf8').matchAll(/(?:src|href)="\/([^"]+\.js)"/g)].map(
    ([, path]) => join(folder, path ?? ''),
  );

/** The scripts with all that they import before they run. */
function withImports(files: readonly string[]): string[] {
  const all = new Set(files);
  for (const file of all) {
    const imports = readFileSync(file, 'utf8').matchAll(/(?:from|import) ?"\.\/([\w-]+\.js)"/g);
    for (const [, name] of imports) all.add(join(dirname(file), name ?? ''));
  }
  return [...all];
}

/** Scripts that these read in once they run. */
const laterOf = (files: readonly string[]): string[] =>
  files.flatMap((file) =>
    [...readFileSync(file, 'utf8').matchAll(/import\("\.\/([\w-]+\.js)"\)/g)].map(([, name]) =>
      join(dirname(file), name ?? ''),
    ),
  );

/** What the popup needs to show anything: its page's scripts, and what the first of them reads in at once. */
function firstOf(folder: string): string[] {
  const scripts = withImports(scriptsOf(folder, 'popup.html'));
  return withImports([...scripts, ...laterOf(scripts)]);
}

const weightOf = (files: readonly string[]): number =>
  files.reduce((sum, file) => sum + weight(file), 0);

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
    const scripts = firstOf(folder);
    expect(scripts.length).toBeGreaterThan(5);
    const first = weightOf(scripts);
    expect(first).toBeGreaterThan(20_000);
    expect(first).toBeLessThanOrEqual(MOST_FIRST);
  });

  it('draws figures and lists without what works recipes out', () => {
    const popup = firstOf(folder);
    const later = laterOf(popup);
    const figures = later
      .map((file) => withImports([...popup, file]))
      .find((files) => files.some((file) => /database/.test(file)));
    for (const files of [figures ?? [], withImports(scriptsOf(folder, 'bench.html'))]) {
      expect(weightOf(files)).toBeGreaterThan(80_000);
      expect(weightOf(files)).toBeLessThanOrEqual(MOST_DRAWN);
    }
  });

  it('starts what works recipes out without the checking of shapes, which takes longer to read than all its code', () => {
    const chunks = readdirSync(join(folder, 'chunks'));
    const solver = chunks.filter((name) => /^solver-/.test(name));
    expect(solver).toHaveLength(1);
    const all = withImports(solver.map((name) => join(folder, 'chunks', name)));
    expect(all.length).toBeGreaterThan(3);
    expect(all.filter((file) => /safeParse|ZodError/.test(readFileSync(file, 'utf8')))).toEqual([]);
  });

  it('holds the names of this very table under their keys, so that no start takes them apart', () => {
    const keys = JSON.stringify(keysOf(foodTable().foods));
    const holding = readdirSync(join(folder, 'chunks')).filter((name) =>
      readFileSync(join(folder, 'chunks', name), 'utf8').includes(keys),
    );
    expect(holding).toHaveLength(1);
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
