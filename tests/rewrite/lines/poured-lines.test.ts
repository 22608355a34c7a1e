/** What is poured keeps the millilitres its line measures it in. */
import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { type Change, foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

function lineOf(line: string, change: Omit<Change, 'key'>): string | null | undefined {
  const recipe = makeRecipe('Soup', [line, '500 g leek'], ['Boil all.']);
  const read = understand(recipe);
  const plan = makePlan('other', read, [{ key: '0', ...change }]);
  const { lines } = rewriteRecipe(recipe, read, plan, { foods, region: 'eu' });
  return lines[0]?.after;
}

describe('a liquid on a line in millilitres', () => {
  it('has them beside its grams, less of it and what stands in', () => {
    expect(
      lineOf('375 ml whole milk', { kept: 0, to: [['almond-milk-unsweetened', 385]] }),
    ).toMatch(/^385 g \(\d{3} ml\) /);
    expect(lineOf('450 ml vegetable stock', { kept: 125, to: [] })).toMatch(/^125 g \(1\d\d ml\) /);
  });

  it('has spoons where its line has them too', () => {
    const read = lineOf('¾ cup (177 ml) milk', { kept: 90, to: [] });
    expect(read).not.toMatch(/9\d ml|8\d ml/);
  });

  it('has none where the page weighs it, nor where it is not poured', () => {
    expect(lineOf('450 g vegetable stock', { kept: 125, to: [] })).not.toMatch(/ml/);
    expect(lineOf('400 ml yogurt', { kept: 200, to: [] })).not.toMatch(/ ml\) yog.*ml/);
  });
});
