/** The list of kept dishes and the first meter reading, in both browsers, over a restart. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { LOAF_TEXT } from '../drive/bench.ts';
import { type Hand, kept, openedKept, openHand, pasted } from '../drive/hand.ts';

const SOUP_TEXT = `Lentil soup
4 servings
200 g red lentils
1 onion
1 l vegetable broth

1. Simmer everything for 20 minutes.`;

const titles = `all('.kept-title').map((one) => seen(one.textContent)).join('|')`;

async function listOf(hand: Hand, expected: string): Promise<void> {
  await hand.wait(`return ${titles} === ${JSON.stringify(expected)}`);
}

async function keptList(hand: Hand): Promise<void> {
  await hand.open('bench.html#kept');
  await hand.wait(`return document.querySelector('.row-menu') !== null`);
}

/** Chooses from the menu of the dish with this title. */
const menu = (title: string, words: string): string => `
  const row = all('.kept-row').find((one) =>
    seen(one.querySelector('.kept-title').textContent) === ${JSON.stringify(title)});
  row.querySelector('.row-menu summary').click();
  [...row.querySelectorAll('.row-menu button')]
    .find((one) => seen(one.textContent).startsWith(${JSON.stringify(words)})).click();
`;

const orderBy = (value: string): string => `
  const order = document.querySelector('.kept-search select');
  order.value = ${JSON.stringify(value)};
  order.dispatchEvent(new Event('change', { bubbles: true }));
`;

describe.each(['chromium', 'firefox'] as const)('the list of kept dishes, in %s', (browser) => {
  let hand: Hand;

  beforeAll(async () => {
    hand = await openHand(browser);
    for (const text of [SOUP_TEXT, LOAF_TEXT]) {
      await pasted(hand, text);
      await kept(hand);
    }
    await keptList(hand);
  });

  afterAll(() => hand?.end());

  it('is narrowed by what is typed, by title or ingredient, and comes back', async () => {
    await listOf(hand, 'Plain loaf|Lentil soup');
    await hand.run(`type('Find', 'soup')`);
    await listOf(hand, 'Lentil soup');
    await hand.run(`type('Find', 'bread flour')`);
    await listOf(hand, 'Plain loaf');
    await hand.run(`type('Find', 'no such dish')`);
    await hand.says('No kept dish fits.');
    await hand.run(`type('Find', '')`);
    await listOf(hand, 'Plain loaf|Lentil soup');
  });

  it('is put in order by name and by when it was changed', async () => {
    await hand.run(orderBy('title'));
    await listOf(hand, 'Lentil soup|Plain loaf');
    await hand.run(orderBy('changed'));
    await listOf(hand, 'Plain loaf|Lentil soup');
  });

  it('has tags and what worked, which stay over a restart', async () => {
    await hand.run(menu('Lentil soup', 'Tags'));
    await hand.wait(`return document.querySelector('.tag-editor input') !== null`);
    await hand.run(`type('Tags of Lentil soup', 'winter, quick')`);
    await hand.run(`press('Keep the tags')`);
    await hand.wait(`return named('.kept-search button', 'winter') !== undefined`);
    await hand.run(menu('Plain loaf', 'This one worked'));
    // The row says so once it is on disk.
    await hand.wait(`
      const row = all('.kept-row').find((one) => one.textContent.includes('Plain loaf'));
      return /\\bworked\\b/.test(row.querySelector('.kept-said').textContent);
    `);
    await hand.restart();
    await keptList(hand);
    await hand.wait(`return named('.kept-search button', 'winter') !== undefined`);
    await hand.run(`press('winter', '.kept-search')`);
    await listOf(hand, 'Lentil soup');
    await hand.run(`press('what worked', '.kept-search')`);
    await hand.run(`press('winter', '.kept-search')`);
    await listOf(hand, 'Plain loaf');
    await hand.run(`press('everything', '.kept-search')`);
  });

  it('has its latest dishes in the popup of a page without a recipe, one press away', async () => {
    await hand.driven.visit('about:blank');
    await hand.open('popup.html?tab=999999999');
    await hand.wait(`return all('.last-kept li').length === 2`);
    const shown = await hand.run(
      `return all('.last-kept button').map((one) => seen(one.textContent)).sort().join('|')`,
    );
    expect(shown).toBe('Lentil soup|Plain loaf');
    await hand.run(`window.close = () => {}; press('Plain loaf', '.last-kept');`);
    await hand.wait(`
      const tabs = await (globalThis.browser ?? chrome).tabs.query({});
      return tabs.some(({ url }) => /bench\\.html\\?id=/.test(url ?? ''));
    `);
    await keptList(hand);
  });

  it('takes a copy, which is a dish of its own', async () => {
    await hand.run(menu('Lentil soup', 'Make a copy'));
    await hand.wait(`return all('.kept-title').length === 3`);
    const copies = String(await hand.run(`return ${titles}`)).split('|');
    expect(copies.filter((one) => one.startsWith('Lentil soup'))).toHaveLength(2);
  });

  it('lets a dish be put away and brought back, over a restart', async () => {
    await hand.run(menu('Plain loaf', 'Put away'));
    await hand.wait(`return !${titles}.includes('Plain loaf')`);
    await hand.restart();
    await keptList(hand);
    await hand.wait(`return named('summary', 'Put away') !== undefined`);
    expect(await hand.run(`return ${titles}`)).not.toContain('Plain loaf');
    await hand.run(`
      const bin = document.querySelector('details[data-fold="bin"]');
      bin.open = true;
      bin.dispatchEvent(new Event('toggle'));
    `);
    await hand.wait(`return document.querySelector('.bin button') !== null`);
    await hand.run(`press('Bring back', '.bin')`);
    await hand.wait(`return ${titles}.includes('Plain loaf')`);
  });

  it('keeps a first reading in mmol/L beside how it was, over a restart', async () => {
    await openedKept(hand);
    const title = await hand.run(`return seen(document.querySelector('h1').textContent)`);
    await hand.run(`location.hash = 'bakes'`);
    await hand.wait(`return document.querySelector('.bake-log summary') !== null`);
    await hand.run(`document.querySelector('.bake-log summary').click()`);
    await hand.wait(`return named('.how button', 'good') !== undefined`);
    await hand.run(`press('good', '.how')`);
    await hand.run(`document.querySelector('details[data-fold="meter"] summary').click()`);
    await hand.wait(`return named('details[data-fold="meter"] button', 'mmol/L') !== undefined`);
    await hand.run(`press('mmol/L', 'details[data-fold="meter"]')`);
    await hand.wait(`type('before', '6.1'); return field('before').value === '6.1'`);
    await hand.run(`type('1 hour', '8.2')`);
    await hand.run(`press('Keep this bake')`);
    await hand.wait(`return document.querySelector('.bakes > li') !== null`);
    await hand.restart();
    await keptList(hand);
    await hand.run(`named('.kept-link', ${JSON.stringify(title)}).click()`);
    await hand.wait(`return document.querySelector('.recipe[aria-busy=false] .verdict') !== null`);
    await hand.run(`location.hash = 'bakes'`);
    await hand.wait(`return document.querySelector('svg.meter') !== null`);
    const figures = await hand.run(
      `return all('svg.meter g text').map((one) => one.textContent).join()`,
    );
    expect(String(figures)).toContain('6.1');
    expect(String(figures)).toContain('8.2');
    expect(
      await hand.run(`return seen(document.querySelector('.bakes > li').textContent)`),
    ).toMatch(/good/i);
    expect(
      await hand.run(
        `return seen(document.querySelector('.meter-part button[aria-pressed=true]').textContent)`,
      ),
    ).toBe('mmol/L');
  });
});
