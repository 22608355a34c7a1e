/** Walks of a cook through the full page, the same in both browsers. */
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
import { sheetsOf } from '../drive/shown/sheets.ts';

const rows = (screen: Screen) => wordsOf(screen, '.line');
const figure = async (screen: Screen, part: string): Promise<number> =>
  Number.parseFloat((await wordsOf(screen, part))[0] ?? '');

/** The food of the first row that came in for another. */
async function cameIn(screen: Screen): Promise<string> {
  const [name] = await wordsOf(
    screen,
    '.lines [data-change=added] .line-name, .lines [data-change=replaced] .line-name',
  );
  if (!name) throw new Error('nothing came in');
  return name;
}

/** Steps forward to the next time that can be started, and starts it. */
async function startNextTimer(screen: Screen, running: number): Promise<void> {
  for (let steps = 0; steps < 12; steps += 1) {
    const [start] = await wordsOf(screen, '.stove-main .acts button');
    if (start) {
      await press(screen, '.stove-main .acts button');
      await count(screen, '.timer', '', running);
      await press(screen, '.stove-foot button.first');
      return;
    }
    await press(screen, '.stove-foot button.first');
  }
  throw new Error('no step has a time');
}

describe.each(BROWSERS)('in %s', (browser) => {
  const opened = screenIn(browser);
  let screen: Screen;

  beforeAll(() => {
    screen = opened();
  });

  it('two timers run at the stove and outlive a reload, as does the step in hand', async () => {
    await pasted(screen, LOAF_TEXT);
    await place(screen, 'stove');
    await count(screen, '.stove-main', '', 1);
    await startNextTimer(screen, 1);
    await startNextTimer(screen, 2);
    const names = await wordsOf(screen, '.timer-words > span');
    expect(new Set(names).size).toBe(2);
    const step = await wordsOf(screen, '.stove-count');
    await screen.reload();
    await count(screen, '.timer', '', 2);
    expect(await wordsOf(screen, '.timer-words > span')).toEqual(names);
    expect(await wordsOf(screen, '.stove-count')).toEqual(step);
    for (const left of [1, 0]) {
      await press(screen, '.timer button');
      await count(screen, '.timer', '', left);
    }
  });

  it('what is bought is in the cupboard, and is not asked for again', async () => {
    await pasted(screen, LOAF_TEXT.replace('Plain', 'Bought'));
    await place(screen, 'buy');
    await count(screen, '.buy h1', '', 1);
    await screen.waitFor(`return document.querySelector('.buy-food') !== null;`);
    const [bought = ''] = await wordsOf(screen, '.buy-food');
    const food = bought.replace(/, [\d.]+ g$/, '');
    await press(screen, '.buy-row input');
    await place(screen, 'cupboard');
    await count(screen, '.chips li', food.slice(1), 1);
    await place(screen, 'buy');
    await count(screen, '.already', food.slice(1), 1);
    expect((await wordsOf(screen, '.buy-food')).join()).not.toContain(food);
  });

  it('ten changes are undone and done again, one by one', async () => {
    await pasted(screen, LOAF_TEXT.replace('Plain', 'Ten'));
    const budget = () =>
      screen.evaluate(`return document.querySelector('.strip-wide .stepper input').value;`);
    const start = Number(await budget());
    const first = await rows(screen);
    const ten = async (selector: string) => {
      for (let presses = 0; presses < 10; presses += 1) await press(screen, selector);
      await answered(screen);
    };
    await ten('.strip-wide .stepper button:last-child');
    expect(Number(await budget())).toBe(start + 10);
    const last = await rows(screen);
    expect(last).not.toEqual(first);
    await ten('.strip-choices .undo-redo button:first-child');
    expect(Number(await budget())).toBe(start);
    expect(await rows(screen)).toEqual(first);
    await ten('.strip-choices .undo-redo button:last-child');
    expect(await rows(screen)).toEqual(last);
  });

  it('what is never used is gone from this recipe and from the next', async () => {
    await pasted(screen, LOAF_TEXT.replace('Plain', 'Without'));
    const food = await cameIn(screen);
    await press(screen, '.line', food);
    await press(screen, '.line-panel button', `^Never use ${food}$`);
    await count(screen, '.line', food, 0);
    await screen.open('bench.html?paste#paste');
    await fill(screen, 'textarea', LOAF_TEXT.replace('Plain', 'Later'));
    await press(screen, '.paste button.first');
    await answered(screen);
    expect((await rows(screen)).join()).not.toContain(food);
  });

  it('a line that was read surely is put right, with the figure in sight', async () => {
    await pasted(screen, LOAF_TEXT.replace('Plain', 'Sure'));
    const was = await figure(screen, '.verdict-was');
    await press(screen, '.line', 'bread flour');
    await fill(screen, '.line-panel .correct .stepper input', '600');
    await screen.waitFor(
      `return Number.parseFloat(document.querySelector('.verdict-was').textContent) > ${was};`,
    );
    expect(await figure(screen, '.verdict-was')).toBeCloseTo(was * 1.2, 0);
    const seen = await screen.evaluate(`
      const box = document.querySelector('.strip-figure').getBoundingClientRect();
      return box.top >= 0 && box.bottom <= innerHeight && box.width > 0;`);
    expect(seen).toBe(true);
  });

  it('the recipe fits one sheet of paper', async () => {
    await pasted(screen, LOAF_TEXT.replace('Plain', 'Printed'));
    expect(sheetsOf(await screen.paper())).toBe(1);
  });

  it('German goes from the recipe to the settings', async () => {
    await pasted(screen, LOAF_TEXT.replace('Plain', 'German'), { language: 'de' });
    expect((await wordsOf(screen, '.verdict-say')).join()).toMatch(/ hat etwa \d+(,\d)? g, /);
    for (const [name, title] of [
      ['buy', 'Einkauf'],
      ['bakes', 'Gebackenes'],
      ['cupboard', 'Vorrat'],
      ['settings', 'Einstellungen'],
    ] as const) {
      await place(screen, name);
      await count(screen, '.place h1', `^${title}$`, 1);
    }
    await place(screen, 'stove');
    await count(screen, '.stove-foot button', '^Nächster Schritt$', 1);
    expect(await screen.evaluate('return document.documentElement.lang;')).toBe('de');
  });
});
