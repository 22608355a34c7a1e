import { describe, expect, it } from 'vitest';
import type { Adaptation } from '../../engine/model.ts';
import { rewriteRecipe } from '../../engine/rewrite/index.ts';
import { foods, makePlan, makeRecipe, understand } from './fixtures.ts';

const LASAGNE = makeRecipe(
  'Meat bake',
  ['250 g dried lasagne sheets', '500 g ground beef', '400 g passata', '100 g parmesan'],
  [
    'Fry the beef and simmer it in the passata.',
    'Layer the lasagne sheets with the sauce and parmesan.',
    'Bake for 40 minutes.',
  ],
);

/** Steps after the first line gave way to one swap that says `method`. */
function swapped(recipe: Adaptation['recipe'], to: [string, number][], method?: string) {
  const read = understand(recipe);
  const plan = makePlan('pasta-dish', read, [{ key: '0', kept: 0, to }]);
  const swaps = plan.swaps.map((swap) => (method === undefined ? swap : { ...swap, method }));
  return rewriteRecipe(recipe, read, { ...plan, swaps }, { foods, region: 'us' }).steps;
}

describe('handling of a single swap', () => {
  const ROAST = 'Slice 1 cm thick, salt, blot, and roast 15 minutes at 200 °C before layering.';

  it('stands before the step that uses the new food, with the reason and both scales', () => {
    const steps = swapped(LASAGNE, [['eggplant', 700]], ROAST);
    const at = steps.findIndex(({ after }) => after.includes('slice 1 cm thick'));
    expect(steps[at]).toMatchObject({ change: 'inserted', before: null });
    expect(steps[at]?.after).toMatch(/^Eggplant, in place of the dried lasagne sheets: slice 1 cm/);
    expect(steps[at]?.after).toContain('200 °C (390 °F)');
    expect(steps[at]?.why).toContain('lasagne sheets');
    expect(steps[at + 1]?.before).toMatch(/^Layer/);
  });

  it('is not said twice where a cue tells it', () => {
    const steps = swapped(LASAGNE, [['zucchini', 700]], 'Slice thin, salt and blot.');
    const told = steps.filter(({ after }) => /salt/i.test(after));
    expect(told.map(({ after }) => after)).toEqual([expect.stringMatching(/sheets 3-4 mm thick/)]);
  });

  it('is said once for two lines with one swap each of the same kind', () => {
    const read = understand(LASAGNE);
    const plan = makePlan('pasta-dish', read, [{ key: '0', kept: 0, to: [['eggplant', 700]] }]);
    const [swap] = plan.swaps;
    const twice = swap ? [swap, { ...swap }].map((one) => ({ ...one, method: ROAST })) : [];
    const { steps } = rewriteRecipe(
      LASAGNE,
      read,
      { ...plan, swaps: twice },
      { foods, region: 'us' },
    );
    expect(steps.filter(({ after }) => after.includes('slice 1 cm'))).toHaveLength(1);
  });

  it('is marked as English in a method of another language', () => {
    const german = { ...LASAGNE, language: 'de' };
    const step = swapped(german, [['eggplant', 700]], ROAST).find(({ after }) =>
      /slice/.test(after),
    );
    expect(step?.lang).toBe('en');
  });
});

describe('a crust of almonds', () => {
  const made = (old: string): string =>
    swapped(makeRecipe('Tart', [old, '200 g cheddar'], ['Use it.', 'Bake for 20 minutes.']), [
      ['almond-flour', 150],
      ['butter', 50],
      ['egg', 35],
    ])
      .map(({ after }) => after)
      .join('\n');

  it('goes into the tin for a pie, flat on paper for a pizza, and is rolled for pastry', () => {
    const [pie, pizza, puff] = [
      made('1 pie crust'),
      made('400 g pizza dough'),
      made('250 g puff pastry'),
    ];
    expect(pie).toMatch(/press it into the tin/);
    expect(pizza).toMatch(/on baking paper.*before it is topped/);
    expect(pizza).not.toMatch(/tin/);
    expect(puff).toMatch(/roll it between/);
    expect(puff).not.toMatch(/tin|before it is filled/);
  });
});

describe('flours that are ground seeds or proteins', () => {
  it('belong to the flours of the method', () => {
    const dough = makeRecipe(
      'Crackers',
      ['300 g flour', '100 g water'],
      ['Mix the flour with the water.', 'Bake for 20 minutes.'],
    );
    const read = understand(dough);
    for (const id of [
      'chia-ground',
      'sesame-seed-ground',
      'pea-protein-isolate',
      'casein-powder',
    ]) {
      const plan = makePlan('cracker', read, [{ key: '0', kept: 100, to: [[id, 100]] }]);
      const { steps } = rewriteRecipe(dough, read, plan, { foods, region: 'us' });
      const text = steps.map(({ after }) => after).join('\n');
      expect(text, id).toMatch(/Mix 100 g [a-z, -]*flour.* and 100 g/);
      expect(text, id).toMatch(/Mix the flours with the water/);
    }
  });
});
