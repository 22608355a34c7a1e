import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { LANGUAGES, type Language } from '../../../extension/ui/words/say.ts';

const EXTENSION = join(import.meta.dirname, '../../../extension');

/** Everything that may name a message: code, and the manifest's own placeholders. */
const sources = [
  ...readdirSync(EXTENSION, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join(EXTENSION, name)),
  join(EXTENSION, '../wxt.config.ts'),
].map((file) => readFileSync(file, 'utf8'));
const code = sources.join('\n');

const { en, ...others } = LANGUAGES;
const keys = Object.keys(en);
const others_ = Object.entries(others) as [
  Exclude<Language, 'en'>,
  Record<string, { message: string }>,
][];

const placeholders = (message: string): string[] =>
  [...new Set(message.match(/\$[1-9]/g) ?? [])].sort();
const forms = (message: string): number => message.split(' | ').length;

describe('the messages', () => {
  it('are all used', () => {
    const unused = keys.filter(
      (key) => !code.includes(`'${key}'`) && !code.includes(`__MSG_${key}__`),
    );
    expect(unused).toEqual([]);
  });

  it.each(others_)('are all there in %s, and no others', (_, catalogue) => {
    expect(Object.keys(catalogue).sort()).toEqual([...keys].sort());
  });

  it.each(others_)('have the same parts and forms in %s', (_, catalogue) => {
    const wrong = Object.entries(en).filter(([key, { message }]) => {
      const other = catalogue[key]?.message ?? '';
      return (
        other.trim() === '' ||
        forms(other) !== forms(message) ||
        placeholders(other).join() !== placeholders(message).join()
      );
    });
    expect(wrong.map(([key]) => key)).toEqual([]);
  });

  it('differ between the languages, but for names and units', () => {
    const same = keys.filter((key) =>
      others_.some(
        ([, catalogue]) =>
          catalogue[key]?.message === (en as Record<string, { message: string }>)[key]?.message,
      ),
    );
    // Most of them: a file that was copied and not translated would have nearly all.
    expect(same.length).toBeLessThan(keys.length / 20);
  });
});
