/** What is made first is made ahead and cooked in the page's pot; what joins late is told there. */
import { describe, expect, it } from 'vitest';
import { rewriteRecipe } from '../../../engine/rewrite/index.ts';
import { type Change, foods, makePlan, makeRecipe, understand } from '../fixtures.ts';

function steps(
  lines: string[],
  own: string[],
  change: Pick<Change, 'kept' | 'to'>,
  swap: { id?: string; method: string },
  language = 'en',
): string[] {
  const recipe = { ...makeRecipe('Supper', lines, own), language };
  const read = understand(recipe);
  const plan = makePlan('pasta-dish', read, [{ key: '0', ...change }]);
  const swaps = plan.swaps.map((one) => ({ ...one, ...swap }));
  return rewriteRecipe(recipe, read, { ...plan, swaps }, { foods, region: 'us' }).steps.map(
    ({ after }) => after,
  );
}

it('dumplings are made ahead and poached where the bought ones were boiled', () => {
  const [made, water, cooked] = steps(
    ['500 g gnocchi', '1 onion'],
    ['Bring a pot of salted water to a boil.', 'Cook the gnocchi and drain them.'],
    {
      kept: 0,
      to: [
        ['ricotta', 400],
        ['almond-flour', 120],
      ],
    },
    {
      id: 'gnocchi-to-ricotta-almond',
      method:
        'Mix, chill an hour and shape into small dumplings; once the water boils, poach them gently until they float.',
    },
  );
  expect(made).toMatch(/^Make the ricotta gnocchi of .*shape into small dumplings\.$/);
  expect(water).toMatch(/^Bring a pot/);
  expect(cooked).toMatch(/gnocchi and drain them\. Once the water boils, poach them/);
});

describe('leaves that join what is boiled', () => {
  const spinach: Pick<Change, 'kept' | 'to'> = { kept: 200, to: [['spinach', 270]] };
  const method =
    'Wilt the spinach in the hot pan for 2 minutes, press out the water and fold it in.';

  it('are told behind the draining, in any language', () => {
    const [boil, drain] = steps(
      ['400 g ravioli', '70 g butter'],
      ['Kook de ravioli in ruim water.', 'Giet de ravioli af en meng met de boter.'],
      spinach,
      { method },
      'nl',
    );
    expect(boil).toMatch(/^Kook de ravioli/);
    expect(drain).toMatch(/^Giet de ravioli[^.]* met de boter\. Spinazie: laat 2 minuten slinken/);
  });
});

it('a spread of several foods is made before it is spread', () => {
  const [made, top] = steps(
    ['100 g apple butter', '1 brie'],
    ['Top the brie with apple butter.'],
    {
      kept: 0,
      to: [
        ['pumpkin-canned', 60],
        ['allulose', 10],
      ],
    },
    {
      id: 'apple-butter-to-spiced-pumpkin',
      method: 'Cook it down until it is thick enough to spread.',
    },
  );
  expect(made).toMatch(/^Make the pumpkin butter of canned pumpkin and allulose: cook it down/);
  expect(top).toBe('Top the brie with pumpkin butter.');
});

it('an addition behind the last thing of a list joins it', () => {
  const recipe = makeRecipe(
    'Rolls',
    ['7 g yeast', '10 g sugar', '300 ml milk', '500 g flour'],
    ['Mix the yeast, sugar, and warm milk. Knead in the flour.'],
  );
  const read = understand(recipe);
  const plan = makePlan('enriched-yeast-bread', read, [], { added: [['water', 75, 'liquid']] });
  const roles = { '2': ['liquid' as const], '3': ['structure' as const] };
  const told = rewriteRecipe(recipe, read, { ...plan, roles }, { foods, region: 'us' });
  expect(told.steps[0]?.after).toMatch(/^Mix the yeast, sugar, warm milk and 75 g water\./);
});
