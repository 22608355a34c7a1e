import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const ROOT = join(import.meta.dirname, '../..');
const LOAF = 'tests/pages/demo/hearth-loaf.html';
const NEWS = 'tests/pages/no-recipe/news.html';
const folder = mkdtempSync(join(tmpdir(), 'crumbshift-cli-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function run(args: readonly string[], input = '') {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', 'tsx', 'engine/cli.ts', ...args],
    { cwd: ROOT, input, encoding: 'utf8' },
  );
  return { status, stdout, stderr };
}

const records = (stdout: string) =>
  stdout
    .split('\n')
    .filter(Boolean)
    .map((line) => JSON.parse(line));

describe('command line', () => {
  it('reads a page into one JSON line', () => {
    const { status, stdout } = run(['read', LOAF, '--json']);
    expect(status).toBe(0);
    const [record] = records(stdout);
    expect(record.file).toBe(LOAF);
    expect(record.servings).toBe(12);
    expect(record.ingredients).toHaveLength(4);
    expect(record.markup).toBe('json-ld');
  });

  it('goes on after a file that fails, and says so in its status', () => {
    const { status, stdout } = run(['tally', 'no/such/page.html', NEWS, LOAF, '--json']);
    expect(status).toBe(1);
    const all = records(stdout);
    expect(all.map((record) => typeof record.error)).toEqual(['string', 'string', 'undefined']);
  });

  it('takes file names from a list and from standard input', () => {
    const list = join(folder, 'pages.txt');
    writeFileSync(list, `${LOAF}\n\n${LOAF}\n`);
    expect(records(run(['read', '--files-from', list, '--json']).stdout)).toHaveLength(2);
    expect(records(run(['read', '--files-from', '-', '--json'], `${LOAF}\n`).stdout)).toHaveLength(
      1,
    );
  });

  it('prints the same plan twice, to the letter', () => {
    const args = ['adapt', LOAF, '--json', '--budget', '15'];
    expect(run(args).stdout).toBe(run(args).stdout);
  });

  it('weighs ingredient lines', () => {
    const { stdout } = run(
      ['lines', '--json'],
      '1 3/4 cups (210 g) all-purpose flour, sifted\n2 eggs\n',
    );
    const [flour, eggs] = records(stdout);
    expect(flour.amounts[0]).toEqual({ quantity: 1.75, max: null, unit: 'cup' });
    expect(flour.food.id).toBe('all-purpose-flour');
    expect(flour.grams.best).toBe(210);
    expect(eggs.amounts).toEqual([{ quantity: 2, max: null, unit: null }]);
    expect(eggs.grams.best).toBe(100);
  });

  it('takes lines in other languages', () => {
    const [flour] = records(run(['lines', '--json'], '2 EL Mehl\n').stdout);
    expect(flour.amounts).toEqual([{ quantity: 2, max: null, unit: 'tbsp' }]);
    expect(flour.food.id).toBe('all-purpose-flour');
  });

  it('honours the allergens to avoid', () => {
    const { stdout } = run(['adapt', LOAF, '--json', '--avoid', 'egg,nuts,milk']);
    const [record] = records(stdout);
    for (const allergen of ['egg', 'tree nuts', 'milk']) {
      expect(record.allergensAdded).not.toContain(allergen);
    }
  });

  it('ends quietly when its reader has seen enough', () => {
    const pages = Array(40).fill(LOAF).join(' ');
    const { status, stderr } = spawnSync(
      'sh',
      ['-c', `"${process.execPath}" --import tsx engine/cli.ts read --json ${pages} | head -c 10`],
      { cwd: ROOT, encoding: 'utf8' },
    );
    expect(status).toBe(0);
    expect(stderr).toBe('');
  });

  it.each([
    [[]],
    [['bake', LOAF]],
    [['read']],
    [['read', LOAF, '--files-from', '-']],
    [['lines', LOAF]],
    [['adapt', LOAF, '--budget', 'little']],
    [['adapt', LOAF, '--servings', '0']],
    [['adapt', LOAF, '--net-carbs', 'mars']],
    [['adapt', LOAF, '--avoid', 'gravel']],
    [['adapt', LOAF, '--colour', 'red']],
  ])('answers wrong usage %j with status 2 and the usage', (args) => {
    const { status, stderr } = run(args);
    expect(status).toBe(2);
    expect(stderr).toContain('usage:');
  });
});
