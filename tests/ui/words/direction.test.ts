import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const EXTENSION = join(import.meta.dirname, '../../../extension');

/** Opening tags that name a language: of a page's own words, and of the engine's, which are never written from the right. */
const tags = readdirSync(EXTENSION, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.tsx'))
  .flatMap((name) => [
    ...readFileSync(join(EXTENSION, name), 'utf8').matchAll(
      /<[a-z]\w*(?:\s[^<]*?)?\slang=\{[^<]*?>/g,
    ),
  ])
  .map(([tag]) => tag.replace(/\s+/g, ' '))
  .filter((tag) => !/engineLang\(\)|lang=\{told\.lang\}/.test(tag));

describe('words of a page', () => {
  it('may be written from the right: whatever has their language finds their direction', () => {
    expect(tags.length).toBeGreaterThan(15);
    expect(tags.filter((tag) => !tag.includes('dir="auto"'))).toEqual([]);
  });
});
