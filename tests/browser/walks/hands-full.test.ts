/** With wet hands and with a list in them: the stove, the shop, the way back, ten edits; the same in both browsers. */
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

const rows = (screen: Screen) => wordsOf(screen, '.line');
const typedIn = (screen: Screen, selector: string) =>
  screen.evaluate(`return document.querySelector(${JSON.stringify(selector)})?.value ?? '';`);
const BUDGET = '.strip-wide .stepper:first-child input';
const SERVINGS = '.strip-wide .stepper:last-child input';

/** Stands for the browser's own lock, which no test can see. */
const STUB_LOCK = `
  window.locks = [];
  const sentinel = () => ({ addEventListener() {}, release: async () => void window.locks.push('released') });
  Object.defineProperty(navigator, 'wakeLock', {
    configurable: true,
    value: { request: async (kind) => (window.locks.push(kind), sentinel()) },
  });
  return true;
`;

/** Stand for the clipboard and the printer. */
const STUB_DESK = `
  window.copied = '';
  window.printed = 0;
  Object.defineProperty(navigator, 'clipboard', {
    configurable: true,
    value: { writeText: async (text) => void (window.copied = text) },
  });
  window.print = () => void (window.printed += 1);
  return true;
`;

const arrow = (key: string) =>
  `document.dispatchEvent(new KeyboardEvent('keydown', { key: '${key}', bubbles: true })); return true;`;

/** One edit of each kind; resolves when it is answered. */
const EDITS: readonly [name: string, edit: (screen: Screen) => Promise<unknown>][] = [
  ['more budget', (screen) => press(screen, '.strip-wide .stepper:first-child button:last-child')],
  ['a typed budget', (screen) => fill(screen, BUDGET, '12')],
  ['more servings', (screen) => press(screen, '.strip-wide .stepper:last-child button:last-child')],
  ['a corrected line', (screen) => onLine(screen, 'bread flour', '.correct .stepper input', '480')],
  ['a line left as it was', (screen) => inPanel(screen, 'bread flour', '^Leave as it was$')],
  ['typed servings', (screen) => fill(screen, SERVINGS, '10')],
  [
    'a line that may change again',
    (screen) => inPanel(screen, 'bread flour', '^It may change again$'),
  ],
  [
    'a corrected second line',
    (screen) => onLine(screen, 'water', '.correct .stepper input', '380'),
  ],
  ['fewer servings', (screen) => press(screen, '.strip-wide .stepper:last-child button')],
  ['less budget', (screen) => press(screen, '.strip-wide .stepper:first-child button')],
];

async function openPanel(screen: Screen, line: string): Promise<void> {
  await screen.waitFor(`
    const one = [...document.querySelectorAll('.line')].find((row) => row.textContent.includes(${JSON.stringify(line)}));
    if (!one) return false;
    if (one.getAttribute('aria-expanded') === 'false') one.click();
    return true;`);
  await count(screen, '.line-panel', '', 1);
}

async function onLine(screen: Screen, line: string, field: string, text: string): Promise<void> {
  await openPanel(screen, line);
  await fill(screen, `.line-panel ${field}`, text);
}

async function inPanel(screen: Screen, line: string, button: string): Promise<void> {
  await openPanel(screen, line);
  await press(screen, '.line-panel button', button);
}

describe.each(BROWSERS)('in %s', (browser) => {
  const opened = screenIn(browser);
  let screen: Screen;

  beforeAll(() => {
    screen = opened();
  });

  it.each(['options.html', 'popup.html?tab=999999999', 'bench.html#kept'])(
    'text of %s is 16 px, whatever the browser makes of pages of extensions',
    async (path) => {
      await screen.open(path);
      await screen.waitFor(`return document.querySelector('h1, h2') !== null;`);
      expect(await screen.evaluate('return getComputedStyle(document.body).fontSize;')).toBe(
        '16px',
      );
    },
  );

  it('the stove keeps the screen awake, has large words and buttons, and is turned by arrow keys', async () => {
    await pasted(screen, LOAF_TEXT.replace('Plain', 'Awake'));
    await screen.evaluate(STUB_LOCK);
    await place(screen, 'stove');
    await count(screen, '.stove-foot', 'The screen stays on', 1);
    expect(await screen.evaluate('return window.locks.join();')).toBe('screen');
    const sizes = JSON.parse(
      String(
        await screen.evaluate(`
          const seen = [...document.querySelectorAll('.stove button, .stove a.button')].filter((one) =>
            one.checkVisibility());
          return JSON.stringify({
            text: Number.parseFloat(getComputedStyle(document.querySelector('.stove-text')).fontSize),
            buttons: seen.map((one) => one.getBoundingClientRect().height),
          });`),
      ),
    );
    expect(sizes.text).toBeGreaterThanOrEqual(24);
    expect(sizes.buttons.length).toBeGreaterThan(2);
    expect(Math.min(...sizes.buttons)).toBeGreaterThanOrEqual(63.5);
    const step = () => wordsOf(screen, '.stove-count');
    const first = await step();
    await screen.evaluate(arrow('ArrowRight'));
    await screen.waitFor(`return document.querySelector('.stove-count b').textContent === '2';`);
    await screen.evaluate(arrow('ArrowLeft'));
    await screen.waitFor(`return document.querySelector('.stove-count b').textContent === '1';`);
    expect(await step()).toEqual(first);
    await place(screen, 'recipe');
    await answered(screen);
    await screen.waitFor(`return window.locks.join() === 'screen,released';`);
  });

  it('the list to buy is copied with its amounts, and printed', async () => {
    await pasted(screen, LOAF_TEXT.replace('Plain', 'Carried'));
    await place(screen, 'buy');
    await screen.waitFor(`return document.querySelector('.buy-food') !== null;`);
    const foods = await wordsOf(screen, '.buy-food');
    await screen.evaluate(STUB_DESK);
    await press(screen, '.place-head button', '^Copy the list$');
    await screen.waitFor(`return window.copied !== '';`);
    const copied = String(await screen.evaluate('return window.copied;'));
    expect(copied).toContain('Carried loaf');
    for (const food of foods)
      expect(copied.toLowerCase()).toContain(food.split(',')[0]?.toLowerCase());
    expect(copied).toMatch(/\d g/);
    await press(screen, '.place-head button', '^Print');
    expect(await screen.evaluate('return window.printed;')).toBe(1);
  });

  it('back and forward lead through the places', async () => {
    await pasted(screen, LOAF_TEXT.replace('Plain', 'Led'));
    const title = (name: string) => count(screen, 'main h1', name, 1);
    await place(screen, 'settings');
    await title('^Settings$');
    await place(screen, 'cupboard');
    await title('^Cupboard$');
    await screen.evaluate('history.back(); return true;');
    await title('^Settings$');
    await screen.evaluate('history.back(); return true;');
    await title('^Led loaf$');
    await screen.evaluate('history.forward(); return true;');
    await title('^Settings$');
    await screen.evaluate('history.forward(); return true;');
    await title('^Cupboard$');
  });

  it('ten edits of different kinds are undone and done again, one by one', async () => {
    await pasted(screen, LOAF_TEXT.replace('Plain', 'Edited'));
    const state = async () => {
      await answered(screen);
      return JSON.stringify([
        await typedIn(screen, BUDGET),
        await typedIn(screen, SERVINGS),
        await rows(screen),
        await wordsOf(screen, '.recipe .verdict-was'),
      ]);
    };
    const states = [await state()];
    for (const [name, edit] of EDITS) {
      await edit(screen);
      await expect.poll(state, { message: name, timeout: 20_000 }).not.toBe(states.at(-1));
      states.push(await state());
    }
    const turn = async (button: string, at: number) => {
      await press(screen, `.strip-choices .undo-redo button:${button}`);
      await expect.poll(state, { message: `state ${at}`, timeout: 20_000 }).toBe(states[at]);
    };
    for (let at = EDITS.length - 1; at >= 0; at -= 1) await turn('first-child', at);
    for (let at = 1; at <= EDITS.length; at += 1) await turn('last-child', at);
  });
});
