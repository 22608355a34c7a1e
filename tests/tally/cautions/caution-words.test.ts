import { describe, expect, it } from 'vitest';
import type { Note } from '../../../engine/model.ts';
import { cautionText } from '../../../engine/tally/cautions/caution-words.ts';
import words from '../../../engine/tally/data/caution-words.json' with { type: 'json' };
import english from '../../../engine/tally/data/cautions.json' with { type: 'json' };

const LANGUAGES = ['de', 'fr', 'nl', 'es', 'it', 'pt', 'sv', 'da', 'nb'];
const codes = english.map(({ code }) => code);
const note = (code: string): Note => ({
  code,
  text: 'as it was written',
  key: null,
  figures: { fall: '28', salt: '2.3' },
});

/** What a caution must not lose on its way into another language. */
const numbersOf = (text: string): string[] => text.match(/\d+|\{\w+\}/g) ?? [];

describe('cautions in the recipe’s language', () => {
  it('there is one of each in every language, and no other', () => {
    expect(Object.keys(words).sort()).toEqual([...LANGUAGES].sort());
    for (const own of Object.values(words))
      expect(Object.keys(own).sort()).toEqual([...codes].sort());
  });

  it.each(LANGUAGES)('%s keeps every figure of the English words', (language) => {
    const own = (words as Record<string, Record<string, string>>)[language] ?? {};
    for (const { code, words: said } of english) {
      // Degrees are given in Celsius alone outside English.
      const wanted = numbersOf(said.replaceAll(/ \(\d+ °F\)/g, ''));
      expect(numbersOf(own[code] ?? '').sort(), code).toEqual(wanted.sort());
    }
  });

  it.each(LANGUAGES)('%s says none of them in English', (language) => {
    for (const { code, words: said } of english) {
      expect(cautionText(note(code), language)).not.toBe(cautionText(note(code), 'en'));
      expect(cautionText(note(code), language)).not.toContain('{');
      expect(said).not.toBe('');
    }
  });

  it('writes figures as the language does, and region and case do not matter', () => {
    expect(cautionText(note('SALTY'), 'en-GB')).toContain('2.3 g');
    expect(cautionText(note('SALTY'), 'de-CH')).toContain('2,3 g');
    expect(cautionText(note('FEWER_CARBS_HYPO'), 'SV_se')).toContain('28 g mindre');
    expect(cautionText(note('RAW_DOUGH'), 'nn')).toBe(cautionText(note('RAW_DOUGH'), 'nb'));
  });

  it('falls back to English, and a note that is no caution keeps its text', () => {
    expect(cautionText(note('RAW_DOUGH'), 'el')).toBe('Do not taste raw dough or batter.');
    expect(cautionText(note('RAW_DOUGH'), null)).toBe('Do not taste raw dough or batter.');
    expect(cautionText(note('RAW_DOUGH'), 'constructor')).toBe('Do not taste raw dough or batter.');
    expect(cautionText(note('TOSTRING'), 'de')).toBe('as it was written');
  });
});
