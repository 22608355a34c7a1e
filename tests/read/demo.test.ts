import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Recipe } from '../../engine/model.ts';
import { readPage } from '../../engine/read/index.ts';
import { documentOf } from './page-file.ts';

/** Markup, lines, steps, servings, counted by hand in the page files. */
const DEMO: Record<string, [string, number, number, number | null][]> = {
  'blueberry-muffins.html': [['microdata', 9, 5, null]],
  'breaded-cutlets.html': [['json-ld', 7, 4, 4]],
  'chicken-and-sauce.html': [
    ['json-ld', 7, 5, 4],
    ['json-ld', 7, 3, 4],
  ],
  'corn-chowder.html': [['json-ld', 11, 5, 6]],
  'griddle-pancakes.html': [['json-ld', 8, 4, 4]],
  'hearth-loaf.html': [['json-ld', 4, 7, 12]],
  'lemon-cake.html': [['json-ld', 8, 5, null]],
  'milk-rolls.html': [['json-ld', 12, 7, 12]],
  'onion-tart.html': [['rdfa', 8, 4, 8]],
  'porch-cookies.html': [['page-text', 10, 6, null]],
  'potato-bake.html': [['page-text', 7, 4, 6]],
  'rice-pudding.html': [['h-recipe', 6, 3, 6]],
  'skillet-flatbreads.html': [['json-ld', 6, 4, null]],
  'weeknight-pasta.html': [['json-ld', 10, 4, 4]],
};

describe('demo pages', () => {
  it.each(Object.entries(DEMO))('%s is read whole', (file, expected) => {
    const result = readPage(documentOf(`demo/${file}`));
    if (!result.ok) throw new Error(result.why);
    for (const recipe of result.recipes) expect(Recipe.parse(recipe)).toEqual(recipe);
    expect(
      result.recipes.map((recipe) => [
        recipe.markup,
        recipe.groups.flatMap((group) => group.lines).length,
        recipe.steps.length,
        recipe.yield.servings?.low ?? null,
      ]),
    ).toEqual(expected);
    expect(result.recipes[0]?.url).toMatch(/^https:\/\/millrace-kitchen\.example\//);
    expect(result.recipes[0]?.language).toBe('en');
  });

  it('covers every demo page', () => {
    const files = readdirSync(new URL('../pages/demo', import.meta.url));
    expect(files.sort()).toEqual(Object.keys(DEMO).sort());
  });

  it('puts the dish the page is about before its sauce', () => {
    const result = readPage(documentOf('demo/chicken-and-sauce.html'));
    expect(result.ok && result.recipes.map((recipe) => recipe.title)).toEqual([
      'Sesame Chicken Rice Bowl',
      'Sticky Ginger Sauce',
    ]);
  });

  it('wins the groups back from the page', () => {
    const result = readPage(documentOf('demo/lemon-cake.html'));
    expect(
      result.ok && result.recipes[0]?.groups.map((group) => [group.title, group.lines.length]),
    ).toEqual([
      ['For the cake', 6],
      ['For the drizzle', 2],
    ]);
  });

  it('does not change the page', () => {
    const document = documentOf('demo/milk-rolls.html');
    const before = document.documentElement.outerHTML;
    readPage(document);
    expect(document.documentElement.outerHTML).toBe(before);
  });
});

describe('pages without a recipe', () => {
  const files = readdirSync(new URL('../pages/no-recipe', import.meta.url));
  it.each(files)('%s gives none', (file) => {
    const result = readPage(documentOf(`no-recipe/${file}`));
    expect(result.ok).toBe(false);
  });
});
