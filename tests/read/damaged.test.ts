/** Pages that are cut, lose tags, or hold a text twice are read as far as they go, and never end in an error. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Recipe } from '../../engine/model.ts';
import { finishReading } from '../../engine/read/finish.ts';
import { gatherPage } from '../../engine/read/gather.ts';
import { readPage } from '../../engine/read/index.ts';
import { documentFrom } from './page-file.ts';

const folder = new URL('../pages/patterns/', import.meta.url);
/** Every sixth page: each shape of page is among them, and the test stays short. */
const pages = readdirSync(folder)
  .filter((file) => file.endsWith('.html'))
  .filter((_, i) => i % 6 === 0)
  .map((file) => readFileSync(new URL(file, folder), 'utf8'));

/** The same numbers from 0 to 1 every time. */
function numbers(seed: number): () => number {
  let now = seed;
  return () => {
    now = (now * 1_103_515_245 + 12_345) % 2_147_483_648;
    return now / 2_147_483_648;
  };
}

const DAMAGE: Record<string, (html: string, random: () => number) => string> = {
  'cut off': (html, random) => html.slice(0, Math.floor(random() * html.length)),
  'without some tags': (html, random) =>
    html.replace(/<\/?[a-z][^>]*>/gi, (tag) => (random() < 0.15 ? '' : tag)),
  'with empty attributes': (html, random) =>
    html.replace(/="[^"]*"/g, (value) => (random() < 0.3 ? '=""' : value)),
  'with a part twice': (html, random) => {
    const from = Math.floor(random() * html.length);
    return html.slice(0, from + Math.floor(random() * 2_000)) + html.slice(from);
  },
  'with broken markup': (html, random) =>
    html.replace(/[{}[\]":,]/g, (sign) => (random() < 0.05 ? '' : sign)),
};

describe('damaged pages', () => {
  it.each(Object.entries(DAMAGE))('%s', (_, damage) => {
    const random = numbers(7);
    let found = 0;
    for (const html of pages) {
      const gathered = gatherPage(documentFrom(damage(html, random)));
      // What was gathered is plain data: it reads the same after a way as text.
      const read = finishReading(JSON.parse(JSON.stringify(gathered)));
      if (!read.ok) continue;
      found += 1;
      for (const recipe of read.recipes) {
        expect(Recipe.parse(recipe)).toEqual(recipe);
        expect(recipe.notes.map(({ code }) => code)).not.toContain('stage-failed');
      }
    }
    expect(found).toBeGreaterThan(pages.length / 4);
  });
});

describe('an error nobody foresaw', () => {
  const SCRIPT = `<script type="application/ld+json">${JSON.stringify({
    '@type': 'Recipe',
    name: 'Oat bake',
    recipeIngredient: ['200 g oats', '2 eggs'],
    recipeInstructions: ['Mix both.', 'Bake for thirty minutes.'],
  })}</script>`;

  it('ends its own stage, is told in a note, and leaves the rest', () => {
    const document = documentFrom(
      `<!doctype html><title>Oat bake</title>${SCRIPT}<h1>Oat bake</h1>`,
    );
    Object.defineProperty(document, 'documentElement', {
      get: () => {
        throw new TypeError('Cannot read properties of undefined');
      },
    });
    const read = readPage(document);
    if (!read.ok) throw new Error(read.why);
    expect(read.recipes[0]?.groups[0]?.lines).toEqual(['200 g oats', '2 eggs']);
    const failed = read.recipes[0]?.notes.find(({ code }) => code === 'stage-failed');
    expect(failed?.text).toContain('copying the page');
  });

  it('in one element leaves out that element only', () => {
    const document = documentFrom(
      `<!doctype html><title>Oat bake</title><h1>Oat bake</h1><p id="odd">odd</p><h2>Ingredients</h2>
       <ul><li>200 g oats</li><li>2 eggs</li></ul><h2>Method</h2><ol><li>Mix the oats and the eggs.</li><li>Bake for an hour.</li></ol>`,
    );
    const odd = document.getElementById('odd') as HTMLElement;
    odd.getAttributeNames = () => {
      throw new TypeError('Cannot read properties of undefined');
    };
    const read = readPage(document);
    if (!read.ok) throw new Error(read.why);
    expect(read.recipes[0]?.groups[0]?.lines).toEqual(['200 g oats', '2 eggs']);
    expect(read.recipes[0]?.steps).toHaveLength(2);
    expect(read.recipes[0]?.notes.map(({ code }) => code)).toContain('page-cut');
  });
});
