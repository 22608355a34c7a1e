import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { JSDOM, VirtualConsole } from 'jsdom';
import { describe, expect, it } from 'vitest';
import {
  adaptRecipe,
  DEFAULT_GOALS,
  NUTRIENTS,
  readPage,
  readText,
  traceFigures,
} from '../engine/index.ts';

const PAGES = join(import.meta.dirname, 'pages/demo');

function adaptations(page: string) {
  const html = readFileSync(join(PAGES, page), 'utf8');
  const { document } = new JSDOM(html, { virtualConsole: new VirtualConsole() }).window;
  const result = readPage(document);
  return result.ok ? result.recipes.map((recipe) => adaptRecipe(recipe, DEFAULT_GOALS)) : [];
}

describe.each(readdirSync(PAGES))('the figures of %s', (page) => {
  const all = adaptations(page);

  it.each(['before', 'after'] as const)('are the sums of their lines, %s', (which) => {
    expect(all.length).toBeGreaterThan(0);
    for (const adaptation of all) {
      const lines = traceFigures(adaptation)[which];
      for (const nutrient of NUTRIENTS) {
        const total = adaptation[which].perServing[nutrient]?.best;
        const known = lines.flatMap(({ perServing }) => perServing[nutrient]?.best ?? []);
        if (total === undefined) expect(known).toEqual([]);
        else expect(known.reduce((a, b) => a + b, 0)).toBeCloseTo(total, 6);
      }
    }
  });

  it('name a food and a source for every line', () => {
    for (const adaptation of all) {
      const { before, after } = traceFigures(adaptation);
      for (const { food, per100g } of [...before, ...after]) {
        expect(food.source.id ?? food.source.note ?? food.source.kind).not.toBe('');
        expect(Object.keys(per100g).sort()).toEqual([...NUTRIENTS].sort());
      }
    }
  });
});

describe('one line', () => {
  // USDA SR Legacy 168896, wheat flour, white, bread: carbohydrate 72.53, fibre 2.4 per 100 g.
  it('brings grams times the figure of 100 g, by hand', () => {
    const read = readText('Loaf\n\n500 g bread flour\n370 g water\n10 g salt\n\nServes 10');
    const recipe = read.ok ? read.recipes[0] : undefined;
    if (!recipe) throw new Error('not read');
    const adaptation = adaptRecipe(recipe, { ...DEFAULT_GOALS, servings: 10 });
    const flour = traceFigures(adaptation).before.find(({ text }) => text.includes('flour'));
    expect(flour?.food.source).toMatchObject({ kind: 'SR', id: '168896' });
    expect(flour?.grams.best).toBe(500);
    expect(flour?.per100g.carbohydrateG?.best).toBeCloseTo(72.53, 2);
    expect(flour?.perServing.carbohydrateG?.best).toBeCloseTo((72.53 * 500) / 100 / 10, 3);
  });
});
