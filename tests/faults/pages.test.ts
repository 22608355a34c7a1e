/** Pages made to break the reader: each ends in a recipe or in a sentence, and can be reworked when it is one. */
import { describe, expect, it } from 'vitest';
import { parsePage } from '../../engine/cli/light-document/parse-page.ts';
import { adaptRecipe, DEFAULT_GOALS, readPage } from '../../engine/index.ts';
import { leastMs } from './growth.ts';

const GOOD = { '@type': 'Recipe', name: 'Loaf', recipeIngredient: ['500 g flour', '300 g water'] };

const marked = (json: string): string =>
  `<script type="application/ld+json">${json.replaceAll('</', '<\\/')}</script><h1>Loaf</h1>`;
const recipe = (changes: object): string => marked(JSON.stringify({ ...GOOD, ...changes }));

const FOODS = ['flour', 'sugar', 'honey', 'oats', 'rice', 'milk', 'cornstarch'];
const carbLines = (count: number): string[] =>
  Array.from({ length: count }, (_, n) => `${n + 1} g ${FOODS[n % FOODS.length]}`);

const FAULTS: Record<string, string> = {
  'elements 20,000 deep': `${'<div>'.repeat(20_000)}<h1>Loaf</h1>`,
  'JSON 20,000 deep': marked(`${'['.repeat(20_000)}${']'.repeat(20_000)}`),
  'a list within itself by reference': marked(
    '{"@graph":[{"@id":"#a","@type":"Recipe","name":"Loaf","recipeIngredient":{"@id":"#a"}}]}',
  ),
  'prototype keys': marked(
    `{"__proto__":{"name":"x"},"constructor":7,${JSON.stringify(GOOD).slice(1)}`,
  ),
  'an ingredient named as a built-in key': recipe({
    recipeIngredient: ['1 cup constructor', '2 g __proto__'],
  }),
  'no servings at all': recipe({ recipeYield: 0 }),
  'servings below nothing': recipe({ recipeYield: '-4 servings' }),
  'servings without end': recipe({ recipeYield: '1e308 servings' }),
  'servings in a thousand digits': recipe({ recipeYield: '9'.repeat(1000) }),
  'an amount without end': recipe({
    recipeIngredient: [`${'9'.repeat(400)} g flour`, '300 g water'],
  }),
  'impossible nutrition': recipe({
    nutrition: { calories: '-1e999 kcal', carbohydrateContent: 'NaN g' },
  }),
  'times that are none': recipe({ cookTime: 'P9999999999Y', prepTime: 'PT-1M', totalTime: 7 }),
  'lone surrogates': recipe({ name: '\ud800Loaf\udfff', recipeIngredient: ['500 g \ud83c flour'] }),
  'text from right to left': recipe({
    name: '\u202eLoaf',
    recipeIngredient: ['500 g \u202eflour\u202c'],
  }),
  'values of wrong types': recipe({
    name: 7,
    recipeIngredient: { a: [null, 3, true] },
    recipeInstructions: 9,
  }),
  'a hundred thousand lines': recipe({ recipeIngredient: Array(100_000).fill('1 g flour') }),
  'four hundred lines with carbohydrate': recipe({ recipeIngredient: carbLines(400) }),
  'twenty lines with carbohydrate': recipe({ recipeIngredient: carbLines(20) }),
  'a hundred lines with carbohydrate': recipe({ recipeIngredient: carbLines(100) }),
  'references that fan out to thousands': marked(
    JSON.stringify({
      '@graph': Array.from({ length: 60 }, (_, n) => ({
        '@id': `#${n}`,
        ...(n === 0 ? GOOD : {}),
        hasPart: Array.from({ length: 60 }, (_, to) => ({ '@id': `#${to}` })),
      })),
    }),
  ),
  'steps within steps, 5,000 deep': marked(
    `{"@type":"Recipe","name":"Loaf","recipeIngredient":["500 g flour","300 g water"],"recipeInstructions":${'{"itemListElement":['.repeat(5000)}{"text":"Mix."}${']}'.repeat(5000)}}`,
  ),
  'twenty thousand steps': recipe({ recipeInstructions: Array(20_000).fill('Mix the flour.') }),
  'a style attribute of a million rules': `<div style="${'color:red;'.repeat(1_000_000)}">x</div>${recipe({})}`,
  'an attribute for every letter': `<div ${Array.from({ length: 50_000 }, (_, n) => `a${n}=1`).join(' ')}>x</div>${recipe({})}`,
  'markup cut off in the middle': recipe({}).slice(0, 90),
  'two recipes of one name': recipe({}) + recipe({ recipeIngredient: ['1 g salt', '2 g sugar'] }),
  'amounts of nothing and below': recipe({
    recipeIngredient: ['0 g flour', '-200 g sugar', '1/0 cup milk', '300 g water'],
  }),
  nothing: '',
};

/** What may not be dropped in silence. */
const CUT: Record<string, [html: string, code: string]> = {
  'a hundred thousand lines': [
    recipe({ recipeIngredient: Array(100_000).fill('1 g flour') }),
    'lines-cut',
  ],
  'a list of 250 lines': [
    `<h1>Loaf</h1><h2>Ingredients</h2><ul>${carbLines(250)
      .map((line) => `<li>${line}`)
      .join('')}</ul><h2>Method</h2><ol><li>Mix it all.<li>Bake it.</ol>`,
    'lines-cut',
  ],
  'twenty thousand steps': [
    recipe({ recipeInstructions: Array.from({ length: 20_000 }, (_, n) => `Fold it ${n} times.`) }),
    'steps-cut',
  ],
};

describe('a page is said to be cut with', () => {
  it.each(Object.entries(CUT))('%s', (_, [html, code]) => {
    const read = readPage(parsePage(html));
    if (!read.ok) throw new Error(read.why);
    expect(read.recipes[0]?.notes.map((note) => note.code)).toContain(code);
  });

  it('ten lines is not', () => {
    const read = readPage(parsePage(recipe({ recipeIngredient: carbLines(10) })));
    if (!read.ok) throw new Error(read.why);
    expect(read.recipes[0]?.notes.map((note) => note.code)).not.toContain('lines-cut');
  });
});

/** Processor time in which any page ends, ms. Own choice: a user has gone by then. */
const MOST_MS = 10_000;

function readAndRework(html: string): void {
  const read = readPage(parsePage(html));
  if (!read.ok) expect(read.why).toMatch(/\w+ \w+/);
  for (const one of read.ok ? read.recipes.slice(0, 1) : []) {
    const { plan, before } = adaptRecipe(one, DEFAULT_GOALS);
    for (const { grams } of plan.items) expect(Number.isFinite(grams) && grams >= 0).toBe(true);
    expect(before.servings).toBeGreaterThan(0);
    expect(Number.isFinite(before.servings)).toBe(true);
  }
}

describe('a page with', () => {
  it.each(Object.entries(FAULTS))(
    '%s',
    (_, html) => {
      expect(leastMs(() => readAndRework(html), MOST_MS, 2)).toBeLessThan(MOST_MS);
    },
    180_000,
  );
});
