/** Seasoning of what there is less of now. Invented recipes. */
import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { weighRecipe } from '../../../engine/walk.ts';
import { type Change, foods, makePlan, makeRecipe } from '../fixtures.ts';

const POLENTA = ['170 g polenta', '750 ml water', '1 tsp salt', '60 g butter', '400 g mushrooms'];
const STEPS = [
  'Fry the mushrooms.',
  'Bring the water with the salt to the boil and whisk in the polenta; stir in the butter.',
  'Serve with the mushrooms.',
];

function told(change: Change): string {
  const recipe = makeRecipe('Mushrooms on polenta', POLENTA, STEPS);
  const read = weighRecipe(recipe);
  const plan = makePlan('other', read, [change]);
  return rewriteRecipe(recipe, read, plan, { foods, region: 'eu' })
    .steps.map(({ after }) => after)
    .join('\n');
}

describe('seasoning of a part', () => {
  it('goes with the starch that is halved', () => {
    expect(told({ key: '0', kept: 85, to: [] })).toMatch(
      /Of the polenta about 50 % is left: take as much of the salt, fat and spices/,
    );
  });

  it('stays where another food fills the place, or little is taken', () => {
    expect(told({ key: '0', kept: 85, to: [['cauliflower', 200]] })).not.toMatch(
      /is left: take as much/,
    );
    expect(told({ key: '0', kept: 150, to: [] })).not.toMatch(/is left: take as much/);
  });

  it('stays for a spoonful less of a sweet marinade', () => {
    const lines = ['600 g chicken', '1 tbsp honey', '1 tsp salt', '2 tbsp oil'];
    const steps = ['Mix the honey, salt and oil and rub the chicken with it.', 'Fry the chicken.'];
    const recipe = makeRecipe('Chicken', lines, steps);
    const read = weighRecipe(recipe);
    const plan = makePlan('other', read, [{ key: '1', kept: 10, to: [] }]);
    const { steps: after } = rewriteRecipe(recipe, read, plan, { foods, region: 'eu' });
    expect(after.map((step) => step.after).join(' ')).not.toMatch(/is left: take as much/);
  });
});
