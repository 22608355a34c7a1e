/** Sugar that has to stay dry or crisp is not given up for what draws moisture. Invented recipes. */
import { describe, expect, it } from 'vitest';
import type { Adaptation } from '../../../../engine/model.ts';
import { adapted, dishesOf } from '../../pasted.ts';

const cookies = dishesOf('cookie');
const candy = dishesOf('candy');

const DOUGH = ['250 g plain flour', '1 tsp baking powder', '120 g butter', '180 g sugar', '1 egg'];

/** Ids of what stands in for the sugar of a line. */
const insteadOf = ({ plan, ingredients }: Adaptation, text: string): string[] => {
  const key = ingredients.find(({ line }) => line.text.includes(text))?.key;
  expect(key, text).toBeDefined();
  return plan.swaps.filter((swap) => swap.key === key).flatMap(({ to }) => to.map((t) => t.foodId));
};

const isSticky = (ids: readonly string[]): boolean => ids.some((id) => id.includes('allulose'));

describe('sugar on the outside', () => {
  const rolled = cookies(
    'Sugar-dusted rounds',
    [...DOUGH, '60 g granulated sugar, for rolling'],
    [
      'Beat butter, sugar and egg, add the flour, shape balls, roll them in sugar and bake at 180 C for 11 minutes.',
    ],
  );
  const iced = cookies(
    'Piped star biscuits',
    ['For the biscuits', ...DOUGH, 'For the icing', '300 g icing sugar', '60 g egg white'],
    [
      'Make the dough, cut stars and bake at 180 C for 9 minutes.',
      'Beat the icing sugar with the egg white, pipe and let it dry.',
    ],
  );

  it.each([6, 8, 10, 14])('stays dry at %s g a serving', (budgetG) => {
    expect(
      isSticky(insteadOf(adapted({ ...rolled, serves: 'Makes 20' }, { budgetG }), 'for rolling')),
    ).toBe(false);
    expect(
      isSticky(insteadOf(adapted({ ...iced, serves: 'Makes 24' }, { budgetG }), 'icing sugar')),
    ).toBe(false);
  });

  it('leaves a soft icing its allulose', () => {
    const soft = cookies(
      'Soft glazed biscuits',
      [
        'For the biscuits',
        ...DOUGH,
        'For the glaze',
        '240 g icing sugar',
        '40 ml milk',
        '20 g butter',
      ],
      [
        'Make the dough and bake at 180 C for 9 minutes.',
        'Stir the icing sugar with milk and butter and spread.',
      ],
    );
    const swapped = adapted({ ...soft, serves: 'Makes 20' }, { budgetG: 11 });
    expect(isSticky(insteadOf(swapped, 'icing sugar'))).toBe(true);
  });
});

describe('nuts in a crust of sugar', () => {
  it('are as grainy with erythritol, and go further with it', () => {
    const nuts = candy(
      'Candied almonds from the pan',
      ['200 g almonds', '80 g sugar', '40 ml water', '1 tsp cinnamon'],
      ['Boil sugar and water with the almonds, stirring until dry and sandy.'],
    );
    const { plan } = adapted(nuts, { budgetG: 9 });
    const erythritol = plan.items.filter(({ foodId }) => foodId.includes('erythritol'));
    expect(erythritol.reduce((sum, { grams }) => sum + grams, 0)).toBeGreaterThan(35);
  });
});
