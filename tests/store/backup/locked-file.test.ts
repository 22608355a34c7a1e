import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isLocked, lockText, unlockText } from '../../../extension/store/backup/locked-file.ts';

const PHRASE = 'seven sour rye loaves';

describe('a locked file', () => {
  it('opens to the same text with its passphrase, whatever both are', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.string({ unit: 'grapheme', maxLength: 400 }),
        fc.string({ unit: 'grapheme', minLength: 8, maxLength: 40 }),
        async (text, phrase) => {
          const file = await lockText(text, phrase);
          expect(isLocked(file)).toBe(true);
          // What is no whole character does not outlive any encoding as UTF-8.
          const whole = new TextDecoder().decode(new TextEncoder().encode(text));
          expect(await unlockText(file, phrase)).toEqual({ ok: true, text: whole });
        },
      ),
      { numRuns: 8, seed: 7 },
    );
  });

  it('opens after many parts, too', async () => {
    const text = 'Rye and caraway, 10 g. '.repeat(20_000);
    const file = await lockText(text, PHRASE);
    expect(await unlockText(file, PHRASE)).toEqual({ ok: true, text });
  });

  it('does not show its text, and is another file every time', async () => {
    const [one, two] = [
      await lockText('Sunday rolls', PHRASE),
      await lockText('Sunday rolls', PHRASE),
    ];
    expect(one).not.toContain('Sunday');
    expect(atob(JSON.parse(one).sealed)).not.toContain('Sunday');
    expect(JSON.parse(one).sealed).not.toBe(JSON.parse(two).sealed);
    expect(JSON.parse(one).seal.nonce).not.toBe(JSON.parse(two).seal.nonce);
    expect(JSON.parse(one).key).toMatchObject({ by: 'PBKDF2-HMAC-SHA-256', rounds: 600_000 });
  });

  it('takes letters typed on another keyboard for the same', async () => {
    const file = await lockText('x', 'Br\u00f6tchen am Sonntag');
    expect(await unlockText(file, 'Bro\u0308tchen am Sonntag')).toEqual({ ok: true, text: 'x' });
  });

  it('stays closed to another passphrase and after any change', async () => {
    const file = await lockText('Sunday rolls', PHRASE);
    expect(await unlockText(file, 'seven sour rye loave')).toEqual({
      ok: false,
      why: 'passphrase',
    });
    const parsed = JSON.parse(file);
    const flipped = (text: string) => (text.startsWith('A') ? 'B' : 'A') + text.slice(1);
    const changed = [
      { ...parsed, sealed: flipped(parsed.sealed) },
      { ...parsed, key: { ...parsed.key, rounds: 599_999 } },
      { ...parsed, key: { ...parsed.key, salt: flipped(parsed.key.salt) } },
      { ...parsed, seal: { ...parsed.seal, nonce: flipped(parsed.seal.nonce) } },
    ];
    for (const one of changed)
      expect(await unlockText(JSON.stringify(one), PHRASE)).toEqual({
        ok: false,
        why: 'passphrase',
      });
  });

  it('says when it is damaged, and asks for no endless work', async () => {
    const file = await lockText('Sunday rolls', PHRASE);
    const parsed = JSON.parse(file);
    const endless = { ...parsed, key: { ...parsed.key, rounds: 1e12 } };
    for (const text of [
      '',
      file.slice(0, 200),
      '{}',
      JSON.stringify(endless),
      JSON.stringify({ ...parsed, sealed: '#' }),
    ])
      expect(await unlockText(text, PHRASE)).toEqual({ ok: false, why: 'damaged' });
  });
});
