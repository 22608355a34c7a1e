/** What a sweet part of a bake gives up: frostings of fresh cheese, meringues on top, buns with much of everything. Invented recipes. */
import { describe, expect, it } from 'vitest';
import type { Adaptation } from '../../../../engine/model.ts';
import { adapted, dishesOf } from '../../pasted.ts';

const gramsOf = ({ plan, ingredients }: Adaptation, text: string, foodId: RegExp): number => {
  const key = ingredients.find(({ line }) => line.text.includes(text))?.key;
  expect(key, text).toBeDefined();
  return plan.items
    .filter((item) => item.key === key && foodId.test(item.foodId))
    .reduce((sum, { grams }) => sum + grams, 0);
};

describe('a frosting of fresh cheese', () => {
  it('may have a third less of its sugar, as the cake below is sweet', () => {
    const cake = dishesOf('cake')(
      'Parsnip layer cake',
      [
        'For the cake:',
        '310 g plain flour',
        '380 g brown sugar',
        '4 eggs',
        '260 ml vegetable oil',
        '320 g parsnips, grated',
        '2 tsp baking powder',
        'For the frosting:',
        '450 g cream cheese',
        '110 g butter',
        '480 g icing sugar',
      ],
      [
        'Whisk and bake in two round cake tins at 175 C for 32 minutes.',
        'Beat the frosting and fill and cover the cold cake.',
      ],
    );
    const reworked = adapted({ ...cake, serves: 'Serves 14' }, { budgetG: 15 });
    expect(gramsOf(reworked, 'icing sugar', /^powdered-sugar$/)).toBeLessThanOrEqual(160);
  });
});

describe('a meringue on a tart', () => {
  it('does not turn the sugar of the crust into that of a meringue', () => {
    const tart = dishesOf('pie-crust')(
      'Grapefruit meringue tart',
      [
        'For the crust:',
        '250 g plain flour',
        '125 g butter',
        '80 g icing sugar',
        '1 egg',
        'For the curd:',
        '200 ml grapefruit juice',
        '140 g sugar',
        '3 eggs',
        'For the meringue:',
        '3 egg whites',
        '150 g caster sugar',
      ],
      [
        'Rub, line a tart tin and bake blind for 20 minutes at 180 C.',
        'Thicken the curd and pour it in.',
        'Whip the meringue, pipe it on and brown for 10 minutes.',
      ],
    );
    const reworked = adapted({ ...tart, serves: 'Serves 10' }, { budgetG: 12 });
    expect(gramsOf(reworked, 'icing sugar', /erythritol/)).toBe(0);
  });
});

describe('a roll that stays above the budget as a small one', () => {
  it('gives up some of its flour as well as its sugar', () => {
    const rolls = dishesOf('enriched-yeast-bread')(
      'Cardamom rolls with cheese icing',
      [
        'For the dough:',
        '500 g plain flour',
        '65 g sugar',
        '7 g instant yeast',
        '240 ml milk',
        '75 g butter',
        '2 eggs',
        'For the filling:',
        '220 g brown sugar',
        '75 g butter',
        '10 g cardamom',
        'For the icing:',
        '180 g icing sugar',
        '110 g cream cheese',
        '50 g butter',
      ],
      [
        'Knead the dough and let it rise for an hour.',
        'Roll out, spread, roll up, cut 12 rolls and bake at 175 C for 24 minutes.',
        'Beat the icing and spread it on.',
      ],
    );
    const reworked = adapted({ ...rolls, serves: 'Makes 12 rolls' }, { budgetG: 15 });
    expect(reworked.plan.way).toBe('lighter');
    expect(gramsOf(reworked, 'plain flour', /^all-purpose-flour$/)).toBeLessThan(400);
    expect(reworked.plan.closeness).toBeGreaterThan(0.6);
  });
});
