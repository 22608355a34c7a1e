/** Two windows on one kept recipe, in both browsers: nothing is overwritten, changes are written by themselves. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { LOAF_TEXT } from '../drive/bench.ts';
import { type Hand, kept, openedKept, openHand, pasted } from '../drive/hand.ts';

const BUDGET = `return document.querySelector('.strip-wide input')`;
const setBudget = (grams: number) => `
  const one = (() => { ${BUDGET} })();
  Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set.call(one, '${grams}');
  one.dispatchEvent(new Event('input', { bubbles: true }));
  one.dispatchEvent(new Event('change', { bubbles: true }));
`;
const BUTTON = (word: string) =>
  `return document.querySelector('button.keep').textContent.startsWith('${word}')`;

async function openTries(hand: Hand): Promise<void> {
  await hand.run(`
    const part = document.querySelector('details[data-fold="tries"]');
    part.open = true;
    part.dispatchEvent(new Event('toggle'));
  `);
}

describe.each(['chromium', 'firefox'] as const)('two windows, in %s', (browser) => {
  let hand: Hand;
  let backToFirst: () => void;

  beforeAll(async () => {
    hand = await openHand(browser);
    await pasted(hand, LOAF_TEXT);
    await kept(hand);
    await openedKept(hand);
    backToFirst = hand.driven.here();
    await openedKept(hand);
  });

  afterAll(() => hand?.end());

  it('writes a change by itself, and says that it is kept', async () => {
    await hand.wait(BUTTON('Kept'));
    await hand.run(setBudget(12));
    await hand.wait(BUTTON('Keep this too'));
    await hand.wait(BUTTON('Kept'));
    await openTries(hand);
    await hand.wait(`return all('.tries > li').length === 1`);
  });

  it('tells the later window, which overwrites nothing', async () => {
    backToFirst();
    expect(await hand.run(`return document.querySelector('.strip-note') === null`)).toBe(true);
    await hand.run(setBudget(10));
    await hand.says('Another window kept another state of this recipe meanwhile.');
    await openTries(hand);
    await hand.wait(`return all('.tries > li').length === 2`);
    await hand.says('budget 12 g');
  });

  it('has all states after the browser was started again', async () => {
    await hand.restart();
    await openedKept(hand);
    await hand.wait(`return (() => { ${BUDGET} })().value === '10'`);
    await openTries(hand);
    await hand.wait(`return all('.tries > li').length === 2`);
  });
});
