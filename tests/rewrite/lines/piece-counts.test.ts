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
    expect(rest('2 small corn tortillas', 24)).toBe('1 small corn tortilla (24 g)');
  });

  it('a smaller piece is not called large', () => {
    expect(exchanged('8 large burger buns', 'low-carb-bun', 300)).toBe('8 high-fibre buns (300 g)');
    expect(exchanged('4 small burger buns', 'low-carb-bun', 150)).toBe(
      '4 small high-fibre buns (150 g)',
    );
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

  it('what stays of fruit and cans, beside the grams', () => {
    const rest = (line: string, share: number, language = 'en'): string | null => {
      const recipe = { ...makeRecipe('Salad', [line], []), language };
      const read = understand(recipe);
      const kept = Math.round(share * (read[0]?.weight?.grams.best ?? 0));
      const plan = makePlan('other', read, [{ key: '0', kept, to: [] }]);
      return rewriteRecipe(recipe, read, plan, { foods, region: 'us' }).lines[0]?.after ?? null;
    };
    expect(rest('2 pears, thinly sliced', 0.625)).toMatch(
      /^\d+ g \((about )?1¼\) pears, thinly sliced/,
    );
    expect(rest('1 sweet potato', 0.5)).toMatch(/^\d+ g \((about )?½ of one\) sweet potato/);
    expect(rest('20 new potatoes', 0.35)).toMatch(/^\d+ g \((about )?7\) new potatoes/);
    expect(rest('1 can (15 oz) white beans, drained', 0.66)).toMatch(
      /^\d+ g \((about )?⅔ of the can\) canned .*beans, drained/,
    );
    expect(rest('2 (14-oz) cans chickpeas', 0.75)).toMatch(
      /^\d+ g \((about )?1½ cans\) canned chickpeas/,
    );
    expect(rest('1 Dose Kidneybohnen (400 g)', 0.5, 'de')).toMatch(/^\d+ g \((etwa )?½ Dose\) /);
    expect(rest('3 grote aardappelen', 0.5, 'nl')).toMatch(/^\d+ g \((ongeveer )?1½\) /);
    expect(rest('400 g pears', 0.5)).not.toMatch(/½/);
  });

  it('the shape of pasta, and bread that is dry', () => {
    expect(exchanged('12 ounces macaroni', 'soybean-pasta-dry', 245)).toBe(
      '245 g soybean pasta, dry (penne shape)',
    );
    expect(exchanged('2 cups dried penne', 'soybean-pasta-dry', 170)).toMatch(
      /^170 g \(.*cups\) soybean pasta, dry \(penne shape\)$/,
    );
    expect(exchanged('200 g dry udon noodles', 'soybean-pasta-dry', 145)).toBe(
      '145 g soybean pasta, dry (spaghetti shape)',
    );
    expect(exchanged('200 g pasta', 'soybean-pasta-dry', 145)).toBe('145 g soybean pasta, dry');
    expect(exchanged('300 g fusilli', 'soybean-pasta-dry', 215, 'nl')).toMatch(
      /^215 g .* \(rotini\)$/,
    );
    expect(exchanged('180 g de pan duro', 'bread-low-carb', 155, 'es')).toMatch(/, duro$/);
    expect(exchanged('150 g stale white bread', 'bread-low-carb', 150)).toBe(
      '150 g high-fibre bread, stale',
    );
  });

  it('reads as the same grams again', () => {
    for (const text of [
      '215 g (about 1¼) pears, thinly sliced, trimmed weight',
      '170 g (about ½ of one) sweet potato',
      '170 g (about ⅔ of the can) canned white beans, drained',
      '245 g soybean pasta, dry (penne shape)',
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
