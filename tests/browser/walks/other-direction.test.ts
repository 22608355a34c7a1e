/** A recipe that is written from the right on a screen that is not: nothing crosses, in both browsers. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Driven, openDriven } from '../drive/both.ts';
import { buildBoth } from '../drive/build.ts';
import { removeFolder } from '../drive/remove-folder.ts';
import { type Served, serveDemo } from '../drive/server.ts';

const TITLE = 'עוגת בוקר (2 תבניות)';
const UNKNOWN = ['קורט מלח', 'מעט זעתר', 'קצת סומק'];
const PAGE = `<!doctype html><html lang="he" dir="rtl"><title>x</title><script type="application/ld+json">${JSON.stringify(
  {
    '@context': 'https://schema.org',
    '@type': 'Recipe',
    name: TITLE,
    inLanguage: 'he',
    recipeYield: '10 servings',
    recipeIngredient: ['200 g flour', '150 g sugar', '3 eggs', '100 g butter', ...UNKNOWN],
    recipeInstructions: ['מערבבים הכול.', 'Bake at 180 °C for 30 minutes.'],
  },
)}</script>`;

/** Where the words within some elements are drawn, from left to right, px: one box an element. */
const BOXES = (selector: string, within = 'body') => `
  return JSON.stringify([...document.querySelectorAll('${within} ${selector}')]
    .filter((one) => one.checkVisibility())
    .map((one) => {
      const range = document.createRange();
      range.selectNodeContents(one);
      const { left, right, top } = range.getBoundingClientRect();
      return { words: one.textContent.trim(), left, right, top };
    }));
`;

interface Box {
  words: string;
  left: number;
  right: number;
  top: number;
}

describe.each(['chromium', 'firefox'] as const)('in %s', (engine) => {
  let folder: string;
  let pages: Served;
  let driven: Driven;

  const boxes = async (selector: string, within?: string): Promise<Box[]> =>
    JSON.parse(String(await driven.evaluate(BOXES(selector, within))));

  beforeAll(async () => {
    buildBoth();
    folder = mkdtempSync(join(tmpdir(), 'crumbshift-direction-'));
    pages = await serveDemo({ '/right.html': PAGE });
    driven = await openDriven(engine, { profile: folder });
    await driven.open('options.html');
    await driven.evaluate(
      `await chrome.storage.local.set({ preferences: { welcomed: true } }); return true;`,
    );
    await driven.visit(`${pages.origin}/right.html`);
    await driven.click();
    await driven.waitFor(`return document.querySelector('[aria-busy=false] .verdict') !== null;`);
  }, 400_000);

  afterAll(async () => {
    await driven?.close();
    await pages?.close();
    removeFolder(folder);
  });

  it('the popup names what is not counted in its order, one behind the other', async () => {
    await driven.resize(1000, 600);
    const names = await boxes('span[lang]', '.missing');
    expect(names.map(({ words }) => words)).toEqual(UNKNOWN);
    const [first, ...others] = names;
    let before = first;
    for (const name of others) {
      const isBehind = name.left >= (before?.right ?? 0) || name.top > (before?.top ?? 0);
      expect(isBehind, `${name.words} behind ${before?.words}`).toBe(true);
      before = name;
    }
  });

  it('the title stands where the figures begin, in the recipe and in Kept', async () => {
    await driven.evaluate(`document.querySelector('button.keep').click(); return true;`);
    await driven.waitFor(`return document.querySelector('.keep-state').textContent === 'Kept';`);
    await driven.open('bench.html#recipe');
    await driven.waitFor(
      `return document.querySelector('.recipe[aria-busy=false] .verdict') !== null;`,
    );
    await driven.resize(1280, 800);
    const [title] = await boxes('h1.dish');
    const [ingredients] = await boxes('h2#ingredients-title, #ingredients-title');
    expect(title?.words).toBe(TITLE);
    expect(Math.abs((title?.left ?? 0) - (ingredients?.left ?? 99))).toBeLessThan(3);
    await driven.open('bench.html#stove');
    await driven.waitFor(`return document.querySelector('.stove-count') !== null;`);
    await driven.resize(1280, 800);
    const [atStove] = await boxes('.stove-head h1');
    expect(atStove?.left ?? 999).toBeLessThan(150);
    await driven.open('bench.html#kept');
    await driven.waitFor(`return document.querySelector('.kept-title') !== null;`);
    await driven.resize(1280, 800);
    const [kept] = await boxes('.kept-title');
    const [heading] = await boxes('h1');
    expect(Math.abs((kept?.left ?? 0) - (heading?.left ?? 99))).toBeLessThan(3);
  });

  it('amounts stay before their foods, and words of the page keep their own direction', async () => {
    await driven.open('bench.html#recipe');
    await driven.waitFor(
      `return document.querySelector('.recipe[aria-busy=false] .verdict') !== null;`,
    );
    await driven.resize(1280, 800);
    const names = await boxes('.line-name');
    const lefts = new Set(names.map(({ left }) => Math.round(left)));
    expect(names.length).toBeGreaterThan(6);
    expect(lefts.size).toBe(1);
    const directions = JSON.parse(
      String(
        await driven.evaluate(`
          const known = (words) => [...document.querySelectorAll('.line-name, .step-text, h1.dish')]
            .filter((one) => words.test(one.textContent))
            .map((one) => getComputedStyle(one).direction);
          return JSON.stringify({ right: known(/^\\s*[\\u0590-\\u05ff]/u), left: known(/^\\s*[a-z]/iu) });`),
      ),
    );
    expect(new Set(directions.right)).toEqual(new Set(['rtl']));
    expect(new Set(directions.left)).toEqual(new Set(['ltr']));
  });
});
