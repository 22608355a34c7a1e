/** What goes with a food goes with it: dressing with the salad, vinegar with the honey. */
import { describe, expect, it } from 'vitest';
import type { Adaptation } from '../../../engine/model.ts';
import { adapted, dishesOf } from '../pasted.ts';

const dish = dishesOf('other');

/** Share of a line that is left, by its food. */
function left({ plan, ingredients }: Adaptation, food: string): number {
  const line = ingredients.find(({ match }) => match?.foodId === food);
  const now = plan.items.find(({ key, foodId }) => key === line?.key && foodId === food);
  return (now?.grams ?? 0) / (line?.weight?.grams.best ?? Number.NaN);
}

const BEAN_SALAD = dish(
  'Bean and corn salad',
  [
    '500 g canned black beans, drained',
    '400 g canned corn, drained',
    '1 red bell pepper',
    '6 tbsp olive oil',
    '4 tbsp cider vinegar',
  ],
  ['Whisk the oil and vinegar.', 'Toss with the beans, corn and pepper.'],
);

const HONEY_CHICKEN = dish(
  'Spiced honey chicken thighs',
  ['800 g chicken thighs', '140 g honey', '2 tbsp cider vinegar', '1 tsp chili flakes'],
  ['Stir the honey, vinegar and chili.', 'Grill the chicken and brush with the honey.'],
);

describe('partners of what there is less of', () => {
  it('the dressing of a salad goes with it', () => {
    const one = adapted(BEAN_SALAD, { way: 'within' });
    expect(left(one, 'canned-corn')).not.toBe(1);
    expect(left(one, 'olive-oil')).toBeLessThan(0.9);
    expect(left(one, 'olive-oil')).toBeGreaterThan(0.55);
    expect(left(one, 'cider-vinegar')).toBeLessThan(0.9);
  });

  it('stays where the user set it', () => {
    const { ingredients } = adapted(BEAN_SALAD);
    const oil = ingredients.find(({ match }) => match?.foodId === 'olive-oil');
    const one = adapted(BEAN_SALAD, { way: 'within', pinned: [oil?.key ?? ''] });
    expect(left(one, 'olive-oil')).toBeCloseTo(1, 5);
  });

  it('the butter of a white sauce goes with the flour that a gum stands for', () => {
    const bake = dishesOf('pasta-dish')(
      'Baked macaroni in white sauce',
      ['300 g macaroni', '90 g butter', '80 g flour', '1 litre milk', '200 g cheddar'],
      [
        'Boil the macaroni.',
        'Melt the butter, whisk in the flour and cook for 1 minute. Add the milk and simmer until thick.',
        'Stir in the cheddar and the macaroni and bake for 20 minutes.',
      ],
    );
    const one = adapted(bake, { way: 'within', budgetG: 12 });
    expect(one.plan.items.some(({ foodId }) => foodId === 'xanthan-gum')).toBe(true);
    expect(left(one, 'butter')).toBeLessThan(0.7);
    expect(left(one, 'butter')).toBeGreaterThanOrEqual(0.45);
    const plain = adapted(bake, { way: 'within', budgetG: 60 });
    expect(left(plain, 'butter')).toBeCloseTo(1, 5);
  });

  it('oil of the pan is no dressing', () => {
    const fried = dish(BEAN_SALAD.title, BEAN_SALAD.lines, [
      'Fry the pepper in the oil.',
      'Toss with vinegar, beans and corn.',
    ]);
    expect(left(adapted(fried, { way: 'within' }), 'olive-oil')).toBeCloseTo(1, 5);
  });

  it('vinegar goes with the honey it balances', () => {
    const one = adapted(HONEY_CHICKEN, { way: 'within' });
    const honey = left(one, 'honey');
    expect(honey).toBeLessThan(0.75);
    expect(left(one, 'cider-vinegar')).toBeCloseTo(Math.max(0.6, honey), 1);
  });
});
