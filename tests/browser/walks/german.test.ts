/** German from end to end in both browsers: on the screens of a German recipe nothing is English. */
import { beforeAll, describe, expect, it } from 'vitest';
import shownNames from '../../../engine/match/data/shown-names.json' with { type: 'json' };
import { LANGUAGES } from '../../../extension/ui/words/say.ts';
import {
  answered,
  BROWSERS,
  count,
  pasted,
  place,
  press,
  type Screen,
  screenIn,
} from '../drive/screen.ts';

const BREAD_TEXT = `Honigbrot mit Saaten

Zutaten
400 g Weizenmehl
100 g Roggenmehl
80 g Zucker
2 EL Honig
7 g Trockenhefe
10 g Salz
300 ml Milch
1 großes Ei
50 g Butter
2 EL Sesam
etwas Quittenbrand nach Belieben

Zubereitung
1. Mehl, Zucker, Hefe und Salz mischen, Milch, Honig, Ei und Butter dazugeben.
2. Den Teig 10 Minuten kneten und 60 Minuten gehen lassen.
3. Mit Sesam bestreuen und bei 200 °C 35 Minuten backen.

Ergibt 12 Scheiben`;

const plain = (text: string): string => text.toLowerCase().replace(/\s+/g, ' ');

const german = [
  ...Object.values(LANGUAGES.de).map(({ message }) => message),
  ...Object.values(shownNames).map(({ de }) => de),
].map(plain);

/** English messages and names of foods that German has no words like: none may be seen. */
const ENGLISH = [
  ...Object.values(LANGUAGES.en).map(({ message }) => message),
  ...Object.values(shownNames).map(({ en }) => en),
]
  .filter((text) => !/[$|]/.test(text) && text.length > 5)
  .map(plain)
  .filter((text) => !german.some((other) => other.includes(text)));

/** Words that every English sentence has one of, and German none. */
const SMALL_WORDS = /\b(?:the|with|of|and|are|from|your|for|less|this|which|taken)\b/i;

/** A title, which is cited as it is. */
const CITED = 'US Armed Forces Recipe Service';

/** What is read on the page or heard of it: a line for each element of its own words. */
const ALL_WORDS = `
  const texts = [];
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walk.nextNode()) texts.push(walk.currentNode.data);
  for (const one of document.querySelectorAll('*'))
    for (const name of ['aria-label', 'title', 'placeholder', 'alt'])
      texts.push(one.getAttribute(name) ?? '');
  return JSON.stringify([...new Set(texts.map((text) => text.trim()).filter((text) => text !== ''))]);
`;

/** Parts that are drawn when they are opened hold others. */
const OPEN_ALL = `
  for (let round = 0; round < 4; round += 1) {
    for (const part of document.querySelectorAll('details:not([open])')) part.open = true;
    for (const one of document.querySelectorAll('.why-button[aria-expanded=false]')) one.click();
    await new Promise((done) => setTimeout(done, 250));
  }
  return true;
`;

/** Presses every line of the list in turn and gathers what its panel says. */
const EVERY_LINE = `
  const said = [];
  const count = document.querySelectorAll('.lines .line').length;
  for (let at = 0; at < count; at += 1) {
    document.querySelectorAll('.lines .line')[at].click();
    await new Promise((done) => setTimeout(done, 150));
    for (const part of document.querySelectorAll('.line-panel details:not([open])')) part.open = true;
    await new Promise((done) => setTimeout(done, 150));
    for (const panel of document.querySelectorAll('.line-panel')) {
      const walk = document.createTreeWalker(panel, NodeFilter.SHOW_TEXT);
      while (walk.nextNode()) said.push(walk.currentNode.data.trim());
    }
  }
  return JSON.stringify([...new Set(said.filter((text) => text !== ''))]);
`;

function englishIn(said: readonly string[]): string[] {
  return said.filter((whole) => {
    const text = whole.replace(CITED, '');
    const low = ` ${plain(text)} `;
    const named = ENGLISH.some((one) => {
      const at = low.indexOf(one);
      return at > 0 && !/\p{L}/u.test(`${low[at - 1]}${low[at + one.length]}`);
    });
    return named || SMALL_WORDS.test(text);
  });
}

const read = async (screen: Screen, body: string): Promise<string[]> =>
  JSON.parse(String(await screen.evaluate(body)));

it('English would be seen', () => {
  expect(englishIn(['Almond flour, 20 g', 'Less sweet; pipes well.', 'Not counted'])).toHaveLength(
    3,
  );
  expect(englishIn(['Gemahlene Mandeln, 20 g', 'Weniger süß.', 'USDA SR Legacy 168896'])).toEqual(
    [],
  );
});

describe.each(BROWSERS)('in %s', (browser) => {
  const opened = screenIn(browser);
  let screen: Screen;

  beforeAll(async () => {
    screen = opened();
    const rule = { region: 'eu', polyols: 'half' };
    await pasted(screen, BREAD_TEXT, { language: 'de', rule, avoid: ['egg'] });
    await press(screen, 'button.keep');
    await screen.waitFor(`return document.querySelector('.keep-state').textContent === 'Gemerkt';`);
  });

  it('the recipe is German, with all that is folded and every line opened', async () => {
    await screen.evaluate(OPEN_ALL);
    const said = await read(screen, ALL_WORDS);
    expect(said.length).toBeGreaterThan(150);
    expect(englishIn(said)).toEqual([]);
    const panels = await read(screen, EVERY_LINE);
    expect(panels.length).toBeGreaterThan(60);
    expect(englishIn(panels)).toEqual([]);
    expect(await screen.evaluate('return document.documentElement.lang;')).toBe('de');
  });

  it('a bake with every fault brings German proposals, and what is taken up stays German', async () => {
    await place(screen, 'bakes');
    await count(screen, '.place h1', '', 1);
    await screen.evaluate(OPEN_ALL);
    await screen.evaluate(`
      const boxes = document.querySelectorAll('.faults input[type=checkbox]').length;
      for (let at = 0; at < boxes; at += 1) {
        document.querySelectorAll('.faults input[type=checkbox]')[at].click();
        await new Promise((done) => setTimeout(done, 40));
      }
      return true;`);
    await press(screen, '.bake-form button[type=submit]');
    await screen.waitFor(`return document.querySelectorAll('.proposals .swaps > li').length > 3;`);
    await press(screen, '.proposals .swaps button');
    await count(screen, '.taught-list > li', '', 1);
    await screen.evaluate(OPEN_ALL);
    const said = await read(screen, ALL_WORDS);
    expect(said.length).toBeGreaterThan(100);
    expect(englishIn(said)).toEqual([]);
  });

  it.each(['stove', 'buy', 'cupboard', 'kept', 'settings', 'paste'])(
    'the place %s is German',
    async (name) => {
      await place(screen, name);
      await screen.waitFor(
        `return document.querySelector('.place h1, .stove h1, .stove') !== null;`,
      );
      await screen.evaluate(OPEN_ALL);
      const said = await read(screen, ALL_WORDS);
      expect(said.length).toBeGreaterThan(15);
      expect(englishIn(said)).toEqual([]);
    },
  );

  it('comes back to a German recipe', async () => {
    await place(screen, 'recipe');
    await answered(screen);
    expect(englishIn(await read(screen, ALL_WORDS))).toEqual([]);
  });
});
