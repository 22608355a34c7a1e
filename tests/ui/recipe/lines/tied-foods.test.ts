import { describe, expect, it } from 'vitest';
import { adaptRecipe, foodTable } from '../../../../engine/index.ts';
import { differenceText, tiesOf } from '../../../../extension/ui/recipe/lines/tied-foods.ts';
import { adaptedText } from '../../adapted.ts';

const CAKE = 'Cake\n\n2 cups flour\n1 cup sugar\n3 eggs\n100 g butter\n\nServes 10';

describe('what a line may be instead', () => {
  const adaptation = adaptedText(CAKE);
  const [flour] = adaptation.ingredients;
  if (!flour) throw new Error('no flour');
  const ties = tiesOf(adaptation, flour, {}, foodTable());

  it('is told with the difference that choosing it makes to a serving of the original', () => {
    expect(ties.length).toBeGreaterThan(0);
    for (const { foodId, differenceG } of ties) {
      const corrections = { [flour.key]: { foodId } };
      const chosen = adaptRecipe(adaptation.recipe, adaptation.goals, { corrections });
      const before = adaptation.before.perServing.netCarbsG?.best ?? Number.NaN;
      const then = chosen.before.perServing.netCarbsG?.best ?? Number.NaN;
      expect(differenceG).toBeCloseTo(then - before, 9);
    }
  });

  it('never holds the food it is taken for', () => {
    expect(ties.map(({ foodId }) => foodId)).not.toContain(flour.match?.foodId);
  });
});

it('differences have a sign, and unknown is not none', () => {
  expect([3.14, -0.42, 0.01, -0.01, null].map(differenceText)).toEqual([
    '+3.1 g',
    '−0.4 g',
    'no difference',
    'no difference',
    'difference not known',
  ]);
});
