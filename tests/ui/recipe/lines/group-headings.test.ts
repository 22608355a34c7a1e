import { expect, it } from 'vitest';
import { adaptRecipe, DEFAULT_GOALS } from '../../../../engine/index.ts';
import { isHeading } from '../../../../extension/ui/recipe/lines/group-headings.ts';
import { adaptedText } from '../../adapted.ts';

it('lines that only head others are told from ingredients, additions and lines not counted', () => {
  const { recipe } = adaptedText('Tart\n\n200 g flour\n100 g butter\n\nBake.\n\nServes 8');
  // Some pages list the heading of a part as one more ingredient.
  const lines = ['200 g flour', '100 g butter', 'For the top:', '500 g apples', '1 zibbelwort'];
  const adaptation = adaptRecipe({ ...recipe, groups: [{ title: null, lines }] }, DEFAULT_GOALS);
  const headings = adaptation.lines.filter((line) => isHeading(line, adaptation));
  expect(headings.map(({ before }) => before)).toEqual(['For the top:']);
  expect(adaptation.lines.some(({ before }) => before === '1 zibbelwort')).toBe(true);
  expect(adaptation.lines.some(({ change }) => change === 'added')).toBe(true);
});
