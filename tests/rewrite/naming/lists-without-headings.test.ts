/** Several lines of one food on a list without headings: each goes in where its neighbours do. */
import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { type Change, foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

function told(lines: string[], steps: string[], changes: Change[]): string[] {
  const recipe = makeRecipe('Pudding', lines, steps);
  const read = understand(recipe);
  const plan = makePlan('custard', read, changes);
  return rewriteRecipe(recipe, read, plan, { foods, region: 'us' }).steps.map(({ after }) => after);
}

const part = (key: string, kept: number, grams: number): Change => ({
  key,
  kept,
  to: [['allulose', grams]],
});

describe('the sugar of each sentence', () => {
  const LINES = [
    '1 cup double cream',
    '3 tablespoons sugar',
    '12 ounces pears',
    '2 tablespoons granulated sugar',
    '4 egg yolks',
    '200 g oat crumbs',
    '3 tablespoons granulated sugar',
    '1/8 teaspoon salt',
  ];
  const CHANGES = [part('1', 13, 24), part('3', 9, 16), part('6', 14, 25)];

  it('is that of the line nearest to what goes in with it', () => {
    const [crumbs, yolks, cream] = told(
      LINES,
      [
        'Mix the oat crumbs with the sugar and salt.',
        'Whisk the egg yolks and sugar.',
        'Whip the double cream. Add the sugar and whip until thick.',
      ],
      CHANGES,
    );
    expect(crumbs).toMatch(/25 g allulose/);
    expect(yolks).toMatch(/16 g allulose/);
    expect(cream).toMatch(/24 g allulose/);
  });

  it('is put in where fruit is sprinkled with it, and none is where a tin is dusted', () => {
    const [sprinkled] = told(
      ['3 cups strawberries', '1/2 cup sugar'],
      ['Slice the strawberries. Sprinkle with sugar and leave for an hour.'],
      [part('1', 15, 85)],
    );
    expect(sprinkled).toMatch(/Sprinkle with sugar and allulose/);
    const [dusted] = told(
      ['3 cups strawberries', '1/2 cup sugar'],
      ['Butter the dish and dust it with sugar.'],
      [part('1', 15, 85)],
    );
    expect(dusted).toBe('Butter the dish and dust it with sugar.');
  });
});

it('one new food for two neighbours is one amount', () => {
  const [step] = told(
    ['3/4 cup brown sugar', '1/2 cup white sugar', '1 cup butter'],
    ['Beat the butter, brown sugar and white sugar.'],
    [part('0', 70, 100), part('1', 40, 60)],
  );
  expect(step).toBe('Beat the butter, brown sugar, white sugar and 160 g allulose.');
});

it('a bare word beside a whole name is the other line', () => {
  const [step] = told(
    ['2 apples', '1/2 cup granulated sugar', '1/4 cup light brown sugar', '1 tsp cinnamon'],
    ['Add the sugar, light brown sugar, and cinnamon to the apples.'],
    [part('1', 39, 110), part('2', 44, 65)],
  );
  expect(step).toMatch(
    /^Add the granulated sugar, light brown sugar, 175 g allulose, and cinnamon/,
  );
});

it('a colour joined to light or dark by a hyphen is a name', () => {
  const [step] = told(
    ['1 cup light-brown sugar', '1 cup granulated sugar', '1 cup butter'],
    ['Beat the butter with the brown sugar.'],
    [part('0', 70, 100), part('1', 40, 60)],
  );
  expect(step).toMatch(/light-brown sugar and 100 g allulose/);
});

it('crumbs made first go in by their name', () => {
  const recipe = makeRecipe(
    'Bars',
    ['1½ cups graham cracker crumbs', '6 tablespoons butter'],
    ['Combine 1½ cups graham cracker crumbs and 6 tablespoons butter.'],
  );
  const read = understand(recipe);
  const made = makePlan('custard', read, [
    {
      key: '0',
      kept: 0,
      to: [
        ['almond-flour', 100],
        ['allulose', 15],
      ],
    },
  ]);
  const swaps = made.swaps.map((swap) => ({ ...swap, id: 'biscuit-base-to-almond' }));
  const { steps } = rewriteRecipe(recipe, read, { ...made, swaps }, { foods, region: 'us' });
  expect(steps.map(({ after }) => after).join('\n')).toMatch(
    /Combine the almond crumbs and 6 tablespoons butter/,
  );
});

describe('eggs that stand in for some of a meal', () => {
  it('go in with the eggs of the page, not among the dry', () => {
    const recipe = makeRecipe(
      'Skillet bread',
      ['200 g cornmeal', '60 g flour', '2 eggs', '400 ml buttermilk'],
      [
        'In a bowl whisk the cornmeal and flour.',
        'In another bowl whisk the buttermilk and eggs. Stir into the dry ingredients and bake.',
      ],
    );
    const read = understand(recipe);
    const plan = makePlan('quick-bread', read, [
      {
        key: '0',
        kept: 100,
        to: [
          ['coconut-flour', 10],
          ['egg', 100],
        ],
      },
    ]);
    const [dry, wet] = rewriteRecipe(
      recipe,
      read,
      { ...plan, roles: { ...plan.roles, '0': ['structure'] } },
      { foods, region: 'us' },
    ).steps;
    expect(dry?.after).not.toMatch(/egg/);
    expect(wet?.after).toMatch(/eggs and 2 large eggs/);
  });
});

describe('sugar of a second part', () => {
  it('is that part’s own, not the plain one of the first', () => {
    const recipe = {
      ...makeRecipe(
        'Filled cookies',
        [],
        [
          'Beat the butter and sugars until light. Add the flour.',
          'In a saucepan, combine sugar, corn syrup and pecans and boil for 5 minutes.',
        ],
      ),
      groups: [
        {
          title: 'Cookie',
          lines: [
            '115 g butter',
            '105 g light brown sugar',
            '100 g granulated sugar',
            '250 g flour',
          ],
        },
        { title: 'Filling', lines: ['130 g light brown sugar', '60 g corn syrup', '100 g pecans'] },
      ],
    };
    const read = understand(recipe);
    const plan = makePlan('cookie', read, [
      { key: '1', kept: 50, to: [['allulose', 60]] },
      { key: '2', kept: 40, to: [['allulose', 60]] },
      { key: '4', kept: 26, to: [['allulose', 105]] },
    ]);
    const parts = [
      { title: 'Cookie', keys: ['0', '1', '2', '3'], family: 'cookie' as const, why: '' },
      { title: 'Filling', keys: ['4', '5', '6'], family: 'sweet-sauce' as const, why: '' },
    ];
    const [, filling] = rewriteRecipe(
      recipe,
      read,
      { ...plan, parts },
      { foods, region: 'us' },
    ).steps;
    expect(filling?.after).toMatch(/105 g allulose/);
    expect(filling?.after).not.toMatch(/granulated/);
  });

  it('is the next line where the list has no headings, as the plural took the first ones', () => {
    const recipe = makeRecipe(
      'Filled cookies',
      [
        '115 g butter',
        '105 g brown sugar',
        '100 g granulated sugar',
        '250 g flour',
        '130 g brown sugar',
        '100 g pecans',
      ],
      [
        'Beat the butter and sugars until light. Add the flour.',
        'In a saucepan, combine sugar and pecans and boil for 5 minutes.',
      ],
    );
    const read = understand(recipe);
    const plan = makePlan('cookie', read, [
      { key: '1', kept: 50, to: [['allulose', 60]] },
      { key: '2', kept: 40, to: [['allulose', 60]] },
      { key: '4', kept: 26, to: [['allulose', 105]] },
    ]);
    const [, filling] = rewriteRecipe(recipe, read, plan, { foods, region: 'us' }).steps;
    expect(filling?.after).toMatch(/105 g allulose/);
  });
});
