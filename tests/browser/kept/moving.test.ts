/** Sharing and moving, in both browsers: a picture, a page of one's own, a locked file to another browser. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { LOAF_TEXT } from '../drive/bench.ts';
import { type Hand, kept, openedKept, openHand, pasted } from '../drive/hand.ts';

const PHRASE = 'seven sour rye loaves';

/** Files that are handed over from now on stay in the page as well. */
const CATCH = `
  window.handed = [];
  const make = URL.createObjectURL.bind(URL);
  URL.createObjectURL = (blob) => { window.handed.push(blob); return make(blob); };
`;

const choose = (text: string) => `
  const input = document.querySelector('.transfer input[type=file]');
  const files = new DataTransfer();
  files.items.add(new File([${JSON.stringify(text)}], 'kept.json', { type: 'application/json' }));
  input.files = files.files;
  input.dispatchEvent(new Event('change', { bubbles: true }));
`;

async function openPart(hand: Hand, name: string): Promise<void> {
  await hand.run(`
    const part = document.querySelector('details[data-fold="${name}"]');
    part.open = true;
    part.dispatchEvent(new Event('toggle'));
  `);
}

describe.each(['chromium', 'firefox'] as const)('sharing and moving, in %s', (browser) => {
  let here: Hand;
  let there: Hand | undefined;
  let locked = '';

  beforeAll(async () => {
    here = await openHand(browser);
    await pasted(here, LOAF_TEXT);
    await kept(here);
    await here.run(CATCH);
  });

  afterAll(async () => {
    await here?.end();
    await there?.end();
  });

  it('saves a picture of the figures', async () => {
    await openPart(here, 'files');
    await here.wait(`return document.querySelector('.share-part') !== null`);
    await here.run(`press('Save a picture', '.share-part')`);
    await here.wait(`return window.handed.some(({ type }) => type === 'image/png')`);
    const seen = await here.run(`
      const png = window.handed.find(({ type }) => type === 'image/png');
      const picture = await createImageBitmap(png);
      const canvas = new OffscreenCanvas(picture.width, picture.height);
      const pen = canvas.getContext('2d');
      pen.drawImage(picture, 0, 0);
      const { data } = pen.getImageData(0, 0, picture.width, picture.height);
      const colours = new Set();
      for (let at = 0; at < data.length; at += 4 * 97)
        colours.add(data[at] + ' ' + data[at + 1] + ' ' + data[at + 2]);
      return [picture.width, picture.height, colours.size > 8].join();
    `);
    expect(seen).toBe('1200,675,true');
  });

  it('saves what may be published, without the steps', async () => {
    await here.run(`window.handed.length = 0; press('Save for publishing', '.share-part')`);
    const text = String(await here.wait(`return window.handed[0]?.text()`));
    expect(text).toContain('# Plain loaf');
    expect(text).toContain('left out on purpose');
    expect(text).not.toContain('Let the dough rise for 10 hours');
  });

  it('puts all in a locked file, and says what a lost passphrase means', async () => {
    await here.run(`location.hash = 'kept'`);
    await here.wait(`return document.querySelector('.transfer') !== null`);
    await openPart(here, 'locked');
    await here.says('If you lose the passphrase, the file is lost');
    await here.run(`type('Passphrase', 'short')`);
    await here.run(`document.querySelector('.lock-form').requestSubmit()`);
    await here.says('At least 8 characters');
    await here.run(`window.handed.length = 0; type('Passphrase', '${PHRASE}')`);
    await here.run(`document.querySelector('.lock-form').requestSubmit()`);
    locked = String(await here.wait(`return window.handed[0]?.text()`));
    expect(locked).toContain('crumbshift-locked');
    expect(locked).not.toContain('Plain loaf');
  });

  it('opens it in another browser, shows what comes in, and keeps it over a restart', async () => {
    there = await openHand(browser);
    await there.open('bench.html#kept');
    await there.wait(`return document.querySelector('.transfer') !== null`);
    await there.run(choose(locked));
    await there.wait(`return field('Passphrase of this file') !== null`);
    await there.run(`type('Passphrase of this file', 'another phrase')`);
    await there.run(`press('Open it', '.transfer')`);
    await there.says('This passphrase does not open the file');
    await there.run(`type('Passphrase of this file', '${PHRASE}')`);
    await there.run(`press('Open it', '.transfer')`);
    await there.says('One recipe comes in.');
    expect(await there.run(`return all('.kept-link').length`)).toBe(0);
    await there.run(`press('Bring these in')`);
    await there.says('1 recipe added.');
    await there.restart();
    await openedKept(there);
    expect(await there.run(`return document.querySelector('h1').textContent`)).toBe('Plain loaf');
  });

  it('leaves a file alone that is no backup', async () => {
    await here.run(choose('{"recipes": []}'));
    await here.says('not a file that Crumbshift exported. Nothing was changed.');
    expect(await here.run(`return all('.kept-link').length`)).toBe(1);
  });
});
