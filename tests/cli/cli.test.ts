import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { readOwnFoods } from '../../engine/cli/own-foods-file.ts';

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

/** An invented European label: 4 x 10 + 9 x 2 + 4 x 50 + 2 x 20 = 298 kcal. */
const EU_LABEL =
  '{"name":"Bran mix","form":"eu","energyKcal":298,"fatG":2,"carbohydrateG":50,"fiberG":20,"proteinG":10}';

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

  it('says why in the language of the page', () => {
    const page = join(folder, 'kuchen.html');
    const recipe = {
      '@context': 'https://schema.org',
      '@type': 'Recipe',
      name: 'Rührkuchen',
      inLanguage: 'de',
      recipeYield: '8 Stück',
      recipeIngredient: ['250 g Weizenmehl', '200 g Zucker', '200 g Butter', '4 Eier'],
      recipeInstructions: [
        'Butter und Zucker schaumig rühren.',
        'Eier und Mehl unterrühren und 40 Minuten backen.',
      ],
    };
    const data = JSON.stringify(recipe);
    writeFileSync(
      page,
      `<html lang="de"><script type="application/ld+json">${data}</script><h1>Rührkuchen</h1></html>`,
    );
    const [record] = records(run(['adapt', page, '--json']).stdout);
    const whys = record.swaps.map(({ why }: { why: string }) => why).join(' ');
    expect(whys).toMatch(/Netto-Kohlenhydrate aus dieser Zutat sinken/);
    expect(whys).not.toMatch(/Net carbs/);
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

  it('prints the same plans in the same order, to the letter, however many at a time', () => {
    const pages = readdirSync(join(ROOT, 'tests/pages/demo'))
      .filter((name) => name.endsWith('.html'))
      .slice(0, 5)
      .map((name) => `tests/pages/demo/${name}`);
    const args = ['adapt', ...pages, NEWS, '--json', '--budget', '15'];
    const one = run([...args, '--jobs', '1']).stdout;
    expect(records(one).map(({ file }) => file)).toEqual([...pages, NEWS]);
    expect(run([...args, '--jobs', '3']).stdout).toBe(one);
  }, 60_000);

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

  it('tells what a line may mean besides, and amounts that differ', () => {
    const lines = '200 g chocolate\n200 g (1/2 cup) flour\n1 cup simple syrup (recipe follows)\n';
    const [chocolate, flour, syrup] = records(run(['lines', '--json'], lines).stdout);
    const others = chocolate.others.map(({ id }: { id: string }) => id);
    expect(others).toContain('chocolate-unsweetened');
    expect(flour.notes.join(' ')).toMatch(/amounts differ: 200 g taken, .* 63 g/);
    expect(syrup.food.id).toBe('simple-syrup');
  });

  it('takes lines in other languages', () => {
    const [flour] = records(run(['lines', '--json'], '2 EL Mehl\n').stdout);
    expect(flour.amounts).toEqual([{ quantity: 2, max: null, unit: 'tbsp' }]);
    expect(flour.food.id).toBe('all-purpose-flour');
  });

  it('works out the curve of closeness only when asked', () => {
    const [plain] = records(run(['adapt', LOAF, '--json']).stdout);
    expect(plain.frontier).toBeNull();
    const [curve] = records(run(['adapt', LOAF, '--json', '--frontier']).stdout);
    expect(curve.frontier.length).toBeGreaterThan(2);
    expect({ ...curve, frontier: null }).toEqual(plain);
  });

  it('honours the allergens to avoid', () => {
    const { stdout } = run(['adapt', LOAF, '--json', '--avoid', 'egg,nuts,milk']);
    const [record] = records(stdout);
    for (const allergen of ['egg', 'tree nuts', 'milk']) {
      expect(record.allergensAdded).not.toContain(allergen);
    }
  });

  it("reckons with the user's own packages", () => {
    // Flour of 40 g carbohydrate and 30 g fibre a 100 g on a European label: 40 g net instead of 70.
    const path = join(folder, 'own.json');
    const flour = {
      name: 'Invented mill loaf flour',
      form: 'eu',
      energyKcal: 320,
      fatG: 2,
      carbohydrateG: 40,
      fiberG: 30,
      proteinG: 20,
      standsInFor: 'bread-flour',
      allergens: ['wheat', 'gluten'],
      glutenAmongFirst: true,
    };
    writeFileSync(path, JSON.stringify([flour]));
    const [own] = records(run(['tally', LOAF, '--json', '--own-foods', path]).stdout);
    const line = own.lines.find(({ food }: { food: string }) => food === 'bread-flour');
    expect(line.netCarbsG).toBeCloseTo((line.grams * 0.4) / own.servings, 1);
    const [adapted] = records(run(['adapt', LOAF, '--json', '--own-foods', path]).stdout);
    expect(adapted.before.netCarbsG).toBe(own.perServing.netCarbsG);
  });

  it.each([
    ['broken JSON', '[{"name":', 'cannot be read as JSON'],
    ['no list', '{"name":"x"}', 'must hold a list of package labels'],
    ['no label', '[7]', 'label 1: is no label'],
    ['a misspelt key', '[{"name":"Bran mix","carbs":3}]', "label 1 ('Bran mix'): does not know"],
    ['a lacking figure', '[{"name":"Bran mix","form":"eu"}]', 'cannot be read: energyKcal'],
    ['a label twice', `[${EU_LABEL},${EU_LABEL}]`, 'the same food as label 1'],
  ])('tells what is wrong with own foods: %s', (_, content, message) => {
    const path = join(folder, 'damaged.json');
    writeFileSync(path, content);
    expect(() => readOwnFoods(path)).toThrow(`${path}: `);
    expect(() => readOwnFoods(path)).toThrow(message);
  });

  it('takes what a label leaves out as unknown', () => {
    const path = join(folder, 'short.json');
    writeFileSync(path, `[${EU_LABEL}]`);
    const { foods } = readOwnFoods(path);
    expect(foods[0]?.per100g).toMatchObject({ carbohydrateG: 50, sugarsG: null, sodiumMg: null });
    expect(readOwnFoods(null).foods).toEqual([]);
  });

  it('ends with status 2 and no answer when own foods cannot be read', () => {
    const path = join(folder, 'missing.json');
    const { status, stdout, stderr } = run(['tally', LOAF, '--own-foods', path]);
    expect(status).toBe(2);
    expect(stdout).toBe('');
    expect(stderr).toContain('missing.json: cannot be read');
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

  it('answers wrong usage with status 2 and the usage', () => {
    const { status, stdout, stderr } = run(['bake', LOAF]);
    expect(status).toBe(2);
    expect(stdout).toBe('');
    expect(stderr).toContain('usage:');
  });
});
