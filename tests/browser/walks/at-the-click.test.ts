/** What the popup says before there are figures, and where there are none. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Driven, openDriven } from '../drive/both.ts';
import { buildBoth } from '../drive/build.ts';
import { LOAF } from '../drive/places.ts';
import { removeFolder } from '../drive/remove-folder.ts';
import { type Served, serveDemo } from '../drive/server.ts';

/** A dish that stands among the links of a page, where the reader of pages does not look. */
const LETTER = `<!doctype html><html lang="en"><title>A letter</title>
<p>We walked along the river, and in the evening I wrote down what she bakes.</p>
<nav id="dish">Pan loaf<br>Serves 4<br>300 g bread flour<br>200 g water<br>6 g salt<br>Method<br>
Mix everything and let it rest for an hour.<br>Bake at 220 °C for 40 minutes.</nav>
<p>Write soon.</p>`;

/** A page that is busy for some seconds. */
const BUSY = `setTimeout(() => { const end = Date.now() + 6000; while (Date.now() < end); }, 50); return true;`;

/** How the word that something is being done stands on the screen. */
const WORKING = `
  const part = document.querySelector('.working');
  if (!part) return '';
  const [appears] = part.getAnimations();
  return JSON.stringify({
    words: part.textContent.trim(),
    seen: getComputedStyle(part).opacity,
    after: appears?.effect.getTiming().delay ?? null,
    at: appears?.currentTime ?? null,
  });
`;

describe.each(['chromium', 'firefox'] as const)('in %s', (engine) => {
  let folder: string;
  let pages: Served;
  let driven: Driven;

  beforeAll(async () => {
    buildBoth();
    folder = mkdtempSync(join(tmpdir(), 'crumbshift-click-'));
    pages = await serveDemo({ '/letter.html': LETTER });
    driven = await openDriven(engine, { profile: folder });
    await driven.open('options.html');
    await driven.evaluate(
      `await chrome.storage.local.set({ preferences: { welcomed: true } }); return true;`,
    );
  }, 400_000);

  afterAll(async () => {
    await driven?.close();
    await pages?.close();
    removeFolder(folder);
  });

  // Firefox cannot be driven while its page is busy, and reads one that takes breaths in one of them.
  const inChromium = engine === 'chromium' ? it : () => {};
  inChromium(
    'a page that takes its time: said after a third of a second, and gone with the figures',
    async () => {
      await driven.visit(`${pages.origin}/${LOAF}`);
      await driven.evaluate(BUSY);
      await driven.click();
      const drawn = JSON.parse(String(await driven.waitFor(WORKING)));
      expect(drawn).toMatchObject({ words: 'Reading the page…', after: 300 });
      await driven.waitFor(`
      const part = document.querySelector('.working');
      return part && getComputedStyle(part).opacity === '1';`);
      expect(await driven.evaluate(`return document.querySelector('.verdict') === null;`)).toBe(
        true,
      );
      await driven.waitFor(
        `return document.querySelector('main[aria-busy=false] .verdict') !== null;`,
      );
      expect(await driven.evaluate(`return document.querySelector('.working') === null;`)).toBe(
        true,
      );
      await driven.closeTab();
    },
  );

  it('no recipe on the page: what is selected there is used in its place', async () => {
    await driven.visit(`${pages.origin}/letter.html`);
    await driven.evaluate(
      `getSelection().selectAllChildren(document.getElementById('dish')); return true;`,
    );
    await driven.click();
    await driven.waitFor(`
      const use = [...document.querySelectorAll('.no-recipe button')]
        .find((one) => one.textContent === 'Use the text I have selected');
      use?.click();
      return use !== undefined;`);
    await driven.goToOther('bench.html');
    await driven.waitFor(
      `return document.querySelector('.recipe[aria-busy=false] .verdict') !== null;`,
    );
    const said = String(await driven.evaluate('return document.body.innerText;'));
    for (const words of ['Pan loaf', 'bread flour', 'Mix everything'])
      expect(said).toContain(words);
  });
});
