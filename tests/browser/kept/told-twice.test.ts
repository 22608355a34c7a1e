/** A photo of a bake, and glucose higher than predicted twice: a proposal with its reason, nothing by itself. In both browsers, over a restart. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { LOAF_TEXT } from '../drive/bench.ts';
import { type Hand, kept, openedKept, openHand, pasted } from '../drive/hand.ts';

const FIGURE = `return seen(document.querySelector('.recipe .verdict').textContent)`;

async function toBakes(hand: Hand): Promise<void> {
  await hand.run(`location.hash = 'bakes'`);
  await hand.wait(`return document.querySelector('.bake-log summary') !== null`);
}

/** An invented bake after which glucose was higher than predicted. */
async function bake(hand: Hand, count: number): Promise<void> {
  await hand.run(`document.querySelector('.bake-log details').open = true`);
  await hand.wait(`return document.querySelector('details[data-fold="faults-body"]') !== null`);
  await hand.run(`
    const fold = document.querySelector('details[data-fold="faults-body"]');
    fold.open = true;
    fold.dispatchEvent(new Event('toggle'));
  `);
  await hand.wait(`return named('label', 'Glucose higher than predicted') !== undefined`);
  await hand.run(`field('Glucose higher than predicted').click()`);
  await hand.run(`document.querySelector('.bake-form').requestSubmit()`);
  await hand.wait(`return all('.bakes > li').length === ${count}`);
}

/** Puts a drawn picture, larger than what is kept, into the first bake's field for photos. */
const CHOOSE = `
  const canvas = document.createElement('canvas');
  canvas.width = 1800;
  canvas.height = 1200;
  canvas.getContext('2d').fillRect(100, 100, 900, 600);
  const blob = await new Promise((done) => canvas.toBlob(done, 'image/png'));
  const chosen = new DataTransfer();
  chosen.items.add(new File([blob], 'loaf.png', { type: 'image/png' }));
  const input = document.querySelector('.bakes .photo-part input[type=file]');
  input.files = chosen.files;
  input.dispatchEvent(new Event('change', { bubbles: true }));
`;

describe.each(['chromium', 'firefox'] as const)('what was told of two bakes, in %s', (browser) => {
  let hand: Hand;
  let figure: unknown;

  beforeAll(async () => {
    hand = await openHand(browser);
    await pasted(hand, LOAF_TEXT);
    figure = await hand.run(FIGURE);
    await kept(hand);
    await toBakes(hand);
  });

  afterAll(() => hand?.end());

  it('is no pattern after the first: nothing is proposed', async () => {
    await bake(hand, 1);
    expect(await hand.run(`return all('.proposals li').length`)).toBe(0);
  });

  it('is answered after the second with what to check, and why', async () => {
    await bake(hand, 2);
    await hand.wait(`return document.querySelector('.proposals li') !== null`);
    const told = String(
      await hand.run(`return seen(document.querySelector('.proposals').textContent)`),
    );
    expect(told).toMatch(/package/);
    expect(told).toMatch(/count its fibre as carbohydrate/);
    expect(told).toMatch(/Source:/);
    expect(told).not.toMatch(/insulin unit|units of|dose of/i);
  });

  it('changes no figure by itself', async () => {
    await hand.run(`location.hash = 'recipe'`);
    await hand.wait(`return document.querySelector('.recipe[aria-busy=false] .verdict') !== null`);
    expect(await hand.run(FIGURE)).toBe(figure);
    await toBakes(hand);
  });

  it('has a photo, made small, which stays over a restart with the proposal', async () => {
    await hand.wait(
      `return document.querySelector('.bakes .photo-part input[type=file]') !== null`,
    );
    await hand.run(CHOOSE);
    await hand.wait(`return document.querySelector('.bakes img.photo') !== null`);
    await hand.restart();
    await openedKept(hand);
    await toBakes(hand);
    await hand.wait(`return document.querySelector('.proposals li') !== null`);
    await hand.wait(`
      const photo = document.querySelector('.bakes img.photo');
      return photo !== null && photo.complete && photo.naturalWidth > 0;
    `);
    const width = Number(
      await hand.run(`return document.querySelector('.bakes img.photo').naturalWidth`),
    );
    expect(width).toBeGreaterThan(100);
    expect(width).toBeLessThan(1800);
  });
});
