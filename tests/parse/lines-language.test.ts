/** The language of a recipe's lines against what its page states. */
import { expect, test } from 'vitest';
import { languageOfLines } from '../../engine/parse/lines-language.ts';

const GERMAN = ['2 EL Sonnenblumenöl', '1 Stk. Limette', '3 Zwiebeln', '0.5 Bund Petersilie'];
const ENGLISH = ['2 tbsp oil', '1 lime', '3 onions, chopped', '1/2 bunch parsley'];

test('lines in another language overrule a page that says English or nothing', () => {
  expect(languageOfLines(GERMAN, 'en')).toBe('de');
  expect(languageOfLines(GERMAN, 'en-GB')).toBe('de');
  expect(languageOfLines(GERMAN, null)).toBe('de');
});

test('a page that states another language knows it', () => {
  expect(languageOfLines(GERMAN, 'nl')).toBe('nl');
  expect(languageOfLines(ENGLISH, 'de')).toBe('de');
});

test('a few foreign lines make no foreign recipe', () => {
  expect(languageOfLines(ENGLISH, 'en')).toBe('en');
  expect(languageOfLines([...ENGLISH, '2 EL Öl', '1 Prise Salz'], 'en')).toBe('en');
  expect(languageOfLines(['2 EL Öl', '1 Prise Salz'], 'en')).toBe('en');
  expect(languageOfLines([], null)).toBeNull();
});
