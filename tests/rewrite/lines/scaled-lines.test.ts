import { readdirSync, readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import { DEFAULT_GOALS, type Ingredient, type Recipe } from '../../../engine/model.ts';
import { readPage, readText } from '../../../engine/read/index.ts';
import { type Pan, panFactor } from '../../../engine/rewrite/lines/pans.ts';
import type { System } from '../../../engine/rewrite/lines/scaled-amounts.ts';
import { type ScaledLine, scaledLines } from '../../../engine/rewrite/lines/scaled-lines.ts';
import { adaptRecipe, weighRecipe } from '../../../engine/walk.ts';
import { PASTED, textOf } from '../../plan/pasted.ts';
import { foods, makeRecipe, understand } from '../fixtures.ts';

const PAGES = new URL('../../pages/demo/', import.meta.url);

const demo: Recipe[] = readdirSync(PAGES).flatMap((file) => {
  const page = readFileSync(new URL(file, PAGES), 'utf8');
  const result = readPage(new JSDOM(page).window.document);
  return result.ok ? result.recipes : [];
});
const pasted: Recipe[] = PASTED.flatMap((one) => {
  const read = readText(textOf(one));
  return read.ok ? read.recipes : [];
});

/** Lines made of an amount, a food and what may follow it. */
const generated = fc
  .tuple(
    fc.oneof(
      fc.tuple(fc.integer({ min: 1, max: 900 }), fc.constantFrom(' g', 'g', ' ml', ' kg')),
      fc.tuple(
        fc.constantFrom('1', '2', '1/2', '1 1/2', '3/4', '2 1/4'),
        fc.constantFrom(' cups', ' tbsp', ' tsp', ' oz', ' lb'),
      ),
    ),
    fc.constantFrom(
      'bread flour',
      'plain flour',
      'caster sugar',
      'brown sugar, packed',
      'butter, softened',
      'whole milk',
      'heavy cream',
      'olive oil',
      'honey',
      'rolled oats',
      'cocoa powder',
      'ground almonds',
      'grated parmesan',
      'cooked white rice',
      'onions, chopped',
      'carrots, grated',
      'strawberries, sliced',
      'xanthan gum',
      'fine salt',
      'baking powder',
      'chicken breast',
      'potatoes, peeled',
    ),
  )
  .map(([[amount, unit], food]) => `${amount}${unit} ${food}`);

/** The food and grams that a scaled text is read as. */
function readAgain(row: ScaledLine, like: Recipe) {
  const groups = [{ title: row.group, lines: [row.text] }];
  const read = weighRecipe({ ...like, groups });
  return { foodId: read[0]?.match?.foodId, grams: read[0]?.weight?.grams.best ?? null };
}

/** Half of the last digit a line prints: 1 g from 20 g, 0.1 g from 1 g, 0.01 g below. */
const halfDigit = (grams: number): number => (grams >= 20 ? 0.5 : grams >= 1 ? 0.05 : 0.005);

/** Most that a printed line may be off the exact grams, g. */
function bound(foodId: string, exact: number): number {
  if (/^egg($|-white$|-yolk$)/.test(foodId)) return Math.max(0.5, 0.053 * exact);
  const teaspoon = foods.byId(foodId)?.measures.find(({ unit }) => unit === 'tsp')?.grams ?? 0;
  const gum = /xanthan|guar|psyllium|glucomannan|gelatin/.test(foodId);
  const spoon = gum ? teaspoon / 8 : 0;
  return Math.max(halfDigit(exact), spoon) * 1.0001;
}

function check(ingredients: readonly Ingredient[], recipe: Recipe, factor: number, system: System) {
  const rows = scaledLines(ingredients, factor, system);
  let weighed = 0;
  for (const row of rows) {
    if (row.grams === null) continue;
    weighed += 1;
    const own = ingredients.find(({ key }) => key === row.key);
    const exact = (own?.weight?.grams.best ?? 0) * factor;
    const said = `${own?.line.text} x ${factor} -> ${row.text}`;
    expect(Math.abs(row.grams - exact), said).toBeLessThanOrEqual(
      bound(own?.match?.foodId ?? '', exact),
    );
    const again = readAgain(row, recipe);
    expect(again.grams, said).toBeCloseTo(row.grams, 6);
    expect(again.foodId, said).toBe(own?.match?.foodId);
  }
  return weighed;
}

const FACTORS = fc.double({ min: 0.1, max: 20, noNaN: true });
const SYSTEMS = fc.constantFrom<System>('metric', 'us');

describe('scaled lines read again', () => {
  it.each([...demo, ...pasted].map((recipe) => [recipe.title, recipe] as const))(
    '%s',
    (_, recipe) => {
      const ingredients = weighRecipe(recipe);
      fc.assert(
        fc.property(FACTORS, SYSTEMS, (factor, system) => {
          check(ingredients, recipe, factor, system);
        }),
        { numRuns: 8, seed: 7 },
      );
      expect(check(ingredients, recipe, 2, 'metric')).toBeGreaterThan(0);
    },
  );

  it('generated lines', () => {
    fc.assert(
      fc.property(generated, FACTORS, SYSTEMS, (text, factor, system) => {
        const recipe = makeRecipe('Any', [text], []);
        expect(check(understand(recipe), recipe, factor, system), text).toBe(1);
      }),
      { numRuns: 600 },
    );
  });

  it('the reworked lines of every demo page', () => {
    for (const recipe of demo) {
      const adaptation = adaptRecipe(recipe, { ...DEFAULT_GOALS, budgetG: 10 });
      for (const system of ['metric', 'us'] as const)
        for (const factor of [1, 0.5, 3]) {
          const rows = scaledLines(adaptation, factor, system);
          for (const row of rows) {
            if (row.grams === null) continue;
            expect(readAgain(row, recipe).grams, row.text).toBeCloseTo(row.grams, 6);
          }
          const [lineKey, foodId] = (rows[0]?.key ?? '').split('>');
          expect(lineKey, foodId).toBeDefined();
        }
    }
  });
});

const LINES = new URL('../../parse/lines/', import.meta.url);

/** Lines of many cooks and languages that were checked by hand. */
const foreign = readdirSync(LINES)
  .filter((file) => /^(de|en|es|fr|it|nl|pt|sv)\.json$/.test(file))
  .map((file) => {
    const rows = JSON.parse(readFileSync(new URL(file, LINES), 'utf8')) as [string, ...string[]][];
    return [file.slice(0, 2), rows.map(([line]) => line)] as const;
  });

describe('lines of many languages', () => {
  it.each(foreign)('%s: scaled and read again', (language, texts) => {
    const recipe = { ...makeRecipe('Any', [...texts], []), language };
    const ingredients = weighRecipe(recipe);
    let checked = 0;
    for (const [factor, system] of [
      [0.13, 'us'],
      [1, 'metric'],
      [3, 'us'],
    ] as const)
      for (const row of scaledLines(ingredients, factor, system, { language })) {
        if (row.grams === null) continue;
        checked += 1;
        const own = ingredients.find(({ key }) => key === row.key);
        const said = `${own?.line.text} x ${factor} -> ${row.text}`;
        const again = readAgain(row, recipe);
        expect(again.grams, said).toBeCloseTo(row.grams, 6);
        expect(again.foodId, said).toBe(own?.match?.foodId);
      }
    expect(checked).toBeGreaterThan(50);
  });
});

describe('how they read', () => {
  const lines = (texts: string[], factor: number, system: System): string[] =>
    scaledLines(understand(makeRecipe('Any', texts, [])), factor, system).map(({ text }) => text);

  it('weighs first in metric, with spoons or millilitres beside', () => {
    const texts = ['2 cups whole milk', '1 tbsp sugar', '2 eggs, beaten', '1 lb potatoes, diced'];
    expect(lines(texts, 1, 'metric')).toEqual([
      '488 g (475 ml) whole milk',
      '12.5 g (1 tbsp) sugar',
      '2 large eggs (100 g shelled), beaten',
      '454 g potatoes, diced',
    ]);
  });

  it('measures first in US form, with grams beside and ounces for the rest', () => {
    const texts = ['250 g plain flour', '25 g sugar', '1 kg chicken breast'];
    expect(lines(texts, 1, 'us')).toEqual([
      '2 cups (250 g) plain flour',
      '2 tbsp (25 g) sugar',
      '1000 g (2.2 lb) chicken breast',
    ]);
  });

  it('doubles counts and keeps their words', () => {
    expect(lines(['2 large onions, chopped', '3 cloves garlic'], 2, 'metric')).toEqual([
      expect.stringMatching(/^4 large onions \(\d+ g\), chopped/),
      expect.stringMatching(/^6 cloves garlic \(\d+ g\)/),
    ]);
  });

  it('leaves what has no amount as it is, and scales what has no weight in its own unit', () => {
    expect(
      lines(
        ['salt and pepper', 'oil, for frying', '2 sprigs moon herb', '2-3 packets fairy dust'],
        3,
        'us',
      ),
    ).toEqual([
      'salt and pepper',
      'oil, for frying',
      '6 sprigs moon herb (6 g)',
      '6-9 packets fairy dust',
    ]);
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('takes a factor of %d as 1', (factor) => {
    expect(lines(['100 g sugar'], factor, 'metric')).toEqual(lines(['100 g sugar'], 1, 'metric'));
  });
});

describe('pans', () => {
  const round = (across: number, unit: Pan['unit'] = 'cm'): Pan => ({
    shape: 'round',
    across,
    unit,
  });
  const square = (side: number, unit: Pan['unit'] = 'cm'): Pan => ({ shape: 'square', side, unit });

  // Geometry: areas by hand.
  it.each([
    ['a round of 20 cm to 25 cm', round(20), round(25), 1.5625],
    ['an 8 inch square to a 9 inch one', square(8, 'in'), square(9, 'in'), 81 / 64],
    ['an 8 inch round to an 8 inch square', round(8, 'in'), square(8, 'in'), 4 / Math.PI],
    ['the same pan in inches and cm', round(9, 'in'), round(22.86), 1],
    [
      'a 13 by 9 inch pan to two 8 inch rounds',
      { shape: 'rectangular', length: 13, width: 9, unit: 'in' } as Pan,
      { ...round(8, 'in'), count: 2 } as Pan,
      (2 * Math.PI * 16) / 117,
    ],
    [
      'a loaf pan by volume when both are deep',
      { shape: 'loaf', length: 23, width: 13, depth: 7, unit: 'cm' } as Pan,
      { shape: 'loaf', length: 20, width: 10, depth: 6, unit: 'cm' } as Pan,
      1200 / 2093,
    ],
  ])('%s', (_, from, to, expected) => {
    expect(panFactor(from, to)).toBeCloseTo(expected, 6);
  });

  it('is undone by the way back', () => {
    const length = fc.double({ min: 1, max: 80, noNaN: true });
    fc.assert(
      fc.property(length, length, (a, b) => {
        const there = panFactor(round(a), square(b)) ?? 0;
        const back = panFactor(square(b), round(a)) ?? 0;
        expect(there * back).toBeCloseTo(1, 9);
      }),
    );
  });

  it('knows nothing of a pan without size', () => {
    expect(panFactor(round(0), round(20))).toBeNull();
    expect(panFactor(round(Number.NaN), round(20))).toBeNull();
  });
});
