/** The background answers pages of the extension only. */
import { describe, expect, it } from 'vitest';
import { isOwnPage, isOwnScript } from '../../../extension/entrypoints/background/senders.ts';

const OWN = 'abcdef';
const ROOT = 'chrome-extension://abcdef/';

describe('the sender of a message', () => {
  it.each([
    ['popup', { id: OWN, url: `${ROOT}popup.html` }, true],
    ['full page', { id: OWN, url: `${ROOT}bench.html?work=1#recipe` }, true],
    ['script in a web page', { id: OWN, url: 'https://kitchen.example/loaf' }, false],
    [
      'page that looks alike',
      { id: OWN, url: 'chrome-extension://abcdef.example/popup.html' },
      false,
    ],
    ['another extension', { id: 'other', url: `${ROOT}popup.html` }, false],
    ['nobody known', {}, false],
    ['no address', { id: OWN }, false],
  ])('%s', (_, sender, own) => {
    expect(isOwnPage(sender, OWN, ROOT)).toBe(own);
  });

  it('may be a script in a page for what harms nothing', () => {
    expect(isOwnScript({ id: OWN, url: 'https://kitchen.example/loaf' }, OWN)).toBe(true);
    expect(isOwnScript({ id: 'other' }, OWN)).toBe(false);
  });
});
