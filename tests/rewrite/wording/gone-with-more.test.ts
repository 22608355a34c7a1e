/** Steps that boil what is gone, with what else they do: its spices, the soup it was in, how it is served. Invented recipes. */
import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { type Change, foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

function told(
  title: string,
  lines: string[],
  steps: string[],
  change: Change,
  language = 'en',
): string {
  const recipe = { ...makeRecipe(title, lines, steps), language };
  const ingredients = understand(recipe);
  const family = change.to.some(([id]) => id === 'zucchini') ? 'pasta-dish' : 'rice-dish';
  const plan = makePlan(family, ingredients, [change]);
  const rewritten = rewriteRecipe(recipe, ingredients, plan, { foods, region: 'uk' });
  return rewritten.steps.map(({ after }) => after).join('\n');
}

describe('rice boiled with spices', () => {
  const LINES = ['340 g basmati rice', '680 ml vegetable stock', '6 cardamom pods', '400 g paneer'];

  it('is warmed with them until the stock is gone, with no word of less stock', () => {
    const text = told(
      'Paneer curry with spiced rice',
      LINES,
      [
        'For the rice, rinse the basmati until the water runs clear. Tip into a pan with the cardamom and stock, bring to the boil, cover and cook gently for 10 mins. Take off the heat for 10 mins, then fluff up with a fork.',
        'Fry the paneer and serve it with the rice.',
      ],
      { key: '0', kept: 0, to: [['konjac-rice', 800]] },
    );
    expect(text).toMatch(/until hardly any liquid is left\.\n/);
    expect(text).not.toMatch(/basmati|fluff|cooking liquid/);
  });

  it('stays in the pot with what cooks there', () => {
    const text = told(
      'Paneer and rice in one pot',
      LINES,
      [
        'Put the rice, paneer and cardamom into a pan with the stock, bring to the boil, cover and cook gently for 15 minutes.',
      ],
      { key: '0', kept: 0, to: [['konjac-rice', 800]] },
    );
    expect(text).not.toMatch(/hardly any liquid/);
    expect(text).toMatch(/paneer/);
  });
});

describe('strands of zucchini for pasta', () => {
  const STRANDS: Change = { key: '0', kept: 0, to: [['zucchini', 700]] };

  it('are served as the pasta was, though it is drained no more', () => {
    const text = told(
      'Lentils in tomato sauce',
      ['350 g spaghetti', '200 g red lentils', '800 g canned tomatoes'],
      [
        'Simmer the lentils in the tomatoes for 30 minutes.',
        'Cook the spaghetti following the pack instructions. Drain and serve with the sauce spooned over.',
      ],
      STRANDS,
    );
    expect(text).toMatch(/Serve the zucchini with the sauce spooned over\./);
    expect(text).not.toMatch(/Drain/);
  });

  it('go into a soup itself, for its last minutes', () => {
    const text = told(
      'Chicken noodle soup',
      ['250 g egg noodles', '2 litres chicken broth', '600 g chicken thighs'],
      [
        'Simmer the chicken in the broth for 20 minutes.',
        'Bring the soup back to a boil, stir in the noodles and cook for 7 minutes.',
      ],
      { ...STRANDS, kept: 120, to: [['zucchini', 340]] },
    );
    expect(text).toMatch(/7 minutes\. For the last 1-2 minutes stir in the zucchini/);
    expect(text).not.toMatch(/hot pan/);
  });
});

describe('sheets by the first word of their line', () => {
  it('are blanched no more', () => {
    const text = told(
      'Lasagne al forno',
      ["400 g di sfoglie per lasagne all'uovo", '700 g di ragù', '150 g di parmigiano'],
      [
        'Sbollentare le sfoglie in acqua salata per 1 minuto e asciugarle su un canovaccio.',
        'Alternare sfoglie, ragù e parmigiano e cuocere in forno per 30 minuti.',
      ],
      { key: '0', kept: 0, to: [['zucchini', 1100]] },
      'it',
    );
    expect(text).not.toMatch(/Sbollentare/);
    expect(text).toMatch(/Alternare sfoglie \(ora 1100 g di zucchine\)/);
  });
});
