/** What is thrown away of a mass as bought. */
import { expect, test } from 'vitest';
import { foodTable } from '../../../engine/foods/index.ts';
import { matchItem } from '../../../engine/match/index.ts';
import { parseLine } from '../../../engine/parse/index.ts';
import { weighItem } from '../../../engine/weigh/index.ts';

const foods = foodTable();

function grams(text: string, title = '', language = 'en'): number | undefined {
  const line = parseLine(text, { language });
  const [item] = line.items;
  if (!item) return undefined;
  const food = foods.byId(matchItem(item, line, { foods, language })?.foodId ?? '');
  const recipe = { title, steps: [], lines: [line] };
  return weighItem(item, line, food, { region: 'us', recipe })?.grams.best;
}

test.each([
  ['peel goes into a marmalade', grams('500 g lemons', 'Quick lemon marmalade'), 500],
  ['and not into a drink', grams('500 g lemons', 'Lemonade'), 265],
  [
    'bones are out though boneless ones would do',
    grams('1000 g bone-in chicken thighs (can also use boneless)'),
    800,
  ],
  ['a net weight is net', grams('500 g Rotkohl (Nettogewicht)', '', 'de'), 500],
])('%s', (_why, counted, expected) => {
  expect(counted).toBeCloseTo(expected, 0);
});

test('cherry plums are far smaller than plums', () => {
  expect(grams('10 cherry plums')).toBeCloseTo(150, 0);
});
