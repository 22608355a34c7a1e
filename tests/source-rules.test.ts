import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const ROOT = join(import.meta.dirname, '..');

/** What the extension pages' policy cannot hold back, and what would turn text into markup. */
const FORBIDDEN: readonly [name: string, pattern: RegExp][] = [
  ['a connection by link', /preconnect|dns-prefetch/],
  ['a peer connection', /RTCPeerConnection/],
  ['markup from text', /dangerouslySetInnerHTML|\.(inner|outer)HTML\s*=|insertAdjacentHTML/],
  ['code from text', /\beval\(|new Function\(/],
  ['a request', /\bfetch\(|XMLHttpRequest|WebSocket\(|EventSource\(|sendBeacon/],
];

/** Addresses that name a vocabulary or a namespace and are never fetched. */
const VOCABULARY =
  /^https?:\/\/(schema\.org|www\.w3\.org|microformats\.org|[a-z.]*\.?example|[a-z.-]+\.invalid)\b/;

const sourceFiles = (folder: string): string[] =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(tsx?|html|css)$/.test(name))
    .map((name) => join(folder, name));

const files = ['engine', 'extension'].flatMap(sourceFiles);

describe('shipped source', () => {
  it('is found', () => {
    expect(files.length).toBeGreaterThan(20);
  });

  it.each(FORBIDDEN)('holds no %s', (_, pattern) => {
    const guilty = files.filter((file) => pattern.test(readFileSync(join(ROOT, file), 'utf8')));
    expect(guilty).toEqual([]);
  });

  it('names no address outside vocabularies', () => {
    const guilty = files.flatMap((file) =>
      (readFileSync(join(ROOT, file), 'utf8').match(/https?:\/\/[\w.-]+/g) ?? [])
        .filter((address) => !VOCABULARY.test(address))
        .map((address) => `${file}: ${address}`),
    );
    expect(guilty).toEqual([]);
  });
});
