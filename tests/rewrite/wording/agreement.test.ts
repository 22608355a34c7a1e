import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { agreeing, withArticles } from '../../../engine/rewrite/wording/agreement.ts';
import { isPassing } from '../../../engine/rewrite/wording/short-names.ts';
import { foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

describe('a new name among the page’s words', () => {
  it.each([
    ['egg wraps', 'tortilla', 'into a ', 'egg wrap'],
    ['egg wraps', 'tortilla', 'each ', 'egg wrap'],
    ['egg wraps', 'tortillas', 'the ', 'egg wraps'],
    ['high-fibre bun', 'rolls', 'Split ', 'high-fibre buns'],
    ['cauliflower', 'potatoes', 'the ', 'cauliflower'],
  ])('%s for %s behind "%s" is %s', (name, found, before, agrees) => {
    expect(agreeing(name, found, before)).toBe(agrees);
  });

  it('has the article of its own first letter', () => {
    expect(withArticles('into a #egg wrap', '#')).toBe('into an #egg wrap');
    expect(withArticles('an #almond bun, an #wrap', '#')).toBe('an #almond bun, a #wrap');
  });

  it('is only spoken of while something else is done', () => {
    expect(isPassing('While the ', ' is cooking, chop')).toBe(true);
    expect(isPassing('Add the ', ' and stir')).toBe(false);
  });
});

describe('names after the first time', () => {
  const texts = (steps: string[], line: string, to: [string, number][], kept = 0): string[] => {
    const recipe = makeRecipe('Dish', [line, '2 tbsp oil'], steps);
    const read = understand(recipe);
    const plan = makePlan('pasta-dish', read, [{ key: '0', kept, to }]);
    return rewriteRecipe(recipe, read, plan, { foods, region: 'us' }).steps.map(
      ({ after }) => after,
    );
  };

  it('are the page’s own where some of the food stays', () => {
    const said = texts(
      ['Cook the penne.', 'While the penne is cooking, heat the oil.', 'Add the penne to the oil.'],
      '300 g penne',
      [['cauliflower', 300]],
      80,
    );
    expect(said[1]).toBe('While the penne is cooking, heat the oil.');
    expect(said[2]).toBe('Add the penne and cauliflower to the oil.');
  });

  it('leave out what a page only talks of', () => {
    const said = texts(
      ['Fill the tortillas.', 'Tortillas are traditionally made of corn.'],
      '6 tortillas',
      [['tofu-noodles', 200]],
    );
    expect(said[1]).toBe('Tortillas are traditionally made of corn.');
  });
});
