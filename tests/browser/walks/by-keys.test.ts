/** The full page by keyboard alone, the same in both browsers: every control in its order, each seen while it has the focus. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PLACES } from '../../../extension/entrypoints/bench/place-names.ts';
import { LOAF_TEXT } from '../drive/bench.ts';
import { type Hand, kept, openHand, pasted } from '../drive/hand.ts';

/** Numbers what can be reached and takes the first of them; gives how many there are. */
const NUMBERED = `
  const stops = all('a[href], button:enabled, input, select, textarea, summary').filter(
    (one) => one.checkVisibility() && !one.matches('input[type=radio]:not(:checked)'));
  for (const [at, stop] of stops.entries()) stop.dataset.stop = String(at);
  stops[0].focus();
  return stops.length;
`;

/** What has the focus: its number, its words, whether it stands clear of the strip and the bars, and has a ring. */
const FOCUS = `
  const at = document.activeElement;
  if (!at || at === document.body || at === document.documentElement) return '';
  // A field for files is drawn as its label, and a typed figure has its ring round the field, which is its label.
  const label = at.labels?.[0] ?? null;
  const seenAs = at.matches('.hidden') && label ? label : at;
  const box = seenAs.getBoundingClientRect();
  const x = Math.min(Math.max(box.x + box.width / 2, 0), innerWidth - 1);
  const y = Math.min(Math.max(box.y + box.height / 2, 0), innerHeight - 1);
  const top = document.elementFromPoint(x, y);
  return JSON.stringify({
    at: Number(at.dataset.stop ?? -1),
    words: at.tagName + ' ' + seen(at.textContent),
    clear: seenAs.contains(top) || label?.contains(top) === true,
    ring: [seenAs, label].some((one) => one !== null && getComputedStyle(one).outlineStyle !== 'none'),
  });
`;

interface Focus {
  at: number;
  words: string;
  clear: boolean;
  ring: boolean;
}

const VEGETABLES = [
  'carrots',
  'celeriac',
  'leeks',
  'parsnips',
  'kale',
  'peas',
  'spinach',
  'fennel',
];

const FORTY_TEXT = `Feast-day pie

Ingredients
500 g all-purpose flour
250 g butter
${Array.from({ length: 40 }, (_, at) => `${100 + at * 5} g ${VEGETABLES[at % VEGETABLES.length]}`).join('\n')}

Method
1. Rub the butter into the flour.
2. Simmer the vegetables for 25 minutes, fill and bake at 200 °C for 40 minutes.

Makes 10 portions`;

/** Controls a single press may stay within: a file field, a date. */
const MORE = 20;

describe.each(['chromium', 'firefox'] as const)('in %s', (engine) => {
  let hand: Hand;

  beforeAll(async () => {
    hand = await openHand(engine);
    await hand.open('options.html');
    await hand.run(`await chrome.storage.local.set({ preferences: { welcomed: true } });`);
    await pasted(hand, LOAF_TEXT);
    await kept(hand);
  }, 400_000);

  afterAll(() => hand?.end());

  const focus = async (): Promise<Focus | null> => {
    const found = String(await hand.run(FOCUS));
    return found === '' ? null : JSON.parse(found);
  };

  async function openedAt(place: string): Promise<void> {
    await hand.open(`bench.html#${place}`);
    await hand.wait(`return document.querySelector('main h1') !== null`);
    if (place === 'recipe')
      await hand.wait(`return document.querySelector('.recipe[aria-busy=false]') !== null`);
    await hand.driven.resize(1100, 800);
    // The form for a bake is the longest there is, most of it folded.
    if (place === 'bakes')
      await hand.run(`for (const one of all('main details')) one.open = true;`);
    await hand.run(`await new Promise((done) => setTimeout(done, 400));`);
  }

  it('two presses lead past the rail to the place, and three more to its method', async () => {
    await openedAt('recipe');
    await hand.driven.key('Tab');
    expect(await hand.run(`return document.activeElement.className`)).toBe('skip');
    await hand.driven.key('Enter');
    expect(await hand.run(`return document.activeElement.tagName`)).toBe('MAIN');
    await hand.driven.key('Tab');
    await hand.driven.key('Tab');
    await hand.driven.key('Enter');
    expect(await hand.run(`return document.activeElement.id`)).toBe('method-title');
    await hand.driven.closeTab();
  });

  it.each(PLACES)('all of the place %s is reached in its order and seen', async (place) => {
    await openedAt(place);
    const controls = Number(await hand.run(NUMBERED));
    expect(controls).toBeGreaterThan(place === 'bakes' ? 50 : 7);
    // From here on by keys, so that the browser draws its rings.
    await hand.driven.key('Tab');
    await hand.driven.key('Shift+Tab');
    const order: number[] = [];
    for (let presses = 0; presses < controls + MORE; presses += 1) {
      const stop = await focus();
      if (!stop) break;
      expect(stop, stop.words).toMatchObject({ clear: true, ring: true });
      if (stop.at !== order.at(-1)) order.push(stop.at);
      if (stop.at === controls - 1) break;
      await hand.driven.key('Tab');
    }
    expect(order).toEqual(Array.from({ length: controls }, (_, at) => at));
    await hand.driven.closeTab();
  });

  /** Presses a key until what has the focus fits; resolves to how often. */
  async function pressUntil(key: string, selector: string): Promise<number> {
    for (let presses = 1; presses <= 60; presses += 1) {
      await hand.driven.key(key);
      if (await hand.run(`return document.activeElement.matches('${selector}')`)) return presses;
    }
    return Number.POSITIVE_INFINITY;
  }

  const lineInFocus = () =>
    hand.run(`return all('button.line').indexOf(document.activeElement)`) as Promise<number>;

  it('any of forty lines and all behind them are no more than forty keys away', async () => {
    await pasted(hand, FORTY_TEXT);
    await openedAt('recipe');
    const lines = Number(await hand.run(`return all('button.line').length`));
    expect(lines).toBeGreaterThanOrEqual(40);
    let keys = await pressUntil('Tab', '.skip');
    await hand.driven.key('Enter');
    keys += 1 + (await pressUntil('Tab', '.jumps .skip'));
    await hand.driven.key('Enter');
    keys += 1 + (await pressUntil('Tab', 'button.line'));
    expect(keys).toBeLessThanOrEqual(10);
    expect(await lineInFocus()).toBe(0);
    // The middle of them is furthest away: to either end it is one key.
    for (let down = 1; down <= Math.floor(lines / 2); down += 1) await hand.driven.key('ArrowDown');
    expect(await lineInFocus()).toBe(Math.floor(lines / 2));
    expect(keys + Math.floor(lines / 2)).toBeLessThanOrEqual(40);
    await hand.driven.key('End');
    expect(await lineInFocus()).toBe(lines - 1);
    keys += 1 + (await pressUntil('Tab', 'main .foot a'));
    expect(keys).toBeLessThanOrEqual(40);
    await hand.driven.closeTab();
  });
});
