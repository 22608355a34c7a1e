/** A page's bytes are decoded as a browser decodes them. */
import { describe, expect, it } from 'vitest';
import { decodePage } from '../../engine/cli/decode-page.ts';
import { growthOf, MOST_GROWTH } from '../faults/growth.ts';

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const bytesOf = (text: string): Uint8Array => Uint8Array.from(text, (sign) => sign.charCodeAt(0));

/** 'crème €' in windows-1252, 'грамм' in windows-1251, 'crème' in UTF-8. */
const WESTERN = 'cr\xe8me \x80';
const CYRILLIC = '\xe3\xf0\xe0\xec\xec';
const CREAM = 'cr\xc3\xa8me';

const page = (head: string, body: string): Uint8Array =>
  bytesOf(`<!doctype html><html><head>${head}</head><body>${body}</body></html>`);

describe('decoding a page', () => {
  it('takes UTF-8 when nothing is said and the bytes are valid', () => {
    expect(decodePage(page('', CREAM), null)).toContain('crème');
  });

  it('takes windows-1252 when nothing is said and the bytes are not UTF-8', () => {
    expect(decodePage(page('', WESTERN), null)).toContain('crème €');
  });

  it.each([
    ['by charset', '<meta charset="windows-1251">'],
    ['without quotes', '<META CHARSET=windows-1251>'],
    ['by content type', "<meta content='text/html; charset=windows-1251' http-equiv=Content-Type>"],
    ['far down the head', `<style>${'a{}'.repeat(9_000)}</style><meta charset="cp1251">`],
    ['after an unknown name', '<meta charset="baker-8"><meta charset="windows-1251">'],
    [
      'after a comment and a script that name another',
      [
        '<!-- <meta charset="utf-8"> --><script>"<meta charset=utf-8>"</script>',
        '<meta charset="windows-1251">',
      ].join(''),
    ],
  ])('follows a meta tag %s', (_, head) => {
    expect(decodePage(page(head, CYRILLIC), null)).toContain('грамм');
  });

  it('does not look for a meta tag in the body', () => {
    const text = decodePage(page('', `<meta charset="windows-1251">${CREAM}`), null);
    expect(text).toContain('crème');
  });

  it('reads what calls itself UTF-16 in plain bytes as UTF-8', () => {
    expect(decodePage(page('<meta charset="utf-16">', CREAM), null)).toContain('crème');
  });

  it("sets the server's word over the page's, and the byte order mark over both", () => {
    const said = page('<meta charset="utf-8">', CYRILLIC);
    expect(decodePage(said, 'windows-1251')).toContain('грамм');
    const marked = Uint8Array.from([0xef, 0xbb, 0xbf, ...page('', CREAM)]);
    const text = decodePage(marked, 'windows-1251');
    expect(text).toContain('crème');
    expect(text.startsWith('<')).toBe(true);
  });

  it('reads UTF-16 by its byte order mark, in both orders', () => {
    const units = [0xfeff, ...Array.from('<p>grün', (sign) => sign.charCodeAt(0))];
    const little = Uint8Array.from(units.flatMap((unit) => [unit & 0xff, unit >> 8]));
    const big = Uint8Array.from(units.flatMap((unit) => [unit >> 8, unit & 0xff]));
    expect(decodePage(little, null)).toBe('<p>grün');
    expect(decodePage(big, null)).toBe('<p>grün');
  });

  it('replaces bytes that the named encoding does not have', () => {
    expect(decodePage(page('<meta charset="utf-8">', WESTERN), null)).toContain('cr\ufffdme');
  });

  it.each(['', '<', '<!--', '<meta charset=', '<script>', '<meta charset="utf-8'])(
    'stands a page that ends in %j',
    (text) => {
      expect(decodePage(utf8(text), null)).toBe(text);
    },
  );

  it('takes time in proportion to the length of a hostile head', () => {
    const made = (count: number) =>
      utf8('<meta content="'.repeat(count) + '<script>'.repeat(count));
    const run = (bytes: Uint8Array) => decodePage(bytes, null);
    expect(growthOf({ made, run, from: 10_000, doublings: 3 })).toBeLessThan(MOST_GROWTH);
  }, 60_000);
});
