/** Limits, notes and questions in other languages. */
import { describe, expect, it } from 'vitest';
import noteWords from '../../../engine/rewrite/languages/data/note-words.json' with {
  type: 'json',
};
import { toldNote } from '../../../engine/rewrite/languages/told-notes.ts';

const TAGS = ['da', 'de', 'es', 'fr', 'it', 'nb', 'nl', 'pt', 'sv'] as const;
const WORDS: Readonly<Record<string, Readonly<Record<string, string>>>> = noteWords;

const marks = (text: string): string[] =>
  (text.match(/\{\w+\}|\d+/g) ?? [])
    // Why the visible page was read is left out: it is about its markup.
    .filter((mark) => mark !== '{line}')
    .sort();

describe.each(TAGS)('notes in %s', (tag) => {
  it('have every sentence, with the figures and blanks of the English', () => {
    for (const [english, said] of Object.entries(WORDS)) {
      expect(said[tag], english).toBeTruthy();
      expect(marks(said[tag] ?? ''), english).toEqual(marks(english));
      expect(said[tag], english).not.toMatch(/\b(?:the|with|would|servings|until)\b/);
    }
  });

  it('are told with decimals as the language writes them', () => {
    const text = 'This way a serving has 15.6 g net carbs; the budget is 15 g.';
    expect(toldNote(text, tag)).toMatch(/15,6 g .*15 g/);
  });
});

it('tells a sentence and what stands behind it', () => {
  const text =
    'Beyond this it would no longer be the dish it is. Without this limit a serving would have 3.2 g less net carbs.';
  expect(toldNote(text, 'de-AT')).toBe(
    'Darüber hinaus wäre es nicht mehr dasselbe Gericht. Ohne diese Grenze hätte eine Portion 3,2 g weniger Netto-Kohlenhydrate.',
  );
});

it('names foods in the language, and the part of the dish', () => {
  expect(toldNote('There is no good stand-in for the banana here; use less of it.', 'nl')).toMatch(
    /: banaan\.$/,
  );
  expect(
    toldNote('Guss: sweetness has to match; a less sweet result would allow more.', 'de'),
  ).toBe('Guss: Die Süße muss gleich bleiben; weniger süß ginge mehr.');
});

it('tells the reason of a change, clause by clause', () => {
  const text =
    'Net carbs from this line fall from 25 to 7.5 g a serving; 40 g sugar stays, as much as the 15 g budget and the dish allow.';
  expect(toldNote(text, 'de')).toBe(
    'Die Netto-Kohlenhydrate aus dieser Zutat sinken von 25 auf 7,5 g je Portion; es bleiben 40 g Zucker, so viel wie das Budget von 15 g und das Gericht erlauben.',
  );
});

it('keeps the words of the page as they are', () => {
  expect(
    toldNote('Left as it is, because its weight is not known: 2.5 dl crème. Frisk.', 'sv'),
  ).toBe('Oförändrat, eftersom vikten inte är känd: 2.5 dl crème. Frisk.');
  expect(toldNote('Left as it is, because its weight is not known: $& {line}', 'fr')).toMatch(
    /: \$& \{line\}$/,
  );
});

it('leaves English to English, to other languages and to sentences without words', () => {
  const known = 'No method was found.';
  expect(toldNote(known, 'en')).toBeNull();
  expect(toldNote(known, 'fi')).toBeNull();
  expect(toldNote(`${known} Nobody translated this one.`, 'de')).toBeNull();
  expect(toldNote('Nobody translated this one.', 'de')).toBeNull();
});

it('puts the source of a figure into the language too', () => {
  const estimated = (source: string): string =>
    `Estimated 4, from about 1356 g finished and 350 g each (${source}). Set the servings you cut.`;
  expect(
    toldNote(
      estimated('a plate as pages serve it, 300 to 450 g: common practice, no source'),
      'de',
    ),
  ).toMatch(/\(ein Teller, wie Seiten ihn servieren, 300 bis 450 g: übliche Praxis, ohne Quelle\)/);
  expect(toldNote(estimated('21 CFR 101.12(b): pancakes, crepes'), 'nl')).toMatch(
    /\(21 CFR 101\.12\(b\)\)/,
  );
});

it('tells both of what markup and page say', () => {
  expect(
    toldNote('Markup says ‘0.25 cup olive oil’, the page shows ‘¼ cup olive oil’.', 'de'),
  ).toBe('Im Quelltext steht „0.25 cup olive oil“, auf der Seite „¼ cup olive oil“.');
});
