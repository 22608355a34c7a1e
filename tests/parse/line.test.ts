import { describe, expect, it } from 'vitest';
import { parseLine } from '../../engine/parse/index.ts';

/** Amounts as short text: '2 can; 14 oz each', '1-2 tsp', '3'. */
function amounts(text: string, language?: string): string {
  return parseLine(text, { language: language ?? 'en' })
    .items.flatMap((item) => item.amounts)
    .map((a) => {
      const quantity = Math.round(a.quantity * 1000) / 1000;
      const range = a.max === null ? `${quantity}` : `${quantity}-${a.max}`;
      const kind = a.kind === 'stated' ? '' : ` ${a.kind}`;
      return `${a.approximate ? '~' : ''}${range}${a.unit ? ` ${a.unit}` : ''}${kind}`;
    })
    .join('; ');
}

describe('numbers', () => {
  it.each([
    ['1 1/2 cups milk', '1.5 cup'],
    ['1-1/2 cups milk', '1.5 cup'],
    ['1½ cups milk', '1.5 cup'],
    ['1 ½ cups milk', '1.5 cup'],
    ['1&frac12; cups milk', '1.5 cup'],
    ['1/4 tsp salt', '0.25 tsp'],
    ['1⁄4 tsp salt', '0.25 tsp'],
    ['0.5 l water', '0.5 l'],
    ['1,5 kg potatoes', '1.5 kg'],
    ['1,000 g flour', '1000 g'],
    ['two eggs', '2'],
    ['a dozen eggs', '12'],
    ['half a cup of sugar', '0.5 cup'],
    ['2-3 tbsp oil', '2-3 tbsp'],
    ['2–3 tbsp oil', '2-3 tbsp'],
    ['2 to 3 tbsp oil', '2-3 tbsp'],
    ['2 or 3 carrots', '2-3'],
    ['½ to ¾ cup water', '0.5-0.75 cup'],
    ['one or two onions', '1-2'],
    ['200g flour', '200 g'],
    ['Flour 200 g', '200 g'],
    ['about 200 g flour', '~200 g'],
    ['325ml-350ml warm water', '325-350 ml'],
    ['1 cup to 1½ cups milk', '1-1.5 cup'],
    ['14 oz to 1 lb cod', '14-16 oz'],
    ['1 and 1/2 cups milk', '1.5 cup'],
    ['a couple of tablespoons milk', '2 tbsp'],
    ['a few drops vanilla', '~2-4 drop'],
    ['scant 1/2 cup flour', '~0.5 cup'],
  ])('%s', (text, want) => {
    expect(amounts(text)).toBe(want);
  });
});

describe('sums, products and dual measures', () => {
  it.each([
    ['1 cup plus 2 tbsp flour', '1 cup; 2 tbsp plus'],
    ['1 lb 2 oz beef', '1 lb; 2 oz plus'],
    ['2 x 400 g tins chopped tomatoes', '2 tin; 400 g each'],
    ['2 (14 oz) cans black beans', '2 can; 14 oz each'],
    ['1 can (14 oz) black beans', '1 can; 14 oz each'],
    ['two 8-ounce packages cream cheese', '2 package; 8 oz each'],
    ['4 (6 oz) fillets salmon', '4; 6 oz each'],
    ['1 3/4 cups (210 g) bread flour', '1.75 cup; 210 g same'],
    ['100g/4oz butter', '100 g; 4 oz same'],
    ['2 cups | 250 g flour', '2 cup; 250 g same'],
    ['10 tbsp (5 oz / 142 g) butter', '10 tbsp; 5 oz same; 142 g same'],
    ['475g/1lb 1oz currants', '475 g; 1 lb same; 1 oz plus'],
    ['2-inch piece of ginger', '1 piece; 2 inch each'],
    ['400 g tin coconut milk', '1 tin; 400 g each'],
  ])('%s', (text, want) => {
    expect(amounts(text)).toBe(want);
  });
});
