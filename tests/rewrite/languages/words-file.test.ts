/** Files of words are trusted where recipes are worked out: here every one of them is held to its shape. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { methodWords } from '../../../engine/rewrite/languages/method-words.ts';
import { WordsFile } from '../../../engine/rewrite/languages/words-file.ts';

const DATA = new URL('../../../engine/rewrite/languages/data/', import.meta.url);
const files = readdirSync(DATA).filter((name) => /^[a-z]{2}\.json$/.test(name));

describe('words of steps', () => {
  it.each(files)('of %s are all there, and no others', (name) => {
    const read = WordsFile.safeParse(JSON.parse(readFileSync(new URL(name, DATA), 'utf8')));
    expect(read.error?.issues ?? []).toEqual([]);
    expect(methodWords(name.slice(0, 2))).toEqual({ ...read.data, tag: name.slice(0, 2) });
  });

  it('are of nine languages', () => {
    expect(files).toHaveLength(9);
  });

  it('would be found out with one missing', () => {
    expect(WordsFile.safeParse({ and: 'und' }).success).toBe(false);
  });
});
