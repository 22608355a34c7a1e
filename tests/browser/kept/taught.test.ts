/** A series of bakes teaches the next plan, in both browsers, over a restart. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { LOAF_TEXT } from '../drive/bench.ts';
import { type Hand, kept, openedKept, openHand, pasted, stored } from '../drive/hand.ts';

const WATER = `
  const line = all('.line').find((one) => /water/.test(one.textContent));
  const copy = line.cloneNode(true);
  for (const old of copy.querySelectorAll('s')) old.remove();
  return Number(/(\\d+(\\.\\d+)?) ?g/.exec(copy.textContent)[1]);
`;

/** Grams of water in the reworked list; goes back to the bakes. */
async function waterOf(hand: Hand): Promise<number> {
  await hand.run(`location.hash = 'recipe'`);
  await hand.wait(`return document.querySelector('.recipe[aria-busy=false] .line') !== null`);
  const grams = Number(await hand.run(WATER));
  await hand.run(`location.hash = 'bakes'`);
  await hand.wait(`return document.querySelector('.taught') !== null`);
  return grams;
}

/** An invented bake with water beyond the list and an oven that is off. */
async function bake(hand: Hand, count: number, extra: number): Promise<void> {
  await hand.run(`
    const form = document.querySelector('.bake-log details');
    form.open = true;
  `);
  await hand.wait(`return named('summary', 'Water, oven, times') !== undefined`);
  await hand.run(`
    const fold = named('summary', 'Water, oven, times').closest('details');
    fold.open = true;
    fold.dispatchEvent(new Event('toggle'));
  `);
  await hand.wait(`return named('label', 'Water beyond the list') !== undefined`);
  await hand.run(`
    type('Water beyond the list', '${extra}');
    type('The oven was set to', '220');
    type('A thermometer in it said', '231');
  `);
  await hand.run(`document.querySelector('.bake-form').requestSubmit()`);
  await hand.wait(`return all('.bakes > li').length === ${count}`);
}

describe.each(['chromium', 'firefox'] as const)('what the bakes taught, in %s', (browser) => {
  let hand: Hand;
  let plain = 0;

  beforeAll(async () => {
    hand = await openHand(browser);
    await pasted(hand, LOAF_TEXT);
    await kept(hand);
    plain = await waterOf(hand);
  });

  afterAll(() => hand?.end());

  it('is nothing after one bake, and moves the plan after two', async () => {
    await bake(hand, 1, 20);
    expect(await waterOf(hand)).toBe(plain);
    await bake(hand, 2, 30);
    await hand.wait(`return all('.taught input').length === 2`);
    // (20 + 30) / 2 = 25 g for the same flour.
    expect(await waterOf(hand)).toBe(plain + 25);
    await hand.says('Your oven is 11 °C hotter than it is set.');
  });

  it('says so in the reason and in the method', async () => {
    await hand.run(`location.hash = 'recipe'`);
    await hand.wait(`return document.querySelector('.recipe[aria-busy=false] .line') !== null`);
    await hand.says('Set the oven 10 °C (18 °F) lower than the recipe says.');
    await hand.run(`all('.line').find((one) => /water/.test(one.textContent)).click()`);
    await hand.wait(`return document.querySelector('.line-panel') !== null`);
    await hand.says('Your bakes taught it: so much more went in');
    await hand.run(`location.hash = 'bakes'`);
  });

  it('is still there after the browser was started again, and can be switched off', async () => {
    await hand.restart();
    await openedKept(hand);
    expect(await waterOf(hand)).toBe(plain + 25);
    await hand.run(`all('.taught label').find((one) => /water/.test(one.textContent)).click()`);
    expect(await waterOf(hand)).toBe(plain);
    await stored(hand, '"lessonsOff":["');
  });

  it('stays switched off over another start', async () => {
    await hand.restart();
    await openedKept(hand);
    expect(await waterOf(hand)).toBe(plain);
    const ticks = `return all('.taught input').map((one) => one.checked).sort().join()`;
    expect(await hand.run(ticks)).toBe('false,true');
  });
});
