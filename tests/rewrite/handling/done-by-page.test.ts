/** Handling that the page's own step does is not told once more. */
import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { type Change, foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

/** The whole method after potatoes have given way, with what the swap says of its handling. */
function told(steps: string[], to: Change['to'], method: string, kept = 0): string {
  const recipe = makeRecipe('Supper', ['800 g potatoes', '2 cloves garlic', '1 egg'], steps);
  const read = understand(recipe);
  const plan = makePlan('potato-dish', read, [{ key: '0', kept, to }]);
  const swaps = plan.swaps.map((swap) => ({ ...swap, method }));
  return rewriteRecipe(recipe, read, { ...plan, swaps }, { foods, region: 'us' })
    .steps.map(({ after }) => after)
    .join('\n');
}

describe('what is boiled soft', () => {
  const KOHLRABI = 'Boil 12 minutes, or blanch thin slices 5 minutes; drain and dry.';
  const kohlrabi: Change['to'] = [['kohlrabi', 800]];

  it('is boiled once, in the words of the page', () => {
    const text = told(
      ['Cook the potatoes in a pot of boiling water until tender. Drain, then add the garlic.'],
      kohlrabi,
      KOHLRABI,
    );
    expect(text).toMatch(/^Cook the kohlrabi in a pot of boiling water/);
    expect(text).not.toMatch(/12 minutes/);
  });

  it('is dried and mashed behind the page’s own draining where the pot boils both', () => {
    const text = told(
      [
        'Place potatoes and garlic in a saucepan; cover with water. Bring to a boil and simmer for 20 minutes. Drain well. Mash everything.',
      ],
      [['cauliflower', 400]],
      'Boil apart until very soft, drain, dry it in the pan 3 minutes, then mash it with the butter and the rest.',
      400,
    );
    expect(text).not.toMatch(/[Bb]oil the cauliflower apart/);
    expect(text).toMatch(
      /Drain well\. Dry all of it in the pan 3 minutes; the butter goes in as you mash\. Mash everything/,
    );
  });

  it('is told where no step of the page boils it', () => {
    const text = told(['Fry the potatoes with the garlic.'], kohlrabi, KOHLRABI);
    expect(text).toMatch(/Boil the kohlrabi 12 minutes/);
  });

  it('is steamed over the water that the page boils', () => {
    const text = told(
      ['Bring a large pot of water to a boil. Heat the oven.', 'Put the potatoes in the dish.'],
      [['cauliflower', 800]],
      'Steam until just tender, drain and dry well before the sauce.',
    );
    expect(text.indexOf('steam them until')).toBeGreaterThan(text.indexOf('to a boil'));
  });
});

it('what the page grates is not grated first', () => {
  const text = told(
    ['Grate the potatoes. Beat the egg and stir it in.'],
    [['zucchini', 500]],
    'Grate, salt, leave for 10 minutes and squeeze very dry in a cloth; the egg goes in with the shreds.',
    300,
  );
  expect(text).toMatch(
    /^Grate the potatoes and zucchini\. Salt the zucchini, leave for 10 minutes/,
  );
});

describe('what is roasted', () => {
  const ROAST = 'Salt, blot and roast at 220 °C.';

  it('is not roasted first where the page bakes it till it is done', () => {
    const text = told(
      ['Tuck the potatoes around the dish.', 'Bake for an hour, until the potatoes are soft.'],
      [['kohlrabi', 800]],
      ROAST,
    );
    expect(text).toMatch(/Salt the kohlrabi and blot\./);
    expect(text).not.toMatch(/220/);
  });

  it('is roasted where the page does not', () => {
    const text = told(['Serve the potatoes beside, baked.'], [['kohlrabi', 800]], ROAST);
    expect(text).toMatch(/roast at 220/);
  });
});

describe('what the page does with it in one pot', () => {
  it('is neither boiled nor blended before, where the page boils and mashes', () => {
    const text = told(
      [
        'Put the potatoes in a large pot and cover with water. Bring to a boil and cook until tender, 15 to 20 minutes. Drain and mash.',
      ],
      [
        ['carrots', 300],
        ['cauliflower', 300],
      ],
      'Boil, drain, dry and blend.',
      200,
    );
    expect(text).not.toMatch(/\bblend\b/);
    expect(text).toMatch(/^Put the potatoes, carrots? and cauliflower in a large pot/);
  });

  it('is not melted before, where the page melts it in a bowl over water', () => {
    const recipe = makeRecipe(
      'Brownies',
      ['200 g dark chocolate', '150 g butter', '3 eggs'],
      [
        'Cut the butter into cubes and put in a bowl with the chocolate. Set over a pan of barely simmering water and stir until melted.',
        'Beat in the eggs.',
      ],
    );
    const read = understand(recipe);
    const plan = makePlan('brownie', read, [
      {
        key: '0',
        kept: 40,
        to: [
          ['cocoa-powder', 50],
          ['allulose', 50],
        ],
      },
    ]);
    const swaps = plan.swaps.map((swap) => ({
      ...swap,
      method: 'Heat gently and stir until smooth.',
    }));
    const [melt] = rewriteRecipe(recipe, read, { ...plan, swaps }, { foods, region: 'us' }).steps;
    expect(melt?.after).not.toMatch(/Heat the/);
  });

  it('waits in its salt before the pan is hot', () => {
    const text = told(
      ['Heat the oil in a skillet. Add the potatoes and fry for 10 minutes until crisp.'],
      [['rutabaga', 400]],
      'Grate, salt, leave for 10 minutes and squeeze dry.',
    );
    expect(text).toMatch(/^Grate the rutabaga[^\n]*\nHeat the oil/);
  });
});
