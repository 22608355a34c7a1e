/** Several kept dishes, photos and a slice weighed in the list, in both browsers, over a restart. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { LOAF_TEXT } from '../drive/bench.ts';
import { type Hand, kept, openedKept, openHand, pasted, stored } from '../drive/hand.ts';

const ROLLS_TEXT = LOAF_TEXT.replace('Plain loaf', 'Plain rolls').replace('12 slices', '16 rolls');

const CATCH = `
  window.handed = [];
  const make = URL.createObjectURL.bind(URL);
  URL.createObjectURL = (blob) => { window.handed.push(blob); return make(blob); };
`;

async function openKeptList(hand: Hand): Promise<void> {
  await hand.open('bench.html#kept');
  await hand.wait(`return all('.kept-link').length === 2`);
  await hand.run(CATCH);
}

describe.each(['chromium', 'firefox'] as const)('several kept dishes, in %s', (browser) => {
  let hand: Hand;

  beforeAll(async () => {
    hand = await openHand(browser);
    for (const text of [LOAF_TEXT, ROLLS_TEXT]) {
      await pasted(hand, text);
      await kept(hand);
    }
    await openKeptList(hand);
    await hand.run(`press('Choose several')`);
    await hand.wait(`return all('.kept-choice').length === 2`);
    await hand.run(`for (const one of all('.kept-choice')) one.click()`);
    await hand.says('2 dishes chosen');
  });

  afterAll(() => hand?.end());

  it('go to one file and one table', async () => {
    await hand.run(`press('A file of these')`);
    const file = JSON.parse(String(await hand.wait(`return window.handed[0]?.text()`)));
    expect(file.recipes).toHaveLength(2);
    await hand.run(`press('A table of figures')`);
    const table = String(await hand.wait(`return window.handed[1]?.text()`));
    expect(table.split('\r\n').filter((row) => /^Plain (loaf|rolls),/.test(row))).toHaveLength(2);
  });

  it('are seen at another budget, taken up, and put back', async () => {
    await hand.run(`press('At another budget')`);
    await hand.wait(`return field('Budget for all of them') !== null`);
    await hand.run(`type('Budget for all of them', '9')`);
    await hand.run(`press('What would change')`);
    await hand.wait(`return all('.replans li').length === 2`);
    await hand.says('budget 9 g, it was 15 g');
    await hand.run(`press('Take it up for')`);
    await hand.says('2 dishes have the new budget');
    await hand.run(`press('Undo', '.several')`);
    await hand.says('2 dishes are as they were');
  });

  it('are bought for together', async () => {
    await hand.run(`press('To buy for all')`);
    await hand.wait(`return location.hash === '#buy' && document.querySelector('.buy') !== null`);
    await hand.says('Plain rolls');
    await hand.says('Plain loaf');
  });

  it('have a photo that is made small and stays', async () => {
    await openKeptList(hand);
    await hand.run(`document.querySelector('.kept-link').click()`);
    await hand.wait(`return document.querySelector('details[data-fold="photo"]') !== null`);
    await hand.run(`
      const part = document.querySelector('details[data-fold="photo"]');
      part.open = true;
      part.dispatchEvent(new Event('toggle'));
    `);
    await hand.wait(`return document.querySelector('.photo-part input') !== null`);
    await hand.run(`
      const canvas = new OffscreenCanvas(2400, 1600);
      canvas.getContext('2d').fillRect(0, 0, 1200, 800);
      const blob = await canvas.convertToBlob({ type: 'image/png' });
      const files = new DataTransfer();
      files.items.add(new File([blob], 'invented.png', { type: 'image/png' }));
      const input = document.querySelector('.photo-part input');
      input.files = files.files;
      input.dispatchEvent(new Event('change', { bubbles: true }));
    `);
    const size = await hand.wait(`
      const photo = document.querySelector('.photo-part img');
      return photo && photo.complete && photo.naturalWidth + 'x' + photo.naturalHeight;
    `);
    expect(size).toBe('1200x800');
    await hand.restart();
    await hand.open('bench.html#kept');
    await hand.wait(`return document.querySelector('.kept-photo') !== null`);
    expect(await hand.run(`return document.querySelector('.kept-photo').src.length < 20000`)).toBe(
      true,
    );
  });

  it('tell what a slice has, in the list, and remember its weight', async () => {
    const weigh = `
      document.querySelector('.row-menu summary').click();
      press('Weigh a slice', '.row-menu');
    `;
    await hand.run(weigh);
    await hand.wait(`return document.querySelector('.row-slice input') !== null`);
    await hand.run(`
      const one = document.querySelector('.row-slice input');
      Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set.call(one, '65');
      one.dispatchEvent(new Event('input', { bubbles: true }));
    `);
    await hand.wait(`return /65 g has \\d/.test(document.querySelector('.row-slice').textContent)`);
    await hand.run(`press('Done', '.row-slice')`);
    await stored(hand, '"grams":65');
    await hand.restart();
    await openedKept(hand);
    await hand.run(`location.hash = 'kept'`);
    await hand.wait(`return document.querySelector('.row-menu') !== null`);
    await hand.run(weigh);
    await hand.wait(`return named('.row-slice button', '65 g') !== undefined`);
    await hand.run(`press('65 g', '.row-slice')`);
    await hand.wait(`return /65 g has \\d/.test(document.querySelector('.row-slice').textContent)`);
  });
});
