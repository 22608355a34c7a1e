/** Blends whose line says what they are made of. */
import { expect, test } from 'vitest';
import { parseLine } from '../../engine/parse/index.ts';
import { withBlendSpelledOut } from '../../engine/parse/spelled-out.ts';

const partsOf = (text: string): string[] =>
  withBlendSpelledOut(parseLine(text)).items.map(({ amounts, name }) => {
    const [amount] = amounts;
    return `${amount ? Math.round(amount.quantity * 100) / 100 : '-'} ${amount?.unit} ${name}`;
  });

test.each([
  [
    '2 cups flour blend (1 cup almond flour, ½ cup tapioca starch, ½ cup coconut flour)',
    ['1 cup almond flour', '0.5 cup tapioca starch', '0.5 cup coconut flour'],
  ],
  [
    '2 cups grain-free flour mix (2 cups almond flour, 1 cup tapioca starch and 1 cup coconut flour)',
    ['1 cup almond flour', '0.5 cup tapioca starch', '0.5 cup coconut flour'],
  ],
  [
    '300 g flour blend: 200 g rice flour + 100 g potato starch',
    ['200 g rice flour', '100 g potato starch'],
  ],
])('%s', (text, parts) => {
  expect(partsOf(text)).toEqual(parts);
});

test.each([
  '2 cups flour blend (see notes, 240 g)',
  '2 cups flour blend (280 g, or 250 g of the other kind)',
  '2 cups spring mix (about 2 ounces, 1 bag)',
  '1 cup baking mix, sifted',
  '1 cup flour (120 g, 4 oz)',
])('%s stays one food', (text) => {
  expect(withBlendSpelledOut(parseLine(text)).items).toHaveLength(1);
});
