/** A dish of fillets or buns is not cut into more plates than there are whole pieces for. */
import { describe, expect, it } from 'vitest';
import { foodTable } from '../../../engine/foods/index.ts';
import { DEFAULT_GOALS } from '../../../engine/index.ts';
import { readDish } from '../../../engine/plan/dish/read-dish.ts';
import { piecesServed } from '../../../engine/plan/dish/served-pieces.ts';
import { adapted, type Pasted } from '../pasted.ts';

const dish = (title: string, serves: string, lines: string[], steps: string[]): Pasted => ({
  title,
  serves,
  lines,
  steps,
  family: ['potato-dish', 'breaded-food', 'rice-dish', 'other'],
});

const FISH_AND_WEDGES = dish(
  'Crumbed haddock with potato wedges',
  'Serves 4',
  ['4 haddock fillets', '900 g potatoes', '80 g breadcrumbs', '1 egg', '2 tbsp oil'],
  [
    'Roast the potatoes with the oil for 40 minutes.',
    'Dip the fillets in egg and crumbs and bake for 15 minutes.',
  ],
);

const FILLED_ROLLS = dish(
  'Sausage rolls with peppers',
  'Serves 8',
  ['8 large bread rolls', '600 g sausage', '2 peppers', '2 tbsp oil'],
  ['Fry sausage and peppers in the oil.', 'Fill the rolls.'],
);

const CUBE_STEAKS = dish(
  'Floured cube steaks with gravy',
  'Serves 4',
  ['4 beef cube steaks', '180 g flour', '500 ml milk', '1 egg', '4 tbsp oil'],
  [
    'Dip the steaks in egg and 150 g of the flour. Fry in the oil.',
    'Stir the rest of the flour into the pan, whisk in the milk.',
  ],
);

const FILLED_TORTILLAS = dish(
  'Beef wraps',
  'Serves 6',
  ['6 flour tortillas', '500 g ground beef', '200 g corn', '100 g cheddar', '1 onion, diced'],
  ['Brown the beef with onion and corn.', 'Fill the tortillas, add the cheddar.'],
);

const FILLED_VEGETABLES = dish(
  'Oven vegetables filled with rice',
  'Serves 8',
  [
    '4 large green peppers',
    '4 large tomatoes',
    '200 g rice',
    '500 g ground beef',
    '1 onion, diced',
    '600 g potatoes',
    '5 tbsp oil',
  ],
  [
    'Brown onion and beef in the oil, add rice and cook.',
    'Fill the peppers and tomatoes.',
    'Put the potatoes between them and bake for an hour.',
  ],
);

const SLICED = dish(
  'Creamy chicken and potato pot',
  'Serves 4',
  ['4 chicken breasts', '700 g potatoes', '400 ml cream', '2 onions'],
  ['Cut the chicken breasts into cubes and brown them.', 'Add potatoes and cream, simmer.'],
);

const BUDGETS = [9, 12, 15, 18, 21, 24];

/** Numbers of servings of all ways, whatever the budget, g. */
const servingsOf = (recipe: Pasted): number[] =>
  BUDGETS.flatMap((budgetG) => adapted(recipe, { budgetG }).ways.map(({ plan }) => plan.servings));

const sharedOf = (recipe: Pasted): number | null => {
  const { ingredients, before } = adapted(recipe);
  const { title, steps } = recipe;
  const { servings } = before;
  const goals = DEFAULT_GOALS;
  return piecesServed(
    readDish(ingredients, { goals, family: null, foods: foodTable(), title, steps, servings }),
  );
};

describe('plates that get a piece each', () => {
  it.each([
    ['fillets', FISH_AND_WEDGES, 4],
    ['rolls', FILLED_ROLLS, 8],
  ] as const)('are as many as there are %s', (_, recipe, count) => {
    expect(new Set(servingsOf(recipe))).toEqual(new Set([count]));
  });

  it.each([
    ['cube steaks', CUBE_STEAKS, 4],
    ['tortillas', FILLED_TORTILLAS, 6],
    ['vegetables of two kinds, filled', FILLED_VEGETABLES, 8],
    ['breasts cut up', SLICED, null],
  ] as const)('share out %s', (_, recipe, count) => {
    expect(sharedOf(recipe)).toBe(count);
  });

  it('may be more where the meat is cut up', () => {
    expect(Math.max(...servingsOf(SLICED))).toBeGreaterThan(4);
  });

  it('are not made more when their number is a guess', () => {
    const { lines, steps, title } = SLICED;
    const guessed = adapted(dish(title, '', lines, steps));
    expect(guessed.notes.map(({ code }) => code)).toContain('SERVINGS_ASSUMED');
    expect(new Set(servingsOf(dish(title, '', lines, steps)))).toEqual(
      new Set([guessed.before.servings]),
    );
  });
});

const GRIDDLE: Pasted = {
  title: 'Weekend griddle pancakes',
  serves: 'Serves 4 (12 pancakes)',
  lines: [
    '260 g plain flour',
    '40 g sugar',
    '2 tsp baking powder',
    '1/2 tsp salt',
    '450 ml buttermilk',
    '2 large eggs',
    '40 g butter, melted',
  ],
  steps: [
    'Whisk flour, sugar, baking powder and salt.',
    'Stir in the buttermilk, eggs and butter and rest for 10 minutes.',
    'Ladle onto a hot griddle and cook 2 minutes a side.',
    'Serve warm.',
  ],
  family: ['pancake'],
};

describe('servings of several pieces', () => {
  it('become fewer whole pieces, down to one', () => {
    for (const count of servingsOf(GRIDDLE)) expect([4, 6, 12]).toContain(count);
    const { plan, steps } = adapted(GRIDDLE, { budgetG: 15 });
    expect(plan.servings).toBe(12);
    expect(plan.met).toBe(true);
    expect(steps.at(-1)?.after).toBe('Serve warm. A serving is 1 of the 12 pancakes.');
  });
});
