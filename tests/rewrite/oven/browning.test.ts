/** The oven is set lower where enough of what browns meets the heat, and each bake then takes its time. */
import { describe, expect, it } from 'vitest';
import type { Family } from '../../../engine/model.ts';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { type Change, foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

function told(
  family: Family,
  lines: string[],
  steps: string[],
  changes: Change[],
  title = 'Bake',
): string {
  const recipe = makeRecipe(title, lines, steps);
  const read = understand(recipe);
  const plan = makePlan(family, read, changes);
  return rewriteRecipe(recipe, read, plan, { foods, region: 'us' })
    .steps.map(({ after }) => after)
    .join('\n');
}

const DOUGH = ['375 g flour', '200 g sugar', '115 g butter', '2 eggs'];
const BISCUITS = [
  'Heat the oven to 350 F. Beat sugar, butter and eggs, add the flour, bake 12 minutes.',
];
const sugar = (kept: number, allulose: number): Change[] => [
  { key: '1', kept, to: [['allulose', allulose]] },
];

describe('allulose in a dough', () => {
  it('lowers the oven where there is much of it', () => {
    expect(told('cookie', DOUGH, BISCUITS, sugar(70, 130))).toMatch(/oven to 325 F/);
  });

  it('leaves it where sugar does the browning still', () => {
    expect(told('cookie', DOUGH, BISCUITS, sugar(150, 50))).toMatch(/oven to 350 F/);
  });
});

describe('a crust', () => {
  const steps = [
    'Rub the butter into the flour and line the tin.',
    'Mix the apples with the sugar and fill. Cover with pastry and bake at 400 F for 40 minutes.',
  ];
  const PIE = ['300 g flour', '100 g sugar', '150 g butter', '1 kg apples'];

  it('keeps its heat over a filling that browns nothing', () => {
    expect(told('pie-crust', PIE, steps, sugar(20, 80))).toMatch(/at 400 F/);
  });

  it('is baked cooler where the filling lies open', () => {
    const cobbler = told('pie-crust', PIE, steps, sugar(20, 90), 'Apple cobbler');
    expect(cobbler).toMatch(/at 375 F/);
  });

  it('keeps it with a third of nut flour, and not with more than half', () => {
    const flour = (kept: number, nuts: number): Change[] => [
      { key: '0', kept, to: [['almond-flour', nuts]] },
    ];
    expect(told('pie-crust', PIE, steps, flour(200, 100))).toMatch(/at 400 F/);
    expect(told('pie-crust', PIE, steps, flour(100, 200))).toMatch(/at 375 F/);
  });

  it('is baked cooler where the allulose is in its own dough', () => {
    const rich = ['Mix the flour with the sugar and butter. Top with apples.', steps[1] ?? ''];
    expect(told('pie-crust', PIE, rich, sugar(20, 80))).toMatch(/at 375 F/);
  });
});

it('every bake in the cooler oven is told its longer time', () => {
  const text = told(
    'cake',
    ['200 g flour', '200 g sugar', '115 g butter', '2 eggs'],
    [
      'Heat the oven to 350 F. Beat all to a batter.',
      'Bake for 20 minutes.',
      'Spread with the sugar and bake for 40 minutes more.',
    ],
    sugar(40, 160),
  );
  expect(text).toMatch(/22-24 minutes/);
  expect(text).toMatch(/45-50 minutes/);
});

describe('a cake with much allulose', () => {
  const cake = (steps: string[]): string =>
    told('cake', DOUGH, steps, sugar(60, 140), 'Bundt cake');

  it('is tested in its middle where the page goes by the clock alone', () => {
    expect(cake(['Heat the oven to 350 F. Mix, pour into a pan and bake for 35 minutes.'])).toMatch(
      /done when the centre reaches 96-99 °C/,
    );
    expect(
      cake(['Heat the oven to 350 F. Bake 35 minutes, until a toothpick is clean.']),
    ).not.toMatch(/centre reaches/);
  });

  it('leaves its tin while it is warm', () => {
    expect(
      cake([
        'Heat the oven to 350 F. Bake for 35 minutes.',
        'Allow the cake to fully cool before removing from the pan.',
      ]),
    ).toContain('Allow the cake to cool for 15 minutes before removing from the pan.');
  });
});

describe('allulose in what is set with egg', () => {
  const lines = ['400 g white bread', '700 ml milk', '4 eggs', '200 g sugar'];
  const steps = [
    'Whisk milk, eggs and sugar, pour over the bread and bake at 350 F for 50 minutes.',
  ];
  const allulose: Change[] = [{ key: '3', kept: 40, to: [['allulose', 160]] }];

  it('lowers the oven for a bread pudding, which bakes open', () => {
    expect(told('custard', lines, steps, allulose, 'Bread pudding')).toMatch(/at 325 F/);
  });

  it('leaves a custard in its bath as it is', () => {
    expect(told('custard', lines, steps, allulose, 'Baked custard')).toMatch(/at 350 F/);
  });
});

describe('a crust of ground nuts', () => {
  const lines = ['200 g graham cracker crumbs', '80 g butter', '500 g cream cheese', '100 g sugar'];
  const nuts: Change[] = [{ key: '0', kept: 0, to: [['almond-flour', 160]] }];
  const blind =
    'Mix the graham cracker crumbs with the butter and press into a tin. Bake the crust for 15-20 minutes until golden.';
  const whole =
    'Mix the graham cracker crumbs with the butter, press into a tin, fill and bake for 55 minutes.';

  it('is looked after early where it is baked by itself', () => {
    expect(told('custard', lines, [blind], nuts)).toMatch(
      /15-20 minutes until golden\. Look at this crust after half/,
    );
    expect(told('custard', lines, [whole], nuts)).not.toMatch(/Look at this crust after half/);
  });
});
