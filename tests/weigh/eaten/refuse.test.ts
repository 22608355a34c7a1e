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

test.each([
  ['1 (3 pound) rotisserie chicken', 680],
  ['1 rotisserie chicken', 600],
  ['1 whole cooked chicken', 600],
  ['1 cooked whole chicken, meat picked off', 600],
  ['1 cooked chicken', 600],
  ['2 cooked chicken breasts', 344],
  ['1 (3 1/2 pounds) whole chicken, roasted and sliced (about 1 pound)', 454],
  ['1 whole chicken (3 lb), poached and shredded (about 4 cups)', 560],
  ['1 (4-pound) rotisserie chicken, meat shredded (about 4 cups)', 560],
  ['1 rotisserie chicken (about 2 lb), shredded (about 3 cups)', 420],
  ['1 lb rotisserie chicken meat', 454],
  ['1 - 4 pound whole chicken', 1234],
  ['1 - 3 pound beef chuck roast', 1361],
  ['1 - 2 pounds ground chicken', 680],
  ['2 lb cooked chicken, shredded', 907],
])('the meat of a bird bought cooked: %s', (text, expected) => {
  expect(grams(text)).toBeCloseTo(expected, -1);
});

test('cooked bacon in cups is what is left of the raw pound', () => {
  expect(grams('1 lb bacon, cooked and crumbled (about 2 cups)')).toBeCloseTo(160, -1);
});
