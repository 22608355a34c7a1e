/** A dish of fillets or buns is not cut into more plates than there are whole pieces for. */
import { describe, expect, it } from 'vitest';
import { adapted, type Pasted } from '../pasted.ts';

const dish = (title: string, serves: string, lines: string[], steps: string[]): Pasted => ({
  title,
  serves,
  lines,
  steps,
  family: ['potato-dish', 'breaded-food', 'other'],
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

const SLICED = dish(
  'Creamy chicken and potato pot',
  'Serves 4',
  ['4 chicken breasts', '700 g potatoes', '400 ml cream', '2 onions'],
  ['Cut the chicken breasts into cubes and brown them.', 'Add potatoes and cream, simmer.'],
);

const servingsOf = (recipe: Pasted): number[] =>
  adapted(recipe).ways.map(({ plan }) => plan.servings);

describe('plates that get a piece each', () => {
  it.each([
    ['fillets', FISH_AND_WEDGES, 4],
    ['rolls', FILLED_ROLLS, 8],
  ] as const)('are as many as there are %s', (_, recipe, count) => {
    expect(new Set(servingsOf(recipe))).toEqual(new Set([count]));
  });

  it('may be more where the meat is cut up', () => {
    expect(Math.max(...servingsOf(SLICED))).toBeGreaterThan(4);
  });
});
