/** What goes into half an icing is halved with it; what lies on it is not. Invented recipes. */
import { describe, expect, it } from 'vitest';
import { adapted, dishesOf } from '../../pasted.ts';

const cakes = dishesOf('cake');

const CAKE = [
  'For the cake',
  '220 g self-raising flour',
  '180 g sugar',
  '180 g butter',
  '3 eggs',
  '60 ml milk',
];

const cake = (fruit: string, icing: string) =>
  cakes(
    'Tea cake with pink icing',
    [...CAKE, 'For the icing', '200 g icing sugar', '30 ml double cream', fruit],
    ['Beat and bake the cake at 180 C for 45 minutes.', icing],
  );

const shareOf = (fruit: string, icing: string, name: string): number => {
  const { plan, ingredients } = adapted(
    { ...cake(fruit, icing), serves: 'Serves 10' },
    { budgetG: 15 },
  );
  const line = ingredients.find(({ line: { text } }) => text.includes(name));
  const now = plan.items
    .filter(({ key }) => key === line?.key)
    .reduce((sum, i) => sum + i.grams, 0);
  return now / (line?.weight?.grams.best ?? Number.NaN);
};

describe('fruit of an icing', () => {
  it('is halved where it is cooked into it', () => {
    const share = shareOf(
      '60 g rhubarb, sliced',
      'Simmer the rhubarb until soft, blend with icing sugar and cream.',
      'rhubarb',
    );
    expect(share).toBeGreaterThan(0.4);
    expect(share).toBeLessThan(0.6);
  });

  it('stays where it is laid on it', () => {
    const share = shareOf(
      '60 g raspberries, to decorate',
      'Stir icing sugar and cream, spread, and dot with raspberries.',
      'raspberries',
    );
    expect(share).toBe(1);
  });
});
