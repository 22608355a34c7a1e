import { describe, expect, it } from 'vitest';
import { parseLine } from '../../../engine/parse/index.ts';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

/** The one line of a supper after its first line was exchanged. */
function exchanged(line: string, foodId: string, grams: number, language = 'en'): string | null {
  const recipe = { ...makeRecipe('Supper', [line], []), language };
  const read = understand(recipe);
  const change = { key: '0', kept: 0, to: [[foodId, grams]] as [string, number][] };
  const plan = makePlan('other', read, [change]);
  return rewriteRecipe(recipe, read, plan, { foods, region: 'us' }).lines[0]?.after ?? null;
}

describe('what is counted on a line stays counted', () => {
  it('slices, buns and tortillas', () => {
    expect(exchanged('6 slices country bread', 'bread-low-carb', 170)).toBe(
      '6 slices high-fibre bread (170 g)',
    );
    expect(exchanged('4 burger buns', 'low-carb-bun', 200)).toBe('4 high-fibre buns (200 g)');
    expect(exchanged('1 burger bun', 'low-carb-bun', 50)).toBe('1 high-fibre bun (50 g)');
    expect(exchanged('8 small corn tortillas', 'tortilla-low-carb', 190)).toBe(
      '8 small high-fibre tortillas (190 g)',
    );
  });

  it('what stays of them, with or without their size', () => {
    const rest = (line: string, kept: number): string | null => {
      const recipe = makeRecipe('Tacos', [line], []);
      const read = understand(recipe);
      const plan = makePlan('other', read, [{ key: '0', kept, to: [] }]);
      return rewriteRecipe(recipe, read, plan, { foods, region: 'us' }).lines[0]?.after ?? null;
    };
    expect(rest('10 (6-inch) flour tortillas', 150)).toBe('5 flour tortillas (150 g)');
  });

  it('leaves, as many to each as it takes', () => {
    expect(exchanged('8 small flour tortillas', 'lettuce-wraps', 240)).toBe(
      '8 lettuce wraps (240 g), 2 large leaves each',
    );
    expect(exchanged('6 flour tortillas', 'cabbage', 400)).toBe(
      '12 large leaves green cabbage (400 g), trimmed weight',
    );
  });

  it('not what was weighed or measured', () => {
    expect(exchanged('200 g white bread', 'bread-low-carb', 200)).toBe('200 g high-fibre bread');
    expect(exchanged('3 cups bread cubes', 'bread-low-carb', 150)).toBe(
      '150 g high-fibre bread, in cubes',
    );
  });

  it('reads as the same grams again', () => {
    for (const text of [
      '6 slices high-fibre bread (170 g)',
      '8 lettuce wraps (240 g), 2 large leaves each',
    ]) {
      const amounts = parseLine(text).items[0]?.amounts ?? [];
      expect(
        amounts.some(({ unit, quantity }) => unit === 'g' && quantity >= 170),
        text,
      ).toBe(true);
    }
  });
});
