/** The tree stays one in which a file is found by its name. */
import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';

const ROOT = join(import.meta.dirname, '..');

/** Files on one level of a folder, at most: own choice. */
const MOST_FILES = 16;

/** Folders still too full, with the files they hold today: such a folder may only shrink. */
const FULL: Record<string, number> = {
  'engine/foods/data': 24,
  'engine/plan/dish': 17,
  'engine/plan/model': 17,
  'extension/store': 20,
};

/** Names of several files with different jobs, still to be told apart. */
const SHARED_NAMES = ['verdict'];

/** Folders of the engine whose page is still to be written. */
const UNDESCRIBED: string[] = [];

/** The door of a folder, its description, and what starts a page of the extension. */
const ONE_JOB = ['index', 'README', 'main'];

const filesIn = (folder: string): string[] =>
  readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(ROOT.length + 1));

/** Pages to read are a corpus, not source. */
const files = ['engine', 'extension', 'tests']
  .flatMap(filesIn)
  .filter((file) => !file.startsWith('tests/pages/'));

const groupedBy = (list: readonly string[], keyOf: (file: string) => string) => {
  const groups = new Map<string, string[]>();
  for (const file of list) groups.set(keyOf(file), [...(groups.get(keyOf(file)) ?? []), file]);
  return groups;
};

const linesOf = (file: string): number =>
  readFileSync(join(ROOT, file), 'utf8').trimEnd().split('\n').length;

const stem = (file: string): string => basename(file).replace(/\..*$/, '');

describe('the tree', () => {
  it('is found', () => {
    expect(files.length).toBeGreaterThan(300);
  });

  it(`has no folder with more than ${MOST_FILES} files on a level`, () => {
    const sizes = [...groupedBy(files, dirname)].map(
      ([folder, list]) => [folder, list.length] as const,
    );
    const full = sizes.filter(([folder, count]) => count > (FULL[folder] ?? MOST_FILES));
    expect(full).toEqual([]);
  });

  it('has no two source files of one name', () => {
    const source = files.filter((file) => /^(engine|extension)\/.*\.tsx?$/.test(file));
    const shared = [...groupedBy(source, stem)].filter(
      ([name, list]) => list.length > 1 && !ONE_JOB.includes(name) && !SHARED_NAMES.includes(name),
    );
    expect(shared).toEqual([]);
  });

  it('describes every folder of the engine on a page of at most 40 lines', () => {
    const folders = readdirSync(join(ROOT, 'engine'), { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && !UNDESCRIBED.includes(entry.name))
      .map((entry) => join('engine', entry.name, 'README.md'));
    expect(folders.filter((page) => !files.includes(page))).toEqual([]);
    const long = folders.filter((page) => linesOf(page) > 40);
    expect(long).toEqual([]);
  });
});
