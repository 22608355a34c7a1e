/** Lists of a base and many ways to finish it. Invented recipes. */
import { describe, expect, it } from 'vitest';
import { parseLine } from '../../engine/parse/index.ts';
import { linesOfOneVersion } from '../../engine/weigh/one-version.ts';

type Part = readonly [title: string | null, ...lines: string[]];

const BASE: Part = ['Bar base', '200 g rolled oats', '100 g almond butter', '50 g honey'];
const APRICOT: Part = ['Apricot', '60 g dried apricots', '1 tsp lemon zest'];
const COCOA: Part = ['Cocoa', '2 tbsp cocoa powder', '50 g dark chocolate'];
const SPICE: Part = ['Spice', '1 tsp cinnamon', '40 g raisins'];

const countedIn = (title: string, parts: readonly Part[]): string[] => {
  const lines = parts.flatMap(([group, ...texts]) =>
    texts.map((text) => parseLine(text, { group })),
  );
  return linesOfOneVersion(lines, title)
    .filter(({ kind }) => kind === 'ingredient')
    .map(({ text }) => text);
};

const textsOf = (parts: readonly Part[]): string[] => parts.flatMap(([, ...texts]) => texts);

describe('a title that promises so many ways', () => {
  it.each([
    'Oat bars (3 ways)',
    'Oat Bars: Three Easy Ways',
    'Oat bars, 4 flavours',
    '3 Chewy Oat Bar Recipes',
  ])('%s: the base and the first way are counted', (title) => {
    expect(countedIn(title, [BASE, APRICOT, COCOA, SPICE])).toEqual(textsOf([BASE, APRICOT]));
  });

  it('knows a base without a title', () => {
    const [, ...lines] = BASE;
    const base: Part = [null, ...lines];
    expect(countedIn('Oat bars 3 ways', [base, APRICOT, COCOA, SPICE])).toEqual(
      textsOf([base, APRICOT]),
    );
  });

  it.each([
    ['the title promises none', 'Oat bars with three fruits', [BASE, APRICOT, COCOA, SPICE]],
    ['it tells a count of something else', '3 Ingredient Oat Bars', [BASE, APRICOT, COCOA, SPICE]],
    ['other parts follow', 'Oat bars, 8 ways', [BASE, APRICOT, COCOA]],
    ['there is no base', 'Oat bars 3 ways', [APRICOT, COCOA, SPICE]],
  ])('counts every line where %s', (_, title, parts) => {
    expect(countedIn(title, parts as Part[])).toEqual(textsOf(parts as Part[]));
  });
});
