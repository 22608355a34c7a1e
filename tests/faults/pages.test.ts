/** Pages made to break the reader: each ends in a recipe or in a sentence, and can be reworked when it is one. */
import { describe, expect, it } from 'vitest';
import { parsePage } from '../../engine/cli/light-document/parse-page.ts';
import { adaptRecipe, DEFAULT_GOALS, readPage } from '../../engine/index.ts';

const GOOD = { '@type': 'Recipe', name: 'Loaf', recipeIngredient: ['500 g flour', '300 g water'] };

const marked = (json: string): string =>
  `<script type="application/ld+json">${json.replaceAll('</', '<\\/')}</script><h1>Loaf</h1>`;
const recipe = (changes: object): string => marked(JSON.stringify({ ...GOOD, ...changes }));

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
  'four hundred lines with carbohydrate': recipe({
    recipeIngredient: Array.from(
      { length: 400 },
      (_, n) => `${n + 1} g ${n % 2 ? 'flour' : 'sugar'}`,
    ),
  }),
  nothing: '',
};

describe('a page with', () => {
  it.each(Object.entries(FAULTS))(
    '%s',
    (_, html) => {
      const read = readPage(parsePage(html));
      if (!read.ok) return expect(read.why).toMatch(/\w+ \w+/);
      for (const one of read.recipes.slice(0, 1)) {
        const { plan, before } = adaptRecipe(one, DEFAULT_GOALS);
        for (const { grams } of plan.items) expect(Number.isFinite(grams) && grams >= 0).toBe(true);
        expect(before.servings).toBeGreaterThan(0);
        expect(Number.isFinite(before.servings)).toBe(true);
      }
    },
    60_000,
  );
});
