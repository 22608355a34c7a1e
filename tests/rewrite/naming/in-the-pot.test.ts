/** Names and amounts of what is in the pot already, and verbs that agree with what stands in. */
import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { type Change, foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

function steps(line: string, own: string[], to: Change['to'], kept = 0): string[] {
  const recipe = makeRecipe('Supper', [line, '800 g pork ribs', '1 tbsp vinegar', '1 onion'], own);
  const read = understand(recipe);
  const plan = makePlan('pasta-dish', read, [{ key: '0', kept, to }]);
  return rewriteRecipe(recipe, read, plan, { foods, region: 'us' }).steps.map(({ after }) => after);
}

describe('shares of what is in the pan', () => {
  const soy: Change['to'] = [['soybean-pasta-dry', 300]];

  it('have no grams: they are of dry pasta', () => {
    const [, turned] = steps(
      '300 g spaghetti',
      ['Lay the spaghetti in the pan.', 'Turn half of the spaghetti over.'],
      soy,
    );
    expect(turned).toBe('Turn half of the pasta over.');
  });

  it('are shared out by the page’s spoons where a line adds two up', () => {
    const told = steps(
      '1 tbsp + 2 tsp honey',
      ['Drizzle 2 tsp of honey over the ribs.', 'Stir 1 tbsp honey into the sauce.'],
      [['allulose-syrup', 25]],
      10,
    );
    expect(told[0]).toMatch(/\b4(?:\.\d+)? g honey and 10 g allulose syrup/);
    expect(told[1]).toMatch(/\b6(?:\.\d+)? g honey and 15 g allulose syrup/);
  });

  it('have their grams where they are measured out', () => {
    const [first] = steps('300 g spaghetti', ['Break half of the spaghetti into pieces.'], soy);
    expect(first).toMatch(/half of the soybean pasta \(150 g\)/);
  });

  it('a rest of a mixture is not its honey alone', () => {
    const [, , brushed] = steps(
      '1/2 cup honey',
      [
        'Warm the honey with the vinegar.',
        'Reserve 1/4 cup honey glaze.',
        'Take the rest and brush it on.',
      ],
      [],
      100,
    );
    expect(brushed).toBe('Take the rest and brush it on.');
  });
});

describe('one thing in place of many', () => {
  const one = (step: string): string | undefined =>
    steps('300 g macaroni', [step], [['cauliflower', 600]])[0];

  it('has verbs of one', () => {
    expect(one('While the macaroni cook, slice the onion.')).toBe(
      'While the cauliflower cooks, slice the onion.',
    );
    expect(one('Once the macaroni are soft, add the onion.')).toMatch(/cauliflower is soft/);
  });

  it('has no comma of a word that is gone', () => {
    expect(one('Fold in the drained, cooked macaroni with the onion.')).toMatch(
      /the drained cauliflower/,
    );
  });
});
