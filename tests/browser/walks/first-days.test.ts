/** A cook's first days, the same in both browsers: the questions, what is never eaten, the ways, another try, a share. */
import { beforeAll, describe, expect, it } from 'vitest';
import { LOAF_TEXT } from '../drive/bench.ts';
import {
  answered,
  BROWSERS,
  count,
  fill,
  pasted,
  place,
  press,
  type Screen,
  screenIn,
  wordsOf,
} from '../drive/screen.ts';

const CAKE_TEXT = `Honey squares

Ingredients
200 g all-purpose flour
150 g sugar
3 eggs
100 g butter
120 ml milk
2 tsp baking powder

Method
1. Beat butter, sugar and eggs.
2. Stir in flour, baking powder and milk.
3. Bake at 180 °C for 30 minutes.

Makes 12 squares`;

const wordsIn = async (screen: Screen, part: string): Promise<string> =>
  (await wordsOf(screen, part)).join(' ');

/** Keeps what is on the screen and waits until it is on disk. */
async function keep(screen: Screen): Promise<void> {
  await press(screen, 'button.keep');
  await screen.waitFor(`return document.querySelector('.keep-state').textContent === 'Kept';`);
}

/** Takes the place of the system's sheet, which no test can close. */
const STUB_SHEET = `
  window.handed = null;
  Object.defineProperty(navigator, 'canShare', { configurable: true, value: () => true });
  Object.defineProperty(navigator, 'share', {
    configurable: true,
    value: async ({ title, text, files }) => {
      window.handed = { title, text, type: files?.[0]?.type ?? '', size: files?.[0]?.size ?? 0 };
    },
  });
  return true;
`;

describe.each(BROWSERS)('in %s', (browser) => {
  const opened = screenIn(browser);
  let screen: Screen;

  beforeAll(() => {
    screen = opened();
  });

  it('three questions are asked first, and the figures go by the answers', async () => {
    await screen.open('options.html');
    await screen.evaluate('await chrome.storage.local.clear(); return true;');
    await screen.open('bench.html');
    await press(screen, '.first-run .choice', '^Germany');
    await press(screen, '.first-run button.first');
    await fill(screen, '.first-run input[inputmode]', '20');
    await press(screen, '.first-run button.first');
    await screen.waitFor(`
      const egg = [...document.querySelectorAll('.first-run label')]
        .find((one) => one.textContent.trim() === 'egg');
      egg?.querySelector('input').click();
      return egg !== undefined;`);
    await press(screen, '.first-run button.first');
    await count(screen, '.first-run', '', 0);
    await place(screen, 'paste');
    await fill(screen, 'textarea', CAKE_TEXT);
    await press(screen, '.paste button.first');
    await answered(screen);
    const budget = await screen.evaluate(
      `return document.querySelector('.strip-wide .stepper input').value;`,
    );
    expect(budget).toBe('20');
    expect(await wordsIn(screen, '.alert')).toMatch(/egg/);
    await screen.open('bench.html');
    await count(screen, 'h1', '', 1);
    await count(screen, '.first-run', '', 0);
  });

  it('what is never eaten is told of in the result, above the verdict, and each food has its way out', async () => {
    await pasted(screen, CAKE_TEXT, { avoid: ['egg', 'milk'] });
    expect(await wordsIn(screen, '.alert')).toMatch(/Still contains (egg and milk|milk and egg)/);
    const above = await screen.evaluate(`
      const bottom = document.querySelector('.alert').getBoundingClientRect().bottom;
      return bottom <= document.querySelector('.recipe .verdict').getBoundingClientRect().top;`);
    expect(above).toBe(true);
    // Each of the two has a way to it, and what the dish does without can be left out.
    expect((await wordsOf(screen, '.alert .acts button')).length).toBeGreaterThan(1);
    await press(screen, '.alert .acts button', '^Look at');
    await count(screen, '.line-panel', '', 1);
  });

  it('the ways are one switch, and another way shows another figure', async () => {
    await pasted(screen, CAKE_TEXT.replace('Honey', 'Plain'), { budgetG: 8 });
    const ways = await wordsOf(screen, '.ways button');
    expect(ways.length).toBeGreaterThan(1);
    const was = await wordsIn(screen, '.recipe .verdict-figure');
    const other = await screen.evaluate(`
      const one = document.querySelector('.ways [aria-pressed=false]');
      one.click();
      return one.textContent;`);
    await screen.waitFor(
      `return document.querySelector('.ways [aria-pressed=true]')?.textContent === ${JSON.stringify(other)};`,
    );
    await answered(screen);
    await screen.waitFor(
      `return document.querySelector('.recipe .verdict-figure').textContent.trim() !== ${JSON.stringify(was)};`,
    );
  });

  it('another try is kept beside the first, told in words, and taken up again after a restart of the page', async () => {
    await pasted(screen, LOAF_TEXT.replace('Plain', 'Tried'));
    await keep(screen);
    const first = await wordsOf(screen, '.line');
    for (let presses = 0; presses < 5; presses += 1)
      await press(screen, '.strip-wide .stepper button:last-child');
    await answered(screen);
    expect(await wordsOf(screen, '.line')).not.toEqual(first);
    await keep(screen);
    await screen.reload();
    await answered(screen);
    await press(screen, '[data-fold=tries] summary');
    await count(screen, '.tries > li', '', 1);
    await press(screen, '.tries button', '^What differs');
    await count(screen, '.differences', '', 1);
    expect(await wordsIn(screen, '.differences')).toMatch(/^Since then: .*\d+ g (?:less|more) /);
    await press(screen, '.tries button', '^Use this version');
    await answered(screen);
    await screen.waitFor(
      `return document.querySelector('.line').textContent.startsWith(${JSON.stringify(first[0]?.split(' ')[0])});`,
    );
    expect(await wordsOf(screen, '.line')).toEqual(first);
  });

  it('a recipe and its picture are handed to the sheet for sharing', async () => {
    await pasted(screen, LOAF_TEXT.replace('Plain', 'Shared'));
    await screen.evaluate(STUB_SHEET);
    await press(screen, '[data-fold=files] summary');
    await press(screen, '.share-part button', '^Share');
    await screen.waitFor('return window.handed !== null;');
    const handed = JSON.parse(
      String(await screen.evaluate('return JSON.stringify(window.handed);')),
    );
    expect(handed).toMatchObject({ title: 'Shared loaf', type: 'image/png' });
    expect(handed.text).toMatch(/net carbs/);
    expect(handed.size).toBeGreaterThan(5000);
  });
});
