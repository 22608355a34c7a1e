import { afterEach, describe, expect, it } from 'vitest';
import { amount, digitsOf, rangeText } from '../../../extension/ui/figures/format.ts';
import { factorText } from '../../../extension/ui/recipe/shown-amounts.ts';
import {
  languageOf,
  say,
  sayCount,
  sayList,
  sayWith,
  speak,
} from '../../../extension/ui/words/say.ts';

afterEach(() => speak('en'));

describe('words in the user’s language', () => {
  it('follow a tag with a region, and English where there is none', () => {
    expect(['de', 'de-AT', 'DE-ch', 'fr-FR', ''].map(languageOf)).toEqual([
      'de',
      'de',
      'de',
      'en',
      'en',
    ]);
  });

  it('put their parts in, as text or as marked-up pieces', () => {
    expect(say('numberFromTo', 1, 9)).toBe('A number from 1 to 9.');
    expect(sayWith('verdictOnly', 'A roll', 'x')).toEqual([
      '',
      'A roll',
      ' has about ',
      'x',
      ' of net carbs.',
    ]);
  });

  it('have a form for one and for many', () => {
    expect([1, 2, 0].map((count) => sayCount('linesNotCounted', count))).toEqual([
      'one line not counted',
      '2 lines not counted',
      '0 lines not counted',
    ]);
  });

  it('write numbers and lists as the language does', () => {
    expect(amount(14.84)).toBe('14.8');
    speak('de-DE');
    expect(amount(14.84)).toBe('14,8');
    expect(digitsOf(1234.5, 1)).toBe('1234,5');
    expect(rangeText({ low: 1.24, best: 2, high: 3.46 })).toBe('1,2–3,5 g');
    expect(sayList(['Mehl', 'Zucker', 'Salz'])).toBe('Mehl, Zucker und Salz');
    expect([2, 0.5, 1.25].map(factorText)).toEqual(['×2', '×½', '×1,25']);
    expect(say('keep')).toBe('Merken');
  });
});
