/** What the documents name exists, and what must be named is. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';

const ROOT = join(import.meta.dirname, '..');

const read = (path: string): string => readFileSync(join(ROOT, path), 'utf8');

const pages = [
  'README.md',
  'DEVELOPERS.md',
  ...['.github', 'engine', 'extension'].flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.md'))
      .map((name) => join(folder, name)),
  ),
];

/** Paths in code spans that say where they start: 'engine/walk.ts', 'tests/pages/', '../cli.ts'; 'xx' is any language. */
const pathsIn = (page: string): string[] =>
  [...read(page).matchAll(/`((?:engine|extension|tests|\.github|\.\.)\/[\w./-]*)`/g)]
    .map(([, path = '']) => path)
    .filter((path) => !path.includes('/xx.'));

const stands = (page: string, path: string): boolean =>
  existsSync(join(ROOT, path.startsWith('..') ? dirname(page) : '.', path));

describe('the documents', () => {
  it('name no file that is not there', () => {
    expect(pages.flatMap(pathsIn).length).toBeGreaterThan(20);
    const gone = pages.flatMap((page) =>
      pathsIn(page).flatMap((path) => (stands(page, path) ? [] : [`${page}: ${path}`])),
    );
    expect(gone).toEqual([]);
  });

  it('name no command that is not there', () => {
    const { scripts } = JSON.parse(read('package.json'));
    const said = read('README.md') + read('DEVELOPERS.md');
    const commands = [...said.matchAll(/npm (?:run )?(?:--silent )?([a-z:]+)/g)].map(
      ([, name = '']) => name,
    );
    const strange = commands.filter((name) => !(name in scripts) && name !== 'ci');
    expect(strange).toEqual([]);
  });

  it('say why each dependency is there', () => {
    const { dependencies, devDependencies } = JSON.parse(read('package.json'));
    const said = read('DEVELOPERS.md');
    const unsaid = Object.keys({ ...dependencies, ...devDependencies }).filter(
      (name) => !said.includes(`\`${name}\``),
    );
    expect(unsaid).toEqual([]);
  });
});
