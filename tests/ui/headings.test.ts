import { expect, it } from 'vitest';
import { isHeading } from '../../extension/ui/headings.ts';
import { adaptedText } from './adapted.ts';

it('lines that only head others are told from ingredients, additions and lines not counted', () => {
  const adaptation = adaptedText(
    'Tart\n\n200 g flour\n100 g butter\nFor the top\n500 g apples\n1 zibbelwort\n\nBake.\n\nServes 8',
  );
  const headings = adaptation.lines.filter((line) => isHeading(line, adaptation));
  expect(headings.map(({ before }) => before)).toEqual(['For the top']);
  expect(adaptation.lines.some(({ before }) => before === '1 zibbelwort')).toBe(true);
  expect(adaptation.lines.some(({ change }) => change === 'added')).toBe(true);
});
