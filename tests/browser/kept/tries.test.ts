/** Two tries of one dish outlive the browser: told apart in words, and the first taken up again, in both browsers. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { LOAF_TEXT } from '../drive/bench.ts';
import { type Hand, kept, openedKept, openHand, pasted } from '../drive/hand.ts';

const LINES = `return JSON.stringify(all('.line').map((one) => seen(one.textContent)))`;
const ANSWERED = `return document.querySelector('.recipe[aria-busy=false] .verdict') !== null`;

describe.each(['chromium', 'firefox'] as const)('in %s', (engine) => {
  let hand: Hand;

  beforeAll(async () => {
    hand = await openHand(engine);
    await hand.open('options.html');
    await hand.run(`await chrome.storage.local.set({ preferences: { welcomed: true } });`);
  }, 400_000);

  afterAll(() => hand?.end());

  it('both tries are there after the browser was ended and started again', async () => {
    await pasted(hand, LOAF_TEXT);
    await kept(hand);
    const first = await hand.run(LINES);
    await hand.run(`
      const budget = document.querySelector('.strip-wide .stepper input');
      budget.value = '30';
      budget.dispatchEvent(new Event('input', { bubbles: true }));
    `);
    await hand.wait(
      `return JSON.stringify(all('.line').map((one) => seen(one.textContent))) !== ${JSON.stringify(first)}`,
    );
    await hand.wait(ANSWERED);
    const second = await hand.run(LINES);
    await hand.wait(`return document.querySelector('.keep-state').textContent !== 'Kept'`);
    await kept(hand);
    await hand.restart();
    await openedKept(hand);
    expect(await hand.run(LINES)).toBe(second);
    await hand.run(`document.querySelector('[data-fold=tries] summary').click()`);
    await hand.wait(`return all('.tries > li').length === 1`);
    await hand.run(`press('Use this version', '.tries')`);
    await hand.wait(
      `return JSON.stringify(all('.line').map((one) => seen(one.textContent))) === ${JSON.stringify(first)}`,
    );
  });
});
