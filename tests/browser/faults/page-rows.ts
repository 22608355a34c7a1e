/** Pages that are hostile, huge or not there: figures or a sentence, in the time a user waits. */
import { bench, popupOn, type Row, settled, told } from './acts.ts';

const GOOD = {
  '@context': 'https://schema.org',
  '@type': 'Recipe',
  name: 'Loaf',
  recipeYield: '10 servings',
  recipeIngredient: ['500 g flour', '300 g water', '8 g salt'],
  recipeInstructions: ['Mix it.', 'Bake it for 40 minutes.'],
};

const marked = (changes: object): string =>
  `<!doctype html><title>Loaf</title><script type="application/ld+json">${JSON.stringify({
    ...GOOD,
    ...changes,
  }).replaceAll('<', '\\u003c')}</script><h1>Loaf</h1>`;

/** By address, as the server takes them. */
export const FAULTY_PAGES: Record<string, string> = {
  '/deep.html': `${'<div>'.repeat(20_000)}<p>deep</p>${marked({})}`,
  '/lines.html': marked({
    recipeIngredient: [...GOOD.recipeIngredient, ...Array(100_000).fill('1 g sugar')],
  }),
  '/carbs.html': marked({
    recipeIngredient: Array.from(
      { length: 400 },
      (_, n) => `${n + 1} g ${n % 2 ? 'flour' : 'sugar'}`,
    ),
  }),
  '/scripts.html': marked({
    name: '<img src=x onerror="document.title=\'taken\'">',
    recipeIngredient: ['500 g <script>document.title="taken"</script> flour', '300 g water'],
  }),
  '/turned.html': marked({
    name: '\u202eLoaf \ud800',
    recipeIngredient: ['500 g \u202eflour', '300 g water'],
  }),
  '/style.html': `<div style="${'color:red;'.repeat(1_000_000)}">x</div>${marked({})}`,
  '/nothing.html': '',
};

const figures = (fault: string, page: string): Row => ({
  fault,
  run: async (world) => {
    await popupOn(world, page);
    await world.driven.waitFor(
      `return /\\d/.test(document.querySelector('.verdict')?.textContent ?? '') && document.title !== 'taken'`,
    );
    await bench(world);
    await settled(world);
    await world.driven.waitFor(
      `return document.querySelectorAll('.lines > li').length > 0 && document.title !== 'taken'`,
    );
  },
});

export const PAGE_ROWS: readonly Row[] = [
  figures('elements are 20,000 deep', 'deep.html'),
  figures('a page lists 100,000 ingredients', 'lines.html'),
  figures('a page lists 400 lines with carbohydrate', 'carbs.html'),
  figures('names and lines hold scripts', 'scripts.html'),
  figures('text runs from right to left and holds half characters', 'turned.html'),
  figures('a style attribute has ten million characters', 'style.html'),
  {
    fault: 'a page is empty',
    run: async (world) => {
      const { driven, origin } = world;
      await driven.visit(`${origin}/nothing.html`);
      await driven.click();
      await driven.waitFor(`return document.querySelector('.message') !== null`);
    },
  },
  {
    fault: 'the tab was closed before it could be read',
    run: async (world) => {
      await world.driven.open('popup.html?tab=999999999');
      await told(world, 'cannot be read');
    },
  },
];
