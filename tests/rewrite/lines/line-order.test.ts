/** Lines that are added stand with their kind; what a line says of its food is not lost. */
import { describe, expect, it } from 'vitest';
import type { Role } from '../../../engine/model.ts';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { type Change, foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

function lines(
  own: string[],
  changes: Change[],
  roles: Record<string, Role[]> = {},
  added: [string, number, Role][] = [],
): string[] {
  const recipe = makeRecipe('Bake', own, ['Mix all and bake.']);
  const read = understand(recipe);
  const plan = { ...makePlan('quick-bread', read, changes, { added }), roles };
  return rewriteRecipe(recipe, read, plan, { foods, region: 'us' }).lines.flatMap(
    ({ after }) => after ?? [],
  );
}

describe('a line that is added', () => {
  const OWN = ['200 g flour', '2 eggs', '2 pears'];

  it('stands behind the last of its kind, baking powder behind the flour', () => {
    const [flour, powder] = lines(OWN, [], { '0': ['structure'], '1': ['egg'] }, [
      ['baking-powder', 4.6, 'leavening'],
    ]);
    expect(flour).toBe('200 g flour');
    expect(powder).toMatch(/baking powder/);
  });

  it('stands at the end where the list has none of its kind', () => {
    expect(lines(OWN, [], {}, [['baking-powder', 4.6, 'leavening']]).at(-1)).toMatch(/powder/);
  });
});

describe('what a line says', () => {
  it('of toasting is said of the bread that stands in', () => {
    const [bread] = lines(
      ['4 thick slices (toasted) white bread'],
      [{ key: '0', kept: 0, to: [['bread-low-carb', 160]] }],
    );
    expect(bread).toMatch(/, toasted/);
  });

  it('of the choice of an extract stays where there is less of it', () => {
    const [extract] = lines(
      ['½ teaspoon almond or vanilla extract'],
      [{ key: '0', kept: 1.1, to: [] }],
    );
    expect(extract).toMatch(/almond or vanilla extract/);
  });
});
