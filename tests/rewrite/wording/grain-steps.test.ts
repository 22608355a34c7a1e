/** Rice that is gone: its own step is one plain instruction for what stands in. */
import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

const LINES = [
  '300 g basmati rice',
  '400 g chopped tomatoes',
  '600 ml chicken stock',
  '2 cups water',
  '1 bay leaf',
];

function told(steps: string[], lines = LINES, title = 'Curry and rice'): string[] {
  const recipe = makeRecipe(title, lines, steps);
  const read = understand(recipe);
  const plan = makePlan('rice-dish', read, [{ key: '0', kept: 0, to: [['konjac-rice', 600]] }]);
  return rewriteRecipe(recipe, read, plan, { foods, region: 'us' }).steps.map(({ after }) => after);
}

describe('a step that only cooks the rice', () => {
  it('is one instruction with its stock and spice', () => {
    const [, rice] = told([
      'For the rice, rinse the basmati until the water runs clear. Tip into a pan with the bay leaf and stock, bring to the boil, cover and cook for 10 mins. Fluff up with a fork.',
      'Simmer the tomatoes.',
    ]);
    expect(rice).toMatch(/^For the rice, put the konjac rice in a pan with the .*bay leaf/);
    expect(rice).not.toMatch(/basmati|10 mins/);
  });

  it('is left out where it takes nothing but water', () => {
    const text = told(
      [
        'Put the rice in a saucepan with a pinch of salt, cover and simmer for 12 minutes.',
        'Serve.',
      ],
      LINES.slice(0, 2),
    ).join('\n');
    expect(text).not.toMatch(/simmer for 12/);
  });

  it('leaves a measure of water in another step as it is', () => {
    const text = told([
      'Rinse the rice. Place in a saucepan with the water, bring to a boil, then cover and simmer for 12 minutes.',
      'Whisk 1/4 cup water into the tomatoes.',
    ]).join('\n');
    expect(text).toContain('1/4 cup water');
  });

  it('does not take the other foods of a pot with it', () => {
    const text = told(
      ['Stir in the rice, tomatoes and stock. Bring to a boil, cover and simmer for 18 minutes.'],
      LINES,
      'One-pot rice',
    ).join('\n');
    expect(text).toMatch(/tomatoes and (?:chicken )?stock/);
  });
});
