import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { mayHoldRecipe, readPage } from '../../../engine/read/index.ts';
import { leastMs, processorClock } from '../../faults/growth.ts';
import { documentFrom, documentOf } from '../page-file.ts';

const pagesIn = (folder: string) =>
  readdirSync(new URL(`../../pages/${folder}/`, import.meta.url))
    .filter((name) => name.endsWith('.html'))
    .map((name) => `${folder}/${name}`);

const LINES = [
  '300 g bread flour',
  '200 g water',
  '6 g fine salt',
  '7 g dry yeast',
  '1 tbsp olive oil',
];
const STEPS = ['Knead the flour and the water.', 'Bake until brown, some 40 minutes.'];
const LD = `<script type="application/ld+json">${JSON.stringify({
  '@type': 'Recipe',
  name: 'Plain rolls',
  recipeYield: '8 rolls',
  recipeIngredient: LINES,
  recipeInstructions: STEPS,
})}</script>`;
const items = (texts: readonly string[]) => texts.map((text) => `<li>${text}</li>`).join('');
const card = (first: string) =>
  `<h2>Ingredients</h2><h3>For the dough</h3><ul>${first}${items(LINES.slice(1, 2))}</ul>` +
  `<h3>For the top</h3><ul>${items(LINES.slice(2))}</ul><h2>Method</h2><ol>${items(STEPS)}</ol>`;

/** Milliseconds that the reader has. */
const TIME_BOX = 400;

describe('a recipe deep in a great deal of text', () => {
  it('is read within the time box', () => {
    const deep = `${'<div>'.repeat(60)}<p>${'Bread and crust. '.repeat(30_000)}</p><div>${card(`<li>${LINES[0]}</li>`)}</div>`;
    const document = documentFrom(`${LD}${deep}`);
    let result = readPage(document, { elapsedMs: () => 0 });
    const read = () => {
      result = readPage(document, { elapsedMs: processorClock() });
    };
    // Five times the box, for a busy machine; a look that was cut is not the last one.
    expect(leastMs(read, TIME_BOX)).toBeLessThan(5 * TIME_BOX);
    expect(result.ok && result.recipes[0]?.groups.flatMap((group) => group.lines)).toEqual(LINES);
  });
});

describe('the check that runs before a page is read', () => {
  it('says yes to marked-up recipes and to ingredient headings', () => {
    for (const path of pagesIn('demo')) expect(mayHoldRecipe(documentOf(path)), path).toBe(true);
    for (const html of [
      LD,
      '<div itemscope itemtype="https://schema.org/Recipe"></div>',
      '<div vocab="https://schema.org/" typeof="Recipe"></div>',
      '<div class="post hrecipe"></div>',
      '<h3>Zutaten für 4 Personen</h3>',
    ])
      expect(mayHoldRecipe(documentFrom(html)), html).toBe(true);
  });

  it('says no to pages without a recipe', () => {
    for (const path of pagesIn('no-recipe'))
      expect(mayHoldRecipe(documentOf(path)), path).toBe(false);
    for (const html of [
      '',
      '<h2>Recipes of the week</h2>',
      `<p>x</p><noscript>${LD}</noscript>`,
      '<script type="application/ld+json">{"@type":"Article","name":"A recipe for rest"}</script>',
    ])
      expect(mayHoldRecipe(documentFrom(html)), html).toBe(false);
  });
});
