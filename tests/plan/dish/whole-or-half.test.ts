/** One starch line gets one stand-in, and what stays of it is real; fewer parcels leave no empty bowl. Invented recipes. */
import { describe, expect, it } from 'vitest';
import type { Adaptation } from '../../../engine/model.ts';
import { adapted, dishesOf } from '../pasted.ts';

const dish = dishesOf('pasta-dish');

const PENNE = dish(
  'Creamy chicken penne',
  ['260 g penne', '400 g chicken breast', '200 ml cream', '60 g parmesan', '1 onion'],
  [
    'Boil the penne and drain.',
    'Fry the chicken and onion, pour in the cream and add the cheese.',
    'Toss the penne in the sauce.',
  ],
);
const TORTELLINI = dish(
  'Tortellini soup with tomato',
  [
    '400 g cheese tortellini',
    '1 l chicken stock',
    '400 g canned tomatoes',
    '1 onion',
    '50 ml cream',
  ],
  [
    'Soften the onion, add tomatoes and stock and simmer for 15 minutes.',
    'Add the tortellini and boil for 5 minutes. Stir in the cream.',
  ],
);
const TUBES = dish(
  'Cannelloni with beef and ricotta',
  [
    '220 g cannelloni tubes',
    '350 g ground beef',
    '400 g ricotta',
    '600 g tomato sauce',
    '150 g mozzarella',
  ],
  [
    'Boil the cannelloni for 6 minutes and drain.',
    'Fill the cannelloni with beef and ricotta.',
    'Cover with sauce and mozzarella and bake for 35 minutes.',
  ],
);
const WILD_RICE = dish(
  'Wild rice salad with grapes',
  [
    '650 g cooked wild rice',
    '40 g cashews',
    '300 g cooked chicken',
    '150 g grapes',
    '100 g mayonnaise',
  ],
  ['Toss everything but the cashews.', 'Fold in the cashews.'],
);

const swapOf = (result: Adaptation, food: RegExp) =>
  result.plan.swaps.find(({ from }) => from !== null && food.test(from.food));

describe('pasta in a dish', () => {
  it.each([8, 12, 15, 20])('goes as a whole or leaves a real rest, at %i g', (budgetG) => {
    const swap = swapOf(adapted(PENNE, { budgetG }), /pasta/);
    const kept = (swap?.keptGrams ?? 260) / 260;
    expect(kept === 0 || kept >= 0.35).toBe(true);
  });

  it('that is filled makes room for as much of a vegetable', () => {
    const swap = swapOf(adapted(TORTELLINI, { budgetG: 15 }), /tortellini/);
    const gone = (swap?.from?.grams ?? 0) - (swap?.keptGrams ?? 0);
    expect(gone).toBeGreaterThan(100);
    expect(swap?.to.reduce((sum, { grams }) => sum + grams, 0)).toBeGreaterThan(0.8 * gone);
  });

  it('of tubes to be filled is never fewer tubes for the same filling', () => {
    const result = adapted(TUBES, { budgetG: 15 });
    const swap = swapOf(result, /pasta/);
    expect(swap === undefined || swap.keptGrams === 0).toBe(true);
    expect(result.steps.map(({ after }) => after).join('\n')).not.toMatch(/crepes? egg crepe/);
    expect(result.steps.map(({ after }) => after).join('\n')).not.toMatch(
      /Boil the (?:cannelloni|egg)/,
    );
  });
});

describe('a handful of nuts', () => {
  it('is not exchanged for another nut', () => {
    expect(swapOf(adapted(WILD_RICE, { budgetG: 15 }), /cashew/)).toBeUndefined();
  });
});

describe('tortillas under eggs', () => {
  it.each(['4 small corn tortillas', '3 (6-inch) corn tortillas'])(
    'stay whole ones: %s',
    (line) => {
      const eggs = dish(
        'Huevos rancheros',
        [line, '4 eggs', '60 ml tomato salsa', '1 tbsp oil'],
        ['Fry the tortillas in the oil, then the eggs. Spoon the salsa over.'],
      );
      const count = Number(line[0]);
      for (const budgetG of [10, 12, 14, 16]) {
        const swap = swapOf(
          adapted({ ...eggs, serves: 'Serves 2' }, { budgetG, way: 'lighter' }),
          /tortilla/,
        );
        const left = (count * (swap?.keptGrams ?? 0)) / (swap?.from?.grams ?? 1);
        expect(left).toBeCloseTo(Math.round(left), 6);
      }
    },
  );
});
